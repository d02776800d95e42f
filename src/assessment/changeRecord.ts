import { add, centreOfGravity, type MassTotal } from '../engineering/massItem.ts';
import { afterChange, isNegligibleChange, negligibleWeightChange } from '../engineering/weightChange.ts';
import type { Build } from '../tables/build.ts';
import type { Change } from '../tables/changes.ts';
import type { Context } from './context.ts';
import type { WeighedAircraft } from './weighingCheck.ts';

/** One entry of the record. */
export interface ChangeEntry {
  readonly change: Change;
  /** of the basic empty aircraft after it */
  readonly running: MassTotal;
  readonly cg: number;
  /** of the CG by this entry, and since the weighing; positive aft */
  readonly shift: number;
  readonly shiftSinceWeighing: number;
  /** whether it can be left out of the aircraft's papers; undefined where its weight is not known */
  readonly negligible: boolean | undefined;
  /** the same of everything since the weighing: many small ones add up */
  readonly negligibleTogether: boolean | undefined;
}

export interface ChangeRecord {
  /** since the weighing, by date */
  readonly entries: readonly ChangeEntry[];
  /** done before the weighing, which has them in it */
  readonly weighedIn: readonly Change[];
  readonly now: MassTotal;
  /** why the aircraft must be weighed again; undefined where it need not */
  readonly weighAgain: string | undefined;
}

/**
 * Beyond these a record kept by sums is no longer trusted. @source AMC1 CAT.POL.MAB.100(b) to Regulation (EU) 965/2012,
 * from memory: it asks commercial operators to revise mass and CG there; taken here as the time to weigh again
 */
const reweighShare = { weight: 0.005, mac: 0.005 } as const; // of maximum weight; of the mean aerodynamic chord

function weighAgain(context: Context, entries: readonly ChangeEntry[]): string | undefined {
  const {
    maximumTakeoffWeight,
    maximumLandingWeight = maximumTakeoffWeight,
    macLength,
  } = context.catalogue.airframe;
  const { display } = context;
  const unknown = entries.find(({ change }) => change.weight === undefined);
  if (unknown) return `the weight of "${unknown.change.item}" is not known`;
  const moved = entries.reduce((sum, { change }) => sum + Math.abs(change.weight ?? 0), 0);
  const limit = reweighShare.weight * maximumLandingWeight;
  if (moved > limit)
    return `${display.text('weight', moved)} went in and out, more than 0.5 % of the maximum weight, ${display.text('weight', limit)}`;
  const shift = Math.abs(entries[entries.length - 1]?.shiftSinceWeighing ?? 0);
  if (macLength !== undefined && shift > reweighShare.mac * macLength)
    return `the CG has moved by ${display.text('arm', shift)}, more than 0.5 % of the mean aerodynamic chord`;
  return undefined;
}

/** The basic empty weight and CG from the weighing through every change since. */
export function changeRecord(context: Context, weighed: WeighedAircraft, build: Build): ChangeRecord {
  const { macLength } = context.catalogue.airframe;
  const byDate = [...build.changes].sort((one, other) =>
    one.date < other.date ? -1 : one.date > other.date ? 1 : 0,
  );
  const negligible = (emptyWeight: number, difference: number, shift: number) =>
    macLength === undefined
      ? Math.abs(difference) <= negligibleWeightChange(emptyWeight)
      : isNegligibleChange(emptyWeight, difference, shift, macLength);
  let running: MassTotal = { weight: weighed.weight, moment: weighed.moment };
  let known = true;
  const entries = byDate
    .filter(({ date }) => date >= weighed.date)
    .map((change): ChangeEntry => {
      const { weight = 0, arm } = change;
      const before = running;
      const after = afterChange(before, { weight, moment: weight * arm });
      running = add(before, { weight, moment: weight * arm });
      known &&= change.weight !== undefined;
      const shiftSinceWeighing = after.cg - centreOfGravity(weighed);
      return {
        change,
        running,
        cg: after.cg,
        shift: after.shift,
        shiftSinceWeighing,
        negligible: change.weight === undefined ? undefined : negligible(before.weight, weight, after.shift),
        negligibleTogether: known
          ? negligible(weighed.weight, running.weight - weighed.weight, shiftSinceWeighing)
          : undefined,
      };
    });
  return {
    entries,
    weighedIn: byDate.filter(({ date }) => date < weighed.date),
    now: running,
    weighAgain: weighAgain(context, entries),
  };
}
