import type { Catalogue } from '../tables/catalogue.ts';
import { type Cell, quoted } from '../tables/cell.ts';
import type { Fault } from '../tables/faults.ts';
import { faultsBlock } from './faultsBlock.ts';
import { type IssuedQuote, keyText } from './issuedQuote.ts';
import type { Quote } from './quote.ts';
import type { QuoteCell, QuoteSection } from './quoteSection.ts';

/** What a line of a quote on a sheet is, for whoever gives it its looks. */
export type QuoteLineKind = 'title' | 'party' | 'heading' | 'columns' | 'row' | 'total' | 'note' | 'gap';

export interface QuoteLine {
  readonly kind: QuoteLineKind;
  readonly cells: readonly QuoteCell[];
}

const line = (kind: QuoteLineKind, ...cells: readonly QuoteCell[]): QuoteLine => ({ kind, cells });

function sectionLines({ title, columns, rows, notes }: QuoteSection): QuoteLine[] {
  return [
    line('gap', ''),
    line('heading', title),
    ...(columns.some((column) => column !== '') ? [line('columns', ...columns)] : []),
    ...rows.map(({ cells, isTotal }) => line(isTotal ? 'total' : 'row', ...cells)),
    ...notes.map((note) => line('note', note)),
  ];
}

/** The whole quote as lines of a sheet: what it is called, its parties, its figures, its tables. */
function quoteLines(quote: Quote, title: string, issue: readonly QuoteLine[], valid: QuoteLine): QuoteLine[] {
  const { dealer, customer, preparedBy, keyFigures } = quote;
  return [
    line('title', title),
    ...issue,
    valid,
    line('party', 'Dealer', dealer.join(', ') || 'not given'),
    line('party', 'Customer', customer.join(', ') || 'not given'),
    line('party', 'Prepared by', preparedBy || 'not given'),
    ...keyFigures.map(({ label, value, unit }) => line('total', label, value, unit)),
    ...quote.sections.flatMap(sectionLines),
    line('gap', ''),
    line('party', 'Software version', quote.softwareVersion),
  ];
}

/** A quote as it was issued, for the sheet that keeps its copy. */
export function issuedLines(issued: IssuedQuote): QuoteLine[] {
  const { quote, date, validUntil, digest } = issued;
  return quoteLines(
    quote,
    `Quote ${keyText(issued)}: ${quote.airframe} with ${quote.packageName}`,
    [line('party', 'Date of issue', date), line('party', 'Inputs, SHA-256', digest)],
    line('party', 'Valid until', validUntil),
  );
}

const cellOf = (cell: QuoteCell): Cell => (typeof cell === 'string' ? cell || null : cell.number);

export const cellsOf = (lines: readonly QuoteLine[]): Cell[][] => lines.map(({ cells }) => cells.map(cellOf));

/** In place of a quote, the faults of its terms; where only the package is not chosen yet, that is how every quote begins. */
export function unfinishedQuoteBlock(catalogue: Catalogue, faults: readonly Fault[]): Cell[][] {
  const [first] = faults;
  const isToBegin = faults.length === 1 && first?.rowName === 'package' && first.got === quoted(null);
  if (!isToBegin) return faultsBlock(faults);
  const names = catalogue.packages.map(({ name }) => name).join(', ');
  return [
    ['No package is chosen yet'],
    [`Choose one in the terms of the quote, in the row "package": ${names}.`],
    ['The quote for it then stands here. Names, discount and payments may follow in any order.'],
  ];
}

/** QUOTE_LINES: the quote as it would be issued now. */
export function quoteBlock(quote: Quote): Cell[][] {
  const { validDays } = quote;
  const days = { number: validDays, text: String(validDays) };
  const valid = line('party', 'Valid for', days, 'days from the day of issue');
  return cellsOf(
    quoteLines(quote, `Quote in preparation: ${quote.airframe} with ${quote.packageName}`, [], valid),
  );
}
