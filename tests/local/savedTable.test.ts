/** Tables laid out in a workbook and saved again say what they said. */
import { describe, expect, test } from 'vitest';
import { openLocalWorkbook } from '../../src/local/localWorkbook.ts';
import { tablesToSave } from '../../src/local/preview/page/tables.ts';
import { savedTable } from '../../src/local/savedTable.ts';
import { csvOfGrid, gridOfCsv } from '../../src/local/tableFolder.ts';
import { readCatalogue, type TableGrids } from '../../src/tables/catalogue.ts';
import type { Grid } from '../../src/tables/cell.ts';
import { layout } from '../../src/workbook/sheets.ts';
import { tableLayouts } from '../../src/workbook/tables.ts';
import { sample } from '../sample.ts';

/** As it is after a way through a file. */
const throughFile = (tables: Readonly<Record<string, Grid>>): TableGrids =>
  Object.fromEntries(Object.entries(tables).map(([name, grid]) => [name, gridOfCsv(csvOfGrid(grid), name)]));

describe.each(['godwit', 'godwit-as-built', 'sanderling', 'minimal'])('%s', (name) => {
  test('is the same aircraft after laying out and saving', async () => {
    const given = sample(name);
    const workbook = await openLocalWorkbook(given);
    const { tables, lost } = tablesToSave(workbook.host, layout);
    expect(lost).toEqual([]);
    expect(Object.keys(tables)).toEqual(expect.arrayContaining(Object.keys(given)));
    const before = readCatalogue(given);
    expect(before.faults).toEqual([]);
    expect(readCatalogue(throughFile(tables))).toEqual(before);
  });
});

describe('a range of a sheet', () => {
  const { tanks, mission, packages } = tableLayouts;

  test('is saved from its header on, without the room kept free', () => {
    const range: Grid = [
      ['Fuel tanks\u00a0', null, ''],
      ['what it is\u00a0', null, ''],
      ['tank', 'arm', ''],
      ['', 'in', ''],
      ['main', 104, null],
      ['', '', ''],
      ['tip', 112, ''],
      ['', null, ''],
    ];
    expect(savedTable(tanks, range)).toEqual([
      ['tank', 'arm'],
      ['', 'in'],
      ['main', 104],
      ['tip', 112],
    ]);
  });

  test('keeps attributes that somebody filled in, and columns of their own', () => {
    const range: Grid = [
      ['attribute', 'value', 'unit', 'note', 'asked by'],
      ['people', 4, '', '', 'Ann'],
      ['distance', '', 'nmi', '', ''],
      ['bags', '', 'lb', 'to be asked', ''],
    ];
    expect(savedTable(mission, range)).toEqual([
      ['attribute', 'value', 'unit', 'note', 'asked by'],
      ['people', 4, '', '', 'Ann'],
      ['bags', '', 'lb', 'to be asked', ''],
    ]);
  });

  test('drops the columns kept for more packages', () => {
    const range: Grid = [
      ['attribute', 'unit', 'Rowan', '', '', 'note'],
      ['takeoff power', 'hp', 185, '', '', ''],
    ];
    expect(savedTable(packages, range)).toEqual([
      ['attribute', 'unit', 'Rowan', 'note'],
      ['takeoff power', 'hp', 185, ''],
    ]);
  });

  test('writes a day as its text, the one the cell shows', () => {
    const midnightInBerlin = Object.assign(new Date('2025-11-24T23:00:00Z'), {
      getFullYear: () => 2025,
      getMonth: () => 10,
      getDate: () => 25,
    });
    const range: Grid = [
      ['tank', 'arm'],
      ['', 'in'],
      [midnightInBerlin, 104],
    ];
    expect(savedTable(tanks, range)?.[2]).toEqual(['2025-11-25', 104]);
  });

  test('without the header is not saved', () => {
    expect(savedTable(tanks, [['anything', 'else']])).toBeUndefined();
  });
});
