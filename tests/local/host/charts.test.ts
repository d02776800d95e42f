/** Charts: what Google is told and what the local engine draws. */
import { describe, expect, test } from 'vitest';
import { evaluate, evaluateIn, hostWith } from './support.ts';

/** A closed envelope and a region, x first, each in rows of its own, as the workbook lays them out. */
const data = `sheet.getRange('A1:C1').setValues([["'CG", "'Envelope", "'Region"]]);
  sheet.getRange('A2:C9').setValues([[78, 1600, ''], [78, 2200, ''], [86, 2700, ''], [78, 1600, ''],
    [80, '', 1700], [82, '', 2650], [83, '', 1650], [80, '', 1700]]);
  sheet.getRange('E1:G3').setValues([["'Package", "'Engine", "'Mount"], ["'North", 300, 20], ["'South", 280, 25]]);
  const builder = (type, range) => sheet.newChart().setChartType(Charts.ChartType[type])
    .addRange(sheet.getRange(range)).setNumHeaders(1).setPosition(12, 2, 5, 6);`;

interface Drawn {
  readonly type: string;
  readonly data: {
    readonly labels: unknown[];
    readonly datasets: {
      readonly label: string;
      readonly data: unknown[];
      readonly showLine?: boolean;
      readonly pointRadius?: number;
      readonly borderColor?: string;
      readonly backgroundColor?: string;
    }[];
  };
  readonly options: {
    readonly indexAxis?: string;
    readonly scales: Record<string, { type?: string; stacked?: boolean; min?: number; max?: number }>;
  };
}

function draw(code: string): Drawn {
  const host = hostWith('');
  evaluateIn(host, `${data} ${code}`);
  const { getters } = host.workbook.model;
  const [id = ''] = getters.getChartIds('0');
  return (getters.getChartRuntime(id) as unknown as { chartJsConfig: Drawn }).chartJsConfig;
}

test('a scatter with lines is drawn as a line over numbers', () => {
  const chart = draw(`sheet.insertChart(builder('SCATTER', 'A1:C9')
    .setOption('lineWidth', 2).setOption('pointSize', 0).setOption('series', { 0: { color: '#333333' } })
    .setOption('series.1.color', '#d55e00').setOption('series.1.labelInLegend', 'Loadings')
    .setOption('hAxis', { title: 'CG, in', viewWindow: { min: 76, max: 88 } })
    .setOption('vAxis.viewWindow.min', 1500).setOption('vAxis.viewWindow.max', 2800).build());`);
  expect(chart.type).toBe('line');
  expect(chart.options.scales).toMatchObject({
    x: { type: 'linear', min: 76, max: 88 },
    y: { min: 1500, max: 2800 },
  });
  const [envelope, region] = chart.data.datasets;
  expect(envelope).toMatchObject({ label: 'Envelope', pointRadius: 0, borderColor: '#333333' });
  expect(region).toMatchObject({ label: 'Loadings', borderColor: '#d55e00' });
  expect(envelope?.data.slice(0, 4)).toEqual([
    { x: '78', y: 1600 },
    { x: '78', y: 2200 },
    { x: '86', y: 2700 },
    { x: '78', y: 1600 },
  ]);
  expect(envelope?.data.slice(4).every((point) => Number.isNaN((point as { y: number }).y))).toBe(true);
});

test('a scatter without lines is drawn as points', () => {
  const chart = draw("sheet.insertChart(builder('SCATTER', 'A1:C9').build());");
  expect(chart.data.datasets[0]).toMatchObject({ showLine: false, pointRadius: 3 });
});

test('a stacked bar has a row per package and a column per group', () => {
  const chart = draw("sheet.insertChart(builder('BAR', 'E1:G3').setOption('isStacked', true).build());");
  expect(chart.type).toBe('bar');
  expect(chart.options.indexAxis).toBe('y');
  expect(chart.options.scales).toMatchObject({ x: { stacked: true }, y: { stacked: true } });
  expect(chart.data.labels).toEqual(['North', 'South']);
  expect(chart.data.datasets.map(({ label, data: values }) => [label, ...values])).toEqual([
    ['Engine', 300, 280],
    ['Mount', 20, 25],
  ]);
});

test('a column chart stands, a line chart has its labels as text', () => {
  expect(draw("sheet.insertChart(builder('COLUMN', 'E1:G3').build());").options.indexAxis).not.toBe('y');
  const line = draw("sheet.insertChart(builder('LINE', 'E1:G3').build());");
  expect([line.type, line.data.labels]).toEqual(['line', ['North', 'South']]);
});

test('columns may come from several ranges and another sheet', () => {
  const chart =
    draw(`const other = book.insertSheet('Other parts'); other.getRange('B1:B3').setValues([["'Propeller"], [45], [60]]);
    sheet.insertChart(builder('BAR', 'E1:E3').addRange(other.getRange('B1:B3')).build());`);
  expect(chart.data.datasets).toMatchObject([{ label: 'Propeller', data: [45, 60] }]);
});

describe('charts of a sheet', () => {
  test('are listed, changed and removed', () => {
    expect(
      evaluate(`${data} sheet.insertChart(builder('BAR', 'E1:G3').setOption('title', 'Weight').build());
         sheet.insertChart(builder('COLUMN', 'E1:G3').build());
         const [first] = sheet.getCharts();
         sheet.updateChart(first.modify().setOption('title', 'Weight build-up').setPosition(3, 1, 0, 0).build());
         const [changed, second] = sheet.getCharts();
         sheet.removeChart(second);
         const place = changed.getContainerInfo();
         return [changed.getOptions().get('title'), changed.getRanges()[0].getA1Notation(), place.getAnchorRow(),
           place.getAnchorColumn(), changed.getChartId() === first.getChartId(), sheet.getCharts().length];`),
    ).toEqual(['Weight build-up', 'E1:G3', 3, 1, true, 1]);
  });

  test('are gone from the engine when removed', () => {
    const host = hostWith('');
    evaluateIn(
      host,
      `${data} sheet.insertChart(builder('BAR', 'E1:G3').build()); sheet.removeChart(sheet.getCharts()[0]);`,
    );
    expect(host.workbook.model.getters.getChartIds('0')).toEqual([]);
  });

  test('keep their cells when rows are inserted', () => {
    expect(
      evaluate(`${data} sheet.insertChart(builder('BAR', 'E1:G3').build()); sheet.insertRowBefore(1);
         return sheet.getCharts()[0].getRanges()[0].getA1Notation();`),
    ).toBe('E2:G4');
  });

  test.each([
    ["builder('PIE', 'E1:G3').build()", 'chart type PIE is not implemented'],
    ["sheet.newChart().addRange(sheet.getRange('E1:G3')).setNumHeaders(1).build()", 'chart type undefined'],
    [
      "sheet.newChart().setChartType(Charts.ChartType.BAR).addRange(sheet.getRange('E1:G3')).build()",
      'setNumHeaders',
    ],
    ["builder('BAR', 'E1:E3').build()", 'a first column and a series'],
    ["builder('BAR', 'E1:E3').addRange(sheet.getRange('F1:F4')).build()", 'the same number of rows'],
    ["builder('BAR', 'E1:G3').setOption('hAxsi.title', 'x').build()", 'unknown chart option hAxsi.title'],
    ["builder('BAR', 'E1:G3').setOption('legend.position', 'labeled').build()", 'legend position labeled'],
    ["builder('BAR', 'E1:G3').asScatterChart()", 'EmbeddedChartBuilder.asScatterChart is not implemented'],
    ["builder('BAR', 'E1:G3').setTransposeRowsAndColumns(true)", 'is not implemented'],
  ])('%s is refused', (chart, message) => {
    expect(() => evaluate(`${data} sheet.insertChart(${chart});`)).toThrow(message);
  });
});
