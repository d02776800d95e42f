/**
 * LOADING_CHECK of the small aircraft of tests/tables/smallWorkbook.ts, worked by hand in lb and in as balance.test.ts says:
 * empty with Ash 900 at 80, with Birch 951.7 and 72,861.6 lb·in. Shown to 0.1 lb and 0.1 in.
 */
import { describe, expect, test } from 'vitest';
import { compare } from '../../src/assessment/assess.ts';
import { loadingBlock } from '../../src/assessment/loadingBlock.ts';
import type { TableGrids } from '../../src/tables/catalogue.ts';
import type { Cell } from '../../src/tables/cell.ts';
import { catalogueOf } from '../tables/smallBuild.ts';
import { smallWorkbook } from '../tables/smallWorkbook.ts';
import { withAttribute, withCells, withRows } from './flightFixture.ts';

const small: TableGrids = smallWorkbook();
const airframe = (attribute: string, value: Cell, unit = '', grids = small) =>
  withAttribute(grids, 'airframe', attribute, value, unit);

function blockOf(grids = small, ...names: string[]): Cell[][] {
  const comparison = compare(catalogueOf(grids));
  const { assessments } = comparison;
  const asked =
    names.length === 0 ? assessments : assessments.filter((each) => names.includes(each.package.name));
  return loadingBlock(comparison, asked);
}

/** The lines from a title to the next. */
function part(title: string, block: Cell[][]): Cell[][] {
  const start = block.findIndex(([cell]) => cell === title);
  if (start < 0) throw new Error(`no part ${title}`);
  const end = block.findIndex(
    (line, index) => index > start + 2 && line.length === 1 && index < block.length - 1,
  );
  return block.slice(start, end < 0 ? undefined : end);
}
const named = 'Named loadings, from takeoff to zero fuel';
const every = 'Every loading the stations and tanks allow: the worst';
const cured = 'What would bring every loading inside';

describe('named loadings', () => {
  test('heads and units', () => {
    expect(part(named, blockOf()).slice(1, 3)).toEqual([
      [
        'Package',
        'Loading',
        'Result',
        'Limit',
        'Least margin',
        'at weight',
        'Takeoff weight',
        'Takeoff CG',
        'Zero-fuel weight',
        'Zero-fuel CG',
        'Weight left',
        'Burn before landing',
        'In words',
      ],
      ['', '', '', '', 'in', 'lb', 'lb', 'in', 'lb', 'in', 'lb', 'lb'],
    ]);
  });

  test('first in the block, a line a loading, package after package', () => {
    const block = blockOf();
    expect(block[0]).toEqual([named]);
    expect(
      part(named, block)
        .slice(3)
        .map(([name, loading]) => [name, loading]),
    ).toEqual([
      ['Ash', 'alone'],
      ['Ash', 'two'],
      ['Birch', 'alone'],
      ['Birch', 'two'],
    ]);
    expect(
      part(named, blockOf(small, 'Birch'))
        .slice(3)
        .map(([name]) => name),
    ).toEqual(['Birch', 'Birch']);
  });

  // Ash alone: 1,070 lb and 86,450 lb·in; 120 lb of fuel at 88 more, 97,010 on 1,190. The forward limit is 78 + (W − 1,000)/150:
  // 80.794 − 78.467 without fuel, 81.521 − 79.267 with it. To the zero-fuel weight 430 lb, to the takeoff weight 410 lb
  test('Ash alone: 2.3 in at takeoff, 410 lb to the maximum takeoff weight', () => {
    expect(part(named, blockOf())[3]).toEqual([
      'Ash',
      'alone',
      'pass',
      'CG forward',
      2.3,
      1190,
      1190,
      81.5,
      1070,
      80.8,
      410,
      0,
      null,
    ]);
  });

  // Birch with two: 1,331.7 lb, 106,361.6 lb·in (79.9); 134 lb of fuel: 118,153.6 on 1,465.7 is 80.6 against 81.105.
  // The fewest pounds are left to the maximum takeoff weight: 134.3
  test('Birch with two: fails forward by 0.5 in, and says so', () => {
    expect(part(named, blockOf())[6]).toEqual([
      'Birch',
      'two',
      'FAIL',
      'CG forward',
      -0.5,
      1465.7,
      1465.7,
      80.6,
      1331.7,
      79.9,
      134.3,
      0,
      'CG 0.5 in ahead of the forward limit at takeoff',
    ]);
  });

  test('a weight that is exceeded is the limit, whatever the CG; a landing weight is reached by burning', () => {
    // Ash with two takes off at 1,400 lb and weighs 1,280 lb without fuel
    const [, , , , zeroFuel] = part(named, blockOf(airframe('maximum zero-fuel weight', 1270, 'lb')));
    expect(zeroFuel?.slice(2, 4)).toEqual(['FAIL', 'maximum zero-fuel weight']);
    expect(zeroFuel?.slice(10)).toEqual([-10, 0, '10.0 lb over the maximum zero-fuel weight']);
    const [, , , , landing] = part(named, blockOf(airframe('maximum landing weight', 1350, 'lb')));
    expect([landing?.[2], landing?.[11]]).toEqual(['pass', 50]);
  });

  test('a weight met to the pound is not exceeded: the CG is the limit', () => {
    const [, , , , two] = part(named, blockOf(airframe('maximum zero-fuel weight', 1280, 'lb')));
    expect(two?.slice(2, 4)).toEqual(['pass', 'CG forward']);
    expect(two?.[10]).toBe(0);
  });

  test('a takeoff at the maximum takeoff weight but for rounding: Birch with two, 1,465.7 lb, fails by its CG', () => {
    const unlimited = ['maximum ramp weight', 'maximum landing weight', 'maximum zero-fuel weight'].reduce(
      (grids, attribute) => airframe(attribute, '', 'lb', grids),
      small,
    );
    const two = part(named, blockOf(airframe('maximum takeoff weight', 1465.7, 'lb', unlimited)))[6];
    expect(two?.slice(2, 5)).toEqual(['FAIL', 'CG forward', -0.5]);
    expect(two?.slice(10)).toEqual([0, 0, 'CG 0.5 in ahead of the forward limit at takeoff']);
  });

  test('more than a station or a group holds: that is the limit', () => {
    const limitOf = (cells: Record<string, Cell>) =>
      part(named, blockOf(withCells(small, 'loadings', ['two'], cells)))[4]?.slice(2, 4);
    expect(limitOf({ passenger: 251 })).toEqual(['FAIL', 'maximum of passenger']);
    expect(limitOf({ shelf: 45, locker: 50 })).toEqual(['FAIL', 'maximum of shelf and rear']);
  });

  test('heavier than the CG limits go, within the weights: no margin, and their end is the limit', () => {
    // two weighs 1,400 lb at takeoff
    const [, , , , two] = part(named, blockOf(withCells(small, 'envelope', [1600], { weight: 1390 })));
    expect(two?.slice(2, 6)).toEqual(['FAIL', 'end of the CG limits', null, null]);
    expect(two?.[10]).toBe(200);
    expect(two?.[12]).toBe('heavier than the CG limits go');
  });

  test('in kilograms and millimetres: 1,190 lb is 539.8 kg, 81.52 in is 2,071 mm', () => {
    const metric = airframe('show arms in', 'mm', '', airframe('show weights in', 'kg'));
    const lines = part(named, blockOf(metric));
    expect(lines[2]?.slice(4, 7)).toEqual(['mm', 'kg', 'kg']);
    expect(lines[3]?.slice(6, 8)).toEqual([539.8, 2071]);
  });
});

describe('every loading', () => {
  test('heads with every station and tank, and units', () => {
    expect(part(every, blockOf()).slice(1, 3)).toEqual([
      [
        'Package',
        'Fuel',
        'Result',
        'Limit',
        'Least margin',
        'at weight',
        'CG',
        'Limit there',
        'Caused by',
        'pilot',
        'passenger',
        'shelf',
        'locker',
        'main tank',
      ],
      ['', '', '', '', 'in', 'lb', 'in', 'in', '', 'lb', 'lb', 'lb', 'lb', 'lb'],
    ]);
  });

  test('a line forward and one aft for any fuel, for the least and for none, of each package', () => {
    const lines = part(every, blockOf()).slice(3);
    const fuels = ['any', 'half an hour at MCP', 'none usable'];
    expect(lines.map((line) => [line[0], line[1], line[3]])).toEqual(
      ['Ash', 'Birch'].flatMap((name) =>
        fuels.flatMap((fuel) => ['CG forward', 'CG aft'].map((side) => [name, fuel, side])),
      ),
    );
  });

  // 130,340 lb·in on 1,580 lb is 82.494, the limit 81.867; aft 134,640 on 1,600 is 84.15
  test('Ash with any fuel: the seats and tanks full forward, for the limit closes in; the locker aft', () => {
    const [forward, aft] = part(every, blockOf()).slice(3);
    expect(forward).toEqual([
      'Ash',
      'any',
      'pass',
      'CG forward',
      0.6,
      1580,
      82.5,
      81.9,
      'narrower limit',
      250,
      250,
      0,
      0,
      180,
    ]);
    expect(aft?.slice(2, 6)).toEqual(['pass', 'CG aft', 5.9, 1600]);
    expect(Math.abs(Number(aft?.[6]) - 84.15)).toBeLessThan(0.051); // half way between two figures
    expect(aft?.slice(7)).toEqual([90, 'locker', 250, 190, 20, 60, 180]);
  });

  test('with the least fuel, half an hour of 120 hp at 0.51 lb/hp·h: 30.6 lb in the tank', () => {
    const [, , forward, aft] = part(every, blockOf()).slice(3);
    expect(forward?.slice(5, 6)).toEqual([1430.6]);
    expect([forward?.at(-1), aft?.at(-1)]).toEqual([30.6, 30.6]);
  });

  test('Birch fails forward: 128,412 lb·in on 1,600 lb is 80.3 against 82', () => {
    const [forward, aft] = part(every, blockOf(small, 'Birch')).slice(3);
    expect(forward?.slice(2, 8)).toEqual(['FAIL', 'CG forward', -1.7, 1600, 80.3, 82]);
    expect(aft?.[2]).toBe('pass');
  });

  test('a limit met exactly passes: Ash aft at 84.15', () => {
    const aft = (limit: number) =>
      part(every, blockOf(withCells(small, 'envelope', [1600], { 'aft limit': limit }))).slice(3)[1];
    expect(aft(84.15)?.slice(2, 5)).toEqual(['pass', 'CG aft', 0]);
    expect(aft(84.149)?.[2]).toBe('FAIL');
  });

  test('the lightest pilot alone where the limit does not close in: least loads', () => {
    const flat = withCells(small, 'envelope', [1000], { 'forward limit': 82 });
    // 900 at 80 and 110 at 85: 80.545
    expect(part(every, blockOf(flat))[3]).toEqual([
      'Ash',
      'any',
      'FAIL',
      'CG forward',
      -1.5,
      1010,
      80.5,
      82,
      'least loads',
      110,
      0,
      0,
      0,
      0,
    ]);
  });

  test('a tank that is not aboard has no load', () => {
    const tip: Cell[] = ['tip tank', 88, 10, 0, 2, 'Birch', false, false, 0];
    const loadings = (small.loadings ?? []).map((row, index) => [...row, ['tip tank', 'US gal'][index] ?? 0]);
    const lines = part(every, blockOf(withRows({ ...small, loadings }, 'tanks', tip)));
    expect(lines[1]?.slice(-2)).toEqual(['main tank', 'tip tank']);
    expect(lines[2]?.slice(-2)).toEqual(['lb', 'lb']);
    expect(lines[3]?.slice(-2)).toEqual([180, null]);
  });

  test('no loading light enough: no line', () => {
    const heavy = airframe('maximum zero-fuel weight', 1005, 'lb');
    expect(part(every, blockOf(heavy)).slice(3)).toEqual([]);
  });
});

describe('cures', () => {
  const cures = (grids: TableGrids) => part(cured, blockOf(grids)).slice(3);
  const ballasted = airframe('ballast arm', 150, 'in');
  const withBattery = (grids: TableGrids) =>
    withRows(grids, 'components', [
      'Birch',
      'battery',
      'Battery',
      60,
      20,
      '',
      'weighed',
      '',
      'kit',
      '',
      0,
      1,
    ]);

  test('heads and units; where there is nothing to put anywhere, that', () => {
    expect(part(cured, blockOf())).toEqual([
      [cured],
      [
        'Package',
        'For limit',
        'Cure',
        'Least weight',
        'From arm',
        'To arm',
        'Payload lost',
        'Forward margin then',
        'Aft margin then',
        'Enough',
      ],
      ['', '', '', 'lb', 'in', 'in', 'lb', 'in', 'in'],
      ['nothing fails, or no arm on the right side for ballast'],
    ]);
  });

  // (131,200 − 128,412)/62 = 44.97 lb. Aft with it: 60 at 120, 20 at 110, full tanks, 201 lb at 88, the seats to 1,600 lb
  test('Birch: 45 lb of ballast at 150 in, and as much less payload', () => {
    const [ballast, ...others] = cures(ballasted);
    expect(others).toEqual([]);
    const aft = 72_861.6 + 44.97 * 150 + 60 * 120 + 20 * 110 + 322.33 * 85 + 201 * 88;
    expect(ballast).toEqual([
      'Birch',
      'CG forward',
      'ballast',
      45,
      null,
      150,
      45,
      0,
      Math.round((90 - aft / 1600) * 10) / 10,
      'for every loading; weigh it in, and have its mounting approved',
    ]);
  });

  // (131,200 − 124,367.1)/130 = 52.56 lb
  test('a battery moved: from where, to where, and nothing lost', () => {
    const moved = cures(withBattery(ballasted)).find(([, , cure]) => cure !== 'ballast');
    expect(moved?.slice(0, 8)).toEqual(['Birch', 'CG forward', 'moved from "battery"', 52.6, 20, 150, 0, 0]);
  });

  // Against 83.05 aft, Ash needs 1,760/35 = 50.3 lb on the firewall; against a forward limit of 82.2 at 1,600 lb it is then
  // (72,000 + 50.3 × 50 + 500 × 85 + 149.7 × 88)/1,600 = 81.37 ahead of it
  test('Ash aft of a limit of 83.05: 50.3 lb on the firewall, and the limit is met', () => {
    const ash = cures(
      withCells(ballasted, 'envelope', [1600], { 'aft limit': 83.05, 'forward limit': 78 }),
    )[0];
    expect(ash?.slice(0, 6)).toEqual(['Ash', 'CG aft', 'ballast', 50.3, null, 50]);
    expect(ash?.slice(8)).toEqual([0, 'for every loading; weigh it in, and have its mounting approved']);
  });

  test('what passes the aft limit is not enough: Birch’s ballast takes it to 83.8', () => {
    const limit = { 'aft limit': 83.5 };
    const narrow = withCells(withCells(ballasted, 'envelope', [1600], limit), 'envelope', [1000], limit);
    const birch = cures(narrow).find(([name, side]) => name === 'Birch' && side === 'CG forward');
    expect(birch?.slice(7)).toEqual([0, -0.3, 'no: the other limit is passed with it']);
  });

  test('what passes the forward limit is not enough', () => {
    const narrow = withCells(ballasted, 'envelope', [1600], { 'aft limit': 83.05, 'forward limit': 82.2 });
    const ash = cures(narrow).find(([name]) => name === 'Ash');
    expect(ash?.slice(1, 4)).toEqual(['CG aft', 'ballast', 50.3]);
    expect(ash?.slice(7)).toEqual([-0.8, 0, 'no: the other limit is passed with it']);
  });
});
