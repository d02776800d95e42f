/**
 * Weights, moments and the centre of gravity.
 *
 * "Weight" is the trade's word for mass. Any units that agree will do: kg, m, kg·m or lb, in, lb·in. Arms are measured
 * from the airframe's datum, positive aft. A negative weight is something taken out.
 */
import { requireAbove, requireFinite } from './check.ts';

/** Something with a weight, at an arm. */
export interface MassItem {
  readonly weight: number;
  readonly arm: number;
}

/** What several items come to: moment = Σ weight × arm. */
export interface MassTotal {
  readonly weight: number;
  readonly moment: number;
}

const roundingError = 1e-12; // of the sum of magnitudes; far above that of double precision for any list of parts

/** Zero where what is left over is only the rounding of terms that cancel: dividing by it would give a wild arm. */
const settled = (sum: number, sumOfMagnitudes: number) =>
  Math.abs(sum) <= roundingError * sumOfMagnitudes ? 0 : sum;

/**
 * Weight and moment of a list of items: W = Σ w, M = Σ w x. An empty list weighs nothing.
 * @throws RangeError when a weight or an arm is not a finite number
 * @source definition; AC 43.13-1B 10-2h
 */
export function total(items: readonly MassItem[]): MassTotal {
  let weight = 0;
  let moment = 0;
  let weightMagnitude = 0;
  let momentMagnitude = 0;
  for (const item of items) {
    requireFinite('weight', item.weight);
    requireFinite('arm', item.arm);
    const itemMoment = item.weight * item.arm;
    weight += item.weight;
    moment += itemMoment;
    weightMagnitude += Math.abs(item.weight);
    momentMagnitude += Math.abs(itemMoment);
  }
  return { weight: settled(weight, weightMagnitude), moment: settled(moment, momentMagnitude) };
}

/** Both together. */
export function add(one: MassTotal, other: MassTotal): MassTotal {
  return {
    weight: settled(one.weight + other.weight, Math.abs(one.weight) + Math.abs(other.weight)),
    moment: settled(one.moment + other.moment, Math.abs(one.moment) + Math.abs(other.moment)),
  };
}

/** What is left of the whole without the part; also the difference of two. */
export function subtract(whole: MassTotal, part: MassTotal): MassTotal {
  return add(whole, { weight: -part.weight, moment: -part.moment });
}

/**
 * Centre of gravity: x = M/W. Of a total that is taken out (W below 0) it is where that weight sat.
 * @returns arm from the datum, positive aft
 * @throws RangeError when the weight is 0: a moment without a weight has no arm
 * @source definition; AC 43.13-1B 10-2i
 */
export function centreOfGravity({ weight, moment }: MassTotal): number {
  requireFinite('weight', weight);
  requireFinite('moment', moment);
  if (weight === 0)
    throw new RangeError('weight must not be 0 where a centre of gravity is asked for, got 0');
  return moment / weight;
}

/**
 * The airframe without powerplant, which nobody has on a scale: the complete aircraft as weighed less what the powerplant
 * fitted at that weighing brought, in weight and moment.
 * @param weighedComplete the complete aircraft
 * @param powerplant every component that leaves with the powerplant, as fitted then
 * @throws RangeError when nothing would be left
 * @source subtraction; common practice
 */
export function airframeWithoutPowerplant(
  weighedComplete: MassTotal,
  powerplant: readonly MassItem[],
): MassTotal {
  const airframe = subtract(weighedComplete, total(powerplant));
  requireAbove('weight of the airframe without powerplant', airframe.weight, 0, '');
  return airframe;
}
