import { distance } from 'fastest-levenshtein';
import { type Cell, isBlank, nameKey, plain } from './cell.ts';
import type { FaultLog } from './faults.ts';
import { type Field, unitFor } from './field.ts';

export interface Place {
  readonly row: number;
  readonly rowName?: string;
  readonly column: string;
}

const letters = (text: string) => [...nameKey(text)].sort().join('');

/** Letters to change; swapped ones count as one. */
function slips(typed: string, label: string): number {
  return letters(typed) === letters(label) ? 1 : distance(nameKey(typed), nameKey(label));
}

/**
 * The label a typed name was probably meant to be: the nearest of which at most a quarter of the letters differ.
 * @param absent labels of the table that do not stand in it: one that does was not meant
 */
export function meantLabel(typed: Cell, absent: readonly string[]): string | undefined {
  let meant: string | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const label of absent) {
    const differing = slips(String(typed), label);
    if (differing > Math.ceil(label.length / 4) || differing >= least) continue;
    meant = label;
    least = differing;
  }
  return meant;
}

/**
 * A column or row that is not the table's own: probably a slip (a fault), else left alone and said so.
 * @returns the label that was probably meant
 */
export function reportUnknown(
  table: string,
  what: 'column' | 'attribute',
  typed: Cell,
  row: number,
  absent: readonly string[],
  log: FaultLog,
): string | undefined {
  const meant = meantLabel(typed, absent);
  if (meant !== undefined) log.fault(table, { row, column: what }, typed, `"${meant}"`);
  else log.remark(table, `${what} "${plain(String(typed))}" is not one of this table's and is not read`);
  return meant;
}

/** Reads one cell into its field's value; a fault is logged where it is none, a default taken where it is empty. */
export function readCell(
  table: string,
  field: Field<unknown>,
  cell: Cell,
  unit: string | undefined,
  place: Place,
  log: FaultLog,
): { value: unknown; defaulted: boolean } {
  if (isBlank(cell)) {
    if (field.required) log.fault(table, place, cell, 'a value');
    return whereEmpty(field);
  }
  if (field.unit !== undefined && unit === undefined) return { value: undefined, defaulted: false };
  const reading = field.read(cell, unit ?? '');
  if ('value' in reading) return { value: reading.value, defaulted: false };
  log.fault(table, place, cell, reading.expected);
  return { value: undefined, defaulted: false };
}

/** What a field is where nothing is given: its default, worth a word where the default has a source. */
export function whereEmpty({ fallback }: Field<unknown>): { value: unknown; defaulted: boolean } {
  return { value: fallback?.value, defaulted: fallback !== undefined && fallback.source !== '' };
}

/** True for a unit cell that says that there is none: empty, a dash, or the word that labels the row of units. */
export const isNoUnit = (cell: Cell) => isBlank(cell) || /^([-–—]|units?)$/i.test(plain(String(cell)));

/** Reads the unit cell of a field; undefined where there is nothing to measure, or after a fault. */
export function readUnit(
  table: string,
  field: Field<unknown>,
  cell: Cell,
  place: Place,
  log: FaultLog,
): string | undefined {
  if (field.unit === undefined) {
    if (!isNoUnit(cell)) log.fault(table, place, cell, `no unit for ${field.label}`);
    return undefined;
  }
  const unit = unitFor(field.unit, cell);
  if ('expected' in unit) {
    log.fault(table, place, cell, unit.expected);
    return undefined;
  }
  if (field.unit.startsWith('currency')) log.priced(table, place, cell, unit.value.slice(0, 3));
  return unit.value;
}
