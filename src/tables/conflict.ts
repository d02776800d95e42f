import { type Cell, nameKey } from './cell.ts';
import type { FaultLog } from './faults.ts';

/** A record of a table of rows. */
export interface RecordPlace {
  readonly row: number;
  readonly rowName?: string;
}

/** The names of a row, those that it has. */
export const rowNameOf = (...names: readonly (string | undefined)[]) =>
  names.filter((name) => name !== undefined).join(', ');

/**
 * A value that is sound by itself but not beside others. What was typed is quoted; nothing is said where the cell has a
 * fault already, and a column that is not there is missed once.
 */
export function conflict(
  log: FaultLog,
  table: string,
  { row, rowName = '' }: RecordPlace,
  column: string,
  expected: string,
  got?: Cell,
): void {
  const lines = log.lines.get(table);
  const at = lines?.columns.get(nameKey(column));
  const header = lines?.header.row;
  if (log.isFaulty(table, at === undefined ? (header ?? 1) : row, column)) return;
  if (at === undefined) log.absent(table, { row: header, column }, expected);
  else {
    const typed = lines?.body.find((line) => line.row === row)?.cells[at];
    log.fault(table, { row, rowName, column }, got ?? typed, expected);
  }
}

/** The same of a table whose attributes are rows; the record is the column's name. An attribute may be no row of it. */
export function attributeConflict(
  log: FaultLog,
  table: string,
  attribute: string,
  column: string,
  expected: string,
  got?: Cell,
): void {
  const lines = log.lines.get(table);
  const nameAt = lines?.columns.get('attribute');
  const line = lines?.body.find(({ cells }) => nameKey(String(cells[nameAt ?? -1])) === nameKey(attribute));
  if (log.isFaulty(table, line?.row ?? 0, line === undefined ? attribute : column)) return;
  if (line === undefined) {
    log.absent(table, { rowName: attribute, column }, expected);
    return;
  }
  const typed = line.cells[lines?.columns.get(nameKey(column)) ?? -1];
  log.fault(table, { row: line.row, rowName: attribute, column }, got ?? typed, expected);
}
