/** What has become of an issued quote: inputs that moved, its figures of today, and what another version makes of them. */
import { describe, expect, test } from 'vitest';
import {
  dayAfter,
  keyText,
  laterRevision,
  numberOfName,
  quoteName,
  revisionAfter,
} from '../../src/assessment/issuedQuote.ts';
import {
  attemptQuote,
  changeText,
  driftText,
  type KeptQuote,
  quoteDrift,
  quoteFrom,
} from '../../src/assessment/quoteChanges.ts';
import { softwareVersion } from '../../src/assessment/version.ts';
import type { Inputs } from '../../src/tables/inputs.ts';
import { smallInputs, withCell } from './quoteFixture.ts';

function kept(inputs: Inputs = smallInputs, version = softwareVersion): KeptQuote {
  const { quote } = quoteFrom(inputs);
  if (quote === undefined) throw new Error('faults');
  return { inputs, quote: { ...quote, softwareVersion: version } };
}
const radio = (price: number | null) => withCell(smallInputs, 'equipment', 'radio', 'price', price);

describe('drift', () => {
  test('nothing moved: as issued, every figure as quoted', () => {
    const drift = quoteDrift(kept(), smallInputs);
    expect(drift.changes).toEqual([]);
    expect(drift.remarks).toEqual([]);
    expect(drift.figures).toHaveLength(4);
    for (const { quoted, now } of drift.figures) expect(now).toBe(quoted);
    expect(drift.figures[0]).toEqual({
      label: 'Total with tax',
      unit: 'EUR',
      quoted: '74,703.77',
      now: '74,703.77',
    });
    expect(driftText(drift)).toBe('as issued');
  });

  // 2,100 in place of 1,999.95 is 100.05 more: 69,206.22 and 8.1 %, 5,605.70
  test('one price: the input in words, the total of both days', () => {
    const drift = quoteDrift(kept(), radio(2100));
    expect(drift.changes).toHaveLength(1);
    expect(driftText(drift)).toBe(
      '1 input moved: equipment, radio, price: 1999.95 EUR → 2100 EUR. Total with tax 74,703.77 → 74,811.92 EUR',
    );
  });

  test('an input that none of the figures rests on', () => {
    const renamed = withCell(smallInputs, 'quote', 'customer', 'value', 'Another');
    expect(driftText(quoteDrift(kept(), renamed))).toBe(
      '1 input moved: quote, customer, value: A Customer → Another. Price and payload are as quoted',
    );
  });

  test('three of them by name, and how many more', () => {
    const moved = ['customer', 'dealer', 'remark', 'customer town', 'dealer town'].map(
      (row, index) => [row, index] as const,
    );
    const of = (count: number) =>
      driftText(
        quoteDrift(
          kept(),
          moved
            .slice(0, count)
            .reduce<Inputs>(
              (inputs, [row, index]) => withCell(inputs, 'quote', row, 'value', `x${index}`),
              smallInputs,
            ),
        ),
      );
    expect(of(3)).toMatch(/^3 inputs moved: quote, .*; quote, .*; quote, [^;]*\. Price/);
    expect(of(5)).toMatch(/^5 inputs moved: quote, [^;]*; quote, [^;]*; quote, [^;]*; and 2 more\. Price/);
  });

  test('faults of today: no figures, and which faults', () => {
    const drift = quoteDrift(kept(), withCell(smallInputs, 'airframe', 'wing area', 'value', 'much'));
    expect(drift.figures.map(({ now }) => now)).toEqual(['not known', 'not known', 'not known', 'not known']);
    expect(drift.figures[0]?.unit).toBe('EUR');
    expect(drift.remarks[0]).toBe('No figures of today: the tables have faults.');
    expect(drift.remarks[1]).toContain('got "much"');
    expect(driftText(drift)).toContain('Total with tax 74,703.77 → not known EUR');
  });

  test('other units than then: each with its own', () => {
    const pounds = withCell(smallInputs, 'airframe', 'show weights in', 'value', 'lb');
    const [, payload] = quoteDrift(kept(), pounds).figures;
    expect(payload).toMatchObject({ unit: '', quoted: '244 kg', now: '538 lb' }); // 243.87 kg
  });

  test('another version: what it makes of the same inputs', () => {
    const same = quoteDrift(kept(smallInputs, '0.1'), smallInputs);
    expect(same.remarks).toEqual([
      `Quoted with version 0.1; version ${softwareVersion} makes of the same inputs: the same figures.`,
    ]);
    const { inputs, quote } = kept(smallInputs, '0.1');
    const [total, ...others] = quote.keyFigures;
    const older = { ...quote, keyFigures: [{ ...total!, value: '70,000.00' }, ...others] };
    expect(quoteDrift({ inputs, quote: older }, smallInputs).remarks).toEqual([
      `Quoted with version 0.1; version ${softwareVersion} makes of the same inputs: Total with tax 70,000.00 → 74,703.77 EUR.`,
    ]);
  });
});

describe('a quote that cannot be made', () => {
  test('faults of the tables, of the terms, and a discount beyond the price', () => {
    const remarks = (inputs: Inputs) => {
      const { quote, remarks: told } = attemptQuote(inputs);
      expect(quote).toBeUndefined();
      return told;
    };
    expect(remarks(withCell(smallInputs, 'airframe', 'wing area', 'value', 'x'))).toHaveLength(1);
    expect(remarks(withCell(smallInputs, 'quote', 'package', 'value', 'Oak'))[0]).toContain('got "Oak"');
    expect(remarks(withCell(smallInputs, 'quote', 'discount', 'value', 1e6))[0]).toMatch(
      /^discount must be at most/,
    );
    expect(attemptQuote(smallInputs).remarks).toEqual([]);
  });
});

test('a change in words, from nothing and to nothing', () => {
  const change = { table: 'quote', row: 'remark', column: 'value' } as const;
  expect(changeText({ ...change, was: '', is: 'x' })).toBe('quote, remark, value: nothing → x');
  expect(changeText({ ...change, was: 'x', is: '' })).toBe('quote, remark, value: x → nothing');
});

describe('numbers, revisions and days', () => {
  test('names of four digits or more, and back', () => {
    expect(quoteName(7)).toBe('Q-0007');
    expect(quoteName(12_345)).toBe('Q-12345');
    expect(keyText({ number: 7, revision: 'B' })).toBe('Q-0007 B');
    expect([numberOfName('Q-0007'), numberOfName('Q-12345')]).toEqual([7, 12_345]);
    for (const name of ['Q-007', 'XQ-0007', 'Q-0007 A', 'Q-00x7']) expect(numberOfName(name)).toBeUndefined();
  });

  test.each([
    ['A', 'B'],
    ['Y', 'Z'],
    ['Z', 'AA'],
    ['AZ', 'BA'],
    ['ZZ', 'AAA'],
    ['ABZ', 'ACA'],
  ])('after %s comes %s, and it is the later one', (revision, next) => {
    expect(revisionAfter(revision)).toBe(next);
    expect(laterRevision(next, revision)).toBeGreaterThan(0);
    expect(laterRevision(revision, next)).toBeLessThan(0);
    expect(laterRevision(revision, revision)).toBe(0);
  });

  test('days on: over the end of a month, of a leap year’s February, of a year', () => {
    expect(dayAfter('2026-05-31', 30)).toBe('2026-06-30');
    expect(dayAfter('2028-02-28', 1)).toBe('2028-02-29');
    expect(dayAfter('2026-12-31', 1)).toBe('2027-01-01');
    expect(dayAfter('2026-01-15', 0)).toBe('2026-01-15');
  });
});
