import { add, centreOfGravity, type MassItem, type MassTotal, total } from '../engineering/massItem.ts';
import { type Weighing, type WeighingPoint, weigh } from '../engineering/weighing.ts';
import type { Build } from '../tables/build.ts';
import { nameKey } from '../tables/cell.ts';
import type { Change } from '../tables/changes.ts';
import type { Package } from '../tables/packages.ts';
import type { WeighingItem } from '../tables/weighingItems.ts';
import type { WeighingRow } from '../tables/weighings.ts';
import type { Context } from './context.ts';
import type { Finding } from './finding.ts';
import { weighingFindings } from './weighingFindings.ts';

export interface NamedItem extends MassItem {
  readonly name: string;
}

export interface NamedPoint extends WeighingPoint {
  readonly name: string;
}

/** One time on the scales. */
export interface OneWeighing extends Weighing {
  readonly name: string;
  readonly date: string;
  /** undefined where nobody says */
  readonly level: boolean | undefined;
  readonly points: readonly NamedPoint[];
  readonly removed: readonly NamedItem[];
  readonly added: readonly NamedItem[];
  /** basic empty, with the changes made between it and the last weighing */
  readonly broughtForward: MassTotal;
  /** why it is left out of the mean; undefined where it counts */
  readonly leftOut: string | undefined;
}

/** What all weighings together say of the basic empty aircraft on the day of the last one. */
export interface WeighedAircraft extends MassTotal {
  readonly date: string;
  readonly cg: number;
  readonly weightHalfWidth: number;
  readonly cgHalfWidth: number;
  /** those that count, the last one last */
  readonly counted: readonly OneWeighing[];
  /** largest less smallest; undefined with a single weighing */
  readonly spread: { readonly weight: number; readonly cg: number } | undefined;
}

export interface WeighingCheck {
  /** by date */
  readonly weighings: readonly OneWeighing[];
  /** undefined where none counts */
  readonly aircraft: WeighedAircraft | undefined;
  readonly findings: readonly Finding[];
}

/** Changes from one day to before another. */
const changesBetween = (changes: readonly Change[], from: string, before: string) =>
  changes.filter(({ date }) => date >= from && date < before);

/** What the changes of known weight come to. */
const changeTotal = (changes: readonly Change[]): MassTotal =>
  total(
    changes
      .filter(({ weight }) => weight !== undefined)
      .map(({ weight, arm }) => ({ weight: weight as number, arm })),
  );

function itemsOf(items: readonly WeighingItem[], engine: Package, state: WeighingItem['state']): NamedItem[] {
  return items
    .filter((each) => each.state === state)
    .map(({ item, weight, volume = 0, density = engine.fuelDensity, arm }) => ({
      name: item,
      weight: weight ?? volume * density,
      arm,
    }));
}

function oneWeighing(rows: readonly WeighingRow[], build: Build, engine: Package, last: string): OneWeighing {
  const [{ weighing, date, level }] = rows as readonly [WeighingRow];
  const own = build.weighingItems.filter((item) => nameKey(item.weighing) === nameKey(weighing));
  const points = rows.map(({ point, ...row }) => ({ name: point, ...row }));
  const removed = itemsOf(own, engine, 'aboard, not part');
  const added = itemsOf(own, engine, 'part, not aboard');
  const weighed = weigh(points, removed, added);
  const since = changesBetween(build.changes, date, last);
  const unknown = since.find(({ weight }) => weight === undefined);
  return {
    ...weighed,
    name: weighing,
    date,
    level,
    points,
    removed,
    added,
    broughtForward: add(weighed.basicEmpty, changeTotal(since)),
    leftOut:
      level === false
        ? 'not level: its CG is not that of the aircraft'
        : unknown && `after it, ${unknown.item}: its weight is not known`,
  };
}

const range = (values: readonly number[]) => Math.max(...values) - Math.min(...values);

/**
 * The mean of the weighings that count. The same scales err the same way each time, so that weighing again does not make
 * the mean better known than one weighing; it shows what else goes wrong: half the spread, where that is more.
 */
function together(counted: readonly OneWeighing[]): WeighedAircraft {
  const masses = counted.map(({ broughtForward }) => broughtForward);
  const sum = masses.reduce(add);
  const mean = { weight: sum.weight / masses.length, moment: sum.moment / masses.length };
  const spread =
    masses.length > 1
      ? { weight: range(masses.map(({ weight }) => weight)), cg: range(masses.map(centreOfGravity)) }
      : undefined;
  return {
    ...mean,
    cg: centreOfGravity(mean),
    date: (counted[counted.length - 1] as OneWeighing).date,
    weightHalfWidth: Math.max(
      (spread?.weight ?? 0) / 2,
      ...counted.map(({ weightHalfWidth }) => weightHalfWidth),
    ),
    cgHalfWidth: Math.max((spread?.cg ?? 0) / 2, ...counted.map(({ cgHalfWidth }) => cgHalfWidth)),
    counted,
    spread,
  };
}

/** Every weighing, corrected to basic empty, and what they say together. */
export function weighingCheck(context: Context, engine: Package, build: Build): WeighingCheck {
  const byName = new Map<string, WeighingRow[]>();
  for (const row of build.weighings) {
    const key = nameKey(row.weighing);
    byName.set(key, [...(byName.get(key) ?? []), row]);
  }
  const days = build.weighings.filter(({ level }) => level !== false).map(({ date }) => date);
  const last = days.sort()[days.length - 1] ?? '';
  const weighings = [...byName.values()]
    .map((rows) => oneWeighing(rows, build, engine, last))
    .sort((one, other) => (one.date < other.date ? -1 : one.date > other.date ? 1 : 0));
  const counted = weighings.filter(({ leftOut }) => leftOut === undefined);
  const aircraft = counted.length > 0 ? together(counted) : undefined;
  return {
    weighings,
    aircraft,
    findings: weighingFindings(context, weighings, build.weighings, aircraft),
  };
}
