/** A change of weight: one list of components against another, where it puts the CG, and whether it can be neglected. */
import { toSi } from '../units.ts';
import { requireAbove, requireFinite } from './check.ts';
import { add, centreOfGravity, type MassItem, type MassTotal, subtract, total } from './massItem.ts';

/**
 * What a candidate weighs and turns more than the baseline: Δw = Σw − Σw_baseline, Δm likewise.
 * @source definition
 */
export function weightChange(candidate: readonly MassItem[], baseline: readonly MassItem[]): MassTotal {
  return subtract(total(candidate), total(baseline));
}

export interface ChangedBalance extends MassTotal {
  readonly cg: number;
  /** of the CG, positive aft */
  readonly shift: number;
}

/**
 * Weight and CG after a change: x' = (M + Δm)/(W + Δw); shift = (Δm − Δw x)/(W + Δw), which for one item is
 * Δw (arm − x)/(W + Δw).
 * @param before weight above 0
 * @param change negative weight: taken out
 * @throws RangeError when the weight is not above 0 before or after
 * @source definition; the shift as in FAA-H-8083-25, weight addition and removal
 */
export function afterChange(before: MassTotal, change: MassTotal): ChangedBalance {
  requireAbove('weight before the change', before.weight, 0, '');
  const after = add(before, change);
  requireAbove('weight after the change', after.weight, 0, '');
  const cgBefore = centreOfGravity(before);
  return {
    ...after,
    cg: centreOfGravity(after),
    shift: (change.moment - change.weight * cgBefore) / after.weight,
  };
}

const negligibleMacFraction = 0.0005; // less than 0.05 % MAC, fixed wing; AC 43.13-1B 10-2c

/**
 * The change of weight that may be neglected: 1 lb for an empty weight up to 5,000 lb, 2 lb to 50,000 lb, 5 lb above.
 * The source says "less than 5,000" and "more than 5,000": exactly 5,000 gets the smaller.
 * @param emptyWeight above 0 [kg]
 * @returns [kg]
 * @throws RangeError when emptyWeight is not above 0
 * @source AC 43.13-1B Chg 1, 10-2c
 */
export function negligibleWeightChange(emptyWeight: number): number {
  requireAbove('emptyWeight', emptyWeight, 0, 'kg');
  if (emptyWeight <= toSi('mass', 5_000, 'lb')) return toSi('mass', 1, 'lb');
  return emptyWeight <= toSi('mass', 50_000, 'lb') ? toSi('mass', 2, 'lb') : toSi('mass', 5, 'lb');
}

/**
 * Whether a change needs no new weight and balance record: |Δw| at most the negligible weight change and the CG moved by
 * less than 0.05 % MAC (fixed wing).
 * @param emptyWeight above 0 [kg]
 * @param weightDifference Δw [kg]
 * @param cgShift [m]
 * @param macLength mean aerodynamic chord, above 0 [m]
 * @throws RangeError when emptyWeight or macLength is not above 0
 * @source AC 43.13-1B Chg 1, 10-2c
 */
export function isNegligibleChange(
  emptyWeight: number,
  weightDifference: number,
  cgShift: number,
  macLength: number,
): boolean {
  requireFinite('weightDifference', weightDifference);
  requireFinite('cgShift', cgShift);
  requireAbove('macLength', macLength, 0, 'm');
  return (
    Math.abs(weightDifference) <= negligibleWeightChange(emptyWeight) &&
    Math.abs(cgShift) < negligibleMacFraction * macLength
  );
}
