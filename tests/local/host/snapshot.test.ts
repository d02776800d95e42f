/** A workbook that was put away as JSON and opened again is the workbook that it was. */
import { describe, expect, test } from 'vitest';
import type { LocalHost } from '../../../src/local/host/localHost.ts';
import { snapshotOf, type WorkbookSnapshot } from '../../../src/local/host/snapshot.ts';
import { describeFunction, hostWith } from './support.ts';

const functions = [describeFunction('DOUBLED', 'cells')];
const script = `
  function DOUBLED(cells) { return cells.map((row) => row.map((cell) => 2 * cell)); }
  function layOut() {
    const book = SpreadsheetApp.getActiveSpreadsheet();
    book.rename('Weights');
    const sheet = book.getSheets()[0].setName('In');
    sheet.getRange('A1:B4').setValues([["'arm", "'weight"], [1, 10], [2, 20], [3, 30]]);
    sheet.getRange('D1').setValue("'=no formula").setNumberFormat('0.0').setBackground('#ff0000');
    sheet.getRange('F1').setFormula('=DOUBLED(WEIGHTS)');
    book.setNamedRange('WEIGHTS', sheet.getRange('B2:B4'));
    sheet.getRange('C2').setDataValidation(
      SpreadsheetApp.newDataValidation().requireValueInRange(sheet.getRange('A2:A4')).setAllowInvalid(false).build());
    sheet.setConditionalFormatRules([
      SpreadsheetApp.newConditionalFormatRule().whenNumberGreaterThan(15).setBackground('#00ff00')
        .setRanges([sheet.getRange('B2:B4')]).build()]);
    sheet.protect().setDescription('catalogue').setWarningOnly(true);
    sheet.insertChart(sheet.newChart().addRange(sheet.getRange('A1:B4')).setNumHeaders(1)
      .setChartType(Charts.ChartType.SCATTER).setOption('title', 'Weight').setPosition(6, 1, 0, 0).build());
    PropertiesService.getDocumentProperties().setProperty('version', '3');
  }
  function told() {
    const book = SpreadsheetApp.getActiveSpreadsheet();
    const sheet = book.getSheets()[0];
    const [chart] = sheet.getCharts();
    const rule = sheet.getRange('C2').getDataValidation();
    const [format] = sheet.getConditionalFormatRules();
    return {
      name: book.getName(),
      text: sheet.getRange('D1').getValue(),
      colour: sheet.getRange('D1').getBackground(),
      doubled: sheet.getRange('F1:F3').getValues(),
      named: book.getRangeByName('WEIGHTS').getA1Notation(),
      rule: [String(rule.getCriteriaType()), rule.getCriteriaValues()[0].getA1Notation(), rule.getAllowInvalid()],
      format: [String(format.getBooleanCondition().getCriteriaType()), format.getRanges()[0].getA1Notation()],
      protection: sheet.getProtections(SpreadsheetApp.ProtectionType.SHEET)
        .map((each) => [each.getDescription(), each.isWarningOnly()]),
      chart: [chart.getOptions().get('title'), String(chart.modify().getChartType()), chart.getRanges()[0].getA1Notation()],
      version: PropertiesService.getDocumentProperties().getProperty('version'),
    };
  }
  function change() {
    const sheet = SpreadsheetApp.getActiveSpreadsheet().getSheets()[0];
    sheet.insertRowBefore(2);
    const [chart] = sheet.getCharts();
    sheet.insertChart(chart.modify().setOption('title', 'Second').build());
    sheet.removeChart(sheet.getCharts()[0]);
    return sheet.getCharts().map((each) => each.getRanges()[0].getA1Notation());
  }`;

const asJson = (snapshot: WorkbookSnapshot) => JSON.parse(JSON.stringify(snapshot)) as WorkbookSnapshot;
const reopened = (host: LocalHost) => hostWith(script, functions, {}, asJson(snapshotOf(host.workbook)));

const laidOut = () => {
  const host = hostWith(script, functions);
  host.run('layOut');
  return host;
};

describe('a workbook opened again', () => {
  test('tells the script the same of cells, names, rules, charts, protection and properties', () => {
    const host = laidOut();
    const before = host.run('told');
    expect(before).toMatchObject({
      name: 'Weights',
      text: '=no formula',
      doubled: [[20], [40], [60]],
      version: '3',
    });
    expect(reopened(host).run('told')).toEqual(before);
  });

  test('recalculates', () => {
    const host = reopened(laidOut());
    host.type('In!B3', '25');
    expect(host.values('In!F1:F3')).toEqual([[20], [50], [60]]);
  });

  test('moves what it tracks, and gives new charts numbers that are free', () => {
    expect(reopened(laidOut()).run('change')).toEqual(['A1:B5']);
  });

  test('refuses still what a rule does not allow', () => {
    const host = reopened(laidOut());
    expect(() => host.type('In!C2', '9')).toThrow('violates the data validation rule');
  });
});
