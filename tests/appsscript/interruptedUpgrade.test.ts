/**
 * An upgrade is cut short, and done again: the workbook is then the same as without the interruption.
 *
 * Covered: every kind of call in every step before the sheets, where an upgrade finds, completes and moves what is there,
 * each failing once. What follows, the looks, is given to a new workbook and an older one alike: see interrupted.test.ts.
 */
import { expect, test } from 'vitest';
import { snapshotOf } from '../../src/local/host/snapshot.ts';
import { layout } from '../../src/workbook/sheets.ts';
import { sample } from '../workbook/grownTables.ts';
import { callSites } from './callSites.ts';
import { failAt, type Run, uninterrupted } from './interruption.ts';
import { olderLayout, smallLayout } from './olderLayout.ts';

const small = smallLayout(layout);
const older = await uninterrupted({ layout: olderLayout(small), grids: sample('minimal') });
const run: Run = { layout: small, grids: {}, from: snapshotOf(older.host.workbook) };
const { host, expected } = await uninterrupted(run);
const sites = callSites(host, small);

test.each(['Begin', 'Sheets', 'Tables', 'Results'])(
  'can be upgraded again after any kind of call: %s',
  { timeout: 300_000 },
  async (step) => {
    const own = sites.filter((site) => site.step === step);
    expect(own.length).toBeGreaterThan(0);
    for (const { call } of own) await failAt(run, call, expected);
  },
);
