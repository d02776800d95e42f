/** Which cells of a table change when values go into it: rows and columns are counted from 0, units that stand there stay. */
import { describe, expect, test } from 'vitest';
import {
  attributeEdits,
  type RowEdit,
  replacingRows,
  rowAfter,
  rowEdits,
} from '../../src/assessment/adoptEdits.ts';
import { airframeTable } from '../../src/tables/airframe.ts';
import type { Cell, Grid } from '../../src/tables/cell.ts';
import type { Fields } from '../../src/tables/field.ts';
import { packagesTable } from '../../src/tables/packages.ts';
import type { Table } from '../../src/tables/table.ts';
import { tanksTable } from '../../src/tables/tanks.ts';
import type { UnitOf } from '../../src/tables/writeTable.ts';

const pound = 0.45359237;
const gallon = 3.785411784e-3;
const customary: UnitOf = ({ customaryUnit }) => customaryUnit;

describe('a table of attributes', () => {
  const grid: Grid = [
    ['Airframe of the kit'],
    ['attribute', 'value', 'unit', 'note'],
    ['empty weight', 900, 'lb', 'on three scales'],
    ['Empty CG', 2000, 'mm', null],
    ['weighed with fluids', '', '', ''],
    ['empty weight known to', '', '', ''],
    ['weighed with package', 'Ash', '', null],
    ['kit price', 40_000, 'USD', null],
  ];
  const edits = (
    values: Parameters<typeof attributeEdits<typeof airframeTable.fields>>[3],
    of: Grid = grid,
  ) => attributeEdits(airframeTable, of, 'value', values, '2026-05-01', customary);
  const edit = (row: number, column: number, was: Cell, is: Cell, words?: string) => ({
    table: 'airframe',
    row,
    column,
    was,
    is,
    words,
  });

  test('the value in the unit that stands there; what stood there goes into the note', () => {
    expect(edits({ emptyWeight: 950 * pound })).toEqual([
      edit(2, 1, 900, 950, 'airframe, empty weight: 900 lb → 950 lb'),
      edit(2, 3, 'on three scales', 'before 2026-05-01: 900 lb'),
    ]);
    expect(edits({ emptyArm: 2.1 })).toEqual([
      edit(3, 1, 2000, 2100, 'airframe, empty CG: 2000 mm → 2100 mm'),
      edit(3, 3, null, 'before 2026-05-01: 2000 mm'),
    ]);
  });

  test('where no unit stands it is written too; a tick box is said in capitals', () => {
    expect(edits({ emptyWeightKnownTo: 2 * pound })).toEqual([
      edit(5, 1, '', 2, 'airframe, empty weight known to: empty → 2 lb'),
      edit(5, 2, '', 'lb'),
      edit(5, 3, '', 'before 2026-05-01: empty'),
    ]);
    expect(edits({ weighedFluids: true })).toEqual([
      edit(4, 1, '', true, 'airframe, weighed with fluids: empty → TRUE'),
      edit(4, 3, '', 'before 2026-05-01: empty'),
    ]);
  });

  test('nothing where it says so already, to a hundred-thousandth', () => {
    expect(edits({ emptyWeight: 900.008 * pound })).toEqual([]);
    expect(edits({ emptyWeight: 899.992 * pound })).toEqual([]);
    expect(edits({ emptyWeight: 900.02 * pound })).toHaveLength(2);
    expect(edits({ weighedWith: 'Ash', emptyWeightKnownTo: undefined, kitPrice: 40_000 })).toEqual([]);
    expect(edits({ weighedWith: 'Birch' })).toHaveLength(2);
    expect(edits({ weighedWith: undefined })[0]).toEqual(
      edit(6, 1, 'Ash', null, 'airframe, weighed with package: Ash → empty'),
    );
  });

  test('a number that is text is not the number', () => {
    const text = grid.map((line) => line.map((cell) => (cell === 900 ? '900' : cell)));
    expect(edits({ emptyWeight: 900 * pound }, text)[0]).toEqual(
      edit(2, 1, '900', 900, 'airframe, empty weight: 900 lb → 900 lb'),
    );
  });

  test('money has no unit of its own: the currency stays', () => {
    expect(edits({ kitPrice: 41_000 })).toEqual([
      edit(7, 1, 40_000, 41_000, 'airframe, kit price: 40000 → 41000'),
      edit(7, 3, null, 'before 2026-05-01: 40000'),
    ]);
  });

  test('without a column for notes, and beyond the end of short lines', () => {
    const short: Grid = [['attribute', 'value', 'unit'], ['empty weight known to']];
    expect(edits({ emptyWeightKnownTo: pound }, short)).toEqual([
      edit(1, 1, null, 1, 'airframe, empty weight known to: empty → 1 lb'),
      edit(1, 2, null, 'lb'),
    ]);
  });

  test('a package’s column is named', () => {
    const packages: Grid = [
      ['attribute', 'unit', 'Ash', 'Birch'],
      ['fuel delivery', 'L/h', 80, 90],
    ];
    const of = (name: string) =>
      attributeEdits(packagesTable, packages, name, { fuelPumpFlow: 1e-3 / 36 }, 'x', customary);
    expect(of('birch')).toEqual([
      {
        table: 'packages',
        row: 1,
        column: 3,
        was: 90,
        is: 100,
        words: 'packages, fuel delivery of birch: 90 L/h → 100 L/h',
      },
    ]);
    expect(() => of('Oak')).toThrow(
      'There is no column "Oak" in the packages table: choose "Lay out or upgrade" first.',
    );
  });

  test('no row, no column, no table', () => {
    expect(() => edits({ wingArea: 10 })).toThrow('There is no row "wing area" in the airframe table');
    expect(() =>
      edits({ emptyArm: 2 }, [
        ['attribute', 'value'],
        ['empty CG', 1],
      ]),
    ).toThrow('no column "unit" in the airframe table');
    expect(() => edits({ emptyArm: 2 }, [])).toThrow('There is no airframe table');
  });
});

const tanks: Table<Fields> = tanksTable;

describe('a table of rows', () => {
  const grid: Grid = [
    ['tank', 'arm', 'usable', 'unusable', 'tank weight', 'note'],
    ['', 'in', 'US gal', '', 'kg', ''],
    ['main', 88, 30, 1, null, 'as drawn'],
    ['tip', 92, 10, null, 2, null],
  ];
  const edits = (rows: readonly RowEdit[], of: Grid = grid) => rowEdits(tanks, of, rows, customary);
  const keeping = (row: number, values: Record<string, unknown>): RowEdit => ({
    row,
    values,
    replaces: false,
  });
  const edit = (row: number, column: number, was: Cell, is: Cell, words?: string) => ({
    table: 'tanks',
    row,
    column,
    was,
    is,
    words,
  });

  test('in the units that stand there; the first cell tells all of the row', () => {
    expect(edits([keeping(3, { usable: 29 * gallon, arm: 90 * 0.0254 })])).toEqual([
      edit(2, 1, 88, 90, 'tanks, row 3: arm 88 in → 90 in, usable 30 US gal → 29 US gal'),
      edit(2, 2, 30, 29),
    ]);
    expect(edits([keeping(4, { weight: 3 })])).toEqual([
      edit(3, 4, 2, 3, 'tanks, row 4: tank weight 2 kg → 3 kg'),
    ]);
  });

  test('a unit is written where none stands, once for all rows and before them', () => {
    expect(edits([keeping(3, { unusable: 2 * gallon }), keeping(4, { unusable: 0.5 * gallon })])).toEqual([
      edit(1, 3, '', 'US gal'),
      edit(2, 3, 1, 2, 'tanks, row 3: unusable 1 US gal → 2 US gal'),
      edit(3, 3, null, 0.5, 'tanks, row 4: unusable 0.5 US gal'),
    ]);
  });

  test('nothing where it says so already; what is not named stays', () => {
    expect(edits([keeping(3, { usable: 30 * gallon, name: 'main' })])).toEqual([]);
    expect(edits([keeping(3, {})])).toEqual([]);
  });

  test('a value that nobody gave stays nobody’s: the cell is emptied', () => {
    expect(edits([keeping(4, { weight: 0, defaulted: ['weight'] })])).toEqual([
      edit(3, 4, 2, null, 'tanks, row 4: tank weight 2 kg → empty'),
    ]);
    expect(edits([keeping(4, { weight: 1, defaulted: ['unusable'] })])[0]?.is).toBe(1);
  });

  test('a row replaced loses what is not told, columns of a person’s own too', () => {
    const replaced = {
      row: 3,
      values: { name: 'belly', arm: 90 * 0.0254, usable: 30 * gallon },
      replaces: true,
    };
    expect(edits([replaced])).toEqual([
      edit(
        2,
        0,
        'main',
        'belly',
        'tanks, row 3: tank main → belly, arm 88 in → 90 in, unusable 1 US gal → empty, note as drawn → empty',
      ),
      edit(2, 1, 88, 90),
      edit(2, 3, 1, null),
      edit(2, 5, 'as drawn', null),
    ]);
  });

  test('a row below all others, beyond the range', () => {
    expect(edits([{ row: 5, values: { name: 'tip 2' }, replaces: true }])).toEqual([
      edit(4, 0, null, 'tip 2', 'tanks, row 5: tank tip 2'),
    ]);
    expect(edits([{ row: 5, values: {}, replaces: true }])).toEqual([]);
  });

  test('a column that there is not, where a value must go into it', () => {
    expect(() => edits([keeping(3, { burnOrder: 2 })])).toThrow(
      'There is no column "burn order" in the tanks table',
    );
    expect(edits([keeping(3, { burnOrder: undefined })])).toEqual([]);
    expect(() => rowEdits(tanks, [], [], customary)).toThrow('There is no tanks table');
  });

  test('with a title above the header the units stand below the header', () => {
    const titled: Grid = [['Fuel'], ...grid];
    expect(edits([keeping(4, { usable: 20 * gallon })], titled)).toEqual([
      edit(3, 2, 30, 20, 'tanks, row 4: usable 30 US gal → 20 US gal'),
    ]);
    const bare: Grid = [['tank', 'arm', 'usable']];
    expect(edits([keeping(3, { usable: gallon })], bare)).toEqual([
      edit(1, 2, null, 'US gal'),
      edit(2, 2, null, 1, 'tanks, row 3: usable 1 US gal'),
    ]);
  });
});

describe('all rows of a table', () => {
  const head: Cell[][] = [
    ['tank', 'arm', 'usable'],
    ['', 'in', 'US gal'],
  ];
  const records = (count: number) => Array.from({ length: count }, (_, index) => ({ name: `tank ${index}` }));
  const rowsOf = (grid: Grid, count: number) =>
    replacingRows(tanks, grid, records(count)).map(({ row, values, replaces }) => [
      row,
      values.name,
      replaces,
    ]);
  const three: Grid = [...head, ['a', 1, 2], ['b', 1, 2], ['c', 1, 2]];

  test('in place of those there are: more of them go below, of fewer the rest is emptied', () => {
    expect(rowsOf(three, 1)).toEqual([
      [3, 'tank 0', true],
      [4, undefined, true],
      [5, undefined, true],
    ]);
    expect(rowsOf(three, 4).map(([row]) => row)).toEqual([3, 4, 5, 6]);
  });

  test('in a table without rows, and in one without units', () => {
    expect(rowsOf(head, 2).map(([row]) => row)).toEqual([3, 4]);
    expect(rowsOf([head[0] as Cell[]], 2).map(([row]) => row)).toEqual([3, 4]);
    expect(rowsOf(head, 0)).toEqual([]);
  });

  test('the row below the last record', () => {
    expect(rowAfter(tanks, three)).toBe(6);
    expect(rowAfter(tanks, [...three, ['', '', ''], ['', false, '']])).toBe(6);
    expect(rowAfter(tanks, head)).toBe(3);
    expect(rowAfter(tanks, [['title'], head[0] as Cell[]])).toBe(4);
  });
});
