/**
 * WEIGHING_CHECK of the Wren of tests/tables/smallBuild.ts, by hand in lb and in. Weighing A: 250 at 40, 325 and 330 at 95, less
 * 5 of tools at 120: 900 lb, 71,625 lb·in. Weighing B: the same nets, with 6 of unusable fuel at 88 and 6 of oil at 8: 917 lb,
 * 72,801. Three scales of ±1 lb: ±√3. Their parts below, reconciliation and findings, have tests of their own.
 */
import { describe, expect, test } from 'vitest';
import { packageNamed } from '../../src/assessment/context.ts';
import { weighingBlock } from '../../src/assessment/weighingBlock.ts';
import type { TableGrids } from '../../src/tables/catalogue.ts';
import type { Cell } from '../../src/tables/cell.ts';
import { type BuildCells, buildOf, catalogueOf, smallBuild } from '../tables/smallBuild.ts';
import { put, smallWorkbook } from '../tables/smallWorkbook.ts';
import { withAttribute } from './flightFixture.ts';

const small: TableGrids = smallWorkbook();
const airframe = (attribute: string, value: Cell, unit = '', grids = small) =>
  withAttribute(grids, 'airframe', attribute, value, unit);

function blockOf(build: Partial<BuildCells> = smallBuild(), grids = small): Cell[][] {
  const catalogue = catalogueOf(grids);
  return weighingBlock(catalogue, buildOf(build, catalogue), packageNamed(catalogue, 'Ash'));
}
const startingWith = (text: string, block: Cell[][]) =>
  block.findIndex(([cell]) => String(cell).startsWith(text));
/** The weighings table with other cells in every row of a weighing. */
function weighings(name: string, cells: Record<string, Cell>): BuildCells {
  const build = smallBuild();
  build.weighings.forEach((row, index) => {
    if (row[0] !== name) return;
    for (const [header, cell] of Object.entries(cells)) put(build.weighings, index + 1, header, cell);
  });
  return build;
}
/** Only one weighing, nothing else. */
function onlyA(cells: Record<string, Cell> = {}): Partial<BuildCells> {
  const { weighings: rows } = weighings('A', cells);
  return { weighings: rows.filter(([name]) => name !== 'B') };
}

describe('each weighing as on paper', () => {
  test('points with their nets and moments, items off and on, sums', () => {
    const block = blockOf();
    const toB = startingWith('Weighing B', block);
    expect(block.slice(0, toB)).toEqual([
      ['Weighing A, 2026-03-01, level'],
      ['Point', 'Reading', 'Tare', 'Net', 'Arm', 'Moment', '± weight', '± arm'],
      ['', 'lb', 'lb', 'lb', 'in', 'lb·in', 'lb', 'in'],
      ['nosewheel', 260, 10, 250, 40, 10_000, 1, 0.1],
      ['left main', 330, 5, 325, 95, 30_875, 1, 0.1],
      ['right main', 335, 5, 330, 95, 31_350, 1, 0.1],
      // 72,225/905
      ['as weighed', null, null, 905, 79.81, 72_225],
      ['less tools', null, null, -5, 120, -600],
      // 71,625/900; about it scales 39.6 and twice 15.4 away, arms 0.1 in × each reading: √(2,042 + 2,770)/900
      ['basic empty', null, null, 900, 79.58, 71_625, 1.7, 0.08],
    ]);
    expect(block.slice(toB + 6, toB + 10)).toEqual([
      ['as weighed', null, null, 905, 79.81, 72_225],
      ['plus unusable fuel', null, null, 6, 88, 528],
      ['plus oil to full', null, null, 6, 8, 48],
      ['basic empty', null, null, 917, 79.39, 72_801, 1.7, 0.08],
    ]);
  });

  test('attitude: level, not level, not said', () => {
    expect(blockOf(weighings('A', { level: false }))[0]).toEqual(['Weighing A, 2026-03-01, NOT LEVEL']);
    expect(blockOf(weighings('A', { level: '' }))[0]).toEqual(['Weighing A, 2026-03-01, attitude not said']);
  });

  test('an arm whose accuracy nobody gives: ±0.1 in, the default of the weighings table', () => {
    expect(blockOf(onlyA({ 'arm accuracy': '' }))[3]?.[7]).toBe(0.1);
    expect(blockOf(onlyA({ 'arm accuracy': 0 }))[3]?.[7]).toBe(0);
  });

  test('none yet: what to do', () => {
    expect(blockOf({})).toEqual([
      ['Weighing'],
      ['None yet: enter scales, tares and arms in the weighings table.'],
    ]);
  });
});

describe('together', () => {
  const title = 'Basic empty weight on 2026-03-08';
  const together = (block: Cell[][], from = title) => {
    const start = startingWith(from, block);
    return block.slice(start, startingWith('Against the prediction', block));
  };

  // 1,817/2 and 144,426/2; half the spread of 17 lb and of 79.583 − 79.391 in is more than one weighing may be off
  test('side by side, their mean, the largest less the smallest', () => {
    expect(together(blockOf())).toEqual([
      [`${title}: unusable fuel, full oil and coolant, fixed ballast aboard`],
      ['', 'Weight', '±', 'CG', '±', '% MAC', ''],
      ['', 'lb', 'lb', 'in', 'in', '%'],
      ['weighing A, 2026-03-01', 900, 1.7, 79.58, 0.08, null, null],
      ['weighing B, 2026-03-08', 917, 1.7, 79.39, 0.08, null, null],
      ['mean', 908.5, 8.5, 79.49, 0.1, null, null],
      ['largest less smallest', 17, null, 0.19],
    ]);
  });

  test('on a MAC of 50 in from 70: (79.583 − 70)/50 is 19.2 %', () => {
    const mac = airframe('MAC leading edge', 70, 'in', airframe('MAC length', 50, 'in'));
    const lines = together(blockOf(smallBuild(), mac)).slice(3, 6);
    expect(lines.map((line) => line[5])).toEqual([19.2, 18.8, 19]);
  });

  test('one alone is the mean, without a spread', () => {
    const lines = together(blockOf(onlyA()), 'Basic empty weight on 2026-03-01').slice(3);
    // 905: no items here
    expect(lines).toEqual([
      ['weighing A, 2026-03-01', 905, 1.7, 79.81, 0.08, null, null],
      ['mean', 905, 1.7, 79.81, 0.08, null, null],
    ]);
  });

  test('one that is left out stands there with the reason, and does not count', () => {
    const lines = together(blockOf(weighings('A', { level: false }))).slice(3);
    expect(lines).toEqual([
      [
        ...['weighing A, 2026-03-01', 900, 1.7, 79.58, 0.08, null],
        'not level: its CG is not that of the aircraft',
      ],
      ['weighing B, 2026-03-08', 917, 1.7, 79.39, 0.08, null, null],
      ['mean', 917, 1.7, 79.39, 0.08, null, null],
    ]);
  });

  test('none that counts: the papers and the findings, no mean', () => {
    const block = blockOf(onlyA({ level: false }));
    expect(startingWith('Basic empty weight', block)).toBe(-1);
    expect(block[7]?.[0]).toBe('basic empty');
    expect(block[8]?.slice(0, 3)).toEqual(['Finding', 'Package', 'Subject']);
    expect(block.length).toBeGreaterThan(9);
  });
});

describe('taken in', () => {
  const told = (weight: number, cg: number, build: Partial<BuildCells> = onlyA()) => {
    const grids = airframe('empty CG', cg, 'in', airframe('empty weight', weight, 'lb'));
    return startingWith('The airframe table holds this weighing', blockOf(build, grids)) >= 0;
  };

  // A table holds six digits: 905 lb at 79.8066 in, 72,225 lb·in
  test('the airframe table has the weighed weight and CG', () => {
    expect(told(905, 79.8066)).toBe(true);
    expect(told(905.004, 72_225 / 905.004)).toBe(true); // written with six digits
    expect(told(900, 80)).toBe(false);
  });

  test('not with the weight alone, the CG alone or the moment alone', () => {
    expect(told(905, 79.85)).toBe(false);
    expect(told(905, 79.75)).toBe(false);
    expect(told(905.1, 79.8066)).toBe(false);
    expect(told(905.05, 72_225 / 905.05)).toBe(false);
    expect(told(904.95, 72_225 / 904.95)).toBe(false);
  });

  // 6 lb at 40 and 0.5 at 150 more: 911.5 lb, 72,540 lb·in
  test('with the changes since', () => {
    const changed = { ...onlyA(), changes: smallBuild().changes };
    expect(told(911.5, 72_540 / 911.5, changed)).toBe(true);
    expect(told(905, 79.8066, changed)).toBe(false);
  });
});

describe('below', () => {
  test('the prediction, what it changes, the rows to adopt, in this order', () => {
    const block = blockOf();
    const order = [
      ...[
        'Basic empty weight on',
        'Against the prediction',
        'Against quote Q-1',
        'What the weighing changes',
      ],
      ...['The menu item "Take weighing in …"', 'attribute', 'Finding'],
    ].map((text) => startingWith(text, block));
    expect(order).toEqual([...order].sort((one, other) => one - other));
    expect(order[0]).toBeGreaterThan(0);
    const adopted = startingWith('attribute', block);
    expect(block[adopted + 1]).toEqual(['empty weight', 908.5, 'lb', 'before 2026-03-08: 900 lb']);
  });

  test('findings of the scales, then of the equipment', () => {
    const build = smallBuild();
    put(build['weighing items'], 3, 'item', 'radio'); // taken off as no part, and ticked as fitted
    const block = blockOf(build);
    const subjects = block.slice(startingWith('Finding', block) + 1).map((line) => line[2]);
    expect(subjects).toContain('repeatability');
    expect(subjects.at(-1)).toBe('radio');
  });

  test('nothing found: nothing below the rows to adopt', () => {
    const { weighings: once = [] } = onlyA();
    const again = once.filter(([name]) => name === 'A').map(([, ...row]): Cell[] => ['again', ...row]);
    const block = blockOf({ weighings: [...once, ...again] });
    expect(startingWith('Finding', block)).toBe(-1);
    expect(block.at(-1)?.[0]).toBe('empty CG known to');
  });
});
