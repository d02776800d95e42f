import { airAt } from '../engineering/aircraftInFlight.ts';
import { speedMargins } from '../engineering/speedLimits.ts';
import { type Condition, measured, shareLeft, stated } from './condition.ts';
import type { MissionCase } from './missionCase.ts';
import { fieldConditions } from './missionField.ts';
import { type Leg, type Legs, unsettledFuel } from './missionLegs.ts';
import type { LegBalance, MissionLoading } from './missionLoading.ts';

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
  const { critical, share } = balance;
  const words = `${display.text('arm', critical.cg)} at ${display.text('weight', critical.weight)}, ${critical.side} limit ${display.text('arm', critical.limit)}${asked.cgHalfWidth > 0 ? `, empty CG known to ±${display.text('arm', asked.cgHalfWidth)}` : ''}`;
  return measured(named, 'arm', critical.margin, share, words);
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
    const unsettled = legs.stops === unsettledFuel;
    const why = unsettled ? 'its fuel is not known' : 'it does not get there';
    return [
      stated(cruise, unsettled ? 'not known' : 'missed', `${legs.leg}: ${legs.stops}`),
      ...others.map((named) => stated(named, 'not known', why)),
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
