import { type Cell, type Grid, isBlank, nameKey } from '../tables/cell.ts';
import { FaultLog } from '../tables/faults.ts';
import type { Field, Fields } from '../tables/field.ts';
import { type Lines, linesOf } from '../tables/lines.ts';
import type { Table } from '../tables/table.ts';
import { cellOf, type UnitOf, type Written } from '../tables/writeTable.ts';
import { type QuantityKind, unitNamed } from '../units.ts';

/** One cell of an input table that is to hold something else. Plain data: it is kept as text to be put back. */
export interface CellEdit {
  readonly table: string;
  /** in the table's range, counted from 0 */
  readonly row: number;
  readonly column: number;
  readonly was: Cell;
  readonly is: Cell;
  /** the change in words; undefined for a cell that only goes along: a unit, a note */
  readonly words: string | undefined;
}

const sameNumber = 1e-5; // relative; what is written has six digits

const isSame = (one: Cell, other: Cell) =>
  typeof one === 'number' && typeof other === 'number'
    ? Math.abs(one - other) <= sameNumber * Math.abs(other)
    : (isBlank(one) ? '' : one) === (isBlank(other) ? '' : other);

const shown = (cell: Cell, unit: string) => {
  if (isBlank(cell)) return 'empty';
  const text = typeof cell === 'boolean' ? String(cell).toUpperCase() : String(cell);
  return unit === '' ? text : `${text} ${unit}`;
};

/** @throws Error where the workbook has not got the table */
function linesIn(table: Table<Fields>, grid: Grid | undefined): Lines {
  const labels =
    table.shape === 'rows' ? Object.values(table.fields).map(({ label }) => label) : ['attribute'];
  const lines = linesOf(table.name, grid, labels, Math.min(2, labels.length), new FaultLog());
  if (lines === undefined) throw missing(`no ${table.name} table`);
  return lines;
}

const missing = (what: string) => new Error(`There is ${what}: choose "Lay out or upgrade" first.`);

/** The unit that stands in a table stays; where there is none, the one a value is written in there. */
const unitIn = (field: Field<unknown>, cell: Cell, unitOf: UnitOf): string =>
  field.unit === undefined || field.unit.startsWith('currency')
    ? ''
    : ((isBlank(cell) ? undefined : unitNamed(field.unit as QuantityKind, String(cell))) ?? unitOf(field));

/**
 * Values of one record into a table of attributes, in the units that stand there.
 * @param column the record's: `value`, or a package's name
 * @param when said in the note of what changes, with what stood there
 */
export function attributeEdits<F extends Fields>(
  table: Table<F>,
  grid: Grid | undefined,
  column: string,
  values: Written<F>,
  when: string,
  unitOf: UnitOf,
): CellEdit[] {
  const { columns, body } = linesIn(table, grid);
  const at = (name: string) => {
    const found = columns.get(nameKey(name));
    if (found === undefined) throw missing(`no column "${name}" in the ${table.name} table`);
    return found;
  };
  const [labelAt, valueAt, unitAt] = [at('attribute'), at(column), at('unit')];
  const noteAt = columns.get('note');
  return Object.keys(values).flatMap((key): CellEdit[] => {
    const field = table.fields[key] as Field<unknown>;
    const line = body.find(({ cells }) => nameKey(String(cells[labelAt] ?? '')) === nameKey(field.label));
    if (line === undefined) throw missing(`no row "${field.label}" in the ${table.name} table`);
    const { cells, row } = line;
    const unit = unitIn(field, cells[unitAt], unitOf);
    const is = cellOf(field, values[key], () => unit);
    const was = cells[valueAt];
    if (isSame(was, is)) return [];
    const before = shown(was, unit);
    const edit = (editColumn: number, next: Cell, words?: string): CellEdit => ({
      table: table.name,
      row: row - 1,
      column: editColumn,
      was: cells[editColumn] ?? null,
      is: next,
      words,
    });
    const ofPackage = column === 'value' ? '' : ` of ${column}`;
    return [
      edit(valueAt, is, `${table.name}, ${field.label}${ofPackage}: ${before} → ${shown(is, unit)}`),
      ...(unit === '' || !isBlank(cells[unitAt]) ? [] : [edit(unitAt, unit)]),
      ...(noteAt === undefined ? [] : [edit(noteAt, `before ${when}: ${before}`)]),
    ];
  });
}

/** Values for a row of a table by the keys of its fields; those not named stay as they are. */
export interface RowEdit {
  /** as the reader counts: the range's first row is 1 */
  readonly row: number;
  readonly values: Readonly<Record<string, unknown>>;
  /** nothing stays of what stood there before */
  readonly replaces: boolean;
}

/** Values into rows of a table, in the units that stand there. */
export function rowEdits(
  table: Table<Fields>,
  grid: Grid | undefined,
  rows: readonly RowEdit[],
  unitOf: UnitOf,
): CellEdit[] {
  const { header, columns, body } = linesIn(table, grid);
  const unitsRow = body[0]?.row ?? header.row + 1;
  const fields = Object.entries(table.fields).map(([key, field]) => {
    const at = columns.get(nameKey(field.label));
    const unitCell = at === undefined ? undefined : grid?.[unitsRow - 1]?.[at];
    return { key, field, at, unitCell, unit: unitIn(field, unitCell, unitOf) };
  });
  const units = new Map<number, CellEdit>();
  const edits = rows.flatMap(({ row, values, replaces }): CellEdit[] => {
    const cells = grid?.[row - 1] ?? [];
    const edit = (column: number, is: Cell, label: string, unit: string): CellEdit[] => {
      const was = cells[column] ?? null;
      if (isSame(was, is)) return [];
      const words = isBlank(was)
        ? `${label} ${shown(is, unit)}`
        : `${label} ${shown(was, unit)} → ${shown(is, unit)}`;
      return [{ table: table.name, row: row - 1, column, was, is, words }];
    };
    const own = fields.flatMap(({ key, field, at, unitCell, unit }): CellEdit[] => {
      const isDefault = Array.isArray(values.defaulted) && values.defaulted.includes(key);
      const value = isDefault ? undefined : values[key];
      if (!(key in values) && !replaces) return [];
      if (at === undefined) {
        if (value === undefined) return [];
        throw missing(`no column "${field.label}" in the ${table.name} table`);
      }
      if (value !== undefined && unit !== '' && isBlank(unitCell))
        units.set(at, {
          table: table.name,
          row: unitsRow - 1,
          column: at,
          was: unitCell ?? null,
          is: unit,
          words: undefined,
        });
      return edit(
        at,
        cellOf(field, value, () => unit),
        field.label,
        unit,
      );
    });
    const known = new Set(fields.map(({ at }) => at));
    const others = replaces
      ? [...columns].flatMap(([name, at]) => (known.has(at) ? [] : edit(at, null, name, '')))
      : [];
    const ofRow = [...own, ...others];
    const inWords = ofRow.map(({ words }) => words).join(', ');
    return ofRow.map((each, index) => ({
      ...each,
      words: index === 0 ? `${table.name}, row ${row}: ${inWords}` : undefined,
    }));
  });
  return [...units.values(), ...edits];
}

/** A table's rows in place of all that are there. */
export function replacingRows(
  table: Table<Fields>,
  grid: Grid | undefined,
  records: readonly object[],
): RowEdit[] {
  const { header, body } = linesIn(table, grid);
  const first = (body[0]?.row ?? header.row + 1) + 1; // below the row of units
  const last = body[body.length - 1]?.row ?? first;
  const count = Math.max(records.length, last - first + 1);
  return Array.from({ length: count }, (_, index) => ({
    row: first + index,
    values: { ...records[index] },
    replaces: true,
  }));
}

/** The row below a table's last record. */
export function rowAfter(table: Table<Fields>, grid: Grid | undefined): number {
  const { header, body } = linesIn(table, grid);
  return Math.max(header.row + 1, body[body.length - 1]?.row ?? 0) + 1;
}
