/** Cells of the inputs by name, and records written back into cells: what the edges of either are. */
import { describe, expect, test } from 'vitest';
import { airframeTable } from '../../src/tables/airframe.ts';
import { readCatalogue } from '../../src/tables/catalogue.ts';
import type { Cell } from '../../src/tables/cell.ts';
import { flag, names, quantity } from '../../src/tables/field.ts';
import { inputChanges } from '../../src/tables/inputChanges.ts';
import { inputCells, inputPlace, keptInputs, withoutDates } from '../../src/tables/inputs.ts';
import { stationsTable } from '../../src/tables/stations.ts';
import { cellOf, writeAttributes, writeRows } from '../../src/tables/writeTable.ts';
import { faultsOf, smallWorkbook, withCell } from './smallWorkbook.ts';

describe('cells by name', () => {
  const cellAt = (inputs: ReturnType<typeof smallWorkbook>, table: string, row: string, column: string) =>
    inputCells(inputs).find((cell) => cell.table === table && cell.row === row && cell.column === column);

  test('what names a row is no cell of it; what stands in the row of units is', () => {
    const inputs = withCell('tanks', 2, 'tank', '-');
    const ofNames = inputCells(inputs).filter(({ table, column }) => table === 'tanks' && column === 'tank');
    expect(ofNames.map(({ row, text }) => [row, text])).toEqual([['unit', '-']]);
  });

  test('a row is named by the key cells that it has', () => {
    const inputs = withCell('fuel points', 3, 'package', '');
    expect(cellAt(inputs, 'fuel points', 'rich, 75', 'BSFC')?.text).toBe('0.5');
  });

  test('a note has no unit, its value has', () => {
    const inputs = smallWorkbook();
    expect(cellAt(inputs, 'airframe', 'empty weight', 'value')?.unit).toBe('lb');
    expect(cellAt(inputs, 'airframe', 'empty weight', 'note')).toMatchObject({
      text: 'on three scales',
      unit: '',
    });
  });

  test('nothing is nothing, on whichever side of it', () => {
    expect(cellAt(withCell('tanks', 3, 'tank weight', -0), 'tanks', 'main tank', 'tank weight')?.text).toBe(
      '0',
    );
  });

  test('a row without a name is found by that, and is not the row of units', () => {
    const inputs = withCell('equipment', 4, 'item', '');
    expect(inputPlace(inputs, 'equipment', 'no name', 'weight')).toEqual({ row: 3, column: 1 });
    expect(inputPlace(inputs, 'equipment', 'lights', 'weight')).toBeUndefined();
  });
});

describe('what is kept', () => {
  test('a date becomes text that is no date, the rest stays where it is', () => {
    const inputs = withCell('tanks', 3, 'usable', new Date(Date.UTC(2026, 2, 14)));
    const { tanks, stations, quote } = withoutDates(inputs);
    expect(tanks?.[2]?.[2]).toMatch(/^#DATE 2026-03-14T/);
    expect(stations?.[2]).toEqual(inputs.stations[2]!.map((cell) => (cell === '' ? null : cell)));
    expect(quote).toBeUndefined();
  });

  test('empty columns behind the last are not', () => {
    const inputs = smallWorkbook();
    const width = inputs.tanks[0]!.length;
    for (const row of inputs.tanks) row.push('', null, '  ');
    expect(keptInputs(inputs).tanks?.map((row) => row.length)).toEqual([width, width, width]);
  });
});

test('changes stand in the order of the tables, whether rows came or went', () => {
  const [then, now] = [smallWorkbook(), smallWorkbook()];
  now.rates.splice(2, 1); // avgas sold at home
  now.stations.push(['jump seat', 140, 0, 200, '', 1, '', '']);
  expect(inputChanges(then, now).map(({ table, row, was, is }) => [table, row, was, is])).toEqual([
    ['stations', 'jump seat', '', 'new'],
    ['rates', 'avgas sold at home', 'there', ''],
  ]);
});

describe('attributes', () => {
  test('headings and lines that hold a note alone are passed over', () => {
    const grids = smallWorkbook();
    grids.airframe.push(['Weights', '', '', 'see the handbook'], ['', '', '', 'all in pounds']);
    const { catalogue, faults } = readCatalogue(grids);
    expect(faults).toEqual([]);
    expect(catalogue?.remarks).toEqual([]);
  });

  test('one package with a value wants the unit, another without or not', () => {
    expect(faultsOf(withCell('packages', 12, 'unit', ''))).toEqual([
      'packages, row 12 (restricted rpm from), unit: got an empty cell, expected a unit: rpm',
    ]);
  });

  test('titles may stand above', () => {
    const grids = smallWorkbook();
    for (const table of ['airframe', 'packages', 'mission', 'rates'] as const)
      grids[table].unshift([`${table} of the Wren`, '', '']);
    expect(faultsOf(grids)).toEqual([]);
  });
});

describe('written back', () => {
  const unitOf = ({ customaryUnit }: { readonly customaryUnit: string }) => customaryUnit;

  test('names with commas, a tick, nothing', () => {
    expect(cellOf(names('fits', { help: '' }), ['Ash', 'Birch'], unitOf)).toBe('Ash, Birch');
    expect(cellOf(flag('fitted', { help: '' }), true, unitOf)).toBe(true);
    expect(cellOf(quantity('mass', 'weight', { help: '' }), undefined, unitOf)).toBeNull();
  });

  test('a column that any record fills', () => {
    const record = (name: string, usual: number | undefined) => ({ name, arm: 0.0254, usual });
    expect(writeRows(stationsTable, [record('one', undefined), record('two', 45.359237)], unitOf)).toEqual([
      ['station', 'arm', 'usual'],
      ['', 'in', 'lb'],
      ['one', 1, null],
      ['two', 1, 100],
    ] satisfies Cell[][]);
  });

  test('what was empty before is said to have been', () => {
    const [, line] = writeAttributes(
      airframeTable,
      { emptyWeightKnownTo: 0.45359237 },
      {},
      '2026-05-01',
      unitOf,
    );
    expect(line).toEqual(['empty weight known to', 1, 'lb', 'before 2026-05-01: empty']);
  });
});
