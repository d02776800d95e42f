/**
 * Laying out is cut short, and done again: the workbook is then the same as without the interruption.
 *
 * Covered: every kind of call in every step before the sheets, on sheets with blocks and on sheets without, each failing
 * once, of a layout with all tables and a sheet of every kind; and every so many calls of the whole layout, others in
 * every run. All of them: `npm run interruptions`.
 */
import { describe, expect, test } from 'vitest';
import { layout } from '../../src/workbook/sheets.ts';
import { sample } from '../sample.ts';
import { callSites, everySoMany } from './callSites.ts';
import { failAt, type Run, uninterrupted } from './interruption.ts';
import { smallLayout } from './olderLayout.ts';

const grids = sample('minimal');

describe('a new workbook', async () => {
  const run: Run = { layout: smallLayout(layout), grids };
  const { host, expected } = await uninterrupted(run);
  const sites = callSites(host, run.layout);
  const steps = [...new Set(sites.map(({ step }) => step))];

  test('has the steps that it says it has', () => {
    expect(steps).toEqual([
      'Begin',
      'Sheets',
      'Tables',
      'Results',
      'a sheet of lines or tables',
      'a sheet with blocks',
    ]);
  });

  test.each(steps)('can be laid out again after any kind of call: %s', { timeout: 300_000 }, async (step) => {
    for (const { call } of sites.filter((site) => site.step === step)) await failAt(run, call, expected);
  });
});

describe('the whole layout', async () => {
  const run: Run = { layout, grids };
  const { host, expected } = await uninterrupted(run);
  const calls = everySoMany(240, host.workbook.calls.count, 'the whole layout');

  test.each(calls)('can be laid out again after call %i', { timeout: 120_000 }, async (call) => {
    await failAt(run, call, expected);
  });
});
