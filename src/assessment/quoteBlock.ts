import type { Cell } from '../tables/cell.ts';
import type { Quote } from './quote.ts';
import type { QuoteCell, QuoteSection } from './quoteSection.ts';

const cellOf = (cell: QuoteCell): Cell =>
  typeof cell === 'string' ? (cell === '' ? null : cell) : cell.number;

/** One table of a quote as cells: its title, its heads where it has any, its rows, what is said below it. */
export function sectionCells({ title, columns, rows, notes }: QuoteSection): Cell[][] {
  const heads = columns.some((column) => column !== '')
    ? [columns.map((column): Cell => column || null)]
    : [];
  return [
    [title],
    ...heads,
    ...rows.map(({ cells }) => cells.map(cellOf)),
    ...notes.map((note): Cell[] => [note]),
  ];
}

/** QUOTE_LINES: the whole quote as it would be issued, its parties first. */
export function quoteBlock(quote: Quote): Cell[][] {
  const { airframe, packageName, dealer, customer, preparedBy, validDays, keyFigures } = quote;
  return [
    [`Quote in preparation: ${airframe} with ${packageName}`],
    ['Dealer', dealer.join(', ') || 'not given'],
    ['Customer', customer.join(', ') || 'not given'],
    ['Prepared by', preparedBy || 'not given'],
    ['Valid for', validDays, 'days from the day of issue'],
    ...keyFigures.map(({ label, value, unit }): Cell[] => [label, cellOf(value), unit]),
    ...quote.sections.flatMap(sectionCells),
    ['Software version', quote.softwareVersion],
  ];
}
