import { expect, test } from 'vitest';
import { readCatalogue } from '../../src/tables/catalogue.ts';
import { faultsOf, put, smallWorkbook, withCell } from './smallWorkbook.ts';

test('a loading holds the weight of every station and the fuel of every tank', () => {
  const { catalogue } = readCatalogue(smallWorkbook());
  const two = catalogue?.loadings[1];
  expect(two?.name).toBe('two');
  expect(two?.row).toBe(4);
  expect(two?.stations.get('passenger')).toBeCloseTo(170 * 0.45359237, 9);
  expect(two?.tanks.get('main tank')).toBeCloseTo(20 * 0.003785411784, 12);
});

test('a station or tank without column', () => {
  expect(faultsOf(withCell('loadings', 1, 'locker', 'sidecar'))).toEqual([
    'loadings, row 1, locker: got nothing, expected this column',
  ]);
  expect(faultsOf(withCell('loadings', 1, 'main tank', 'mian tank'))).toEqual([
    'loadings, row 1, column: got "mian tank", expected "main tank"',
  ]);
});

test('a column of no station or tank is left alone, and said so', () => {
  const grids = smallWorkbook();
  grids.loadings.forEach((row, index) => {
    row.push(index === 0 ? 'towbar' : '');
  });
  expect(readCatalogue(grids).catalogue?.remarks).toEqual([
    { table: 'loadings', text: 'column "towbar" is not one of this table\'s and is not read' },
  ]);
});

test('a cell left empty is no zero', () => {
  expect(faultsOf(withCell('loadings', 3, 'shelf', ''))).toEqual([
    'loadings, row 3 (alone), shelf: got an empty cell, expected a value',
  ]);
});

test('more fuel than the tank holds usable, in the case of the header and of the cell', () => {
  expect(faultsOf(withCell('loadings', 4, 'main tank', 30))).toEqual([]);
  const grids = withCell('loadings', 4, 'main tank', 31);
  put(grids.loadings, 1, 'main tank', 'Main Tank');
  expect(faultsOf(grids)).toEqual([
    'loadings, row 4 (two), main tank: got 31, expected no more than the tank holds usable',
  ]);
});

test('a full tank in another unit is not overfull', () => {
  const grids = withCell('loadings', 2, 'main tank', 'L');
  put(grids.loadings, 3, 'main tank', 75);
  put(grids.loadings, 4, 'main tank', 30 * 3.785411784); // 30 US gal
  expect(faultsOf(grids)).toEqual([]);
});

test('a station whose name is missing does not hide the other faults', () => {
  const grids = withCell('stations', 5, 'station', '');
  put(grids.loadings, 3, 'pilot', 'heavy');
  expect(faultsOf(grids)).toEqual([
    'stations, row 5, station: got an empty cell, expected a value',
    'loadings, row 3 (alone), pilot: got "heavy", expected a number without unit or separators',
  ]);
});

test('without loadings there are none', () => {
  expect(readCatalogue({ ...smallWorkbook(), loadings: [] }).catalogue?.loadings).toEqual([]);
});
