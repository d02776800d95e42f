import { compare } from '../assessment/assess.ts';
import { quoteOf } from '../assessment/quote.ts';
import { quoteBlock, unfinishedQuoteBlock } from '../assessment/quoteBlock.ts';
import type { Grid } from '../tables/cell.ts';
import { readQuoteTerms } from '../tables/quote.ts';
import { type TableFunction, tableFunction } from './tableFunction.ts';

/** A range; one cell alone, or none, is no table. */
const gridOf = (argument: unknown): Grid | undefined =>
  Array.isArray(argument) ? (argument as Grid) : undefined;

export const quoteFunctions: readonly TableFunction[] = [
  tableFunction({
    name: 'QUOTE_LINES',
    help: 'The quote in preparation: price, payment, weights, loadings, performance, delivery, scope, assumptions.',
    extras: [{ name: 'quote', help: 'the terms of the quote, with their headers', optional: false }],
    compute: (catalogue, [quote]) => {
      const { terms, faults } = readQuoteTerms(gridOf(quote), catalogue);
      return terms === undefined
        ? unfinishedQuoteBlock(catalogue, faults)
        : quoteBlock(quoteOf(compare(catalogue), terms));
    },
  }),
];
