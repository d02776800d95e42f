import { type Cell, isBlank } from '../tables/cell.ts';
import { isFree } from '../workbook/own.ts';
import { gridOf, type Place, part, rangeOf, type View } from './places.ts';

/** A cell as it is written: text always behind an apostrophe, so that nothing a person typed is read as a formula. */
export const typed = (cell: Cell) =>
  isBlank(cell) ? '' : typeof cell === 'string' ? `'${cell}` : (cell as string | number | boolean | Date);

/** Writes cells from a corner on, and remembers them as what stands there. */
export function write(view: View, row: number, column: number, cells: readonly (readonly Cell[])[]): void {
  const place: Place = { view, row, column, rows: cells.length, columns: cells[0]?.length ?? 1 };
  rangeOf(place).setValues(cells.map((line) => line.map(typed)));
  remember(place, cells);
}

/** Empties a place of its contents. */
export function empty(place: Place): void {
  rangeOf(place).clearContent();
  remember(
    place,
    gridOf(place).map((line) => line.map(() => '')),
  );
}

function remember({ view, row, column, rows, columns }: Place, cells: readonly (readonly Cell[])[]): void {
  const height = Math.max(view.values.length, row + rows - 1);
  const width = Math.max(view.values[0]?.length ?? 0, column + columns - 1);
  view.values = gridOf({ view, row: 1, column: 1, rows: height, columns: width }).map((line, r) =>
    line.map((cell, c) => {
      const written = cells[r - row + 1];
      const isThere = written !== undefined && c >= column - 1 && c < column - 1 + columns;
      return isThere ? (written[c - column + 1] ?? '') : cell;
    }),
  );
}

/** Brings the workbook's own words up to date: only in cells that are empty or hold its own words, only where they differ. */
export function refreshOwn(
  view: View,
  row: number,
  column: number,
  words: readonly (readonly Cell[])[],
): void {
  const place: Place = { view, row, column, rows: words.length, columns: words[0]?.length ?? 1 };
  const current = gridOf(place);
  const isDifferent = words.map((line, r) =>
    line.map((word, c) => isFree(current[r]?.[c]) && (word ?? '') !== (current[r]?.[c] ?? '')),
  );
  if (!isDifferent.some((line) => line.includes(true))) return;
  if (current.every((line) => line.every(isFree))) {
    write(view, row, column, words);
    return;
  }
  isDifferent.forEach((line, r) => {
    line.forEach((flag, c) => {
      const at = part(place, r, c, 1, 1);
      if (flag) write(view, at.row, at.column, [[words[r]?.[c] ?? null]]);
    });
  });
}
