/** Predictions from one cruise point each, with the default constants only, against published figures. */
import { densityRatio, seaLevelDensity } from '../../src/engineering/air.ts';
import { type AircraftInFlight, airAt } from '../../src/engineering/aircraftInFlight.ts';
import { bestRateOfClimb, ceiling } from '../../src/engineering/climb.ts';
import { aspectRatio, liftCoefficient } from '../../src/engineering/dragPolar.ts';
import { naturallyAspirated, powerAvailable } from '../../src/engineering/enginePower.ts';
import { fixedPitchSpeedFraction } from '../../src/engineering/fixedPitch.ts';
import { dragOfKnownFlight, polarThroughPoint } from '../../src/engineering/knownFlight.ts';
import { fullThrottleLevelSpeed } from '../../src/engineering/levelFlight.ts';
import {
  climbAnchorSpeed,
  defaultEfficiency,
  defaultFixedPitchSpeedFraction,
  propellerEfficiency,
} from '../../src/engineering/propellerEfficiency.ts';
import { rollingFriction, takeoff } from '../../src/engineering/takeoff.ts';
import { fromSi, toSi } from '../../src/units.ts';
import {
  type CertificatedAircraft,
  certificatedAircraft,
  type Figure,
  figures,
} from './certificatedAircraft.ts';

export interface Comparison {
  readonly aircraft: CertificatedAircraft;
  readonly figure: Figure;
  readonly published: number;
  readonly predicted: number;
  /** predicted/published − 1 */
  readonly error: number;
}

/** Every published figure with its prediction. */
export function compareAll(): Comparison[] {
  return certificatedAircraft.flatMap((aircraft) => {
    const predictions = predict(aircraft);
    return figures.flatMap((figure) => {
      const published = aircraft.published[figure];
      if (published === undefined) return [];
      const predicted = predictions[figure];
      return [{ aircraft, figure, published, predicted, error: predicted / published - 1 }];
    });
  });
}

const rootMeanSquare = (comparisons: readonly Comparison[]) =>
  Math.sqrt(comparisons.reduce((sum, { error }) => sum + error ** 2, 0) / comparisons.length);

/** Errors of a group of figures. */
export interface Summary {
  readonly title: string;
  readonly count: number;
  readonly rms: number;
  readonly mean: number;
  readonly worst: number;
}

export const percent = (fraction: number) => `${(100 * fraction).toFixed(1)} %`;
export const signedPercent = (fraction: number) =>
  fraction < 0 ? percent(fraction) : `+${percent(fraction)}`;

/** Errors by figure, by whether the aircraft had a say in the default constants, and of all. */
export function summaries(): Summary[] {
  const comparisons = compareAll();
  const of = (title: string, chosen: readonly Comparison[]): Summary => ({
    title,
    count: chosen.length,
    rms: rootMeanSquare(chosen),
    mean: chosen.reduce((sum, { error }) => sum + error, 0) / chosen.length,
    worst: Math.max(...chosen.map(({ error }) => Math.abs(error))),
  });
  const used = (kind: string) => comparisons.filter(({ aircraft }) => aircraft.used === kind);
  return [
    ...figures.map((figure) =>
      of(
        figure,
        comparisons.filter((one) => one.figure === figure),
      ),
    ),
    of('aircraft held out of the choice of constants', used('held out')),
    of('aircraft used in the choice', used('choice')),
    of('all', comparisons),
  ];
}

function predict(given: CertificatedAircraft): Record<Figure, number> {
  const aircraft = modelOf(given);
  const mass = toSi('mass', given.weightLb, 'lb');
  const air = airAt(0);
  const climb = bestRateOfClimb(aircraft, 'continuous', air, mass);
  const run = takeoff(aircraft, {
    air,
    mass,
    maximumLiftCoefficient:
      aircraft.maximumLiftCoefficient +
      given.takeoffFlap * (liftAtStall(given, given.stallLandingKt) - aircraft.maximumLiftCoefficient),
    dragArea: 0,
    rollingFriction: rollingFriction.pavement,
    slope: 0,
    headwind: 0,
    groundRollFactor: 1,
  });
  if (!run.possible) throw new Error(`${given.name} does not take off`);
  return {
    climb: fromSi('climb', climb.rateOfClimb, 'ft/min'),
    'best-climb speed': fromSi('speed', climb.trueAirspeed, 'kt'),
    'service ceiling': fromSi('height', ceiling(aircraft, 'continuous', mass).pressureAltitude, 'ft'),
    'ground roll': fromSi('length', run.groundRoll, 'ft'),
    'over 50 ft': fromSi('length', run.distanceTo50Feet, 'ft'),
  };
}

function liftAtStall(given: CertificatedAircraft, stallKt: number): number {
  return liftCoefficient(
    toSi('mass', given.weightLb, 'lb'),
    toSi('area', given.wingAreaFt2, 'ft²'),
    toSi('speed', stallKt, 'kt'),
    seaLevelDensity,
  );
}

function modelOf(given: CertificatedAircraft): AircraftInFlight {
  const wingArea = toSi('area', given.wingAreaFt2, 'ft²');
  const mass = toSi('mass', given.weightLb, 'lb');
  const rating = toSi('power', given.powerHp, 'hp');
  const propellerDiameter = toSi('length', given.propellerDiameterIn, 'in');
  const cruiseSpeed = toSi('speed', given.cruiseKt, 'kt');
  const cruise = dragOfKnownFlight(
    {
      shaftPower: given.cruisePowerFraction * rating,
      trueAirspeed: cruiseSpeed,
      density: seaLevelDensity * densityRatio(toSi('height', given.cruiseAltitudeFt, 'ft')),
      mass,
      propellerDiameter,
      rateOfClimb: 0,
      dragArea: 0,
    },
    defaultEfficiency.cruise,
  );
  const dragPolar = polarThroughPoint(
    cruise,
    wingArea,
    aspectRatio(toSi('length', given.spanFt, 'ft'), wingArea),
  );
  const climbSpeed = climbAnchorSpeed(dragPolar, wingArea, mass);
  const efficiency = propellerEfficiency(defaultEfficiency, climbSpeed, cruiseSpeed);
  const law = { altitudeLaw: naturallyAspirated, temperatureExponent: 0.5, controlled: false };
  const constantSpeed: AircraftInFlight = {
    wingArea,
    dragPolar,
    maximumLiftCoefficient: liftAtStall(given, given.stallCleanKt),
    propellerDiameter,
    propellerEfficiency: (trueAirspeed) => efficiency(trueAirspeed).value,
    shaftSpeedFraction: () => 1,
    fullThrottlePower: (_, pressureAltitude, temperature) =>
      powerAvailable(law, rating, pressureAltitude, temperature).power,
    maximumContinuousPower: rating,
    takeoffPowerTime: Number.POSITIVE_INFINITY,
    fuelFlow: () => 0, // no published figure here needs it
  };
  if (given.propeller === 'constant speed') return constantSpeed;
  const speeds = {
    staticFraction: defaultFixedPitchSpeedFraction.static,
    bestClimbFraction: defaultFixedPitchSpeedFraction.climb,
    levelFraction: defaultFixedPitchSpeedFraction.levelFlight,
    bestClimbSpeed: climbSpeed,
    levelSpeed: fullThrottleLevelSpeed(constantSpeed, mass),
  };
  return {
    ...constantSpeed,
    shaftSpeedFraction: (trueAirspeed) => fixedPitchSpeedFraction(speeds, trueAirspeed).value,
  };
}
