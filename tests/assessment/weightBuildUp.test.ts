/** The stacked weights: every package's parts add up to its installed weight. */
import { describe, expect, test } from 'vitest';
import { compare } from '../../src/assessment/assess.ts';
import { weightBuildUpBlock } from '../../src/assessment/weightBuildUpBlock.ts';
import { type Catalogue, readCatalogue, type TableGrids } from '../../src/tables/catalogue.ts';
import type { Cell } from '../../src/tables/cell.ts';
import { sample } from '../sample.ts';
import { smallWorkbook } from '../tables/smallWorkbook.ts';
import { withCells, withRows } from './flightFixture.ts';

const blockOf = (grids: TableGrids) =>
  weightBuildUpBlock(compare(readCatalogue(grids).catalogue as Catalogue));
const numbers = (line: readonly Cell[]) => line.filter((cell): cell is number => typeof cell === 'number');

describe.each(['godwit', 'sanderling', 'minimal'])('%s', (name) => {
  test('each row adds up to the installed weight', () => {
    const grids = sample(name);
    const comparison = compare(readCatalogue(grids).catalogue as Catalogue);
    const [, ...rows] = blockOf(grids);
    expect(rows.map(([name]) => name)).toEqual(comparison.assessments.map((each) => each.package.name));
    rows.forEach((row, index) => {
      const { installed } = comparison.assessments[index]?.powerplant ?? { installed: { weight: 0 } };
      const shown = comparison.context.display.cell('weight', installed.weight);
      // each of eight parts is rounded to 0.1
      expect(Math.abs(numbers(row).reduce((sum, each) => sum + each, 0) - Number(shown))).toBeLessThan(0.45);
    });
  });
});

test('the minimal sample by hand: kilograms from its table, in pounds', () => {
  // Elm: engine 92 kg, mount 6, propeller 14, oil 5; Ash: 71, 5, 8, 3; ranked by the heavier of the two
  const pounds = (kilograms: number) => Math.round((kilograms / 0.45359237) * 10) / 10;
  expect(blockOf(sample('minimal'))).toEqual([
    ['Weight, lb', 'engine', 'propeller', 'mount', 'oil', 'other', 'removed'],
    ['Elm', pounds(92), pounds(14), pounds(6), pounds(5), 0, 0],
    ['Ash', pounds(71), pounds(8), pounds(5), pounds(3), 0, 0],
  ]);
});

test('what is taken out of the airframe stands by itself, below zero', () => {
  const [header = [], ...rows] = blockOf(sample('godwit'));
  const removed = header.indexOf('removed');
  // Hazel and Alder take the airframe's own battery of 15.6 lb out of its place
  expect(rows.map((row) => row[removed])).toEqual([0, 0, -15.6, -15.6]);
});

describe('Wren by hand, in pounds', () => {
  const small: TableGrids = smallWorkbook();
  const part = (owner: string, name: string, system: string, weight: number, includedIn = ''): Cell[] => [
    ...[owner, name, system, weight, 30, '', 'weighed', '', 'kit', includedIn, 0, 1],
  ];

  test('a lump by the systems of its details, what they leave of it in its own: 260 less 50 of gearbox and 210', () => {
    const gearbox = withCells(small, 'components', ['Birch', 'gearbox'], { system: 'gearbox' });
    expect(blockOf(gearbox)).toEqual([
      ['Weight, lb', 'engine', 'gearbox', 'propeller', 'oil', 'coolant', 'other', 'removed'],
      ['Ash', 220, 0, 30, 12, 0, 0, 0],
      ['Birch', 210, 50, 44, 0, 9, 0, 0],
    ]);
    const lighter = withCells(gearbox, 'components', ['Birch', 'engine block'], { weight: 150 });
    expect(blockOf(lighter)[2]?.slice(1, 3)).toEqual([210, 50]); // 150 and the 60 that no detail tells of
  });

  test('six systems by name, ranked by the heavier of the two packages; lighter ones together', () => {
    const many = withRows(
      small,
      'components',
      ...[7, 6, 5, 4].map((weight) => part('Ash', `part ${weight}`, `system ${weight}`, weight)),
    );
    expect(blockOf(many)).toEqual([
      ['Weight, lb', 'engine', 'propeller', 'oil', 'coolant', 'system 7', 'system 6', 'other', 'removed'],
      ['Ash', 220, 30, 12, 0, 7, 6, 9, 0],
      ['Birch', 260, 44, 0, 9, 0, 0, 0, 0],
    ]);
  });

  test('one system however it is typed; what is removed is in no system, though its name may come from there', () => {
    const grids = withRows(
      small,
      'components',
      part('Ash', 'old battery', 'Battery', -15),
      part('Birch', 'new battery', 'battery', 20),
      part('Birch', 'airframe battery', 'battery', -15),
      part('Birch', 'more engine', 'ENGINE', 5),
    );
    expect(blockOf(grids)).toEqual([
      ['Weight, lb', 'engine', 'propeller', 'Battery', 'oil', 'coolant', 'other', 'removed'],
      ['Ash', 220, 30, 0, 12, 0, 0, -15],
      ['Birch', 265, 44, 20, 0, 9, 0, -15],
    ]);
  });
});
