import { type Cell, type Grid, isBlank, nameKey, plain } from './cell.ts';
import type { FaultLog } from './faults.ts';
import type { Fields, ValuesOf } from './field.ts';
import { isFilled, type Line, type Lines, linesOf, noteColumns } from './lines.ts';
import { isNoUnit, meantLabel, readCell, readUnit, reportUnknown, whereEmpty } from './readCell.ts';
import type { Origin, Table } from './table.ts';

const nameColumn = 'attribute';
const unitColumn = 'unit';
const valueColumn = 'value';

type AttributeLines = ReadonlyMap<string, Line>;
type Units = ReadonlyMap<string, string | undefined>;

/**
 * Looks for the columns a table must have; where one is not there, a header that was probably meant to be it is the fault.
 * @returns the indexes of all other columns
 */
function otherColumns(table: string, lines: Lines, own: readonly string[], log: FaultLog): number[] {
  const { columns, header } = lines;
  const absent = own.filter((name) => !columns.has(name));
  const meant: string[] = [];
  const others: number[] = [];
  for (const [name, at] of columns) {
    if (own.includes(name) || noteColumns.includes(name)) continue;
    const label = meantLabel(name, absent);
    if (label === undefined) others.push(at);
    else {
      log.fault(table, { row: header.row, column: 'column' }, header.cells[at], `"${label}"`);
      meant.push(label);
    }
  }
  for (const name of absent) {
    if (!meant.includes(name)) log.absent(table, { row: header.row }, `a column headed "${name}"`);
  }
  return others;
}

/** The lines of an attribute table by the key of their field; headings and empty lines are passed over. */
function attributeLines(table: Table<Fields>, { columns, body }: Lines, log: FaultLog): AttributeLines {
  const found = new Map<string, Line>();
  const fields = Object.entries(table.fields);
  const nameAt = columns.get(nameColumn) as number;
  const notesAt = noteColumns.map((name) => columns.get(name));
  const nameOf = ({ cells }: Line) => nameKey(String(cells[nameAt] ?? ''));
  const present = new Set(body.map(nameOf));
  const absent = fields.filter(([, { label }]) => !present.has(nameKey(label)));
  const labels = absent.map(([, { label }]) => label);
  const meant: (string | undefined)[] = [];
  for (const line of body) {
    const { cells, row } = line;
    const typed = cells[nameAt];
    const filled = isFilled(cells.filter((_, index) => index !== nameAt && !notesAt.includes(index)));
    if (isBlank(typed)) {
      if (filled) log.fault(table.name, { row, column: nameColumn }, typed, 'the name of an attribute');
      continue;
    }
    const field = fields.find(([, { label }]) => nameKey(label) === nameOf(line));
    const first = field && found.get(field[0]);
    if (first) {
      const expected = `an attribute that row ${first.row} does not have already`;
      log.fault(table.name, { row, column: nameColumn }, typed, expected);
    } else if (field) found.set(field[0], line);
    else if (filled) meant.push(reportUnknown(table.name, nameColumn, typed, row, labels, log));
  }
  for (const [, { label, required }] of absent) {
    if (required && !meant.includes(label)) log.absent(table.name, { rowName: label }, 'this attribute');
  }
  return found;
}

/** The unit of every attribute that has a value; a unit may be missing where there is nothing to measure. */
function attributeUnits(
  table: Table<Fields>,
  attributes: AttributeLines,
  unitAt: number | undefined,
  valuesAt: readonly number[],
  log: FaultLog,
): Units {
  const units = new Map<string, string | undefined>();
  if (unitAt === undefined) return units;
  for (const [key, { cells, row }] of attributes) {
    const field = table.fields[key] as Fields[string];
    const cell = cells[unitAt];
    if (isNoUnit(cell) && valuesAt.every((index) => isBlank(cells[index]))) continue;
    units.set(key, readUnit(table.name, field, cell, { row, rowName: field.label, column: unitColumn }, log));
  }
  return units;
}

/** Reads the attributes of one record, whose values stand in one column. */
function readColumn<F extends Fields>(
  table: Table<F>,
  attributes: AttributeLines,
  units: Units,
  at: number,
  column: string,
  log: FaultLog,
): ValuesOf<F> & Origin {
  const values: Record<string, unknown> = {};
  const defaulted: string[] = [];
  for (const [key, field] of Object.entries(table.fields)) {
    const line = attributes.get(key);
    const reading =
      line === undefined
        ? whereEmpty(field)
        : readCell(
            table.name,
            field,
            line.cells[at],
            units.get(key),
            { row: line.row, rowName: field.label, column },
            log,
          );
    values[key] = reading.value;
    if (reading.defaulted) defaulted.push(key);
  }
  return { ...(values as ValuesOf<F>), row: 1, defaulted };
}

/** Reads a table that is one record, an attribute a row, under the columns attribute, value, unit. */
export function readAttributes<F extends Fields>(
  table: Table<F>,
  grid: Grid | undefined,
  log: FaultLog,
): ValuesOf<F> & Origin {
  const lines = linesOf(table.name, grid, [nameColumn], 1, log, isFilled);
  if (lines === undefined) {
    if (table.required) log.absent(table.name, {}, 'this table');
    return readColumn(table, new Map(), new Map(), 0, valueColumn, log);
  }
  const own = [nameColumn, valueColumn, unitColumn];
  const { header, columns } = lines;
  for (const other of otherColumns(table.name, lines, own, log))
    reportUnknown(table.name, 'column', header.cells[other], header.row, [], log);
  const at = columns.get(valueColumn);
  if (at === undefined || !columns.has(nameColumn))
    return readColumn(table, new Map(), new Map(), 0, valueColumn, log);
  const attributes = attributeLines(table, lines, log);
  const units = attributeUnits(table, attributes, columns.get(unitColumn), [at], log);
  return readColumn(table, attributes, units, at, valueColumn, log);
}

/** Reads a table whose records stand side by side, each under its name. */
export function readAcross<F extends Fields>(
  table: Table<F>,
  grid: Grid | undefined,
  log: FaultLog,
): (ValuesOf<F> & Origin & { readonly name: string })[] {
  const lines = linesOf(table.name, grid, [nameColumn], 1, log, isFilled);
  if (lines === undefined) {
    log.absent(table.name, {}, 'this table');
    return [];
  }
  const { header, columns } = lines;
  const valuesAt = otherColumns(table.name, lines, [nameColumn, unitColumn], log);
  if (!columns.has(nameColumn)) return [];
  if (valuesAt.length === 0) {
    const expected = `at least one column beside "${nameColumn}" and "${unitColumn}"`;
    log.absent(table.name, { row: header.row }, expected);
  }
  const attributes = attributeLines(table, lines, log);
  const units = attributeUnits(table, attributes, columns.get(unitColumn), valuesAt, log);
  return valuesAt.map((at) => {
    const name = plain(String(header.cells[at] as Cell));
    return { ...readColumn(table, attributes, units, at, name, log), name };
  });
}
