/** The pages as they are pushed: no markup made of texts, nothing fetched, every text dark enough to read. */
import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { pages } from './page.ts';

const folder = new URL('../../src/sidebar/', import.meta.url);
const sources = readdirSync(folder).filter((name) => name.endsWith('.ts'));

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
