/**
 * Roots and maxima of functions of one variable, without derivatives. Both searches end within a fixed number of steps
 * and say whether they converged.
 */
import { requireAbove, requireFinite } from './check.ts';

const mostSteps = 200;
const inverseGoldenRatio = (Math.sqrt(5) - 1) / 2;

export interface Root {
  readonly x: number;
  /** False when f has the same sign at both ends (x is then the end nearer to zero), or the steps ran out. */
  readonly converged: boolean;
}

export interface Maximum {
  readonly x: number;
  readonly value: number;
  /** True when the maximum lies at an end of the interval, within the tolerance: it may lie beyond. */
  readonly atEnd: boolean;
  readonly converged: boolean;
}

function requireInterval(low: number, high: number, tolerance: number): void {
  requireFinite('low', low);
  requireAbove('high', high, low, '');
  requireAbove('tolerance', tolerance, 0, '');
}

/**
 * Root of a function that changes its sign, by interpolation, truncation and projection: where the line between the ends
 * crosses zero, pulled a little towards the middle, and never so far from the middle that bisection would end sooner.
 * @param f function with one change of sign between low and high
 * @param low lower end of the interval
 * @param high upper end, above low
 * @param tolerance greatest error of x, above 0
 * @returns x where f changes sign, and whether it was found
 * @throws RangeError when the interval is empty, the tolerance not above 0, or f gives NaN
 * @source Oliveira and Takahashi, ACM Transactions on Mathematical Software 47 (2020), article 5, with the constants
 * κ₁ = 0.2/(b − a), κ₂ = 2, n₀ = 1: one step more than bisection at the worst, a third of its steps for smooth functions
 */
export function findRoot(f: (x: number) => number, low: number, high: number, tolerance: number): Root {
  requireInterval(low, high, tolerance);
  let left = low;
  let right = high;
  let atLeft = valueAt(f, low);
  let atRight = valueAt(f, high);
  if (atLeft === 0) return { x: low, converged: true };
  if (atRight === 0) return { x: high, converged: true };
  if (atLeft > 0 === atRight > 0)
    return { x: Math.abs(atLeft) <= Math.abs(atRight) ? low : high, converged: false };
  const truncation = 0.2 / (high - low);
  const worstCase = Math.ceil(Math.log2((high - low) / (2 * tolerance))) + 1;
  for (let step = 0; step < mostSteps && right - left > 2 * tolerance; step++) {
    const middle = left + (right - left) / 2;
    const crossing = (atRight * left - atLeft * right) / (atRight - atLeft); // NaN beside an infinite end
    const inwards = Math.sign(middle - crossing) || 0;
    const pull = truncation * (right - left) ** 2;
    const pulled = pull <= Math.abs(middle - crossing) ? crossing + inwards * pull : middle;
    const reach = tolerance * 2 ** (worstCase - step) - (right - left) / 2;
    const x = Math.abs(pulled - middle) <= reach ? pulled : middle - inwards * reach;
    const atX = valueAt(f, x);
    if (atX === 0) return { x, converged: true };
    if (atX > 0 === atLeft > 0) {
      left = x;
      atLeft = atX;
    } else {
      right = x;
      atRight = atX;
    }
  }
  return { x: left + (right - left) / 2, converged: right - left <= 2 * tolerance };
}

/**
 * Maximum of a function with one hump by golden-section search.
 * @param f function with one maximum between low and high
 * @param low lower end of the interval
 * @param high upper end, above low
 * @param tolerance greatest error of x, above 0; below about 1e-8 of x a smooth f no longer tells its values apart
 * @returns x of the maximum, f there, and how the search ended
 * @throws RangeError when the interval is empty, the tolerance not above 0, or f gives NaN
 * @source golden-section search, Kiefer, Proc. American Mathematical Society 4 (1953)
 */
export function maximise(f: (x: number) => number, low: number, high: number, tolerance: number): Maximum {
  requireInterval(low, high, tolerance);
  let left = low;
  let right = high;
  let inner = right - inverseGoldenRatio * (right - left);
  let outer = left + inverseGoldenRatio * (right - left);
  let atInner = valueAt(f, inner);
  let atOuter = valueAt(f, outer);
  for (let step = 0; step < mostSteps && right - left > 2 * tolerance; step++) {
    if (atInner >= atOuter) {
      right = outer;
      outer = inner;
      atOuter = atInner;
      inner = right - inverseGoldenRatio * (right - left);
      atInner = valueAt(f, inner);
    } else {
      left = inner;
      inner = outer;
      atInner = atOuter;
      outer = left + inverseGoldenRatio * (right - left);
      atOuter = valueAt(f, outer);
    }
  }
  const x = left + (right - left) / 2;
  return {
    x,
    value: valueAt(f, x),
    atEnd: left === low || right === high,
    converged: right - left <= 2 * tolerance,
  };
}

function valueAt(f: (x: number) => number, x: number): number {
  const value = f(x);
  if (Number.isNaN(value)) throw new RangeError(`the function must give a number at ${x}, got NaN`);
  return value;
}
