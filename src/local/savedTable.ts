import { type Cell, type Grid, isBlank, isDate } from '../tables/cell.ts';
import { dayOf } from '../tables/day.ts';
import type { TableLayout } from '../workbook/layout.ts';
import { tableSource } from '../workbook/tableSource.ts';

/** A file knows no dates: a day is kept as its text. */
const kept = (cell: Cell): Cell => (isDate(cell) ? dayOf(cell) : (cell ?? null));

/**
 * What a sheet's range holds of a table, as it is kept in a file: from the header on, without the sheet's title and help,
 * without attributes that nobody has filled in, without the rows and columns kept free for more.
 * @returns undefined where the range no longer holds the table's header
 */
export function savedTable(table: TableLayout, range: Grid): Grid | undefined {
  const source = tableSource(table, range);
  if (source === undefined) return undefined;
  const { header, units, body, column } = source;
  const labels = [column('attribute'), column('unit')];
  const isTold = (line: readonly Cell[]) =>
    line.some((cell, index) => !isBlank(cell) && !labels.includes(index));
  const lines = table.shape === 'rows' ? [units, ...body] : body.filter(isTold);
  const columns = header.flatMap((cell, index) =>
    !isBlank(cell) || lines.some((line) => !isBlank(line[index])) ? [index] : [],
  );
  return [header, ...lines].map((line) => columns.map((index) => kept(line[index])));
}
