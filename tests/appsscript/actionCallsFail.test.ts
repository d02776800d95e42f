/** Calls to Google fail in the midst of the actions of the menu and the panel. */
import { describe, expect, test } from 'vitest';
import type { LocalHost } from '../../src/local/host/localHost.ts';
import { everySoMany } from './callSites.ts';
import { type Action, clearly, clearStop, looking, OK, open } from './workbookInUse.ts';
import { cellContents } from './workbookState.ts';

describe('any call of an action fails: it says so, changes nothing, and can be done again', () => {
  const again: readonly Action[] = [
    ...looking,
    ['compareIssuedQuotes'],
    ['setOption', [], ['tanks', 'wing tanks', true]],
    ['setQuotedPackage', [], ['Elm']],
  ];
  test.each(again.map((action) => [action[0], action] as const))('%s', async (_, action) => {
    const host = await open();
    const { calls } = host.workbook;
    clearly(host, action); // reads the library
    calls.reset();
    const sound = clearly(host, action);
    const { count } = calls;
    const before = cellContents(host);
    for (let call = 1; call <= count; call++) {
      calls.reset();
      calls.failAt(call);
      const { words, isShown } = clearly(host, action);
      if (words.includes('Service failed')) expect(words).toContain(clearStop(call));
      else expect(isShown || words === sound.words, `call ${call}`).toBe(true); // a lock that is not given back
    }
    calls.reset();
    expect(cellContents(host)).toEqual(before);
    expect(clearly(host, action)).toEqual(sound);
  });
});

test('a call fails while what a quote promised is taken in: once more makes it good', {
  timeout: 300_000, // where other work goes on beside
}, async () => {
  const takeIn: Action = ['takeQuoteIn', [{ ...OK, text: '1' }, OK]];
  const asQuoted = (host: LocalHost) => host.values('Weighing data!A1:AZ60');
  const sound = await open();
  clearly(sound, looking[0] as Action); // reads the library
  const before = asQuoted(sound);
  sound.workbook.calls.reset();
  expect(clearly(sound, takeIn).words).toContain('Taken in.');
  const { count } = sound.workbook.calls;
  const after = asQuoted(sound);
  expect(after).not.toEqual(before);
  for (const call of everySoMany(3, count, 'taking a quote in')) {
    const host = await open();
    host.workbook.calls.failAt(call);
    clearly(host, takeIn);
    host.workbook.calls.reset();
    expect([before, after], `call ${call}`).toContainEqual(asQuoted(host));
    clearly(host, takeIn);
    expect(asQuoted(host), `call ${call}`).toEqual(after);
    while (!/Nothing is taken in/.test(clearly(host, ['putBackAdopted', [OK]]).words));
    expect(asQuoted(host), `call ${call}`).toEqual(before);
  }
});

test('a call of laying out fails: it says so', async () => {
  const host = await open();
  const { calls } = host.workbook;
  host.run('layOutTables_', {});
  const { count } = calls;
  for (const call of everySoMany(40, count, 'laying out')) {
    calls.reset();
    calls.failAt(call);
    expect(clearly(host, ['layOutFromMenu']).words).toContain(clearStop(call));
  }
});
