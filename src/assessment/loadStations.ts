import type { Station as LoadStation } from '../engineering/loading.ts';
import type { StationGroup } from '../engineering/loadingPolygon.ts';
import type { Package } from '../tables/packages.ts';
import type { Station } from '../tables/stations.ts';
import type { Tank } from '../tables/tanks.ts';

/** Seats and baggage as they are loaded. */
export const seatStations = (stations: readonly Station[]): LoadStation[] =>
  stations.map(({ name, arm, minimum, maximum }) => ({ name, arm, minimum, maximum }));

/** Tanks as stations: fuel weight between none and full. */
export const tankStations = (engine: Package, tanks: readonly Tank[]): LoadStation[] =>
  tanks.map(({ name, arm, usable }) => ({ name, arm, minimum: 0, maximum: usable * engine.fuelDensity }));

/** Seats and baggage that share a limit. */
export function stationGroups(stations: readonly Station[]): StationGroup[] {
  const groups = new Map<string, { name: string; stations: string[]; maximum: number }>();
  for (const { name, group, groupMaximum } of stations) {
    if (group === undefined || groupMaximum === undefined) continue;
    const entry = groups.get(group) ?? { name: group, stations: [], maximum: groupMaximum };
    entry.stations.push(name);
    groups.set(group, entry);
  }
  return [...groups.values()];
}

/**
 * How a quantity of fuel lies in the tanks: those burnt last are filled first, tanks of the same burn order to the same
 * share. What the tanks do not hold is left over.
 * @source common practice, no source
 */
export function fuelInTanks(tanks: readonly Tank[], volume: number): number[] {
  const lastBurntFirst = [...new Set(tanks.map(({ burnOrder }) => burnOrder))].sort((a, b) => b - a);
  const filling = tanks.map(() => 0);
  let left = volume;
  for (const order of lastBurntFirst) {
    const capacity = tanks.reduce(
      (sum, { burnOrder, usable }) => (burnOrder === order ? sum + usable : sum),
      0,
    );
    const share = Math.min(1, left / capacity);
    tanks.forEach(({ burnOrder, usable }, index) => {
      if (burnOrder === order) filling[index] = share * usable;
    });
    left -= share * capacity;
  }
  return filling;
}
