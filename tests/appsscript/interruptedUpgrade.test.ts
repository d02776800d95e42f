/**
 * An upgrade is cut short, and done again: the workbook is then the same as without the interruption.
 *
 * Covered: every kind of call in every step before the sheets, where an upgrade finds, completes and moves what is there,
 * each failing once; and every so many calls of the upgrade of a whole workbook that looks otherwise, others in every run.
 * All of them: `npm run interruptions`.
 */
import { describe, expect, test } from 'vitest';
import { snapshotOf } from '../../src/local/host/snapshot.ts';
import { layout } from '../../src/workbook/sheets.ts';
import { sample } from '../sample.ts';
import { callSites, everySoMany } from './callSites.ts';
import { failAt, olderWorkbook, type Run, uninterrupted } from './interruption.ts';
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

describe('a whole workbook', async () => {
  const whole: Run = { layout, grids: {}, from: await olderWorkbook() };
  const upgraded = await uninterrupted(whole);
  const calls = everySoMany(450, upgraded.host.workbook.calls.count, 'the whole upgrade');

  test.each(calls)('can be upgraded again after call %i', { timeout: 120_000 }, async (call) => {
    await failAt(whole, call, upgraded.expected);
  });
});
