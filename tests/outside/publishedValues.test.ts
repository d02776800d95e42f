import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { formulas } from '../../src/functions/library.ts';
import { allowance } from './publishedValue.ts';
import { topics } from './topics.ts';

describe.each(topics)('$topic', ({ values, misprints = [] }) => {
  test.each(values)('$what: $expected ($source; $status)', ({ expected, tolerance, compute }) => {
    const computed = compute();
    expect(
      Math.abs(computed - expected),
      `${computed} for ${expected}, allowed ${allowance(expected, tolerance)}`,
    ).toBeLessThanOrEqual(allowance(expected, tolerance));
  });

  for (const { what, source, printed, tolerance, compute } of misprints) {
    test(`misprint: ${what} is not ${printed} (${source})`, () => {
      expect(Math.abs(compute() - printed)).toBeGreaterThan(allowance(printed, tolerance));
    });
  }
});

test('no value stands twice, and every tolerance is above 0', () => {
  const all = topics.flatMap(({ values }) => values);
  const names = all.map(({ what, source }) => `${what}|${source}`);
  expect(names.filter((name, index) => names.indexOf(name) !== index)).toEqual([]);
  for (const { expected, tolerance } of all) expect(allowance(expected, tolerance)).toBeGreaterThan(0);
});

test('every formula function is asked for a published value', () => {
  const folder = fileURLToPath(new URL('values', import.meta.url));
  const lists = readdirSync(folder).map((file) => readFileSync(`${folder}/${file}`, 'utf8'));
  const text = lists.join('\n');
  expect(formulas.map(({ name }) => name).filter((name) => !text.includes(`'${name}'`))).toEqual([]);
});
