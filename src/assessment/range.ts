import { type PayloadRange, payloadRange } from '../engineering/payloadRange.ts';
import type { Context } from './context.ts';
import { stationGroups } from './loadStations.ts';
import type { MissionCase } from './missionCase.ts';

/** What all seats and bays hold together. */
function cabinLimit({ catalogue }: Context): number {
  const groups = stationGroups(catalogue.stations);
  const grouped = new Set(groups.flatMap(({ stations }) => stations));
  const alone = catalogue.stations.filter(({ name }) => !grouped.has(name));
  const heldBy = (names: readonly string[]) =>
    catalogue.stations.reduce((sum, { name, maximum }) => (names.includes(name) ? sum + maximum : sum), 0);
  return (
    alone.reduce((sum, { maximum }) => sum + maximum, 0) +
    groups.reduce((sum, { stations, maximum }) => sum + Math.min(maximum, heldBy(stations)), 0)
  );
}

/**
 * Payload against range from the mission's field, at its cruise power and altitude and with its reserve, on a standard day
 * without wind, with the empty weight to be counted on. Undefined where flight or fuel are not known, or not even a pilot
 * of the mission's weight can be carried.
 */
export function rangeOf(
  context: Context,
  { aircraft, empty, tanks, engine, taxiFuel }: MissionCase,
): PayloadRange | undefined {
  const { airframe, mission } = context.catalogue;
  const usableFuel = tanks.reduce((sum, { usable }) => sum + usable, 0) * engine.fuelDensity;
  if (aircraft === undefined || usableFuel === 0) return undefined;
  const { maximumTakeoffWeight, maximumRampWeight = maximumTakeoffWeight, maximumZeroFuelWeight } = airframe;
  const limit = Math.min(
    cabinLimit(context),
    (maximumZeroFuelWeight ?? Number.POSITIVE_INFINITY) - empty.weight,
  );
  if (limit < 0) return undefined;
  return payloadRange(
    aircraft,
    {
      fieldAltitude: mission.elevation,
      cruiseAltitude: Math.max(mission.cruiseAltitude, mission.elevation),
      temperatureDeviation: 0,
      setting: mission.cruiseSetting,
      mixture: 'lean',
      headwind: 0,
      taxiFuel,
      reserveTime: mission.reserve,
    },
    {
      emptyMass: empty.weight,
      maximumMass: Math.min(maximumRampWeight, maximumTakeoffWeight + taxiFuel),
      cabinLimit: limit,
      usableFuel,
      leastPayload: Math.min(limit, mission.personWeight),
    },
  );
}
