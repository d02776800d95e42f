/** Weighing the aircraft: from scale readings to basic empty weight, and against what was predicted. */
import { requireAbove, requireAtLeast, requireFinite } from './check.ts';
import { add, centreOfGravity, type MassItem, type MassTotal, subtract, total } from './massItem.ts';

/** One scale, with the aircraft in level attitude. */
export interface WeighingPoint {
  readonly reading: number;
  /** of chocks, blocks, stands on that scale */
  readonly tare: number;
  /** of the weighing point from the datum, positive aft */
  readonly arm: number;
  /** half-width of what this scale shows, at least 0 */
  readonly accuracy: number;
  /** half-width of the measured arm, at least 0; 0 when not given */
  readonly armAccuracy?: number;
}

export interface Weighing {
  readonly asWeighed: MassTotal;
  readonly basicEmpty: MassTotal;
  /** from the scales alone */
  readonly weightHalfWidth: number;
  /** of the basic empty CG, from scales and measured arms */
  readonly cgHalfWidth: number;
}

/**
 * As-weighed and basic empty weight and moment. Net = reading − tare at each point; basic empty = as weighed, less what
 * was aboard and is no part of it (usable fuel, tools), plus what is part of it and was not aboard (unusable fuel, fluids
 * to full, missing items). A net weight may be negative: a tail held down.
 * Half-widths: scales and arms err independently, so √Σ u² for weight and √Σ [(u (x_i − x))² + (w_i u_x)²]/W for the CG.
 * @param points any number, each accuracy at least 0
 * @param toRemove aboard but no part of the empty aircraft
 * @param toAdd part of the empty aircraft but not aboard
 * @throws RangeError when a weight comes out not above 0
 * @source AC 43.13-1B 10-2r (tare), 10-15; contents of basic empty weight 14 CFR 23.29 before amendment 64
 */
export function weigh(
  points: readonly WeighingPoint[],
  toRemove: readonly MassItem[],
  toAdd: readonly MassItem[],
): Weighing {
  for (const { reading, tare, accuracy, armAccuracy = 0 } of points) {
    requireFinite('reading', reading);
    requireAtLeast('tare', tare, 0, '');
    requireAtLeast('accuracy', accuracy, 0, '');
    requireAtLeast('armAccuracy', armAccuracy, 0, '');
  }
  const asWeighed = total(points.map(({ reading, tare, arm }) => ({ weight: reading - tare, arm })));
  requireAbove('as-weighed weight', asWeighed.weight, 0, '');
  const basicEmpty = add(subtract(asWeighed, total(toRemove)), total(toAdd));
  requireAbove('basic empty weight', basicEmpty.weight, 0, '');
  const cg = centreOfGravity(basicEmpty);
  return {
    asWeighed,
    basicEmpty,
    weightHalfWidth: Math.hypot(...points.map(({ accuracy }) => accuracy)),
    cgHalfWidth: momentHalfWidth(points, cg) / basicEmpty.weight,
  };
}

/** Half-width of the moment about an arm, from scales and measured arms. */
const momentHalfWidth = (points: readonly WeighingPoint[], about: number) =>
  Math.hypot(
    ...points.flatMap(({ reading, tare, arm, accuracy, armAccuracy = 0 }) => [
      accuracy * (arm - about),
      (reading - tare) * armAccuracy,
    ]),
  );

/** What was promised: an expected weight and CG, and how well they were known. */
export interface Prediction {
  readonly expected: MassTotal;
  readonly weightHalfWidth: number;
  readonly cgHalfWidth: number;
}

export interface Unexplained {
  /** weighed less predicted */
  readonly weight: number;
  readonly moment: number;
  readonly cg: number;
  /** within the half-widths of prediction and scales together, √(u₁² + u₂²) */
  readonly weightInside: boolean;
  readonly cgInside: boolean;
  /** where the unexplained weight would have to sit; undefined when that weight is no more than the scales' half-width */
  readonly arm: number | undefined;
}

/**
 * The difference between a weighing and its prediction, and the arm at which it would have to sit: Δm/Δw. An arm outside
 * the airframe means that a reading, a tare or an arm is wrong, not that something is aboard.
 * @throws RangeError when the predicted weight is not above 0
 * @source common practice, no source
 */
export function unexplained(weighing: Omit<Weighing, 'asWeighed'>, prediction: Prediction): Unexplained {
  requireAbove('predicted weight', prediction.expected.weight, 0, '');
  requireAtLeast('predicted weightHalfWidth', prediction.weightHalfWidth, 0, '');
  requireAtLeast('predicted cgHalfWidth', prediction.cgHalfWidth, 0, '');
  const { weight, moment } = subtract(weighing.basicEmpty, prediction.expected);
  const cg = centreOfGravity(weighing.basicEmpty) - centreOfGravity(prediction.expected);
  return {
    weight,
    moment,
    cg,
    weightInside: Math.abs(weight) <= Math.hypot(weighing.weightHalfWidth, prediction.weightHalfWidth),
    cgInside: Math.abs(cg) <= Math.hypot(weighing.cgHalfWidth, prediction.cgHalfWidth),
    arm: Math.abs(weight) > weighing.weightHalfWidth ? moment / weight : undefined,
  };
}
