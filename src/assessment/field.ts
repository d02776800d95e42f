import { standardTemperature } from '../engineering/air.ts';
import { type Air, airAt } from '../engineering/aircraftInFlight.ts';
import { rollingFriction, type TakeoffConditions } from '../engineering/takeoff.ts';
import type { Airframe } from '../tables/airframe.ts';
import type { Mission } from '../tables/mission.ts';

/** The air at a field, and how much warmer than standard it is at every height above. */
export interface FieldAir {
  readonly air: Air;
  readonly temperatureDeviation: number; // K
}

/** The runway apart from its length. */
export type Runway = Pick<TakeoffConditions, 'rollingFriction' | 'slope' | 'headwind'>;

/** Hard, level, no wind: where a ground roll is measured. */
export const hardRunway: Runway = { rollingFriction: rollingFriction.pavement, slope: 0, headwind: 0 };

/** A field by its pressure altitude and temperature; standard where none is given. */
export function fieldAir(elevation: number, temperature: number | undefined): FieldAir {
  const standard = standardTemperature(elevation);
  const temperatureDeviation = (temperature ?? standard) - standard;
  return { air: airAt(elevation, temperatureDeviation), temperatureDeviation };
}

/** The mission's home field. */
export const homeField = ({ elevation, temperature }: Mission) => fieldAir(elevation, temperature);

export function homeRunway({ surface, slope, fieldWind }: Mission): Runway {
  const friction = {
    hard: rollingFriction.pavement,
    'short grass': rollingFriction['short grass'],
    'long grass': rollingFriction['long grass'],
    soft: rollingFriction['soft ground'],
  };
  return { rollingFriction: friction[surface], slope, headwind: fieldWind };
}

/** What the takeoff run needs to know beside the aircraft. */
export function takeoffFrom(
  airframe: Airframe,
  air: Air,
  runway: Runway,
  mass: number,
  groundRollFactor: number,
): TakeoffConditions {
  const { liftClean, liftTakeoff = liftClean, takeoffFlapDrag, wingArea } = airframe;
  const dragArea = takeoffFlapDrag * wingArea;
  return { air, mass, ...runway, maximumLiftCoefficient: liftTakeoff, dragArea, groundRollFactor };
}
