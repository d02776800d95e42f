import { dateFormat, dateFromSerial, isDate, serialFromDate } from './dates.ts';
import type { Engine, FunctionResultObject } from './engine.ts';

/** What Google calls the engine's errors. From memory; a loop and a blocked spill are both #REF! there. */
const googleErrors: Readonly<Record<string, string>> = {
  '#ERROR': '#ERROR!',
  '#BAD_EXPR': '#ERROR!',
  '#REF': '#REF!',
  '#CYCLE': '#REF!',
  '#SPILL!': '#REF!',
};

/** A cell as a script gets it: blank as '', dates as Date, an error as its text. */
export function scriptValue(
  engine: Engine,
  cell: FunctionResultObject | undefined,
): string | number | boolean | Date {
  const value = cell?.value ?? '';
  if (typeof value === 'string' && engine.helpers.isEvaluationError(value)) {
    return googleErrors[value] ?? value;
  }
  const isDated = typeof value === 'number' && cell?.format && engine.helpers.isDateTimeFormat(cell.format);
  return isDated ? dateFromSerial(value as number) : value;
}

export interface CellContent {
  /** What is typed into the engine's cell. */
  readonly content: string;
  /** Format a date needs when the cell has none. */
  readonly format?: string;
}

/**
 * What a script's value types into a cell, by Google's rules: text is read as if a person typed it (`=` begins a
 * formula, `TRUE`, `25%` and `2024-05-06` become what they look like, a leading apostrophe keeps text as it is), '' and
 * null clear the cell.
 * @throws Error for anything a cell can't hold, and for text without an apostrophe that Google would read as a formula
 * or a date but this engine reads as text
 */
export function typedContent(value: unknown): CellContent {
  if (value === null || value === '') return { content: '' };
  if (typeof value === 'boolean') return { content: value ? 'TRUE' : 'FALSE' };
  if (typeof value === 'number') return { content: numberContent(value) };
  if (isDate(value)) return { content: numberContent(serialFromDate(value)), format: dateFormat(value) };
  if (typeof value !== 'string') throw new Error(`a cell can't hold ${describe(value)}`);
  if (value.startsWith('=')) return { content: withCommas(value) };
  if (readDifferently.test(value)) {
    throw new Error(`'${value}' may be read as a formula or a date; begin it with an apostrophe`);
  }
  return { content: value };
}

/** Numbers beyond these are text to the engine. */
const smallest = 1e-300;
const largest = 1e300;

function numberContent(value: number): string {
  const size = Math.abs(value);
  if (!(size === 0 || (size >= smallest && size <= largest))) throw new Error(`a cell can't hold ${value}`);
  return String(value === 0 ? 0 : value);
}

const month =
  '(?:jan(?:uary)?|feb(?:ruary)?|mar(?:ch)?|apr(?:il)?|may|june?|july?|aug(?:ust)?|sept?(?:ember)?|oct(?:ober)?|nov(?:ember)?|dec(?:ember)?)';
/** Text that begins with a sign but is no number, and a month's name with a day or a year. */
const readDifferently = new RegExp(
  String.raw`^(?:\+|-(?![\d.,]+%?$)|${month} \d{1,4}(?:$|,)|\d{1,2}[ -]${month}(?:$|[ ,-]))`,
  'i',
);

function describe(value: unknown): string {
  return Array.isArray(value) ? 'an array' : typeof value === 'object' ? 'an object' : String(value);
}

/** Google takes `;` between arguments in every locale; the engine wants `,`. Rows of a literal array keep theirs. */
function withCommas(formula: string): string {
  let depth = 0;
  return formula.replace(/"[^"]*"|'[^']*'|[{};]/g, (token) => {
    if (token === '{') depth++;
    if (token === '}') depth--;
    return token === ';' && depth === 0 ? ',' : token;
  });
}
