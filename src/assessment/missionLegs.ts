import type { AircraftInFlight } from '../engineering/aircraftInFlight.ts';
import { type Trip, type TripObstacle, type TripPlan, tripOverDistance } from '../engineering/trip.ts';
import type { Mission } from '../tables/mission.ts';
import { type FieldAir, fieldAir, homeField } from './field.ts';

/** The flight there, or the flight home. */
export interface Leg {
  readonly name: 'out' | 'back';
  readonly field: FieldAir;
  readonly flown: Trip & { readonly possible: true };
  /** aboard before start-up */
  readonly fuel: number;
  /** what is left on landing */
  readonly fuelLeft: number;
}

/** Both flights; what stops the first that cannot be flown. */
export type Legs =
  | { readonly possible: true; readonly out: Leg; readonly back: Leg }
  | {
      readonly possible: false;
      readonly leg: 'out' | 'back';
      readonly stops: TripObstacle | typeof unsettledFuel;
    };

/** A search that ended without an answer: whether it flies is not known. */
export const unsettledFuel = 'the fuel for the distance and its own weight do not settle';

const fuelTolerance = 1e-3; // kg
const mostRounds = 30;

/** The destination's field; as home where nothing is said. */
export function destinationField(mission: Mission): FieldAir {
  const { destinationElevation = mission.elevation, destinationTemperature = mission.temperature } = mission;
  return fieldAir(destinationElevation, destinationTemperature);
}

/**
 * A trip with no more fuel than it takes. The fuel weighs, and what weighs takes fuel: repeated until they agree, each
 * round from where the two before it lead to (Aitken), for what a kilogram of fuel takes hardly changes.
 * @param mass without the fuel of this trip
 * @returns the trip, what stops it, or that they do not agree
 */
function leastFuelTrip(
  aircraft: AircraftInFlight,
  plan: TripPlan,
  mass: number,
  distance: number,
): Trip | { readonly possible: false; readonly stops: typeof unsettledFuel } {
  let fuel = 0;
  let before: { fuel: number; needed: number } | undefined;
  for (let round = 0; ; round++) {
    const trip = tripOverDistance(aircraft, plan, mass + fuel, distance);
    if (!trip.possible || Math.abs(trip.totalFuel - fuel) < fuelTolerance) return trip;
    if (round >= mostRounds) return { possible: false, stops: unsettledFuel };
    const { totalFuel: needed } = trip;
    const slope = before ? Math.min(0.9, (needed - before.needed) / (fuel - before.fuel)) : 0;
    before = { fuel, needed };
    fuel = (needed - slope * fuel) / (1 - slope);
  }
}

/**
 * Out against the headwind, back with it behind, with the least fuel that leaves the reserve: bought at both ends, or
 * taken along for the way home.
 * @param mass empty aircraft, people and bags
 */
export function missionLegs(
  mission: Mission,
  distance: number,
  aircraft: AircraftInFlight,
  taxiFuel: number,
  mass: number,
): Legs {
  const there = destinationField(mission);
  const plan = (field: FieldAir, headwind: number, reserveTime: number): TripPlan => ({
    fieldAltitude: field.air.pressureAltitude,
    cruiseAltitude: Math.max(mission.cruiseAltitude, field.air.pressureAltitude),
    temperatureDeviation: field.temperatureDeviation,
    setting: mission.cruiseSetting,
    mixture: 'lean',
    headwind,
    taxiFuel,
    reserveTime,
  });
  const home = homeField(mission);
  const back = leastFuelTrip(aircraft, plan(there, -mission.headwind, mission.reserve), mass, distance);
  if (!back.possible) return { possible: false, leg: 'back', stops: back.stops };
  const takenAlong = mission.refuel ? 0 : back.totalFuel;
  const out = leastFuelTrip(
    aircraft,
    plan(home, mission.headwind, mission.refuel ? mission.reserve : 0),
    mass + takenAlong,
    distance,
  );
  if (!out.possible) return { possible: false, leg: 'out', stops: out.stops };
  const leg = (name: Leg['name'], field: FieldAir, flown: Leg['flown'], carried: number): Leg => ({
    name,
    field,
    flown,
    fuel: flown.totalFuel + carried,
    fuelLeft: flown.reserveFuel + carried,
  });
  return { possible: true, out: leg('out', home, out, takenAlong), back: leg('back', there, back, 0) };
}
