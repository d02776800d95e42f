/** Faults that show when values are held against each other: at the limit, with a cell missing, with another fault beside. */
import { describe, expect, test } from 'vitest';
import { readCatalogue } from '../../src/tables/catalogue.ts';
import type { Cell } from '../../src/tables/cell.ts';
import { faultsOf, put, smallWorkbook, withCell } from './smallWorkbook.ts';

/** A table without the rows that begin so. */
const withoutRow = (grid: Cell[][], first: string) => grid.filter(([name]) => name !== first);

describe('components', () => {
  test('a package that is missing is one fault, not also a lump of nobody', () => {
    expect(faultsOf(withCell('components', 7, 'package', ''))).toEqual([
      'components, row 7 (engine block), package: got an empty cell, expected a value',
    ]);
  });

  test('a name that is missing does not hide a missing arm', () => {
    const grids = withCell('components', 3, 'component', '');
    put(grids.components, 3, 'arm', '');
    expect(faultsOf(grids)).toEqual([
      'components, row 3 (Ash), component: got an empty cell, expected a value',
      'components, row 3 (Ash), arm: got an empty cell, expected an arm, or details with arms that are included in this lump',
    ]);
  });

  test('a weight that cannot be read wants no arm as well', () => {
    const grids = withCell('components', 3, 'weight', 'heavy');
    put(grids.components, 3, 'arm', '');
    expect(faultsOf(grids)).toEqual([
      'components, row 3 (Ash, engine), weight: got "heavy", expected a number without unit or separators',
    ]);
  });

  test('another fault of the table hides no missing arm; a lump in doubt does', () => {
    const grids = withCell('components', 3, 'weight', 'heavy');
    put(grids.components, 5, 'arm', '');
    expect(faultsOf(grids).map((fault) => fault.replace(/:.*/, ''))).toEqual([
      'components, row 3 (Ash, engine), weight',
      'components, row 5 (Ash, propeller), arm',
    ]);
    const lump = withCell('components', 7, 'included in', 'kit');
    put(lump.components, 8, 'included in', 'kit');
    expect(faultsOf(lump).map((fault) => fault.replace(/:.*/, ''))).toEqual([
      'components, row 7 (Birch, engine block), included in',
      'components, row 8 (Birch, gearbox), included in',
    ]);
  });
});

describe('airframe and packages', () => {
  test('a restricted range with one end, whose other attribute is not in the table', () => {
    const grids = smallWorkbook();
    expect(faultsOf({ ...grids, packages: withoutRow(grids.packages, 'restricted rpm to') })).toEqual([
      'packages, restricted rpm to, Ash: got nothing, expected where the restriction ends',
    ]);
    expect(faultsOf({ ...grids, packages: withoutRow(grids.packages, 'restricted rpm from') })).toEqual([
      'packages, restricted rpm from, Ash: got nothing, expected where the restriction begins',
    ]);
  });

  test('an attribute that is misspelt is not missed as well', () => {
    expect(faultsOf(withCell('packages', 13, 'attribute', 'restricted rpm too'))).toEqual([
      'packages, row 13, attribute: got "restricted rpm too", expected "restricted rpm to"',
    ]);
  });

  test('an end that cannot be read is not missed as well', () => {
    expect(faultsOf(withCell('packages', 13, 'Ash', 'high'))).toEqual([
      'packages, row 13 (restricted rpm to), Ash: got "high", expected a number without unit or separators',
    ]);
  });

  test('a tailwheel at the main wheels is not aft of them', () => {
    const grids = withCell('airframe', 19, 'value', 'tailwheel');
    put(grids.airframe, 21, 'value', 95);
    expect(faultsOf(grids)).toEqual([
      'airframe, row 21 (nose or tail wheel arm), value: got 95, expected a tailwheel aft of the main wheels',
    ]);
  });

  test('limits that are not given limit nothing', () => {
    const grids = smallWorkbook();
    for (const row of [11, 12, 13, 17, 18, 20]) put(grids.airframe, row, 'value', '');
    for (const column of ['minimum', 'usual', 'limit group', 'group maximum'])
      for (const row of [5, 6]) put(grids.stations, row, column, '');
    expect(faultsOf(grids)).toEqual([]);
  });
});

describe('stations and tanks', () => {
  const limitOfTheGroup = (row: number, name: string) =>
    `stations, row ${row} (${name}), group maximum: got an empty cell, expected the limit of the group`;

  test('a limit that the first of a group lacks, or both', () => {
    const grids = withCell('stations', 5, 'group maximum', '');
    expect(faultsOf(grids)).toEqual([limitOfTheGroup(5, 'shelf')]);
    put(grids.stations, 6, 'group maximum', '');
    expect(faultsOf(grids)).toEqual([limitOfTheGroup(5, 'shelf'), limitOfTheGroup(6, 'locker')]);
  });

  test('the least loads may fill a group', () => {
    const grids = withCell('stations', 5, 'minimum', 40);
    put(grids.stations, 6, 'minimum', 40);
    expect(faultsOf(grids)).toEqual([]);
  });

  test('a tank without a name is that fault alone', () => {
    const grids = withCell('tanks', 3, 'tank', '');
    grids.loadings = [];
    expect(faultsOf(grids)).toEqual(['tanks, row 3, tank: got an empty cell, expected a value']);
  });

  test('a fuel flow that cannot be read is not missed as well', () => {
    expect(faultsOf(withCell('fuel points', 5, 'fuel flow', '4,5'))).toEqual([
      'fuel points, row 5 (Birch, lean, 75), fuel flow: got "4,5", expected a number with a decimal point and no comma',
    ]);
  });
});

describe('loadings', () => {
  test('the same name twice, no name, an empty tank', () => {
    expect(faultsOf(withCell('loadings', 4, 'loading', 'Alone'))).toEqual([
      'loadings, row 4, loading: got "Alone", expected a name that row 3 does not have already',
    ]);
    expect(faultsOf(withCell('loadings', 4, 'loading', ''))).toEqual([
      'loadings, row 4, loading: got an empty cell, expected a value',
    ]);
    expect(faultsOf(withCell('loadings', 4, 'main tank', ''))).toEqual([
      'loadings, row 4 (two), main tank: got an empty cell, expected a value',
    ]);
    expect(faultsOf(withCell('loadings', 4, 'main tank', 0))).toEqual([]);
  });
});

test('the currency of the workbook is the one its prices name; where none does, USD', () => {
  const inEuro = Object.fromEntries(
    Object.entries(smallWorkbook()).map(([table, grid]) => [
      table,
      grid.map((row) => row.map((cell) => (typeof cell === 'string' ? cell.replace('USD', 'EUR') : cell))),
    ]),
  );
  expect(readCatalogue(inEuro).catalogue?.currency).toBe('EUR');
  const priceless = smallWorkbook();
  for (const table of ['components', 'equipment'] as const) {
    const at = priceless[table][0]!.indexOf('price');
    for (const row of priceless[table].slice(1)) row[at] = '';
  }
  priceless.rates = [['attribute', 'value', 'unit']];
  priceless.airframe = withoutRow(priceless.airframe, 'kit price');
  expect(readCatalogue(priceless).catalogue?.currency).toBe('USD');
});

describe('a fault hides what follows from it, and nothing else', () => {
  test('the same column and row of another table', () => {
    const grids = withCell('equipment', 3, 'fits', 'Oak');
    put(grids.tanks, 3, 'fits', 'Oak');
    expect(faultsOf(grids).map((fault) => fault.replace(/:.*/, ''))).toEqual([
      'equipment, row 3 (radio), fits',
      'tanks, row 3, fits',
    ]);
  });

  test('another column of the row', () => {
    const grids = withCell('stations', 3, 'arm', 'abeam');
    put(grids.stations, 3, 'usual', 300);
    expect(faultsOf(grids).map((fault) => fault.replace(/:.*/, ''))).toEqual([
      'stations, row 3 (pilot), arm',
      'stations, row 3 (pilot), usual',
    ]);
  });

  test('the unit of an attribute', () => {
    expect(faultsOf(withCell('packages', 13, 'unit', 'lb'))).toEqual([
      expect.stringMatching(/^packages, row 13 \(restricted rpm to\), unit: got "lb", expected a unit: rpm/),
    ]);
  });
});
