import { describe, expect, test } from 'vitest';
import { readCatalogue, type TableName } from '../../src/tables/catalogue.ts';
import type { Cell } from '../../src/tables/cell.ts';
import { faultsOf, put, smallWorkbook, withCell, without } from './smallWorkbook.ts';

/** Tables of attributes: one record (airframe, mission, rates), or one a column (packages). The header is row 1. */
describe('one cell is wrong', () => {
  test.each<[string, TableName, number, string, Cell, string]>([
    [
      'decimal comma',
      'airframe',
      5,
      'value',
      '900,5',
      'airframe, row 5 (empty weight), value: got "900,5", expected a number with a decimal point and no comma',
    ],
    [
      'text',
      'airframe',
      17,
      'value',
      'about 120',
      'airframe, row 17 (VNO), value: got "about 120", expected a number without unit or separators',
    ],
    [
      'date',
      'mission',
      2,
      'value',
      new Date(2026, 3, 1),
      'mission, row 2 (people), value: got a date, expected a number; the cell is formatted as a date',
    ],
    [
      'error cell',
      'rates',
      4,
      'value',
      '#DIV/0!',
      'rates, row 4 (labour an hour), value: got "#DIV/0!", expected a number; the cell holds an error',
    ],
    [
      'tick box',
      'packages',
      3,
      'Birch',
      false,
      'packages, row 3 (takeoff power), Birch: got FALSE, expected a number, not a tick box',
    ],
    [
      'empty',
      'airframe',
      10,
      'value',
      null,
      'airframe, row 10 (maximum takeoff weight), value: got an empty cell, expected a value',
    ],
    [
      'empty in one package',
      'packages',
      8,
      'Ash',
      '',
      'packages, row 8 (fuel), Ash: got an empty cell, expected a value',
    ],
    [
      'beyond its limit',
      'packages',
      3,
      'Birch',
      1200,
      'packages, row 3 (takeoff power), Birch: got 1200, expected a number of at most 1000 hp',
    ],
    [
      'no choice',
      'airframe',
      19,
      'value',
      'tricycle',
      'airframe, row 19 (landing gear), value: got "tricycle", expected nosewheel or tailwheel',
    ],
    [
      'ambiguous percentage',
      'packages',
      14,
      'Ash',
      0.85,
      'packages, row 14 (static rpm), Ash: got 0.85, expected a clear percentage: this may be 0.85 % or 85 %; the unit "fraction" says which',
    ],
    [
      'percentage beyond its limit',
      'rates',
      5,
      'value',
      107,
      'rates, row 5 (sales tax), value: got 107, expected a number of at most 50 %',
    ],
  ])('%s', (_, table, row, header, cell, fault) => {
    expect(faultsOf(withCell(table, row, header, cell))).toEqual([fault]);
  });
});

describe('units', () => {
  test.each<[string, TableName, number, Cell, string]>([
    [
      'missing',
      'airframe',
      4,
      '',
      'airframe, row 4 (firewall arm), unit: got an empty cell, expected a unit: in, mm, cm, m, ft',
    ],
    [
      'unknown',
      'airframe',
      5,
      'slug',
      'airframe, row 5 (empty weight), unit: got "slug", expected a unit: lb, kg',
    ],
    [
      'of another kind',
      'packages',
      3,
      'kg',
      'packages, row 3 (takeoff power), unit: got "kg", expected a unit: hp, kW, PS',
    ],
    [
      'where there is none',
      'airframe',
      2,
      'in',
      'airframe, row 2 (airframe), unit: got "in", expected no unit for airframe',
    ],
    [
      'a second currency',
      'rates',
      4,
      'EUR',
      'rates, row 4 (labour an hour), unit: got "EUR", expected USD, the workbook\'s currency',
    ],
    [
      'a second currency in a price of fuel',
      'rates',
      2,
      'EUR/L',
      'rates, row 2 (avgas), unit: got "EUR/L", expected USD, the workbook\'s currency',
    ],
  ])('%s', (_, table, row, unit, fault) => {
    expect(faultsOf(withCell(table, row, 'unit', unit))).toEqual([fault]);
  });

  test('nothing beside it, nothing to measure: no unit is needed', () => {
    const grids = withCell('airframe', 11, 'value', '');
    put(grids.airframe, 11, 'unit', '-');
    grids.airframe.push(['ballast arm', '', '', '']);
    expect(faultsOf(grids)).toEqual([]);
    put(grids.airframe, 11, 'value', 1610);
    expect(faultsOf(grids)).toEqual([
      'airframe, row 11 (maximum ramp weight), unit: got "-", expected a unit: lb, kg',
    ]);
  });
});

test('a price of fuel is a number of at least 0, in a currency a volume', () => {
  expect(faultsOf(withCell('rates', 2, 'value', 'dear'))).toEqual([
    'rates, row 2 (avgas), value: got "dear", expected a number without unit or separators',
  ]);
  expect(faultsOf(withCell('rates', 2, 'value', -1))).toEqual([
    'rates, row 2 (avgas), value: got -1, expected a number of at least 0',
  ]);
  expect(faultsOf(withCell('rates', 2, 'value', 0))).toEqual([]);
  for (const unit of ['AUSD/US gal', 'USD', 'USD/kg', 'US gal'])
    expect(faultsOf(withCell('rates', 2, 'unit', unit))).toEqual([
      `rates, row 2 (avgas), unit: got "${unit}", expected a currency and a volume, such as USD/US gal or EUR/L`,
    ]);
});

describe('attributes', () => {
  test('one that must be there is missed by name, once for all packages', () => {
    const grids = smallWorkbook();
    grids.airframe.splice(3, 1);
    grids.packages.splice(6, 1);
    expect(faultsOf(grids)).toEqual(['airframe, firewall arm: got nothing, expected this attribute']);
    grids.packages.splice(5, 1);
    expect(faultsOf(grids)).toEqual([
      'airframe, firewall arm: got nothing, expected this attribute',
      'packages, cylinders: got nothing, expected this attribute',
    ]);
  });

  test('a slip is named with the nearest label that is not there', () => {
    expect(faultsOf(withCell('airframe', 4, 'attribute', 'firewal arm'))).toEqual([
      'airframe, row 4, attribute: got "firewal arm", expected "firewall arm"',
    ]);
    // nearer to the moment than to the weight, which comes first in the table
    const grids = smallWorkbook();
    grids.airframe.push(['maximum moments ahead of firewall', 9000, 'lb·in', '']);
    expect(faultsOf(grids)).toEqual([
      'airframe, row 23, attribute: got "maximum moments ahead of firewall", expected "maximum moment ahead of firewall"',
    ]);
  });

  test('one that stands twice', () => {
    const grids = smallWorkbook();
    grids.airframe.push(['Wing Area', 125, 'ft²', '']);
    expect(faultsOf(grids)).toEqual([
      'airframe, row 23, attribute: got "Wing Area", expected an attribute that row 14 does not have already',
    ]);
  });

  test('one nobody asked for is left alone, and said so', () => {
    const grids = smallWorkbook();
    grids.airframe.push(['paint', 'white', '', '']);
    grids.packages.push(['sound level', 'dB', 78, 75]);
    const { catalogue } = readCatalogue(grids);
    expect(catalogue?.remarks).toEqual([
      { table: 'airframe', text: 'attribute "paint" is not one of this table\'s and is not read' },
      { table: 'packages', text: 'attribute "sound level" is not one of this table\'s and is not read' },
    ]);
  });

  test('headings and empty lines are passed over', () => {
    const grids = smallWorkbook();
    grids.airframe.splice(4, 0, ['', '', '', ''], ['Weights', '', '', '']);
    const { catalogue } = readCatalogue(grids);
    expect(catalogue?.remarks).toEqual([]);
    expect(catalogue?.airframe.emptyWeight).toBeCloseTo(900 * 0.45359237, 9);
  });

  test('a value without name', () => {
    const grids = smallWorkbook();
    grids.mission.push(['', 5, 'lb', '']);
    expect(faultsOf(grids)).toEqual([
      'mission, row 8, attribute: got an empty cell, expected the name of an attribute',
    ]);
  });
});

test('a table that must be there, and one that need not', () => {
  expect(faultsOf(without('airframe'))).toEqual(['airframe: got nothing, expected this table']);
  expect(faultsOf({ ...smallWorkbook(), packages: [] })).toEqual([
    'packages: got nothing, expected this table',
  ]);
  const { catalogue } = readCatalogue(without('mission', 'rates'));
  // 14 CFR 23.25 before amendment 64: 170 lb; 14 CFR 91.151: 30 min
  expect(catalogue?.mission.personWeight).toBeCloseTo(170 * 0.45359237, 6);
  expect(catalogue?.mission.reserve).toBe(1800);
  expect(catalogue?.mission.defaulted).toContain('reserve');
});

test('defaults worth a word are listed, silent ones are not', () => {
  const { catalogue } = readCatalogue(smallWorkbook());
  expect(catalogue?.airframe.limitLoadFactor).toBe(3.8);
  expect(catalogue?.airframe.defaulted).toContain('limitLoadFactor');
  expect(catalogue?.airframe.weightUnit).toBe('lb');
  expect(catalogue?.airframe.defaulted).not.toContain('weightUnit');
  const birch = catalogue?.packages.find(({ name }) => name === 'Birch');
  expect(birch?.gearRatio).toBe(1.7);
  expect(birch?.defaulted).not.toContain('gearRatio');
  expect(birch?.defaulted).toContain('heatingValue');
});
