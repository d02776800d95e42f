import type { Mixture, Rating } from '../engineering/aircraftInFlight.ts';
import {
  type AltitudeLaw,
  type EnginePowerLaw,
  makersTable,
  naturallyAspirated,
  turbocharged,
} from '../engineering/enginePower.ts';
import {
  type BsfcEstimate,
  bsfcCurve,
  bsfcFromMassFlow,
  thermalEfficiency,
} from '../engineering/fuelFlow.ts';
import type { FuelPoint } from '../tables/fuelPoints.ts';
import type { Package } from '../tables/packages.ts';
import { practice } from '../tables/practice.ts';
import type { Context } from './context.ts';
import type { Finding } from './finding.ts';

/** BSFC at a power fraction of maximum continuous power. */
export type Consumption = (powerFraction: number) => BsfcEstimate;

/** One engine: its power at altitude and its fuel. */
export interface Engine {
  readonly law: Readonly<Record<Rating, EnginePowerLaw>>;
  readonly rated: Readonly<Record<Rating, number>>;
  /** of the propeller [rev/s] */
  readonly shaftSpeed: Readonly<Record<Rating, number>>;
  /** undefined where no fuel point is given */
  readonly consumption: Readonly<Partial<Record<Mixture, Consumption>>>;
  readonly findings: readonly Finding[];
}

function altitudeLaw(context: Context, engine: Package, rating: Rating, rated: number): AltitudeLaw {
  const points = context.powerPoints.of(engine.name).filter((point) => point.rating === rating);
  if (points.length > 0) {
    return makersTable(
      points.map(({ altitude, power }) => ({ x: altitude, y: power })),
      rated,
    );
  }
  return engine.criticalAltitude === undefined ? naturallyAspirated : turbocharged(engine.criticalAltitude);
}

function bsfcOf({ bsfc, fuelFlow, setting }: FuelPoint, engine: Package): number {
  return (
    bsfc ?? bsfcFromMassFlow((fuelFlow as number) * engine.fuelDensity, setting * engine.continuousPower)
  );
}

/** The curve of one mixture; where only the other was measured, that one stands in and it is said. */
function consumptionCurves(context: Context, engine: Package): Partial<Record<Mixture, Consumption>> {
  const points = context.fuelPoints.of(engine.name);
  const curveOf = (mixture: Mixture) => {
    const own = points
      .filter((point) => point.mixture === mixture)
      .map((point) => ({ powerFraction: point.setting, bsfc: bsfcOf(point, engine) }));
    return own.length > 0 ? bsfcCurve(own) : undefined;
  };
  const rich = curveOf('rich');
  const lean = curveOf('lean');
  return {
    ...((rich ?? lean) ? { rich: rich ?? (lean as Consumption) } : {}),
    ...((lean ?? rich) ? { lean: lean ?? (rich as Consumption) } : {}),
  };
}

function fuelFindings(context: Context, engine: Package): Finding[] {
  const points = context.fuelPoints.of(engine.name);
  const base = { package: engine.name, source: 'fuel points table' } as const;
  if (points.length === 0) {
    return [
      {
        ...base,
        gravity: 'check',
        subject: 'fuel consumption',
        text: 'no fuel points: fuel flow, endurance and range are not known',
      },
    ];
  }
  const findings: Finding[] = [];
  const mixtures = new Set(points.map(({ mixture }) => mixture));
  if (mixtures.size === 1 && engine.cycle !== 'compression ignition') {
    const only = [...mixtures][0] as Mixture;
    const other = only === 'rich' ? 'lean' : 'rich';
    findings.push({
      ...base,
      gravity: 'check',
      subject: 'fuel consumption',
      text: `no ${other} fuel points: the ${only} ones are used for both`,
    });
  }
  for (const point of points) {
    const { efficiency, plausible } = thermalEfficiency(bsfcOf(point, engine), engine.heatingValue);
    if (plausible) continue;
    findings.push({
      ...base,
      gravity: 'check',
      subject: 'fuel consumption',
      shown: 'percent',
      value: efficiency,
      source: `piston engines turn 15 to 45 % of the fuel’s heat into work: ${practice}`,
      text: `the fuel point at ${Math.round(point.setting * 100)} % ${point.mixture} cannot be right (thermal efficiency)`,
    });
  }
  return findings;
}

function ratingFindings(context: Context, engine: Package): Finding[] {
  const { approvedPower } = context.catalogue.airframe;
  const findings: Finding[] = [];
  if (engine.continuousPower > engine.takeoffPower * (1 + 1e-9)) {
    findings.push({
      gravity: 'check',
      package: engine.name,
      subject: 'maximum continuous power',
      shown: 'power',
      value: engine.continuousPower,
      limit: engine.takeoffPower,
      source: 'packages table',
      text: 'is more than its takeoff power: one of the two is wrong',
    });
  }
  if (approvedPower === undefined) {
    findings.push({
      gravity: 'check',
      package: '',
      subject: 'approved power',
      source: 'airframe table',
      text: 'the power the designer allows is not given: no package is checked against it',
    });
  } else if (engine.takeoffPower > approvedPower * (1 + 1e-9)) {
    findings.push({
      gravity: 'stop',
      package: engine.name,
      subject: 'takeoff power',
      shown: 'power',
      value: engine.takeoffPower,
      limit: approvedPower,
      source: 'airframe table: approved power',
      text: 'is more than the designer allows for this airframe',
    });
  }
  return findings;
}

export function engineOf(context: Context, engine: Package): Engine {
  const { takeoffPower, continuousPower, takeoffRpm, continuousRpm = takeoffRpm, gearRatio } = engine;
  const lawFor = (rating: Rating, rated: number): EnginePowerLaw => ({
    altitudeLaw: altitudeLaw(context, engine, rating, rated),
    temperatureExponent: engine.temperatureExponent,
    controlled: engine.controlled,
  });
  return {
    law: { takeoff: lawFor('takeoff', takeoffPower), continuous: lawFor('continuous', continuousPower) },
    rated: { takeoff: takeoffPower, continuous: continuousPower },
    shaftSpeed: { takeoff: takeoffRpm / gearRatio, continuous: continuousRpm / gearRatio },
    consumption: consumptionCurves(context, engine),
    findings: [...ratingFindings(context, engine), ...fuelFindings(context, engine)],
  };
}
