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
