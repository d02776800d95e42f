import { type Cell, type Grid, isBlank, isErrorText, nameKey, plain } from './cell.ts';
import type { FaultLog } from './faults.ts';

/** One row of a sheet with its number, as a person counts: the first is 1. */
export interface Line {
  readonly cells: readonly Cell[];
  readonly row: number;
}

/** A table found in its range: the header, where each column is, and what lies below. */
export interface Lines {
  readonly header: Line;
  /** column index by the key of its name */
  readonly columns: ReadonlyMap<string, number>;
  readonly body: readonly Line[];
}

/** Columns that any table may have and no record has: a person's notes. */
export const noteColumns: readonly string[] = ['note', 'notes'];

/** True where a person entered something: a tick box that is not ticked stands in every spare row of a sheet. */
export const hasValue = (cells: readonly Cell[]) => cells.some((cell) => !isBlank(cell) && cell !== false);

/** The same where a tick box stands only beside or below what names it: FALSE says something. */
export const isFilled = (cells: readonly Cell[]) => cells.some((cell) => !isBlank(cell));

/** Columns by name; duplicates, errors, and values below an empty header, are faults. */
function columnsOf(table: string, header: Line, body: readonly Line[], log: FaultLog): Map<string, number> {
  const columns = new Map<string, number>();
  header.cells.forEach((cell, index) => {
    const place = { row: header.row, column: isBlank(cell) ? `column ${index + 1}` : plain(String(cell)) };
    if (isBlank(cell)) {
      const orphan = body.find(({ cells }) => isFilled([cells[index]]));
      if (orphan) log.fault(table, place, cell, `a header: row ${orphan.row} of this column holds a value`);
      return;
    }
    const name = nameKey(String(cell));
    if (isErrorText(cell)) log.fault(table, place, cell, 'a header');
    else if (columns.has(name)) log.fault(table, place, cell, 'a header that stands once');
    else columns.set(name, index);
  });
  return columns;
}

/**
 * Finds the header of a table in its range: titles may stand above it. It is the first line that holds as many of the
 * labels as `atLeast` says; where there is none, the first line with anything in it.
 * @param counts whether a row is one of the table's
 * @returns undefined for an empty range
 */
export function linesOf(
  table: string,
  grid: Grid | undefined,
  labels: readonly string[],
  atLeast: number,
  log: FaultLog,
  counts = hasValue,
): Lines | undefined {
  const filled = (grid ?? [])
    .map((cells, index): Line => ({ cells, row: index + 1 }))
    .filter(({ cells }) => counts(cells));
  const keys = new Set(labels.map(nameKey));
  const isHeader = ({ cells }: Line) =>
    cells.filter((cell) => typeof cell === 'string' && keys.has(nameKey(cell))).length >= atLeast;
  const header = filled.find(isHeader) ?? filled[0];
  if (header === undefined) return undefined;
  const body = filled.filter(({ row }) => row > header.row);
  const lines = { header, body, columns: columnsOf(table, header, body, log) };
  log.lines.set(table, lines);
  return lines;
}
