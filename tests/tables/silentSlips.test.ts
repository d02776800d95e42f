/** Slips that once went unnoticed, word for word. */
import { expect, test } from 'vitest';
import { faultsOf, put, smallWorkbook, withCell } from './smallWorkbook.ts';

test('a component pasted twice is not counted twice', () => {
  const grids = smallWorkbook();
  grids.components.push([...grids.components[2]!]);
  expect(faultsOf(grids)).toEqual([
    'components, row 11, package, component: got "Ash, engine", expected a row other than row 3; two of a kind want names or notes',
  ]);
  put(grids.components, 11, 'component', 'engine, second');
  expect(faultsOf(grids)).toEqual([]);
});

test('one unit in another currency is the fault, wherever it stands', () => {
  const grids = smallWorkbook();
  put(grids.airframe, 22, 'unit', 'EUR'); // the first price that is read
  expect(faultsOf(grids)).toEqual([
    'airframe, row 22 (kit price), unit: got "EUR", expected USD, the workbook\'s currency',
  ]);
});

test('a number of a thousand digits, in text or not, is none', () => {
  for (const huge of ['9'.repeat(1000), 1e13, -1e300]) {
    const [fault, ...others] = faultsOf(withCell('stations', 3, 'arm', huge));
    expect(others).toEqual([]);
    expect(fault).toMatch(
      /^stations, row 3 \(pilot\), arm: got .*, expected a number no larger than 1000000000000$/,
    );
  }
});

test('a remainder of rounding is not above 0', () => {
  expect(faultsOf(withCell('tanks', 3, 'usable', 0.1 + 0.2 - 0.3))).toContain(
    'tanks, row 3 (main tank), usable: got 5.551115123125783e-17, expected a number above 0 US gal',
  );
});

test('FALSE beside a label that is misspelt or gone says something', () => {
  const grids = smallWorkbook();
  grids.airframe.push(['weighed with fluid', false, '', ''], ['', false, '', '']);
  expect(faultsOf(grids)).toEqual([
    'airframe, row 23, attribute: got "weighed with fluid", expected "weighed with fluids"',
    'airframe, row 24, attribute: got an empty cell, expected the name of an attribute',
  ]);
});
