/** Weight added or moved to bring the CG where it is wanted. */
import { requireAbove, requireFinite } from './check.ts';

/**
 * Ballast to add: w = W (x_target − x)/(x_ballast − x_target); 0 when the CG is there already.
 * @param weight W, before the ballast, above 0
 * @param cg x
 * @param targetCg x_target
 * @param ballastArm x_ballast, on the far side of targetCg
 * @throws RangeError when weight is not above 0, or ballast at that arm cannot bring the CG there
 * @source FAA-H-8083-1B, permanent ballast
 */
export function ballastWeight(weight: number, cg: number, targetCg: number, ballastArm: number): number {
  requireAbove('weight', weight, 0, '');
  requireFinite('cg', cg);
  requireFinite('targetCg', targetCg);
  requireFinite('ballastArm', ballastArm);
  if (cg === targetCg) return 0;
  if ((targetCg - cg) * (ballastArm - targetCg) <= 0)
    throw new RangeError(
      `ballastArm must be ${targetCg > cg ? 'aft' : 'forward'} of targetCg ${targetCg}, got ${ballastArm}`,
    );
  return (weight * (targetCg - cg)) / (ballastArm - targetCg);
}

/**
 * Weight to move from one arm to another: w = W (x_target − x)/(x_to − x_from); the total stays W.
 * @param weight W, above 0
 * @param cg x
 * @param targetCg x_target
 * @param fromArm x_from
 * @param toArm x_to, on the side of fromArm to which the CG must go
 * @throws RangeError when weight is not above 0, or that move takes the CG the other way
 * @source FAA-H-8083-25, weight shifting: weight shifted/total weight = ΔCG/distance
 */
export function weightToMove(
  weight: number,
  cg: number,
  targetCg: number,
  fromArm: number,
  toArm: number,
): number {
  requireAbove('weight', weight, 0, '');
  requireFinite('cg', cg);
  requireFinite('targetCg', targetCg);
  requireFinite('fromArm', fromArm);
  requireFinite('toArm', toArm);
  if (cg === targetCg) return 0;
  if ((targetCg - cg) * (toArm - fromArm) <= 0)
    throw new RangeError(
      `toArm must be ${targetCg > cg ? 'aft' : 'forward'} of fromArm ${fromArm}, got ${toArm}`,
    );
  return (weight * (targetCg - cg)) / (toArm - fromArm);
}
