import { airAt } from '../engineering/aircraftInFlight.ts';
import { bestRateOfClimb, rateOfClimb } from '../engineering/climb.ts';
import { speedMargins } from '../engineering/speedLimits.ts';
import { takeoff } from '../engineering/takeoff.ts';
import { toSi } from '../units.ts';
import { type Condition, measured, shareLeft, stated } from './condition.ts';
import { oxygenAltitude } from './cost.ts';
import { homeRunway, takeoffFrom } from './field.ts';
import { climbSpeedIn, type MissionCase } from './missionCase.ts';
import { coolingCondition } from './missionCooling.ts';
import type { Leg, Legs } from './missionLegs.ts';
import type { LegBalance, MissionLoading } from './missionLoading.ts';
import type { SeatingPlan } from './seating.ts';

const leastClimbScale = toSi('climb', 100, 'ft/min'); // a climb condition of 0 is measured against this

/** People, bags and the airframe's own limits: what can be said without knowing how it flies. */
export function groundConditions(asked: MissionCase, plan: SeatingPlan): Condition[] {
  const { mission, barred, context } = asked;
  const { display } = context;
  const { persons, personWeight, bags, cruiseAltitude } = mission;
  const short = Math.min(0, plan.seats - persons);
  const seats = plan.seatings.length > 0 ? Math.max(0, plan.seats - persons) : Math.min(short, -1);
  const bagRoom = Math.max(...plan.seatings.map((seating) => seating.bagRoom));
  const [bar] = barred;
  const named = (name: string) => ({ name, leg: undefined });
  return [
    bar === undefined
      ? stated(named('limits'), 'met', 'within the airframe’s limits')
      : stated(named('limits'), 'missed', `${bar.subject}: ${bar.text}`),
    measured(
      named('seats'),
      'count',
      seats,
      seats < 0 ? seats / persons : 1,
      `${plan.seats} of ${display.text('payload', personWeight)} can sit`,
    ),
    plan.seatings.length === 0
      ? stated(named('bags'), 'not known', 'the people do not fit')
      : measured(
          named('bags'),
          'payload',
          bagRoom,
          bagRoom < 0 ? bagRoom / bags : 1,
          bagRoom < 0
            ? `${display.text('payload', -bagRoom)} find no room`
            : `room for ${display.text('payload', bagRoom)} more`,
        ),
    cruiseAltitude > oxygenAltitude
      ? stated(
          named('oxygen'),
          asked.hasOxygen ? 'met' : 'missed',
          `needed at ${display.text('height', cruiseAltitude)}`,
        )
      : stated(named('oxygen'), 'not asked', 'not needed at this height'),
  ];
}

/** The weight limit that leaves least on either leg; taxi fuel counts as taken off where no ramp weight is given. */
function weightCondition(asked: MissionCase, mass: number, legs: readonly Leg[]): Condition {
  const { airframe } = asked.context.catalogue;
  const { display } = asked.context;
  const { maximumTakeoffWeight, maximumRampWeight = maximumTakeoffWeight } = airframe;
  const limits = legs.flatMap(({ fuel, fuelLeft }) => [
    { name: 'start-up', weight: mass + fuel, limit: maximumRampWeight },
    { name: 'takeoff', weight: mass + fuel - asked.taxiFuel, limit: maximumTakeoffWeight },
    { name: 'landing', weight: mass + fuelLeft, limit: airframe.maximumLandingWeight },
    { name: 'zero-fuel', weight: mass, limit: airframe.maximumZeroFuelWeight },
  ]);
  const margins = limits
    .map(({ name, weight, limit = Number.POSITIVE_INFINITY }) => ({ name, weight, margin: limit - weight }))
    .sort((one, other) => one.margin - other.margin);
  const { name, weight, margin } = margins[0] as (typeof margins)[number];
  const words = `${name} weight ${display.text('weight', weight)}, at most ${display.text('weight', weight + margin)}`;
  return measured(
    { name: 'weight', leg: undefined },
    'weight',
    margin,
    shareLeft(weight + margin, weight),
    words,
  );
}

function balanceCondition(asked: MissionCase, leg: Leg['name'], balance: LegBalance | undefined): Condition {
  const named = { name: 'CG', leg };
  if (balance === undefined)
    return stated(named, 'not known', 'no seating, or heavier than the CG limits go');
  const { display } = asked.context;
  const { critical, margin, share } = balance;
  const words = `${display.text('arm', critical.cg)} at ${display.text('weight', critical.weight)}, ${critical.side} limit ${display.text('arm', critical.limit)}${asked.cgHalfWidth > 0 ? `, empty CG known to ±${display.text('arm', asked.cgHalfWidth)}` : ''}`;
  return measured(named, 'arm', margin, share, words);
}

function fieldConditions(asked: MissionCase, leg: Leg, mass: number): Condition[] {
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

function speedCondition(asked: MissionCase, { field, flown }: Leg): Condition {
  const named = { name: 'VNE', leg: undefined };
  const { neverExceedSpeed, neverExceedKind } = asked.context.catalogue.airframe;
  if (neverExceedSpeed === undefined) return stated(named, 'open', 'VNE is not given');
  const { display } = asked.context;
  const limits = {
    normalOperating: neverExceedSpeed,
    neverExceed: neverExceedSpeed,
    neverExceedIsTrue: neverExceedKind !== 'calibrated airspeed',
  };
  const air = airAt(asked.mission.cruiseAltitude, field.temperatureDeviation);
  const { neverExceed } = speedMargins(limits, flown.cruiseSpeed, air);
  const words = `cruise at ${display.text('speed', flown.cruiseSpeed)} true`;
  return measured(named, 'speed', neverExceed, neverExceed / neverExceedSpeed, words);
}

const flightNames = [
  { name: 'cruise', leg: undefined },
  { name: 'fuel', leg: undefined },
  { name: 'weight', leg: undefined },
  { name: 'CG', leg: 'out' },
  { name: 'CG', leg: 'back' },
  { name: 'takeoff', leg: 'out' },
  { name: 'climb', leg: 'out' },
  { name: 'cooling', leg: 'out' },
  { name: 'takeoff', leg: 'back' },
  { name: 'climb', leg: 'back' },
  { name: 'cooling', leg: 'back' },
  { name: 'VNE', leg: undefined },
] as const;

/** What depends on how it flies, and on the fuel that takes. */
export function flightConditions(
  asked: MissionCase,
  mass: number,
  legs: Legs | undefined,
  loading: MissionLoading | undefined,
): Condition[] {
  const { display } = asked.context;
  if (legs === undefined) {
    return flightNames.map((named) => stated(named, 'not known', 'speed or fuel consumption is not known'));
  }
  if (!legs.possible) {
    const [cruise, ...others] = flightNames;
    return [
      stated(cruise, 'missed', `${legs.leg}: ${legs.stops}`),
      ...others.map((named) => stated(named, 'not known', 'it does not get there')),
    ];
  }
  const { out, back } = legs;
  const capacity = asked.tanks.reduce((sum, { usable }) => sum + usable, 0);
  const most = Math.max(out.fuel, back.fuel) / asked.engine.fuelDensity;
  return [
    stated(flightNames[0], 'met', `${display.text('speed', out.flown.cruiseSpeed)} true`),
    measured(
      flightNames[1],
      'fuel',
      capacity - most,
      shareLeft(capacity, most),
      `${display.text('fuel', most)} with the reserve, the tanks hold ${display.text('fuel', capacity)}`,
    ),
    weightCondition(asked, mass, [out, back]),
    balanceCondition(asked, 'out', loading?.out),
    balanceCondition(asked, 'back', loading?.back),
    ...fieldConditions(asked, out, mass),
    ...fieldConditions(asked, back, mass),
    speedCondition(asked, out),
  ];
}
