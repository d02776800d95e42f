import { type Grid, isBlank, nameKey, plain } from './cell.ts';
import type { FaultLog } from './faults.ts';
import type { Fields, ValuesOf } from './field.ts';
import { type Line, type Lines, linesOf } from './lines.ts';
import { readCell, readUnit, reportUnknown } from './readCell.ts';
import type { Origin, Table } from './table.ts';

/** The columns of the table's fields, with their units. */
interface Column {
  readonly index: number | undefined;
  readonly unit: string | undefined;
}

function columnsOfFields<F extends Fields>(
  table: Table<F>,
  lines: Lines,
  log: FaultLog,
): Map<string, Column> {
  const { header, columns, body } = lines;
  const units = body[0];
  const fields = Object.entries(table.fields);
  const labels = fields.map(([, { label }]) => label);
  const known = new Set([...labels, 'note'].map(nameKey));
  for (const [name, index] of columns) {
    if (!known.has(name))
      reportUnknown(table.name, 'column', String(header.cells[index]), header.row, labels, log);
  }
  return new Map(
    fields.map(([key, field]): [string, Column] => {
      const index = columns.get(nameKey(field.label));
      if (index === undefined) {
        if (field.required)
          log.fault(table.name, { row: header.row, column: field.label }, '', 'this column');
        return [key, { index, unit: undefined }];
      }
      const place = { row: units?.row ?? header.row + 1, column: `unit of ${field.label}` };
      return [key, { index, unit: readUnit(table.name, field, units?.cells[index], place, log) }];
    }),
  );
}

function readRecord<F extends Fields>(
  table: Table<F>,
  { cells, row }: Line,
  rowName: string,
  columns: ReadonlyMap<string, Column>,
  log: FaultLog,
): ValuesOf<F> & Origin {
  const values: Record<string, unknown> = {};
  const defaulted: string[] = [];
  for (const [key, field] of Object.entries(table.fields)) {
    const { index, unit } = columns.get(key) as Column;
    const cell = index === undefined ? undefined : cells[index];
    const reading = readCell(table.name, field, cell, unit, { row, rowName, column: field.label }, log);
    values[key] = reading.value;
    if (reading.defaulted) defaulted.push(key);
  }
  return { ...(values as ValuesOf<F>), row, defaulted };
}

/** Reads a table whose records are rows: header, units, records. Empty rows are passed over. */
export function readRows<F extends Fields>(
  table: Table<F>,
  grid: Grid | undefined,
  log: FaultLog,
): (ValuesOf<F> & Origin)[] {
  const fields = Object.entries(table.fields);
  const labels = fields.map(([, { label }]) => label);
  const lines = linesOf(table.name, grid, labels, Math.min(2, labels.length), log);
  if (lines === undefined) {
    if (table.required) log.fault(table.name, {}, '', 'this table');
    return [];
  }
  const columns = columnsOfFields(table, lines, log);
  const keys = fields.filter(([, { key }]) => key);
  const keyLabels = keys.map(([, { label }]) => label).join(', ');
  const seen = new Map<string, number>();
  const records = lines.body.slice(1).map((line) => {
    const rowName = keys
      .map(([key]) => columns.get(key)?.index)
      .map((index) => (index === undefined ? undefined : line.cells[index]))
      .filter((cell) => !isBlank(cell))
      .map((cell) => plain(String(cell)))
      .join(', ');
    const first = table.unique && rowName !== '' ? seen.get(nameKey(rowName)) : undefined;
    if (first === undefined) seen.set(nameKey(rowName), line.row);
    else {
      const place = { row: line.row, column: keyLabels };
      log.fault(table.name, place, rowName, `a name that row ${first} does not have already`);
    }
    return readRecord(table, line, rowName, columns, log);
  });
  if (records.length === 0 && table.required) log.fault(table.name, {}, '', 'at least one row');
  return records;
}
