import type { Cell } from '../tables/cell.ts';
import { own } from '../workbook/own.ts';
import { empty, typed, write } from './cells.ts';
import { type Book, gridOf, notationOf, type Place, type View, viewOf } from './places.ts';

/** The sheet for what has no place. Nothing is looked for on it. */
export const keptName = 'Kept';
const explanation =
  'What laying out could not leave in its place. Nothing reads this sheet: move what you need, delete the rest.';

/** What was kept, for a person to look at. */
export interface KeptItem {
  readonly from: string;
  readonly why: string;
}

/** The kept sheet, made where there is none, or where a person has renamed it. */
function keptView(book: Book): View {
  const sheet = book.getSheetByName(keptName);
  const view = viewOf(sheet ?? book.insertSheet(keptName, book.getNumSheets()));
  if (view.values[0]?.[0] === '') write(view, 1, 1, [[own(explanation)]]);
  return view;
}

/**
 * Copies cells to the kept sheet, with where they stood and why, and then empties them. Done again after an interruption
 * it writes no second copy. A formula is kept as its text: its references would mean something else there.
 */
export function keep(book: Book, place: Place, why: string): KeptItem {
  const { view, row, column } = place;
  const cells = gridOf(place).map((line, r) =>
    line.map((value, c): Cell => view.formulas[row - 1 + r]?.[column - 1 + c] || value),
  );
  const from = `${view.sheet.getName()}!${notationOf(place)}`;
  const lines = squared([[`${from}: ${why}`], ...cells]);
  const kept = keptView(book);
  if (!isWritten(kept.values, lines)) write(kept, kept.values.length + 2, 1, lines);
  empty(place);
  return { from, why };
}

const squared = (lines: readonly (readonly Cell[])[]): Cell[][] => {
  const width = Math.max(...lines.map((line) => line.length));
  return lines.map((line) => Array.from({ length: width }, (_, column) => line[column] ?? null));
};

/** True where these lines are the last on the sheet. */
function isWritten(written: readonly (readonly Cell[])[], lines: readonly (readonly Cell[])[]): boolean {
  const last = written.slice(-lines.length);
  const text = (cell: Cell | undefined) => String(typed(cell ?? null)).replace(/^'/, '');
  return lines.every((line, r) => line.every((cell, c) => text(last[r]?.[c]) === text(cell)));
}
