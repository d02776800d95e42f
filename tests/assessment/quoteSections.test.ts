/** The tables of a quote: terms, price, scope and delivery beside what tests/assessment/quote.test.ts works by hand. */
import { describe, expect, test } from 'vitest';
import { percent } from '../../src/assessment/quoteSection.ts';
import { cellText } from '../../src/assessment/quoteText.ts';
import type { Cell, Grid } from '../../src/tables/cell.ts';
import type { Inputs } from '../../src/tables/inputs.ts';
import { smallInputs, withCell } from './quoteFixture.ts';
import { inRow, quoted, rowOf, rowsOf, sectionOf, term } from './quoteTexts.ts';

test('who quotes what to whom: lines that nobody gave are left out; days valid; who prepared it', () => {
  const { dealer, customer, preparedBy, validDays, airframe, packageName, currency } = quoted(
    term(
      'customer town',
      'A Town',
      undefined,
      term('prepared by', 'A Person', undefined, term('valid for', 45, 'days')),
    ),
  );
  expect(customer).toEqual(['A Customer', 'A Town']);
  expect(dealer).toEqual(['A Dealer']);
  expect([preparedBy, validDays, airframe, packageName, currency]).toEqual([
    'A Person',
    45,
    'Turnstone',
    'Elm',
    'EUR',
  ]);
  expect(quoted().preparedBy).toBe('');
});

test('every table has a head as wide as its rows, in the units and the currency of the workbook', () => {
  const heads = Object.fromEntries(quoted().sections.map(({ title, columns }) => [title, columns]));
  expect(heads).toEqual({
    Configuration: ['', ''],
    Price: ['Item', '%', 'EUR'],
    Payment: ['Due', '%', 'EUR'],
    'Weight and payload': ['', 'Nominal', 'Expected', 'To be counted on', 'Unit'],
    'Centre of gravity': ['', 'Value', 'Unit'],
    'Loadings, from takeoff to zero fuel': [
      'Loading',
      'Verdict',
      'Least CG margin, mm',
      'Takeoff weight, kg',
      'Takeoff CG, mm',
      'Zero-fuel weight, kg',
      'Zero-fuel CG, mm',
      'In words',
    ],
    'Speed, range, mission and cost': ['', 'Value', 'Unit'],
    Delivery: ['Item, the longest first', 'Supplied by', 'Lead time, weeks'],
    Supplied: ['Item', 'Part of', 'Weight, kg', 'Price, EUR'],
    'Not supplied: to be bought by the builder': ['Item', 'Part of', 'Weight, kg', 'Price, EUR'],
    Findings: ['', 'Subject', 'In words'],
    'Assumptions: values nobody gave': ['Table', 'What', 'Taken as', 'Source'],
    Cautions: [''],
  });
  for (const { title, columns, rows } of quoted().sections)
    for (const { cells } of rows) expect(cells.length, title).toBe(columns.length);
});

test('what weights, margins and figures are is said below them', () => {
  const notes = (title: string) => sectionOf(title).notes.join(' ');
  expect(notes('Weight and payload')).toMatch(/^Nominal: .* Expected: .* To be counted on: /);
  expect(notes('Centre of gravity')).toBe('Margins are positive inside the limit.');
  expect(notes('Loadings')).toBe('With nominal weights.');
  expect(notes('Speed, range')).toMatch(/^Speeds are true, .* years\.$/);
  expect(notes('Supplied')).toMatch(/^Weights are nominal/);
  expect(notes('Configuration')).toBe('');
});

test('key figures: total, payload counted on and expected, empty weight, as the tables of the quote have them', () => {
  expect(quoted().keyFigures.map(({ label, value, unit }) => [label, cellText(value), unit])).toEqual([
    ['Total with tax', '74,703.77', 'EUR'],
    ['Payload to be counted on, full tanks', '244', 'kg'],
    ['Payload expected, full tanks', '246', 'kg'],
    ['Empty weight expected', '432.4', 'kg'],
  ]);
});

describe('configuration', () => {
  test('airframe, package, tanks, options', () => {
    expect(rowsOf('Configuration')).toEqual([
      ['Airframe', 'Turnstone'],
      ['Engine package', 'Elm'],
      ['Tanks', 'wing tanks'],
      ['Options', 'radio'],
    ]);
  });

  test('no options; a package that is described', () => {
    const bare = inRow('equipment', ['radio'], { fitted: false });
    const described: Inputs = {
      ...bare,
      packages: [...(bare.packages as Grid), ['description', null, 'small four', 'x']],
    };
    expect(rowOf('Configuration', 'Options', described)).toEqual(['Options', 'none']);
    expect(rowOf('Configuration', 'Engine package', described)).toEqual([
      'Engine package',
      'Elm: small four',
    ]);
  });
});

describe('price and payment', () => {
  test('no discount, no lines for it; a reason where there is one; a remark below', () => {
    const labels = (inputs: Inputs) => rowsOf('Price', inputs).map(([label]) => label);
    expect(labels(term('discount', 0, 'EUR'))).toEqual([
      'Turnstone airframe kit',
      'Elm engine package, 3 items as listed below',
      'radio',
      'Without tax',
      'Tax',
      'Total',
    ]);
    const reason = term('discount for', 'a first order', undefined, term('remark', 'Prices of May.'));
    expect(labels(reason)).toContain('Discount for a first order');
    expect(sectionOf('Price', reason).notes).toEqual(['Prices of May.']);
    expect(sectionOf('Price').notes).toEqual([]);
  });

  test('sums stand out', () => {
    const totals = sectionOf('Price')
      .rows.filter(({ isTotal }) => isTotal)
      .map(({ cells }) => cells[0]);
    expect(totals).toEqual(['Before discount', 'Without tax', 'Total']);
    expect(sectionOf('Payment').rows.at(-1)?.isTotal).toBe(true);
    expect(sectionOf('Weight and payload').rows.map(({ isTotal }) => isTotal)).toEqual([
      undefined,
      undefined,
      true,
    ]);
  });

  test('one item of the package is one; a package without prices has no line', () => {
    const only = ['mount', 'propeller'].reduce<Inputs>(
      (inputs, name) => inRow('components', ['Elm', name], { 'supplied by': 'builder' }, inputs),
      smallInputs,
    );
    expect(rowOf('Price', 'Elm engine', only)).toEqual([
      'Elm engine package, 1 item as listed below',
      '',
      '18,999.99',
    ]);
    const none = inRow('components', ['Elm', 'engine'], { price: null }, only);
    expect(rowOf('Price', 'Elm engine', none)).toBeUndefined();
    expect(rowsOf('Price', none).at(-1)?.[0]).toBe('Total, as far as priced');
  });

  // 40 % of 74,703.77 is 29,881.51, 30 % 22,411.13; what is left 22,411.13
  test('payments in two steps and the rest on delivery; of none, all on delivery', () => {
    const two = term('payment 1', 40, '%', term('payment 3', 30, '%'));
    expect(rowsOf('Payment', two)).toEqual([
      ['with the order', '40', '29,881.51'],
      ['third payment', '30', '22,411.13'],
      ['on delivery', 'the rest', '22,411.13'],
      ['Together', '', '74,703.77'],
    ]);
    expect(rowOf('Payment', 'second payment', term('payment 2', 50, '%'))?.[1]).toBe('50');
    expect(
      rowOf('Payment', 'at handover', term('payment 1', 50, '%', term('payment 1 due', 'at handover')))?.[1],
    ).toBe('50');
    const none = {
      ...smallInputs,
      rates: [
        ['attribute', 'value', 'unit'],
        ['sales tax', 8.1, '%'],
      ],
    } as Inputs;
    expect(rowsOf('Payment', none)).toEqual([
      ['on delivery', 'the rest', '74,703.77'],
      ['Together', '', '74,703.77'],
    ]);
  });

  test('a share in per cent with the digits it has', () => {
    expect(percent(0.081)).toEqual({ number: 8.1, text: '8.1' });
    expect(percent(0.25)).toEqual({ number: 25, text: '25' });
    expect(percent(1 / 3)).toEqual({ number: 33.3333, text: '33.3333' });
  });
});

describe('scope', () => {
  test('what is taken out, what has no price, what other packages have', () => {
    const removed: Inputs = {
      ...smallInputs,
      components: [
        ...(smallInputs.components as Grid),
        ['Elm', 'old battery', 'battery', -8, 1.5, 'weighed', false, 'kit', null, null, null],
        ['Ash', 'cabin heat', 'cabin heat', 2, 1.1, 'weighed', false, 'kit', null, 100, 1],
      ],
    };
    expect(rowOf('Supplied', 'old battery', removed)).toEqual([
      'old battery',
      'engine package',
      '−8.0',
      'taken out',
    ]);
    expect(rowsOf('Supplied', removed).filter(([name]) => name === 'old battery')).toHaveLength(1);
    expect(rowOf('Not supplied', 'cabin heat', removed)).toEqual([
      'cabin heat: nothing listed, other packages have it',
      'engine package',
      'not known',
      'no price',
    ]);
    expect(rowOf('Supplied', 'mount', inRow('components', ['Elm', 'mount'], { price: null }))?.[3]).toBe(
      'no price',
    );
  });

  test('what a lump holds is not taken out beside it; an option of the builder’s without a price', () => {
    const lump: Inputs = {
      ...smallInputs,
      components: [
        ...(smallInputs.components as Grid),
        ['Elm', 'old parts', 'battery', -8, 1.5, 'weighed', false, 'kit', null, null, null],
        ['Elm', 'old battery', 'battery', -6, 1.5, 'weighed', false, 'kit', 'old parts', null, null],
      ],
    };
    const taken = rowsOf('Supplied', lump).filter((cells) => cells[3] === 'taken out');
    expect(taken).toEqual([['old parts: old battery', 'engine package', '−8.0', 'taken out']]);
    expect(rowOf('Supplied', 'radio', inRow('equipment', ['radio'], { price: null }))?.[3]).toBe('no price');
  });

  test('nothing left to the builder, nothing that is not required', () => {
    const all = inRow(
      'components',
      ['Elm', 'oil'],
      { 'supplied by': 'kit' },
      inRow('components', ['Elm', 'radiator'], { 'supplied by': 'kit', arm: 1 }),
    );
    const section = sectionOf('Not supplied', all);
    expect(section.rows.map(({ cells }) => cells)).toEqual([['nothing is listed', '', '', '']]);
    expect(section.notes).toEqual(['Prices here are for orientation and not part of this quote.']);
  });

  test('an option that the builder buys is not supplied', () => {
    const equipment = (smallInputs.equipment as Grid).map((line, index) => [
      ...line,
      index === 0 ? 'supplied by' : index > 1 ? 'builder' : null,
    ]);
    const own: Inputs = { ...smallInputs, equipment };
    expect(rowOf('Not supplied', 'radio', own)).toEqual(['radio', 'option', '2.2', '1,999.95']);
    expect(rowOf('Supplied', 'radio', own)).toBeUndefined();
    expect(rowOf('Price', 'radio', own)).toBeUndefined();
  });
});

describe('delivery', () => {
  test('six items, the longest first, and how many more are no longer', () => {
    const many: Inputs = {
      ...smallInputs,
      components: [
        ...(smallInputs.components as Grid),
        ...[1, 2, 3, 4].map(
          (weeks) =>
            [
              'Elm',
              `part ${weeks}`,
              `system ${weeks}`,
              1,
              1,
              'weighed',
              false,
              'kit',
              null,
              10,
              weeks,
            ] as Cell[],
        ),
      ],
    };
    // engine 14, package 10, propeller 6, parts 4, 3, 2, 1, oil 1
    expect(rowsOf('Delivery', many).map(([, by, weeks]) => [by, weeks])).toEqual([
      ['seller', '14'],
      ['seller', '10'],
      ['seller', '6'],
      ['seller', '4'],
      ['seller', '3'],
      ['seller', '2'],
    ]);
    expect(sectionOf('Delivery', many).notes[0]).toBe('2 more with a lead time no longer than these.');
    expect(sectionOf('Delivery').notes.join()).not.toContain('more with a lead time');
    expect(rowOf('Delivery', 'oil')).toEqual(['oil', 'builder', '1']);
  });

  test('where none is known, that; a kit that has one is not among those without', () => {
    const components = (smallInputs.components as Grid).map((line, index) =>
      index > 1 ? line.map((cell, at) => (at === 10 ? null : cell)) : line,
    );
    const packages = (smallInputs.packages as Grid).filter(([name]) => name !== 'lead time');
    const unknown: Inputs = { ...smallInputs, components, packages };
    expect(rowsOf('Delivery', unknown)).toEqual([['no lead time is known', '', '']]);
    // the oil is a fluid of the builder's, the radiator not required, the starter in the engine's lump
    expect(sectionOf('Delivery', unknown).notes).toContain(
      'No lead time given, delivery may take longer: Turnstone airframe kit, engine, mount, propeller.',
    );
    const kit = withCell(
      withCell(smallInputs, 'airframe', 'kit lead time', 'value', 15),
      'airframe',
      'kit lead time',
      'unit',
      'weeks',
    );
    expect(sectionOf('Delivery', kit).notes.join()).toContain('take longer: mount.');
    const all = inRow('components', ['Elm', 'mount'], { 'lead time': 2 }, kit);
    expect(sectionOf('Delivery', all).notes).toEqual([]);
  });

  test('what is not required is not waited for, nor is the builder’s asked when it comes', () => {
    const radiator = inRow('components', ['Elm', 'radiator'], { 'lead time': 30 });
    expect(rowsOf('Delivery', radiator)[0]).toEqual(['engine', 'seller', '14']);
    const own = inRow('components', ['Elm', 'mount'], { 'supplied by': 'builder' });
    expect(sectionOf('Delivery', own).notes.join()).not.toContain('mount');
  });

  test('a fluid without a lead time is bought anywhere', () => {
    const oil = inRow('components', ['Elm', 'oil'], { 'supplied by': 'kit', 'lead time': null });
    expect(sectionOf('Delivery', oil).notes.join()).not.toContain('oil');
  });

  test('time to build and terms of delivery, where they are given', () => {
    const built = withCell(
      withCell(smallInputs, 'airframe', 'airframe build hours', 'value', 900),
      'airframe',
      'airframe build hours',
      'unit',
      'h',
    );
    expect(sectionOf('Delivery', built).notes).toContain('To build, as far as stated: 900 h.');
    expect(sectionOf('Delivery', term('delivery', 'ex works')).notes).toContain('Delivery: ex works');
  });
});
