/** Laying out over an older workbook that a person has filled and changed: nothing that was entered is lost. */
import { describe, expect, test } from 'vitest';
import { inputs, keepEveryInput, older, openedAgain, places, quick } from './editedWorkbooks.ts';
import { laterFields } from './olderLayout.ts';
import { sheetNames } from './sheetsByHand.ts';
import { cellContents } from './workbookState.ts';

// The other half of the two hundred is in upgradeAgain.test.ts: two files use two cores.
test('100 workbooks changed at random keep every input', { timeout: 1_200_000 }, () =>
  keepEveryInput(100, 0),
);

describe('an older workbook', () => {
  test('gets the sheets, fields and words that it lacks, where they belong', async () => {
    const host = await openedAgain();
    host.run('layOutTables_', {});
    expect(sheetNames(host)).toEqual(quick.sheets.map(({ name }) => name));
    const contents = cellContents(host);
    const words = [...contents.values()];
    expect(words.filter((text) => /as it was called|as it was asked/.test(text))).toEqual([]);
    for (const [table, labels] of Object.entries(laterFields)) {
      const sheet = quick.sheets.find(({ tables }) => tables.some((each) => each.table === table));
      const there = [...contents].filter(([place]) => place.startsWith(`${sheet?.name} `));
      expect(there.map(([, text]) => text)).toEqual(
        expect.arrayContaining(labels.map((label) => `'${label}`)),
      );
    }
    const all = inputs(host, places(host));
    for (const [key, text] of inputs(older, places(older))) expect(all.get(key)).toBe(text);
  });
});
