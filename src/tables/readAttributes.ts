import { type Grid, isBlank, nameKey, plain } from './cell.ts';
import type { FaultLog } from './faults.ts';
import type { Fields, ValuesOf } from './field.ts';
import { hasValue, type Line, type Lines, linesOf } from './lines.ts';
import { readCell, readUnit, reportUnknown } from './readCell.ts';
import type { Origin, Table } from './table.ts';

const nameColumn = 'attribute';
const unitColumn = 'unit';
const valueColumn = 'value';
const noteColumn = 'note';

/** The lines of an attribute table by the key of their field; headings and empty lines are passed over. */
function attributeLines(table: Table<Fields>, lines: Lines, log: FaultLog): Map<string, Line> {
  const { columns, header, body } = lines;
  const found = new Map<string, Line>();
  const fields = Object.entries(table.fields);
  const labels = fields.map(([, { label }]) => label);
  const nameAt = columns.get(nameColumn);
  if (nameAt === undefined) {
    log.fault(table.name, { row: header.row }, header.cells[0], `a column headed "${nameColumn}"`);
    return found;
  }
  for (const line of body) {
    const { cells, row } = line;
    const cell = cells[nameAt];
    const filled = hasValue(
      cells.filter((_, index) => index !== nameAt && index !== columns.get(noteColumn)),
    );
    if (isBlank(cell)) {
      if (filled) log.fault(table.name, { row, column: nameColumn }, cell, 'the name of an attribute');
      continue;
    }
    const typed = String(cell);
    const field = fields.find(([, { label }]) => nameKey(label) === nameKey(typed));
    const first = field && found.get(field[0]);
    if (first) {
      const expected = `an attribute that row ${first.row} does not have already`;
      log.fault(table.name, { row, column: nameColumn }, typed, expected);
    } else if (field) found.set(field[0], line);
    else if (filled) reportUnknown(table.name, nameColumn, typed, row, labels, log);
  }
  return found;
}

/** The unit of every attribute that has a value; a unit may be missing where there is nothing to measure. */
function attributeUnits(
  table: Table<Fields>,
  attributes: ReadonlyMap<string, Line>,
  lines: Lines,
  valuesAt: readonly number[],
  log: FaultLog,
): Map<string, string | undefined> {
  const unitAt = lines.columns.get(unitColumn);
  const units = new Map<string, string | undefined>();
  for (const [key, { cells, row }] of attributes) {
    const field = table.fields[key] as Fields[string];
    const cell = unitAt === undefined ? undefined : cells[unitAt];
    if (isBlank(cell) && valuesAt.every((index) => isBlank(cells[index]))) continue;
    units.set(key, readUnit(table.name, field, cell, { row, rowName: field.label, column: unitColumn }, log));
  }
  return units;
}

/** Reads the attributes of one record, whose values stand in one column. */
function readColumn<F extends Fields>(
  table: Table<F>,
  attributes: ReadonlyMap<string, Line>,
  units: ReadonlyMap<string, string | undefined>,
  headerRow: number,
  at: number | undefined,
  column: string,
  log: FaultLog,
): ValuesOf<F> & Origin {
  const values: Record<string, unknown> = {};
  const defaulted: string[] = [];
  for (const [key, field] of Object.entries(table.fields)) {
    const line = attributes.get(key);
    const place = { row: line?.row ?? headerRow, rowName: field.label, column };
    const cell = at === undefined ? undefined : line?.cells[at];
    const reading = readCell(table.name, field, cell, units.get(key), place, log);
    values[key] = reading.value;
    if (reading.defaulted) defaulted.push(key);
  }
  return { ...(values as ValuesOf<F>), row: headerRow, defaulted };
}

/** Reads a table that is one record, an attribute a row, under the columns attribute, value, unit. */
export function readAttributes<F extends Fields>(
  table: Table<F>,
  grid: Grid | undefined,
  log: FaultLog,
): ValuesOf<F> & Origin {
  const lines = linesOf(table.name, grid, [nameColumn], 1, log);
  if (lines === undefined && !table.required)
    return readColumn(table, new Map(), new Map(), 1, undefined, '', log);
  if (lines === undefined) {
    log.fault(table.name, {}, '', 'this table');
    return { ...({} as ValuesOf<F>), row: 1, defaulted: [] };
  }
  const at = lines.columns.get(valueColumn);
  if (at === undefined) {
    log.fault(table.name, { row: lines.header.row }, '', `a column headed "${valueColumn}"`);
    return { ...({} as ValuesOf<F>), row: lines.header.row, defaulted: [] };
  }
  const attributes = attributeLines(table, lines, log);
  const units = attributeUnits(table, attributes, lines, [at], log);
  return readColumn(table, attributes, units, lines.header.row, at, valueColumn, log);
}

/** Reads a table whose records stand side by side, each under its name. */
export function readAcross<F extends Fields>(
  table: Table<F>,
  grid: Grid | undefined,
  log: FaultLog,
): (ValuesOf<F> & Origin & { readonly name: string })[] {
  const lines = linesOf(table.name, grid, [nameColumn], 1, log);
  if (lines === undefined) {
    log.fault(table.name, {}, '', 'this table');
    return [];
  }
  const { header, columns } = lines;
  const attributes = attributeLines(table, lines, log);
  const own = [nameColumn, unitColumn, noteColumn];
  const valuesAt = [...columns].filter(([name]) => !own.includes(name)).map(([, index]) => index);
  if (valuesAt.length === 0) {
    log.fault(
      table.name,
      { row: header.row },
      '',
      `at least one column beside "${nameColumn}" and "${unitColumn}"`,
    );
  }
  const units = attributeUnits(table, attributes, lines, valuesAt, log);
  return valuesAt.map((at) => {
    const name = plain(String(header.cells[at]));
    return { ...readColumn(table, attributes, units, header.row, at, name, log), name };
  });
}
