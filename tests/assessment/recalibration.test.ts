/** A simulated aircraft with constants of its own: its test points must give them back. */
import { describe, expect, test } from 'vitest';
import { adoptResults, withResults } from '../../src/assessment/adoptResults.ts';
import { type Assessment, assess, type Basis, basisOf } from '../../src/assessment/assess.ts';
import { configure } from '../../src/assessment/configuration.ts';
import { type Context, contextOf, packageNamed } from '../../src/assessment/context.ts';
import { flownAirframe } from '../../src/assessment/knownFlights.ts';
import { constantsOf, flightScatter, recalibrate } from '../../src/assessment/recalibration.ts';
import { compareResults } from '../../src/assessment/testComparison.ts';
import { geometricClimb } from '../../src/assessment/testOutcome.ts';
import type { Catalogue } from '../../src/tables/catalogue.ts';
import { nameKey } from '../../src/tables/cell.ts';
import type { TestResult } from '../../src/tables/testResults.ts';
import { toSi } from '../../src/units.ts';
import { asBuilt } from './asBuilt.ts';
import { type Noise, noNoise, SimulatedAircraft } from './simulatedAircraft.ts';

const kt = (value: number) => toSi('speed', value, 'kt');
const hp = (value: number) => toSi('power', value, 'hp');
const lb = (value: number) => toSi('mass', value, 'lb');
const ft = (value: number) => toSi('height', value, 'ft');

const { catalogue } = asBuilt();
const engine = packageNamed(catalogue, 'Rowan');
function prediction(): { basis: Basis; context: Context; predicted: Assessment } {
  const basis = basisOf(catalogue);
  return { basis, context: basis.context, predicted: assess(basis, engine) };
}
const adoptedOf = (...results: TestResult[]) => {
  const { context, predicted } = prediction();
  return adoptResults(context, predicted, results);
};

/** Slower, less efficient in the climb, thirstier and hotter than the tables say; e is better. */
const truth: Catalogue = {
  ...catalogue,
  airframe: { ...catalogue.airframe, oswaldEfficiency: 0.78, propellerClimb: 0.7 },
  knownPoints: catalogue.knownPoints.map((point) => ({ ...point, airspeed: kt(140) })),
  fuelPoints: catalogue.fuelPoints.map((point) => ({ ...point, bsfc: (point.bsfc ?? 0) * 1.06 })),
  cooling: catalogue.cooling.map((row) => ({
    ...row,
    knownTemperature: (row.knownTemperature ?? 0) + 8,
  })),
};

/** Level flights at a spread of powers and weights, climbs at the speed at which the propeller has its climb value. */
function flights(aircraft: SimulatedAircraft): TestResult[] {
  const { climbSpeed } = aircraft.flown.propeller;
  const levels = [
    [139, 2400, 8000, 0],
    [125, 2380, 8000, 5],
    [110, 2360, 8000, 5],
    [98, 2340, 8000, 5],
    [88, 2320, 8000, 5],
    [139, 2150, 6000, 10],
    [112, 2130, 6000, 10],
    [92, 2110, 6000, 10],
  ] as const;
  const climbs = [
    [175, 2450, 2000, 8],
    [172, 2430, 3000, 8],
    [168, 2410, 4000, 8],
    [175, 2250, 2000, 12],
    [172, 2230, 3000, 12],
    [168, 2210, 4000, 12],
  ] as const;
  return [
    ...levels.map(([power, weight, height, warmer]) =>
      aircraft.level(hp(power), lb(weight), ft(height), warmer),
    ),
    ...climbs.map(([power, weight, height, warmer]) =>
      aircraft.climb(hp(power), lb(weight), ft(height), warmer, climbSpeed),
    ),
  ];
}

const aboard = () => new Set(configure(catalogue, engine).equipment.map(({ name }) => nameKey(name)));
const contextWith = (results: readonly TestResult[]) =>
  contextOf(withResults(catalogue, engine, adoptedOf(...results)));

describe('without noise the constants come back', () => {
  const flying = () => new SimulatedAircraft(truth, 'Rowan', noNoise);

  test('drag, e and the propeller in the climb', () => {
    const aircraft = flying();
    const { flown } = flownAirframe(contextWith(flights(aircraft)), aboard());
    const real = constantsOf(aircraft.flown);
    // Cooling drag is one drag area in the prediction, and that of each flight in the fit: a few tenths of a per cent
    const found = flown && constantsOf(flown);
    expect(Math.abs((found?.zeroLiftDrag ?? 0) / real.zeroLiftDrag - 1)).toBeLessThan(0.01);
    expect(Math.abs((found?.spanEfficiency ?? 0) / real.spanEfficiency - 1)).toBeLessThan(0.02);
    expect(Math.abs((found?.climbEfficiency ?? 0) - real.climbEfficiency)).toBeLessThan(0.003);
  });

  test('they were not those of the prediction', () => {
    const { flown } = prediction().basis.flown;
    const before = flown && constantsOf(flown);
    const real = constantsOf(flying().flown);
    expect(Math.abs((before?.zeroLiftDrag ?? 0) / real.zeroLiftDrag - 1)).toBeGreaterThan(0.05);
    expect(Math.abs((before?.spanEfficiency ?? 0) - real.spanEfficiency)).toBeGreaterThan(0.05);
    expect(Math.abs((before?.climbEfficiency ?? 0) - real.climbEfficiency)).toBeGreaterThan(0.03);
  });

  test('consumption, from either mixture', () => {
    const aircraft = flying();
    const results = [
      aircraft.fuelFlow(0.75, 'lean'),
      aircraft.fuelFlow(0.6, 'lean'),
      aircraft.fuelFlow(0.95, 'rich'),
    ];
    const adopted = adoptedOf(...results);
    adopted.fuelPoints?.forEach((point, index) => {
      expect((point.bsfc ?? 0) / (catalogue.fuelPoints[index]?.bsfc ?? 1)).toBeCloseTo(1.06, 9);
    });
    const lean = adoptedOf(...results.slice(0, 1)).fuelPoints ?? [];
    for (const point of lean) {
      const before = catalogue.fuelPoints.find(({ row }) => row === point.row)?.bsfc ?? 1;
      expect((point.bsfc ?? 0) / before).toBeCloseTo(point.mixture === 'lean' ? 1.06 : 1, 9);
    }
  });

  test('cooling: temperatures of other climbs are then predicted', () => {
    const aircraft = flying();
    const { basis, context, predicted } = prediction();
    const results = (['fins', 'oil'] as const).map((stream) =>
      aircraft.coolingClimb(stream, hp(160), ft(4000), 6, kt(100)),
    );
    const { after } = recalibrate(basis, predicted, [...flights(aircraft), ...results]);
    const others = (['fins', 'oil'] as const).map((stream) =>
      aircraft.coolingClimb(stream, hp(145), ft(7000), 12, kt(92)),
    );
    const errors = (assessment: Assessment) =>
      compareResults(context, assessment, others).map(
        ({ measured = 0, predicted: was = 0 }) => measured - was,
      );
    for (const error of errors(after.assessment)) expect(Math.abs(error)).toBeLessThan(1);
    for (const error of errors(predicted)) expect(error).toBeGreaterThan(5); // planted: 8 K
  });

  test('then climb and speed are those of the true aircraft', () => {
    const { basis, predicted } = prediction();
    const { after } = recalibrate(basis, predicted, flights(flying()));
    const whole = assess(
      { ...basisOf(truth), bareAirframe: basis.bareAirframe },
      packageNamed(truth, 'Rowan'),
    );
    const rate = (assessment: Assessment) => assessment.flight?.seaLevel.bestRate.takeoff.rateOfClimb ?? 0;
    expect(rate(after.assessment) / rate(whole)).toBeCloseTo(1, 2);
    expect(Math.abs(rate(predicted) / rate(whole) - 1)).toBeGreaterThan(0.02);
  });
});

describe('with noise they come back within the band of the noise', () => {
  const noise: Noise = { airspeed: 0.004, power: 0.01, climbRate: 0.1 }; // 0.5 kt, 1 %, 20 ft/min
  const repetitions = 20;
  const repeated = (index: number) => {
    const aircraft = new SimulatedAircraft(truth, 'Rowan', noise, 100 + index);
    const context = contextWith(flights(aircraft));
    const equipment = aboard();
    const { flown } = flownAirframe(context, equipment);
    if (flown === undefined) throw new Error('must fly');
    return {
      found: constantsOf(flown),
      scatter: flightScatter(context, equipment),
      real: constantsOf(aircraft.flown),
    };
  };
  const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;

  test('two standard errors hold nineteen times in twenty, give or take; no bias', () => {
    const founds = Array.from({ length: repetitions }, (_, index) => repeated(index));
    for (const constant of ['zeroLiftDrag', 'spanEfficiency', 'climbEfficiency'] as const) {
      const errors = founds.map(({ found, real }) => found[constant] - real[constant]);
      const scatters = founds.map(({ scatter }) => scatter?.[constant] ?? Number.NaN);
      const within = errors.filter((error, index) => Math.abs(error) <= 2 * (scatters[index] as number));
      expect(within.length, constant).toBeGreaterThanOrEqual(0.85 * repetitions);
      const spread = Math.sqrt(mean(errors.map((error) => error ** 2)));
      // leaving one out is on the careful side: the middle scatter against what the repetitions show
      const middle = [...scatters].sort((one, other) => one - other)[repetitions / 2] ?? Number.NaN;
      expect(middle / spread, constant).toBeGreaterThan(0.7);
      expect(middle / spread, constant).toBeLessThan(2);
      expect(Math.abs(mean(errors)), constant).toBeLessThan(
        (3 * spread) / Math.sqrt(repetitions) + 0.01 * (founds[0]?.real[constant] ?? 0),
      );
    }
  });

  test('more flights, less scatter', () => {
    const aircraft = new SimulatedAircraft(truth, 'Rowan', noise, 5);
    const once = flights(aircraft);
    const often = [...once, ...flights(aircraft), ...flights(aircraft), ...flights(aircraft)];
    const scatter = (results: readonly TestResult[]) =>
      flightScatter(contextWith(results), aboard())?.zeroLiftDrag ?? 1;
    expect(scatter(often)).toBeLessThan(0.75 * scatter(once));
  });

  describe('how many flights it takes', () => {
    const scatterOf = (...results: TestResult[]) => flightScatter(contextWith(results), aboard());
    const flown = () => flights(new SimulatedAircraft(truth, 'Rowan', noise, 5));
    const roll = {
      test: 'takeoff roll',
      date: '2026-05-20',
      power: hp(183),
      weight: lb(2350),
      altitude: ft(500),
      temperature: 293.15,
      roll: 260,
    } as TestResult;

    test('four are too few to tell; a takeoff roll is none', () => {
      const four = flown().slice(0, 4);
      expect(scatterOf(...four)).toBeUndefined();
      expect(scatterOf(...four, roll)).toBeUndefined();
    });

    test('one that cannot be spared: the only one in level flight', () => {
      expect(scatterOf(...flown().slice(0, 1), ...flown().slice(8, 12))).toBeUndefined();
    });

    test('five: s² = 4/5 of the squares about the mean of the five without one (jackknife, Tukey 1958, from memory)', () => {
      const five = flown().slice(0, 5);
      const scatter = scatterOf(...five);
      const without = five.map((_, left) => {
        const { flown: polar } = flownAirframe(
          contextWith(five.filter((_each, index) => index !== left)),
          aboard(),
        );
        return polar?.dragPolar.zeroLiftDragCoefficient ?? Number.NaN;
      });
      const squares = without.reduce((sum, value) => sum + (value - mean(without)) ** 2, 0);
      expect((scatter?.zeroLiftDrag ?? 0) / Math.sqrt(0.8 * squares)).toBeCloseTo(1, 6);
    });
  });
});

describe('rows made of results', () => {
  const result = (values: Partial<TestResult>) =>
    ({ row: 9, defaulted: [], date: '2026-06-01', ...values }) as unknown as TestResult;

  test('the level flight nearest to cruise power comes first', () => {
    const aircraft = new SimulatedAircraft(truth, 'Rowan', noNoise);
    const { knownPoints } = adoptedOf(
      aircraft.level(hp(100), lb(2400), ft(8000), 0),
      aircraft.level(hp(140), lb(2400), ft(8000), 0), // 75 % of 185 hp is 138.75
      aircraft.level(hp(160), lb(2400), ft(4000), 0),
    );
    expect(knownPoints?.map(({ power }) => Math.round(power / hp(1)))).toEqual([140, 160, 100]);
  });

  test('climbs alone leave the level flight known before', () => {
    const aircraft = new SimulatedAircraft(truth, 'Rowan', noNoise);
    const { knownPoints } = adoptedOf(aircraft.climb(hp(170), lb(2400), ft(3000), 0, kt(85)));
    expect(knownPoints?.map(({ condition }) => condition)).toEqual(['level flight', 'climb']);
    expect(knownPoints?.[0]).toBe(catalogue.knownPoints[0]);
  });

  test('a climb by the altimeter, 20 °C above standard at 10,000 ft: 288.3/268.3 of it', () => {
    const climbed = result({ test: 'climb', altitude: ft(10_000), temperature: 268.338 + 20, climbRate: 5 });
    expect(geometricClimb(climbed)).toBeCloseTo((5 * 288.338) / 268.338, 3);
  });

  test('the least C_L of the stalls, worked by hand', () => {
    // 1,000 kg on 13.9355 m² at 28 m/s: 9,806.65 / (0.6125 × 784 × 13.9355)
    const { airframe } = adoptedOf(
      result({ test: 'stall', flaps: 'clean', weight: 1000, calibratedAirspeed: 28 }),
      result({ test: 'stall', flaps: 'clean', weight: 1000, calibratedAirspeed: 27 }),
    );
    expect(airframe.liftClean).toBeCloseTo(9806.65 / (0.6125 * 784 * 13.935456), 4);
    expect(airframe.liftLanding).toBeUndefined();
  });

  test('the middle one of three cooling climbs, so that a wild reading does nothing', () => {
    const aircraft = new SimulatedAircraft(truth, 'Rowan', noNoise);
    const climbs = [10, 2, 300].map((hotter) => {
      const climb = aircraft.coolingClimb('fins', hp(160), ft(4000), 0, kt(100));
      return { ...climb, measuredTemperature: (climb.measuredTemperature ?? 0) + hotter };
    });
    const fins = adoptedOf(...climbs).cooling?.find(({ stream }) => stream === 'fins');
    expect(fins?.knownTemperature).toBe(climbs[0]?.measuredTemperature);
  });

  test('a constant-speed propeller has no static rpm to adopt; a fixed pitch has', () => {
    expect(adoptedOf(result({ test: 'static rpm', rpm: 39 })).engine).toEqual({});
    const { context, predicted } = prediction();
    const fixed = { ...predicted, package: { ...engine, propeller: 'fixed pitch' as const } };
    const { engine: values } = adoptResults(context, fixed, [
      result({ test: 'static rpm', rpm: 38 }),
      result({ test: 'static rpm', rpm: 40 }),
    ]);
    expect(values.staticRpm).toBeCloseTo(39 / 45, 9); // of 2,700 rpm
  });

  test('the greatest unusable fuel, the least delivery', () => {
    const { tanks, engine: values } = adoptedOf(
      result({ test: 'unusable fuel', tank: 'Wing tanks', volume: 0.009 }),
      result({ test: 'unusable fuel', tank: 'wing tanks', volume: 0.007 }),
      result({ test: 'fuel flow on the ground', fuelFlow: 3e-5 }),
      result({ test: 'fuel flow on the ground', fuelFlow: 2e-5 }),
    );
    expect(tanks?.find(({ name }) => name === 'wing tanks')?.unusable).toBe(0.009);
    expect(tanks?.find(({ name }) => name === 'long-range tanks')?.unusable).toBe(0);
    expect(values.fuelPumpFlow).toBe(2e-5);
  });

  test('nothing measured, nothing changed', () => {
    expect(withResults(catalogue, engine, adoptedOf())).toEqual(catalogue);
  });
});
