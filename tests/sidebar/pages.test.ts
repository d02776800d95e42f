/** The pages as they are pushed: nothing from elsewhere, nothing typed read as markup, everything labelled. */
import { readdirSync, readFileSync } from 'node:fs';
import { beforeEach, describe, expect, test } from 'vitest';
import type { PrintedQuote } from '../../src/appsscript/printQuote.ts';
import { type PrintedCard, type PrintedCards, printedCards } from '../../src/assessment/printedCards.ts';
import { quoteFrom } from '../../src/assessment/quoteChanges.ts';
import type { Inputs } from '../../src/tables/inputs.ts';
import { asBuilt } from '../assessment/asBuilt.ts';
import { smallInputs, withCell } from '../assessment/quoteFixture.ts';
import { type OpenPage, open, pages } from './page.ts';

const folder = new URL('../../src/sidebar/', import.meta.url);
const sources = readdirSync(folder).filter((name) => name.endsWith('.ts'));
const textOf = (element: Element | null) => (element?.textContent ?? '').replace(/\s+/g, ' ').trim();

describe('the sources', () => {
  test.each(sources)('%s makes no markup of texts', (name) => {
    const source = readFileSync(new URL(name, folder), 'utf8');
    expect(source).not.toMatch(
      /innerHTML|outerHTML|insertAdjacentHTML|document\.write|\beval\b|new Function|srcdoc/,
    );
  });

  test.each(Object.keys(pages))('%s fetches nothing', (name) => {
    const page = (pages[name] ?? '').replaceAll('http://www.w3.org/2000/svg', ''); // a name, not an address
    expect(page).not.toMatch(/https?:|\bsrc=|<link|@import|url\(|fetch\(|XMLHttpRequest/i);
  });

  /** Relative luminance and contrast. @source WCAG 2.1, definitions; from memory */
  const luminance = (colour: string) => {
    const digits =
      colour.length === 4 ? [...colour.slice(1)].map((digit) => digit + digit) : colour.slice(1).match(/../g);
    const [red = 0, green = 0, blue = 0] = (digits ?? [])
      .map((pair) => Number.parseInt(pair, 16) / 255)
      .map((part) => (part <= 0.03928 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4));
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
  };

  test.each(Object.keys(pages))('%s: every text colour has a contrast of 4.5 on white', (name) => {
    const colours = [...(pages[name] ?? '').matchAll(/[^-]color: (#[0-9a-f]{3,6})/g)].map(
      ([, colour = '']) => colour,
    );
    expect(colours.length).toBeGreaterThan(3);
    for (const colour of new Set(colours))
      expect([colour, 1.05 / (luminance(colour) + 0.05) >= 4.5]).toEqual([colour, true]);
  });
});

const hostile = '<img src=x onerror="document.title=1"> </script> =1+1 "\' & 🛩️';

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

describe('the quote page', () => {
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
      const texts = rows.map(({ cells }) =>
        cells.map((cell) => (typeof cell === 'string' ? cell : cell.text)),
      );
      expect(shown).toEqual(
        texts.map((cells) =>
          cells.map((text) => text.replace(/\s+/g, ' ').trim()).filter((text) => text !== ''),
        ),
      );
    }
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
    const loadings = (clean.loadings ?? []).map((line, at) =>
      at === 2 ? [hostile, ...line.slice(1)] : line,
    );
    const page = quotePage(printed({ ...clean, loadings }));
    expect(page.errors).toEqual([]);
    expect(page.document.querySelectorAll('img, iframe, object, a, form')).toHaveLength(0);
    expect(page.document.scripts).toHaveLength(2);
    expect(page.document.title).toBe('Quote Q-0007 B');
    const text = textOf(page.document.querySelector('main'));
    expect(text.split(hostile).length - 1).toBeGreaterThanOrEqual(9);
  });
});

describe('the page of flight-test cards', () => {
  const openCards = (data: PrintedCards) =>
    open((pages.CardsPage ?? '').replace('"PRINTED"', () => JSON.stringify(data).replace(/</g, '\\u003c')));
  const cards = printedCards(asBuilt().catalogue);

  test('every card with its figures, a box beside each, and the columns of the results table to fill in', () => {
    const { document, errors } = openCards(cards);
    expect(errors).toEqual([]);
    const shown = [...document.querySelectorAll('article')];
    const all = cards.groups.flatMap((group) => group.cards);
    expect(shown.map((card) => textOf(card.querySelector('h3')))).toEqual(all.map(({ title }) => title));
    expect(shown).toHaveLength(14);
    shown.forEach((card, index) => {
      const { figures, columns, caution, setUp, record, reduce } = all[index] as PrintedCard;
      expect(card.querySelectorAll('td.box')).toHaveLength(figures.length);
      const heads = [...card.querySelectorAll('.write th')].map(textOf);
      expect(heads).toEqual(columns);
      for (const words of [setUp, record, reduce, caution])
        expect(textOf(card)).toContain(words.replace(/\s+/g, ' '));
      if (columns.length > 0)
        expect(card.querySelectorAll('.write tbody td').length).toBeGreaterThanOrEqual(3 * columns.length);
    });
    expect(document.querySelectorAll('.group')).toHaveLength(3); // each on a page of its own, with blanks for who and when
    expect(document.querySelectorAll('.group > .blanks')).toHaveLength(3);
  });

  test('a climb by hand: its band is ±14 %, its columns those of a climb', () => {
    const climb = cards.groups.flatMap((group) => group.cards).find(({ title }) => title.endsWith(': climb'));
    const rate = climb?.figures.find(({ label }) =>
      label.startsWith('rate of climb at takeoff power, sea level'),
    );
    const number = (text: string | undefined) => Number(text?.replace(',', ''));
    const [low, high] = (rate?.band ?? '').split(' – ').map(number);
    expect(low).toBeCloseTo(0.86 * number(rate?.predicted), -2);
    expect(high).toBeCloseTo(1.14 * number(rate?.predicted), -2);
    expect(climb?.columns).toEqual([
      'power, hp',
      'weight, lb',
      'pressure altitude, ft',
      'OAT, °C',
      'true airspeed, kt',
      'rate of climb, ft/min',
    ]);
  });

  test('prints, and shows what was typed as it was typed', () => {
    const { document, window } = openCards({ ...cards, title: hostile });
    let printings = 0;
    window.print = () => {
      printings++;
    };
    document.getElementById('print')?.click();
    expect(printings).toBe(1);
    expect(textOf(document.querySelector('h1'))).toContain('<img src=x');
    expect(document.querySelectorAll('img')).toHaveLength(0);
    expect(textOf(document.getElementById('page-name'))).not.toContain('img');
  });
});

describe('the panel', () => {
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
});
