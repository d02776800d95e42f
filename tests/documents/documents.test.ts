import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { call, formulas, tableFunctions } from '../../src/functions/library.ts';
import { buildTables } from '../../src/tables/build.ts';
import { tableNames } from '../../src/tables/catalogue.ts';
import { quoteTable } from '../../src/tables/quote.ts';
import { withBlock } from './markers.ts';
import { withReadmeBlocks } from './readme.ts';
import { families, limitsOf, reference } from './reference.ts';
import { everyTable } from './tables.ts';

const text = (name: string) => readFileSync(fileURLToPath(new URL(`../../${name}`, import.meta.url)), 'utf8');

test('README.md holds what `npm run documents` would write', () => {
  const document = text('README.md');
  expect(withReadmeBlocks(document)).toBe(document);
});

test('a document without its markers is refused', () => {
  expect(() => withBlock('# Title', 'comparison', '')).toThrow(/once/);
});

test('REFERENCE.md holds what `npm run documents` would write', () => {
  expect(text('REFERENCE.md')).toBe(reference());
});

test('it has every function and every table', () => {
  expect(families.flatMap(([, own]) => own)).toEqual(formulas);
  for (const { name } of tableFunctions) expect(text('REFERENCE.md')).toContain(`| \`${name}\` |`);
  expect(everyTable.map(({ table }) => table.name)).toEqual([...tableNames, quoteTable.name, ...buildTables]);
});

test('a limit is the one that the function keeps', () => {
  const [altitude] = formulas.find(({ name }) => name === 'ISA_TEMPERATURE')?.arguments ?? [];
  expect(altitude && limitsOf(altitude)).toEqual(['at least -2000 ft', 'at most 60000 ft']);
  expect(() => call('ISA_TEMPERATURE', [60_001])).toThrow(/at most 60000 ft/);
  expect(() => call('ISA_TEMPERATURE', [60_000])).not.toThrow();
});
