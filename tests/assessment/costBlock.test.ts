/** COST_TABLE of the small aircraft of tests/tables/smallWorkbook.ts, by hand in USD and lb. */
import { describe, expect, test } from 'vitest';
import { compare } from '../../src/assessment/assess.ts';
import { costBlock } from '../../src/assessment/costBlock.ts';
import type { TableGrids } from '../../src/tables/catalogue.ts';
import type { Cell } from '../../src/tables/cell.ts';
import { catalogueOf } from '../tables/smallBuild.ts';
import { smallWorkbook } from '../tables/smallWorkbook.ts';
import { withCells } from './flightFixture.ts';
import { packageOf } from './sampleCatalogue.ts';

const small: TableGrids = smallWorkbook();
function blockOf(grids = small, names: readonly string[] = ['Ash', 'Birch']): Cell[][] {
  const comparison = compare(catalogueOf(grids));
  return costBlock(
    comparison,
    names.map((name) => packageOf(comparison, name)),
  );
}
const lineOf = (label: string) => blockOf().find(([cell]) => cell === label);
const scopeTitle = 'Still to buy by the builder, in the amounts above';
const scope = (block = blockOf()) => block.slice(block.findIndex(([cell]) => cell === scopeTitle) + 1);

test('head: the years it is for, a column a package', () => {
  expect(blockOf()[0]).toEqual(['Cost: 100 h a year, 10 years', 'unit', 'Ash', 'Birch']);
  expect(blockOf(small, ['Birch'])[0]).toEqual(['Cost: 100 h a year, 10 years', 'unit', 'Birch']);
});

// Kit 40,000, options 2,900; Ash 25,000 + 3,000, the oil is the builder's; Birch 38,000 + 9,000. Tax 7 %.
// Ready to fly: 70,900 × 1.07 + 60 × 1.07; 89,900 × 1.07 + 30 × 1.07; labour is not known
test('amounts by cause; at least so much where a part is not known', () => {
  expect(lineOf('  kit, package and options')).toEqual(['  kit, package and options', 'USD', 70_900, 89_900]);
  expect(lineOf('  tax')).toEqual(['  tax', 'USD', 4963, 6293]);
  expect(lineOf('  still to buy, without tax')).toEqual(['  still to buy, without tax', 'USD', 60, 30]);
  expect(lineOf('  labour')).toEqual(['  labour', 'USD', 'not known', 'not known']);
  expect(blockOf()[1]).toEqual(['ready to fly, tax and labour in', 'USD', '≥ 75,927', '≥ 96,225']);
});

describe('still to buy', () => {
  test('heads and units, then package, item, system, weight and price', () => {
    expect(scope()).toEqual([
      ['Package', 'Item', 'System', 'Weight', 'Price'],
      ['', '', '', 'lb', 'USD'],
      ['Ash', 'oil', 'oil', 12, 60],
      ['Ash', 'coolant: nothing listed, other packages have it', 'coolant', 'not known', 'not known'],
      ['Birch', 'coolant', 'coolant', 9, 30],
      ['Birch', 'oil: nothing listed, other packages have it', 'oil', 'not known', 'not known'],
    ]);
  });

  test('nothing: said', () => {
    const kit = withCells(small, 'components', ['Birch', 'coolant'], { 'supplied by': 'kit', system: 'oil' });
    expect(scope(blockOf(kit, ['Birch'])).slice(2)).toEqual([['nothing']]);
  });
});
