/** Records back into cells: what the readers read as the same records. */
import { fromSi, type QuantityKind } from '../units.ts';
import type { Cell } from './cell.ts';
import type { Field, Fields, ValuesOf } from './field.ts';
import type { Table } from './table.ts';

/** The unit a field of that kind is written in. */
export type UnitOf = (kind: QuantityKind, customaryUnit: string) => string;

/** Some of a record's values. */
export type Written<F extends Fields> = Partial<ValuesOf<F>>;

const writtenDigits = 8;

/** Money is not written: its unit is another matter. */
const unitOfField = ({ unit, customaryUnit }: Field<unknown>, unitOf: UnitOf) =>
  unit === undefined || unit.startsWith('currency') ? '' : unitOf(unit as QuantityKind, customaryUnit);

function cellOf(field: Field<unknown>, value: unknown, unitOf: UnitOf): Cell {
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
  const filled = Object.entries(table.fields).filter(([key]) =>
    records.some((record) => record[key] !== undefined),
  );
  return [
    filled.map(([, { label }]) => label),
    filled.map(([, field]) => unitOfField(field, unitOf)),
    ...records.map((record) => filled.map(([key, field]) => cellOf(field, record[key], unitOf))),
  ];
}

/** Attributes under attribute, value, unit, note. */
export function writeAttributes<F extends Fields>(
  table: Table<F>,
  values: Written<F>,
  noteOf: (key: keyof F & string) => string,
  unitOf: UnitOf,
): Cell[][] {
  return [
    ['attribute', 'value', 'unit', 'note'],
    ...Object.entries(table.fields)
      .filter(([key]) => values[key] !== undefined)
      .map(([key, field]) => [
        field.label,
        cellOf(field, values[key], unitOf),
        unitOfField(field, unitOf),
        noteOf(key),
      ]),
  ];
}
