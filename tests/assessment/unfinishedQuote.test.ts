/** A quote that cannot be made yet: how it begins is no fault, what is wrong in its terms is one. */
import { describe, expect, test } from 'vitest';
import { unfinishedQuoteBlock } from '../../src/assessment/quoteBlock.ts';
import type { Cell } from '../../src/tables/cell.ts';
import { readQuoteTerms } from '../../src/tables/quote.ts';
import { godwit } from './sampleCatalogue.ts';

const terms = (...rows: Cell[][]) => [['attribute', 'value', 'unit'], ...rows];
const block = (grid: Cell[][]) => unfinishedQuoteBlock(godwit, readQuoteTerms(grid, godwit).faults);

describe('without a package', () => {
  test.each([
    ['nothing else', terms(['package', '', ''])],
    ['the customer’s name', terms(['package', '', ''], ['customer', 'A. Buyer', ''])],
  ])('and with %s it says what to choose, from what', (_, grid) => {
    const lines = block(grid).map(([text]) => String(text));
    expect(lines.join('\n')).not.toMatch(/No result|fault/);
    expect(lines[1]).toBe(
      'Choose one in the terms of the quote, in the row "package": Rowan, Larch, Hazel, Alder.',
    );
  });

  test('a discount that is none is a fault all the same', () => {
    const lines = block(terms(['package', '', ''], ['discount', 'much', 'USD']));
    expect(lines[0]).toEqual(['No result: 2 faults in the tables. Correct what is listed here.']);
  });
});

test('a package that there is not is a fault', () => {
  expect(block(terms(['package', 'Oak', '']))[1]?.[0]).toMatch(/^quote, package, value: got "Oak", expected/);
});
