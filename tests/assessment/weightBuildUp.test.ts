/** The stacked weights: every package's parts add up to its installed weight. */
import { describe, expect, test } from 'vitest';
import { compare } from '../../src/assessment/assess.ts';
import { weightBuildUpBlock } from '../../src/assessment/weightBuildUpBlock.ts';
import { type Catalogue, readCatalogue } from '../../src/tables/catalogue.ts';
import type { Cell } from '../../src/tables/cell.ts';
import { sample } from '../sample.ts';

const blockOf = (grids: ReturnType<typeof sample>) =>
  weightBuildUpBlock(compare(readCatalogue(grids).catalogue as Catalogue));
const numbers = (line: readonly Cell[]) => line.filter((cell): cell is number => typeof cell === 'number');

describe.each(['godwit', 'sanderling', 'minimal'])('%s', (name) => {
  const grids = sample(name);
  const comparison = compare(readCatalogue(grids).catalogue as Catalogue);

  test('each row adds up to the installed weight', () => {
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
