/** An older workbook, changed at random as persons do, and what must still be in it after the newer script has laid it out. */
import fc from 'fast-check';
import { expect } from 'vitest';
import type { LocalHost } from '../../src/local/host/localHost.ts';
import { snapshotOf } from '../../src/local/host/snapshot.ts';
import { localHost } from '../../src/local/localWorkbook.ts';
import type { Cell, Grid } from '../../src/tables/cell.ts';
import { inputCells } from '../../src/tables/inputs.ts';
import { layout } from '../../src/workbook/sheets.ts';
import { say, seed } from '../hostile/seed.ts';
import { sample } from '../sample.ts';
import { apply, edits, rename, renamings } from './edits.ts';
import { filesWith } from './layoutFiles.ts';
import { olderLayout, quickLayout } from './olderLayout.ts';
import { withoutSpareRows } from './spareRows.ts';
import { cellContents } from './workbookState.ts';

const grids = {
  ...sample('minimal'),
  rates: sample('sanderling').rates,
  equipment: sample('godwit').equipment,
};

export const quick = quickLayout(layout);
export const older = await localHost(undefined, filesWith(olderLayout(quick)));
older.run('layOutTables_', grids);
const olderWorkbook = withoutSpareRows(snapshotOf(older.workbook), quick);

/** The older workbook, with the newer script bound to it. */
export async function openedAgain(): Promise<LocalHost> {
  const host = await localHost(olderWorkbook, filesWith(quick));
  host.workbook.calls.reset(); // opening computes the blocks, which reads the library
  return host;
}

/** What every table holds, by names of table, row and column. */
export function inputs({ workbook }: LocalHost, from: ReadonlyMap<string, { sheetId: string; zone: Zone }>) {
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

export const places = ({ workbook }: LocalHost) =>
  new Map(
    workbook.model.getters
      .getNamedRanges()
      .map(({ name, range }) => [name, { sheetId: range.sheetId, zone: { ...range.zone } }]),
  );

/**
 * Changes as many older workbooks at random, each in several ways, lays them out, and looks for every input.
 * @param half two runs of one seed change other workbooks
 */
export async function keepEveryInput(numRuns: number, half: number): Promise<void> {
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
  await fc.assert(property, { seed: seed + half, numRuns, reporter: reportSeed, endOnFailure: true });
}

/** The seed is printed whatever comes of it: with it the same workbooks are changed again. */
function reportSeed<T>(details: fc.RunDetails<T>): void {
  say(`upgrades of ${details.numRuns} edited workbooks`);
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
