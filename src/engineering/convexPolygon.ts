/**
 * Convex polygons with one leftmost corner: their Minkowski sum, and what is left of one below a limit.
 *
 * A polygon is kept as that corner and two lists of edges that lead to its right end, the lower in order of rising slope,
 * the upper of falling. Edges, not corners: the slope of a short edge would be lost in the difference of two corners, and
 * the order of all that follow with it. A vector may carry more coordinates than x and y; they are added and scaled along
 * with those two, so that a corner of a sum still knows what it is made of.
 * @source Minkowski sum by merging edges in order of slope: de Berg et al., Computational Geometry, 13.3 (from memory)
 */

/** x, y and what it carries. */
export type Vector = readonly number[];

export interface ConvexPolygon {
  readonly start: Vector;
  readonly lower: readonly Vector[];
  readonly upper: readonly Vector[];
}

const narrowest = 1e-100; // a narrower edge is none: products with it underflow, and the order of slopes with them

/** From one point to another at the right of it; the first point alone where they have the same x. */
export function segment(from: Vector, to: Vector): ConvexPolygon {
  const edge = to.map((coordinate, index) => coordinate - from[index]!);
  const edges = edge[0]! > narrowest ? [edge] : [];
  return { start: from, lower: edges, upper: edges };
}

const sumOf = (one: Vector, other: Vector): Vector =>
  one.map((coordinate, index) => coordinate + other[index]!);

const sameSlope = 1e-12; // relative; stations at one arm differ so little by rounding, and keep the order they are given in

/** Edges of both in order of slope: rising (1) or falling (−1). */
function merge(one: readonly Vector[], other: readonly Vector[], rising: 1 | -1): Vector[] {
  const merged: Vector[] = [];
  let i = 0;
  let j = 0;
  while (i < one.length && j < other.length) {
    const [first, second] = [one[i]!, other[j]!];
    const [rise, otherRise] = [first[0]! * second[1]!, second[0]! * first[1]!];
    const turn = rise - otherRise; // above 0: the second is steeper
    if (rising * turn >= -sameSlope * (Math.abs(rise) + Math.abs(otherRise))) {
      merged.push(first);
      i++;
    } else {
      merged.push(second);
      j++;
    }
  }
  return [...merged, ...one.slice(i), ...other.slice(j)];
}

/** Minkowski sum: every point of the one added to every point of the other. */
export function minkowskiSum(one: ConvexPolygon, other: ConvexPolygon): ConvexPolygon {
  return {
    start: sumOf(one.start, other.start),
    lower: merge(one.lower, other.lower, 1),
    upper: merge(one.upper, other.upper, -1),
  };
}

function cut(edges: readonly Vector[], width: number): readonly Vector[] {
  let room = width;
  for (const [index, edge] of edges.entries()) {
    if (edge[0]! > room) {
      const share = room / edge[0]!;
      const kept = edges.slice(0, index);
      return room > narrowest ? [...kept, edge.map((coordinate) => coordinate * share)] : kept;
    }
    room -= edge[0]!;
  }
  return edges;
}

/** What is left of a polygon where x is at most maximumX; its leftmost corner when nothing else is. */
export function clipAtMaximum(polygon: ConvexPolygon, maximumX: number): ConvexPolygon {
  const width = maximumX - polygon.start[0]!;
  return { ...polygon, lower: cut(polygon.lower, width), upper: cut(polygon.upper, width) };
}

function along(start: Vector, edges: readonly Vector[]): Vector[] {
  const corners = [start];
  for (const edge of edges) corners.push(sumOf(corners[corners.length - 1]!, edge));
  return corners;
}

/** Corners along the lower and along the upper boundary, both from the leftmost corner to the right end. */
export function cornersOf(polygon: ConvexPolygon): { lower: Vector[]; upper: Vector[] } {
  return { lower: along(polygon.start, polygon.lower), upper: along(polygon.start, polygon.upper) };
}
