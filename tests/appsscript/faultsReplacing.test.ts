/**
 * A call fails while all tables are replaced, by a sample or by nothing: done again, the tables hold what they should, and
 * what they held before is still in the workbook.
 *
 * Laid out without blocks and charts: no number of theirs is looked at.
 */
import { describe, expect, test, vi } from 'vitest';
import type { LocalHost } from '../../src/local/host/localHost.ts';
import { snapshotOf } from '../../src/local/host/snapshot.ts';
import type { Answer } from '../../src/local/host/ui.ts';
import { localHost } from '../../src/local/localWorkbook.ts';
import { layout } from '../../src/workbook/sheets.ts';
import { sample } from '../sample.ts';
import { everySoMany } from './callSites.ts';
import { filesWith } from './layoutFiles.ts';
import { missing } from './missing.ts';
import { withoutBlocks } from './olderLayout.ts';
import { withoutSpareRows } from './spareRows.ts';
import { foreign, told } from './told.ts';
import { cellContents } from './workbookState.ts';

vi.setConfig({ testTimeout: 300_000 }); // where other work goes on beside

const small = withoutBlocks(layout);
const files = filesWith(small);
const used = await localHost(undefined, files);
const inputs = sample('minimal');
used.run('layOutTables_', inputs);
const saved = withoutSpareRows(snapshotOf(used.workbook), small);
const open = () => localHost(saved, files);

const OK = { button: 'OK' } as const;
const replacing: readonly (readonly [action: string, answers: readonly Answer[]])[] = [
  ['loadSample', [{ ...OK, text: 'sanderling' }, OK]],
  ['startBlank', [OK]],
];

/** What was given and is nowhere in the workbook, each cell as often as it was given. */
function lost(host: LocalHost): string[] {
  const given = Object.values(inputs).flat(2).map(String);
  const texts = [...cellContents(host).values()].map((text) => text.replace(/^'/, ''));
  return missing(
    given.filter((text) => text !== ''),
    texts,
  );
}

/** What stands in the tables' sheets. */
const tables = (host: LocalHost) => {
  const kept = [...cellContents(host)].filter(([place]) => !place.startsWith('Kept '));
  return Object.fromEntries(kept);
};

describe.each(replacing)('%s', (action, answers) => {
  test('whatever call fails', async () => {
    const sound = await open();
    sound.workbook.calls.reset();
    told(sound, action, answers);
    const { count } = sound.workbook.calls;
    const wanted = tables(sound);
    expect(lost(sound)).toEqual([]);
    for (const call of everySoMany(120, count, action)) {
      const host = await open();
      host.workbook.calls.failAt(call);
      expect(told(host, action, answers).words).not.toMatch(foreign);
      host.workbook.calls.reset();
      expect(lost(host), `after call ${call}`).toEqual([]);
      told(host, action, answers);
      expect(tables(host), `call ${call}`).toEqual(wanted);
      expect(lost(host), `again after call ${call}`).toEqual([]);
    }
  });
});
