import { expect, test } from 'vitest';
import type { Cell } from '../../src/tables/cell.ts';
import { faultText } from '../../src/tables/faults.ts';
import { readQuoteTerms } from '../../src/tables/quote.ts';
import { catalogueOf } from './smallBuild.ts';

const terms = (...rows: Cell[][]) =>
  readQuoteTerms([['attribute', 'value', 'unit'], ['package', ' BIRCH', ''], ...rows], catalogueOf());
const faults = (...rows: Cell[][]) => terms(...rows).faults.map(faultText);

test('of a package of the table, whatever its case', () => {
  expect(terms().terms).toMatchObject({ package: 'BIRCH', discount: 0, validity: 30 });
  expect(
    readQuoteTerms(
      [
        ['attribute', 'value', 'unit'],
        ['package', 'Oak', ''],
      ],
      catalogueOf(),
    ).faults.map(faultText),
  ).toEqual(['quote, package, value: got "Oak", expected a name from the packages table (Ash, Birch)']);
});

test('a discount takes off, or nothing', () => {
  expect(terms(['discount', 0, 'USD']).terms?.discount).toBe(0);
  expect(faults(['discount', -1, 'USD'])).toEqual([
    'quote, discount, value: got -1, expected an amount of at least 0',
  ]);
  expect(faults(['discount', 1, 'EUR'])).toEqual([
    'quote, row 3 (discount), unit: got "EUR", expected USD, the workbook\'s currency',
  ]);
});

test('payments of all of it, and of more', () => {
  const payments = (...shares: number[]) =>
    faults(...shares.map((share, index) => [`payment ${index + 1}`, share, '%']));
  expect(payments(60, 30, 10)).toEqual([]);
  expect(payments(60)).toEqual([]);
  expect(payments(60, 30, 11)).toEqual([
    'quote, payment 1 and later, value: got "101 %", expected payments of 100 % or less together',
  ]);
});

test('a cell that cannot be read is the only fault', () => {
  expect(faults(['discount', 'much', 'USD'], ['payment 1', 60, '%'], ['payment 2', 60, '%'])).toEqual([
    'quote, row 3 (discount), value: got "much", expected a number without unit or separators',
  ]);
});
