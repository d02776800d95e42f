/** `npm run preview` with a browser before it. */
import { type ChildProcess, spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import type { Browser, FrameLocator, Page } from 'playwright-core';
import type { LocalHost } from '../../src/local/host/localHost.ts';
import { launchChromium } from './programs.ts';

const root = fileURLToPath(new URL('../../', import.meta.url));

declare global {
  /** The page's workbook, which it leaves for whoever tries the script from the console. */
  var workbook: LocalHost;
}

export interface Preview {
  readonly address: string;
  readonly page: Page;
  /** Everything the browser asked anybody for. */
  readonly requests: string[];
  /** What went wrong in the page, by the console's word. */
  readonly errors: string[];
  /** What the page asked or told the person, which was agreed to. */
  readonly dialogs: string[];
  close(): Promise<void>;
}

/** Starts the command and gives the address that it prints. */
function started(values: readonly string[]): Promise<{ server: ChildProcess; address: string }> {
  const script = [
    '--import',
    './src/local/register.mjs',
    'src/local/preview/preview.ts',
    '--port',
    '0',
    ...values,
  ];
  const server = spawn(process.execPath, script, { cwd: root, stdio: ['ignore', 'pipe', 'pipe'] });
  return new Promise((resolve, reject) => {
    let told = '';
    const listen = (part: Buffer) => {
      told += part.toString();
      const address = /http:\/\/[^ ]+/.exec(told)?.[0];
      if (address) resolve({ server, address });
    };
    server.stdout.on('data', listen);
    server.stderr.on('data', listen);
    server.on('exit', () => reject(new Error(`npm run preview ended: ${told}`)));
  });
}

export async function openPreview(...values: readonly string[]): Promise<Preview> {
  const { server, address } = await started(values);
  const browser: Browser = await launchChromium();
  const context = await browser.newContext({ viewport: { width: 1400, height: 900 } });
  const requests: string[] = [];
  const errors: string[] = [];
  const dialogs: string[] = [];
  context.on('request', (request) => requests.push(request.url()));
  const page = await context.newPage();
  page.on('console', (message) => message.type() === 'error' && errors.push(message.text()));
  page.on('pageerror', (error) => errors.push(error.message));
  page.on('dialog', async (dialog) => {
    dialogs.push(dialog.message());
    await dialog.accept();
  });
  await page.addInitScript(() => {
    window.print = () => {
      document.documentElement.dataset.printed = 'yes';
    };
  });
  const close = async () => {
    await browser.close();
    server.kill();
  };
  return { address, page, requests, errors, dialogs, close };
}

/** Opens the page; gives the milliseconds until it could be used. */
export async function load(page: Page, address: string): Promise<number> {
  await page.goto(address);
  await page.waitForFunction(
    () => document.body?.dataset.ready !== undefined || document.querySelector('#status.failed') !== null,
  );
  const ready = await page.evaluate(() => document.body.dataset.ready);
  if (ready === undefined) throw new Error((await page.textContent('#status')) ?? '');
  return Number(ready);
}

export const panelOf = (page: Page): FrameLocator => page.frameLocator('#sidebar iframe');
export const statusOf = async (page: Page): Promise<string> => (await page.textContent('#status')) ?? '';

/** Values of a sheet from its first cell on. */
export const valuesOf = (page: Page, sheet: string, columns = 12, rows = 160): Promise<unknown[][]> =>
  page.evaluate(
    ([name, right, bottom]) => {
      const { getters } = workbook.workbook.model;
      const id = workbook.workbook.sheetIdNamed(name) ?? '';
      const width = Math.min(Number(right), getters.getNumberCols(id));
      const height = Math.min(Number(bottom), getters.getNumberRows(id));
      const position = (row: number) => (_: unknown, col: number) =>
        getters.getEvaluatedCell({ sheetId: id, col, row }).value ?? null;
      return Array.from({ length: height }, (_, row) => Array.from({ length: width }, position(row)));
    },
    [sheet, columns, rows] as const,
  );

/** Place of a cell by what begins its row and what heads its column; columns and rows counted from 0. */
export async function placeOf(
  page: Page,
  sheet: string,
  rowName: string,
  columnName: string,
): Promise<{ readonly col: number; readonly row: number; readonly value: unknown }> {
  const values = await valuesOf(page, sheet, 60);
  const row = values.findIndex((cells) => String(cells[0]).trim() === rowName);
  const header = values.slice(0, row).find((cells) => cells.some((cell) => cell === columnName));
  const col = header?.indexOf(columnName) ?? -1;
  if (row < 0 || col < 0) throw new Error(`${sheet} has no "${rowName}" under "${columnName}"`);
  return { col, row, value: values[row]?.[col] };
}

/** Shows a sheet and clicks on a cell, near its left edge: in its middle a tick box would be ticked. */
export async function select(page: Page, sheet: string, col: number, row: number): Promise<void> {
  await page.evaluate(
    ([name, c, r]) => {
      const { model } = workbook.workbook;
      const { getters } = model;
      const sheetIdTo = workbook.workbook.sheetIdNamed(name) ?? '';
      const sheetIdFrom = getters.getActiveSheetId();
      if (sheetIdTo !== sheetIdFrom) model.dispatch('ACTIVATE_SHEET', { sheetIdFrom, sheetIdTo });
      model.selection.selectCell(Number(c), Number(r));
    },
    [sheet, col, row] as const,
  );
  const [x = 0, y = 0] = await page.evaluate(() => {
    const { getters } = workbook.workbook.model;
    const rect = getters.getVisibleRectWithoutHeaders(getters.getSelectedZone());
    return [rect.x + 3, rect.y + rect.height / 2];
  });
  await page.locator('.o-grid-overlay').click({ position: { x, y } });
  await page.waitForFunction(() => document.activeElement?.classList.contains('o-composer'));
}

/** Types into the selected cell; gives the milliseconds from the Enter key to the painted result. */
export async function typeInto(page: Page, text: string): Promise<number> {
  await page.evaluate(() => {
    delete document.body.dataset.painted;
    const painted = (from: number) => {
      document.body.dataset.painted = String(performance.now() - from);
    };
    const measure = (event: KeyboardEvent) => {
      if (event.key !== 'Enter') return;
      removeEventListener('keydown', measure, true);
      const from = performance.now();
      requestAnimationFrame(() => requestAnimationFrame(() => painted(from)));
    };
    addEventListener('keydown', measure, true);
  });
  await page.keyboard.type(text, { delay: 25 }); // as fast as a hand
  await page.keyboard.press('Enter');
  await page.waitForFunction(() => document.body.dataset.painted !== undefined);
  return Number(await page.evaluate(() => document.body.dataset.painted));
}
