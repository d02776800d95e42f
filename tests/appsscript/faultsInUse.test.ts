/** Of a workbook in use a person takes something away. */
import { describe, expect, test } from 'vitest';
import { zoneToA1 } from '../../src/local/host/a1.ts';
import type { Zone } from '../../src/local/host/engine.ts';
import type { LocalHost } from '../../src/local/host/localHost.ts';
import type { Cell } from '../../src/tables/cell.ts';
import { headerRow } from '../../src/workbook/tableSource.ts';
import { deleteSheet, renameSheet, sheetId, sheetNames } from './sheetsByHand.ts';
import { told } from './told.ts';
import { expectClear, layOutAgain, look, open, seenWhenSound, small, used } from './workbookInUse.ts';
import { cellContents } from './workbookState.ts';

const tables = small.sheets.flatMap((sheet) => sheet.tables);
const allSheets = sheetNames(used);
const inputSheets = small.sheets.filter((sheet) => sheet.tables.length > 0).map(({ name }) => name);
const ledger = ['Quotes issued', 'Quote records', 'Q-0001 A', 'Former values'];

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
