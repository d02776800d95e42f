import { scaleLinear } from 'd3-scale';
import type { SheetChart } from 'hucre/xlsx';
import { type ChartSpec, readOption } from './host/chart.ts';
import {
  axis,
  type ChartData,
  type ColumnReference,
  chartData,
  legendPosition,
} from './host/chartDefinition.ts';
import { chartSize } from './host/sheetCharts.ts';
import type { Workbook } from './host/workbook.ts';
import { absoluteReference, pointsPerPixel, rgb } from './workbookFileStyle.ts';

type FileSeries = SheetChart['series'][number];

const kinds = { SCATTER: 'scatter', LINE: 'line', BAR: 'bar', COLUMN: 'column' } as const;

/** Charts of a sheet, over the cells that they show in the workbook. */
export function fileCharts(workbook: Workbook, sheetId: string): SheetChart[] {
  return workbook.charts
    .filter((record) => record.sheetId === sheetId)
    .map(({ spec }) => fileChart(workbook, sheetId, spec));
}

function fileChart(workbook: Workbook, sheetId: string, spec: ChartSpec): SheetChart {
  const { options } = spec;
  const data = chartData(spec);
  const kind = kinds[String(spec.type) as keyof typeof kinds];
  const title = readOption(options, 'title');
  const legend = legendPosition(options);
  const isScatter = kind === 'scatter';
  const hasLines = data.series.some(({ lineWidth }) => lineWidth > 0);
  const stacked = readOption(options, 'isStacked') === true;
  const isBar = kind === 'bar' || kind === 'column';
  // A bar chart lies on its side: what Google calls its horizontal axis is the axis of values, and its first row is on
  // top. Labels stand at the edge, clear of lines and bars on both sides of zero.
  const shown = isBar ? [[], []] : [[data.domain], data.series];
  const [across, up] = shown.map((columns) => columns.flatMap((column) => numbersIn(workbook, column)));
  const [x, y] = kind === 'bar' ? (['vAxis', 'hAxis'] as const) : (['hAxis', 'vAxis'] as const);
  return {
    type: kind,
    ...(title === undefined ? {} : { title: String(title) }),
    legend: legend === 'none' ? false : legend,
    ...(isScatter ? { scatterStyle: hasLines ? 'lineMarker' : 'marker' } : {}),
    ...(isBar ? { barGrouping: stacked ? 'stacked' : 'clustered' } : {}),
    axes: {
      x: {
        ...fileAxis(options, x, across),
        tickLblPos: 'low',
        ...(kind === 'bar' ? { reverse: true } : {}),
      },
      y: {
        ...fileAxis(options, y, up),
        ...(kind === 'bar' ? { crosses: 'max' } : { tickLblPos: 'low' }),
      },
    },
    series: data.series
      .filter((series) => isFilled(workbook, series, data.hasHeader))
      .map((series) => fileSeries(workbook, data, series, isScatter || kind === 'line')),
    anchor: anchor(workbook, sheetId, spec),
  };
}

/** A column that waits for a package, or has nothing below its head, would stand in the legend without a curve. */
function isFilled(workbook: Workbook, { sheetId, zone }: ColumnReference, hasHeader: boolean): boolean {
  return workbook
    .evaluatedRows(sheetId, zone)
    .slice(hasHeader ? 1 : 0)
    .some((row) => row.some(({ formattedValue }) => formattedValue !== ''));
}

function fileSeries(
  workbook: Workbook,
  { domain, hasHeader }: ChartData,
  series: ChartData['series'][number],
  hasLine: boolean,
): FileSeries {
  const body = <T extends { readonly zone: { readonly top: number } }>(column: T): T =>
    hasHeader ? { ...column, zone: { ...column.zone, top: column.zone.top + 1 } } : column;
  const { sheetId, zone } = series;
  const header = workbook.evaluated({ sheetId, col: zone.left, row: zone.top }).formattedValue;
  const name = series.label ?? (hasHeader ? header : undefined);
  return {
    ...(name ? { name } : {}),
    categories: absoluteReference(workbook, body(domain)),
    values: absoluteReference(workbook, body(series)),
    ...(series.color ? { color: rgb(series.color) } : {}),
    ...(hasLine ? lineLooks(series) : {}),
  };
}

function lineLooks({
  lineWidth,
  pointSize,
  pointShape = 'circle',
  dash,
  color,
}: ChartData['series'][number]): Pick<FileSeries, 'smooth' | 'stroke' | 'marker'> {
  const fill = color ? { fill: rgb(color), line: rgb(color) } : {};
  return {
    smooth: false,
    stroke: { width: lineWidth * pointsPerPixel, ...(dash ? { dash: dashStyle(dash) } : {}) },
    marker:
      pointSize > 0
        ? { symbol: symbols[pointShape] ?? 'circle', size: Math.max(2, Math.round(pointSize)), ...fill }
        : { symbol: 'none' },
  };
}

/** The file knows dashes by name only: the name whose look is nearest to Google's lengths of line and gap. */
function dashStyle(lengths: readonly number[]): NonNullable<NonNullable<FileSeries['stroke']>['dash']> {
  const [first = 0] = lengths;
  if (lengths.length > 2) return 'dashDot';
  if (first <= 2) return 'sysDot';
  return first >= 8 ? 'lgDash' : 'dash';
}

/** Google's point shapes that the file has too. */
const symbols: Readonly<Record<string, NonNullable<FileSeries['marker']>['symbol']>> = {
  circle: 'circle',
  triangle: 'triangle',
  square: 'square',
  diamond: 'diamond',
  star: 'star',
};

const numbersIn = (workbook: Workbook, { sheetId, zone }: ColumnReference): number[] =>
  workbook
    .evaluatedRows(sheetId, zone)
    .flatMap((row) => row.flatMap(({ value }) => (typeof value === 'number' ? [value] : [])));

/** An axis with its ends on round numbers around its values, which stay as they are in a file: programs differ in where they end. */
function fileAxis(
  options: ChartSpec['options'],
  name: 'hAxis' | 'vAxis',
  values: readonly number[] = [],
): NonNullable<NonNullable<SheetChart['axes']>['x']> {
  const { title, ...fixed } = axis(options, name);
  const low = fixed.min ?? Math.min(...values);
  const high = fixed.max ?? Math.max(...values);
  const [min = low, max = high] = scaleLinear().domain([low, high]).nice().domain();
  const scale = high > low ? { min, max, ...fixed } : fixed;
  return {
    ...(title ? { title: title.text } : {}),
    ...(Object.keys(scale).length > 0 ? { scale } : {}),
  };
}

/** The cells under the chart: a file anchors it to cells, not to pixels. */
function anchor(workbook: Workbook, sheetId: string, spec: ChartSpec): SheetChart['anchor'] {
  const { getters } = workbook.model;
  const from = { row: spec.position.row - 1, col: spec.position.column - 1 };
  const to = { ...from };
  const size = chartSize(spec.options);
  for (let left = size.width; left > 0; to.col++) left -= getters.getColSize(sheetId, to.col);
  for (let left = size.height; left > 0; to.row++) left -= getters.getRowSize(sheetId, to.row);
  return { from, to };
}

/**
 * Chart parts with straight lines between scatter points, and no lines where there should be none. Without the element
 * LibreOffice takes its schema default, smooth, and rounds polygons to ovals.
 */
export function straightened(chartPart: string): string {
  const isMarkerOnly = chartPart.includes('<c:scatterStyle val="marker"/>');
  return chartPart.replace(/<c:scatterChart>.*?<\/c:scatterChart>/s, (scatter) => {
    const straight = scatter.replace(/<\/c:ser>/g, '<c:smooth val="0"/></c:ser>');
    return isMarkerOnly ? straight.replace(line, '<a:ln><a:noFill/></a:ln>') : straight;
  });
}

const line = /<a:ln\b[^>]*(?:\/>|(?<!\/)>.*?<\/a:ln>)/gs;
