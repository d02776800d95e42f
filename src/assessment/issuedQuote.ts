import type { Inputs } from '../tables/inputs.ts';
import type { Quote } from './quote.ts';

/** A quote as it was issued: plain data, kept as text. */
export interface IssuedQuote {
  readonly number: number;
  /** A for the first, B for the first reissue … */
  readonly revision: string;
  /** day of issue and last day of validity, such as 2026-05-31 */
  readonly date: string;
  readonly validUntil: string;
  /** SHA-256 of the inputs' canonical text, in hexadecimal */
  readonly digest: string;
  readonly inputs: Inputs;
  readonly quote: Quote;
}

export type QuoteKey = Pick<IssuedQuote, 'number' | 'revision'>;

const prefix = 'Q-';

/** How a quote is called, without its revision: Q-0007. */
export const quoteName = (number: number) => `${prefix}${String(number).padStart(4, '0')}`;

/** Name with revision; also the name of the sheet that holds the copy. */
export const keyText = ({ number, revision }: QuoteKey) => `${quoteName(number)} ${revision}`;

/** The number in a quote's name, undefined where it is none. */
export function numberOfName(name: string): number | undefined {
  const digits = /^Q-(\d{4,})$/.exec(name)?.[1];
  return digits === undefined ? undefined : Number(digits);
}

/** A, B, … Z, AA, AB … */
export function revisionAfter(revision: string): string {
  const head = revision.slice(0, -1);
  const last = revision.charCodeAt(revision.length - 1);
  if (last < 'Z'.charCodeAt(0)) return head + String.fromCharCode(last + 1);
  return `${head === '' ? 'A' : revisionAfter(head)}A`;
}

/** The later of two revisions of one quote. */
export const laterRevision = (one: string, other: string) =>
  one.length - other.length || (one < other ? -1 : one === other ? 0 : 1);

/** A day so many days after another, both as 2026-05-31. */
export function dayAfter(date: string, days: number): string {
  const [year = 0, month = 1, day = 1] = date.split('-').map(Number);
  return new Date(Date.UTC(year, month - 1, day + days)).toISOString().slice(0, 10);
}
