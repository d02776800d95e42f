/** Laying out over an older workbook that a person has filled and changed: nothing that was entered is lost. */
import { fileURLToPath } from 'node:url';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dataFiles } from '../../src/local/build.ts';
import type { LocalHost } from '../../src/local/host/localHost.ts';
import { snapshotOf } from '../../src/local/host/snapshot.ts';
import { readTableFolder } from '../../src/local/tableFolder.ts';
import { localHost } from '../../src/local/workbook.ts';
import type { Cell, Grid } from '../../src/tables/cell.ts';
import { inputCells } from '../../src/tables/inputs.ts';
import type { Layout } from '../../src/workbook/layout.ts';
import { layout } from '../../src/workbook/sheets.ts';
import { apply, edits, rename, renamings } from './edits.ts';
import { olderLayout, quickLayout } from './olderLayout.ts';
import { cellContents, workbookState } from './workbookState.ts';

const sample = (name: string) =>
  readTableFolder(fileURLToPath(new URL(`../../samples/${name}`, import.meta.url))).grids;
const grids = {
  ...sample('minimal'),
  rates: sample('sanderling').rates,
  equipment: sample('godwit').equipment,
};
const pushed = await dataFiles();
const files = (each: Layout) => ({ ...pushed, Layout: JSON.stringify(each) });

const quick = quickLayout(layout);
const older = await localHost(undefined, files(olderLayout(quick)));
older.run('layOutTables_', grids);
const olderWorkbook = snapshotOf(older.workbook);

/** The older workbook, with the newer script bound to it. */
async function openedAgain(): Promise<LocalHost> {
  const host = await localHost(olderWorkbook, files(quick));
  host.workbook.calls.reset(); // opening computes the blocks, which reads the library
  return host;
}

/** What every table holds, by names of table, row and column. */
function inputs({ workbook }: LocalHost, from: ReadonlyMap<string, { sheetId: string; zone: Zone }>) {
  const { getters } = workbook.model;
  const tables: Record<string, Grid> = {};
  for (const [name, { sheetId, zone }] of from) {
    const rows = Array.from({ length: zone.bottom - zone.top + 1 }, (_, r) =>
      Array.from({ length: zone.right - zone.left + 1 }, (_, c): Cell => {
        const { value } = getters.getEvaluatedCell({ sheetId, col: zone.left + c, row: zone.top + r });
        return value as Cell;
      }),
    );
    tables[name.replace(/_/g, ' ')] = rows;
  }
  return new Map(
    inputCells(tables).map(({ table, row, column, text }) => [`${table} | ${row} | ${column}`, text]),
  );
}

interface Zone {
  readonly top: number;
  readonly bottom: number;
  readonly left: number;
  readonly right: number;
}

const places = ({ workbook }: LocalHost) =>
  new Map(
    workbook.model.getters
      .getNamedRanges()
      .map(({ name, range }) => [name, { sheetId: range.sheetId, zone: { ...range.zone } }]),
  );

test('200 workbooks changed at random keep every input', { timeout: 1_800_000 }, async () => {
  const property = fc.asyncProperty(edits, renamings, async (changes, names) => {
    const host = await openedAgain();
    const outside = changes.flatMap((edit) => apply(host, edit));
    const before = inputs(host, places(host));
    const formulas = ownFormulas(host);
    for (const renaming of names) rename(host, renaming);
    host.run('layOutTables_', {});
    const after = inputs(host, places(host));
    for (const [key, text] of before) expect(after.get(key), key).toBe(text);
    const texts = new Set([...cellContents(host).values()].map((text) => text.replace(/^'/, '')));
    expect(outside.filter((text) => !texts.has(text))).toEqual([]);
    expect(ownFormulas(host)).toEqual(formulas);
  });
  await fc.assert(property, { numRuns: 200, reporter: reportSeed, endOnFailure: true });
});

/** The seed is printed whatever comes of it: with it the same workbooks are changed again. */
function reportSeed<T>(details: fc.RunDetails<T>): void {
  console.log(`upgrades of ${details.numRuns} edited workbooks, seed ${details.seed}`);
  if (details.failed) throw new Error(`${fc.defaultReportMessage(details)}\n${details.errorInstance}`);
}

/** Values of the formulas on a person's own sheets. */
function ownFormulas({ workbook }: LocalHost) {
  const { getters } = workbook.model;
  return getters
    .getSheetIds()
    .filter((id) => id.startsWith('mine-'))
    .map((id) => [2, 3].map((row) => getters.getEvaluatedCell({ sheetId: id, col: 0, row: row - 1 }).value));
}

describe('an older workbook', () => {
  test('gets the sheets, fields and words that it lacks, where they belong', async () => {
    const host = await openedAgain();
    host.run('layOutTables_', {});
    const { getters } = host.workbook.model;
    expect(getters.getSheetIds().map((id) => getters.getSheetName(id))).toEqual(
      quick.sheets.map(({ name }) => name),
    );
    const contents = [...cellContents(host).values()].join('\n');
    expect(contents).not.toMatch(/as it was called|as it was asked/);
    const all = inputs(host, places(host));
    for (const [key, text] of inputs(older, places(older))) expect(all.get(key)).toBe(text);
  });

  test('interrupted at any call it can be upgraded again, to the same workbook', {
    timeout: 600_000,
  }, async () => {
    const reference = await openedAgain();
    reference.run('layOutTables_', {});
    const expected = workbookState(reference);
    const { count } = reference.workbook.calls;
    const samples = 12;
    for (let index = 0; index < samples; index++) {
      const call = 1 + Math.round((index * (count - 1)) / (samples - 1));
      const host = await openedAgain();
      host.workbook.calls.failAt(call);
      expect(() => host.run('layOutTables_', {})).toThrow(`Service failed at call ${call}`);
      host.workbook.calls.reset();
      host.run('layOutTables_', {});
      expect(workbookState(host), `after call ${call}`).toEqual(expected);
    }
  });
});
