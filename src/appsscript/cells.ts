import { type Cell, isBlank } from '../tables/cell.ts';

type Sheet = GoogleAppsScript.Spreadsheet.Sheet;
type Range = GoogleAppsScript.Spreadsheet.Range;

/** A cell as it is written: text always behind an apostrophe, so that nothing a person typed is read as a formula. */
export const typed = (cell: Cell) =>
  isBlank(cell) ? '' : typeof cell === 'string' ? `'${cell}` : (cell as string | number | boolean | Date);

/** A range of a sheet, which grows where it is too small. */
export function rangeIn(sheet: Sheet, row: number, column: number, rows = 1, columns = 1): Range {
  const missingRows = row + rows - 1 - sheet.getMaxRows();
  if (missingRows > 0) sheet.insertRowsAfter(sheet.getMaxRows(), missingRows);
  const missingColumns = column + columns - 1 - sheet.getMaxColumns();
  if (missingColumns > 0) sheet.insertColumnsAfter(sheet.getMaxColumns(), missingColumns);
  return sheet.getRange(row, column, rows, columns);
}

/** Writes cells from a corner on and returns their range. */
export function write(sheet: Sheet, row: number, column: number, cells: readonly (readonly Cell[])[]): Range {
  const range = rangeIn(sheet, row, column, cells.length, cells[0]?.length ?? 1);
  range.setValues(cells.map((line) => line.map(typed)));
  return range;
}
