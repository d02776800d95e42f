import type { Cell } from '../tables/cell.ts';
import { isFree } from '../workbook/own.ts';
import { gridOf, type Place, refresh } from './places.ts';

/**
 * Makes sure that a table can grow: its neighbours are moved away by whole rows or columns, so that every reference and
 * named range follows, and by no more than is missing, so that an interrupted run can be done again.
 */
export function makeRoomRight(place: Place, wanted: number): void {
  const { view, row, rows } = place;
  const column = place.column + place.columns;
  const columns = (view.values[0]?.length ?? 0) - column + 1;
  if (wanted <= 0 || columns <= 0) return;
  const lines = gridOf({ view, row, rows, column, columns });
  const taken = Array.from({ length: columns }, (_, c) => lines.some((line) => !isFree(line[c])));
  const missing = shortage(taken, wanted);
  if (missing === 0) return;
  view.sheet.insertColumnsAfter(column - 1, missing);
  refresh(view);
}

export function makeRoomBelow(place: Place, wanted: number): void {
  const { view, column, columns } = place;
  const row = place.row + place.rows;
  const rows = view.values.length - row + 1;
  if (wanted <= 0 || rows <= 0) return;
  const lines = gridOf({ view, row, rows, column, columns });
  const missing = shortage(
    lines.map((line) => !line.every(isFree)),
    wanted,
  );
  if (missing === 0) return;
  view.sheet.insertRowsAfter(row - 1, missing);
  refresh(view);
}

/** How many lines are missing before the first taken one, with one more to keep apart. */
function shortage(taken: readonly boolean[], wanted: number): number {
  const free = taken.indexOf(true);
  return free < 0 ? 0 : Math.max(0, wanted + 1 - free);
}

/** Lines at the end of a grid, seen by rows or by columns, that hold nothing of a person's. */
export const freeRowsAtEnd = (grid: readonly (readonly Cell[])[]) =>
  countFromEnd(grid.map((line) => line.every(isFree)));

export const freeColumnsAtEnd = (grid: readonly (readonly Cell[])[]) =>
  countFromEnd((grid[0] ?? []).map((_, c) => grid.every((line) => isFree(line[c]))));

function countFromEnd(free: readonly boolean[]): number {
  return free.length - 1 - free.lastIndexOf(false);
}
