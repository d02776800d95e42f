/** Sheets, ranges, names and protections. */
import { describe, expect, test } from 'vitest';
import { parseA1, splitSheetName, zoneToA1 } from '../../../src/local/host/a1.ts';
import { evaluate, hostWith } from './support.ts';

describe('A1 notation', () => {
  test.each([
    ['B2', 'B2'],
    ['b2', 'B2'],
    ['$B$2:D9', 'B2:D9'],
    ['D9:B2', 'B2:D9'],
    ['AA10', 'AA10'],
    ['ZZ1', 'ZZ1'],
    ['B:C', 'B1:C100'],
    ['3:5', 'A3:J5'],
    ['B2:C', 'B2:C100'],
    ['B2:5', 'B2:J5'],
  ])('%s is %s on a sheet of 100 rows and 10 columns', (text, expected) => {
    const zone = parseA1(text, 100, 10);
    expect(zone && zoneToA1(zone)).toBe(expected);
  });

  test.each(['', 'B', '5', 'B2:', ':C3', 'B2C3', 'Sheet1!A1', 'A1:B2:C3'])("'%s' is none", (text) => {
    expect(parseA1(text, 100, 10)).toBeUndefined();
  });

  test.each([
    ["'Range and fuel'!A1:B2", { sheetName: 'Range and fuel', reference: 'A1:B2' }],
    ["'It''s'!A1", { sheetName: "It's", reference: 'A1' }],
    ['Data!A:B', { sheetName: 'Data', reference: 'A:B' }],
    ['A1', { reference: 'A1' }],
  ])('%s', (text, expected) => {
    expect(splitSheetName(text)).toEqual(expected);
  });
});

describe('sheets', () => {
  test('are inserted, found, ordered, renamed and deleted', () => {
    expect(
      evaluate(`const first = book.insertSheet('First', 0);
        book.insertSheet('Second').setName('2nd');
        book.insertSheet();
        book.deleteSheet(book.getSheetByName('Sheet1'));
        book.setActiveSheet(first);
        book.moveActiveSheet(3);
        return [book.getSheets().map((s) => s.getName() + ' ' + s.getIndex()), book.getSheetByName('none'),
          book.getActiveSheet().getName(), first.getParent().getNumSheets()];`),
    ).toEqual([['2nd 1', 'Sheet3 2', 'First 3'], null, 'First', 3]);
  });

  test('are as large as in Google Sheets', () => {
    expect(evaluate('const s = book.insertSheet(); return [s.getMaxRows(), s.getMaxColumns()];')).toEqual([
      1000, 26,
    ]);
  });

  test.each([
    ["book.insertSheet('Sheet1')", 'A sheet with the name "Sheet1" already exists'],
    ["sheet.setName('a/b')", 'ForbiddenCharactersInSheetName'],
    ["const s = book.insertSheet('x'); book.deleteSheet(s); s.getRange('A1')", 'not found'],
    ['sheet.deleteRows(1000, 2)', 'Those rows are out of bounds.'],
    ['sheet.setColumnWidth(27, 100)', 'Those columns are out of bounds.'],
    ["sheet.getRange('A1').offset(-1, 0)", 'outside the dimensions of the sheet'],
    ['book.insertSheet({ template: sheet })', 'with a template is not implemented'],
    ['book.deleteSheet(book)', 'the argument must be a Sheet'],
  ])('%s throws', (code, message) => {
    expect(() => evaluate(code)).toThrow(message);
  });

  test('look as told', () => {
    expect(
      evaluate(`sheet.setFrozenRows(2); sheet.setFrozenColumns(1); sheet.setFrozenColumns(0);
        sheet.setColumnWidths(2, 2, 150).setRowHeight(1, 40).setTabColor('#336699').setHiddenGridlines(true);
        sheet.hideColumns(5); sheet.hideRows(7, 2); sheet.showRows(8);
        book.insertSheet('Hidden').hideSheet();
        return [sheet.getFrozenRows(), sheet.getFrozenColumns(), sheet.getColumnWidth(3), sheet.getRowHeight(1),
          sheet.getTabColor(), sheet.hasHiddenGridlines(), sheet.isColumnHiddenByUser(5),
          sheet.isRowHiddenByUser(7), sheet.isRowHiddenByUser(8), book.getSheetByName('Hidden').isSheetHidden(),
          book.getSheetByName('Hidden').showSheet().isSheetHidden()];`),
    ).toEqual([2, 0, 150, 40, '#336699', true, true, true, false, true, false]);
  });
});

describe('where the data ends', () => {
  test.each([
    ['', [0, 0, 'A1']],
    ["sheet.getRange('C5').setValue(1);", [5, 3, 'A1:C5']],
    ["sheet.getRange('C5').setValue(1); sheet.getRange('C5').setValue('');", [0, 0, 'A1']],
    ["sheet.getRange('C5').setBackground('#ffffff');", [0, 0, 'A1']],
    ["sheet.getRange('B2').setFormula('=\"\"');", [2, 2, 'A1:B2']],
    ['sheet.appendRow(["\'a", 1]).appendRow(["\'b", 2]);', [2, 2, 'A1:B2']],
  ])('%s', (code, expected) => {
    expect(
      evaluate(
        `${code} return [sheet.getLastRow(), sheet.getLastColumn(), sheet.getDataRange().getA1Notation()];`,
      ),
    ).toEqual(expected);
  });

  test('a row appended to a full sheet makes it longer', () => {
    expect(
      evaluate(`sheet.deleteRows(3, 998); sheet.getRange('A2').setValue(1); sheet.appendRow([2]);
        return [sheet.getMaxRows(), sheet.getRange('A3').getValue()];`),
    ).toEqual([3, 2]);
  });
});

describe('ranges', () => {
  test('know their place', () => {
    expect(
      evaluate(`const range = sheet.getRange(2, 3, 4, 2);
        return [range.getA1Notation(), range.getRow(), range.getColumn(), range.getNumRows(), range.getNumColumns(),
          range.getLastRow(), range.getLastColumn(), range.getCell(2, 2).getA1Notation(),
          range.offset(1, 1).getA1Notation(), range.offset(0, 0, 1, 1).getA1Notation(),
          range.getSheet().getName()];`),
    ).toEqual(['C2:D5', 2, 3, 4, 2, 5, 4, 'D3', 'D3:E6', 'C2', 'Sheet1']);
  });

  test('stay where they are when rows are inserted above', () => {
    expect(
      evaluate(`const range = sheet.getRange('A2').setValue(5); sheet.insertRowsBefore(1, 2);
        return [range.getA1Notation(), range.getValue(), sheet.getRange('A4').getValue()];`),
    ).toEqual(['A2', '', 5]);
  });

  test('are merged and parted', () => {
    expect(
      evaluate(`const range = sheet.getRange('A1:B2').merge();
        return [range.isPartOfMerge(), range.breakApart().isPartOfMerge()];`),
    ).toEqual([true, false]);
  });

  test.each([
    ["sheet.getRange('Data!A1')", 'Range not found'],
    ["book.getRange('NOWHERE')", 'Range not found'],
  ])('%s throws', (code, message) => {
    expect(() => evaluate(code)).toThrow(message);
  });

  test.each([
    ["book.getRange('Sheet1!B2:C3')", 'B2:C3'],
    ["book.getRange('B2')", 'B2'],
    ["sheet.getRange('Sheet1!B2')", 'B2'],
    ["sheet.getRange('B2:B')", 'B2:B1000'],
  ])('%s', (code, expected) => {
    expect(evaluate(`return ${code}.getA1Notation();`)).toBe(expected);
  });
});

describe('named ranges', () => {
  test('are set, moved, listed, renamed and removed', () => {
    expect(
      evaluate(`book.setNamedRange('STATIONS', sheet.getRange('A1:B5'));
        book.setNamedRange('TANKS', sheet.getRange('D1'));
        book.setNamedRange('STATIONS', sheet.getRange('A1:B6'));
        book.getNamedRanges().find((n) => n.getName() === 'TANKS').setName('FUEL_TANKS');
        const named = book.getNamedRanges().map((n) => n.getName() + ' ' + n.getRange().getA1Notation());
        book.removeNamedRange('STATIONS');
        return [named, book.getRangeByName('STATIONS'), book.getRangeByName('FUEL_TANKS').getA1Notation(),
          sheet.getRange('FUEL_TANKS').getA1Notation(), sheet.getNamedRanges().length];`),
    ).toEqual([['STATIONS A1:B6', 'FUEL_TANKS D1'], null, 'D1', 'D1', 1]);
  });

  test('grow with their rows', () => {
    expect(
      evaluate(`book.setNamedRange('STATIONS', sheet.getRange('A2:B5')); sheet.insertRowsAfter(3, 2);
        sheet.insertRowBefore(1);
        return book.getRangeByName('STATIONS').getA1Notation();`),
    ).toBe('A3:B8');
  });

  test.each(['A1', 'ABC123', 'R1C1', '1ST', 'WITH SPACE', 'a-b', 'TRUE', ''])(
    "can't be called '%s'",
    (name) => {
      expect(() => evaluate(`book.setNamedRange('${name}', sheet.getRange('A1'));`)).toThrow(
        "can't name a range",
      );
    },
  );
});

describe('protections', () => {
  test('are recorded, listed by type and removed', () => {
    expect(
      evaluate(`sheet.getRange('A1:B2').protect().setDescription('catalogue').setWarningOnly(true);
        sheet.protect().setUnprotectedRanges([sheet.getRange('D1:D9')]);
        book.insertSheet('Other').protect();
        const ranges = book.getProtections(SpreadsheetApp.ProtectionType.RANGE);
        const seen = [ranges[0].getDescription(), ranges[0].isWarningOnly(), ranges[0].getRange().getA1Notation(),
          sheet.getProtections(SpreadsheetApp.ProtectionType.SHEET).length,
          book.getProtections(SpreadsheetApp.ProtectionType.SHEET).length,
          sheet.protect().getUnprotectedRanges().map((r) => r.getA1Notation()), sheet.protect().isWarningOnly()];
        ranges[0].remove();
        return [...seen, book.getProtections(SpreadsheetApp.ProtectionType.RANGE).length];`),
    ).toEqual(['catalogue', true, 'A1:B2', 1, 2, ['D1:D9'], false, 0]);
  });

  test('move with their cells, and go with them', () => {
    expect(
      evaluate(`sheet.getRange('A3:B4').protect();
        sheet.insertRowBefore(1);
        const [moved] = sheet.getProtections(SpreadsheetApp.ProtectionType.RANGE);
        const place = moved.getRange().getA1Notation();
        sheet.deleteRows(4, 2);
        return [place, sheet.getProtections(SpreadsheetApp.ProtectionType.RANGE).length];`),
    ).toEqual(['A4:B5', 0]);
  });

  test('bind nobody', () => {
    expect(evaluate("sheet.protect(); return sheet.getRange('A1').setValue(3).getValue();")).toBe(3);
  });
});

test('a layout can be run again over the workbook it made', () => {
  const host = hostWith(`function layOut() {
    const book = SpreadsheetApp.getActiveSpreadsheet();
    const sheet = book.getSheetByName('Data') ?? book.insertSheet('Data');
    sheet.setName('Data').setTabColor('#336699').setHiddenGridlines(true).showSheet().setFrozenColumns(0);
    sheet.setFrozenRows(1);
    sheet.setColumnWidth(1, 120);
    const range = sheet.getRange('A1:B2');
    range.setValues([["'item", "'weight"], ["'mount", 12]]).setFontWeight('bold').setNumberFormat('0.0').setBackground(null);
    range.setBorder(true, true, true, true, true, true).setWrap(true).setVerticalAlignment('top');
    sheet.getRange('D1:E1').merge();
    sheet.getRange('D1:E1').breakApart().breakApart();
    range.setDataValidation(null).clearDataValidations();
    sheet.getRange('B2').setDataValidation(SpreadsheetApp.newDataValidation().requireNumberGreaterThan(0).build());
    sheet.getRange('C2').insertCheckboxes();
    sheet.setConditionalFormatRules([SpreadsheetApp.newConditionalFormatRule().whenCellEmpty().setRanges([range]).setBold(true).build()]);
    book.setNamedRange('ITEMS', range);
    sheet.getProtections(SpreadsheetApp.ProtectionType.SHEET).forEach((protection) => protection.remove());
    sheet.protect().setWarningOnly(true);
    sheet.getCharts().forEach((chart) => sheet.removeChart(chart));
    sheet.insertChart(sheet.newChart().setChartType(Charts.ChartType.BAR).addRange(range).setNumHeaders(1).build());
    book.setActiveSheet(sheet);
    book.moveActiveSheet(1);
    return [book.getNumSheets(), sheet.getCharts().length, sheet.getConditionalFormatRules().length,
      book.getNamedRanges().length, book.getProtections(SpreadsheetApp.ProtectionType.SHEET).length];
  }`);
  expect(host.run('layOut')).toEqual([2, 1, 1, 1, 1]); // sheets, charts, rules, names, protections
  const before = host.workbook.model.exportData();
  expect(host.run('layOut')).toEqual([2, 1, 1, 1, 1]);
  const { sheets, namedRanges } = host.workbook.model.exportData();
  const cells = (data: { cells: unknown }[]) => data.map((sheet) => sheet.cells);
  expect([cells(sheets), namedRanges]).toEqual([cells(before.sheets), before.namedRanges]);
});
