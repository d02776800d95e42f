/**
 * Every loading of the small aircraft of tests/tables/smallWorkbook.ts against its CG limits, worked by hand in lb and in.
 * Empty with Ash 900 at 80, with Birch 951.7 and 72,861.6 lb·in. Pilot at 85 (110 to 250), passenger at 85 (to 250), shelf at
 * 110 (to 40) and locker at 120 (to 60), together no more than 80; fuel at 88, 180 lb of avgas or 201 lb of Jet A.
 * Limits: 78 at 1,000 lb to 82 at 1,600 lb, and 90. No load sits ahead of the empty CG.
 */
import { describe, expect, test } from 'vitest';
import { compare } from '../../src/assessment/assess.ts';
import { balanceCures } from '../../src/assessment/balanceCures.ts';
import type { Finding } from '../../src/assessment/finding.ts';
import { burnPath } from '../../src/assessment/loadingCheck.ts';
import { worstLoadings } from '../../src/assessment/worstLoadings.ts';
import type { TableGrids } from '../../src/tables/catalogue.ts';
import type { Cell } from '../../src/tables/cell.ts';
import type { Tank } from '../../src/tables/tanks.ts';
import { catalogueOf } from '../tables/smallBuild.ts';
import { smallWorkbook } from '../tables/smallWorkbook.ts';
import { withAttribute, withCells, withRows } from './flightFixture.ts';
import { packageOf } from './sampleCatalogue.ts';

const pound = 0.45359237; // kg, exact
const inch = 0.0254; // m, exact

const small: TableGrids = smallWorkbook();
const airframe = (attribute: string, value: Cell, unit = '', grids = small) =>
  withAttribute(grids, 'airframe', attribute, value, unit);
const limits = (weight: number, cells: Record<string, Cell>, grids = small) =>
  withCells(grids, 'envelope', [weight], cells);

function balance(name: string, grids = small) {
  const comparison = compare(catalogueOf(grids));
  return packageOf(comparison, name).balance;
}
const told = (name: string, subject: string, grids = small): Finding[] =>
  balance(name, grids).findings.filter((finding) => finding.subject === subject);
const inches = (metres: number | undefined) => (metres ?? Number.NaN) / inch;
const pounds = (kilograms: number | undefined) => (kilograms ?? Number.NaN) / pound;

describe('the worst of every loading', () => {
  test('Ash, forward: 500 in the seats and full tanks, 1,580 lb at 82.494 where the limit is 81.867', () => {
    const { forward } = balance('Ash').margins!;
    expect(pounds(forward.weight)).toBeCloseTo(1580, 6);
    expect(inches(forward.cg)).toBeCloseTo((72_000 + 500 * 85 + 180 * 88) / 1580, 6);
    expect(inches(forward.limit)).toBeCloseTo(78 + (4 * 580) / 600, 6);
  });

  test('Ash, aft: the locker full, the shelf to the limit they share, full tanks, seats to 1,600 lb', () => {
    const moment = 72_000 + 60 * 120 + 20 * 110 + 180 * 88 + 440 * 85;
    const { aft } = balance('Ash').margins!;
    expect(pounds(aft.weight)).toBeCloseTo(1600, 6);
    expect(inches(aft.margin)).toBeCloseTo(90 - moment / 1600, 6);
    expect(aft.cause).toBe('locker');
  });

  test('inside every limit, nothing is said', () => {
    expect(balance('Ash').findings).toEqual([]);
  });

  test('beyond the forward limit where that closes in: Birch at 1,600 lb, 148.3 of them fuel, 1.74 in ahead of 82', () => {
    const [finding, ...others] = told('Birch', 'CG forward limit');
    expect(others).toEqual([]);
    expect(finding).toMatchObject({
      gravity: 'stop',
      package: 'Birch',
      shown: 'arm',
      source: 'envelope: designer',
      text: 'some allowed loadings go 1.7 in ahead of the limit, at 1,600.0 lb, where the limit is narrower',
    });
    expect(inches(finding?.value)).toBeCloseTo((72_861.6 + 500 * 85 + 148.3 * 88) / 1600, 6);
    expect(inches(finding?.limit)).toBeCloseTo(82, 9);
  });

  test('beyond a limit that does not: with the least loads', () => {
    const flat = limits(1000, { 'forward limit': 82 });
    // 1,010 lb at 80.545
    expect(told('Ash', 'CG forward limit', flat).map(({ text }) => text)).toEqual([
      'some allowed loadings go 1.5 in ahead of the limit, at 1,010.0 lb, with the least loads',
    ]);
  });

  test('beyond the aft limit: 84.15 at 1,600 lb, by the locker', () => {
    const narrow = limits(1600, { 'aft limit': 83.05 });
    const [finding] = told('Ash', 'CG aft limit', narrow);
    expect(finding?.gravity).toBe('stop');
    expect(finding?.text).toBe(
      'some allowed loadings go 1.1 in aft of the limit, at 1,600.0 lb, with locker loaded',
    );
    expect(inches(finding?.value)).toBeCloseTo(84.15, 6);
    expect(inches(finding?.limit)).toBeCloseTo(83.05, 9);
    expect(told('Ash', 'CG aft limit', limits(1600, { 'aft limit': 84.15 }))).toEqual([]);
  });

  test('inside by less than the empty CG is known to is a check', () => {
    // Ash has 0.627 in forward
    const known = (to: number) =>
      airframe('empty CG known to', to, 'in', airframe('empty weight known to', 2, 'lb'));
    expect(told('Ash', 'CG forward limit', known(0.6))).toEqual([]);
    const [finding] = told('Ash', 'CG forward limit', known(0.7));
    expect(finding?.gravity).toBe('check');
    expect(finding?.text).toBe(
      'least margin 0.6 in, at 1,580.0 lb, where the limit is narrower: less than the empty CG is known to, ±0.7 in',
    );
    expect(told('Ash', 'CG aft limit', known(0.7))).toEqual([]);
  });

  test('whose limits they are', () => {
    const source = (first: Cell, second: Cell) => {
      const grids = limits(1000, { basis: first }, limits(1600, { basis: second }));
      return told('Birch', 'CG forward limit', grids)[0]?.source;
    };
    expect(source('designer', 'test')).toBe('envelope: designer, test');
    expect(source('', 'test')).toBe('envelope: test');
    expect(source('', '')).toBe('envelope table');
  });
});

describe('weights', () => {
  const unlimited = (grids = small) =>
    ['maximum ramp weight', 'maximum landing weight', 'maximum zero-fuel weight'].reduce(
      (changed, attribute) => airframe(attribute, '', 'lb', changed),
      grids,
    );

  test('too heavy with the lightest pilot alone: 900 and 110 against 1,000', () => {
    const heavy = airframe('maximum takeoff weight', 1000, 'lb', unlimited());
    expect(balance('Ash', heavy).polygon).toBeUndefined();
    const [finding] = told('Ash', 'maximum weight', heavy);
    expect(finding).toMatchObject({ gravity: 'stop', package: 'Ash', shown: 'weight' });
    expect(pounds(finding?.value)).toBeCloseTo(1010, 9);
    expect(pounds(finding?.limit)).toBeCloseTo(1000, 9);
    expect(
      told('Ash', 'maximum weight', airframe('maximum takeoff weight', 1010, 'lb', unlimited())),
    ).toEqual([]);
  });

  test('with the minimum fuel of 30.6 lb no loading is left under 1,020 lb; with less there is', () => {
    const comparison = compare(catalogueOf(airframe('maximum takeoff weight', 1020, 'lb', unlimited())));
    const found = worstLoadings(comparison.context, packageOf(comparison, 'Ash'));
    expect(found.map(({ fuel }) => fuel)).toEqual(['any', 'none']);
  });

  test('too heavy for the zero-fuel weight: that is the limit named', () => {
    const [finding] = told('Ash', 'maximum weight', airframe('maximum zero-fuel weight', 1005, 'lb'));
    expect(pounds(finding?.value)).toBeCloseTo(1010, 9);
    expect(pounds(finding?.limit)).toBeCloseTo(1005, 9);
  });

  test('CG limits that end below the maximum takeoff weight are a check of the tables, and loadings end there', () => {
    const longer = airframe('maximum takeoff weight', 1700, 'lb', unlimited());
    const [finding, ...others] = told('Ash', 'envelope', longer);
    expect(others).toEqual([]);
    expect(finding).toMatchObject({ gravity: 'check', package: '', shown: 'weight' });
    expect(pounds(finding?.value)).toBeCloseTo(1600, 9);
    expect(pounds(finding?.limit)).toBeCloseTo(1700, 9);
    expect(pounds(balance('Ash', longer).margins?.aft.weight)).toBeLessThanOrEqual(1600 + 1e-6);
    expect(told('Ash', 'envelope')).toEqual([]);
  });
});

describe('a named loading that does not pass says why', () => {
  const loading = (cells: Record<string, Cell>, grids = small) =>
    withCells(grids, 'loadings', ['two'], cells);
  const why = (name: string, grids: TableGrids) => told(name, 'two', grids)[0]?.text;

  test('more than a station, a group of stations, or both may hold', () => {
    expect(why('Ash', loading({ passenger: 251 }))).toBe('more than passenger may hold');
    expect(why('Ash', loading({ passenger: 250 }))).toBeUndefined();
    expect(why('Ash', loading({ shelf: 40, locker: 50 }))).toBe('more than rear may hold');
    expect(why('Ash', loading({ shelf: 40, locker: 40 }))).toBeUndefined();
    expect(why('Ash', loading({ shelf: 45, locker: 50 }))).toBe('more than shelf and rear may hold');
  });

  test('over a weight, by how much', () => {
    // 900 + 340 + 40 + 180 = 1,460
    const heavy = airframe(
      'maximum takeoff weight',
      1450,
      'lb',
      airframe('maximum landing weight', '', 'lb'),
    );
    const full = loading({ 'main tank': 30 }, airframe('maximum zero-fuel weight', '', 'lb', heavy));
    expect(why('Ash', full)).toBe('10.0 lb over the maximum takeoff weight');
    const [finding] = told('Ash', 'two', full);
    expect(finding).toMatchObject({
      gravity: 'stop',
      package: 'Ash',
      shown: 'weight',
      source: 'airframe table',
    });
    expect(pounds(finding?.value)).toBeCloseTo(1460, 6);
    expect(pounds(finding?.limit)).toBeCloseTo(1450, 6);
  });

  test('heavier than the CG limits go', () => {
    const short = withCells(small, 'envelope', [1600], { weight: 1390 }); // two is 1,400 at takeoff
    const [finding] = told('Ash', 'two', short);
    expect(finding).toMatchObject({ text: 'heavier than the CG limits go', source: 'envelope: designer' });
    expect(pounds(finding?.value)).toBeCloseTo(1400, 6);
    expect(pounds(finding?.limit)).toBeCloseTo(1390, 6);
  });

  test('ahead of the limit: Birch at takeoff with two, and on the last drop with one', () => {
    // 1,465.7 lb, 118,153.6 lb·in: 80.612 against 81.105. Alone 1,121.7 lb, 87,311.6 lb·in: 77.839 against 78.811
    const [two] = told('Birch', 'two');
    expect(two?.text).toBe('CG 0.5 in ahead of the forward limit at takeoff');
    expect(inches(two?.value)).toBeCloseTo(118_153.6 / 1465.7, 6);
    expect(inches(two?.limit)).toBeCloseTo(78 + (4 * 465.7) / 600, 6);
    expect(told('Birch', 'alone')[0]?.text).toBe(
      'CG 1.0 in ahead of the forward limit with fuel burnt down to 1,121.7 lb',
    );
  });

  test('aft of the limit: Ash with two, 116,060 lb·in on 1,400 lb is 82.9', () => {
    const narrow = limits(1000, { 'aft limit': 82 }, limits(1600, { 'aft limit': 82.05 }));
    expect(told('Ash', 'two', narrow)[0]?.text).toBe('CG 0.9 in aft of the aft limit at takeoff');
  });
});

test('the way of the fuel: one tank after the other, those of one number together, an empty one makes no state', () => {
  const tank = (burnOrder: number) => ({ burnOrder }) as Tank;
  const empty = { weight: 900, moment: 72_000 };
  const station = (name: string, arm: number) => ({ name, arm, minimum: 0, maximum: 300 });
  const stations = [station('pilot', 85), station('wing', 88), station('tip', 70), station('nose', 60)];
  const states = (loads: readonly number[], orders: readonly number[]) =>
    burnPath(empty, stations, loads, orders.map(tank)).map(({ weight, moment }) => [weight, moment]);
  const pilot = 72_000 + 100 * 85;
  expect(states([100, 120, 60, 30], [2, 1, 1])).toEqual([
    [1000, pilot],
    [1120, pilot + 120 * 88],
    [1210, pilot + 120 * 88 + 60 * 70 + 30 * 60],
  ]);
  expect(states([100, 120, 0, 0], [2, 1, 3])).toEqual([
    [1000, pilot],
    [1120, pilot + 120 * 88],
  ]);
});

describe('cures', () => {
  const curesOf = (name: string, grids: TableGrids) => {
    const comparison = compare(catalogueOf(grids));
    return balanceCures(comparison.context, packageOf(comparison, name));
  };
  const withBattery = (weight: number, arm: number, grids = airframe('ballast arm', 150, 'in')) =>
    withRows(grids, 'components', [
      'Birch',
      'battery',
      'Battery',
      weight,
      arm,
      '',
      'weighed',
      '',
      'kit',
      '',
      0,
      1,
    ]);

  test('ballast in place of fuel: 128,412 + (150 − 88) w = 82 × 1,600', () => {
    const [ballast, ...others] = curesOf('Birch', airframe('ballast arm', 150, 'in'));
    expect(others).toEqual([]);
    // The search ends within a thousandth of a millimetre of the limit: 0.001 lb
    expect(Math.abs(pounds(ballast?.weight) - (131_200 - 128_412) / 62)).toBeLessThan(0.002);
    expect(inches(ballast?.toArm)).toBeCloseTo(150, 9);
    expect(ballast).toMatchObject({ side: 'forward', moved: undefined, payloadLost: ballast?.weight });
  });

  test('nowhere to put it, no cure: the firewall is on the wrong side; nor where every loading is too heavy', () => {
    expect(curesOf('Birch', small)).toEqual([]);
    const heavy = airframe('maximum zero-fuel weight', 1005, 'lb', airframe('ballast arm', 150, 'in'));
    expect(curesOf('Birch', heavy)).toEqual([]);
  });

  test('too far aft: ballast on the firewall in place of people: 134,640 − 35 w = 83.05 × 1,600', () => {
    const [ballast, ...others] = curesOf(
      'Ash',
      limits(1600, { 'aft limit': 83.05 }, airframe('ballast arm', 150, 'in')),
    );
    expect(others).toEqual([]);
    expect(ballast).toMatchObject({ side: 'aft', settled: true });
    expect(inches(ballast?.toArm)).toBeCloseTo(50, 9);
    expect(Math.abs(pounds(ballast?.weight) - (134_640 - 132_880) / 35)).toBeLessThan(0.003);
  });

  test('a battery moved from 20 to 150, all of it but 7 lb: 124,367.1 + 130 w = 82 × 1,600', () => {
    // 60 lb at 20 more: 1,011.7 lb, 74,061.6 lb·in; at 85 what the zero-fuel weight leaves, 488.3; 100 of fuel at 88
    const moved = curesOf('Birch', withBattery(60, 20)).filter((cure) => cure.moved !== undefined);
    expect(moved).toHaveLength(1);
    expect(moved[0]).toMatchObject({ moved: 'battery', payloadLost: 0 });
    expect(Math.abs(pounds(moved[0]?.weight) - (131_200 - 124_367.1) / 130)).toBeLessThan(0.002);
    expect(inches(moved[0]?.fromArm)).toBeCloseTo(20, 9);
    expect(inches(moved[0]?.margins.forward.margin)).toBeCloseTo(0, 4);
  });

  test('a battery that is too light, or aft of the place already, is no cure', () => {
    for (const grids of [withBattery(5, 20), withBattery(10, 155)]) {
      const cures = curesOf('Birch', grids);
      expect(cures.map(({ moved }) => moved)).toEqual([undefined]);
    }
  });
});
