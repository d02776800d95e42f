import { distance } from 'fastest-levenshtein';
import { type Cell, isBlank, nameKey, plain } from './cell.ts';
import type { FaultLog } from './faults.ts';
import { type Field, unitFor } from './field.ts';

export interface Place {
  readonly row: number;
  readonly rowName?: string;
  readonly column: string;
}

/** The label a typed name was probably meant to be: at most a quarter of its letters differ. */
function meantLabel(typed: string, labels: readonly string[]): string | undefined {
  return labels.find((label) => distance(nameKey(typed), nameKey(label)) <= Math.ceil(label.length / 4));
}

/** A column or row that is not the table's own: probably a slip (a fault), else left alone and said so. */
export function reportUnknown(
  table: string,
  what: 'column' | 'attribute',
  typed: string,
  row: number,
  labels: readonly string[],
  log: FaultLog,
): void {
  const meant = meantLabel(typed, labels);
  if (meant !== undefined) log.fault(table, { row, column: what }, typed, `"${meant}"`);
  else log.remark(table, `${what} "${plain(typed)}" is not one of this table's and is not read`);
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
    const silent = field.fallback === undefined || field.fallback.source === '';
    return { value: field.fallback?.value, defaulted: !silent };
  }
  if (field.unit !== undefined && unit === undefined) return { value: undefined, defaulted: false };
  const reading = field.read(cell, unit ?? '');
  if ('value' in reading) return { value: reading.value, defaulted: false };
  log.fault(table, place, cell, reading.expected);
  return { value: undefined, defaulted: false };
}

/** Reads the unit cell of a field; undefined where there is nothing to measure, or after a fault. */
export function readUnit(
  table: string,
  field: Field<unknown>,
  cell: Cell,
  place: Place,
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
