import { argumentOfTable } from '../functions/tableArguments.ts';
import type { Field, Fields } from '../tables/field.ts';
import type { Table } from '../tables/table.ts';
import { fromSi } from '../units.ts';
import type { FieldLayout, TableLayout } from './layout.ts';

/** The value that stands for an empty cell, in words. */
function fallbackText({ fallback, unit, customaryUnit }: Field<unknown>): string {
  if (fallback === undefined || Array.isArray(fallback.value)) return '';
  const { value } = fallback;
  const isQuantity = typeof value === 'number' && unit !== undefined && !unit.startsWith('currency');
  const shown = isQuantity
    ? `${Number(fromSi(unit as never, value, customaryUnit).toPrecision(4))} ${customaryUnit}`
    : typeof value === 'boolean'
      ? value
        ? 'TRUE'
        : 'FALSE'
      : String(value);
  const source = fallback.source === '' ? '' : ` (${fallback.source})`;
  return `; where empty, default ${shown}${source}`;
}

/** Numbers of every size that some field takes. */
const samples = [0.05, 0.35, 0.75, 1, 3, 7, 50, 700, 3000];

const takesNumbers = (field: Field<unknown>) =>
  samples.some((sample) => {
    const reading = field.read(sample, field.customaryUnit);
    return 'value' in reading && typeof reading.value === 'number';
  });

export function fieldLayout(field: Field<unknown>, namesFrom?: string): FieldLayout {
  const { label, help, unit, customaryUnit, choices } = field;
  const isFlag = choices?.[0] === 'TRUE';
  const tickBox = isFlag && field.fallback?.value === false;
  return {
    label,
    help: `${help}${fallbackText(field)}`,
    ...(unit && { unit }),
    customaryUnit,
    ...(choices && !tickBox && { choices }),
    ...(tickBox && { tickBox }),
    ...(takesNumbers(field) && { isNumber: true }),
    ...(namesFrom && { namesFrom }),
  };
}

/** An input table from its declaration, with its title, the room kept for more, and where its names come from. */
export function tableLayout(
  table: Table<Fields>,
  options: {
    title: string;
    room: number;
    names?: Readonly<Record<string, string>>;
    perRecordOf?: TableLayout['perRecordOf'];
  },
): TableLayout {
  return {
    table: table.name,
    range: argumentOfTable(table.name),
    title: options.title,
    shape: table.shape,
    fields: Object.values(table.fields).map((field) => fieldLayout(field, options.names?.[field.label])),
    perRecordOf: options.perRecordOf ?? [],
    room: options.room,
  };
}
