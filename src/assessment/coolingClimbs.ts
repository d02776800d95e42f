import { hotDayTemperature, standardTemperature } from '../engineering/air.ts';
import { type Air, airAt, type Rating, shaftPower } from '../engineering/aircraftInFlight.ts';
import { bestRateOfClimb } from '../engineering/climb.ts';
import type { CoolingCondition } from '../engineering/coolingStream.ts';
import type { Package } from '../tables/packages.ts';
import type { Context } from './context.ts';
import { coolingConditionOf } from './coolingCondition.ts';
import type { Flight } from './flight.ts';
import { heightsBetween, heightsClimbed, powerCorners, scanHeights, withSpeedCorner } from './scanHeights.ts';

export type ClimbSpeed = 'best rate' | 'cooling climb';

/** A steady climb in which the streams are judged. */
export interface CoolingClimb {
  readonly rating: Rating;
  readonly speed: ClimbSpeed;
  readonly trueAirspeed: number;
  readonly air: Air;
  readonly condition: CoolingCondition;
}

const hotDayDeviation = (altitude: number) => hotDayTemperature(altitude) - standardTemperature(altitude);

/** The hot day of the cooling tests at a height. */
export const hotDayAir = (altitude: number) => airAt(altitude, hotDayDeviation(altitude));

/** Full throttle at a speed in some air. */
export function conditionIn(
  engine: Package,
  { aircraft }: Flight,
  rating: Rating,
  air: Air,
  trueAirspeed: number,
): CoolingCondition {
  const power = shaftPower(aircraft, rating, air)(trueAirspeed);
  return coolingConditionOf(aircraft, engine.heatingValue, air, trueAirspeed, power);
}

/**
 * Climbs at both ratings (one, where takeoff power is no more than continuous), at best-rate speed and at the stated
 * cooling-climb speed (at height the best-rate speed where that has become faster).
 * As far as it climbs by 100 ft/min or more, and with takeoff power as far as its minutes last.
 */
function climbsAt(
  engine: Package,
  flight: Flight,
  heights: readonly number[],
  deviationAt: (altitude: number) => number,
  takeoffPowerTop: number,
): CoolingClimb[] {
  const { aircraft, mass } = flight;
  const { takeoffPower, continuousPower, coolingClimbSpeed } = engine;
  const ratings: readonly Rating[] =
    takeoffPower > continuousPower * (1 + 1e-9) ? ['continuous', 'takeoff'] : ['continuous'];
  return ratings.flatMap((rating) => {
    const bestAt = (altitude: number) =>
      bestRateOfClimb(aircraft, rating, airAt(altitude, deviationAt(altitude)), mass);
    const within = rating === 'takeoff' ? heights.filter((each) => each <= takeoffPowerTop) : heights;
    const climbed = heightsClimbed(within, (altitude) => bestAt(altitude).rateOfClimb);
    const looked = withSpeedCorner(climbed, (altitude) => bestAt(altitude).trueAirspeed, coolingClimbSpeed);
    return looked.flatMap((altitude) => {
      const air = airAt(altitude, deviationAt(altitude));
      const best = bestAt(altitude);
      const climb = (speed: ClimbSpeed, trueAirspeed: number): CoolingClimb => ({
        rating,
        speed,
        trueAirspeed,
        air,
        condition: conditionIn(engine, flight, rating, air, trueAirspeed),
      });
      const atBestRate = climb('best rate', best.trueAirspeed);
      return coolingClimbSpeed === undefined
        ? [atBestRate]
        : [atBestRate, climb('cooling climb', Math.max(coolingClimbSpeed, best.trueAirspeed))];
    });
  });
}

/** The greatest height to which the minutes of takeoff power last from the mission's field or from sea level. */
function takeoffPowerTop(flight: Flight): number {
  const { field, atField, aircraft } = flight;
  const rate = Math.max(0, atField.bestRate.takeoff.rateOfClimb);
  return Math.max(0, field.air.pressureAltitude) + (rate === 0 ? 0 : rate * aircraft.takeoffPowerTime);
}

/** The hot day from sea level to the ceiling, looked at among others where the heat is known. */
export function hotDayClimbs(
  context: Context,
  engine: Package,
  flight: Flight,
  heatKnownAt: readonly number[],
): CoolingClimb[] {
  const top = takeoffPowerTop(flight);
  const corners = [...powerCorners(context, engine), ...heatKnownAt, flight.field.air.pressureAltitude, top];
  const heights = scanHeights(flight.ceiling.pressureAltitude, corners);
  return climbsAt(engine, flight, heights, hotDayDeviation, top);
}

/** The mission's day from its field to its cruise altitude. */
export function missionClimbs(
  context: Context,
  engine: Package,
  flight: Flight,
  heatKnownAt: readonly number[],
): CoolingClimb[] {
  const { elevation, cruiseAltitude } = context.catalogue.mission;
  const top = Math.max(elevation, cruiseAltitude);
  const takeoffTop = takeoffPowerTop(flight);
  const corners = [...powerCorners(context, engine), ...heatKnownAt, takeoffTop];
  const heights = heightsBetween(elevation, top, corners);
  return climbsAt(engine, flight, heights, () => flight.field.temperatureDeviation, takeoffTop);
}
