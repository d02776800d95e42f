import { expect } from 'vitest';
import { snapshotOf, type WorkbookSnapshot } from '../../src/local/host/snapshot.ts';
import { localHost } from '../../src/local/localWorkbook.ts';
import type { Grids, Layout } from '../../src/workbook/layout.ts';
import { layout as wholeLayout } from '../../src/workbook/sheets.ts';
import { sample } from '../sample.ts';
import { filesWith } from './layoutFiles.ts';
import { olderLayout, withoutLooks } from './olderLayout.ts';
import { workbookState } from './workbookState.ts';

/** A workbook, and what is done to it. */
export interface Run {
  readonly layout: Layout;
  readonly grids: Grids;
  readonly from?: WorkbookSnapshot;
}

export async function open({ layout, from }: Run) {
  const host = await localHost(from, filesWith(layout));
  host.workbook.calls.reset(); // opening computes the blocks, which reads the library
  return host;
}

export async function uninterrupted(run: Run) {
  const host = await open(run);
  host.run('layOutTables_', run.grids);
  return { host, expected: workbookState(host) };
}

/** The run fails at a call, is done again, and leads to the same workbook as without the failure. */
export async function failAt(run: Run, call: number, expected: unknown): Promise<void> {
  const host = await open(run);
  host.workbook.calls.failAt(call);
  expect(() => host.run('layOutTables_', run.grids)).toThrow(`Service failed at call ${call}`);
  const name = host.workbook.calls.names[call - 1];
  host.workbook.calls.reset();
  host.run('layOutTables_', run.grids);
  expect(workbookState(host), `after call ${call}, ${name}`).toEqual(expected);
}

/** A whole workbook as an earlier version might have left it, without any looks. */
export async function olderWorkbook(): Promise<WorkbookSnapshot> {
  const { host } = await uninterrupted({ layout: olderLayout(wholeLayout), grids: sample('minimal') });
  return withoutLooks(snapshotOf(host.workbook));
}
