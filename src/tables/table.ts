import type { Fields, ValuesOf } from './field.ts';

/**
 * How a table lies in its sheet:
 * - rows: a header row, a row of units, then one record a row;
 * - attributes: one record, an attribute a row, with columns attribute, value, unit, note;
 * - across: an attribute a row, columns attribute and unit, then one record a column.
 */
export interface Table<F extends Fields> {
  readonly name: string;
  readonly shape: 'rows' | 'attributes' | 'across';
  readonly help: string;
  readonly required: boolean;
  /** True where no two records may have the same name (the values of its key fields). */
  readonly unique: boolean;
  readonly fields: F;
}

/** Where a record came from, and which of its values nobody gave. */
export interface Origin {
  readonly row: number;
  readonly defaulted: readonly string[];
}

export type RecordOf<T> = T extends Table<infer F> ? ValuesOf<F> & Origin : never;
