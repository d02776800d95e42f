import { airAt, shaftPower } from '../engineering/aircraftInFlight.ts';
import { bestRateOfClimb } from '../engineering/climb.ts';
import { coolingResult } from '../engineering/coolingResult.ts';
import { attempt } from './attempt.ts';
import { type Condition, measured, stated } from './condition.ts';
import { coolingConditionOf } from './coolingCondition.ts';
import { climbSpeedIn, type MissionCase } from './missionCase.ts';
import type { Leg } from './missionLegs.ts';
import { heightsBetween, heightsClimbed, powerCorners, withSpeedCorner } from './scanHeights.ts';

/**
 * The hottest stream in the climb of one leg at maximum continuous power, steady, from the field to the cruise altitude in
 * air as warm as at the field.
 */
export function coolingCondition(asked: MissionCase, leg: Leg, mass: number): Condition {
  const { aircraft, streams, engine, mission, context } = asked;
  const { display } = context;
  const named = { name: 'cooling', leg: leg.name };
  const known = streams.flatMap(({ stream }) => (stream ? [stream] : []));
  if (aircraft === undefined || known.length === 0) return stated(named, 'open', 'no cooling data');
  const { air: fieldAir, temperatureDeviation } = leg.field;
  const bottom = fieldAir.pressureAltitude;
  const top = Math.max(bottom, mission.cruiseAltitude);
  const heights = heightsBetween(bottom, top, powerCorners(context, engine));
  const bestAt = (altitude: number) =>
    bestRateOfClimb(aircraft, 'continuous', airAt(altitude, temperatureDeviation), mass);
  const { value: climbs, refusal } = attempt(() => {
    const climbed = heightsClimbed(heights, (altitude) => bestAt(altitude).rateOfClimb);
    const leastSpeed = asked.climb === 'cooling climb' ? engine.coolingClimbSpeed : undefined;
    const looked = withSpeedCorner(climbed, (altitude) => bestAt(altitude).trueAirspeed, leastSpeed);
    return looked.flatMap((altitude) => {
      const air = airAt(altitude, temperatureDeviation);
      const best = bestAt(altitude);
      const speed = climbSpeedIn(asked, best.trueAirspeed);
      const power = shaftPower(aircraft, 'continuous', air)(speed);
      const condition = coolingConditionOf(aircraft, engine.heatingValue, air, speed, power);
      return known.map((stream) => ({
        stream,
        altitude,
        speed,
        air,
        result: coolingResult(stream, condition),
      }));
    });
  });
  if (climbs === undefined) return stated(named, 'open', `the values do not go together: ${refusal}`);
  const noAir = climbs.find(({ result }) => result.margin === undefined);
  if (noAir) return stated(named, 'missed', `no air flows at ${display.text('height', noAir.altitude)}`);
  const share = ({ stream, result, air }: (typeof climbs)[number]) =>
    (result.margin as number) / Math.max(1, stream.limit - air.temperature);
  const worst = climbs.reduce((one, other) => (share(other) < share(one) ? other : one));
  const margin = worst.result.margin as number;
  const where = `${display.text('engineTemperature', worst.stream.limit - margin)} of ${display.text('engineTemperature', worst.stream.limit)} at ${display.text('speed', worst.speed)}, ${display.text('height', worst.altitude)}, ${display.text('oat', worst.air.temperature)}`;
  if (margin >= 0 && known.length < streams.length) {
    return stated(named, 'open', `${streams.length - known.length} of ${streams.length} streams not known`);
  }
  return measured(named, 'temperatureMargin', margin, share(worst), where);
}
