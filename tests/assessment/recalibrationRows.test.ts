/** What the measurements change, in figures, sentences and rows for the tables: on the builder's aircraft. */
import { describe, expect, test } from 'vitest';
import { assess, basisOf } from '../../src/assessment/assess.ts';
import { packageNamed } from '../../src/assessment/context.ts';
import { governing } from '../../src/assessment/cooling.ts';
import { constantsOf, type Recalibration, recalibrate } from '../../src/assessment/recalibration.ts';
import {
  recalibrationRows,
  recalibrationWords,
  weighingFirst,
} from '../../src/assessment/recalibrationRows.ts';
import { compareResults } from '../../src/assessment/testComparison.ts';
import type { Catalogue } from '../../src/tables/catalogue.ts';
import type { Cell } from '../../src/tables/cell.ts';
import type { TestResult } from '../../src/tables/testResults.ts';
import { toSi } from '../../src/units.ts';
import { asBuilt, asBuiltGrids } from './asBuilt.ts';
import { catalogueOf, withAttribute, withCells } from './flightFixture.ts';
import { noNoise, SimulatedAircraft } from './simulatedAircraft.ts';

const kt = (value: number) => toSi('speed', value, 'kt');
const hp = (value: number) => toSi('power', value, 'hp');
const lb = (value: number) => toSi('mass', value, 'lb');
const ft = (value: number) => toSi('height', value, 'ft');
const gallons = (value: number) => toSi('fuelFlow', value, 'US gal/h');

const { catalogue, build } = asBuilt();
const result = (values: Partial<TestResult>) =>
  ({ row: 9, defaulted: [], date: '2026-06-01', ...values }) as unknown as TestResult;

function recalibrated(results: readonly TestResult[], of: Catalogue = catalogue) {
  const basis = basisOf(of);
  const { context } = basis;
  const predicted = assess(basis, packageNamed(of, 'Rowan'));
  const found = recalibrate(basis, predicted, results);
  const rows = recalibrationRows(context, found);
  const row = (label: string) => rows.find(([cell]) => String(cell).startsWith(label))?.slice(1);
  return { context, predicted, found, rows, row, words: recalibrationWords(context, found) };
}

const level = (knots: number) =>
  result({
    test: 'level flight',
    power: hp(139),
    weight: lb(2380),
    altitude: ft(8000),
    temperature: 272.3,
    trueAirspeed: kt(knots),
  });
const lean75 = result({
  test: 'fuel flow',
  power: hp(138.75),
  mixture: 'lean',
  fuelFlow: gallons(10.938125),
});
const stall = (flaps: 'clean' | 'landing', pounds: number, knots: number) =>
  result({ test: 'stall', flaps, weight: lb(pounds), calibratedAirspeed: kt(knots) });
/** C_L of 150 ft² by hand: 2 W/(ρ₀ S V²) */
const lift = (pounds: number, knots: number) =>
  (2 * lb(pounds) * 9.80665) / (1.225 * 150 * 0.3048 ** 2 * kt(knots) ** 2);
const three = (value: number) => Number(value.toPrecision(3));

describe('before and after', () => {
  test('lift: the least of the stalls of each setting, 1.45 and 1.95 before', () => {
    const { row } = recalibrated([
      stall('clean', 2190, 55.5),
      stall('clean', 2120, 53.6),
      stall('landing', 2185, 47.5),
    ]);
    expect(row('CLmax clean')).toEqual([1.45, three(Math.min(lift(2190, 55.5), lift(2120, 53.6))), null, '']);
    expect(row('CLmax takeoff')).toEqual([1.65, 1.65, null, '']);
    expect(row('CLmax landing')).toEqual([1.95, three(lift(2185, 47.5)), null, '']);
    const [before, after, , unit] = row('stall, landing') ?? [];
    const stallSpeed = (liftCoefficient: number) =>
      Math.sqrt((2 * lb(2520) * 9.80665) / (1.225 * 150 * 0.3048 ** 2 * liftCoefficient)) / kt(1);
    expect([before, after, unit]).toEqual([
      Math.round(stallSpeed(1.95)),
      Math.round(stallSpeed(lift(2185, 47.5))),
      'kt',
    ]);
  });

  test('consumption: 138.75 hp at 0.43 are 9.944 gal/h; a tenth more measured is 0.473; rich stays', () => {
    const { row } = recalibrated([lean75]);
    expect(row('BSFC at 75 % lean')).toEqual([0.43, 0.473, null, 'lb/hp·h']);
    expect(row('BSFC at 100 % rich')).toEqual([0.5, 0.5, null, 'lb/hp·h']);
  });

  test('ground roll: measured 1.2 times the predicted is 1.2', () => {
    const rolled = (roll: number) =>
      result({
        test: 'takeoff roll',
        power: hp(183),
        weight: lb(2350),
        altitude: ft(500),
        temperature: 293.15,
        roll,
      });
    const { context, predicted } = recalibrated([lean75]);
    const [each] = compareResults(context, predicted, [rolled(250)]);
    const { row, found } = recalibrated([rolled(1.2 * (each?.predicted ?? 0))]);
    expect(row('ground roll, of the model’s')).toEqual([1, 1.2, null, '']);
    const [before = 0, after = 0, , unit] = (row('ground roll at the mission’s field') ?? []) as number[];
    expect(Math.abs(after - 1.2 * before)).toBeLessThanOrEqual(11); // both in steps of 10 ft
    expect(unit).toBe('ft');
    expect(found.scatter).toBeUndefined(); // the level flight known before, and a roll
  });

  test('drag, e and the propeller, ± two standard errors', () => {
    const { row, found } = recalibrated(build.testResults);
    const [before, after] = [found.before.flown, found.after.flown].map(
      (flown) => flown && constantsOf(flown),
    );
    for (const [label, key] of [
      ['zero-lift drag', 'zeroLiftDrag'],
      ['Oswald', 'spanEfficiency'],
      ['propeller efficiency', 'climbEfficiency'],
    ] as const) {
      const scatter = found.scatter?.[key] ?? Number.NaN;
      expect(row(label)).toEqual([
        three(before?.[key] ?? 0),
        three(after?.[key] ?? 0),
        Number((2 * scatter).toPrecision(2)),
        '',
      ]);
      expect(after?.[key]).not.toBe(before?.[key]);
    }
  });

  test('rate of climb and level speed are those of the two assessments', () => {
    const { row, found } = recalibrated(build.testResults);
    const rate = ({ flight }: Recalibration['before']['assessment']) =>
      10 * Math.round(((flight?.seaLevel.bestRate.takeoff.rateOfClimb ?? 0) * 60) / 0.3048 / 10);
    const { before, after } = found;
    expect(row('rate of climb, sea level')).toEqual([
      rate(before.assessment),
      rate(after.assessment),
      null,
      'ft/min',
    ]);
    // known to be 146 kt before, on 139 hp at 2,400 lb; 142.1 were measured; at 2,520 lb up to 3 kt less
    const [was = 0, is = 0, , unit] = (row('level speed at 75 %, 8,000 ft') ?? []) as number[];
    expect(Math.abs(was - 144.5)).toBeLessThanOrEqual(1.5);
    expect(Math.abs(is - 140.5)).toBeLessThanOrEqual(1.5);
    expect(unit).toBe('kt');
  });

  test('cooling: what is measured 8 K hotter leaves so much less to the limit', () => {
    const aircraft = new SimulatedAircraft(catalogue, 'Rowan', noNoise);
    const climbs = (['fins', 'oil'] as const).map((stream) => {
      const climb = aircraft.coolingClimb(stream, hp(160), ft(4000), 6, kt(100));
      return { ...climb, measuredTemperature: (climb.measuredTemperature ?? 0) + (stream === 'oil' ? 8 : 0) };
    });
    const { row, found } = recalibrated(climbs);
    const constantOf = (side: 'before' | 'after', index: number) => {
      const exchanger = found[side].assessment.cooling?.streams[index]?.stream.exchanger;
      return exchanger?.kind === 'fins' ? exchanger.coefficient : (exchanger?.conductance ?? 0);
    };
    expect(row('fins, K of the temperature law')).toEqual([
      three(constantOf('before', 0)),
      three(constantOf('after', 0)),
      null,
      '',
    ]);
    const oil = row('oil, conductance, W/K');
    expect(oil).toEqual([three(constantOf('before', 1)), three(constantOf('after', 1)), null, '']);
    expect(oil?.[1]).toBeLessThan(oil?.[0] as number);
    const [fins, finsAfter] = row('fins, margin in the climb') ?? [];
    expect(Math.abs((fins as number) - (finsAfter as number))).toBeLessThanOrEqual(1);
    const [was, is, , unit] = row('oil, margin in the climb') ?? [];
    expect(Math.abs((was as number) - (is as number) - 14.4)).toBeLessThan(3); // 8 K are 14.4 °F
    expect(unit).toBe('°F');
    const { cooling, flight } = found.before.assessment;
    const margin = flight && cooling && governing(cooling, flight, cooling.streams[1]!)?.result.margin;
    expect(was).toBe(Math.round(((margin ?? 0) * 9) / 5));
  });

  test('without a known flight: not known, before and after; a level flight measured makes it known', () => {
    const unknown = { ...catalogue, knownPoints: [] };
    const consumption = recalibrated([lean75], unknown);
    for (const label of ['rate of climb', 'level speed', 'ground roll at'])
      expect(consumption.row(label)?.slice(0, 2)).toEqual(['not known', 'not known']);
    for (const label of ['zero-lift drag', 'Oswald', 'propeller efficiency', 'ground roll, of'])
      expect(consumption.row(label)).toEqual([null, null, null, '']);
    const flown = recalibrated([level(142)], unknown);
    expect(flown.row('level speed')?.[0]).toBe('not known');
    expect(Math.abs((flown.row('level speed')?.[1] as number) - 140.5)).toBeLessThanOrEqual(1.5);
    expect(flown.row('zero-lift drag')?.[0]).toBeNull();
    expect(flown.row('zero-lift drag')?.[1]).toBeGreaterThan(0.01);
    expect(flown.row('ground roll, of')).toEqual([null, 1, null, '']);
    expect(flown.words).toContainEqual(
      expect.stringMatching(/^rate of climb, sea level: not known → [\d,]+ ft\/min$/),
    );
    expect(flown.words).toContainEqual(expect.stringMatching(/^ground roll, of the model’s: not known → 1$/));
    // cooling rests on the flight: its streams appear with it
    expect(consumption.row('oil, conductance')).toBeUndefined();
    expect(flown.row('oil, conductance')?.[0]).toBeNull();
    expect(flown.row('oil, margin')?.[0]).toBe('not known');
  });

  test('without fuel points no consumption', () => {
    const { row } = recalibrated([stall('clean', 2190, 55.5)], { ...catalogue, fuelPoints: [] });
    expect(row('BSFC at 75 % lean')).toEqual([null, null, null, 'lb/hp·h']);
    expect(row('BSFC at 100 % rich')).toEqual([null, null, null, 'lb/hp·h']);
  });

  test('in sentences only what changes, without a unit where there is none', () => {
    expect(recalibrated([lean75]).words).toEqual(['BSFC at 75 % lean: 0.43 → 0.473 lb/hp·h']);
    const words = recalibrated([stall('clean', 2190, 55.5)]).words;
    expect(words).toContain(`CLmax clean: 1.45 → ${three(lift(2190, 55.5))}`);
    expect(words.some((each) => each.startsWith('CLmax landing'))).toBe(false);
  });
});

describe('rows for the tables', () => {
  const titles = (rows: readonly Cell[][]) =>
    rows
      .map(([cell]) => String(cell))
      .filter((cell) => /^(Known points|Fuel points|Cooling|Tanks|Airframe|Packages) table/.test(cell));

  test('of the tables that something was measured for, and no others', () => {
    expect(titles(recalibrated([lean75]).rows)).toEqual(['Fuel points table, in place of the rows of Rowan']);
    expect(titles(recalibrated([stall('clean', 2190, 55.5)]).rows)).toEqual(['Airframe table']);
    const all = recalibrated(build.testResults).rows;
    expect(titles(all)).toEqual([
      'Known points table, in place of all its rows',
      'Fuel points table, in place of the rows of Rowan',
      'Cooling table, in place of the rows of Rowan',
      'Tanks table',
      'Airframe table',
      'Packages table, column Rowan',
    ]);
  });

  test('with header, units and every record; an attribute with what stood there', () => {
    const { rows } = recalibrated([lean75, stall('clean', 2190, 55.5)]);
    const at = rows.findIndex(([cell]) => String(cell).startsWith('Fuel points table'));
    expect(rows[at + 1]?.slice(0, 4)).toEqual(['package', 'mixture', 'power', 'BSFC']);
    const points = rows.slice(at + 3, at + 11);
    expect(points.every(([name]) => name === 'Rowan')).toBe(true);
    expect(points.map((cells) => cells[1])).toEqual([...Array(4).fill('rich'), ...Array(4).fill('lean')]);
    expect(rows[at + 11]).toEqual(['Airframe table']);
    const attribute = rows.slice(at + 12).find(([cell]) => cell === 'CLmax clean');
    expect(attribute?.[1]).toBeCloseTo(lift(2190, 55.5), 4);
    expect(String(attribute?.[3])).toContain('1.45');
  });

  test('above them what changes, and how they are taken in', () => {
    const { rows } = recalibrated([lean75]);
    expect(rows[0]).toHaveLength(1);
    expect(rows[1]).toEqual(['', 'Before', 'After', '±', 'Unit']);
    expect(rows.some(([cell]) => String(cell).startsWith('The menu item "Take measured results in …"'))).toBe(
      true,
    );
    expect(rows.every((cells) => Array.isArray(cells) && cells.length > 0)).toBe(true);
  });
});

describe('flown with other equipment than it was weighed with', () => {
  const fitted = (item: string) =>
    catalogueOf(withCells(asBuiltGrids(), 'equipment', [item], { fitted: true }));
  const first = ({ rows }: ReturnType<typeof recalibrated>) => rows.some(([cell]) => cell === weighingFirst);

  test('of other drag: the weighing first, where flights are taken in', () => {
    expect(first(recalibrated([level(142)], fitted('wheel fairings')))).toBe(true);
    expect(first(recalibrated([lean75], fitted('wheel fairings')))).toBe(false);
    expect(first(recalibrated([level(142)], fitted('pitot heat')))).toBe(false); // no drag
    expect(first(recalibrated([level(142)]))).toBe(false);
    const tyres = withCells(
      withAttribute(asBuiltGrids(), 'airframe', 'weighed with equipment', 'large tyres'),
      'equipment',
      ['large tyres'],
      { fitted: true },
    );
    expect(first(recalibrated([level(142)], catalogueOf(tyres)))).toBe(false); // 0.3 ft² both times
  });

  test('the drag of what is aboard now is taken off: the measured flight then comes out as measured', () => {
    const of = fitted('wheel fairings');
    const { context, found } = recalibrated([level(142)], of);
    const [each] = compareResults(context, found.after.assessment, [level(142)]);
    expect((each?.predicted ?? 0) / kt(142)).toBeCloseTo(1, 3);
  });
});
