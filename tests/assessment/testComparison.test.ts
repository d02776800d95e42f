import { describe, expect, test } from 'vitest';
import { assess, basisOf } from '../../src/assessment/assess.ts';
import { packageNamed } from '../../src/assessment/context.ts';
import { compareResults } from '../../src/assessment/testComparison.ts';
import type { TestResult } from '../../src/tables/testResults.ts';
import { toSi } from '../../src/units.ts';
import { asBuilt } from './asBuilt.ts';
import { noNoise, SimulatedAircraft } from './simulatedAircraft.ts';

const kt = (value: number) => toSi('speed', value, 'kt');
const hp = (value: number) => toSi('power', value, 'hp');
const lb = (value: number) => toSi('mass', value, 'lb');
const ft = (value: number) => toSi('height', value, 'ft');
const fahrenheit = (value: number) => toSi('temperature', value, '°F');

const { catalogue, build } = asBuilt();
const predicted = () => {
  const basis = basisOf(catalogue);
  return { context: basis.context, assessment: assess(basis, packageNamed(catalogue, 'Rowan')) };
};
const compared = (...results: TestResult[]) => {
  const { context, assessment } = predicted();
  return compareResults(context, assessment, results);
};
const result = (values: Partial<TestResult>) =>
  ({ row: 3, defaulted: [], date: '2026-06-01', ...values }) as unknown as TestResult;

describe('the predicted aircraft measures what was predicted', () => {
  const flown = {
    'level, fast': (aircraft) => aircraft.level(hp(139), lb(2400), ft(8000), 4),
    'level, slow': (aircraft) => aircraft.level(hp(95), lb(2100), ft(5000), -10),
    climb: (aircraft) => aircraft.climb(hp(170), lb(2400), ft(3000), 15, kt(85)),
    'fuel flow': (aircraft) => aircraft.fuelFlow(0.7, 'lean'),
    'cooling climb, fins': (aircraft) => aircraft.coolingClimb('fins', hp(160), ft(4000), 10, kt(100)),
    'cooling climb, oil': (aircraft) => aircraft.coolingClimb('oil', hp(160), ft(4000), 10, kt(100)),
  } satisfies Record<string, (aircraft: SimulatedAircraft) => TestResult>;
  const measuredIn = (name: keyof typeof flown) =>
    flown[name](new SimulatedAircraft(catalogue, 'Rowan', noNoise));

  test.each(Object.keys(flown) as (keyof typeof flown)[])('%s', (name) => {
    const [each] = compared(measuredIn(name));
    expect((each?.measured ?? 0) / (each?.predicted ?? 1)).toBeCloseTo(1, 3);
    expect(each?.inside).toBe(true);
  });

  test('calibrated airspeed will do as well as true', () => {
    const first = measuredIn('level, fast');
    const trueAirspeed = first.trueAirspeed as number;
    // slow enough for calibrated to be equivalent within 0.5 kt: V √σ, σ from 8,000 ft and 4 °C above standard
    const sigma = 0.78603 * (272.3 / 276.3);
    const [other] = compared({
      ...first,
      trueAirspeed: undefined,
      calibratedAirspeed: trueAirspeed * Math.sqrt(sigma),
    });
    expect(Math.abs((other?.measured ?? 0) - trueAirspeed)).toBeLessThan(kt(0.7));
  });

  test('reduced, it is the standard figure', () => {
    const [level, climb] = compared(measuredIn('level, fast'), measuredIn('climb'));
    const { flight } = predicted().assessment;
    const standard = flight?.levelAt(139 / 185, catalogue.mission.cruiseAltitude);
    expect(level?.reduced).toBeCloseTo(standard?.possible ? standard.trueAirspeed : 0, 2);
    expect(climb?.reduced).toBeCloseTo(flight?.seaLevel.bestRate.takeoff.rateOfClimb ?? 0, 6);
  });
});

describe('reduced by hand', () => {
  test('374 °F at 15 °C and 3,000 ft is 404 °F on the hot day of 89.2 °F there (14 CFR 23.1043)', () => {
    const [each] = compared(
      result({
        test: 'cooling climb',
        stream: 'fins',
        power: hp(165),
        altitude: ft(3000),
        temperature: 288.15,
        trueAirspeed: kt(100),
        measuredTemperature: fahrenheit(374),
      }),
    );
    expect(((each?.reduced ?? 0) * 9) / 5 - 459.67).toBeCloseTo(374 + (89.2 - 59), 2);
  });

  test('a stall of 50 kt at 2,016 lb is 55.9 kt at 2,520 lb', () => {
    const [each] = compared(
      result({ test: 'stall', flaps: 'clean', weight: lb(2016), calibratedAirspeed: kt(50) }),
    );
    expect((each?.reduced ?? 0) / kt(1)).toBeCloseTo(50 * Math.sqrt(1.25), 6);
  });
});

describe('inside or not', () => {
  const rpm = 45; // 2,700 rpm
  test.each([
    ['rpm within 3 %', { test: 'static rpm', rpm: rpm * 1.029 }, true],
    ['rpm beyond', { test: 'static rpm', rpm: rpm * 0.969 }, false],
    ['fuel enough', { test: 'fuel flow on the ground', fuelFlow: toSi('fuelFlow', 40, 'US gal/h') }, true],
    [
      'fuel too little',
      { test: 'fuel flow on the ground', fuelFlow: toSi('fuelFlow', 19, 'US gal/h') },
      false,
    ],
    ['a battery that lasts longer', { test: 'battery', time: 90 * 60 }, true],
    ['a battery that does not', { test: 'battery', time: 30 * 60 }, false],
    ['less unusable fuel', { test: 'unusable fuel', tank: 'wing tanks', volume: 0 }, true],
    ['more unusable fuel', { test: 'unusable fuel', tank: 'wing tanks', volume: 0.009 }, false],
  ] as const)('%s', (_, values, inside) => {
    expect(compared(result(values as Partial<TestResult>))[0]?.inside).toBe(inside);
  });

  test('what the tables do not predict is neither', () => {
    const [each] = compared(
      result({
        test: 'cooling on the ground',
        stream: 'coolant',
        temperature: 290,
        measuredTemperature: 350,
      }),
    );
    expect(each?.predicted).toBeUndefined();
    expect(each?.inside).toBeUndefined();
  });

  test('conditions that cannot be: said, not dropped', () => {
    const [each] = compared(
      result({
        test: 'level flight',
        power: hp(100),
        weight: lb(2400),
        altitude: ft(8000),
        temperature: 270,
        calibratedAirspeed: 400,
      }),
    );
    expect(each?.measured).toBeUndefined();
    expect(each?.what).toMatch(/^cannot be compared: airspeed must be below Mach 1/);
  });
});

test('the sample’s planted faults show: too slow, too hot, more unusable fuel; the others inside', () => {
  const outside = compared(...build.testResults)
    .filter(({ inside }) => inside === false)
    .map(({ result: { test: name, stream = '' } }) => `${name} ${stream}`.trim());
  expect(new Set(outside)).toEqual(new Set(['level flight', 'cooling climb fins', 'unusable fuel']));
});
