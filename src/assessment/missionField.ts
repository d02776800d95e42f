import { bestRateOfClimb, rateOfClimb } from '../engineering/climb.ts';
import { takeoff } from '../engineering/takeoff.ts';
import { toSi } from '../units.ts';
import { type Condition, measured, shareLeft, stated } from './condition.ts';
import { homeRunway, takeoffFrom } from './field.ts';
import { climbSpeedIn, type MissionCase } from './missionCase.ts';
import { coolingCondition } from './missionCooling.ts';
import type { Leg } from './missionLegs.ts';

const leastClimbScale = toSi('climb', 100, 'ft/min'); // a climb condition of 0 is measured against this

/**
 * Takeoff, climb and its cooling from one field. Of the destination nothing but height, temperature and length is asked: its
 * surface is taken as that of the home field, level and without wind.
 */
export function fieldConditions(asked: MissionCase, leg: Leg, mass: number): Condition[] {
  const { mission, aircraft, context, groundRollFactor, taxiFuel } = asked;
  const { display, catalogue } = context;
  if (aircraft === undefined) return [];
  const takeoffMass = mass + leg.fuel - taxiFuel;
  const { air } = leg.field;
  const isHome = leg.name === 'out';
  const runway = isHome ? mission.runway : (mission.destinationRunway ?? mission.runway);
  const surface = isHome ? homeRunway(mission) : { ...homeRunway(mission), slope: 0, headwind: 0 };
  const run = takeoff(aircraft, takeoffFrom(catalogue.airframe, air, surface, takeoffMass, groundRollFactor));
  const takeoffName = { name: 'takeoff', leg: leg.name };
  const needed = run.possible ? run.distanceTo50Feet : 0;
  const takeoffCondition = !run.possible
    ? stated(takeoffName, 'missed', `the thrust does not suffice: ${run.stops}`)
    : runway === undefined
      ? stated(takeoffName, 'not asked', `${display.text('runway', needed)} to 50 ft; no runway length given`)
      : measured(
          takeoffName,
          'runway',
          runway - needed,
          shareLeft(runway, needed),
          `${display.text('runway', needed)} to 50 ft, ${display.text('runway', runway)} there`,
        );
  const best = bestRateOfClimb(aircraft, 'takeoff', air, takeoffMass);
  const speed = climbSpeedIn(asked, best.trueAirspeed);
  const rate = rateOfClimb(aircraft, 'takeoff', air, takeoffMass, speed);
  const least = mission.minimumClimb;
  return [
    takeoffCondition,
    measured(
      { name: 'climb', leg: leg.name },
      'climb',
      rate - least,
      (rate - least) / Math.max(rate, least, leastClimbScale),
      `${display.text('climb', rate)} at ${display.text('speed', speed)}, at least ${display.text('climb', least)}`,
    ),
    coolingCondition(asked, leg, takeoffMass),
  ];
}
