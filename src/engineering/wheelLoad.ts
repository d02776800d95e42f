/** The aircraft on its wheels: what each carries, and how near it is to tipping. */
import { requireAbove, requireFinite } from './check.ts';

export interface WheelLoads {
  /** negative: it does not stay down, the aircraft tips over its main wheels */
  readonly noseOrTail: number;
  /** both together */
  readonly mains: number;
}

/**
 * Static loads of a nose or tail wheel and of the main wheels: W (x_main − x)/(x_main − x_third), the rest on the mains.
 * @param weight W, above 0
 * @param cg x, level attitude
 * @param noseOrTailWheelArm x_third
 * @param mainWheelArm x_main, not where the nose or tail wheel is
 * @throws RangeError when weight is not above 0 or the two arms are the same
 * @source moments about the main wheels
 */
export function wheelLoads(
  weight: number,
  cg: number,
  noseOrTailWheelArm: number,
  mainWheelArm: number,
): WheelLoads {
  requireAbove('weight', weight, 0, '');
  requireFinite('cg', cg);
  requireFinite('noseOrTailWheelArm', noseOrTailWheelArm);
  requireFinite('mainWheelArm', mainWheelArm);
  if (noseOrTailWheelArm === mainWheelArm)
    throw new RangeError(`noseOrTailWheelArm must differ from mainWheelArm ${mainWheelArm}`);
  const noseOrTail = (weight * (mainWheelArm - cg)) / (mainWheelArm - noseOrTailWheelArm);
  return { noseOrTail, mains: weight - noseOrTail };
}

/**
 * Angle by which a nosewheel aircraft must be tilted tail-down before it falls on its tail: atan((x_main − x)/h). Common
 * practice wants it above the angle at which the tail touches, and 15° at least (Raymer, from memory).
 * @param cg x, level attitude [m]
 * @param cgHeight h, above the ground, above 0 [m]
 * @param mainWheelArm x_main [m]
 * @returns [rad]; negative: it sits on its tail
 * @throws RangeError when cgHeight is not above 0
 * @source geometry
 */
export function tipBackAngle(cg: number, cgHeight: number, mainWheelArm: number): number {
  requireFinite('cg', cg);
  requireAbove('cgHeight', cgHeight, 0, '');
  requireFinite('mainWheelArm', mainWheelArm);
  return Math.atan((mainWheelArm - cg) / cgHeight);
}

/**
 * Angle between the vertical through the main wheels and the line from them to the CG of a tailwheel aircraft in level
 * attitude: atan((x − x_main)/h). Common practice is 16° to 25°: less noses over under braking, more ground-loops
 * (Raymer, from memory).
 * @param cg x, level attitude [m]
 * @param cgHeight h, above the ground, above 0 [m]
 * @param mainWheelArm x_main [m]
 * @returns [rad]; negative: it stands on its nose
 * @throws RangeError when cgHeight is not above 0
 * @source geometry
 */
export function noseOverAngle(cg: number, cgHeight: number, mainWheelArm: number): number {
  requireFinite('cg', cg);
  requireAbove('cgHeight', cgHeight, 0, '');
  requireFinite('mainWheelArm', mainWheelArm);
  return Math.atan((cg - mainWheelArm) / cgHeight);
}
