/** PACKAGE_COMPARISON: its head, its groups, the gravest findings and the cautions. Groups have tests of their own. */
import { describe, expect, test } from 'vitest';
import { compare } from '../../src/assessment/assess.ts';
import { cautions } from '../../src/assessment/cautions.ts';
import { comparisonBlock } from '../../src/assessment/comparisonBlock.ts';
import type { Finding, Gravity } from '../../src/assessment/finding.ts';
import type { TableGrids } from '../../src/tables/catalogue.ts';
import { catalogueOf } from '../tables/smallBuild.ts';
import { smallWorkbook } from '../tables/smallWorkbook.ts';
import { withAttribute } from './flightFixture.ts';

const small: TableGrids = smallWorkbook();
const comparisonOf = (grids = small) => compare(catalogueOf(grids));
const titles = (grids = small) =>
  comparisonBlock(comparisonOf(grids))
    .filter((line) => line.length === 1)
    .map(([title]) => String(title));

test('the airframe, the units, a column a package', () => {
  const block = comparisonBlock(comparisonOf());
  expect(block[0]).toEqual(['Wren', 'unit', 'Ash', 'Birch']);
  expect(block[1]).toEqual(['Findings']);
  for (const line of block) expect([1, 4]).toContain(line.length);
});

test('a group without lines has no title: no mission, no cooling', () => {
  expect(titles()).toContain('Mission: 2 × 170 lb, 30 lb of bags, 250 nmi');
  expect(titles()).toContain('Cooling, hot day');
  const without = withAttribute({ ...small, cooling: [] }, 'mission', 'distance', '', 'nmi');
  expect(titles(without).filter((title) => /^(Mission|Cooling)/.test(title))).toEqual([]);
  for (const line of comparisonBlock(comparisonOf(without))) expect([1, 4]).toContain(line.length);
});

describe('findings and cautions below', () => {
  const finding = (gravity: Gravity, index: number, owner = 'Ash'): Finding => ({
    gravity,
    package: owner,
    subject: `subject ${index}`,
    source: '',
    text: `text ${index}`,
  });
  const below = (findings: readonly Finding[]) => {
    const block = comparisonBlock({ ...comparisonOf(), findings });
    return block.slice(block.findIndex(([cell]) => cell === 'Gravest findings') + 1);
  };
  const warned = [['Cautions'], ...cautions.map((caution) => [caution])];

  test('the gravest first, in words; notes are only counted', () => {
    expect(below([finding('note', 1), finding('check', 2, ''), finding('stop', 3)])).toEqual([
      ['■ Stop: Ash, subject 3: text 3'],
      ['▲ Check: all, subject 2: text 2'],
      ['and 1 more in the findings'],
      ...warned,
    ]);
  });

  test('eight of them, and how many more there are', () => {
    const ten = Array.from({ length: 10 }, (_, index) => finding('check', index));
    const lines = below([...ten, finding('note', 11)]);
    expect(lines.slice(0, 8)).toEqual(
      ten.slice(0, 8).map((_, index) => [`▲ Check: Ash, subject ${index}: text ${index}`]),
    );
    expect(lines.slice(8)).toEqual([['and 3 more in the findings'], ...warned]);
  });

  test('none, and nothing more', () => {
    expect(below([])).toEqual([['none'], ...warned]);
    expect(below([finding('stop', 1)])).toEqual([['■ Stop: Ash, subject 1: text 1'], ...warned]);
  });
});
