import type { Air } from '../engineering/aircraftInFlight.ts';
import { calibratedFromTrue, trueFromCalibrated } from '../engineering/airspeed.ts';
import { type BestClimb, bestRateOfClimb } from '../engineering/climb.ts';
import { cgMargins, heaviest } from '../engineering/envelope.ts';
import { loadedWith } from '../engineering/loading.ts';
import { takeoff } from '../engineering/takeoff.ts';
import { toSi } from '../units.ts';
import type { Assessment } from './assess.ts';
import type { Context } from './context.ts';
import { governing } from './cooling.ts';
import { hardRunway, takeoffFrom } from './field.ts';
import type { Flight } from './flight.ts';
import { fuelVolumeFlow } from './fuelUse.ts';
import { loadingWords } from './loadingWords.ts';
import { seatStations, tankStations } from './loadStations.ts';
import { stallAt } from './stallSpeeds.ts';
import { bands, type CardFigure, type TestCard } from './testCard.ts';
import { soloStations } from './testLoading.ts';

const approachFactor = 1.3; // of the stall in landing configuration: common practice
const percent = (share: number) => `${Math.round(share * 100)} %`;
const settings = [0.75, 0.65, 0.55];

/** Calibrated; none where it does not climb. */
const speedOf = ({ rateOfClimb, trueAirspeed }: BestClimb, { pressureAltitude, temperature }: Air) =>
  rateOfClimb > 0 ? calibratedFromTrue(trueAirspeed, pressureAltitude, temperature) : undefined;

/** Pilot alone, full tanks. */
function firstFlightsCard(context: Context, assessment: Assessment): TestCard {
  const { airframe, stations: all } = context.catalogue;
  const { package: engine, configuration, empty, balance, flight } = assessment;
  const seats = seatStations(soloStations(all));
  const tanks = tankStations(engine, configuration.tanks);
  const stations = [...seats, ...tanks];
  const loads = [...seats.map(({ minimum }) => minimum), ...tanks.map(({ maximum }) => maximum)];
  const { weight, cg } = loadedWith(empty.mass.nominal, stations, loads);
  const margin =
    weight <= heaviest(balance.envelope) ? cgMargins(balance.envelope, weight, cg).nearest : undefined;
  const landing = stallAt(airframe, weight, 'landing');
  const run =
    flight &&
    takeoff(
      flight.aircraft,
      takeoffFrom(airframe, flight.field.air, hardRunway, weight, flight.groundRollFactor),
    );
  const air = flight?.field.air;
  const climb = flight && bestRateOfClimb(flight.aircraft, 'takeoff', flight.field.air, weight);
  const climbSpeed = air && climb && speedOf(climb, air);
  return {
    name: 'first flights',
    setUp: `pilot alone, full tanks: ${loadingWords(context, assessment, { stations, loads, ballast: undefined })}; within gliding distance of the field`,
    figures: [
      { label: 'takeoff weight', shown: 'weight', predicted: weight, limit: airframe.maximumTakeoffWeight },
      {
        label: `CG ${context.display.text('arm', cg)}: margin`,
        shown: 'arm',
        predicted: margin,
        limit: 0,
        least: true,
      },
      {
        label: 'ground roll at the mission’s field, hard',
        shown: 'runway',
        predicted: run?.possible ? run.groundRoll : undefined,
        band: bands.roll,
      },
      {
        label: 'rate of climb there, takeoff power',
        shown: 'climb',
        predicted: climb?.rateOfClimb,
        band: bands.climb,
      },
      { label: '  at, calibrated', shown: 'speed', predicted: climbSpeed, band: bands.climbSpeed },
      {
        label: 'stall, clean, calibrated',
        shown: 'speed',
        predicted: stallAt(airframe, weight, 'clean'),
        band: bands.stall,
      },
      { label: 'stall, landing, calibrated', shown: 'speed', predicted: landing, band: bands.stall },
      {
        label: 'approach, 1.3 times that',
        shown: 'speed',
        predicted: approachFactor * landing,
        band: bands.stall,
      },
      { label: 'VNO, calibrated', shown: 'speed', limit: airframe.cruiseLimitSpeed },
    ],
    record: 'temperatures, pressures, volts, fuel flow every minute; control forces, trim, anything odd',
    reduce: 'nothing: it is flown to come home',
    caution:
      'ground cards done, weighed, inspected; nobody else aboard; a plan for the engine stopping at every point',
  };
}

const calibrationSteps = 5;
const greatestPositionError = { share: 0.03, speed: toSi('speed', 5, 'kt') } as const; // 14 CFR 23.1323 before amendment 64, from memory

/** From slow flight to VNO in even steps; without a VNO only where it begins is known. */
function calibrationCard({ catalogue: { airframe } }: Context): TestCard {
  const slowest = approachFactor * stallAt(airframe, airframe.maximumTakeoffWeight, 'clean');
  const { cruiseLimitSpeed } = airframe;
  const steps = cruiseLimitSpeed === undefined || cruiseLimitSpeed <= slowest ? 1 : calibrationSteps;
  const speeds = Array.from(
    { length: steps },
    (_, step) => slowest + (step / calibrationSteps) * ((cruiseLimitSpeed ?? slowest) - slowest),
  );
  const { share, speed: least } = greatestPositionError;
  return {
    name: 'airspeed calibration',
    setUp:
      'level, steady, from 1.3 times the stall to short of VNO in five steps; three or four tracks at right angles each',
    figures: speeds.map((speed, step) => ({
      label: `run ${step + 1}: calibrated, flown at this indicated`,
      shown: 'speed',
      predicted: speed,
      band: { amount: Math.max(least, share * speed) },
      limit: cruiseLimitSpeed,
    })),
    record: 'indicated airspeed, satellite ground speed and track of each run, pressure altitude, OAT',
    reduce:
      'mean of opposite tracks is true airspeed; calibrated from it by pressure altitude and OAT; the difference to indicated is the position error',
    caution:
      'outside the band, 3 % or 5 kt, the greater: a better static source (14 CFR 23.1323 before amendment 64, from memory); until then every speed on these cards is uncertain by it',
  };
}

function levelCard({ display, catalogue }: Context, assessment: Assessment, flight: Flight): TestCard {
  const { package: engine, engine: curves } = assessment;
  const { cruiseAltitude } = catalogue.mission;
  const { neverExceedSpeed, neverExceedKind, cruiseLimitSpeed } = catalogue.airframe;
  const figures = settings.flatMap((setting): CardFigure[] => {
    const level = flight.levelAt(setting, cruiseAltitude);
    const flow = fuelVolumeFlow(engine, curves, setting, 'lean');
    return [
      {
        label: `true airspeed at ${percent(setting)}, ${display.text('power', setting * engine.continuousPower)}`,
        shown: 'speed',
        predicted: level.possible ? level.trueAirspeed : undefined,
        band: bands.levelSpeed,
        words: level.possible && level.fullThrottle ? 'full throttle: less power than that' : undefined,
      },
      {
        label: `fuel flow at ${percent(setting)}, lean`,
        shown: 'fuelFlow',
        predicted: flow?.flow,
        band: bands.fuelFlow,
      },
    ];
  });
  const trueOf = (speed: number | undefined) => speed && trueFromCalibrated(speed, cruiseAltitude);
  return {
    name: 'level flight',
    setUp: `steady for 3 minutes at ${display.text('height', cruiseAltitude)} pressure altitude, smooth air, mixture as in cruise; at least three powers`,
    figures: [
      ...figures,
      { label: 'VNO there, true', shown: 'speed', limit: trueOf(cruiseLimitSpeed) },
      {
        label: 'VNE there, true',
        shown: 'speed',
        limit: neverExceedKind === 'calibrated airspeed' ? trueOf(neverExceedSpeed) : neverExceedSpeed,
      },
    ],
    record: 'fuel aboard, rpm, manifold pressure',
    reduce:
      'V √(W_s/W), P √σ (W_s/W)^1.5: speed and power at standard weight at sea level, any height on one line (PIW and VIW, from memory)',
    caution:
      'VNE as the designer means it, true or calibrated; flutter: expand in steps, pull the power first',
  };
}

function climbCard({ display }: Context, { package: engine }: Assessment, flight: Flight): TestCard {
  const { seaLevel, atField, field } = flight;
  const height = display.text('height', field.air.pressureAltitude);
  const at = (where: typeof seaLevel, words: string): CardFigure[] => [
    {
      label: `rate of climb at takeoff power, ${words}`,
      shown: 'climb',
      predicted: where.bestRate.takeoff.rateOfClimb,
      band: bands.climb,
    },
    {
      label: `  at best-rate speed, calibrated`,
      shown: 'speed',
      predicted: speedOf(where.bestRate.takeoff, where.air),
      band: bands.climbSpeed,
    },
    {
      label: `rate of climb at MCP, ${words}`,
      shown: 'climb',
      predicted: where.bestRate.continuous.rateOfClimb,
      band: bands.climb,
    },
  ];
  return {
    name: 'climb',
    setUp: `at ${display.text('payload', flight.mass)}, through 1,000 ft either side of each height, five speeds around the best, up and down wind`,
    figures: [
      ...at(seaLevel, 'sea level, standard'),
      {
        label: 'best-angle speed, calibrated',
        shown: 'speed',
        predicted: speedOf(seaLevel.bestAngle, seaLevel.air),
        band: bands.climbSpeed,
      },
      ...at(atField, `${height} and ${display.text('oat', field.air.temperature)}`),
    ],
    record: 'time through the band, fuel aboard, rpm',
    reduce:
      'rate of pressure altitude times T/T_standard is the rate of climb; to another weight by excess power, R W; to another day by density altitude',
    caution: `${engine.takeoffMinutes === undefined ? 'temperatures' : `takeoff power no longer than ${display.text('minutes', engine.takeoffMinutes)}, temperatures`}; look out under the nose`,
  };
}

function coolingClimbCard({ display }: Context, assessment: Assessment, flight: Flight): TestCard {
  const { cooling } = assessment;
  const figures = (cooling?.streams ?? []).flatMap((each): CardFigure[] => {
    const worst = cooling && governing(cooling, flight, each);
    if (worst === undefined) return [];
    const { climb, result } = worst;
    return [
      {
        label: `${each.data.row.stream}, hot day, ${display.text('height', climb.air.pressureAltitude)}, ${display.text('speed', climb.trueAirspeed)} true`,
        shown: 'engineTemperature',
        predicted: result.temperature,
        band: bands.temperature,
        limit: each.stream.limit,
      },
    ];
  });
  return {
    name: 'cooling climb',
    setUp: `maximum weight, MCP, ${cooling?.recommended ?? 'best rate'} speed, mixture as in the climb, from as low as it is safe until temperatures have peaked and 5 minutes more (14 CFR 23.1047 before amendment 64, from memory)`,
    figures,
    record: 'all of it each minute',
    reduce:
      'add (hot day − OAT) at that pressure altitude to the peak (cylinder barrels 0.7 of it); hot day 38 °C less 2 °C each 1,000 ft (14 CFR 23.1043)',
    caution:
      'level off and open cowl flaps at the limit; a limit passed on a cold day is passed on every day',
  };
}

function fuelFlowCard({ package: engine, engine: curves }: Assessment): TestCard {
  const cases = [
    { setting: 1, mixture: 'rich' },
    { setting: 0.75, mixture: 'rich' },
    { setting: 0.75, mixture: 'lean' },
    { setting: 0.55, mixture: 'lean' },
  ] as const;
  return {
    name: 'fuel flow',
    setUp: 'one tank filled to a mark, 30 minutes at each setting on that tank alone',
    figures: cases.map(({ setting, mixture }) => ({
      label: `${percent(setting)} ${mixture}`,
      shown: 'fuelFlow' as const,
      predicted: fuelVolumeFlow(engine, curves, setting, mixture)?.flow,
      band: bands.fuelFlow,
    })),
    record: 'fuel to the mark again over time, the totaliser beside it',
    reduce: 'none: consumption for power hardly depends on the day',
    caution: 'the other tank full and proven',
  };
}

function rollCard({ catalogue }: Context, flight: Flight): TestCard {
  const run = takeoff(
    flight.aircraft,
    takeoffFrom(catalogue.airframe, flight.seaLevel.air, hardRunway, flight.mass, flight.groundRollFactor),
  );
  return {
    name: 'takeoff roll',
    setUp:
      'hard, level, wind below 3 kt, takeoff flaps, full throttle before the brakes go, lift-off at 1.1 times the stall; three runs',
    figures: [
      {
        label: 'ground roll, sea level, standard, maximum weight',
        shown: 'runway',
        predicted: run.possible ? run.groundRoll : undefined,
        band: bands.roll,
      },
    ],
    record: 'by runway lights or video; wind',
    reduce: 'by the ratio of measured to predicted in the same conditions; keep the longest of three',
    caution: 'point of no return marked; runway for stopping from lift-off',
  };
}

/** What is flown. */
export function flightCards(context: Context, assessment: Assessment): TestCard[] {
  const { flight } = assessment;
  const first = [firstFlightsCard(context, assessment), calibrationCard(context)];
  if (flight === undefined) return [...first, fuelFlowCard(assessment)];
  return [
    ...first,
    levelCard(context, assessment, flight),
    climbCard(context, assessment, flight),
    rollCard(context, flight),
    coolingClimbCard(context, assessment, flight),
    fuelFlowCard(assessment),
  ];
}
