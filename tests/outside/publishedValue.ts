/**
 * Values that others have published, as data. Each says where it is from and how far that was verified; a test walks them
 * all, and the table in DEVELOPERS.md is made from them.
 */
import { call } from '../../src/functions/library.ts';
import type { Cell, Grid } from '../../src/tables/cell.ts';

/**
 * read: seen in the document or in a stored copy of it; secondary: quoted by somebody else; derived: computed by another
 * route from what the source defines; from memory: not seen, known.
 */
export const statuses = ['read', 'secondary', 'derived', 'from memory'] as const;
export type Status = (typeof statuses)[number];

/** In the unit of the value, or a part of it. */
export type Tolerance = number | { readonly relative: number };

export interface PublishedValue {
  readonly what: string;
  /** Document, section */
  readonly source: string;
  readonly status: Status;
  readonly expected: number;
  /** The source's own rounding, or what its rounded inputs make of the result */
  readonly tolerance: Tolerance;
  readonly note?: string;
  /** Ours, through the custom function where there is one, in the unit of the value */
  readonly compute: () => number;
}

/** What a source prints by mistake: ours must not agree with it. */
export interface Misprint extends Omit<PublishedValue, 'expected'> {
  readonly printed: number;
}

export interface Topic {
  readonly topic: string;
  readonly values: readonly PublishedValue[];
  readonly misprints?: readonly Misprint[];
}

/** How far a number may be from the published one, in its unit. */
export const allowance = (published: number, tolerance: Tolerance): number =>
  typeof tolerance === 'number' ? tolerance : tolerance.relative * Math.abs(published);

/** One number out of a custom function, called with cells as a sheet calls it. */
export function fromFunction(name: string, cells: readonly (Cell | Grid)[], result = 0): number {
  const answer = call(name, cells);
  const value = Array.isArray(answer) ? answer[0]?.[result] : answer;
  if (typeof value !== 'number') throw new Error(`${name} gave ${String(value)} as result ${result + 1}`);
  return value;
}
