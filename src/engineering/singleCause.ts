/**
 * Which one error would explain a difference of weight and moment between a weighing and its prediction.
 *
 * An item that is δ heavier than reckoned with moves weight and moment by (δ, δ a), a its arm. Scales and measured arms
 * scatter too, so weight and moment together are fitted, each as well as it is known.
 * @source the outlier test of geodesy, one error at a time (Baarda 1968, from memory), with the item's own half-width
 * beside the fit
 */
import { requireAbove, requireFinite } from './check.ts';
import type { MassTotal } from './massItem.ts';
import type { WeighingPoint } from './weighing.ts';

/** Squares of half-widths: of weight, of moment, and their product as far as they go together. */
export interface WeighingScatter {
  readonly weight: number;
  readonly both: number;
  readonly moment: number;
}

/**
 * How weight and moment of a weighing scatter: Σ u², Σ u² x, Σ [u² x² + (w u_x)²] over its points.
 * @throws RangeError when all weighing points together do not scatter in both: no accuracy given, or a single point
 */
export function weighingScatter(points: readonly WeighingPoint[]): WeighingScatter {
  let [weight, both, moment] = [0, 0, 0];
  for (const { reading, tare, arm, accuracy, armAccuracy = 0 } of points) {
    weight += accuracy ** 2;
    both += accuracy ** 2 * arm;
    moment += (accuracy * arm) ** 2 + ((reading - tare) * armAccuracy) ** 2;
  }
  requireAbove('scatter of the weighing', weight * moment - both ** 2, 0, '');
  return { weight, both, moment };
}

/** d C⁻¹ e of two (weight, moment) pairs. */
const product = (scatter: WeighingScatter, one: MassTotal, other: MassTotal) =>
  (scatter.moment * one.weight * other.weight -
    scatter.both * (one.weight * other.moment + one.moment * other.weight) +
    scatter.weight * one.moment * other.moment) /
  (scatter.weight * scatter.moment - scatter.both ** 2);

export interface SingleCause {
  /** δ, how much heavier the item would have to be than reckoned with */
  readonly error: number;
  /** |δ| over the item's own half-width */
  readonly halfWidths: number;
  /** what of weight and moment it leaves, over the half-width of the scales */
  readonly misfit: number;
  /** both together: the smaller, the likelier */
  readonly distance: number;
}

/**
 * The error of one item that explains a difference best, and how far-fetched it is: δ = a C⁻¹ d / a C⁻¹ a with
 * a = (1, arm); misfit² = d C⁻¹ d − δ a C⁻¹ d; distance² = (δ/u)² + misfit².
 * @param difference weighed less predicted
 * @param scatter of the weighing
 * @param arm of the item
 * @param halfWidth u of its weight, above 0
 * @throws RangeError when halfWidth is not above 0
 */
export function singleCause(
  difference: MassTotal,
  scatter: WeighingScatter,
  arm: number,
  halfWidth: number,
): SingleCause {
  requireFinite('arm', arm);
  requireAbove('halfWidth', halfWidth, 0, '');
  const unit = { weight: 1, moment: arm };
  const along = product(scatter, unit, difference);
  const error = along / product(scatter, unit, unit);
  const halfWidths = Math.abs(error) / halfWidth;
  const misfit = Math.sqrt(Math.max(0, product(scatter, difference, difference) - error * along));
  return { error, halfWidths, misfit, distance: Math.hypot(halfWidths, misfit) };
}

/**
 * Half-width of the arm at which a difference sits, x = m/w: √(C_mm − 2 x C_wm + x² C_ww)/|w|.
 * @param difference its weight not 0
 * @throws RangeError when its weight is 0
 * @source first-order propagation, JCGM 100:2008 5.1 (from memory)
 */
export function armHalfWidth({ weight, moment }: MassTotal, scatter: WeighingScatter): number {
  requireAbove('weight of the difference', Math.abs(weight), 0, '');
  const arm = moment / weight;
  const about = scatter.moment - 2 * arm * scatter.both + arm ** 2 * scatter.weight;
  return Math.sqrt(Math.max(0, about)) / Math.abs(weight);
}
