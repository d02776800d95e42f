import { type Cell, type Grid, isBlank, isErrorText, nameKey, numberIn } from '../tables/cell.ts';
import { fromSi, type QuantityKind, toSi } from '../units.ts';
import { missing, mustBe, type Place } from './messages.ts';

/** A unit that is part of a contract: the number in the sheet is in `unit`, the number computed with is SI. */
export interface Measure {
  readonly kind: QuantityKind;
  readonly unit: string;
}

export const measure = (kind: QuantityKind, unit: string): Measure => ({ kind, unit });

/** What every argument says about itself: the one source of help, validation, message and label. */
interface Described {
  readonly name: string;
  readonly help: string;
  readonly optional: boolean;
  /** What stands for an argument that is not given, in words for the help. */
  readonly omitted: string;
}

/** A number, or a range of numbers to compute one result for each. */
export interface NumberArgument<T extends number | undefined> extends Described {
  readonly type: 'number';
  readonly measure: Measure | undefined;
  readonly parse: (cell: Cell, place?: Place) => T;
}

/** A word out of a few. */
export interface WordArgument<T extends string> extends Described {
  readonly type: 'word';
  readonly choices: readonly T[];
  readonly parse: (cell: Cell | Grid) => T;
}

/** A range whose rows are records. */
export interface RowsArgument<R> extends Described {
  readonly type: 'rows';
  readonly columns: readonly string[];
  readonly parse: (cells: Cell | Grid) => R;
}

export type Argument =
  | NumberArgument<number>
  | NumberArgument<number | undefined>
  | WordArgument<string>
  | RowsArgument<unknown>;
export type ValueOf<A> =
  A extends NumberArgument<infer T>
    ? T
    : A extends WordArgument<infer W>
      ? W
      : A extends RowsArgument<infer R>
        ? R
        : never;

/** Limits of a number, in its own unit. */
interface NumberLimits {
  measure?: Measure;
  above?: number;
  atLeast?: number;
  atMost?: number;
  /** A word on what probably went wrong below the lower limit, or beyond the upper. */
  hintBelow?: string;
  hintBeyond?: string;
}

/** A remainder of rounding, such as 0.1 + 0.2 − 0.3, is not above 0. */
const negligible = 1e-12;

const withHint = (hint: string | undefined) => (hint === undefined ? '' : ` (${hint})`);

function parseNumber(name: string, options: NumberLimits, cell: Cell, place?: Place): number {
  const value = numberIn(cell);
  if (typeof value !== 'number') throw mustBe(name, value.fault, cell, place);
  const { above, atLeast, atMost, hintBelow, hintBeyond } = options;
  const unit = options.measure ? ` ${options.measure.unit}` : '';
  if (above !== undefined && value <= above + negligible)
    throw mustBe(name, `above ${above}${unit}`, cell, place);
  if (atLeast !== undefined && value < atLeast)
    throw mustBe(name, `at least ${atLeast}${unit}${withHint(hintBelow)}`, cell, place);
  if (atMost !== undefined && value > atMost)
    throw mustBe(name, `at most ${atMost}${unit}${withHint(hintBeyond)}`, cell, place);
  return options.measure ? toSi(options.measure.kind, value, options.measure.unit) : value;
}

/** What an argument is, for the help; limits, for the check. */
interface NumberOptions extends NumberLimits {
  help: string;
}

/** A required number. */
export function given(name: string, options: NumberOptions): NumberArgument<number> {
  return {
    type: 'number',
    name,
    help: options.help,
    optional: false,
    omitted: '',
    measure: options.measure,
    parse: (cell, place) => {
      if (isBlank(cell)) throw missing(name, place);
      return parseNumber(name, options, cell, place);
    },
  };
}

/** A number with a default, in the argument's own unit. */
export function defaulted(name: string, fallback: number, options: NumberOptions): NumberArgument<number> {
  return {
    type: 'number',
    name,
    help: options.help,
    optional: true,
    omitted: String(fallback),
    measure: options.measure,
    parse: (cell, place) => parseNumber(name, options, isBlank(cell) ? fallback : cell, place),
  };
}

/** A number whose absence means something other than a number: standard temperature, no turbocharger. */
export function optional(
  name: string,
  omitted: string,
  options: NumberOptions,
): NumberArgument<number | undefined> {
  return {
    type: 'number',
    name,
    help: options.help,
    optional: true,
    omitted,
    measure: options.measure,
    parse: (cell, place) => (isBlank(cell) ? undefined : parseNumber(name, options, cell, place)),
  };
}

/** One of a few words. */
export function word<const T extends string>(
  name: string,
  choices: readonly T[],
  options: { help: string },
): WordArgument<T> {
  return {
    type: 'word',
    name,
    help: options.help,
    optional: false,
    omitted: '',
    choices,
    parse: (cell) => {
      const list = choices.map((choice) => `"${choice}"`).join(' or ');
      if (Array.isArray(cell)) throw mustBe(name, `one cell, ${list}`, cell);
      if (isBlank(cell as Cell)) throw missing(name);
      const found = choices.find((choice) => nameKey(choice) === nameKey(String(cell)));
      if (found === undefined) throw mustBe(name, list, cell as Cell);
      return found;
    },
  };
}

/** One column of a rows argument: a number with its limits, or a text that names the row. */
export interface RowColumn extends NumberLimits {
  readonly name: string;
  readonly text?: boolean;
}

type ColumnValues<C extends readonly RowColumn[]> = {
  readonly [K in keyof C]: C[K] extends { text: true } ? string : number;
};
/** The values of the columns, then the number of the row. */
type RowOf<C extends readonly RowColumn[]> = readonly [...ColumnValues<C>, row: number];

/** Records in the rows of a range: every column must be filled; empty rows are passed over. Names have no case. */
export function rows<const C extends readonly RowColumn[]>(
  name: string,
  columns: C,
  options: { help: string; check?: (records: readonly RowOf<C>[]) => void },
): RowsArgument<RowOf<C>[]> {
  const wanted = columns.map((column) => column.name).join(', ');
  return {
    type: 'rows',
    name,
    help: options.help,
    optional: false,
    omitted: '',
    columns: columns.map((column) => column.name),
    parse: (cells) => {
      const grid: Grid = Array.isArray(cells) ? (cells as Grid) : [[cells as Cell]];
      const records = grid.flatMap((row, index): RowOf<C>[] => {
        if (row.every(isBlank)) return [];
        const surplus = row.findIndex((cell, at) => at >= columns.length && !isBlank(cell));
        if (surplus >= 0) {
          throw mustBe(name, `rows of ${columns.length}: ${wanted}`, row[surplus], {
            row: index + 1,
            column: surplus + 1,
          });
        }
        const values = columns.map((column, at) => {
          const cell = row[at];
          const place = { row: index + 1, column: at + 1 };
          if (isBlank(cell)) throw mustBe(name, `rows of ${wanted}`, cell, place);
          if (!column.text) return parseNumber(`${name} ${column.name}`, column, cell, place);
          if (typeof cell !== 'string' || isErrorText(cell))
            throw mustBe(`${name} ${column.name}`, 'a name', cell, place);
          return nameKey(cell);
        });
        return [[...values, index + 1] as unknown as RowOf<C>];
      });
      if (records.length === 0) throw mustBe(name, `a range with rows of ${wanted}`, '');
      options.check?.(records);
      return records;
    },
  };
}

/** Refuses a range in which a value that tells rows apart stands twice. */
export function requireDistinct(
  name: string,
  keys: readonly (string | number)[],
  rowNumbers: readonly number[],
): void {
  keys.forEach((key, index) => {
    if (keys.indexOf(key) !== index)
      throw mustBe(name, 'another in every row', key, { row: rowNumbers[index] as number, column: 1 });
  });
}

/** Numbers of one kind in a range of any shape, row by row; every cell must be filled. */
export function list(name: string, options: NumberOptions): RowsArgument<number[]> {
  return {
    type: 'rows',
    name,
    help: options.help,
    optional: false,
    omitted: '',
    columns: [name],
    parse: (cells) => {
      const grid: Grid = Array.isArray(cells) ? (cells as Grid) : [[cells as Cell]];
      return grid.flatMap((row, r) =>
        row.map((cell, c) => {
          const place = { row: r + 1, column: c + 1 };
          if (isBlank(cell)) throw missing(name, place);
          return parseNumber(name, options, cell, place);
        }),
      );
    },
  };
}

/** A result in the unit of the contract. */
export function inUnit(value: number, result: Measure | undefined): number {
  return result ? fromSi(result.kind, value, result.unit) : value;
}
