/** The page a quote is printed from: every figure, nothing typed read as markup. */
import { expect, test } from 'vitest';
import type { PrintedQuote } from '../../src/appsscript/printQuote.ts';
import { quoteFrom } from '../../src/assessment/quoteChanges.ts';
import type { Inputs } from '../../src/tables/inputs.ts';
import { smallInputs, withCell } from '../assessment/quoteFixture.ts';
import { hostile, type OpenPage, open, pages, textOf } from './page.ts';

function printed(inputs: Inputs): PrintedQuote {
  const { quote } = quoteFrom(inputs);
  if (quote === undefined) throw new Error('the inputs have faults');
  return {
    number: 7,
    revision: 'B',
    date: '2026-05-31',
    validUntil: '2026-06-30',
    digest: 'ab'.repeat(32),
    quote,
  };
}

function quotePage(issued: PrintedQuote): OpenPage {
  const data = JSON.stringify(issued).replace(/</g, '\\u003c');
  return open((pages.QuotePage ?? '').replace('"PRINTED"', () => data));
}

const plain = printed(smallInputs);
const { document, errors, window } = quotePage(plain);
const tables = [...document.querySelectorAll('section')].map((section) => ({
  title: textOf(section.querySelector('h2')),
  rows: [...section.querySelectorAll('tbody tr')].map((row) => [...row.children].map(textOf)),
}));

test('shows every section in its order, every number in its text', () => {
  expect(errors).toEqual([]);
  expect(tables.map(({ title }) => title)).toEqual(plain.quote.sections.map(({ title }) => title));
  for (const [index, { rows }] of plain.quote.sections.entries()) {
    const shown = tables[index]?.rows.map((cells) => cells.filter((text) => text !== ''));
    const texts = rows.map(({ cells }) => cells.map((cell) => (typeof cell === 'string' ? cell : cell.text)));
    expect(shown).toEqual(
      texts.map((cells) =>
        cells.map((text) => text.replace(/\s+/g, ' ').trim()).filter((text) => text !== ''),
      ),
    );
  }
  // worked by hand in tests/assessment/quote.test.ts
  expect(tables.find(({ title }) => title === 'Price')?.rows.at(-1)).toEqual(['Total', '', '74,703.77']);
});

test('says what it is: title, name, days, parties, digest', () => {
  expect(document.title).toBe('Quote Q-0007 B');
  expect(textOf(document.querySelector('header'))).toBe(
    'A DealerQuote Q-0007 BDate of issue 2026-05-31Valid until 2026-06-30Replaces the revisions before it',
  );
  expect(textOf(document.querySelector('footer'))).toContain('ab'.repeat(32));
  expect(document.querySelector('#page-name')?.textContent).toContain('content: "Quote Q-0007 B"');
});

test('columns have heads, the picture a name', () => {
  expect(document.querySelectorAll('th:not([scope="col"])')).toHaveLength(0);
  const picture = document.querySelector('figure svg');
  expect(picture?.getAttribute('role')).toBe('img');
  expect(picture?.getAttribute('aria-label')).toContain('Elm');
  expect(picture?.querySelectorAll('polygon')).toHaveLength(2); // what can be loaded, and the limits
  expect(textOf(document.querySelector('figcaption'))).toMatch(
    /^A two and bags · B three in two seats \(FAIL\)\./,
  );
  for (const shape of document.querySelectorAll('figure svg *'))
    for (const { value } of shape.attributes) expect(value).not.toMatch(/NaN|undefined|Infinity/);
});

test('prints', () => {
  let count = 0;
  window.print = () => count++;
  document.querySelector<HTMLButtonElement>('#print')?.click();
  expect(count).toBe(1);
});

test('shows what was typed as it was typed', () => {
  const inputs = [
    'customer',
    'customer street',
    'dealer',
    'prepared by',
    'remark',
    'delivery',
    'discount for',
  ].reduce(
    (all, row) => withCell(all, 'quote', row, 'value', hostile),
    withCell(
      withCell(smallInputs, 'airframe', 'airframe', 'value', hostile),
      'equipment',
      'radio',
      'item',
      hostile,
    ),
  );
  const clean = withCell(inputs, 'equipment', 'autopilot', 'needs', '');
  const loadings = (clean.loadings ?? []).map((line, at) => (at === 2 ? [hostile, ...line.slice(1)] : line));
  const page = quotePage(printed({ ...clean, loadings }));
  expect(page.errors).toEqual([]);
  expect(page.document.querySelectorAll('img, iframe, object, a, form')).toHaveLength(0);
  expect(page.document.scripts).toHaveLength(2);
  expect(page.document.title).toBe('Quote Q-0007 B');
  const text = textOf(page.document.querySelector('main'));
  expect(text.split(hostile).length - 1).toBeGreaterThanOrEqual(9);
});
