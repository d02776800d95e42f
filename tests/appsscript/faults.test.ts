/** What a person or Google may take away from a workbook: every action says so in words, and laying out again repairs. */
import { beforeEach, describe, expect, test, vi } from 'vitest';
import type { LocalHost } from '../../src/local/host/localHost.ts';
import { snapshotOf } from '../../src/local/host/snapshot.ts';
import { localHost } from '../../src/local/localWorkbook.ts';
import { layout } from '../../src/workbook/sheets.ts';
import { quoteTerms } from '../quoteTerms.ts';
import { sample } from '../sample.ts';
import { deleteSheet, renameSheet, sheetId, sheetNames } from './sheetsByHand.ts';
import { foreign, told as toldBy } from './told.ts';
import { cellContents, workbookState } from './workbookState.ts';

vi.setConfig({ testTimeout: 180_000 }); // where other work goes on beside

const minimal = sample('minimal');
const quote = quoteTerms('Elm');
const fresh = await localHost();
fresh.run('layOutTables_', { ...minimal, quote });
const saved = snapshotOf(fresh.workbook);
const sound = workbookState(await localHost(saved));
const contents = cellContents(await localHost(saved));

let host: LocalHost;
beforeEach(async () => {
  host = await localHost(saved);
});

/** Runs a menu's action. @returns all that a person is told */
const told = (action: string) => toldBy(host, action).words;

const actions = ['issueQuoteFromMenu', 'compareIssuedQuotes', 'checkData'] as const;
const buildersActions = [
  'takeQuoteIn',
  'adoptWeighing',
  'adoptResults',
  'putBackAdopted',
  'printTestCards',
  'showPanel',
] as const;
const tablesOf = (sheet: string) => layout.sheets.find(({ name }) => name === sheet)?.tables ?? [];

describe('a document without the workbook', () => {
  test.each(actions)('%s', async (action) => {
    host = await localHost();
    const words = told(action);
    expect(words).not.toBe('');
    expect(words).not.toMatch(foreign);
    if (action !== 'compareIssuedQuotes') expect(words).toMatch(/airframe: got nothing, expected this table/);
  });

  test.each(buildersActions)('%s', async (action) => {
    host = await localHost();
    const words = told(action);
    expect(words).not.toMatch(foreign);
    if (action !== 'showPanel') expect(words).not.toBe('');
  });
});

describe('a sheet deleted', () => {
  const names = layout.sheets.map(({ name }) => name);
  test.each(names)('%s', (name) => {
    deleteSheet(host, name);
    for (const action of actions) expect(told(action), action).not.toMatch(foreign);
    const required = tablesOf(name).filter(
      ({ table }) => (minimal as Record<string, unknown>)[table] !== undefined,
    );
    for (const { table } of required)
      expect(told('checkData')).toContain(`${table}: got nothing, expected this table`);
    told('layOutFromMenu');
    // nothing of another sheet is lost; what was on this one stands there again, without its inputs
    const after = cellContents(host);
    for (const [place, text] of contents) {
      if (!place.startsWith(`${name} `) && !text.includes('#REF')) expect(after.get(place), place).toBe(text);
    }
    expect(sheetNames(host)).toEqual(expect.arrayContaining(layout.sheets.map((each) => each.name)));
    for (const sheet of layout.sheets)
      for (const { range } of sheet.tables)
        expect(host.workbook.model.getters.getNamedRange(range)?.range.sheetId, range).toBe(
          sheetId(host, sheet.name),
        );
  });
});

test('all sheets renamed: every action finds its tables', () => {
  const before = told('checkData');
  for (const { name } of layout.sheets) renameSheet(host, name, `My ${name}`);
  expect(told('checkData')).toBe(before);
  for (const action of [...actions, ...buildersActions]) expect(told(action), action).not.toMatch(foreign);
});

describe('the name of a range deleted', () => {
  const ranges = layout.sheets.flatMap(({ tables }) =>
    tables.map(({ range, table }) => [range, table] as const),
  );
  test.each(ranges)('%s', (range, table) => {
    const named = () => host.workbook.model.getters.getNamedRange(range)?.range.zone;
    const before = named();
    host.workbook.dispatch('DELETE_NAMED_RANGE', { name: range });
    if (['airframe', 'envelope', 'stations', 'tanks', 'packages', 'components'].includes(table))
      expect(told('checkData')).toContain(`${table}: got nothing, expected this table`);
    expect(told('layOutFromMenu')).not.toMatch(/Kept/);
    expect(cellContents(host)).toEqual(contents);
    expect(before).toBeDefined();
    expect(named()).toEqual(before);
    expect(workbookState(host)).toEqual(sound);
  });
});

describe('the document’s properties', () => {
  test('lost, they are written anew', () => {
    host.workbook.properties.clear();
    expect(told('layOutFromMenu')).not.toMatch(/Kept/);
    expect(cellContents(host)).toEqual(contents);
    for (const key of ['layout version', 'layout sheets', 'layout looks'])
      expect(host.workbook.properties.has(key), key).toBe(true);
  });

  test('full, a new workbook says what could not be kept; with room again it is laid out', async () => {
    host = await localHost();
    const { properties } = host.workbook;
    for (let index = 0; index < 60; index++) properties.set(`other ${index}`, 'x'.repeat(8500));
    for (const key of [...properties.keys()].slice(58)) properties.set(key, 'x'.repeat(9000));
    expect(told('layOutFromMenu')).toMatch(/document’s properties.*free some.*lay out again/is);
    properties.clear();
    host.run('layOutTables_', { ...minimal, quote });
    expect(workbookState(host)).toEqual(sound);
  });

  test('spoilt by hand, they count as lost', () => {
    for (const key of [...host.workbook.properties.keys()]) host.workbook.properties.set(key, '{');
    expect(told('layOutFromMenu')).not.toMatch(/JSON|Unexpected|Kept/);
    expect(cellContents(host)).toEqual(contents);
  });
});
