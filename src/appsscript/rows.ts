import type { Cell } from '../tables/cell.ts';
import { typed } from './cells.ts';
import type { Range, Sheet } from './places.ts';

/** A range of a sheet, which grows where it is too small. */
export function rangeIn(sheet: Sheet, row: number, column: number, rows: number, columns: number): Range {
  const missingRows = row + rows - 1 - sheet.getMaxRows();
  if (missingRows > 0) sheet.insertRowsAfter(sheet.getMaxRows(), missingRows);
  const missingColumns = column + columns - 1 - sheet.getMaxColumns();
  if (missingColumns > 0) sheet.insertColumnsAfter(sheet.getMaxColumns(), missingColumns);
  return sheet.getRange(row, column, rows, columns);
}

/** Writes rows from a corner on in one call, which is done or not done as a whole. */
export function writeRows(
  sheet: Sheet,
  row: number,
  column: number,
  rows: readonly (readonly Cell[])[],
): Range {
  const range = rangeIn(sheet, row, column, rows.length, rows[0]?.length ?? 1);
  return range.setValues(rows.map((cells) => cells.map(typed)));
}

const letterWidth = 6.5; // px, of the average letter at 10 points
const lineHeight = 21; // px, of a row of one line

/** Height that a wrapped text needs in a column: a sheet that is written to a file does not find it out by itself. */
export const wrappedHeight = (text: string, width: number) =>
  lineHeight * Math.max(1, Math.ceil((text.length * letterWidth) / width));
