/** The customer's report on a phone, on a desk and on paper. */
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { launchChromium, pdfPages, pdfText, writeGodwit } from './programs.ts';

const folder = mkdtempSync(join(tmpdir(), 'report-'));
let browser: Browser;

beforeAll(async () => {
  writeGodwit(folder);
  browser = await launchChromium();
});
afterAll(() => browser.close());

async function opened(width: number) {
  const page = await browser.newPage({ viewport: { width, height: 800 } });
  const requests: string[] = [];
  page.on('request', (request) => requests.push(request.url()));
  await page.goto(pathToFileURL(join(folder, 'godwit.html')).href);
  return { page, requests };
}

test.each([360, 768, 1400])('at %d px nothing but a table is wider than the screen', async (width) => {
  const { page, requests } = await opened(width);
  const widths = await page.evaluate(() => ({
    page: document.documentElement.scrollWidth,
    screen: document.documentElement.clientWidth,
    pictures: [...document.querySelectorAll('figure svg')].map((each) => each.getBoundingClientRect().width),
    letters: Math.min(
      ...[...document.querySelectorAll('p, td, li')].map((each) =>
        Number.parseFloat(getComputedStyle(each).fontSize),
      ),
    ),
  }));
  expect(widths.page).toBe(widths.screen);
  for (const picture of widths.pictures) expect(picture).toBeLessThanOrEqual(width);
  expect(widths.letters).toBeGreaterThanOrEqual(14);
  expect(requests).toHaveLength(1);
  await page.close();
});

test.each([
  ['A4', /595\.\d+ x 84\d/],
  ['Letter', /612 x 792/],
] as const)('on %s every table fits the paper and says what it says', async (format, size) => {
  const { page } = await opened(1000);
  const path = join(folder, `${format}.pdf`);
  await page.pdf({ path, format });
  expect(pdfPages(path).size).toMatch(size);
  expect(pdfPages(path).count).toBeLessThan(20);
  const text = pdfText(path);
  for (const heading of await page.locator('h2').allTextContents()) expect(text).toContain(heading);
  // 125,720: Rowan’s price, by hand in tests/assessment/cost.test.ts
  for (const word of ['Rowan', 'Larch', 'Hazel', 'Alder', '■ Stop', '▲ Check', '125,720', 'not for flight']) {
    expect(text).toContain(word);
  }
  // The columns of the widest table are all on the paper, the last one too
  expect(text).toMatch(/Package\s+Stream\s+Power\s+At[\s\S]*Verdict/);
  expect(text).toContain('TOO HOT');
  await page.close();
});

test('what is wider than the paper is nowhere', async () => {
  const { page } = await opened(1000);
  await page.emulateMedia({ media: 'print' });
  await page.setViewportSize({ width: 688, height: 900 }); // A4 less two margins of 14 mm, at 96 px to the inch
  const tooWide = await page.evaluate(() =>
    [...document.querySelectorAll('table, figure svg, dl, li')]
      .filter((each) => each.getBoundingClientRect().right > 689)
      .map((each) => each.textContent?.slice(0, 60)),
  );
  expect(tooWide).toEqual([]);
  await page.close();
});
