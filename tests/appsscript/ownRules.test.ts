/**
 * Rules and number formats that a person gave to cells of the workbook, as a script or the sheet's menus set them: they
 * stay when it is laid out again, when a table gets more rows, and when a newer version is laid out over it.
 */
import { beforeEach, describe, expect, test } from 'vitest';
import type { LocalHost } from '../../src/local/host/localHost.ts';
import { snapshotOf } from '../../src/local/host/snapshot.ts';
import { localHost } from '../../src/local/localWorkbook.ts';
import type { Layout } from '../../src/workbook/layout.ts';
import { layout } from '../../src/workbook/sheets.ts';
import { sample } from '../sample.ts';
import { filesWith } from './layoutFiles.ts';
import { quickLayout } from './olderLayout.ts';
import { runOwnScript } from './ownScript.ts';
import { withoutSpareRows } from './spareRows.ts';

const quick = quickLayout(layout);
const fresh = await localHost(undefined, filesWith(quick));
fresh.run('layOutTables_', sample('minimal'));
const saved = withoutSpareRows(snapshotOf(fresh.workbook), quick);

let host: LocalHost;
const open = async (each: Layout) => {
  host = await localHost(saved, filesWith(each));
};
beforeEach(() => open(quick));

/** Gives the cell of a label's row in a named table. */
const at = `function at(name, label, column) {
  const range = SpreadsheetApp.getActiveSpreadsheet().getRangeByName(name);
  const row = range.getValues().findIndex((cells) => cells[0] === label);
  return range.getCell(row + 1, column);
}`;
const script = (statements: string) => runOwnScript(host, statements, at);

/** What a person does, and what must be so afterwards. */
const cases = [
  {
    what: 'a rule that refuses, where the workbook offers a list',
    does: `at('airframe', 'landing gear', 2).setDataValidation(SpreadsheetApp.newDataValidation()
      .requireValueInList(['nosewheel'], true).setAllowInvalid(false).build());`,
    asks: `const rule = at('airframe', 'landing gear', 2).getDataValidation();
      return [String(rule.getCriteriaType()), rule.getCriteriaValues()[0].join(), rule.getAllowInvalid()].join(' ');`,
    is: 'VALUE_IN_LIST nosewheel false',
  },
  {
    what: 'a rule for numbers, where it offers nothing',
    does: `at('airframe', 'wing area', 2).setDataValidation(SpreadsheetApp.newDataValidation()
      .requireNumberBetween(10, 20).setAllowInvalid(false).build());`,
    asks: `const rule = at('airframe', 'wing area', 2).getDataValidation();
      return [String(rule.getCriteriaType()), rule.getCriteriaValues().join()].join(' ');`,
    is: 'NUMBER_BETWEEN 10,20',
  },
  {
    what: 'a rule beside a table',
    does: `at('airframe', 'wing area', 1).offset(0, 7).setDataValidation(SpreadsheetApp.newDataValidation()
      .requireNumberBetween(1, 2).build());`,
    asks: `return String(at('airframe', 'wing area', 1).offset(0, 7).getDataValidation().getCriteriaType());`,
    is: 'NUMBER_BETWEEN',
  },
  {
    what: 'a conditional format over a table',
    does: `const cell = at('airframe', 'wing area', 2);
      cell.getSheet().setConditionalFormatRules([SpreadsheetApp.newConditionalFormatRule()
        .whenNumberGreaterThan(12).setBackground('#ff0000').setRanges([cell]).build()]);`,
    asks: `const cell = at('airframe', 'wing area', 2);
      return cell.getSheet().getConditionalFormatRules().map((rule) =>
        [rule.getBooleanCondition().getBackground(), rule.getRanges().map((range) => range.getA1Notation()).join(),
        rule.getRanges()[0].getA1Notation() === cell.getA1Notation()].join(' ')).join();`,
    is: expect.stringMatching(/^#ff0000 B\d+ true$/i),
  },
  {
    what: 'a conditional format over a block',
    does: `const sheet = SpreadsheetApp.getActiveSpreadsheet().getSheetByName('Comparison');
      sheet.setConditionalFormatRules([...sheet.getConditionalFormatRules(), SpreadsheetApp.newConditionalFormatRule()
        .whenNumberGreaterThan(12).setBackground('#ff0000').setRanges([sheet.getRange('C5:C9')]).build()]);`,
    asks: `return SpreadsheetApp.getActiveSpreadsheet().getSheetByName('Comparison').getConditionalFormatRules()
      .filter((rule) => String(rule.getBooleanCondition().getBackground()).toLowerCase() === '#ff0000')
      .map((rule) => rule.getRanges()[0].getA1Notation()).join();`,
    is: 'C5:C9',
  },
  {
    what: 'the number format of an input',
    does: `at('airframe', 'wing area', 2).setNumberFormat('0.000');
      at('stations', 'baggage', 2).setNumberFormat('#,##0.00');`,
    asks: `return [at('airframe', 'wing area', 2), at('stations', 'baggage', 2)]
      .map((cell) => cell.getNumberFormat()).join(' ');`,
    is: '0.000 #,##0.00',
  },
] as const;

describe.each(cases)('$what', ({ does, asks, is }) => {
  test('stays when the workbook is laid out again', () => {
    script(does);
    expect(script(asks)).toEqual(is);
    host.run('layOutTables_', {});
    expect(script(asks)).toEqual(is);
  });

  test('stays when a newer version is laid out', async () => {
    await open({ ...quick, version: quick.version + 1 });
    script(does);
    host.run('layOutTables_', {});
    expect(script(asks)).toEqual(is);
  });

  test('stays when the tables get new cells', () => {
    script(does);
    for (const name of ['airframe', 'stations']) host.workbook.dispatch('DELETE_NAMED_RANGE', { name });
    host.workbook.properties.set('layout undressed', JSON.stringify(['airframe', 'stations']));
    host.run('layOutTables_', {});
    expect(script(asks)).toEqual(is);
  });
});
