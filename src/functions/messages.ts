/** Every word a custom function says when it refuses something, in one place. */
import { type Cell, type Grid, quoted } from '../tables/cell.ts';

/** Where in a range a value stood: row and column counted from 1; undefined for a single cell. */
export interface Place {
  readonly row: number;
  readonly column: number;
}

const at = (place: Place | undefined) =>
  place === undefined ? '' : ` (row ${place.row}, column ${place.column})`;

/** `NAME: argument must be above 0 ft, got -3 (row 2, column 1)` */
export function mustBe(argument: string, expected: string, got: Cell | Grid, place?: Place): RangeError {
  const shown = Array.isArray(got) ? 'a range' : quoted(got as Cell);
  return new RangeError(`${argument} must be ${expected}, got ${shown}${at(place)}`);
}

export const missing = (argument: string, place?: Place) =>
  new RangeError(`${argument} must be given, got an empty cell${at(place)}`);

export const shapeMismatch = (argument: string, rows: number, columns: number, expected: string) =>
  new RangeError(
    `${argument} must be one cell or ${expected} like the ranges before it, got ${rows} by ${columns}`,
  );

export const oneColumn = (argument: string, columns: number) =>
  new RangeError(
    `${argument} must be one cell or one column, because each gives a row of results; got ${columns} columns`,
  );

export const notFinite = (what: string) =>
  new RangeError(`the arguments lead to no finite ${what}; check them against each other`);

export const tooManyArguments = (most: number, got: number) =>
  new RangeError(`takes at most ${most} arguments, got ${got}`);

/** What an error says; it may come from another frame or realm, whose Error is not this one's. */
export const messageOf = (error: unknown) =>
  String((error as { readonly message?: unknown } | null | undefined)?.message ?? error);

/** The message a person sees: the function's name, what is wrong, and where. */
export function refusal(name: string, error: unknown, place?: Place): RangeError {
  return new RangeError(`${name}: ${messageOf(error)}${at(place)}`);
}
