/** The line above a table of attributes: its columns, or its packages. */
import { describe, expect, test } from 'vitest';
import { readCatalogue } from '../../src/tables/catalogue.ts';
import { faultsOf, smallWorkbook, withCell } from './smallWorkbook.ts';

describe('headers', () => {
  test('a slip in a column’s name is the only fault', () => {
    expect(faultsOf(withCell('airframe', 1, 'value', 'vaule'))).toEqual([
      'airframe, row 1, column: got "vaule", expected "value"',
    ]);
    expect(faultsOf(withCell('airframe', 1, 'unit', 'units'))).toEqual([
      'airframe, row 1, column: got "units", expected "unit"',
    ]);
    expect(faultsOf(withCell('packages', 1, 'unit', 'unlt'))).toEqual([
      'packages, row 1, column: got "unlt", expected "unit"',
    ]);
  });

  test('a column that is missing', () => {
    expect(faultsOf(withCell('airframe', 1, 'value', 'figures'))).toEqual([
      'airframe, row 1: got nothing, expected a column headed "value"',
    ]);
    expect(faultsOf(withCell('packages', 1, 'attribute', 'what'))).toEqual([
      'packages, row 1: got nothing, expected a column headed "attribute"',
    ]);
  });

  test('another column is left alone, and said so; a note is not', () => {
    const grids = withCell('airframe', 1, 'note', 'Notes');
    grids.airframe.forEach((row, index) => {
      row.push(index === 0 ? 'checked by' : 'me');
    });
    const { catalogue } = readCatalogue(grids);
    expect(catalogue?.remarks).toEqual([
      { table: 'airframe', text: 'column "checked by" is not one of this table\'s and is not read' },
    ]);
  });

  test('two packages of one name', () => {
    expect(faultsOf(withCell('packages', 1, 'Birch', 'ash'))).toContain(
      'packages, row 1, ash: got "ash", expected a header that stands once',
    );
  });

  test('a package without name', () => {
    expect(faultsOf(withCell('packages', 1, 'Birch', ''))).toContain(
      'packages, row 1, column 4: got an empty cell, expected a header: row 2 of this column holds a value',
    );
  });

  test('no package at all', () => {
    const grids = smallWorkbook();
    const packages = grids.packages.map((row) => row.slice(0, 2));
    expect(faultsOf({ ...grids, packages })).toContain(
      'packages, row 1: got nothing, expected at least one column beside "attribute" and "unit"',
    );
  });
});

test('titles may stand above the header', () => {
  const grids = withCell('packages', 3, 'Birch', 'strong');
  grids.packages.unshift(['Engine packages of the season', '', '', ''], ['', '', '', '']);
  expect(faultsOf(grids)).toEqual([
    'packages, row 5 (takeoff power), Birch: got "strong", expected a number without unit or separators',
  ]);
});
