import { describe, expect, test } from 'vitest';
import { call, tableFunctions } from '../../src/functions/library.ts';
import type { BuildTable } from '../../src/tables/build.ts';
import { tableNames } from '../../src/tables/catalogue.ts';
import type { Cell, Grid } from '../../src/tables/cell.ts';
import { asBuiltBuildGrids, asBuiltGrids } from '../assessment/asBuilt.ts';
import { tableArguments } from '../tableArguments.ts';
import { expectBlock } from './expectBlock.ts';

const grids = asBuiltGrids();
const catalogueCells = tableArguments(grids);
const builders = asBuiltBuildGrids();
const cells = (extras: readonly (Cell | Grid)[]) => [...catalogueCells, ...extras] as (Cell | Grid)[];
const block = (name: string, ...extras: (Cell | Grid)[]) => call(name, cells(extras)) as Cell[][];
const first = (lines: readonly Cell[][]) => lines.map(([cell]) => String(cell));

const weighing = ['weighings', 'weighing items', 'changes', 'as quoted'] as const satisfies BuildTable[];

test('the tables come before the package, and all after the first may be left out', () => {
  const extras = (name: string) =>
    tableFunctions
      .find((each) => each.name === name)
      ?.arguments.slice(tableNames.length)
      .map((argument) => `${argument.name}${argument.optional ? '?' : ''}`);
  expect(extras('WEIGHING_CHECK')).toEqual([
    'weighings',
    'weighing_items?',
    'changes?',
    'as_quoted?',
    'package_name?',
  ]);
  expect(extras('CHANGE_RECORD')).toEqual(['weighings', 'weighing_items?', 'changes?', 'package_name?']);
  expect(extras('FLIGHT_TEST_CARDS')).toEqual(['test_results?', 'package_name?']);
});

describe.each([
  ['WEIGHING_CHECK', weighing],
  ['CHANGE_RECORD', ['weighings', 'weighing items', 'changes']],
  ['FLIGHT_TEST_CARDS', ['test results']],
] as const)('%s of the sample', (name, tables) => {
  const lines = block(name, ...tables.map((table) => builders[table]));

  test('is a rectangle of finite numbers, texts, ticks and blanks, with nothing left undefined in words', () => {
    expectBlock(lines, true);
  });

  test('the package may be named, whatever its case; another is refused', () => {
    const more = tables.map((table) => builders[table]);
    expect(block(name, ...more, 'rowan')).toEqual(lines);
    expect(() => block(name, ...more, 'Larch')).toThrow(`${name}: package must be one of Rowan, got "Larch"`);
  });

  test('faults of the builder’s tables stand in place of the block', () => {
    const spoilt = tables.map((table) =>
      builders[table].map((row, index) => (index === 2 ? ['?', '?', ...row.slice(2)] : row)),
    );
    const found = first(block(name, ...spoilt));
    expect(found[0]).toMatch(/^No result: \d+ faults? in the tables/);
  });
});

test('WEIGHING_CHECK prints the planted error, the quote, and the rows to adopt', () => {
  const lines = first(block('WEIGHING_CHECK', ...weighing.map((table) => builders[table])));
  expect(lines.filter((line) => line.startsWith('likeliest: engine, dry'))).toHaveLength(1);
  expect(lines).toContain('Against quote Q-0007 A');
  expect(lines).toContain('empty weight basis');
});

test('FLIGHT_TEST_CARDS without results ends with the cards', () => {
  const lines = first(block('FLIGHT_TEST_CARDS'));
  expect(lines.filter((line) => /^Card \d+: /.test(line))).toHaveLength(14);
  expect(lines.some((line) => line.startsWith('Measured, each beside'))).toBe(false);
  expect(
    lines.some(
      (line) => line.includes('25 h') && line.includes('40 h') && line.includes('operating limitations'),
    ),
  ).toBe(true);
});

test('rows to adopt can be pasted: read back, they are the catalogue the figures after were computed with', () => {
  const lines = block('FLIGHT_TEST_CARDS', builders['test results']);
  const start = lines.findIndex(([cell]) => String(cell).startsWith('Known points table'));
  const end = lines.findIndex(([cell]) => String(cell).startsWith('Fuel points table'));
  const known = lines.slice(start + 1, end);
  const again = { ...grids, 'known points': known };
  const flight = call('FLIGHT_TABLE', tableArguments(again)) as Cell[][];
  const figure = (rows: Cell[][], label: string) => rows.find(([cell]) => cell === label)?.[2];
  const after = figure(lines, 'rate of climb, sea level');
  expect(after).toEqual(expect.any(Number));
  expect(after).not.toBe(figure(block('FLIGHT_TABLE'), 'climb, sea level'));
  expect(figure(flight, 'climb, sea level')).toBe(after);
});

test('an empty cell for the weighings table is a workbook without weighings', () => {
  expect(first(block('WEIGHING_CHECK', ''))).toEqual([
    'Weighing',
    'None yet: enter scales, tares and arms in the weighings table.',
  ]);
});
