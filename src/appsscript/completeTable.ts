import { type Cell, isBlank, nameKey } from '../tables/cell.ts';
import type { FieldLayout, TableLayout } from '../workbook/layout.ts';
import { isFree } from '../workbook/own.ts';
import { startingUnit, wordsAbove } from '../workbook/tableCells.ts';
import { headerRow, tableSource } from '../workbook/tableSource.ts';
import { refreshOwn, write } from './cells.ts';
import { type Book, gridOf, type Place, rangeOf } from './places.ts';
import { freeColumnsAtEnd, freeRowsAtEnd, makeRoomBelow, makeRoomRight } from './room.ts';

/** Rows written directly below a table are meant as its own: its range takes them in. */
function takeInRowsBelow(place: Place): Place {
  const { view, column, columns } = place;
  const row = place.row + place.rows;
  const rows = view.values.length - row + 1;
  if (rows <= 0) return place;
  const below = gridOf({ view, row, rows, column, columns });
  const end = below.findIndex((line) => line.every(isFree));
  return { ...place, rows: place.rows + (end < 0 ? rows : end) };
}

/** The table's range names all of its place. */
function nameRange(book: Book, { range }: TableLayout, named: Place, place: Place): void {
  if (named.rows !== place.rows || named.columns !== place.columns) book.setNamedRange(range, rangeOf(place));
}

/** Columns for the fields that a rows table lacks, and room below its records. */
function completeRows(
  book: Book,
  table: TableLayout,
  missing: readonly FieldLayout[],
  named: Place,
  currency: string,
  announce: () => void,
): Place {
  const at = takeInRowsBelow(named);
  const grid = gridOf(at);
  const unused = Math.min(missing.length, freeColumnsAtEnd(grid));
  const moreColumns = missing.length - unused;
  const moreRows = freeRowsAtEnd(grid) < 2 ? table.room : 0;
  if (moreRows > 0 || missing.length > 0) announce();
  makeRoomRight(at, moreColumns);
  makeRoomBelow(at, moreRows);
  const place = { ...at, rows: at.rows + moreRows, columns: at.columns + moreColumns };
  nameRange(book, table, named, place);
  if (missing.length === 0) return place;
  const header = headerRow(table, grid);
  const below = grid.slice(header + 1).findIndex((line) => !line.every(isBlank));
  const between = Array.from({ length: Math.max(0, below) }, () => missing.map(() => null));
  write(at.view, at.row + header, at.column + at.columns - unused, [
    missing.map(({ label }) => label),
    ...between,
    missing.map((field) => startingUnit(field, currency)),
  ]);
  return place;
}

/** Rows for the attributes that a table lacks. */
function completeAttributes(
  book: Book,
  table: TableLayout,
  missing: readonly FieldLayout[],
  named: Place,
  currency: string,
  announce: () => void,
): Place {
  const at = takeInRowsBelow(named);
  const grid = gridOf(at);
  const unused = Math.min(missing.length, freeRowsAtEnd(grid));
  const more = missing.length - unused;
  if (missing.length > 0) announce();
  makeRoomBelow(at, more);
  const place = { ...at, rows: at.rows + more };
  nameRange(book, table, named, place);
  if (missing.length === 0) return place;
  const source = tableSource(table, grid);
  const labelAt = source?.column('attribute') ?? 0;
  const unitAt = source?.column('unit') ?? -1;
  const lines = missing.map((field) =>
    Array.from({ length: at.columns }, (_, column): Cell => {
      if (column === labelAt) return field.label;
      return column === unitAt ? startingUnit(field, currency) : null;
    }),
  );
  write(at.view, at.row + at.rows - unused, at.column, lines);
  return place;
}

/** Brings the words above a table's header up to date, where they are still the workbook's own. */
export function refreshWords(table: TableLayout, fields: readonly FieldLayout[], place: Place): void {
  const grid = gridOf(place);
  const header = headerRow(table, grid);
  const words = wordsAbove(table, fields, grid[header] ?? []);
  words.forEach((line, index) => {
    const row = header - words.length + index;
    if (row >= 0) refreshOwn(place.view, place.row + row, place.column, [line]);
  });
}

/**
 * Gives a table that a person has filled the columns and rows it lacks; every cell keeps its place and contents.
 * @param named the place of its named range
 * @param announce called before it gets new cells, which want looks
 * @returns its place then
 */
export function completeTable(
  book: Book,
  table: TableLayout,
  fields: readonly FieldLayout[],
  named: Place,
  currency: string,
  announce: () => void,
): Place {
  const source = tableSource(table, gridOf(named));
  const labelAt = source?.column('attribute') ?? -1;
  const present = table.shape === 'rows' ? source?.header : source?.body.map((line) => line[labelAt]);
  const known = new Set(present?.map((cell) => nameKey(String(cell ?? ''))));
  const missing = fields.filter(({ label }) => !known.has(nameKey(label)));
  const complete = table.shape === 'rows' ? completeRows : completeAttributes;
  return complete(book, table, missing, named, currency, announce);
}
