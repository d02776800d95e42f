/** Curves through given points: straight lines between them, or a smooth curve that does not overshoot. */
import { requireFinite } from './check.ts';

const rounding = 1e-9; // of an end of the points: a value told in another unit lies no further beyond it

export interface Point {
  readonly x: number;
  readonly y: number;
}

export interface CurveValue {
  readonly value: number;
  /** True when x lies outside the points: the value is then that of the nearest end. */
  readonly extrapolated: boolean;
}

export type Curve = (x: number) => CurveValue;

/**
 * Straight lines between points, held at the end values outside.
 * @param points at least one, in any order, no two with the same x
 * @returns the curve
 * @throws RangeError when there is no point, a coordinate is not finite or two points share an x
 * @source linear interpolation
 */
export function piecewiseLinear(points: readonly Point[]): Curve {
  const sorted = sortedByX(points);
  return heldOutside(sorted, (left, right, t) => left.y + t * (right.y - left.y));
}

/**
 * Cubic pieces with a continuous slope, monotone wherever the points are, held at the end values outside.
 *
 * The slope at a point is the mean of its neighbouring secants (0 at a highest or lowest point), then shortened so that
 * α² + β² ≤ 9 in every interval, α and β being the end slopes over the secant.
 * @param points at least one, in any order, no two with the same x; two points give a straight line
 * @returns the curve
 * @throws RangeError when there is no point, a coordinate is not finite or two points share an x
 * @source Fritsch and Carlson, SIAM J. Numerical Analysis 17 (1980), pages 238-246
 */
export function monotoneCubic(points: readonly Point[]): Curve {
  const sorted = sortedByX(points);
  const slopes = monotoneSlopes(sorted);
  return heldOutside(sorted, (left, right, t, index) => {
    const width = right.x - left.x;
    const leftSlope = width * slopes[index]!;
    const rightSlope = width * slopes[index + 1]!;
    return (
      left.y * (1 + 2 * t) * (1 - t) ** 2 +
      leftSlope * t * (1 - t) ** 2 +
      right.y * t ** 2 * (3 - 2 * t) -
      rightSlope * t ** 2 * (1 - t)
    );
  });
}

function monotoneSlopes(sorted: readonly Point[]): number[] {
  const secants = sorted.slice(1).map((right, i) => (right.y - sorted[i]!.y) / (right.x - sorted[i]!.x));
  const slopes = sorted.map((_, i) => {
    const before = secants[i - 1] ?? secants[i] ?? 0;
    const after = secants[i] ?? before;
    return before * after > 0 ? (before + after) / 2 : 0;
  });
  secants.forEach((secant, i) => {
    const steepness = Math.hypot(slopes[i]!, slopes[i + 1]!) / Math.abs(secant);
    if (steepness > 3) {
      slopes[i]! *= 3 / steepness;
      slopes[i + 1]! *= 3 / steepness;
    }
  });
  return slopes;
}

/** Finds the interval of x; t runs from 0 at its left point to 1 at its right one. */
function heldOutside(
  sorted: readonly Point[],
  inside: (left: Point, right: Point, t: number, index: number) => number,
): Curve {
  const first = sorted[0]!;
  const last = sorted[sorted.length - 1]!;
  return (x) => {
    requireFinite('x', x);
    if (x <= first.x) return { value: first.y, extrapolated: first.x - x > rounding * Math.abs(first.x) };
    if (x >= last.x) return { value: last.y, extrapolated: x - last.x > rounding * Math.abs(last.x) };
    const index = sorted.findIndex((point) => point.x > x) - 1;
    const left = sorted[index]!;
    const right = sorted[index + 1]!;
    return {
      value: inside(left, right, (x - left.x) / (right.x - left.x), index),
      extrapolated: false,
    };
  };
}

function sortedByX(points: readonly Point[]): Point[] {
  if (points.length === 0) throw new RangeError('points must be at least one, got none');
  for (const { x, y } of points) {
    requireFinite('x', x);
    requireFinite('y', y);
  }
  const sorted = [...points].sort((a, b) => a.x - b.x);
  sorted.forEach((point, i) => {
    if (point.x === sorted[i + 1]?.x) throw new RangeError(`points must differ in x, got ${point.x} twice`);
  });
  return sorted;
}
