import type { Cell } from '../src/tables/cell.ts';

/** The quote table for a package, with further terms. */
export const quoteTerms = (packageName: string, ...more: Cell[][]): Cell[][] => [
  ['attribute', 'value', 'unit'],
  ['package', packageName, ''],
  ...more,
];
