/** The panel: what it shows, what it writes, everything labelled. */
import { beforeEach, describe, expect, test } from 'vitest';
import type { Inputs } from '../../src/tables/inputs.ts';
import { smallInputs, withCell } from '../assessment/quoteFixture.ts';
import { hostile, type OpenPage, open, pages, textOf } from './page.ts';

const quotes = [
  { number: 3, revision: 'A', name: 'Q-0003 A', text: 'Q-0003 A, 2026-05-01, Elm, A Customer' },
];
const state = (inputs: Inputs) => ({ inputs, quotes });
let page: OpenPage;
const control = (label: string) => {
  const found = [...page.document.querySelectorAll('label')].find((each) => textOf(each).startsWith(label));
  if (found === undefined) throw new Error(`no label ${label}`);
  return page.document.getElementById(found.htmlFor) as HTMLInputElement;
};
const button = (name: string, among: ParentNode = page.document) => {
  const found = [...among.querySelectorAll('button')].find((each) => textOf(each) === name);
  if (found === undefined) throw new Error(`no button ${name}`);
  return found;
};
const figures = () => textOf(page.document.querySelector('#figures'));
const status = () => textOf(page.document.querySelector('#status'));

beforeEach(async () => {
  page = open(pages.Panel ?? '');
  await page.answer('panelState', state(smallInputs));
  expect(page.errors).toEqual([]);
});

test('shows the packages and the options, what is chosen among them', () => {
  expect([control('Elm').checked, control('Ash').checked]).toEqual([true, false]);
  expect([control('radio').checked, control('autopilot').checked]).toEqual([true, false]);
  expect(textOf(control('autopilot').nextElementSibling)).toBe('autopilot+3.0 kg, 4,200 EUR');
  expect(control('oxygen').disabled).toBe(true); // only with Ash
  // by hand in the tests of the quote
  expect(figures()).toContain('Total with tax74,703.77 EUR');
  expect(figures()).toContain('Payload to be counted on, full tanks244 kg');
});

test('every control has a name, every group too; nothing else takes clicks', () => {
  for (const input of page.document.querySelectorAll('input, select')) {
    expect(page.document.querySelectorAll(`label[for="${input.id}"]`)).toHaveLength(1);
  }
  for (const each of page.document.querySelectorAll('button')) {
    expect(each.getAttribute('type')).toBe('button');
    expect(textOf(each)).not.toBe('');
  }
  for (const group of page.document.querySelectorAll('fieldset')) {
    expect(textOf(group.querySelector('legend'))).not.toBe('');
  }
  expect(page.document.querySelectorAll('[onclick], [tabindex]')).toHaveLength(0);
  expect(page.document.querySelector('#figures')?.getAttribute('aria-live')).toBe('polite');
  expect(page.document.querySelector('#status')?.getAttribute('role')).toBe('status');
  expect(page.document.documentElement.lang).toBe('en');
});

// By hand: 69,439.50 + 4,200 − 333.33 = 73,306.17; 8.1 % = 5,937.80; 79,243.97. Weight: 3 kg calculated, 2 % growth:
// 3.06; half-width² adds (4 % of 3)² = 0.0144: √(2.8504 + 0.0144) = 1.6926; 750 − 72 − (432.44 + 3.06) − 1.6926 = 240.81
test('a tick changes price and payload at once, and is written after', async () => {
  const autopilot = control('autopilot');
  autopilot.focus();
  autopilot.click();
  expect(figures()).toContain('Total with tax79,243.97 EUR');
  expect(figures()).toContain('Payload to be counted on, full tanks241 kg');
  expect(page.document.activeElement?.id).toBe(autopilot.id); // drawn anew, and still where the keyboard was
  expect(button('Issue quote').disabled).toBe(true);
  const { values } = await page.answer(
    'setOption',
    state(withCell(smallInputs, 'equipment', 'autopilot', 'fitted', true)),
  );
  expect(values).toEqual(['equipment', 'autopilot', true]);
  expect(control('autopilot').checked).toBe(true);
  expect(button('Issue quote').disabled).toBe(false);
});

test('two quick clicks are written one after the other; the last state is the workbook’s', async () => {
  control('autopilot').click();
  control('radio').click();
  await page.answer('setOption', state(withCell(smallInputs, 'equipment', 'autopilot', 'fitted', true)));
  expect(control('radio').checked).toBe(false); // not put back by the first answer
  const both = withCell(
    withCell(smallInputs, 'equipment', 'autopilot', 'fitted', true),
    'equipment',
    'radio',
    'fitted',
    false,
  );
  const { values } = await page.answer('setOption', state(both));
  expect(values).toEqual(['equipment', 'radio', false]);
  expect([control('autopilot').checked, control('radio').checked]).toEqual([true, false]);
  // the autopilot needs the radio
  expect(textOf(page.document.querySelector('#findings'))).toContain('■ Stop: autopilot: needs radio');
});

test('a write that fails is said, and the workbook’s state comes back', async () => {
  control('autopilot').click();
  await page.answer('setOption', 'The equipment table has no such cell.', true);
  await page.answer('panelState', state(smallInputs));
  expect(control('autopilot').checked).toBe(false);
  expect(status()).toBe('The equipment table has no such cell.');
  expect(button('Issue quote').disabled).toBe(false);
});

test('another package', async () => {
  control('Ash').click();
  expect(control('oxygen').disabled).toBe(false);
  const { values } = await page.answer(
    'setQuotedPackage',
    state(withCell(smallInputs, 'quote', 'package', 'value', 'Ash')),
  );
  expect(values).toEqual(['Ash']);
  expect(control('Ash').checked).toBe(true);
});

test('a finding goes to its cell', () => {
  const finding = [...page.document.querySelectorAll('#findings li')].find((each) =>
    textOf(each).includes('three in two seats'),
  );
  button('Go to cell', finding).click();
  expect(page.calls.at(-1)).toMatchObject({
    name: 'showInput',
    values: [{ table: 'loadings', row: 'three in two seats' }],
  });
});

test('faults stand in place of figures, each with its cell', async () => {
  button('Read the workbook again').click();
  await page.answer('panelState', state(withCell(smallInputs, 'equipment', 'radio', 'weight', '2,2')));
  expect(figures()).not.toContain('74,703.77');
  const fault = page.document.querySelector('#faults li');
  expect(textOf(fault)).toContain('equipment, row 4 (radio), weight: got "2,2"');
  button('Go to cell', fault ?? page.document).click();
  expect(page.calls.at(-1)?.values).toEqual([{ table: 'equipment', row: 'radio', column: 'weight' }]);
});

test('issues, then prints', async () => {
  button('Issue quote').click();
  const issued = { number: 4, revision: 'A', name: 'Q-0004 A', validUntil: '2026-06-30' };
  expect((await page.answer('issueQuote', issued)).values).toEqual([null]);
  const next = {
    number: 4,
    revision: 'A',
    name: 'Q-0004 A',
    text: 'Q-0004 A, 2026-05-31, Elm, A Customer',
  };
  await page.answer('panelState', { inputs: smallInputs, quotes: [...quotes, next] });
  expect((await page.answer('printQuote')).values).toEqual([4, 'A']);
  expect(status()).toBe('Quote Q-0004 A is issued, valid until 2026-06-30.');
  button('Issue a revision').click();
  expect((await page.answer('issueQuote', { ...issued, revision: 'B', name: 'Q-0004 B' })).values).toEqual([
    4,
  ]);
});

test('another seller’s lock is said', async () => {
  button('Issue quote').click();
  await page.answer('issueQuote', 'Someone else is issuing: try again in a moment.', true);
  expect(status()).toContain('try again');
  expect(button('Issue quote').disabled).toBe(false);
});

test('what has moved since', async () => {
  button('What has moved').click();
  const drift = {
    name: 'Q-0003 A',
    changes: [`equipment, ${hostile}, price: 1 EUR → 2 EUR`],
    figures: [{ label: 'Total with tax', unit: 'EUR', quoted: '1.00', now: '2.00' }],
    remarks: [],
  };
  expect((await page.answer('quoteChanges', drift)).values).toEqual([3]);
  const text = textOf(page.document.querySelector('#drift'));
  expect(text).toContain(`equipment, ${hostile}, price: 1 EUR → 2 EUR`);
  expect(text).toContain('Total with tax: 1.00 → 2.00 EUR');
  expect(page.document.querySelectorAll('img')).toHaveLength(0);
});

describe('follows the sheet', () => {
  const begun = Date.now();
  const at = (seconds: number) => {
    page.window.Date.now = () => begun + seconds * 1000;
  };
  const turnTo = () => page.document.documentElement.dispatchEvent(new page.window.Event('pointerenter'));

  test('edits are there when a person turns to it, and asked for no oftener than every 5 seconds', async () => {
    const { length } = page.calls;
    at(1);
    turnTo();
    expect(page.calls).toHaveLength(length);
    at(60);
    turnTo();
    turnTo();
    expect(page.calls).toHaveLength(length + 1);
    await page.answer('panelState', state(withCell(smallInputs, 'quote', 'package', 'value', 'Ash')));
    expect([control('Elm').checked, control('Ash').checked]).toEqual([false, true]);
    expect(status()).toContain('the workbook was changed');
    at(63);
    turnTo();
    expect(page.calls).toHaveLength(length + 1);
  });

  test('what was chosen after it was asked stays', async () => {
    at(60);
    turnTo();
    control('autopilot').click();
    await page.answer('panelState', state(smallInputs));
    expect(control('autopilot').checked).toBe(true);
    await page.answer('setOption', state(withCell(smallInputs, 'equipment', 'autopilot', 'fitted', true)));
    expect(control('autopilot').checked).toBe(true);
  });

  test('nothing changed: nothing is said, and the focus stays', async () => {
    control('autopilot').focus();
    at(60);
    page.window.dispatchEvent(new page.window.Event('focus'));
    await page.answer('panelState', state(smallInputs));
    expect(status()).toBe('');
    expect(page.document.activeElement?.id).toBe(control('autopilot').id);
  });

  test('a look that fails says nothing, and the next one is asked', async () => {
    at(60);
    turnTo();
    await page.answer('panelState', 'gone', true);
    expect(status()).toBe('');
    at(120);
    turnTo();
    await page.answer('panelState', state(smallInputs));
  });
});

test('has all quotes compared in the register', async () => {
  button('Compare issued quotes').click();
  expect((await page.answer('compareIssuedQuotes')).values).toEqual([]);
});

test('hostile names are texts', async () => {
  button('Read the workbook again').click();
  const named = withCell(
    withCell(smallInputs, 'equipment', 'radio', 'item', hostile),
    'equipment',
    'autopilot',
    'needs',
    '',
  );
  await page.answer('panelState', state(named));
  expect(page.errors).toEqual([]);
  expect(control(hostile).checked).toBe(true);
  expect(page.document.querySelectorAll('img')).toHaveLength(0);
  expect(page.document.title).toBe('Packages and quote');
});
