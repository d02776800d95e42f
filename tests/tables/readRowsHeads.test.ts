/** The two lines above the records of a table of rows: headers in row 1, units in row 2. */
import { describe, expect, test } from 'vitest';
import { readCatalogue, type TableName } from '../../src/tables/catalogue.ts';
import type { Cell } from '../../src/tables/cell.ts';
import { faultsOf, put, smallWorkbook, withCell } from './smallWorkbook.ts';

describe('units', () => {
  test.each<[string, TableName, string, Cell, string]>([
    [
      'missing',
      'components',
      'weight',
      '',
      'components, row 2, unit of weight: got an empty cell, expected a unit: lb, kg',
    ],
    [
      'unknown',
      'components',
      'weight',
      'stone',
      'components, row 2, unit of weight: got "stone", expected a unit: lb, kg',
    ],
    [
      'of another kind',
      'stations',
      'arm',
      'kg',
      'stations, row 2, unit of arm: got "kg", expected a unit: in, mm, cm, m, ft',
    ],
    [
      'an airspeed for a height',
      'known points',
      'pressure altitude',
      'kt',
      'known points, row 2, unit of pressure altitude: got "kt", expected a unit: ft, m',
    ],
    [
      'where there is none',
      'components',
      'basis',
      'lb',
      'components, row 2, unit of basis: got "lb", expected no unit for basis',
    ],
    [
      'no currency',
      'components',
      'price',
      '$',
      'components, row 2, unit of price: got "$", expected a currency code of three letters, such as USD',
    ],
    [
      'a second currency',
      'equipment',
      'price',
      'EUR',
      'equipment, row 2, unit of price: got "EUR", expected USD, the workbook\'s currency',
    ],
  ])('%s', (_, table, header, unit, fault) => {
    expect(faultsOf(withCell(table, 2, header, unit))).toEqual([fault]);
  });

  test('a dash, or the word unit, says that there is none', () => {
    for (const none of ['-', '–', '—', 'unit', 'Units']) {
      expect(faultsOf(withCell('components', 2, 'basis', none))).toEqual([]);
      expect(faultsOf(withCell('components', 2, 'package', none))).toEqual([]);
    }
  });

  test('a word or a dash that says more is a unit all the same', () => {
    for (const typed of ['per unit', 'unit lb', '- lb', 'lb -'])
      expect(faultsOf(withCell('components', 2, 'basis', typed))).toEqual([
        `components, row 2, unit of basis: got "${typed}", expected no unit for basis`,
      ]);
  });

  test('one value of a column wants its unit, however many cells are empty', () => {
    expect(faultsOf(withCell('components', 2, 'price', ''))).toEqual([
      'components, row 2, unit of price: got an empty cell, expected a currency code of three letters, such as USD',
    ]);
  });

  test('a header with nothing below it is a table without rows', () => {
    const grids = smallWorkbook();
    expect(faultsOf({ ...grids, cooling: grids.cooling.slice(0, 1) })).toEqual([]);
    expect(faultsOf({ ...grids, tanks: grids.tanks.slice(0, 1), loadings: [] })).toEqual([
      'tanks: got nothing, expected at least one row',
    ]);
  });

  test('a record in the place of the units is one by its name, without any number', () => {
    const grids = smallWorkbook();
    grids.stations[1] = ['pilot', '', '', '', '', '', '', ''];
    expect(faultsOf(grids)).toContain(
      'stations, row 2: got "pilot", expected a row of units under the header: lb, in, …',
    );
  });

  test('nothing below, nothing to measure: no unit is needed', () => {
    const grids = smallWorkbook();
    put(grids.components, 2, 'lead time', '');
    for (let row = 3; row <= grids.components.length; row++) put(grids.components, row, 'lead time', '');
    expect(faultsOf(grids)).toEqual([]);
  });

  test('a record in the place of the units is one fault, not one for each column', () => {
    for (const table of ['components', 'envelope', 'stations'] as const) {
      const grids = smallWorkbook();
      grids[table].splice(1, 1);
      const [fault, ...others] = faultsOf(grids);
      const first = { components: '"Ash"', envelope: '1000', stations: '"pilot"' }[table];
      expect(fault).toBe(
        `${table}, row 2: got ${first}, expected a row of units under the header: lb, in, …`,
      );
      expect(others).toEqual([]);
    }
  });
});

describe('headers', () => {
  test('a slip in a header is named with the label that was meant, and nothing else is said', () => {
    const slips: [TableName, string, string][] = [
      ['components', 'weight', 'wieght'],
      ['components', 'arm', 'arms'],
      ['components', 'included in', 'included into'],
      ['stations', 'maximum', 'maximun'],
      ['envelope', 'forward limit', 'forwards limit'],
      ['equipment', 'excludes', 'exclude'],
      ['fuel points', 'BSFC', 'BFSC'],
    ];
    for (const [table, header, typed] of slips)
      expect(faultsOf(withCell(table, 1, header, typed))).toEqual([
        `${table}, row 1, column: got "${typed}", expected "${header}"`,
      ]);
  });

  test('case and spaces of a header do not matter', () => {
    expect(faultsOf(withCell('components', 1, 'included in', ' Included\u00a0 IN '))).toEqual([]);
  });

  test('a header with another meaning leaves its column missing', () => {
    expect(faultsOf(withCell('components', 1, 'system', 'colour'))).toEqual([
      'components, row 1, system: got nothing, expected this column',
    ]);
  });

  test('a column that is not the table’s own is left alone, and said so', () => {
    const grids = smallWorkbook();
    grids.components.forEach((row, index) => {
      row.push(index === 0 ? 'serial number' : index);
    });
    const { catalogue, faults } = readCatalogue(grids);
    expect(faults).toEqual([]);
    expect(catalogue?.remarks).toEqual([
      { table: 'components', text: 'column "serial number" is not one of this table\'s and is not read' },
    ]);
  });

  test('a column that resembles one that is there is no slip', () => {
    const grids = smallWorkbook();
    grids.components.forEach((row, index) => {
      row.push(index === 0 ? 'price 2' : '');
    });
    const { catalogue } = readCatalogue(grids);
    expect(catalogue?.remarks.map(({ text }) => text)).toEqual([
      'column "price 2" is not one of this table\'s and is not read',
    ]);
  });

  test('notes are nobody’s business', () => {
    for (const header of ['note', 'Notes']) {
      const grids = smallWorkbook();
      grids.stations.forEach((row, index) => {
        row.push(index === 0 ? header : '#REF! or anything');
      });
      const { catalogue } = readCatalogue(grids);
      expect(catalogue?.remarks).toEqual([]);
    }
  });

  test('a header that stands twice', () => {
    const grids = smallWorkbook();
    grids.tanks.forEach((row, index) => {
      row.push(index === 0 ? 'Arm' : '');
    });
    expect(faultsOf(grids)).toEqual(['tanks, row 1, Arm: got "Arm", expected a header that stands once']);
  });

  test('an error in a header', () => {
    expect(faultsOf(withCell('components', 1, 'price', '#REF!'))).toContain(
      'components, row 1, #REF!: got "#REF!", expected a header',
    );
  });

  test('merged header cells leave values under an empty one', () => {
    expect(faultsOf(withCell('components', 1, 'price', ''))).toEqual([
      'components, row 1, column 11: got an empty cell, expected a header: row 2 of this column holds a value',
    ]);
  });
});
