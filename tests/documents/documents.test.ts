import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { withBlock } from './markers.ts';
import { withReadmeBlocks } from './readme.ts';

test('README.md holds what `npm run documents` would write', () => {
  const document = readFileSync(fileURLToPath(new URL('../../README.md', import.meta.url)), 'utf8');
  expect(withReadmeBlocks(document)).toBe(document);
});

test('a document without its markers is refused', () => {
  expect(() => withBlock('# Title', 'comparison', '')).toThrow(/once/);
});
