import { seaLevelDensity } from '../engineering/air.ts';
import { liftCoefficient } from '../engineering/dragPolar.ts';
import { bsfcFromMassFlow } from '../engineering/fuelFlow.ts';
import type { Airframe } from '../tables/airframe.ts';
import type { Catalogue } from '../tables/catalogue.ts';
import { nameKey } from '../tables/cell.ts';
import type { CoolingStreamRow } from '../tables/cooling.ts';
import type { FuelPoint } from '../tables/fuelPoints.ts';
import type { KnownPoint } from '../tables/knownPoints.ts';
import type { Package } from '../tables/packages.ts';
import type { Tank } from '../tables/tanks.ts';
import type { TestName, TestResult } from '../tables/testResults.ts';
import type { Assessment } from './assess.ts';
import type { Context } from './context.ts';
import { flapSettings } from './stallSpeeds.ts';
import { compareResults } from './testComparison.ts';
import { airspeedOf, geometricClimb } from './testOutcome.ts';

/** Rows of the tables as the measurements make them; undefined where nothing was measured for a table. */
export interface AdoptedResults {
  /** all of the table: the aircraft's own flights in place of another's */
  readonly knownPoints: readonly KnownPoint[] | undefined;
  /** those of this package */
  readonly fuelPoints: readonly FuelPoint[] | undefined;
  readonly cooling: readonly CoolingStreamRow[] | undefined;
  readonly airframe: Partial<Pick<Airframe, 'liftClean' | 'liftTakeoff' | 'liftLanding'>>;
  readonly engine: Partial<Pick<Package, 'staticRpm' | 'fuelPumpFlow'>>;
  readonly tanks: readonly Tank[] | undefined;
}

const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
const since = ({ test, date }: TestResult) => `${test}, ${date}`;

/** The level flight nearest to the power of cruise comes first: at its speed the propeller has its cruise efficiency. */
function knownPoints(
  catalogue: Catalogue,
  engine: Package,
  results: readonly TestResult[],
): KnownPoint[] | undefined {
  const flown = (test: TestName) => results.filter((result) => result.test === test);
  const point = (result: TestResult, condition: KnownPoint['condition']): KnownPoint => ({
    package: engine.name,
    condition,
    power: result.power as number,
    weight: result.weight as number,
    altitude: result.altitude as number,
    temperature: result.temperature,
    airspeed: condition === 'takeoff roll' ? undefined : airspeedOf(result),
    climbRate: condition === 'climb' ? geometricClimb(result) : undefined,
    roll: result.roll,
    source: since(result),
    row: result.row,
    defaulted: [],
  });
  const awayFromCruise = ({ power }: KnownPoint) =>
    Math.abs(power / engine.continuousPower - catalogue.mission.cruiseSetting);
  const levels = flown('level flight')
    .map((result) => point(result, 'level flight'))
    .sort((one, other) => awayFromCruise(one) - awayFromCruise(other));
  const climbs = flown('climb').map((result) => point(result, 'climb'));
  const rolls = flown('takeoff roll').map((result) => point(result, 'takeoff roll'));
  if (levels.length + climbs.length + rolls.length === 0) return undefined;
  const kept = (condition: KnownPoint['condition']) =>
    catalogue.knownPoints.filter((known) => known.condition === condition);
  // Climbs are judged by the drag of level flights: another aircraft's climbs do not go with this one's level flights
  return [
    ...(levels.length > 0 ? levels : kept('level flight')),
    ...(climbs.length > 0 ? climbs : levels.length > 0 ? [] : kept('climb')),
    ...(rolls.length > 0 ? rolls : kept('takeoff roll')),
  ];
}

/** Measured over predicted consumption of a mixture: the maker's curve keeps its shape, the aircraft sets its level. */
function consumptionFactor(
  context: Context,
  assessment: Assessment,
  results: readonly TestResult[],
  mixture: FuelPoint['mixture'],
): number | undefined {
  const measured = results.filter((result) => result.test === 'fuel flow' && result.mixture === mixture);
  const ratios = compareResults(context, assessment, measured).flatMap((each) =>
    each.measured && each.predicted ? [each.measured / each.predicted] : [],
  );
  return ratios.length > 0 ? mean(ratios) : undefined;
}

function fuelPoints(
  context: Context,
  assessment: Assessment,
  results: readonly TestResult[],
): FuelPoint[] | undefined {
  const { package: engine } = assessment;
  const own = context.fuelPoints.of(engine.name);
  const measured = results.filter(({ test }) => test === 'fuel flow');
  if (measured.length === 0) return undefined;
  if (own.length === 0) {
    return measured.map((result) => ({
      package: engine.name,
      mixture: result.mixture as FuelPoint['mixture'],
      setting: (result.power as number) / engine.continuousPower,
      bsfc: bsfcFromMassFlow((result.fuelFlow as number) * engine.fuelDensity, result.power as number),
      fuelFlow: undefined,
      row: result.row,
      defaulted: [],
    }));
  }
  const factors = {
    rich: consumptionFactor(context, assessment, results, 'rich'),
    lean: consumptionFactor(context, assessment, results, 'lean'),
  };
  return own.map((point) => {
    const factor = factors[point.mixture] ?? 1;
    return {
      ...point,
      bsfc: point.bsfc && point.bsfc * factor,
      fuelFlow: point.fuelFlow && point.fuelFlow * factor,
    };
  });
}

/**
 * A stream's constant from its climbs: the one that is hotter than predicted by the middle amount, of an even number the
 * hotter of the two in the middle; a single wild reading does not move it.
 */
function middleClimb(
  context: Context,
  assessment: Assessment,
  climbs: readonly TestResult[],
): TestResult | undefined {
  const byExcess = compareResults(context, assessment, climbs)
    .filter(({ measured }) => measured !== undefined)
    .map(({ result, measured = 0, predicted = 0 }) => ({ result, excess: measured - predicted }))
    .sort((one, other) => one.excess - other.excess);
  return byExcess[Math.floor(byExcess.length / 2)]?.result;
}

function cooling(
  context: Context,
  assessment: Assessment,
  results: readonly TestResult[],
): CoolingStreamRow[] | undefined {
  const climbs = results.filter(({ test }) => test === 'cooling climb');
  if (climbs.length === 0) return undefined;
  return context.cooling.of(assessment.package.name).map((row) => {
    const own = climbs.filter(({ stream }) => stream === row.stream);
    const climb = middleClimb(context, assessment, own);
    if (climb === undefined) return row;
    return {
      ...row,
      knownPower: climb.power,
      knownAirspeed: airspeedOf(climb),
      knownAltitude: climb.altitude,
      knownOat: climb.temperature,
      knownTemperature: climb.measuredTemperature,
      source: since(climb),
    };
  });
}

/** Of every flap setting the least C_L of its stalls: that of the forward CG, which stall speeds are stated for. */
function maximumLifts({ airframe }: Catalogue, results: readonly TestResult[]): AdoptedResults['airframe'] {
  const keys = { clean: 'liftClean', takeoff: 'liftTakeoff', landing: 'liftLanding' } as const;
  const entries = flapSettings.flatMap((flaps) => {
    const stalls = results.filter((result) => result.test === 'stall' && result.flaps === flaps);
    const lifts = stalls.map(({ weight = 0, calibratedAirspeed = 0 }) =>
      liftCoefficient(weight, airframe.wingArea, calibratedAirspeed, seaLevelDensity),
    );
    return lifts.length > 0 ? [[keys[flaps], Math.min(...lifts)] as const] : [];
  });
  return Object.fromEntries(entries);
}

/** Rows of the tables from what was measured. */
export function adoptResults(
  context: Context,
  assessment: Assessment,
  results: readonly TestResult[],
): AdoptedResults {
  const { catalogue } = context;
  const { package: engine } = assessment;
  const of = (test: TestName) => results.filter((result) => result.test === test);
  const rpms = of('static rpm').map(({ rpm = 0 }) => rpm);
  const delivered = of('fuel flow on the ground').map(({ fuelFlow = 0 }) => fuelFlow);
  const drained = of('unusable fuel');
  const most = (tank: Tank) =>
    drained
      .filter((result) => nameKey(result.tank ?? '') === nameKey(tank.name))
      .reduce<number | undefined>((volume, result) => Math.max(volume ?? 0, result.volume ?? 0), undefined);
  return {
    knownPoints: knownPoints(catalogue, engine, results),
    fuelPoints: fuelPoints(context, assessment, results),
    cooling: cooling(context, assessment, results),
    airframe: maximumLifts(catalogue, results),
    engine: {
      ...(rpms.length > 0 && engine.propeller !== 'constant speed'
        ? { staticRpm: mean(rpms) / engine.takeoffRpm }
        : {}),
      ...(delivered.length > 0 ? { fuelPumpFlow: Math.min(...delivered) } : {}),
    },
    tanks:
      drained.length > 0
        ? catalogue.tanks.map((tank) => ({ ...tank, unusable: most(tank) ?? tank.unusable }))
        : undefined,
  };
}

/** The catalogue with those rows in its tables. */
export function withResults(catalogue: Catalogue, engine: Package, adopted: AdoptedResults): Catalogue {
  const isOther = ({ package: name }: { readonly package: string }) => nameKey(name) !== nameKey(engine.name);
  return {
    ...catalogue,
    airframe: { ...catalogue.airframe, ...adopted.airframe },
    packages: catalogue.packages.map((each) => (each === engine ? { ...each, ...adopted.engine } : each)),
    knownPoints: adopted.knownPoints ?? catalogue.knownPoints,
    fuelPoints: adopted.fuelPoints
      ? [...catalogue.fuelPoints.filter(isOther), ...adopted.fuelPoints]
      : catalogue.fuelPoints,
    cooling: adopted.cooling ? [...catalogue.cooling.filter(isOther), ...adopted.cooling] : catalogue.cooling,
    tanks: adopted.tanks ?? catalogue.tanks,
  };
}
