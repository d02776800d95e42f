/** The flight-test cards, as the menu shows them in a dialog to print. */
import { beforeEach, expect, test } from 'vitest';
import { type AsBuiltWorkbook, openAsBuilt } from './asBuiltWorkbook.ts';

let built: AsBuiltWorkbook;
beforeEach(async () => {
  built = await openAsBuilt();
});

test('are shown in a dialog to print, with the loadings of the weighed aircraft once it is taken in', () => {
  built.host.run('printTestCards');
  const page = () => built.host.workbook.ui.dialogs.at(-1)?.page.content ?? '';
  expect(built.host.workbook.ui.dialogs.at(-1)?.title).toBe('Flight-test cards');
  const printed = () => JSON.parse(/id="printed-data">(.*?)<\/script>/s.exec(page())?.[1] ?? '');
  const cards = printed().groups.flatMap((group: { cards: unknown[] }) => group.cards);
  expect(cards).toHaveLength(14);
  expect(printed().words.join(' ')).toContain('PREDICTED');
  built.act('adoptWeighing', 'OK');
  built.host.run('printTestCards');
  expect(printed().words.join(' ')).toContain('1,431.6 lb at 98.6 in, as weighed');
});

test('with faults in the tables it says so', () => {
  const row = built.airframeRow('wing area');
  built.workbook.setCell('Airframe', `B${row}`, "'much");
  built.host.run('printTestCards');
  expect(built.host.workbook.ui.dialogs).toHaveLength(0);
  expect(built.lastAsked()).toContain('got "much"');
});
