import { type Cell, type Grid, isBlank, nameKey, plain } from './cell.ts';
import type { FaultLog } from './faults.ts';
import type { Fields, ValuesOf } from './field.ts';
import { hasValue, type Line, type Lines, linesOf, noteColumns } from './lines.ts';
import { isNoUnit, readCell, readUnit, reportUnknown, whereEmpty } from './readCell.ts';
import type { Origin, Table } from './table.ts';

/** Where the fields of a table stand; undefined for a column that is not there. */
type ColumnIndexes = ReadonlyMap<string, number | undefined>;
type Units = ReadonlyMap<string, string | undefined>;

function columnIndexes(table: Table<Fields>, { header, columns }: Lines, log: FaultLog): ColumnIndexes {
  const fields = Object.entries(table.fields);
  const absent = fields.filter(([, { label }]) => !columns.has(nameKey(label)));
  const labels = absent.map(([, { label }]) => label);
  const known = new Set([...noteColumns, ...fields.map(([, { label }]) => nameKey(label))]);
  const meant = [...columns]
    .filter(([name]) => !known.has(name))
    .map(([, at]) => reportUnknown(table.name, 'column', header.cells[at], header.row, labels, log));
  for (const [, { label, required }] of absent) {
    if (required && !meant.includes(label))
      log.absent(table.name, { row: header.row, column: label }, 'this column');
  }
  return new Map(fields.map(([key, { label }]) => [key, columns.get(nameKey(label))]));
}

/** True where a record stands in the place of the units: it has a name, or a number where a unit belongs. */
function isRecord(table: Table<Fields>, line: Line, indexes: ColumnIndexes): boolean {
  return Object.entries(table.fields).some(([key, { unit, key: namesRecord }]) => {
    const index = indexes.get(key);
    const cell = index === undefined ? undefined : line.cells[index];
    return unit === undefined ? namesRecord && !isNoUnit(cell) : typeof cell === 'number';
  });
}

/** The unit of every column; a unit may be missing where there is nothing to measure. */
function unitsOfColumns(
  table: Table<Fields>,
  indexes: ColumnIndexes,
  { cells: unitCells, row }: Line,
  records: readonly Line[],
  log: FaultLog,
): Units {
  const units = new Map<string, string | undefined>();
  for (const [key, field] of Object.entries(table.fields)) {
    const index = indexes.get(key);
    if (index === undefined) continue;
    const cell = unitCells[index];
    if (isNoUnit(cell) && !records.some(({ cells }) => hasValue([cells[index]]))) continue;
    units.set(key, readUnit(table.name, field, cell, { row, column: `unit of ${field.label}` }, log));
  }
  return units;
}

function readRecord<F extends Fields>(
  table: Table<F>,
  { cells, row }: Line,
  rowName: string,
  indexes: ColumnIndexes,
  units: Units,
  log: FaultLog,
): ValuesOf<F> & Origin {
  const values: Record<string, unknown> = {};
  const defaulted: string[] = [];
  for (const [key, field] of Object.entries(table.fields)) {
    const index = indexes.get(key);
    const place = { row, rowName, column: field.label };
    const reading =
      index === undefined
        ? whereEmpty(field)
        : readCell(table.name, field, cells[index], units.get(key), place, log);
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
    if (table.required) log.absent(table.name, {}, 'this table');
    return [];
  }
  const indexes = columnIndexes(table, lines, log);
  const [first, ...records] = lines.body;
  if (first !== undefined && isRecord(table, first, indexes)) {
    const cell = first.cells.find((each) => !isBlank(each));
    log.fault(table.name, { row: first.row }, cell, 'a row of units under the header: lb, in, …');
    return [];
  }
  const units: Units = first ? unitsOfColumns(table, indexes, first, records, log) : new Map();
  if (records.length === 0 && table.required) log.absent(table.name, {}, 'at least one row');

  const keys = fields.filter(([, { key }]) => key);
  const keyLabels = keys.map(([, { label }]) => label).join(', ');
  const cellOf = (line: Line, key: string): Cell => line.cells[indexes.get(key) ?? line.cells.length];
  const seen = new Map<string, number>();
  const whole = new Map<string, number>();
  return records.map((line) => {
    const names = keys.map(([key]) => cellOf(line, key)).filter((cell) => !isBlank(cell));
    const rowName = names.map((cell) => plain(String(cell))).join(', ');
    const taken = table.unique && names.length === keys.length ? seen.get(nameKey(rowName)) : undefined;
    if (taken === undefined) seen.set(nameKey(rowName), line.row);
    else {
      const place = { row: line.row, column: keyLabels };
      log.fault(table.name, place, rowName, `a name that row ${taken} does not have already`);
    }
    const all = line.cells.map((cell) => (isBlank(cell) ? '' : String(cell))).join('\n');
    const same = whole.get(all) ?? line.row;
    whole.set(all, same);
    if (!table.unique && same < line.row) {
      const place = { row: line.row, column: keyLabels };
      log.fault(
        table.name,
        place,
        rowName,
        `a row other than row ${same}; two of a kind want names or notes`,
      );
    }
    return readRecord(table, line, rowName, indexes, units, log);
  });
}
