import { describe, expect, test } from 'vitest';
import { readCatalogue, type TableName } from '../../src/tables/catalogue.ts';
import type { Cell } from '../../src/tables/cell.ts';
import { faultsOf, put, smallWorkbook, withCell, without } from './smallWorkbook.ts';

/** Tables whose records are rows. The header is row 1, the units row 2, the first record row 3. */
describe('one cell is wrong', () => {
  test.each<[string, TableName, number, string, Cell, string]>([
    [
      'decimal comma',
      'components',
      3,
      'weight',
      '12,5',
      'components, row 3 (Ash, engine), weight: got "12,5", expected a number with a decimal point and no comma',
    ],
    [
      'text',
      'stations',
      4,
      'arm',
      'abeam',
      'stations, row 4 (passenger), arm: got "abeam", expected a number without unit or separators',
    ],
    [
      'unit in the cell',
      'tanks',
      3,
      'usable',
      '30 gal',
      'tanks, row 3 (main tank), usable: got "30 gal", expected a number without unit or separators',
    ],
    [
      'no-break space as separator',
      'components',
      6,
      'price',
      '38\u00a0000',
      'components, row 6 (Birch, kit as delivered), price: got "38\u00a0000", expected a number without unit or separators',
    ],
    [
      'date',
      'components',
      4,
      'weight',
      new Date(2026, 0, 12),
      'components, row 4 (Ash, oil), weight: got a date, expected a number; the cell is formatted as a date',
    ],
    [
      'tick box',
      'equipment',
      3,
      'weight',
      true,
      'equipment, row 3 (radio), weight: got TRUE, expected a number, not a tick box',
    ],
    [
      'error cell in a number',
      'envelope',
      3,
      'aft limit',
      '#REF!',
      'envelope, row 3 (1000), aft limit: got "#REF!", expected a number; the cell holds an error',
    ],
    [
      'error cell in a name',
      'components',
      5,
      'system',
      '#N/A',
      'components, row 5 (Ash, propeller), system: got "#N/A", expected text',
    ],
    [
      'empty where a value is needed',
      'tanks',
      3,
      'arm',
      '',
      'tanks, row 3 (main tank), arm: got an empty cell, expected a value',
    ],
    [
      'empty name',
      'stations',
      5,
      'station',
      null,
      'stations, row 5, station: got an empty cell, expected a value',
    ],
    [
      'below its limit',
      'stations',
      3,
      'minimum',
      -1,
      'stations, row 3 (pilot), minimum: got -1, expected a number of at least 0 lb',
    ],
    [
      'not above its limit',
      'tanks',
      3,
      'usable',
      0,
      'tanks, row 3 (main tank), usable: got 0, expected a number above 0 US gal',
    ],
    [
      'above its limit',
      'fuel points',
      4,
      'power',
      130,
      'fuel points, row 4 (Ash, rich, 130), power: got 130, expected a number of at most 125 %',
    ],
    [
      'ambiguous percentage',
      'fuel points',
      3,
      'power',
      0.75,
      'fuel points, row 3 (Ash, rich, 0.75), power: got 0.75, expected a clear percentage: this may be 0.75 % or 75 %; the unit "fraction" says which',
    ],
    [
      'no whole number',
      'stations',
      3,
      'persons',
      1.5,
      'stations, row 3 (pilot), persons: got 1.5, expected a whole number',
    ],
    [
      'no choice of it',
      'components',
      4,
      'arm from',
      'spinner',
      'components, row 4 (Ash, oil), arm from: got "spinner", expected datum or firewall',
    ],
    [
      'no tick',
      'equipment',
      4,
      'fitted',
      'x',
      'equipment, row 4 (lights), fitted: got "x", expected TRUE or FALSE (or yes or no)',
    ],
    [
      'no term',
      'components',
      3,
      'basis',
      7,
      'components, row 3 (Ash, engine), basis: got 7, expected a word',
    ],
  ])('%s', (_, table, row, header, cell, fault) => {
    expect(faultsOf(withCell(table, row, header, cell))).toEqual([fault]);
  });
});

describe('rows', () => {
  test('the same name twice', () => {
    expect(faultsOf(withCell('stations', 4, 'station', 'Pilot'))).toContain(
      'stations, row 4, station: got "Pilot", expected a name that row 3 does not have already',
    );
    expect(faultsOf(withCell('fuel points', 4, 'power', 75))).toEqual([
      'fuel points, row 4, package, mixture, power: got "Ash, rich, 75", expected a name that row 3 does not have already',
    ]);
  });

  test('two rows without name are not two of the same name', () => {
    const grids = smallWorkbook();
    put(grids.equipment, 6, 'item', '');
    put(grids.equipment, 7, 'item', '');
    expect(faultsOf(grids).filter((fault) => fault.includes('already'))).toEqual([]);
  });

  test('empty rows and columns, between and behind, are passed over', () => {
    const grids = smallWorkbook();
    const width = grids.components[0]?.length ?? 0;
    grids.components.splice(5, 0, Array<Cell>(width).fill(''));
    grids.components.push(Array<Cell>(width).fill(null), Array<Cell>(width).fill('  '));
    for (const row of grids.components) row.push('', null, undefined);
    const { catalogue } = readCatalogue(grids);
    expect(catalogue?.components).toHaveLength(8);
    expect(catalogue?.components.map(({ row }) => row)).toEqual([3, 4, 5, 7, 8, 9, 10, 11]);
  });

  test('tick boxes without a tick in spare rows are no records', () => {
    const grids = smallWorkbook();
    const spare = (grids.equipment[0] as Cell[]).map((header) =>
      header === 'standard' || header === 'fitted' ? false : '',
    );
    grids.equipment.push(spare, spare);
    const { catalogue } = readCatalogue(grids);
    expect(catalogue?.equipment).toHaveLength(5);
  });

  test('titles may stand above the header; rows are counted from the first of the range', () => {
    const grids = withCell('components', 3, 'weight', 'heavy');
    grids.components.unshift(['Weights of both packages', '', ''], ['', '', '']);
    expect(faultsOf(grids)).toEqual([
      'components, row 5 (Ash, engine), weight: got "heavy", expected a number without unit or separators',
    ]);
  });

  test('a table that must be there', () => {
    for (const table of ['envelope', 'stations', 'tanks', 'components'] as const) {
      const grids = smallWorkbook();
      expect(faultsOf(without(table))).toContain(`${table}: got nothing, expected this table`);
      expect(faultsOf({ ...grids, [table]: [['', null]] })).toContain(
        `${table}: got nothing, expected this table`,
      );
      expect(faultsOf({ ...grids, [table]: grids[table].slice(0, 2) })).toContain(
        `${table}: got nothing, expected at least one row`,
      );
    }
  });

  test('a table that may be missing', () => {
    for (const table of ['fuel points', 'power points', 'cooling', 'known points'] as const)
      expect(faultsOf(without(table))).toEqual([]);
  });
});
