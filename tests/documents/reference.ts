/**
 * REFERENCE.md: every custom function and every table, from the one description of each argument and field. Limits are
 * what the code itself says when it refuses a number beyond them.
 */
import { airFormulas } from '../../src/functions/airFormulas.ts';
import type { Argument } from '../../src/functions/argument.ts';
import { balanceFormulas } from '../../src/functions/balanceFormulas.ts';
import { coolingFormulas } from '../../src/functions/coolingFormulas.ts';
import { engineFormulas } from '../../src/functions/engineFormulas.ts';
import { flightFormulas } from '../../src/functions/flightFormulas.ts';
import type { Formula } from '../../src/functions/formula.ts';
import { tableFunctions } from '../../src/functions/library.ts';
import { systemFormulas } from '../../src/functions/systemFormulas.ts';
import type { TableFunction } from '../../src/functions/tableFunction.ts';
import { weightFormulas } from '../../src/functions/weightFormulas.ts';
import { tableNames } from '../../src/tables/catalogue.ts';
import type { Field, Fields } from '../../src/tables/field.ts';
import type { Table } from '../../src/tables/table.ts';
import { unitsOf } from '../../src/units.ts';
import { everyTable } from './tables.ts';

export const families: readonly (readonly [title: string, formulas: readonly Formula[]])[] = [
  ['Air', airFormulas],
  ['Engine and fuel', engineFormulas],
  ['Weight', weightFormulas],
  ['Balance and loading', balanceFormulas],
  ['Flight', flightFormulas],
  ['Cooling', coolingFormulas],
  ['Propeller, mount, electrics', systemFormulas],
];

const farBelow = -1e11;
const farAbove = 1e11;

const cell = (text: string) => text.replaceAll('|', '\\|').replaceAll('\n', ' ');
const tableOf = (header: readonly string[], rows: readonly (readonly string[])[]) =>
  [header, header.map(() => '---'), ...rows].map((row) => `| ${row.map(cell).join(' | ')} |`).join('\n');

/** The limits that an argument's own refusals name, the lower before the upper. */
export function limitsOf(argument: Argument): string[] {
  if (argument.type !== 'number') return [];
  return [farBelow, farAbove].flatMap((number) => {
    try {
      argument.parse(number);
      return [];
    } catch (error) {
      return /must be (.+), got/.exec((error as Error).message)?.[1] ?? [];
    }
  });
}

function takes(argument: Argument): string {
  if (argument.type === 'word') return argument.choices.map((choice) => `"${choice}"`).join(' or ');
  if (argument.type === 'rows') return `range of columns ${argument.columns.join(', ')}`;
  return ['number', ...limitsOf(argument)].join(', ');
}

const unitOf = (argument: Argument) => (argument.type === 'number' ? (argument.measure?.unit ?? '') : '');

const call = ({ name, arguments: all }: Formula) =>
  `\`${name}(${all.map((each) => (each.optional ? `[${each.name}]` : each.name)).join(', ')})\``;

function formulaText(formula: Formula): string {
  const results = formula.results.map(({ label, measure }) =>
    measure ? `${label} (${measure.unit})` : label,
  );
  return [
    `#### ${formula.name}`,
    `${call(formula)} gives ${results.join(', ')}.`,
    `${formula.help} Source: ${formula.source}.`,
    tableOf(
      ['argument', 'unit', 'takes', 'when empty', 'what it is'],
      formula.arguments.map((each) => [
        each.name,
        unitOf(each),
        takes(each),
        each.optional ? each.omitted || 'left out' : 'refused',
        each.help,
      ]),
    ),
  ].join('\n\n');
}

function tableFunctionLine({ name, help, arguments: all }: TableFunction): string[] {
  const own = all.slice(tableNames.length);
  return [`\`${name}\``, help, own.map((each) => (each.optional ? `[${each.name}]` : each.name)).join(', ')];
}

function unitText({ unit, customaryUnit }: Field<unknown>): string {
  if (unit === undefined) return '';
  if (unit === 'currency') return 'currency code';
  if (unit === 'currency per volume') return `such as ${customaryUnit}`;
  return unitsOf(unit).join(', ');
}

/** What a field's own refusals say of the numbers it takes. */
function fieldTakes(field: Field<unknown>): string {
  if (field.choices !== undefined) return field.choices.join(', ');
  const unit = field.customaryUnit;
  const refusals = [farBelow, farAbove].flatMap((number) => {
    const reading = field.read(number, unit);
    return 'expected' in reading ? [reading.expected.replace(/^a number (of )?/, '')] : [];
  });
  return [...new Set(refusals)].join(', ');
}

function whenEmpty({ required, fallback, choices }: Field<unknown>): string {
  if (required) return 'a fault';
  if (fallback === undefined) return 'not known';
  const { value, source } = fallback;
  const text =
    Array.isArray(value) && value.length === 0
      ? 'none'
      : choices?.includes('TRUE')
        ? String(value).toUpperCase()
        : typeof value === 'number'
          ? String(Number(value.toPrecision(4)))
          : String(value);
  return source === '' ? text : `${text}, shown as a default (${source})`;
}

function tableText({ name, help, required, shape, fields }: Table<Fields>): string {
  const layout = {
    rows: 'a header row, a row of units, then one record a row',
    attributes: 'one attribute a row',
    across: 'one attribute a row, one record a column',
  }[shape];
  return [
    `#### ${name}`,
    `${help}: ${layout}. ${required ? 'Required.' : 'May be left out.'}`,
    tableOf(
      [shape === 'rows' ? 'column' : 'attribute', 'units', 'takes', 'when empty', 'what it is'],
      Object.values(fields).map((field) => [
        field.label,
        unitText(field),
        fieldTakes(field),
        whenEmpty(field),
        field.help,
      ]),
    ),
  ].join('\n\n');
}

export function reference(): string {
  return `${[
    '# Reference',
    'Every custom function and every table. Written by `npm run documents` from the descriptions that also make the help in the sheet, the checks and the messages; a test holds it against them.',
    '## Functions for any cell',
    'Each number argument takes a cell or a range; with ranges, which have one shape, a result comes for each row. A number outside its limits, or of the wrong kind, is refused with a message that names the argument, the place and the limit.',
    ...families.flatMap(([title, formulas]) => [`### ${title}`, ...formulas.map(formulaText)]),
    '## Functions of the tables',
    `Each takes ${tableNames.length} tables with their headers, in the order below, and gives one labelled block; a table that may be left out may be an empty cell. Some take more after the tables.`,
    tableOf(['function', 'gives', 'takes after the tables'], tableFunctions.map(tableFunctionLine)),
    '## Tables',
    'Columns and attributes are found by their names, in any order; further columns are kept and not read. A quantity may be in any of its units, which stands beside it.',
    ...everyTable.map(({ table }) => tableText(table)),
  ].join('\n\n')}\n`;
}
