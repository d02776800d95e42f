/** A table's cells in the sheet: whatever a grid holds is kept, and the tables' own readers read it alike. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readCatalogue } from '../../src/tables/catalogue.ts';
import type { Cell, Grid } from '../../src/tables/cell.ts';
import type { TableLayout } from '../../src/workbook/layout.ts';
import { isOwn } from '../../src/workbook/own.ts';
import { layout } from '../../src/workbook/sheets.ts';
import { fieldsOf, tableCells } from '../../src/workbook/tableCells.ts';
import { currencyOf, headerRow, recordNames } from '../../src/workbook/tableSource.ts';
import { tableLayouts } from '../../src/workbook/tables.ts';
import { sample, sampleNames } from '../sample.ts';

const tables = layout.sheets.flatMap((sheet) => sheet.tables);

function cellsOf(
  table: TableLayout,
  grids: Readonly<Record<string, Grid | undefined>>,
  currency = 'USD',
): Cell[][] {
  const names = (name: string) =>
    recordNames(tables.find((each) => each.table === name) as TableLayout, grids[name]);
  return tableCells(table, fieldsOf(table, names), grids[table.table], currency);
}

const said = (cell: unknown) => cell !== '' && cell !== null && cell !== undefined;

describe.each(sampleNames)('the sample %s in sheets', (name) => {
  const grids: Record<string, Grid> = sample(name);
  const currency = tables.map((table) => currencyOf(table, grids[table.table])).find((code) => code) ?? 'USD';
  const laidOut = Object.fromEntries(tables.map((table) => [table.table, cellsOf(table, grids, currency)]));

  test('reads as the same catalogue as its files', () => {
    const expected = readCatalogue(grids);
    const got = readCatalogue(laidOut);
    expect(got.faults).toEqual([]);
    // rows are numbered from the sheet's first, units of empty columns and tick marks aside
    const plain = (catalogue: unknown) =>
      JSON.stringify(catalogue, (key, value) => (key === 'row' || key === 'remarks' ? undefined : value));
    expect(plain(got.catalogue)).toBe(plain(expected.catalogue));
  });

  test('stands below its title and help, in rectangles', () => {
    for (const table of tables) {
      const cells = laidOut[table.table] ?? [];
      expect(headerRow(table, cells)).toBe(2);
      expect(isOwn(cells[0]?.[0])).toBe(true);
      expect(new Set(cells.map((line) => line.length)).size).toBe(1);
    }
  });
});

test('whatever a grid of components holds is in the cells, other columns and untidy rows too', () => {
  const cell = fc.oneof(fc.constant(''), fc.integer(), fc.constantFrom('x', '=1', "'y", 'ÄÖ'), fc.boolean());
  const grid = fc
    .tuple(fc.uniqueArray(fc.constantFrom('own', 'mine', 'note', 'price'), { maxLength: 3 }), fc.nat(6))
    .chain(([own, rows]) => {
      const header: Cell[] = ['component', 'package', ...own, 'weight'];
      return fc
        .array(fc.array(cell, { minLength: header.length, maxLength: header.length }), {
          minLength: rows,
          maxLength: rows,
        })
        .map((body): Grid => [header, header.map(() => ''), ...body]);
    });
  fc.assert(
    fc.property(grid, (given) => {
      const cells = cellsOf(tableLayouts.components, { components: given });
      const count = (lines: Grid) => {
        const counts = new Map<string, number>();
        for (const value of lines.flat().filter((each) => said(each) && !isOwn(each))) {
          const key = `${typeof value} ${value}`;
          counts.set(key, (counts.get(key) ?? 0) + 1);
        }
        return counts;
      };
      const kept = count(cells);
      for (const [key, times] of count(given)) expect(kept.get(key) ?? 0).toBeGreaterThanOrEqual(times);
    }),
  );
});

test('an empty table starts in the workbook’s currency', () => {
  const rates = cellsOf(tableLayouts.rates, {}, 'EUR');
  expect(rates.flat().filter((cell) => /^USD/.test(String(cell)))).toEqual([]);
  expect(rates.flat()).toContain('EUR/US gal');
});

test('loadings have a column for every station and tank', () => {
  const grids: Record<string, Grid> = sample('minimal');
  expect(cellsOf(tableLayouts.loadings, grids)[2]).toEqual(['loading', 'seats', 'baggage', 'wing tanks']);
});
