/** What a person has done to a workbook, case by case, and what laying out again makes of it. */
import { beforeEach, describe, expect, test } from 'vitest';
import { columnLetters } from '../../src/local/host/a1.ts';
import type { LocalHost } from '../../src/local/host/localHost.ts';
import { LocalWorkbook, localHost } from '../../src/local/localWorkbook.ts';
import { layout } from '../../src/workbook/sheets.ts';
import { sample } from '../sample.ts';
import { openMinimal } from './minimalWorkbook.ts';
import { runOwnScript } from './ownScript.ts';
import { sheetId } from './sheetsByHand.ts';

let host: LocalHost;
let workbook: LocalWorkbook;
beforeEach(async () => {
  ({ host, workbook } = await openMinimal());
});

/** Runs statements as a person with the script editor might; `book` is the workbook. */
function script(statements: string): void {
  runOwnScript(host, statements);
  host.workbook.dispatch('EVALUATE_CELLS', {}); // with the pushed script's functions, which this one has not got
}

const again = () => host.run('layOutTables_', {}) as { from: string; why: string }[];
const rangeOf = (name: string) => host.workbook.model.getters.getNamedRange(name)?.range;
const comparison = () => workbook.block('PACKAGE_COMPARISON');
const verdict = () => String(comparison()[0]?.[0]);

describe('tables', () => {
  test('a row typed directly below a table is taken in', () => {
    const bottom = (rangeOf('stations')?.zone.bottom ?? 0) + 2;
    workbook.setCell('Seats and tanks', `A${bottom}`, "'jump seat");
    workbook.setCell('Seats and tanks', `B${bottom}`, 2.6);
    workbook.setCell('Seats and tanks', `D${bottom}`, 90);
    expect(again()).toEqual([]);
    expect(rangeOf('stations')?.zone.bottom).toBeGreaterThanOrEqual(bottom - 1);
    expect(workbook.values('Seats and tanks')[bottom - 1]?.slice(0, 4)).toEqual(['jump seat', 2.6, '', 90]);
  });

  test('a new station and a new tank get their columns in the loadings', () => {
    workbook.setCell('Seats and tanks', 'A7', "'child seat");
    workbook.setCell('Seats and tanks', 'B7', 2.7);
    workbook.setCell('Seats and tanks', 'D7', 30);
    const tank = rangeOf('tanks')?.zone.left as number;
    const tip = ["'tip tank", 2.3, 10];
    tip.forEach((value, index) => {
      workbook.setCell('Seats and tanks', `${columnLetters(tank + index)}6`, value);
    });
    again();
    const header = workbook.values('Seats and tanks')[2] ?? [];
    expect(header.slice(tank, tank + 3)).toEqual(['tank', 'arm', 'usable']);
    const from = header.indexOf('loading');
    expect(header.slice(from).filter((cell) => cell !== '')).toEqual([
      'loading',
      'seats',
      'baggage',
      'wing tanks',
      'child seat',
      'tip tank',
    ]);
    expect(verdict()).toBe('Turnstone');
  });

  test('moved to another sheet and without its name, it is found by its header', () => {
    script(`
      const range = book.getRangeByName('components');
      const values = range.getValues().map((line) => line.map((cell) => typeof cell === 'string' && cell !== '' ? "'" + cell : cell));
      const other = book.insertSheet('My weights', 0);
      other.getRange(4, 3, values.length, values[0].length).setValues(values);
      range.clearContent();
      book.removeNamedRange('components');`);
    const before = workbook.values('My weights');
    again();
    const { getters } = host.workbook.model;
    const found = rangeOf('components');
    expect(getters.getSheetName(found?.sheetId ?? '')).toBe('My weights');
    expect(workbook.values('My weights')).toEqual(before);
    expect(verdict()).toBe('Turnstone');
  });

  test('without its header it cannot be read: it is kept, listed, and an empty one takes its place', () => {
    script(`
      const range = book.getRangeByName('stations');
      range.offset(2, 0, 2).clearContent();`);
    const kept = again();
    expect(kept).toEqual([
      { from: 'Seats and tanks!A1:H14', why: 'the stations table: its header was not found' },
    ]);
    const sheet = workbook.values('Kept').map((line) => line.join(' ').trim());
    expect(sheet).toContain('Seats and tanks!A1:H14: the stations table: its header was not found');
    expect(sheet.some((line) => line.startsWith('seats 2.3'))).toBe(true);
    expect(workbook.values('Seats and tanks')[2]?.slice(0, 2)).toEqual(['station', 'arm']);
    expect(again()).toEqual([]);
  });

  test('tables side by side without their names are told apart', () => {
    const ranges = [
      'fuel_points',
      'power_points',
      'stations',
      'tanks',
      'loadings',
      'envelope',
      'known_points',
    ];
    const places = () =>
      ranges.map((range) => [range, rangeOf(range)?.zone.left, rangeOf(range)?.zone.right]);
    const before = places();
    script(`for (const name of ${JSON.stringify(ranges)}) book.removeNamedRange(name);`);
    again();
    expect(places()).toEqual(before);
    expect(verdict()).toBe('Turnstone');
  });

  test('an empty column in a table, and one’s own beside it, do not end the table once its name is gone', () => {
    const names = ['airframe', 'packages', 'components'];
    script(`
      for (const name of ['airframe', 'packages']) {
        const range = book.getRangeByName(name);
        const sheet = range.getSheet();
        const note = range.getColumn() + range.getNumColumns() - 1;
        sheet.insertColumnsBefore(note, 1);
        sheet.getRange(range.getRow() + 4, note + 1).setValue("'my note");
      }
      const components = book.getRangeByName('components');
      const second = components.getColumn() + 1;
      components.getSheet().insertColumnsBefore(second, 2);
      components.getSheet().getRange(components.getRow() + 2, second + 1).setValue("'my mark");`);
    const before = names.map((name) => rangeOf(name)?.zone);
    script(`for (const name of ${JSON.stringify(names)}) book.removeNamedRange(name);`);
    expect(again()).toEqual([]);
    expect(names.map((name) => rangeOf(name)?.zone)).toEqual(before);
    expect(verdict()).toBe('Turnstone');
  });

  test('a word of the workbook’s own that is also a label is no header', () => {
    script(`book.deleteSheet(book.getSheetByName('Seats and tanks'));`);
    again();
    const { getters } = host.workbook.model;
    for (const name of ['stations', 'tanks', 'loadings'])
      expect(getters.getSheetName(rangeOf(name)?.sheetId ?? ''), name).toBe('Seats and tanks');
  });

  test('what was kept is not taken for a table again', () => {
    host.workbook.ui.answers.push({ button: 'OK', text: 'godwit' }, { button: 'OK' });
    host.run('loadSample');
    script("book.deleteSheet(book.getSheetByName('Components'));");
    again();
    const { getters } = host.workbook.model;
    expect(getters.getSheetName(rangeOf('components')?.sheetId ?? '')).toBe('Components');
    expect(workbook.values('Components')[4]?.[0] ?? '').toBe('');
  });

  test('formulas in a table stay formulas', () => {
    workbook.setCell('Components', 'D5', '=90+2');
    again();
    const { getters } = host.workbook.model;
    const sheetId = rangeOf('components')?.sheetId ?? '';
    const cell = getters.getCell({ sheetId, col: 3, row: 4 });
    expect(cell?.isFormula && cell.compiledFormula.toFormulaString(getters)).toBe('=90+2');
  });

  test('a title in a person’s own words stays', () => {
    workbook.setCell('Components', 'A1', "'Weights of the demonstrator");
    again();
    expect(workbook.values('Components')[0]?.[0]).toBe('Weights of the demonstrator');
  });
});

describe('blocks', () => {
  test('what stands in the way of one is kept and listed, and the block comes back', () => {
    workbook.setCell('Comparison', 'B9', "'mine");
    workbook.setCell('Comparison', 'C9', '=1+1');
    expect(() => comparison()).toThrow('would overwrite data');
    const kept = again();
    expect(kept).toEqual([
      { from: 'Comparison!B9:C9', why: 'stood in the way of "The packages side by side"' },
    ]);
    expect(verdict()).toBe('Turnstone');
    expect(workbook.values('Kept').at(-1)).toEqual(['mine', '=1+1']);
  });

  test('moved to another place with its title, it stays there', () => {
    script(`
      const sheet = book.getSheetByName('Comparison');
      sheet.insertRowsBefore(1, 3);
      sheet.getRange('A1').setValue("'For a customer");`);
    again();
    const column = workbook.values('Comparison').map(([cell]) => String(cell).trim());
    expect(column[0]).toBe('For a customer');
    expect(column[3]).toBe('Which package, at what price, weight and payload?');
    expect(column[7]).toBe('Turnstone');
    expect(again()).toEqual([]);
  });

  test('a call with a package of one’s own is not the workbook’s', () => {
    const calls = layout.sheets.flatMap(({ results }) => results);
    const tables = calls.find((result) => result.function === 'LOADING_CHECK')?.arguments ?? [];
    const own = `=LOADING_CHECK(${tables.join()},"Elm")`;
    workbook.setCell('Findings', 'L40', own);
    again();
    const { getters } = host.workbook.model;
    const cell = getters.getCell({ sheetId: sheetId(host, 'Findings'), col: 11, row: 39 });
    expect(cell?.isFormula && cell.compiledFormula.toFormulaString(getters)).toBe(own);
  });
});

describe('sheets', () => {
  test('a sheet of one’s own that has a name the workbook wants is left alone', async () => {
    const empty = await localHost();
    const own = new LocalWorkbook(empty);
    empty.workbook.dispatch('CREATE_SHEET', { sheetId: 'mine', name: 'Cost', position: 1 });
    own.setCell('Cost', 'A1', "'what I paid");
    own.setCell('Sheet1', 'A1', "'notes");
    empty.run('layOutTables_', sample('minimal'));
    expect(own.values('Cost')).toEqual([['what I paid']]);
    expect(own.values('Sheet1')).toEqual([['notes']]);
    expect(own.values('Cost 2').flat().join(' ')).toContain('What does it cost');
  });

  test('renamed and moved they are found again', () => {
    script(`
      book.getSheetByName('Components').setName('Weights').activate();
      book.moveActiveSheet(1);`);
    again();
    expect(workbook.sheetNames()[0]).toBe('Weights');
    expect(workbook.sheetNames()).not.toContain('Components');
  });

  test('a rule, a protection and a picture of one’s own stay', () => {
    script(`
      const sheet = book.getSheetByName('Comparison');
      const rule = SpreadsheetApp.newConditionalFormatRule().whenNumberGreaterThan(5).setBackground('#123456')
        .setRanges([sheet.getRange('A1')]).build();
      sheet.setConditionalFormatRules([...sheet.getConditionalFormatRules(), rule]);
      const data = book.getSheetByName('Components');
      data.getProtections(SpreadsheetApp.ProtectionType.SHEET)[0].setDescription('Mine').setWarningOnly(false);
      const chart = sheet.newChart().setChartType(Charts.ChartType.COLUMN).addRange(sheet.getRange('C5:D9'))
        .setNumHeaders(1).setPosition(60, 1, 0, 0).setOption('title', 'Mine').build();
      sheet.insertChart(chart);`);
    again();
    const { charts, formatRules, protections } = host.workbook;
    expect([...formatRules.values()].some(({ style }) => style.fillColor === '#123456')).toBe(true);
    expect(protections.find(({ description }) => description === 'Mine')?.isWarningOnly).toBe(false);
    expect(charts.filter(({ spec }) => spec.options.title === 'Mine')).toHaveLength(1);
  });
});

test('nobody lays out while somebody else does', () => {
  host.workbook.lock.isHeldElsewhere = true;
  expect(() => host.run('layOutFromMenu')).toThrow(/try again/);
});
