/** A quote as lines of a sheet: of a plain quote, every line and what kind it is. */
import { describe, expect, test } from 'vitest';
import type { IssuedQuote } from '../../src/assessment/issuedQuote.ts';
import type { Quote } from '../../src/assessment/quote.ts';
import { cellsOf, issuedLines, quoteBlock, unfinishedQuoteBlock } from '../../src/assessment/quoteBlock.ts';
import { quoted } from '../../src/tables/cell.ts';
import { godwit } from './sampleCatalogue.ts';

const plain: Quote = {
  airframe: 'Turnstone',
  packageName: 'Elm',
  dealer: ['A Dealer', '1 Street'],
  customer: ['A Customer'],
  preparedBy: 'A Seller',
  validDays: 30,
  currency: 'EUR',
  keyFigures: [{ label: 'Total', value: { number: 1234.5, text: '1,234.50' }, unit: 'EUR' }],
  sections: [
    {
      title: 'Price',
      columns: ['', 'EUR'],
      rows: [{ cells: ['kit', { number: 1000, text: '1,000.00' }] }, { cells: ['Total', ''], isTotal: true }],
      notes: ['one note', 'another'],
    },
    { title: 'Notes', columns: ['', ''], rows: [{ cells: ['a', 'b'] }], notes: [] },
  ],
  picture: {
    ...{ packageName: 'Elm', index: 0, count: 1, baseline: 0, armUnit: 'mm', weightUnit: 'kg' },
    ...{ limits: [], region: [], loadings: [] },
  },
  softwareVersion: '9.9',
};

const below = [
  ['party', 'Dealer', 'A Dealer, 1 Street'],
  ['party', 'Customer', 'A Customer'],
  ['party', 'Prepared by', 'A Seller'],
  ['total', 'Total', { number: 1234.5, text: '1,234.50' }, 'EUR'],
  ['gap', ''],
  ['heading', 'Price'],
  ['columns', '', 'EUR'],
  ['row', 'kit', { number: 1000, text: '1,000.00' }],
  ['total', 'Total', ''],
  ['note', 'one note'],
  ['note', 'another'],
  ['gap', ''],
  ['heading', 'Notes'],
  ['row', 'a', 'b'],
  ['gap', ''],
  ['party', 'Software version', '9.9'],
];

test('issued: number and revision, day, inputs, and until when it is valid', () => {
  const issued: IssuedQuote = {
    ...{ number: 7, revision: 'B', date: '2026-05-31', validUntil: '2026-06-30', digest: 'abc' },
    ...{ inputs: {}, quote: plain },
  };
  expect(issuedLines(issued).map(({ kind, cells }) => [kind, ...cells])).toEqual([
    ['title', 'Quote Q-0007 B: Turnstone with Elm'],
    ['party', 'Date of issue', '2026-05-31'],
    ['party', 'Inputs, SHA-256', 'abc'],
    ['party', 'Valid until', '2026-06-30'],
    ...below,
  ]);
});

describe('in preparation', () => {
  test('for how long it will be valid; numbers as numbers, blanks as blanks', () => {
    expect(quoteBlock(plain)).toEqual([
      ['Quote in preparation: Turnstone with Elm'],
      ['Valid for', 30, 'days from the day of issue'],
      ['Dealer', 'A Dealer, 1 Street'],
      ['Customer', 'A Customer'],
      ['Prepared by', 'A Seller'],
      ['Total', 1234.5, 'EUR'],
      [null],
      ['Price'],
      [null, 'EUR'],
      ['kit', 1000],
      ['Total', null],
      ['one note'],
      ['another'],
      [null],
      ['Notes'],
      ['a', 'b'],
      [null],
      ['Software version', '9.9'],
    ]);
  });

  test('a dealer, a customer, a seller that nobody named', () => {
    const nobody = quoteBlock({ ...plain, dealer: [], customer: [], preparedBy: '' });
    expect(nobody.slice(2, 5)).toEqual([
      ['Dealer', 'not given'],
      ['Customer', 'not given'],
      ['Prepared by', 'not given'],
    ]);
  });
});

test('an amount of nothing is a number, not a blank', () => {
  expect(cellsOf([{ kind: 'row', cells: ['tax', { number: 0, text: '0.00' }, ''] }])).toEqual([
    ['tax', 0, null],
  ]);
});

test('no quote yet: what to choose; a blank in another row of the terms is a fault', () => {
  const blank = (rowName: string) =>
    unfinishedQuoteBlock(godwit, [
      { table: 'quote', row: 2, rowName, column: 'value', got: quoted(null), expected: 'a value' },
    ]);
  expect(blank('package')).toEqual([
    ['No package is chosen yet'],
    ['Choose one in the terms of the quote, in the row "package": Rowan, Larch, Hazel, Alder.'],
    ['The quote for it then stands here. Names, discount and payments may follow in any order.'],
  ]);
  expect(blank('valid for')[0]).toEqual(['No result: 1 fault in the tables. Correct what is listed here.']);
});
