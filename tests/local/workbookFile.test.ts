/** The workbook as a file: read back by the same library, and its chart parts as text. */
import { readXlsx } from 'hucre/xlsx';
import { describe, expect, test } from 'vitest';
import { workbookFile } from '../../src/local/workbookFile.ts';
import { rewriteZip } from '../../src/local/zipArchive.ts';
import { describeFunction, evaluateIn, hostWith } from './host/support.ts';

const script = `
  function REGION() { return [['CG', 'Envelope', 'Loadings'], [78, 1600, null], [78, 2200, null], [86, 2700, null],
    [78, 1600, null], [80, null, 1700], [82, null, 2650], [80, null, 1700]]; }
  function FAIL() { throw new Error('FAIL: arm must be above 0 in'); }
  function layOut() {
    const book = SpreadsheetApp.getActiveSpreadsheet();
    const sheet = book.getSheets()[0].setName('Loading').setTabColor('#336699');
    sheet.getRange('A1').setFormula('=REGION()');
    sheet.getRange('A1:C1').setFontWeight('bold').setBackground('#dddddd');
    sheet.getRange('A2:A8').setNumberFormat('0.0" in"');
    sheet.getRange('E1').setFormula('=FAIL()');
    sheet.getRange('E2:G2').setValues([["'=1+1", true, new Date(2024, 1, 29)]]);
    sheet.getRange('E3').setValue(5).setDataValidation(SpreadsheetApp.newDataValidation()
      .requireNumberBetween(0, 10).setAllowInvalid(false).setHelpText('0 to 10').build());
    sheet.getRange('E4').setDataValidation(SpreadsheetApp.newDataValidation().requireValueInList(['mogas', 'Jet A']).build());
    sheet.getRange('E5').setBorder(true, true, true, true, null, null, '#666666', SpreadsheetApp.BorderStyle.SOLID).setFontStyle('italic');
    sheet.setConditionalFormatRules([SpreadsheetApp.newConditionalFormatRule().whenNumberLessThan(0)
      .setRanges([sheet.getRange('E3:E9')]).setFontColor('#aa0000').build()]);
    sheet.setFrozenRows(1);
    sheet.setColumnWidth(1, 145);
    book.setNamedRange('LOADINGS', sheet.getRange('A1:C8'));
    const chart = (type, range) => sheet.newChart().setChartType(Charts.ChartType[type]).addRange(sheet.getRange(range))
      .setNumHeaders(1);
    sheet.getRange('D1').setValue("'Waiting");
    sheet.insertChart(chart('SCATTER', 'A1:D8').setOption('title', 'Loadings').setOption('lineWidth', 2)
      .setOption('pointSize', 0).setOption('series.0.color', '#333333')
      .setOption('series.1.lineDashStyle', [4, 4]).setOption('hAxis.title', 'CG, in')
      .setOption('hAxis.viewWindow.min', 76).setPosition(12, 1, 0, 0).build());
    const bars = book.insertSheet('Weight');
    bars.getRange('A1:C3').setValues([["'Package", "'Engine", "'Mount"], ["'North", 300, 20], ["'South", 280, -5]]);
    bars.insertChart(bars.newChart().setChartType(Charts.ChartType.BAR).addRange(bars.getRange('A1:C3')).setNumHeaders(1)
      .setOption('isStacked', true).setOption('hAxis.title', 'Weight, lb').setPosition(6, 1, 0, 0).build());
    bars.insertChart(bars.newChart().setChartType(Charts.ChartType.SCATTER).addRange(bars.getRange('B1:C3')).setNumHeaders(1)
      .setPosition(6, 8, 0, 0).build());
    book.insertSheet('Hidden').hideSheet();
  }`;

const host = hostWith(script, [describeFunction('REGION'), describeFunction('FAIL')]);
host.run('layOut');
const file = await workbookFile(host.workbook);
const book = await readXlsx(file, { readStyles: true });
const sheet = (name: string) => {
  const found = book.sheets.find((candidate) => candidate.name === name);
  if (!found) throw new Error(`no sheet ${name}`);
  return found;
};

/** Texts of the entries of an archive. */
function entries(archive: Uint8Array): Map<string, string> {
  const texts = new Map<string, string>();
  rewriteZip(archive, (name, text) => {
    texts.set(name, text());
    return undefined;
  });
  return texts;
}
const charts = [...entries(file)]
  .filter(([name]) => /^xl\/charts\/chart\d+\.xml$/.test(name))
  .map(([, text]) => text);

test('the first sheet says what the file is, the others follow in order', () => {
  expect(book.sheets.map(({ name }) => name)).toEqual(['About this file', 'Loading', 'Weight', 'Hidden']);
  expect(sheet('About this file').rows.flat().join(' ')).toContain(
    'Computed cells hold values, not formulas',
  );
  expect(sheet('Hidden').hidden).toBe(true);
});

test('computed blocks are values, blanks are blank', () => {
  const rows = sheet('Loading').rows.map((row) => row.slice(0, 3));
  expect(rows.slice(0, 2)).toEqual([
    ['CG', 'Envelope', 'Loadings'],
    [78, 1600, null],
  ]);
  expect(entries(file).get('xl/worksheets/sheet2.xml')).not.toContain('<f>');
});

test('text, truth values, dates and errors', () => {
  const [first, second] = sheet('Loading').rows;
  expect(first?.[4]).toBe('#ERROR!');
  expect(second?.slice(4, 6)).toEqual(['=1+1', true]);
  expect(new Date(second?.[6] as Date).toISOString()).toContain('2024-02-29');
  expect(
    [...entries(file)].some(
      ([name, text]) => name.includes('comments') && text.includes('FAIL: arm must be'),
    ),
  ).toBe(true);
});

test('looks, formats, widths, panes, names', () => {
  const loading = sheet('Loading');
  const style = (key: string) => loading.cells?.get(key)?.style;
  expect(style('0,0')).toMatchObject({ font: { bold: true }, fill: { fgColor: { rgb: 'DDDDDD' } } });
  expect(style('1,0')?.numFmt).toBe('0.0" in"');
  expect(style('4,4')).toMatchObject({ font: { italic: true }, border: { top: { style: 'thin' } } });
  expect(loading.columns?.[0]?.width).toBe(20); // (145 − 5) / 7
  expect(loading.freezePane?.rows).toBe(1);
  expect(book.namedRanges).toEqual([
    expect.objectContaining({ name: 'LOADINGS', range: "'Loading'!$A$1:$C$8" }),
  ]);
});

test('validation and conditional formats', () => {
  const { dataValidations, conditionalRules } = sheet('Loading');
  expect(dataValidations).toEqual([
    expect.objectContaining({
      type: 'decimal',
      operator: 'between',
      formula1: '0',
      formula2: '10',
      range: 'E3',
      errorStyle: 'stop',
      inputMessage: '0 to 10',
    }),
    expect.objectContaining({ type: 'list', range: 'E4', errorStyle: 'warning' }),
  ]);
  expect(conditionalRules).toEqual([
    expect.objectContaining({ range: 'E3:E9', formula: 'AND(ISNUMBER(E3),E3<0)' }),
  ]);
});

describe('charts', () => {
  test('a scatter has straight lines, and axes that end on round numbers around what it shows', () => {
    const [scatter = ''] = charts;
    expect(scatter.match(/<c:smooth val="0"\/><\/c:ser>/g)?.length).toBe(2);
    expect(scatter).toContain("<c:xVal><c:numRef><c:f>'Loading'!$A$2:$A$8</c:f>");
    // CG 78 to 86 in, asked for from 76; weights 1600 to 2700 lb in steps of 100
    expect(scatter.match(/<c:(min|max) val="\d+"\/>/g)?.sort()).toEqual([
      '<c:max val="2700"/>',
      '<c:max val="86"/>',
      '<c:min val="1600"/>',
      '<c:min val="76"/>',
    ]);
    expect(scatter).toContain('<a:prstDash val="dash"/>');
    expect(scatter).toContain('CG, in');
  });

  test('a column that waits for a curve is none yet', () => {
    expect(charts[0]?.match(/<c:ser>/g)?.length).toBe(2); // of three columns, the last one empty below its head
  });

  test('labels of the axes stand at the edge, clear of what lies on both sides of zero', () => {
    expect(charts[0]?.match(/<c:tickLblPos val="low"\/>/g)?.length).toBe(2);
  });

  test('the columns under a chart are as wide as in the workbook, filled or not', () => {
    // The last chart begins at column 8 and is 600 pixels wide, Google’s own width
    const widths = sheet('Weight').columns?.map(({ width }) => Number(width) * 7 + 5) ?? [];
    expect(widths.slice(7).reduce((sum, width) => sum + width, 0)).toBeGreaterThanOrEqual(600);
  });

  test('a stacked bar stacks, and is not touched', () => {
    const bar = charts.find((text) => text.includes('<c:barChart>')) ?? '';
    expect(bar).toContain('<c:grouping val="stacked"/>');
    expect(bar).toContain('<c:barDir val="bar"/>');
    expect(bar).not.toContain('c:smooth');
  });

  test('a scatter of points has no line', () => {
    const points = charts.filter((text) => text.includes('<c:scatterStyle val="marker"/>'));
    expect(points.length).toBe(1);
    expect(points[0]).toContain('<a:noFill/>');
  });
});

test('a rewritten archive keeps what it did not change', () => {
  const changed = rewriteZip(file, (name) => (name === 'xl/workbook.xml' ? 'A−B' : undefined));
  const before = entries(file);
  const after = entries(changed);
  expect(after.get('xl/workbook.xml')).toBe('A−B');
  before.delete('xl/workbook.xml');
  after.delete('xl/workbook.xml');
  expect(after).toEqual(before);
});

test('a workbook that was never laid out can be written', async () => {
  const empty = hostWith('');
  evaluateIn(empty, '');
  const read = await readXlsx(await workbookFile(empty.workbook));
  expect(read.sheets.map(({ name }) => name)).toEqual(['About this file', 'Sheet1']);
});
