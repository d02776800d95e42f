import { hotDayTemperature, standardTemperature } from '../engineering/air.ts';
import type { Air, AircraftInFlight } from '../engineering/aircraftInFlight.ts';
import { trueFromCalibrated } from '../engineering/airspeed.ts';
import { rateOfClimb } from '../engineering/climb.ts';
import { coolingResult } from '../engineering/coolingResult.ts';
import { fuelMassFlow } from '../engineering/fuelFlow.ts';
import { hotDayCorrected } from '../engineering/hotDay.ts';
import { levelFlight } from '../engineering/levelFlight.ts';
import { takeoff } from '../engineering/takeoff.ts';
import { nameKey } from '../tables/cell.ts';
import type { TestResult } from '../tables/testResults.ts';
import { atPower } from './aircraft.ts';
import type { Assessment } from './assess.ts';
import type { Context } from './context.ts';
import { coolingConditionOf } from './coolingCondition.ts';
import type { Shown } from './display.ts';
import { hardRunway, takeoffFrom } from './field.ts';
import { staticRpm } from './groundCards.ts';
import { airOf } from './knownAir.ts';
import { stallAt } from './stallSpeeds.ts';
import { type Band, bands } from './testCard.ts';

/** A result whose cells its test needs are all filled: the reader has seen to it. */
export type CompleteResult = { readonly [K in keyof TestResult]-?: NonNullable<TestResult[K]> };

/** True airspeed, from the calibrated one where that was written down. */
export const airspeedOf = ({ trueAirspeed, calibratedAirspeed = 0, altitude = 0, temperature }: TestResult) =>
  trueAirspeed ?? trueFromCalibrated(calibratedAirspeed, altitude, temperature);

/** An altimeter that climbs in warm air stands for thicker layers: times T/T_standard. */
export const geometricClimb = ({ climbRate = 0, altitude = 0, temperature }: TestResult) =>
  climbRate * ((temperature ?? standardTemperature(altitude)) / standardTemperature(altitude));

/** What a test showed, and what the tables say it should have. */
export interface TestOutcome {
  readonly what: string;
  readonly shown: Shown;
  readonly measured: number;
  readonly band: Band;
  readonly predicted?: number | undefined;
  readonly reduced?: number | undefined;
  readonly reducedTo?: string;
}

function inFlight(
  context: Context,
  { package: engine, flight }: Assessment,
  result: CompleteResult,
): TestOutcome {
  const { airframe, mission } = context.catalogue;
  const { power, weight } = result;
  const air = airOf(result);
  if (result.test === 'takeoff roll') {
    const rollOf = (mass: number, at: Air, held: AircraftInFlight | undefined) => {
      const run =
        flight && held && takeoff(held, takeoffFrom(airframe, at, hardRunway, mass, flight.groundRollFactor));
      return run?.possible ? run.groundRoll : undefined;
    };
    const predicted = rollOf(weight, air, flight && atPower(flight.aircraft, power));
    const standard = flight && rollOf(flight.mass, flight.seaLevel.air, flight.aircraft);
    return {
      what: 'ground roll',
      shown: 'runway',
      measured: result.roll,
      band: bands.roll,
      predicted,
      reduced: predicted && standard && (standard * result.roll) / predicted,
      reducedTo: 'sea level, standard, maximum weight',
    };
  }
  const trueAirspeed = airspeedOf(result);
  if (result.test === 'level flight') {
    const level = flight && levelFlight(atPower(flight.aircraft, power), 'continuous', air, weight);
    const predicted = level?.possible ? level.trueAirspeed : undefined;
    const setting = Math.min(1, power / engine.continuousPower);
    const standard = flight?.levelAt(setting, mission.cruiseAltitude);
    return {
      what: `true airspeed at ${context.display.text('power', power)}`,
      shown: 'speed',
      measured: trueAirspeed,
      band: bands.levelSpeed,
      predicted,
      reduced:
        predicted && standard?.possible ? (standard.trueAirspeed * trueAirspeed) / predicted : undefined,
      reducedTo: 'cruise altitude, standard, maximum weight, this power if it is there',
    };
  }
  const measured = geometricClimb(result);
  const predicted =
    flight && rateOfClimb(atPower(flight.aircraft, power), 'continuous', air, weight, trueAirspeed);
  return {
    what: `rate of climb at ${context.display.text('speed', trueAirspeed)} true`,
    shown: 'climb',
    measured,
    band: bands.climb,
    predicted,
    reduced:
      flight && predicted !== undefined
        ? flight.seaLevel.bestRate.takeoff.rateOfClimb + measured - predicted
        : undefined,
    reducedTo: 'sea level, standard, maximum weight, takeoff power, best-rate speed',
  };
}

/** By kind of test. @throws RangeError where the conditions cannot be true */
export function outcomeOf(context: Context, assessment: Assessment, result: CompleteResult): TestOutcome {
  const { package: engine, fuel, electrical, configuration, flight, cooling, engine: curves } = assessment;
  const { airframe } = context.catalogue;
  const streamOf = () => cooling?.streams.find(({ data }) => data.row.stream === result.stream);
  switch (result.test) {
    case 'fuel flow on the ground':
      return {
        what: 'delivered',
        shown: 'fuelFlow',
        measured: result.fuelFlow,
        band: { amount: 0 },
        predicted: fuel.flowToDemonstrate,
      };
    case 'static rpm':
      return {
        what: 'rpm',
        shown: 'rpm',
        measured: result.rpm,
        band: bands.rpm,
        predicted: staticRpm(engine),
      };
    case 'battery':
      return {
        what: 'on the battery',
        shown: 'minutes',
        measured: result.time,
        band: bands.battery,
        predicted: electrical.batteryTime,
      };
    case 'unusable fuel': {
      const tank = configuration.tanks.find(({ name }) => nameKey(name) === nameKey(result.tank));
      return {
        what: result.tank,
        shown: 'fuel',
        measured: result.volume,
        band: bands.fuelFlow,
        predicted: tank?.unusable,
      };
    }
    case 'cooling on the ground': {
      const height = flight?.field.air.pressureAltitude ?? 0;
      const hot = hotDayTemperature(height);
      return {
        what: `${result.stream}, on the hot day`,
        shown: 'engineTemperature',
        measured: hotDayCorrected(result.measuredTemperature, result.temperature, hot),
        band: bands.temperature,
        predicted: streamOf()?.idleTemperature,
      };
    }
    case 'fuel flow': {
      const { power, mixture, fuelFlow } = result;
      const bsfc = curves.consumption[mixture]?.(power / engine.continuousPower).bsfc;
      return {
        what: `at ${context.display.text('power', power)}, ${mixture}`,
        shown: 'fuelFlow',
        measured: fuelFlow,
        band: bands.fuelFlow,
        predicted: bsfc && fuelMassFlow(power, bsfc) / engine.fuelDensity,
      };
    }
    case 'cooling climb': {
      const air = airOf(result);
      const { measuredTemperature, power } = result;
      const stream = streamOf()?.stream;
      const condition =
        flight && coolingConditionOf(flight.aircraft, engine.heatingValue, air, airspeedOf(result), power);
      return {
        what: `${result.stream} at ${context.display.text('height', air.pressureAltitude)}`,
        shown: 'engineTemperature',
        measured: measuredTemperature,
        band: bands.temperature,
        predicted: stream && condition && coolingResult(stream, condition).temperature,
        reduced: hotDayCorrected(
          measuredTemperature,
          air.temperature,
          hotDayTemperature(air.pressureAltitude),
        ),
        reducedTo: 'hot day at that height',
      };
    }
    case 'stall': {
      const { weight, flaps, calibratedAirspeed } = result;
      return {
        what: `stall, ${flaps}, calibrated`,
        shown: 'speed',
        measured: calibratedAirspeed,
        band: bands.stall,
        predicted: stallAt(airframe, weight, flaps),
        reduced: calibratedAirspeed * Math.sqrt(airframe.maximumTakeoffWeight / weight),
        reducedTo: 'maximum weight',
      };
    }
    default:
      return inFlight(context, assessment, result);
  }
}
