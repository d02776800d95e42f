/** A person changes the books of quotes and former values by hand. */
import { expect, test } from 'vitest';
import { deleteSheet, renameSheet, sheetId } from './sheetsByHand.ts';
import { told } from './told.ts';
import { type Action, clearly, look, OK, open } from './workbookInUse.ts';
import { cellContents } from './workbookState.ts';

const edits: readonly (readonly [cell: string, text: string, action: Action, words: RegExp])[] = [
  ['Quotes issued!A2', "'Q-0009", ['quoteChanges', [], [1]], /There is no quote Q-0001/],
  ['Quotes issued!A2', '', ['quoteChanges', [], [1]], /There is no quote Q-0001/],
  [
    'Quotes issued!B2',
    "'Z",
    ['quoteChanges', [], [1]],
    /no Q-0001 Z, there was Q-0001 A.*changed by hand.*Delete it/,
  ],
  ['Quotes issued!B2', '', ['quoteChanges', [], [1]], /no Q-0001, there was Q-0001 A.*changed by hand/],
  [
    'Quotes issued!C2',
    "'2020-01-01",
    ['quoteChanges', [], [1]],
    /row of the register was changed by hand: Date;.*delete the row/,
  ],
  ['Quotes issued!F2', "'Ash", ['quoteChanges', [], [1]], /changed by hand: Package;/],
  ['Quotes issued!G2', '1', ['quoteChanges', [], [1]], /changed by hand: Total with tax;/],
  ['Quotes issued!G2', "'cheap", ['quoteChanges', [], [1]], /changed by hand: Total with tax;/],
  ['Quotes issued!K2', "'0000", ['quoteChanges', [], [1]], /changed by hand: Inputs, SHA-256;/],
  ['Quotes issued!A1', "'x", ['quoteChanges', [], [1]], /"name":"Q-0001 A".*"remarks":\[\]/],
  ['Quote records!A2', '7', ['quoteChanges', [], [1]], /record of Q-0001 A is gone/],
  ['Quote records!A2', "'x", ['quoteChanges', [], [1]], /record of Q-0001 A is gone/],
  ['Quote records!C2', '', ['quoteChanges', [], [1]], /"name":"Q-0001 A".*"remarks":\[\]/],
  ['Quote records!D2', "'0", ['quoteChanges', [], [1]], /Q-0001 A was changed since it was issued/],
  ['Quote records!E2', "'{}", ['printQuote', [], [1, 'A']], /Q-0001 A was changed since it was issued/],
  [
    'Quote records!E2',
    '',
    ['takeQuoteIn', [{ ...OK, text: '1' }]],
    /Q-0001 A was changed since it was issued/,
  ],
  ['Q-0001 A!B5', "'as agreed", ['quoteChanges', [], [1]], /sheet Q-0001 A was changed by hand: B5;/],
  ['Former values!C2', "'done", ['putBackAdopted'], /Row 2 of the sheet \\"Former values\\" was changed/],
  ['Former values!C2', '', ['putBackAdopted'], /Row 2 of the sheet \\"Former values\\" was changed/],
  ['Former values!E2', '', ['putBackAdopted'], /Row 2 of the sheet \\"Former values\\" was changed/],
  ['Former values!F2', "'[]", ['adoptWeighing'], /Row 2 of the sheet \\"Former values\\" was changed/],
];
test.each(edits)('%s: %s', async (cell, text, action, words) => {
  const host = await open();
  host.type(cell, text);
  const given = clearly(host, action);
  expect(`${given.words}${given.result}`).toMatch(words);
  look(host);
  clearly(host, ['compareIssuedQuotes']);
  clearly(host, ['issueQuoteFromMenu']);
  // What was issued is in the register, whatever was done to its row
  const register = [...cellContents(host)].filter(([place]) => place.startsWith('Quotes issued '));
  expect(register.map(([, each]) => each)).toContain("'Q-0001");
});

test('an edited row that is deleted is written anew by the next issue', async () => {
  const host = await open();
  const row = host.values('Quotes issued!A2:K2');
  host.type('Quotes issued!G2', '1');
  host.workbook.dispatch('REMOVE_COLUMNS_ROWS', {
    sheetId: sheetId(host, 'Quotes issued'),
    sheetName: 'Quotes issued',
    dimension: 'ROW',
    elements: [1],
  });
  told(host, 'issueQuoteFromMenu');
  expect(host.values('Quotes issued!A2:K2')).toEqual(row);
  expect(host.values('Quotes issued!A3:B3')).toEqual([['Q-0002', 'A']]);
});

test('register and records both deleted: the copy of the issued quote is left alone', async () => {
  const host = await open();
  const copy = host.values('Q-0001 A!A1:H60');
  deleteSheet(host, 'Quotes issued');
  deleteSheet(host, 'Quote records');
  expect(told(host, 'issueQuoteFromMenu').words).toContain('rename it and issue again');
  expect(host.values('Q-0001 A!A1:H60')).toEqual(copy);
  renameSheet(host, 'Q-0001 A', 'Old quote');
  expect(told(host, 'issueQuote', [], []).result).toContain('Q-0001 A');
  expect(host.values('Old quote!A1:H60')).toEqual(copy);
});
