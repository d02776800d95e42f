import { argumentOfTable } from '../functions/tableArguments.ts';
import { type Cell, isBlank, isDate } from '../tables/cell.ts';
import type { KeptCell, KeptEdit } from './adoptionRecords.ts';
import { typed } from './cells.ts';
import type { Book, Range } from './places.ts';
import { viewOf } from './places.ts';
import { makeRoomBelow } from './room.ts';
import { state } from './state.ts';

/** The range of any table of the workbook. @throws Error where there is none */
export function tableRange(book: Book, table: string): Range {
  const range = book.getRangeByName(argumentOfTable(table));
  if (range === null) throw new Error(`There is no ${table} table: choose "Lay out or upgrade" first.`);
  return range;
}

const keptValue = (cell: Cell): KeptCell =>
  isDate(cell) ? { date: cell.getTime() } : isBlank(cell) ? null : (cell as string | number | boolean);

/** What a range's cells hold, formulas as such. */
export function keptCells(range: Range): KeptCell[][] {
  const formulas = range.getFormulas();
  return range.getValues().map((line, r) =>
    line.map((value, c): KeptCell => {
      const formula = formulas[r]?.[c] ?? '';
      return formula === '' ? keptValue(value as Cell) : { formula };
    }),
  );
}

export const sameCell = (one: KeptCell | undefined, other: KeptCell) =>
  JSON.stringify(one ?? null) === JSON.stringify(other);

function written(cell: KeptCell): Cell {
  if (cell === null || typeof cell !== 'object') return typed(cell);
  return 'formula' in cell ? cell.formula : new Date(cell.date);
}

/** Edits by the table they belong to, in order. */
export function byTable<E extends { readonly table: string }>(edits: readonly E[]): Map<string, E[]> {
  const tables = new Map<string, E[]>();
  for (const edit of edits) tables.set(edit.table, [...(tables.get(edit.table) ?? []), edit]);
  return tables;
}

/**
 * Writes cells of one table in one call, which is done or not done as a whole: the rectangle around them, what stands
 * between them as it is.
 */
export function writeTableCells(
  book: Book,
  table: string,
  edits: readonly Pick<KeptEdit, 'row' | 'column'>[],
  cellOf: (index: number) => KeptCell,
): void {
  if (edits.length === 0) return;
  const rows = edits.map(({ row }) => row);
  const columns = edits.map(({ column }) => column);
  const [top, left] = [Math.min(...rows), Math.min(...columns)];
  const range = tableRange(book, table).offset(
    top,
    left,
    Math.max(...rows) - top + 1,
    Math.max(...columns) - left + 1,
  );
  const cells = keptCells(range);
  edits.forEach(({ row, column }, index) => {
    (cells[row - top] as KeptCell[])[column - left] = cellOf(index);
  });
  range.setValues(cells.map((line) => line.map(written)));
}

/** Makes a table's range reach down to a row of it, counted from 0; what stands below is moved down. */
export function reachDown(book: Book, table: string, row: number): void {
  const range = tableRange(book, table);
  const missing = row + 1 - range.getNumRows();
  if (missing <= 0) return;
  const place = {
    view: viewOf(range.getSheet()),
    row: range.getRow(),
    column: range.getColumn(),
    rows: range.getNumRows(),
    columns: range.getNumColumns(),
  };
  makeRoomBelow(place, missing);
  const name = argumentOfTable(table);
  state.setUndressed([...new Set([...state.undressed(), name])]);
  const sheet = range.getSheet();
  const shortage = place.row + row - sheet.getMaxRows();
  if (shortage > 0) sheet.insertRowsAfter(sheet.getMaxRows(), shortage);
  book.setNamedRange(name, sheet.getRange(place.row, place.column, row + 1, place.columns));
}
