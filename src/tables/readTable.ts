import { distance } from 'fastest-levenshtein';
import { type Cell, type Grid, isBlank, nameKey, plain } from './cell.ts';
import type { FaultLog } from './faults.ts';
import { type Field, type Fields, unitFor, type ValuesOf } from './field.ts';
import type { Origin, Table } from './table.ts';

interface Place {
  readonly row: number;
  readonly rowName: string;
  readonly column: string;
}

const noteColumn = 'note';

/** The label a typed name was probably meant to be: at most a quarter of its letters differ. */
function meantLabel(typed: string, labels: readonly string[]): string | undefined {
  return labels.find((label) => distance(nameKey(typed), nameKey(label)) <= Math.ceil(label.length / 4));
}

/** A column or row that is not the table's own: probably a slip (a fault), else left alone and said so. */
function reportUnknown(
  table: string,
  what: 'column' | 'attribute',
  typed: string,
  place: { row?: number },
  labels: readonly string[],
  log: FaultLog,
): void {
  const meant = meantLabel(typed, labels);
  if (meant !== undefined) log.fault(table, { ...place, column: what }, typed, `"${meant}"`);
  else log.remark(table, `${what} "${plain(typed)}" is not one of this table's and is not read`);
}

/** The cells of a header row by their name; duplicates, and values below an empty header, are faults. */
function columnsOf(table: string, grid: Grid, log: FaultLog): Map<string, number> {
  const columns = new Map<string, number>();
  const header = grid[0] ?? [];
  header.forEach((cell, index) => {
    if (isBlank(cell)) {
      const row = grid.findIndex((cells, at) => at > 0 && !isBlank(cells[index]));
      if (row > 0) {
        log.fault(
          table,
          { row: 1, column: `column ${index + 1}` },
          cell,
          `a header: row ${row + 1} of this column holds a value`,
        );
      }
      return;
    }
    const name = nameKey(String(cell));
    if (columns.has(name))
      log.fault(table, { row: 1, column: plain(String(cell)) }, cell, 'a header that stands once');
    else columns.set(name, index);
  });
  return columns;
}

/** Reads one cell into its field's value; a fault is logged where it is none, a default taken where it is empty. */
function readCell(
  table: string,
  field: Field<unknown>,
  cell: Cell,
  unit: string | undefined,
  place: Place,
  log: FaultLog,
): { value: unknown; defaulted: boolean } {
  if (isBlank(cell)) {
    if (field.required) log.fault(table, place, cell, `a value: ${field.help}`);
    const silent = field.fallback === undefined || field.fallback.source === '';
    return { value: field.fallback?.value, defaulted: !silent };
  }
  if (field.unit !== undefined && unit === undefined) return { value: undefined, defaulted: false };
  const reading = field.read(cell, unit ?? '');
  if ('value' in reading) return { value: reading.value, defaulted: false };
  log.fault(table, place, cell, reading.expected);
  return { value: undefined, defaulted: false };
}

function readUnit(
  table: string,
  field: Field<unknown>,
  cell: Cell,
  place: { row: number; column: string; rowName?: string },
  log: FaultLog,
): string | undefined {
  if (field.unit === undefined) {
    if (!isBlank(cell)) log.fault(table, place, cell, `no unit for ${field.label}`);
    return undefined;
  }
  const unit = unitFor(field.unit, cell);
  if ('expected' in unit) {
    log.fault(table, place, cell, unit.expected);
    return undefined;
  }
  if (field.unit.startsWith('currency') && !log.agreesOnCurrency(unit.value.slice(0, 3))) {
    log.fault(table, place, cell, `${log.currencyCode}, the workbook's currency`);
  }
  return unit.value;
}

const hasValue = (cells: readonly Cell[]) => cells.some((cell) => !isBlank(cell));

/** Reads a table whose records are rows: header, units, records. */
export function readRows<F extends Fields>(
  table: Table<F>,
  grid: Grid | undefined,
  log: FaultLog,
): (ValuesOf<F> & Origin)[] {
  if (grid === undefined || !grid.some(hasValue)) {
    if (table.required) log.fault(table.name, {}, '', `a table: ${table.help}`);
    return [];
  }
  const columns = columnsOf(table.name, grid, log);
  const fields = Object.entries(table.fields);
  const labels = fields.map(([, field]) => field.label);
  for (const [name, index] of columns) {
    if (name !== noteColumn && !labels.some((label) => nameKey(label) === name)) {
      reportUnknown(table.name, 'column', String(grid[0]?.[index]), { row: 1 }, labels, log);
    }
  }
  const units = new Map<string, string | undefined>();
  const at = new Map<string, number>();
  for (const [key, field] of fields) {
    const index = columns.get(nameKey(field.label));
    if (index === undefined) {
      if (field.required)
        log.fault(table.name, { row: 1, column: field.label }, '', `this column: ${field.help}`);
      continue;
    }
    at.set(key, index);
    units.set(
      key,
      readUnit(table.name, field, grid[1]?.[index], { row: 2, column: `unit of ${field.label}` }, log),
    );
  }
  const seen = new Map<string, number>();
  const keyLabels = fields
    .filter(([, field]) => field.key)
    .map(([, field]) => field.label)
    .join(', ');
  const records: (ValuesOf<F> & Origin)[] = [];
  grid.forEach((cells, index) => {
    if (index < 2 || !hasValue(cells)) return;
    const row = index + 1;
    const rowName = fields
      .filter(([key, field]) => field.key && at.has(key))
      .map(([key]) => cells[at.get(key) as number])
      .filter((cell) => !isBlank(cell))
      .map((cell) => plain(String(cell)))
      .join(', ');
    const values: Record<string, unknown> = {};
    const defaulted: string[] = [];
    for (const [key, field] of fields) {
      const column = at.get(key);
      const cell = column === undefined ? undefined : cells[column];
      const place = { row, rowName, column: field.label };
      const reading = readCell(table.name, field, cell, units.get(key), place, log);
      values[key] = reading.value;
      if (reading.defaulted) defaulted.push(key);
    }
    const first = table.unique && rowName !== '' ? seen.get(nameKey(rowName)) : undefined;
    if (first !== undefined) {
      log.fault(
        table.name,
        { row, column: keyLabels },
        rowName,
        `a name that row ${first} does not have already`,
      );
    } else seen.set(nameKey(rowName), row);
    records.push({ ...(values as ValuesOf<F>), row, defaulted });
  });
  if (records.length === 0 && table.required)
    log.fault(table.name, {}, '', `at least one row: ${table.help}`);
  return records;
}

interface AttributeRow {
  readonly cells: readonly Cell[];
  readonly row: number;
}

/** The rows of an attribute table by the key of their field. */
function attributeRows(
  table: Table<Fields>,
  grid: Grid,
  columns: Map<string, number>,
  log: FaultLog,
): Map<string, AttributeRow> {
  const rows = new Map<string, AttributeRow>();
  const fields = Object.entries(table.fields);
  const nameColumn = columns.get('attribute');
  if (nameColumn === undefined) {
    log.fault(table.name, { row: 1 }, grid[0]?.[0], 'a column headed "attribute"');
    return rows;
  }
  grid.forEach((cells, index) => {
    const cell = cells[nameColumn];
    if (index === 0) return;
    const others = cells.filter((_, column) => column !== nameColumn && column !== columns.get(noteColumn));
    if (isBlank(cell)) {
      if (hasValue(others))
        log.fault(table.name, { row: index + 1, column: 'attribute' }, cell, 'the name of an attribute');
      return;
    }
    const typed = String(cell);
    const found = fields.find(([, field]) => nameKey(field.label) === nameKey(typed));
    if (found === undefined) {
      if (hasValue(others)) {
        reportUnknown(
          table.name,
          'attribute',
          typed,
          { row: index + 1 },
          fields.map(([, f]) => f.label),
          log,
        );
      }
      return;
    }
    const first = rows.get(found[0]);
    if (first)
      log.fault(
        table.name,
        { row: index + 1, column: 'attribute' },
        typed,
        `an attribute that row ${first.row} does not have already`,
      );
    else rows.set(found[0], { cells, row: index + 1 });
  });
  return rows;
}

/** Reads the attributes of one record, whose values stand in one column. */
function readColumn<F extends Fields>(
  table: Table<F>,
  rows: Map<string, AttributeRow>,
  valueColumn: number,
  recordName: string,
  units: Map<string, string | undefined>,
  log: FaultLog,
): ValuesOf<F> & Origin {
  const values: Record<string, unknown> = {};
  const defaulted: string[] = [];
  for (const [key, field] of Object.entries(table.fields)) {
    const attribute = rows.get(key);
    const place = { row: attribute?.row ?? 1, rowName: field.label, column: recordName };
    const reading = readCell(table.name, field, attribute?.cells[valueColumn], units.get(key), place, log);
    values[key] = reading.value;
    if (reading.defaulted) defaulted.push(key);
  }
  return { ...(values as ValuesOf<F>), row: valueColumn + 1, defaulted };
}

/** The unit of every attribute that has a value; a unit may be missing where there is nothing to measure. */
function attributeUnits<F extends Fields>(
  table: Table<F>,
  rows: Map<string, AttributeRow>,
  unitColumn: number | undefined,
  valueColumns: readonly number[],
  log: FaultLog,
): Map<string, string | undefined> {
  const units = new Map<string, string | undefined>();
  for (const [key, { cells, row }] of rows) {
    const field = table.fields[key] as Field<unknown>;
    const cell = unitColumn === undefined ? undefined : cells[unitColumn];
    if (isBlank(cell) && valueColumns.every((column) => isBlank(cells[column]))) continue;
    units.set(key, readUnit(table.name, field, cell, { row, rowName: field.label, column: 'unit' }, log));
  }
  return units;
}

/** Reads a table that is one record, an attribute a row. */
export function readAttributes<F extends Fields>(
  table: Table<F>,
  grid: Grid | undefined,
  log: FaultLog,
): ValuesOf<F> & Origin {
  const present = grid?.some(hasValue) ? grid : undefined;
  if (!present && table.required) log.fault(table.name, {}, '', `a table: ${table.help}`);
  const columns = present ? columnsOf(table.name, present, log) : new Map<string, number>();
  const rows = present ? attributeRows(table, present, columns, log) : new Map<string, AttributeRow>();
  const value = columns.get('value');
  if (present && value === undefined) log.fault(table.name, { row: 1 }, '', 'a column headed "value"');
  if ((!present && table.required) || (present && value === undefined)) {
    return { ...({} as ValuesOf<F>), row: 1, defaulted: [] };
  }
  const units = attributeUnits(table, rows, columns.get('unit'), value === undefined ? [] : [value], log);
  return readColumn(table, rows, value ?? 0, 'value', units, log);
}

/** Reads a table whose records stand side by side, each under its name. */
export function readAcross<F extends Fields>(
  table: Table<F>,
  grid: Grid | undefined,
  log: FaultLog,
): (ValuesOf<F> & Origin & { readonly name: string })[] {
  if (grid === undefined || !grid.some(hasValue)) {
    log.fault(table.name, {}, '', `a table: ${table.help}`);
    return [];
  }
  const columns = columnsOf(table.name, grid, log);
  const rows = attributeRows(table, grid, columns, log);
  const own = ['attribute', 'unit', noteColumn];
  const records = [...columns].filter(([name]) => !own.includes(name)).map(([, index]) => index);
  if (records.length === 0)
    log.fault(table.name, { row: 1 }, '', 'at least one column after "attribute" and "unit"');
  const units = attributeUnits(table, rows, columns.get('unit'), records, log);
  return records.map((index) => {
    const name = plain(String(grid[0]?.[index]));
    return { ...readColumn(table, rows, index, name, units, log), name };
  });
}
