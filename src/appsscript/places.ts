import type { Cell, Grid } from '../tables/cell.ts';

export type Book = GoogleAppsScript.Spreadsheet.Spreadsheet;
export type Sheet = GoogleAppsScript.Spreadsheet.Sheet;
export type Range = GoogleAppsScript.Spreadsheet.Range;

/**
 * A sheet as it was read: every question to a sheet makes Google finish what was written before, so each sheet is asked
 * once at the beginning, and again only after rows or columns moved.
 */
export interface View {
  readonly sheet: Sheet;
  readonly id: number;
  /** Its size, which grows with what is written. */
  rows: number;
  columns: number;
  /** How often its rows or columns were moved by this run. */
  moves: number;
  values: Grid;
  formulas: readonly (readonly string[])[];
}

export function viewOf(sheet: Sheet): View {
  const range = sheet.getDataRange();
  return {
    sheet,
    id: sheet.getSheetId(),
    rows: sheet.getMaxRows(),
    columns: sheet.getMaxColumns(),
    moves: 0,
    values: range.getValues() as Cell[][],
    formulas: range.getFormulas(),
  };
}

/** A sheet that was just made, which needs no reading. */
export const emptyView = (sheet: Sheet): View => ({
  sheet,
  id: sheet.getSheetId(),
  rows: sheet.getMaxRows(),
  columns: sheet.getMaxColumns(),
  moves: 0,
  values: [],
  formulas: [],
});

/** Reads a sheet again, after its rows or columns moved. */
export const refresh = (view: View): View =>
  Object.assign(view, viewOf(view.sheet), { moves: view.moves + 1 });

/** A rectangle of a sheet, counted from 1. */
export interface Place {
  readonly view: View;
  readonly row: number;
  readonly column: number;
  readonly rows: number;
  readonly columns: number;
}

export const cellPlace = (view: View, row: number, column: number): Place => ({
  view,
  row,
  column,
  rows: 1,
  columns: 1,
});

/** A rectangle inside a place, its rows and columns counted from 0. */
export const part = (place: Place, row: number, column: number, rows: number, columns: number): Place => ({
  view: place.view,
  row: place.row + row,
  column: place.column + column,
  rows,
  columns,
});

export const isInside = ({ row, column, rows, columns }: Place, r: number, c: number) =>
  r >= row && r < row + rows && c >= column && c < column + columns;

const letters = (column: number): string =>
  (column > 26 ? letters(Math.floor((column - 1) / 26)) : '') + String.fromCharCode(65 + ((column - 1) % 26));

/** A place in A1 notation, without its sheet. */
export const notationOf = ({ row, column, rows, columns }: Place) =>
  `${letters(column)}${row}:${letters(column + columns - 1)}${row + rows - 1}`;

/** Makes a sheet large enough for a place. */
export function grow({ view, row, column, rows, columns }: Place): void {
  const { sheet } = view;
  const moreRows = row + rows - 1 - view.rows;
  if (moreRows > 0) {
    sheet.insertRowsAfter(view.rows, moreRows);
    view.rows += moreRows;
  }
  const moreColumns = column + columns - 1 - view.columns;
  if (moreColumns > 0) {
    sheet.insertColumnsAfter(view.columns, moreColumns);
    view.columns += moreColumns;
  }
}

/** The range of a place; the sheet grows where it is too small. */
export function rangeOf(place: Place): Range {
  grow(place);
  return place.view.sheet.getRange(place.row, place.column, place.rows, place.columns);
}

/** What stood in a place when its sheet was read; empty cells beyond what was read. */
export const gridOf = ({ view, row, column, rows, columns }: Place): Cell[][] =>
  Array.from({ length: rows }, (_, r) =>
    Array.from({ length: columns }, (_, c) => view.values[row - 1 + r]?.[column - 1 + c] ?? ''),
  );

/** The place of a range on a sheet that was read. */
export function placeOf(range: Range, views: readonly View[]): Place {
  const id = range.getSheet().getSheetId();
  return {
    view: views.find((view) => view.id === id) as View,
    row: range.getRow(),
    column: range.getColumn(),
    rows: range.getNumRows(),
    columns: range.getNumColumns(),
  };
}
