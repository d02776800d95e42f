/** The workbook in a real browser: opened, edited, broken, quoted, saved, opened again; one sitting, each test after the last. */
import { createHash } from 'node:crypto';
import { mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { storageOf } from '../../src/local/preview/storage.ts';
import { readTableFolder } from '../../src/local/tableFolder.ts';
import { readCatalogue } from '../../src/tables/catalogue.ts';
import {
  load,
  openPreview,
  type Preview,
  panelOf,
  placeOf,
  select,
  statusOf,
  typeInto,
  valuesOf,
} from './preview.ts';
import { pdfPages, pdfText } from './programs.ts';

const sample = fileURLToPath(new URL('../../samples/godwit', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'page-'));

/** Of a folder's files and what is in them. */
const digestOf = (path: string) =>
  readdirSync(path)
    .map((name) =>
      createHash('sha256')
        .update(readFileSync(join(path, name)))
        .digest('hex'),
    )
    .join();

let preview: Preview;
let page: Page;
/** The machine may have other work. */
const patient = { timeout: 20_000 };
const untouched = digestOf(sample);

beforeAll(async () => {
  preview = await openPreview('--out', folder);
  page = preview.page;
});

afterAll(async () => {
  await preview.close();
});

const payload = async () => Number((await placeOf(page, 'Comparison', 'payload, full fuel', 'Rowan')).value);

/** What the chart of loadings draws: its curves by name, and the title of the axis of weights; nothing until it is drawn. */
const loadings = () =>
  page.evaluate(() => {
    interface Drawn {
      readonly options: {
        readonly plugins: { readonly title: { readonly text: string } };
        readonly scales: { readonly y?: { readonly title: { readonly text: string } } };
      };
      readonly data: { readonly datasets: readonly Curve[] };
    }
    interface Curve {
      readonly label: string;
      readonly data: readonly { readonly y: number | null }[];
    }
    const { Chart } = globalThis as unknown as { Chart: { instances: Record<string, Drawn> } };
    const charts = Object.values(Chart.instances);
    const chart = charts.find(({ options }) => options.plugins.title.text.startsWith('Every loading'));
    const curves = (chart?.data.datasets ?? []).map(
      ({ label, data }) => [label, data.map(({ y }) => y)] as const,
    );
    return { axis: chart?.options.scales.y?.title.text, curves: Object.fromEntries(curves) };
  });

/** The lightest point of Rowan’s outline; undefined until it is drawn. */
async function lightestDrawn(): Promise<number | undefined> {
  const { curves } = await loadings();
  const weights = (curves.Rowan ?? []).filter((y) => y !== null && Number.isFinite(y)) as number[];
  return weights.length > 0 ? Math.min(...weights) : undefined;
}

const weightAxis = async () => (await loadings()).axis;

test('opens with every block computed', async () => {
  await load(page, preview.address);
  const sheets = await page.locator('.o-sheet').allTextContents();
  expect(sheets.map((name) => name.trim()).slice(0, 3)).toEqual(['Start', 'Comparison', 'Mission']);
  const comparison = await valuesOf(page, 'Comparison');
  expect(comparison[4]?.slice(0, 6)).toEqual(['Godwit', 'unit', 'Rowan', 'Larch', 'Hazel', 'Alder']);
  expect(await statusOf(page)).toContain('godwit-edited');
});

test('an option typed into the sheet moves payload and picture by its weight', async () => {
  const parachute = 44; // lb, samples/godwit/equipment.csv
  await select(page, 'Loading', 0, 0);
  await expect.poll(lightestDrawn, patient).toBeGreaterThan(0);
  const before = { payload: await payload(), lightest: Number(await lightestDrawn()) };
  const { col, row, value } = await placeOf(page, 'Equipment', 'rescue parachute', 'fitted');
  expect(value).toBe(false);
  await select(page, 'Equipment', col, row);
  await typeInto(page, 'TRUE');
  expect(await payload()).toBe(before.payload - parachute);
  await select(page, 'Loading', 0, 0);
  await expect.poll(lightestDrawn, patient).toBeCloseTo(before.lightest + parachute, 1);
});

test('a unit typed into the sheet is the unit of numbers and pictures', async () => {
  const { col, row } = await placeOf(page, 'Airframe', 'show weights in', 'value');
  const inPounds = await payload();
  for (const unit of ['kg', 'lb']) {
    await select(page, 'Airframe', col, row);
    await typeInto(page, unit);
    await select(page, 'Loading', 0, 0);
    await expect.poll(weightAxis, patient).toBe(`weight, ${unit}`);
    // payload is shown to 1 lb and to 1 kg
    const shown = (await payload()) * (unit === 'kg' ? 2.20462262 : 1);
    expect(Math.abs(shown - inPounds)).toBeLessThanOrEqual(unit === 'kg' ? 1.7 : 0);
  }
});

test('the panel ticks the same cell, and the sheet says the same price', async () => {
  const panel = panelOf(page);
  const before = Number((await placeOf(page, 'Comparison', 'total, without tax', 'Rowan')).value);
  await panel.getByLabel('pitot heat').check();
  await expect
    .poll(async () => (await placeOf(page, 'Equipment', 'pitot heat', 'fitted')).value, patient)
    .toBe(true);
  expect((await placeOf(page, 'Comparison', 'total, without tax', 'Rowan')).value).toBe(before + 520);
});

test('a broken cell is named wherever a result would stand, and undone is whole again', async () => {
  const { col, row, value } = await placeOf(page, 'Equipment', 'pitot heat', 'weight');
  await select(page, 'Equipment', col, row);
  await typeInto(page, 'lots');
  const message = 'No result: 1 fault in the tables. Correct what is listed here.';
  for (const sheet of ['Comparison', 'Mission', 'Cost', 'Findings']) {
    const values = (await valuesOf(page, sheet, 30, 60)).flat().map(String);
    const at = values.indexOf(message);
    expect(at, sheet).toBeGreaterThanOrEqual(0);
    const named = values.slice(at).find((text) => text.startsWith('equipment, row'));
    expect(named).toMatch(/\(pitot heat\), weight: got "lots", expected a number/);
  }
  await page.keyboard.press('Control+z');
  await expect.poll(payload, patient).toBeGreaterThan(0);
  expect((await placeOf(page, 'Equipment', 'pitot heat', 'weight')).value).toBe(value);
});

test('a quote issued from the panel is frozen, shown and printed', async () => {
  const panel = panelOf(page);
  await panel.getByRole('radio', { name: /^Rowan/ }).check();
  await panel.locator('#figures').getByText('Total with tax').waitFor();
  await panel.getByRole('button', { name: 'Issue quote' }).click();
  const dialog = page.frameLocator('#dialog iframe');
  await dialog.getByRole('heading', { name: 'Quote Q-0001 A' }).waitFor();
  expect(await page.textContent('#dialog-title')).toBe('Quote Q-0001 A');
  const total = await dialog.locator('.figures dd').first().textContent();
  await dialog.getByRole('button', { name: 'Print' }).click();
  expect(await dialog.locator('html').getAttribute('data-printed')).toBe('yes');

  const content = (await page.locator('#dialog iframe').getAttribute('srcdoc')) ?? '';
  const paper = await page.context().newPage();
  await paper.setContent(content.replace(/<script>\(function frameBridge[\s\S]*?<\/script>/, ''));
  for (const [format, size] of [
    ['A4', 'A4'],
    ['Letter', 'letter'],
  ] as const) {
    const path = join(folder, `quote-${format}.pdf`);
    await paper.pdf({ path, format, preferCSSPageSize: false });
    expect(pdfPages(path).size).toContain(size);
    const text = pdfText(path);
    expect(text).toContain('Quote Q-0001 A');
    expect(text).toContain(String(total));
    expect(text).toContain('rescue parachute');
    expect(text).toContain('pitot heat');
  }
  await paper.close();
  await page.getByRole('button', { name: 'Close', exact: true }).click();
  await page.locator('#dialog iframe').waitFor({ state: 'detached' }); // a dialog tells of its end a moment later
});

test('saves the tables as CSV beside the sample, which stays as it was', async () => {
  await page.getByRole('button', { name: 'Save tables' }).click();
  await expect.poll(() => statusOf(page), patient).toMatch(/tables saved to .*godwit-edited\.$/);
  const saved = readCatalogue(readTableFolder(join(folder, 'godwit-edited')).grids);
  const given = readCatalogue(readTableFolder(sample).grids);
  const fitted = (reading: typeof saved) =>
    reading.catalogue?.equipment.filter((each) => each.fitted).map(({ name }) => name);
  expect(fitted(saved)).toEqual([...(fitted(given) ?? []), 'pitot heat', 'rescue parachute']);
  const changed = saved.catalogue?.equipment.map((each) => ({ ...each, fitted: false }));
  expect(changed).toEqual(given.catalogue?.equipment.map((each) => ({ ...each, fitted: false })));
  expect({ ...saved.catalogue, equipment: [] }).toEqual({ ...given.catalogue, equipment: [] });
  expect(digestOf(sample)).toBe(untouched);
});

test('is as it was left when the page opens again, until it is dropped', async () => {
  const before = await payload();
  await page.waitForFunction(() => document.body.dataset.work === 'put away');
  await load(page, preview.address);
  expect(await statusOf(page)).toMatch(/^Your work of .* is back\./);
  expect(await payload()).toBe(before);
  expect((await placeOf(page, 'Equipment', 'rescue parachute', 'fitted')).value).toBe(true);
  const sheets = (await page.locator('.o-sheet').allTextContents()).map((name) => name.trim());
  expect(sheets).toContain('Q-0001 A');
  await select(page, 'Loading', 0, 0);
  await expect.poll(lightestDrawn, patient).toBeGreaterThan(0);

  await page.getByRole('button', { name: 'Start again from the folder' }).click();
  await page.waitForFunction(
    () =>
      document.body?.dataset.ready !== undefined &&
      !document.querySelector('#status')?.textContent?.startsWith('Your work'),
  );
  expect((await placeOf(page, 'Equipment', 'rescue parachute', 'fitted')).value).toBe(false);
});

test('work that can no longer be read is said, and can be dropped', async () => {
  writeFileSync(storageOf(sample, folder, false).autosave, '{"snapshot": {"model"');
  await expect(load(page, preview.address)).rejects.toThrow('The workbook could not be opened');
  await page.getByRole('button', { name: 'Start again from the folder' }).click();
  await page.waitForFunction(() => document.body?.dataset.ready !== undefined);
  expect(await payload()).toBeGreaterThan(0);
  preview.errors.splice(0); // the browser's console says the same
});

test('nothing was asked of anybody but this server, and nothing went wrong', () => {
  const elsewhere = preview.requests.filter(
    (url) => !url.startsWith(preview.address) && !/^(data|blob|about):/.test(url),
  );
  expect(elsewhere).toEqual([]);
  expect(preview.requests.length).toBeGreaterThan(10);
  expect(preview.errors).toEqual([]);
});
