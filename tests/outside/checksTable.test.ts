import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { withChecks } from './checksTable.ts';
import { secondOpinions } from './secondOpinions.ts';

const text = (path: string) => readFileSync(fileURLToPath(new URL(`../../${path}`, import.meta.url)), 'utf8');

test('DEVELOPERS.md holds what `npm run checks` would write', () => {
  const document = text('DEVELOPERS.md');
  expect(withChecks(document)).toBe(document);
});

test.each(secondOpinions)('$program is asked in $file', ({ program, file }) => {
  const quoted = [`'${program}'`, `'${program}/`]; // the package, or one of its entries
  expect(quoted.some((name) => text(file).includes(name))).toBe(true);
  const { devDependencies } = JSON.parse(text('package.json')) as { devDependencies: Record<string, string> };
  if (program !== 'units') expect(Object.keys(devDependencies)).toContain(program);
});

test('a document without its markers is refused', () => {
  expect(() => withChecks('# Developers')).toThrow(/once/);
});
