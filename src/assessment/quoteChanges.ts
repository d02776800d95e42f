import { readCatalogue } from '../tables/catalogue.ts';
import { type Fault, faultText } from '../tables/faults.ts';
import { type InputChange, inputChanges } from '../tables/inputChanges.ts';
import type { Inputs } from '../tables/inputs.ts';
import { readQuoteTerms } from '../tables/quote.ts';
import { compare } from './assess.ts';
import { type KeyFigure, type Quote, quoteOf } from './quote.ts';
import { notKnown, type QuoteCell } from './quoteSection.ts';
import { cellText } from './quoteText.ts';
import { softwareVersion } from './version.ts';

export type QuoteReading =
  | { readonly quote: Quote; readonly faults: readonly [] }
  | { readonly quote: undefined; readonly faults: readonly Fault[] };

/** The quote that inputs make, or the faults that stand in its way. @throws RangeError for a discount beyond the price */
export function quoteFrom(inputs: Inputs): QuoteReading {
  const { catalogue, faults } = readCatalogue(inputs);
  if (catalogue === undefined) return { quote: undefined, faults };
  const reading = readQuoteTerms(inputs.quote, catalogue);
  return reading.terms === undefined
    ? { quote: undefined, faults: reading.faults }
    : { quote: quoteOf(compare(catalogue), reading.terms), faults: [] };
}

/** What an issued quote is kept by. */
export interface KeptQuote {
  readonly inputs: Inputs;
  readonly quote: Quote;
}

/** What became of one of the figures that decide a sale. */
export interface FigureChange {
  readonly label: string;
  readonly unit: string;
  readonly quoted: string;
  /** "not known" while the tables have faults */
  readonly now: string;
}

/** Where an issued quote stands against the workbook of today. */
export interface QuoteDrift {
  readonly changes: readonly InputChange[];
  readonly figures: readonly FigureChange[];
  readonly remarks: readonly string[];
}

const textOf = (cell: QuoteCell | undefined) => (cell === undefined ? notKnown : cellText(cell));

const withUnit = ({ value, unit }: KeyFigure) => `${textOf(value)} ${unit}`;

/** Figures by their place, because a label may say that a total is not complete. */
function figureChanges(quoted: readonly KeyFigure[], now: readonly KeyFigure[] | undefined): FigureChange[] {
  return quoted.map((figure, index): FigureChange => {
    const next = now?.[index];
    const sameUnit = next === undefined || next.unit === figure.unit;
    return {
      label: figure.label,
      unit: sameUnit ? figure.unit : '',
      quoted: sameUnit ? textOf(figure.value) : withUnit(figure),
      now: sameUnit ? textOf(next?.value) : withUnit(next),
    };
  });
}

/** The quote that inputs make now, or in words why they make none. */
export interface QuoteAttempt {
  readonly quote: Quote | undefined;
  readonly remarks: readonly string[];
}

export function attemptQuote(inputs: Inputs): QuoteAttempt {
  try {
    const { quote, faults } = quoteFrom(inputs);
    return { quote, remarks: faults.map(faultText) };
  } catch (error) {
    return { quote: undefined, remarks: [error instanceof Error ? error.message : String(error)] };
  }
}

/** What moved since a quote was issued, and what a revision issued now would say instead. */
export function quoteDrift(
  kept: KeptQuote,
  now: Inputs,
  today: QuoteAttempt = attemptQuote(now),
): QuoteDrift {
  const changes = inputChanges(kept.inputs, now);
  const faults = today.quote ? [] : ['No figures of today: the tables have faults.', ...today.remarks];
  return {
    changes,
    figures: figureChanges(kept.quote.keyFigures, today.quote?.keyFigures),
    remarks: [...faults, ...softwareRemarks(kept)],
  };
}

/** A newer script may compute other figures from the same inputs: told apart from inputs that moved. */
function softwareRemarks({ inputs, quote }: KeptQuote): string[] {
  if (quote.softwareVersion === softwareVersion) return [];
  const { quote: again } = attemptQuote(inputs);
  const figures = figureChanges(quote.keyFigures, again?.keyFigures).filter(isMoved);
  const list = figures.length === 0 ? 'the same figures' : figures.map(figureText).join('; ');
  return [
    `Quoted with version ${quote.softwareVersion}; version ${softwareVersion} makes of the same inputs: ${list}.`,
  ];
}

const isMoved = ({ quoted, now }: FigureChange) => quoted !== now;

const figureText = ({ label, quoted, now, unit }: FigureChange) =>
  `${label} ${quoted} → ${now} ${unit}`.trimEnd();

const mostTold = 3; // inputs named in one line

/** A drift in one line: how many inputs moved, the first of them, and what that does to price and payload. */
export function driftText({ changes, figures, remarks }: QuoteDrift): string {
  if (changes.length === 0) return ['as issued', ...remarks].join('. ');
  const told = changes.slice(0, mostTold).map(changeText);
  const more = changes.length > mostTold ? [`and ${changes.length - mostTold} more`] : [];
  const moved = figures.filter(isMoved);
  return [
    `${changes.length === 1 ? '1 input' : `${changes.length} inputs`} moved: ${[...told, ...more].join('; ')}`,
    moved.length === 0 ? 'Price and payload are as quoted' : moved.map(figureText).join('; '),
    ...remarks,
  ].join('. ');
}

/** One moved input: `equipment, radio, price: 1999.95 EUR → 2100 EUR`. */
export const changeText = ({ table, row, column, was, is }: InputChange) =>
  `${table}, ${row}, ${column}: ${was || 'nothing'} → ${is || 'nothing'}`;
