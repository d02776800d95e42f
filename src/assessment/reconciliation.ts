import { type MassTotal, subtract } from '../engineering/massItem.ts';
import { armHalfWidth, type SingleCause, singleCause, weighingScatter } from '../engineering/singleCause.ts';
import { type Unexplained, unexplained } from '../engineering/weighing.ts';
import type { Package } from '../tables/packages.ts';
import { type AdoptedRows, adoptWeighing, withAirframe } from './adoptWeighing.ts';
import { type Assessment, assess, type Basis } from './assess.ts';
import { contextOf } from './context.ts';
import { bareAirframe } from './emptyAircraft.ts';
import type { NamedMass } from './powerplant.ts';
import type { OneWeighing, WeighedAircraft } from './weighingCheck.ts';

/** One thing that, alone, would explain what was weighed. */
export interface Cause extends SingleCause {
  readonly name: string;
  readonly arm: number;
  /** as its table states it; undefined for a scale, or for all weights on a basis */
  readonly stated: number | undefined;
  /** what it would have to weigh */
  readonly needed: number | undefined;
}

/** What was weighed, held against what was promised. */
export interface Reconciliation {
  readonly difference: Unexplained;
  /** weighed less the sum of the tables as stated */
  readonly fromStated: MassTotal;
  /** half-width of the arm at which the unexplained weight sits; undefined where that has no arm */
  readonly armHalfWidth: number | undefined;
  /** whether there is anything of an aircraft at that arm */
  readonly place: 'aboard' | 'perhaps aboard' | 'outside' | undefined;
  /** the likeliest first */
  readonly causes: readonly Cause[];
  readonly before: Assessment;
  /** with the weighing as the new baseline */
  readonly after: Assessment;
  readonly adopted: AdoptedRows;
}

const beyondLastArm = 0.25; // of the length between the outermost arms known: tail and spinner reach farther; common practice, no source

/** Everything whose place is known. */
function extentOf({ context, bareAirframe: bare }: Basis, items: readonly NamedMass[]) {
  const { airframe, stations, tanks, equipment } = context.catalogue;
  const points = [airframe.mainWheelArm, airframe.auxiliaryWheelArm, airframe.ballastArm];
  const arms = [...stations, ...tanks, ...equipment, ...items, ...bare.items]
    .map(({ arm }) => arm)
    .concat(points.filter((arm): arm is number => arm !== undefined));
  const [first, last] = [Math.min(...arms), Math.max(...arms)];
  const beyond = beyondLastArm * (last - first);
  return { first: first - beyond, last: last + beyond };
}

function placeOf(arm: number, halfWidth: number, { first, last }: { first: number; last: number }) {
  if (arm >= first && arm <= last) return 'aboard';
  return arm + halfWidth >= first && arm - halfWidth <= last ? 'perhaps aboard' : 'outside';
}

/** Every item, all weights of a basis whose errors go together, and every scale, as the single cause. */
function causesOf(
  { context }: Basis,
  items: readonly NamedMass[],
  { points }: OneWeighing,
  difference: MassTotal,
): Cause[] {
  const scatter = weighingScatter(points);
  const known = items.flatMap(({ name, weight, arm, basis, known: own }) => {
    const ofBasis = own?.weight === undefined;
    const allowance = ofBasis ? context.catalogue.allowances.find((each) => each.basis === basis) : undefined;
    const halfWidth = own?.weight ?? Math.abs(weight) * (allowance?.scatter ?? 0);
    const expected = weight > 0 ? weight * (1 + (allowance?.growth ?? 0)) : weight;
    return halfWidth > 0
      ? [{ name, weight, arm, basis: ofBasis ? basis : undefined, expected, halfWidth }]
      : [];
  });
  const single = known.map(({ name, weight, arm, expected, halfWidth }): Cause => {
    const cause = singleCause(difference, scatter, arm, halfWidth);
    return { ...cause, name, arm, stated: weight, needed: expected + cause.error };
  });
  const alike = context.catalogue.allowances.flatMap(({ basis, correlation }): Cause[] => {
    const own = known.filter((each) => each.basis === basis);
    const sum = own.reduce((total, { halfWidth }) => total + halfWidth, 0);
    if (own.length < 2 || correlation === 0) return [];
    const arm = own.reduce((moment, each) => moment + each.halfWidth * each.arm, 0) / sum;
    const cause = singleCause(difference, scatter, arm, Math.sqrt(correlation) * sum);
    return [{ ...cause, name: `every ${basis} weight`, arm, stated: undefined, needed: undefined }];
  });
  const scales = points.map(({ name, arm, accuracy }): Cause => {
    const cause = singleCause(difference, scatter, arm, accuracy);
    return { ...cause, name: `reading, ${name}`, arm, stated: undefined, needed: undefined };
  });
  return [...single, ...alike, ...scales].sort((one, other) => one.distance - other.distance);
}

/** Holds the weighed aircraft against its prediction, and assesses it as weighed. */
export function reconcile(basis: Basis, engine: Package, weighed: WeighedAircraft): Reconciliation {
  const before = assess(basis, engine);
  const { mass, items, expectedCg } = before.empty;
  const difference = unexplained(
    { basicEmpty: weighed, weightHalfWidth: weighed.weightHalfWidth, cgHalfWidth: weighed.cgHalfWidth },
    {
      expected: mass.expected,
      weightHalfWidth: mass.weightHalfWidth,
      cgHalfWidth: expectedCg.halfWidth,
    },
  );
  const last = weighed.counted[weighed.counted.length - 1] as OneWeighing;
  const { arm } = difference;
  const halfWidth = arm === undefined ? undefined : armHalfWidth(difference, weighingScatter(last.points));
  const adopted = adoptWeighing(basis.context, engine, weighed);
  const context = contextOf(withAirframe(basis.context.catalogue, adopted));
  return {
    difference,
    fromStated: subtract(weighed, mass.nominal),
    armHalfWidth: halfWidth,
    place:
      arm === undefined || halfWidth === undefined
        ? undefined
        : placeOf(arm, halfWidth, extentOf(basis, items)),
    causes: causesOf(basis, items, last, difference),
    before,
    after: assess({ ...basis, context, bareAirframe: bareAirframe(context) }, engine),
    adopted,
  };
}
