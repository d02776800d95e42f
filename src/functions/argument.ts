import { type Cell, type Grid, isBlank, nameKey, negligible, numberIn } from '../tables/cell.ts';
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
export interface NumberLimits {
  measure?: Measure;
  above?: number;
  atLeast?: number;
  atMost?: number;
  /** A word on what probably went wrong below the lower limit, or beyond the upper. */
  hintBelow?: string;
  hintBeyond?: string;
}

const withHint = (hint: string | undefined) => (hint === undefined ? '' : ` (${hint})`);

export function parseNumber(name: string, options: NumberLimits, cell: Cell, place?: Place): number {
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
export interface NumberOptions extends NumberLimits {
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

/** A result in the unit of the contract. */
export function inUnit(value: number, result: Measure | undefined): number {
  return result ? fromSi(result.kind, value, result.unit) : value;
}
