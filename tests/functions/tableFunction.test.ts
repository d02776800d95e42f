import { describe, expect, test } from 'vitest';
import { call, tableFunctions } from '../../src/functions/library.ts';
import { tableFunction } from '../../src/functions/tableFunction.ts';
import { tableNames } from '../../src/tables/catalogue.ts';
import type { Cell, Grid } from '../../src/tables/cell.ts';
import { quoteTerms } from '../quoteTerms.ts';
import { tableArguments } from '../tableArguments.ts';
import { put, smallWorkbook } from '../tables/smallWorkbook.ts';
import { expectBlock } from './expectBlock.ts';

const block = (cells: readonly (Cell | Grid)[]) => call('PACKAGE_COMPARISON', cells) as Cell[][];

describe('the block', () => {
  test.each(tableFunctions.map(({ name }) => name))(
    '%s is a rectangle of finite numbers, texts and blanks',
    (name) => {
      const cells = [
        ...tableArguments(smallWorkbook()),
        ...(name === 'QUOTE_LINES' ? [quoteTerms('Ash')] : []),
      ];
      const rows = call(name, cells) as Cell[][];
      expect(rows.length).toBeGreaterThan(1);
      expectBlock(rows);
    },
  );

  test('a number that is none is refused, not shown', () => {
    const broken = tableFunction({ name: 'BROKEN', help: '', compute: () => [['speed', Number.NaN]] });
    expect(() => broken.call(tableArguments(smallWorkbook()))).toThrow(
      new RangeError('BROKEN: the arguments lead to no finite speed; check them against each other'),
    );
  });
});

describe('tables with faults', () => {
  test('all faults stand in the place of the result, each with its place', () => {
    const grids = smallWorkbook();
    put(grids.components, 3, 'weight', '12,5');
    put(grids.airframe, 4, 'attribute', 'firewal arm');
    expect(block(tableArguments(grids))).toEqual([
      ['No result: 2 faults in the tables. Correct what is listed here.'],
      ['airframe, row 4, attribute: got "firewal arm", expected "firewall arm"'],
      [
        'components, row 3 (Ash, engine), weight: got "12,5", expected a number with a decimal point and no comma',
      ],
    ]);
  });

  test('one is one', () => {
    const grids = smallWorkbook();
    put(grids.components, 3, 'weight', '12,5');
    expect(block(tableArguments(grids))[0]![0]).toBe(
      'No result: 1 fault in the tables. Correct what is listed here.',
    );
  });

  test('a table that is not given', () => {
    const [, ...faults] = block(tableArguments({ ...smallWorkbook(), tanks: [] }));
    // The column of the loadings for a tank that is not there is no fault
    expect(faults).toEqual([['tanks: got nothing, expected this table']]);
  });
});

describe('arguments', () => {
  test('a table that may be left out is left out by every form of an empty cell', () => {
    const without = block(tableArguments({ ...smallWorkbook(), rates: [] }));
    const at = tableNames.indexOf('rates');
    for (const empty of ['', null, undefined, ' '] as const) {
      const cells = tableArguments(smallWorkbook());
      cells[at] = empty;
      expect(block(cells)).toEqual(without);
    }
    expect(block(tableArguments(smallWorkbook()).slice(0, at))).toEqual(without);
  });

  test('a single cell is no table', () => {
    const cells = tableArguments(smallWorkbook());
    cells[1] = '#REF!';
    expect(() => block(cells)).toThrow(
      new RangeError(
        'PACKAGE_COMPARISON: envelope must be the range of the table with its headers, got "#REF!"',
      ),
    );
  });

  test('more than there are', () => {
    expect(() => block([...tableArguments(smallWorkbook()), 1])).toThrow(
      new RangeError('PACKAGE_COMPARISON: takes at most 15 arguments, got 16'),
    );
  });

  test('a package that is not there is named with those that are', () => {
    expect(() => call('LOADING_CHECK', [...tableArguments(smallWorkbook()), 'Oak'])).toThrow(
      new RangeError('LOADING_CHECK: package must be one of Ash, Birch, got "Oak"'),
    );
  });
});

test('the same arrays with another number in them are read anew', () => {
  const grids = smallWorkbook();
  const cells = tableArguments(grids);
  const installed = () => {
    const [header = [], ...rows] = block(cells);
    const [, , ash] = rows.find(([label]) => label === 'powerplant, installed') ?? [];
    expect(header[2]).toBe('Ash');
    return ash as number;
  };
  const before = installed();
  const weights = grids.components as Cell[][];
  const column = weights[0]!.indexOf('weight');
  const row = weights.find(([name], index) => index > 1 && name === 'Ash')!;
  row[column] = Number(row[column]) + 10;
  expect(installed() - before).toBeCloseTo(10, 6);
});
