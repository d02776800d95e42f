/**
 * Every loading at once. The pairs (weight, moment) that can be reached are a convex polygon: one segment per station,
 * summed; its forward boundary takes the stations in order of arm from the front, its aft boundary from the back.
 * @source a sum of segments is a zonotope (definition); limits on part of the load clip that part before the rest is added
 */

import { requireAbove } from './check.ts';
import { type ConvexPolygon, clipAtMaximum, cornersOf, minkowskiSum, segment } from './convexPolygon.ts';
import type { Side } from './envelope.ts';
import { type Loading, requireStations, requireWithin, type Station } from './loading.ts';
import { centreOfGravity, type MassTotal } from './massItem.ts';

/** Stations that share a limit, all of them seats and baggage or all of them tanks. */
export interface StationGroup {
  readonly name: string;
  /** names of its stations; a station is in one group at most */
  readonly stations: readonly string[];
  /** of their loads together */
  readonly maximum: number;
}

export interface LoadingLimits {
  /** weight above 0 */
  readonly empty: MassTotal;
  /** seats and baggage */
  readonly stations: readonly Station[];
  readonly tanks: readonly Station[];
  readonly maximumWeight: number;
  /** of everything but the tanks; AC 43.13-1B 10-2o: weight beyond it must be usable fuel */
  readonly maximumZeroFuelWeight?: number | undefined;
  readonly groups?: readonly StationGroup[] | undefined;
}

export interface LoadingPolygon {
  /** seats and baggage, then tanks: the order of the loads */
  readonly stations: readonly Station[];
  /** least moment at each weight, lightest first */
  readonly forward: readonly Loading[];
  /** greatest moment at each weight, lightest first */
  readonly aft: readonly Loading[];
}

/** Numbers of the stations that each group limits. */
function membersOf(groups: readonly StationGroup[], stations: readonly Station[], firstTank: number) {
  const numbers = new Map(stations.map((station, index) => [station.name, index]));
  if (numbers.size < stations.length) throw new RangeError('station names must differ');
  const taken = new Set<number>();
  return groups.map((group) => {
    if (group.stations.length === 0) throw new RangeError(`group ${group.name} must name stations, got none`);
    const members = group.stations.map((name) => {
      const index = numbers.get(name);
      if (index === undefined) throw new RangeError(`group ${group.name} must name stations, got ${name}`);
      if (taken.has(index)) throw new RangeError(`${name} must be in one group at most`);
      taken.add(index);
      return index;
    });
    const tanks = members.filter((index) => index >= firstTank).length;
    if (tanks > 0 && tanks < members.length)
      throw new RangeError(`group ${group.name} must not mix tanks with seats and baggage`);
    return { group, members };
  });
}

/**
 * The polygon of all loadings within the limits.
 * @throws RangeError when a station or group is impossible, or minimum loads exceed a limit
 */
export function loadingPolygon(limits: LoadingLimits): LoadingPolygon {
  const { empty } = limits;
  requireAbove('empty weight', empty.weight, 0, '');
  const stations = [...limits.stations, ...limits.tanks];
  requireStations(stations);
  const firstTank = limits.stations.length;
  const groups = membersOf(limits.groups ?? [], stations, firstTank);
  const grouped = new Set(groups.flatMap(({ members }) => members));

  // A point is weight, moment, and the load of each station
  const point = ({ weight, moment }: MassTotal, index?: number) => [
    weight,
    moment,
    ...stations.map((_, station) => (station === index ? weight : 0)),
  ];
  const loadsOf = (index: number): ConvexPolygon => {
    const { arm, minimum, maximum } = stations[index]!;
    const holding = (load: number) => point({ weight: load, moment: load * arm }, index);
    return segment(holding(minimum), holding(maximum));
  };
  const within = (polygon: ConvexPolygon, limitName: string, limit: number) => {
    requireWithin(limitName, limit, polygon.start[0]!);
    return clipAtMaximum(polygon, limit);
  };
  const ungrouped = stations
    .map((_, index) => index)
    .filter((index) => !grouped.has(index))
    .map((index) => ({ isTanks: index >= firstTank, loads: loadsOf(index) }));
  const shared = groups.map(({ group, members }) => ({
    isTanks: members[0]! >= firstTank,
    loads: within(members.map(loadsOf).reduce(minkowskiSum), `maximum of group ${group.name}`, group.maximum),
  }));
  const adding = (tanks: boolean, start: ConvexPolygon) =>
    [...ungrouped, ...shared]
      .filter(({ isTanks }) => isTanks === tanks)
      .reduce((polygon, { loads }) => minkowskiSum(polygon, loads), start);

  let polygon = adding(false, segment(point(empty), point(empty)));
  if (limits.maximumZeroFuelWeight !== undefined)
    polygon = within(polygon, 'maximumZeroFuelWeight', limits.maximumZeroFuelWeight);
  polygon = within(adding(true, polygon), 'maximumWeight', limits.maximumWeight);

  const toLoading = ([weight, moment, ...loads]: readonly number[]): Loading => ({
    weight: weight!,
    moment: moment!,
    cg: centreOfGravity({ weight: weight!, moment: moment! }),
    loads,
  });
  const corners = cornersOf(polygon);
  return { stations, forward: corners.lower.map(toLoading), aft: corners.upper.map(toLoading) };
}

/** The loading of a polygon with the CG furthest to a side: M/W has its extremes at vertices. */
export function extremeOf(polygon: LoadingPolygon, side: Side): Loading {
  const aftwards = side === 'aft' ? 1 : -1;
  return polygon[side].reduce((one, other) => (aftwards * (other.cg - one.cg) > 0 ? other : one));
}
