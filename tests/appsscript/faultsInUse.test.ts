/**
 * A workbook in use, a quote issued and a weighing taken in, of which a person takes something away or changes it by hand:
 * every action says so in words, nothing is lost, and laying out again repairs what can be repaired.
 *
 * Laid out without blocks and charts: what is tried here reads tables and records, and computes for itself.
 */
import { describe, expect, test } from 'vitest';
import { dataFiles } from '../../src/local/build.ts';
import { zoneToA1 } from '../../src/local/host/a1.ts';
import type { Zone } from '../../src/local/host/engine.ts';
import type { LocalHost } from '../../src/local/host/localHost.ts';
import { snapshotOf } from '../../src/local/host/snapshot.ts';
import type { Answer } from '../../src/local/host/ui.ts';
import { localHost } from '../../src/local/localWorkbook.ts';
import type { Cell } from '../../src/tables/cell.ts';
import { isOwn } from '../../src/workbook/own.ts';
import { layout } from '../../src/workbook/sheets.ts';
import { headerRow } from '../../src/workbook/tableSource.ts';
import { sample } from '../sample.ts';
import { everySoMany } from './callSites.ts';
import { missing } from './missing.ts';
import { withoutBlocks } from './olderLayout.ts';
import { withoutSpareRows } from './spareRows.ts';
import { foreign, type Told, told } from './told.ts';
import { cellContents } from './workbookState.ts';

const minimal = sample('minimal');
/** Three scales under the sample's aircraft, and level flights, both made up. */
const measured = {
  weighings: [
    ['weighing', 'date', 'point', 'reading', 'arm', 'level'],
    ['', '', '', 'kg', 'm', ''],
    [1, '2026-04-18', 'nosewheel', 110, 0.9, true],
    [1, '2026-04-18', 'left main', 160, 2.5, true],
    [1, '2026-04-18', 'right main', 162, 2.5, true],
  ],
  'test results': [
    ['test', 'date', 'power', 'weight', 'pressure altitude', 'OAT', 'true airspeed'],
    ['', '', 'kW', 'kg', 'ft', '°C', 'kt'],
    ['level flight', '2026-06-20', 50, 700, 8000, 5, 110],
    ['level flight', '2026-06-20', 40, 695, 8000, 5, 100],
    ['level flight', '2026-06-20', 35, 695, 8000, 5, 94],
  ],
};
const terms = [
  ['attribute', 'value', 'unit'],
  ['package', 'Elm', ''],
];
const OK = { button: 'OK' } as const;
const CANCEL = { button: 'CANCEL' } as const;

const small = withoutBlocks(layout);
const files = { ...(await dataFiles()), Layout: JSON.stringify(small) };
const used = await localHost(undefined, files);
used.run('layOutTables_', { ...minimal, ...measured, quote: terms });
told(used, 'issueQuoteFromMenu');
told(used, 'adoptWeighing', [OK]);
told(used, 'compareIssuedQuotes');
const saved = withoutSpareRows(snapshotOf(used.workbook), small);
const sheetId = ({ workbook }: LocalHost, name: string) => workbook.sheetIdNamed(name) as string;
const open = () => localHost(saved, files);

const tables = small.sheets.flatMap((sheet) => sheet.tables);
const sheetNames = ({ workbook }: LocalHost) =>
  workbook.model.getters.getSheetIds().map((id) => workbook.model.getters.getSheetName(id));
const allSheets = sheetNames(used);
const inputSheets = small.sheets.filter((sheet) => sheet.tables.length > 0).map(({ name }) => name);
const ledger = ['Quotes issued', 'Quote records', 'Q-0001 A', 'Former values'];

type Action = readonly [name: string, answers?: readonly Answer[], values?: readonly unknown[]];

/** Actions that change nothing: what they ask is declined. */
const looking: readonly Action[] = [
  ['checkData'],
  ['showPanel'],
  ['panelState', [], []],
  ['showInput', [], [{ table: 'tanks', row: 'wing tanks', column: 'usable' }]],
  ['quoteChanges', [], [1]],
  ['printQuote', [], [1, 'A']],
  ['takeQuoteIn', [{ ...OK, text: '1' }, CANCEL]],
  ['adoptResults', [CANCEL]],
  ['adoptWeighing', [CANCEL]],
  ['putBackAdopted', [CANCEL]],
  ['printTestCards'],
];
const writing: readonly Action[] = [
  ['putBackAdopted', [OK]],
  ['adoptWeighing', [OK]],
  ['adoptResults', [OK]],
  ['takeQuoteIn', [{ ...OK, text: '1' }, OK]],
  ['issueQuoteFromMenu'],
  ['issueQuote', [], [1]],
];

const clearStop = (call: number) =>
  `It stopped on the way: Service failed at call ${call}. Nothing is lost: do it again.`;

/** What a person is told, in words for persons. */
function clearly(host: LocalHost, [action, answers, values]: Action): Told {
  const given = told(host, action, answers, values);
  expect(given.words, action).not.toMatch(foreign);
  if (values === undefined) expect(given.isShown || given.words !== '', action).toBe(true);
  return given;
}

const look = (host: LocalHost) => looking.map((action) => clearly(host, action));
const seenWhenSound = look(await open());

/** Every action is clear; one that is not done changes nothing; an issue takes nothing away. */
function expectClear(host: LocalHost): void {
  const before = cellContents(host);
  look(host);
  expect(cellContents(host)).toEqual(before);
  clearly(host, ['compareIssuedQuotes']);
  for (const action of writing) {
    const earlier = cellContents(host);
    const { words, result, isShown } = clearly(host, action);
    const later = cellContents(host);
    const isIssued = isShown || result !== '';
    if (isIssued) expect(missing(earlier.values(), later.values()), action[0]).toEqual([]);
    else if (!/Taken in\.|as they were/.test(words)) expect(later, action[0]).toEqual(earlier);
  }
}

/** Laid out again, all that a person wrote is still somewhere. */
function layOutAgain(host: LocalHost): string {
  const before = [...cellContents(host).values()].filter((text) => !isOwn(text));
  const { words } = clearly(host, ['layOutFromMenu']);
  expect(missing(before, cellContents(host).values())).toEqual([]);
  return words;
}

function deleteSheet(host: LocalHost, name: string): void {
  host.workbook.dispatch('DELETE_SHEET', { sheetId: sheetId(host, name), sheetName: name });
}

function renameSheet(host: LocalHost, oldName: string, newName: string): void {
  host.workbook.dispatch('RENAME_SHEET', { sheetId: sheetId(host, oldName), oldName, newName });
}

function clearSheet(host: LocalHost, name: string): void {
  const { getters } = host.workbook.model;
  const id = sheetId(host, name);
  for (const { id: cell } of getters.getCells(id))
    host.workbook.dispatch('UPDATE_CELL', { ...getters.getCellPosition(cell), content: '' });
}

describe('a sheet deleted', () => {
  const isWhole = (host: LocalHost) => small.sheets.every(({ name }) => sheetNames(host).includes(name));

  test.each([...inputSheets, ...ledger])('%s', async (name) => {
    const host = await open();
    deleteSheet(host, name);
    expectClear(host);
    layOutAgain(host);
    expect(isWhole(host)).toBe(true);
  });

  test.each(allSheets.filter((name) => ![...inputSheets, ...ledger].includes(name)))('%s', async (name) => {
    const host = await open();
    deleteSheet(host, name);
    expect(look(host)).toEqual(seenWhenSound);
    layOutAgain(host);
    expect(isWhole(host)).toBe(true);
  });
});

describe('a sheet renamed', () => {
  test.each(small.sheets.map(({ name }) => name))('%s: as if it were not', async (name) => {
    const host = await open();
    renameSheet(host, name, `My ${name}`);
    expect(look(host)).toEqual(seenWhenSound);
    layOutAgain(host);
    expect(sheetNames(host)).toEqual(allSheets.map((each) => (each === name ? `My ${name}` : each)));
  });

  test.each(ledger)('%s', async (name) => {
    const host = await open();
    renameSheet(host, name, `My ${name}`);
    expectClear(host);
    layOutAgain(host);
    expect(sheetNames(host)).toContain(`My ${name}`);
  });
});

describe('a sheet cleared', () => {
  test.each([...inputSheets, ...ledger])('%s', async (name) => {
    const host = await open();
    clearSheet(host, name);
    expectClear(host);
    layOutAgain(host);
  });
});

describe('the name of a range deleted, laid out again all is as it was', () => {
  test.each(tables.map(({ range }) => range))('%s', async (range) => {
    const host = await open();
    host.workbook.dispatch('DELETE_NAMED_RANGE', { name: range });
    look(host);
    expect(layOutAgain(host)).not.toContain('Kept');
    expect(look(host)).toEqual(seenWhenSound);
  });
});

describe('the row of a table’s header deleted', () => {
  const rows = new Map(
    tables.map((table) => {
      const { getters } = used.workbook.model;
      const { sheetId: id, zone } = (
        getters.getNamedRange(table.range) as { range: { sheetId: string; zone: Zone } }
      ).range;
      const name = getters.getSheetName(id);
      const grid = used.values(`${name}!${zoneToA1(zone)}`) as Cell[][];
      return [
        `${name}, row ${zone.top + headerRow(table, grid) + 1}`,
        { id, name, row: zone.top + headerRow(table, grid) },
      ];
    }),
  );
  test.each([...rows])('%s', async (_, { id, name, row }) => {
    const host = await open();
    host.workbook.dispatch('REMOVE_COLUMNS_ROWS', {
      sheetId: id,
      sheetName: name,
      dimension: 'ROW',
      elements: [row],
    });
    expectClear(host);
    layOutAgain(host);
    expect(told(host, 'checkData').words).not.toContain('expected a header');
  });
});

describe('the document’s properties', () => {
  const fill = (properties: Map<string, string>) => {
    for (let index = 0; index < 60; index++) properties.set(`other ${index}`, 'x'.repeat(8500));
  };
  const spoil = (text: string) => (properties: Map<string, string>) => {
    for (const key of [...properties.keys()]) properties.set(key, text);
  };
  test.each([
    ['lost', (properties: Map<string, string>) => properties.clear()],
    ['full', fill],
    ['no JSON', spoil('{')],
    ['nothing', spoil('null')],
    ['a text', spoil('"x"')],
    ['a list', spoil('[1]')],
    ['of other kinds', spoil('{"Start":"x"}')],
  ])('%s', async (_, change) => {
    const host = await open();
    change(host.workbook.properties);
    const before = cellContents(host);
    expect(look(host)).toEqual(seenWhenSound);
    expect(layOutAgain(host)).not.toContain('Kept');
    expect(cellContents(host)).toEqual(before);
  });
});

describe('a cell of the books of quotes and former values changed by hand', () => {
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
});

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

  test('what a quote promised, taken in: once more makes it good', async () => {
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

  test('laying out', async () => {
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
});
