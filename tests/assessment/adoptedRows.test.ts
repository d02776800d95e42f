/** Which rows measurements become, and which rows of others stay: the builder's aircraft, and the Godwit with several packages. */
import { describe, expect, test } from 'vitest';
import { adoptResults, withResults } from '../../src/assessment/adoptResults.ts';
import { assess, basisOf } from '../../src/assessment/assess.ts';
import { packageNamed } from '../../src/assessment/context.ts';
import type { Catalogue } from '../../src/tables/catalogue.ts';
import type { KnownPoint } from '../../src/tables/knownPoints.ts';
import type { TestResult } from '../../src/tables/testResults.ts';
import { toSi } from '../../src/units.ts';
import { asBuilt } from './asBuilt.ts';
import { godwit } from './sampleCatalogue.ts';
import { noNoise, SimulatedAircraft } from './simulatedAircraft.ts';

const kt = (value: number) => toSi('speed', value, 'kt');
const hp = (value: number) => toSi('power', value, 'hp');
const lb = (value: number) => toSi('mass', value, 'lb');
const ft = (value: number) => toSi('height', value, 'ft');
const gallons = (value: number) => toSi('fuelFlow', value, 'US gal/h');

const { catalogue } = asBuilt();
const result = (values: Partial<TestResult>) =>
  ({ row: 9, defaulted: [], date: '2026-06-01', ...values }) as unknown as TestResult;

function adopted(results: readonly TestResult[], of: Catalogue = catalogue, name = 'Rowan') {
  const basis = basisOf(of);
  return adoptResults(basis.context, assess(basis, packageNamed(of, name)), results);
}

const inFlight = {
  power: hp(139),
  weight: lb(2400),
  altitude: ft(8000),
  temperature: 272.3,
  trueAirspeed: kt(142),
};
const level = result({ test: 'level flight', ...inFlight, climbRate: 1 });
const climb = result({ test: 'climb', ...inFlight, climbRate: 4, flaps: 'clean', calibratedAirspeed: 20 });
const roll = result({ test: 'takeoff roll', ...inFlight, roll: 260 });
const lean = (gallonsPerHour: number, power = 138.75) =>
  result({ test: 'fuel flow', mixture: 'lean', power: hp(power), fuelFlow: gallons(gallonsPerHour) });

describe('known points', () => {
  const known = (condition: KnownPoint['condition']): KnownPoint => ({
    ...(catalogue.knownPoints[0] as KnownPoint),
    condition,
    source: 'before',
  });
  const before: Catalogue = {
    ...catalogue,
    knownPoints: [known('level flight'), known('climb'), known('takeoff roll')],
  };
  const sources = (...results: TestResult[]) =>
    adopted(results, before).knownPoints?.map(({ condition, source }) => `${condition}: ${source}`);

  test('each condition with what it needs, and no more', () => {
    const [flown, climbed, rolled] = adopted([roll, climb, level]).knownPoints ?? [];
    expect(flown).toMatchObject({
      condition: 'level flight',
      airspeed: kt(142),
      climbRate: undefined,
      roll: undefined,
    });
    expect(climbed).toMatchObject({ condition: 'climb', airspeed: kt(142) });
    expect(climbed?.climbRate).toBeCloseTo(4, 2); // 0.0 K off standard
    expect(rolled).toMatchObject({
      condition: 'takeoff roll',
      airspeed: undefined,
      climbRate: undefined,
      roll: 260,
    });
    for (const point of [flown, climbed, rolled])
      expect(point).toMatchObject({
        package: 'Rowan',
        row: 9,
        defaulted: [],
        power: hp(139),
        weight: lb(2400),
      });
  });

  test('level flights take the place of another aircraft’s, and its climbs go with them; a roll is one by itself', () => {
    const day = '2026-06-01';
    expect(sources(level)).toEqual([`level flight: level flight, ${day}`, 'takeoff roll: before']);
    expect(sources(climb)).toEqual(['level flight: before', `climb: climb, ${day}`, 'takeoff roll: before']);
    expect(sources(roll)).toEqual([
      'level flight: before',
      'climb: before',
      `takeoff roll: takeoff roll, ${day}`,
    ]);
    expect(sources(level, climb)?.slice(0, 2)).toEqual([
      `level flight: level flight, ${day}`,
      `climb: climb, ${day}`,
    ]);
    expect(sources(level, roll)).toHaveLength(2);
    expect(sources(lean(10))).toBeUndefined();
  });
});

describe('fuel', () => {
  test('only fuel-flow tests count, and only those of the mixture', () => {
    expect(adopted([level]).fuelPoints).toBeUndefined();
    // 138.75 hp at 0.43 lb/hp·h and 6 lb/gal are 9.94375 gal/h
    const cruise = result({ ...level, mixture: 'lean', fuelFlow: gallons(99) });
    const points = adopted([lean(9.94375 * 1.1), cruise]).fuelPoints ?? [];
    const before = catalogue.fuelPoints;
    expect(points).toHaveLength(before.length);
    points.forEach(({ mixture, bsfc = 0, fuelFlow }, index) => {
      expect(bsfc / (before[index]?.bsfc ?? 1)).toBeCloseTo(mixture === 'lean' ? 1.1 : 1, 9);
      expect(fuelFlow).toBeUndefined();
    });
  });

  test('points told as fuel flow stay so: Hazel’s 7.1 gal/h at 75 % and 7.81 measured', () => {
    const measured = lean(7.81, 0.75 * 135);
    const points = adopted([measured], godwit, 'Hazel').fuelPoints ?? [];
    const before = godwit.fuelPoints.filter((each) => each.package === 'Hazel');
    expect(points).toHaveLength(before.length);
    const flows = points.filter(({ mixture }) => mixture === 'lean').map(({ fuelFlow }) => fuelFlow);
    expect(flows.map((flow) => (flow ?? 0) / gallons(1))).toEqual(
      [4.6, 5.3, 6.15, 7.1].map((flow) => expect.closeTo(flow * 1.1, 6)),
    );
    for (const { mixture, bsfc } of points) if (mixture === 'lean') expect(bsfc).toBeUndefined();
  });

  test('of a mixture without a curve nothing is compared: the other one’s points stay', () => {
    const onlyLean: Catalogue = {
      ...catalogue,
      fuelPoints: catalogue.fuelPoints.filter(({ mixture }) => mixture === 'lean'),
    };
    const rich = result({ ...lean(15, 176), mixture: 'rich' });
    const points = adopted([rich], onlyLean).fuelPoints ?? [];
    expect(points.map(({ bsfc }) => bsfc)).toEqual(onlyLean.fuelPoints.map(({ bsfc }) => bsfc));
  });

  test('without any the tests themselves: 9 gal/h of 6 lb on 120 hp of 185', () => {
    const [point, ...others] =
      adopted([lean(9, 120), level], { ...catalogue, fuelPoints: [] }).fuelPoints ?? [];
    expect(others).toEqual([]);
    expect(point).toMatchObject({
      package: 'Rowan',
      mixture: 'lean',
      fuelFlow: undefined,
      row: 9,
      defaulted: [],
    });
    expect(point?.setting).toBeCloseTo(120 / 185, 9);
    expect((point?.bsfc ?? 0) / toSi('bsfc', 1, 'lb/hp·h')).toBeCloseTo((9 * 6) / 120, 6);
  });
});

describe('cooling', () => {
  const climbOf = (power: number, hotter: number) => {
    const aircraft = new SimulatedAircraft(catalogue, 'Rowan', noNoise);
    const flown = aircraft.coolingClimb('fins', hp(power), ft(4000), 0, kt(100));
    return { ...flown, measuredTemperature: (flown.measuredTemperature ?? 0) + hotter };
  };
  const fins = (...climbs: TestResult[]) => adopted(climbs).cooling?.find(({ stream }) => stream === 'fins');

  test('the middle one by how much hotter it is than predicted, not by how hot', () => {
    expect(fins(climbOf(165, 10), climbOf(120, 30), climbOf(140, 0))?.knownPower).toBeCloseTo(hp(165), 6);
    expect(fins(climbOf(165, 30), climbOf(120, 10), climbOf(140, 0))?.knownPower).toBeCloseTo(hp(120), 6);
  });

  test('of two the hotter', () => {
    expect(fins(climbOf(165, 5), climbOf(120, 30))?.knownPower).toBeCloseTo(hp(120), 6);
  });

  test('climbs whose conditions cannot be, and tests on the ground, do not count', () => {
    const impossible = { ...climbOf(150, 40), trueAirspeed: undefined, calibratedAirspeed: 400 };
    expect(
      fins(climbOf(165, 5), climbOf(120, 10), climbOf(140, 0), impossible, impossible)?.knownPower,
    ).toBeCloseTo(hp(165), 6);
    expect(adopted([impossible]).cooling).toEqual(catalogue.cooling);
    const idle = result({
      test: 'cooling on the ground',
      stream: 'fins',
      temperature: 290,
      measuredTemperature: 500,
    });
    expect(fins(climbOf(165, 5), idle)?.knownPower).toBeCloseTo(hp(165), 6);
    expect(adopted([idle]).cooling).toBeUndefined();
    expect(adopted([level]).cooling).toBeUndefined();
  });
});

test('lift from stalls alone; no rpm and no tank where none was tried', () => {
  const tried = adopted([climb, level]);
  expect(tried.airframe).toEqual({});
  expect(tried.engine).toEqual({});
  expect(tried.tanks).toBeUndefined();
  const fixed: Catalogue = {
    ...catalogue,
    packages: catalogue.packages.map((each) => ({ ...each, propeller: 'fixed pitch' as const })),
  };
  expect(adopted([level], fixed).engine).toEqual({});
});

test('in the catalogue the other packages keep their rows and values', () => {
  const rowan = packageNamed(godwit, 'Rowan');
  const delivered = result({ test: 'fuel flow on the ground', fuelFlow: gallons(20) });
  const aircraft = new SimulatedAircraft(godwit, 'Rowan', noNoise);
  const found = adopted(
    [lean(11), delivered, aircraft.coolingClimb('fins', hp(160), ft(4000), 6, kt(100))],
    godwit,
  );
  const after = withResults(godwit, rowan, found);
  for (const table of ['fuelPoints', 'cooling'] as const) {
    const others = (of: Catalogue) => of[table].filter((each) => each.package !== 'Rowan');
    expect(others(after)).toEqual(others(godwit));
    expect(after[table]).toHaveLength(godwit[table].length);
    expect(after[table]).not.toEqual(godwit[table]);
  }
  expect(after.packages.map(({ name, fuelPumpFlow }) => [name, fuelPumpFlow])).toEqual(
    godwit.packages.map(({ name, fuelPumpFlow }) => [name, name === 'Rowan' ? gallons(20) : fuelPumpFlow]),
  );
  expect(after.knownPoints).toBe(godwit.knownPoints);
  expect(after.tanks).toBe(godwit.tanks);
});
