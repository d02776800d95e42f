/** Records back into cells: what the readers read as the same records. */
import { fromSi, type QuantityKind } from '../units.ts';
import type { Cell } from './cell.ts';
import type { Field, Fields, ValuesOf } from './field.ts';
import type { Table } from './table.ts';

/** The unit a field is written in. */
export type UnitOf = (field: Field<unknown>) => string;

/** Some of a record's values; those that nobody gave stay empty. */
export type Written<F extends Fields> = Partial<ValuesOf<F>> & { readonly defaulted?: readonly string[] };

const writtenDigits = 6;

/** Money is not written: its unit is another matter. */
const unitOfField = (field: Field<unknown>, unitOf: UnitOf) =>
  field.unit === undefined || field.unit.startsWith('currency') ? '' : unitOf(field);

/** A value as its cell holds it, in the unit it is written in. */
export function cellOf(field: Field<unknown>, value: unknown, unitOf: UnitOf): Cell {
  if (value === undefined) return null;
  if (Array.isArray(value)) return value.join(', ');
  if (typeof value !== 'number') return value as Cell;
  const unit = unitOfField(field, unitOf);
  const shown = unit === '' ? value : fromSi(field.unit as QuantityKind, value, unit);
  return Number(shown.toPrecision(writtenDigits));
}

/** Header, units and rows of the fields that any of the records fills. */
export function writeRows<F extends Fields>(
  table: Table<F>,
  records: readonly Written<F>[],
  unitOf: UnitOf,
): Cell[][] {
  const given = (record: Written<F>, key: string) =>
    record.defaulted?.includes(key) ? undefined : record[key];
  const filled = Object.entries(table.fields).filter(([key]) =>
    records.some((record) => given(record, key) !== undefined),
  );
  return [
    filled.map(([, { label }]) => label),
    filled.map(([, field]) => unitOfField(field, unitOf)),
    ...records.map((record) => filled.map(([key, field]) => cellOf(field, given(record, key), unitOf))),
  ];
}

const textOf = (cell: Cell, unit: string) => {
  if (cell === null) return 'empty';
  return typeof cell === 'boolean' ? String(cell).toUpperCase() : `${cell} ${unit}`.trimEnd();
};

/** Attributes under attribute, value, unit, note; what stood there before is kept in the note. */
export function writeAttributes<F extends Fields>(
  table: Table<F>,
  values: Written<F>,
  before: Written<F>,
  when: string,
  unitOf: UnitOf,
): Cell[][] {
  return [
    ['attribute', 'value', 'unit', 'note'],
    ...Object.entries(table.fields)
      .filter(([key]) => key in values)
      .map(([key, field]): Cell[] => {
        const unit = unitOfField(field, unitOf);
        const was = textOf(cellOf(field, before[key], unitOf), unit);
        return [field.label, cellOf(field, values[key], unitOf), unit, `before ${when}: ${was}`];
      }),
  ];
}
