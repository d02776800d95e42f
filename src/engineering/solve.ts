/**
 * Roots and maxima of functions of one variable, without derivatives. Both searches always end: within their tolerance, or
 * where that is finer than doubles are, as near as these come.
 */
import { requireAbove, requireFinite } from './check.ts';

const goldenPart = (3 - Math.sqrt(5)) / 2; // of an interval, the smaller one

export interface Maximum {
  readonly x: number;
  readonly value: number;
  /** True when the maximum lies at an end of the interval, within the tolerance: it may lie beyond. */
  readonly atEnd: boolean;
}

/** The tolerance, or the spacing of doubles where that is wider. */
function tellable(low: number, high: number, tolerance: number): number {
  requireFinite('low', low);
  requireAbove('high', high, low, '');
  requireAbove('tolerance', tolerance, 0, '');
  return Math.max(tolerance, 2 * Number.EPSILON * Math.max(Math.abs(low), Math.abs(high)));
}

/**
 * Root of a function that changes its sign, by interpolation, truncation and projection: where the line between the ends
 * crosses zero, pulled a little towards the middle, and never so far from the middle that bisection would end sooner.
 * @param f function with one change of sign between low and high
 * @param low lower end of the interval
 * @param high upper end, above low
 * @param tolerance greatest error of x, above 0
 * @returns x where f changes sign
 * @throws RangeError when the interval is empty, the tolerance not above 0, f gives NaN or has one sign at both ends
 * @source Oliveira and Takahashi, ACM Transactions on Mathematical Software 47 (2020), article 5, with the constants
 * κ₁ = 0.2/(b − a), κ₂ = 2, n₀ = 1: one step more than bisection at the worst, a third of its steps for smooth functions
 */
export function findRoot(f: (x: number) => number, low: number, high: number, tolerance: number): number {
  const finest = tellable(low, high, tolerance);
  let left = low;
  let right = high;
  let atLeft = valueAt(f, low);
  let atRight = valueAt(f, high);
  if (atLeft === 0) return low;
  if (atRight === 0) return high;
  if (atLeft > 0 === atRight > 0)
    throw new RangeError(
      `the function must change its sign between ${low} and ${high}, got ${atLeft} and ${atRight}`,
    );
  const truncation = 0.2 / (high - low);
  const worstCase = Math.ceil(Math.log2((high - low) / (2 * finest))) + 1;
  for (let step = 0; right - left > 2 * finest; step++) {
    const middle = left + (right - left) / 2;
    const crossing = (atRight * left - atLeft * right) / (atRight - atLeft); // NaN beside an infinite end
    const inwards = Math.sign(middle - crossing) || 0;
    const pull = truncation * (right - left) ** 2;
    const pulled = pull <= Math.abs(middle - crossing) ? crossing + inwards * pull : middle;
    const reach = finest * 2 ** (worstCase - step) - (right - left) / 2;
    const x = Math.abs(pulled - middle) <= reach ? pulled : middle - inwards * reach;
    const atX = valueAt(f, x);
    if (atX === 0) return x;
    if (atX > 0 === atLeft > 0) {
      left = x;
      atLeft = atX;
    } else {
      right = x;
      atRight = atX;
    }
  }
  return left + (right - left) / 2;
}

interface Seen {
  readonly x: number;
  readonly value: number;
}

/** From the best point to the top of the parabola through three; not finite where they lie on a line. */
function toParabolaTop(best: Seen, second: Seen, third: Seen): number {
  const one = (best.x - second.x) * (third.value - best.value);
  const other = (best.x - third.x) * (second.value - best.value);
  return ((best.x - third.x) * other - (best.x - second.x) * one) / (2 * (one - other));
}

/**
 * Maximum of a function with one hump: a parabola through the three best points where it leads on fast enough, else a
 * golden section of the greater side.
 * @param f function with one maximum between low and high
 * @param low lower end of the interval
 * @param high upper end, above low
 * @param tolerance greatest error of x, above 0; below about 1e-8 of x a smooth f no longer tells its values apart
 * @returns x of the maximum, f there, and whether it is an end
 * @throws RangeError when the interval is empty, the tolerance not above 0, or f gives NaN
 * @source Brent, Algorithms for Minimization without Derivatives (1973), chapter 5 (from memory): ends whatever f is,
 * after some ten values of f for a smooth one
 */
export function maximise(f: (x: number) => number, low: number, high: number, tolerance: number): Maximum {
  const finest = tellable(low, high, tolerance);
  const seen = (x: number): Seen => ({ x, value: valueAt(f, x) });
  let [left, right] = [low, high];
  let best = seen(low + goldenPart * (high - low));
  let [second, third] = [best, best];
  let [move, before] = [0, 0];
  while (Math.max(best.x - left, right - best.x) > finest) {
    const side = best.x < (left + right) / 2 ? right - best.x : left - best.x;
    const toTop = toParabolaTop(best, second, third);
    const leadsOn =
      Math.abs(before) > finest / 2 &&
      Math.abs(toTop) < Math.abs(before) / 2 &&
      best.x + toTop > left &&
      best.x + toTop < right;
    before = leadsOn ? move : side;
    move = leadsOn ? toTop : goldenPart * side;
    const toEnd = Math.min(best.x + move - left, right - best.x - move);
    if (leadsOn && toEnd < finest) move = (Math.sign(side) * finest) / 2;
    const x = best.x + (Math.abs(move) >= finest / 2 ? move : (Math.sign(move) * finest) / 2);
    const next = seen(x);
    if (next.value >= best.value) {
      if (x < best.x) right = best.x;
      else left = best.x;
      [best, second, third] = [next, best, second];
    } else {
      if (x < best.x) left = x;
      else right = x;
      if (next.value >= second.value || second === best) [second, third] = [next, second];
      else if (next.value >= third.value || third === best || third === second) third = next;
    }
  }
  return { ...best, atEnd: left === low || right === high };
}

function valueAt(f: (x: number) => number, x: number): number {
  const value = f(x);
  if (Number.isNaN(value)) throw new RangeError(`the function must give a number at ${x}, got NaN`);
  return value;
}
