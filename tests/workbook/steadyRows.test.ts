/** Rows that looks were given to when the workbook was laid out are the same rows when packages come and go. */
import { describe, expect, test } from 'vitest';
import { call } from '../../src/functions/library.ts';
import type { Cell } from '../../src/tables/cell.ts';
import type { Grids } from '../../src/workbook/layout.ts';
import { sample } from '../sample.ts';
import { tableArguments } from '../tableArguments.ts';
import { withPackages } from './grownTables.ts';

const one = withPackages(sample('godwit'), 1);

type Block = readonly (readonly Cell[])[];

/** The rows of figures: those above the row with a label. */
function rowsAbove(end: string, block: Block): Block {
  const at = block.findIndex(([label]) => label === end);
  expect(at, end).toBeGreaterThan(1);
  return block.slice(0, at);
}

/** Labels of the rows of figures, without what they are measured against. */
const labels = (block: Block, end: string) =>
  rowsAbove(end, block)
    .slice(1)
    .map(([label]) => String(label ?? '').replace(/^ {2}against .*/, '  against'));

describe.each([
  ['PACKAGE_COMPARISON', 'Gravest findings'],
  ['COST_TABLE', 'Still to buy by the builder, in the amounts above'],
  ['MISSION_CHECK', 'In words'],
])('%s', (name, end) => {
  const blockOf = (grids: Grids) => call(name, tableArguments(grids)) as Cell[][];
  const alone = blockOf(one);

  test.each([2, 3, 8])('has the same rows with one package and with %i of its kind', (count) => {
    expect(labels(blockOf(withPackages(one, count)), end)).toEqual(labels(alone, end));
  });
});

test.each(['PACKAGE_COMPARISON', 'COST_TABLE'])(
  '%s says of a package alone that there is nothing to compare it with',
  (name) => {
    const alone = call(name, tableArguments(one)) as Cell[][];
    const against = alone.filter(([label]) => String(label).startsWith('  against'));
    expect(against.length).toBeGreaterThan(0);
    for (const [label, , difference] of against) {
      expect([label, difference]).toEqual(['  against another package', 'none']);
    }
  },
);

test('one package out of several is compared with the baseline, which is not shown', () => {
  const godwit = tableArguments(sample('godwit'));
  const all = call('COST_TABLE', godwit) as Cell[][];
  const larch = call('COST_TABLE', [...godwit, 'Larch']) as Cell[][];
  const column = all[0]?.indexOf('Larch') as number;
  const end = 'Still to buy by the builder, in the amounts above';
  expect(rowsAbove(end, larch).map((row) => row.slice(0, 3))).toEqual(
    rowsAbove(end, all).map((row) => [row[0], row[1], row[column]]),
  );
});
