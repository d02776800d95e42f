import { type Display, numberText, type Shown } from './display.ts';
import type { Coins } from './money.ts';

/** A number as a sheet holds it and as it is printed: digits carry meaning, and both have the same. */
export interface QuoteNumber {
  readonly number: number;
  readonly text: string;
}

export type QuoteCell = string | QuoteNumber;

export interface QuoteRow {
  readonly cells: readonly QuoteCell[];
  /** a sum of lines above it */
  readonly isTotal?: boolean;
}

/** One table of a quote. Plain data: it goes into a block, a frozen sheet and a printed page. */
export interface QuoteSection {
  readonly title: string;
  readonly columns: readonly string[];
  readonly rows: readonly QuoteRow[];
  /** said below it */
  readonly notes: readonly string[];
}

export const row = (...cells: readonly QuoteCell[]): QuoteRow => ({ cells });
export const totalRow = (...cells: readonly QuoteCell[]): QuoteRow => ({ cells, isTotal: true });

export function section(
  title: string,
  columns: readonly string[],
  rows: readonly QuoteRow[],
  notes: readonly string[] = [],
): QuoteSection {
  return { title, columns, rows, notes };
}

export const notKnown = 'not known';

/** A result in the workbook's units; "not known" where there is none. */
export function shownNumber(display: Display, shown: Shown, value: number | undefined): QuoteCell {
  if (value === undefined) return notKnown;
  const number = display.cell(shown, value);
  return typeof number === 'number' ? { number, text: display.number(shown, value) } : notKnown;
}

/** An amount of money with all its decimals. */
export function money(coins: Coins, amount: number): QuoteNumber {
  return { number: coins.amount(amount), text: coins.text(amount) };
}

export function percent(fraction: number): QuoteNumber {
  const number = Number((fraction * 100).toPrecision(6));
  return { number, text: numberText(number, 10 ** -decimalsIn(number)) };
}

function decimalsIn(number: number): number {
  return String(number).split('.')[1]?.length ?? 0;
}
