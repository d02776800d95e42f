/** A place in a drawing, in pixels. */
export interface Spot {
  readonly x: number;
  readonly y: number;
}

const lineHeight = 13; // px
const aboveCost = 20; // points of lines hidden that a place below may cost more
const markCost = 30; // the same for each mark hidden

/** A place for a letter beside a mark, away from marks and letters; else to its right. */
export function letterPlace(mark: Spot, taken: readonly Spot[]): Spot {
  const around = [
    [12, 5],
    [-12, 5],
    [0, -9],
    [0, 19],
    [22, -8],
    [-22, -8],
  ].map(([x = 0, y = 0]) => ({ x: mark.x + x, y: mark.y + y }));
  const isFree = (place: Spot) =>
    taken.every(
      (other) => Math.abs(other.x - place.x) > lineHeight || Math.abs(other.y - place.y) > lineHeight,
    );
  return around.find(isFree) ?? (around[0] as Spot);
}

/** Points along a closed outline, a few pixels apart. */
export function along(outline: readonly Spot[], apart = 6): Spot[] {
  return outline.flatMap((from, index): Spot[] => {
    const to = outline[(index + 1) % outline.length] as Spot;
    const steps = Math.max(1, Math.ceil(Math.hypot(to.x - from.x, to.y - from.y) / apart));
    return Array.from({ length: steps }, (_, step) => ({
      x: from.x + ((to.x - from.x) * step) / steps,
      y: from.y + ((to.y - from.y) * step) / steps,
    }));
  });
}

/**
 * The middle of a text that names an outline: below it, to its right or above it, within the drawing, where it hides least.
 * @param half half the text's width
 * @param lines points of other lines
 * @param marks that must stay visible, with what stands beside them
 */
export function outlineLabelPlace(
  outline: readonly Spot[],
  half: number,
  lines: readonly Spot[],
  marks: readonly Spot[],
  left: number,
  right: number,
): Spot | undefined {
  const candidates = along(outline, 12)
    .flatMap(({ x, y }) => [
      { place: { x, y: y + lineHeight + 4 }, cost: 0 },
      { place: { x: x + half + 10, y: y + 4 }, cost: 0 },
      { place: { x, y: y - 7 }, cost: aboveCost }, // where the name of the limits is
    ])
    .filter(({ place }) => place.x - half >= left && place.x + half <= right);
  const isUnder = (place: Spot, reach: number) => (each: Spot) =>
    Math.abs(each.x - place.x) < half + reach && Math.abs(each.y - (place.y - 4)) < lineHeight / 2 + reach;
  const all = [...lines, ...along(outline)];
  const hidden = (place: Spot) =>
    all.filter(isUnder(place, 4)).length + markCost * marks.filter(isUnder(place, 10)).length;
  let best: { place: Spot; cost: number } | undefined;
  for (const { place, cost } of candidates) {
    const whole = cost + hidden(place);
    if (best === undefined || whole < best.cost) best = { place, cost: whole };
  }
  return best?.place;
}
