/** Laying out over an older workbook that a person has filled and changed: nothing that was entered is lost. */
import { describe, expect, test } from 'vitest';
import { inputs, keepEveryInput, older, openedAgain, places, quick } from './editedWorkbooks.ts';
import { cellContents } from './workbookState.ts';

// The other half of the two hundred is in upgradeAgain.test.ts: two files use two cores.
test('100 workbooks changed at random keep every input', { timeout: 1_200_000 }, () =>
  keepEveryInput(100, 0),
);

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
});
