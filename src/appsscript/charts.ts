import type { Cell } from '../tables/cell.ts';
import { axisRange } from '../workbook/axis.ts';
import type { ChartLayout } from '../workbook/layout.ts';
import { isOwn, own } from '../workbook/own.ts';
import { groupColours, limitColour, packageStyles } from '../workbook/palette.ts';
import { rangeOf, type View } from './places.ts';
import type { Packages } from './resultLooks.ts';
import type { PlacedResult } from './results.ts';

type Chart = GoogleAppsScript.Spreadsheet.EmbeddedChart;
type Builder = GoogleAppsScript.Spreadsheet.EmbeddedChartBuilder;
type Block = readonly (readonly Cell[])[];

interface Series {
  readonly color: string;
  readonly lineWidth: number;
  readonly pointSize: 0;
  readonly lineDashStyle?: readonly number[];
}

/** How each curve is drawn: limits dark grey and thicker, packages in their colour and dash, the baseline black. */
function seriesOf({ curves, columns }: ChartLayout, { names, baseline }: Packages): Record<number, Series> {
  const room = columns - 1;
  const styles = packageStyles(Math.max(names.length, room), baseline);
  const all = Array.from({ length: room }, (_, index): Series => {
    if (curves === 'groups')
      return { color: groupColours[index % groupColours.length] as string, lineWidth: 0, pointSize: 0 };
    if (curves === 'limits, packages' && index === 0)
      return { color: limitColour, lineWidth: 4, pointSize: 0 };
    const at = curves === 'limits, packages' ? index - 1 : curves === 'packages twice' ? index >> 1 : index;
    const { colour, dash } = styles[at] ?? { colour: limitColour, dash: undefined };
    const isRich = curves === 'packages twice' && index % 2 === 0;
    return { color: colour, lineWidth: isRich ? 1 : 2, pointSize: 0, ...(dash && { lineDashStyle: dash }) };
  });
  return Object.fromEntries(all.entries());
}

const numbers = (cells: readonly Cell[]) => cells.filter((cell): cell is number => typeof cell === 'number');

/** The part of a block that a chart draws: its header's index, its rows with the header. */
function partOf(
  { header }: ChartLayout,
  room: number,
  block: Block,
): { first: number; rows: number } | undefined {
  const begins = (row: readonly Cell[]) => String(row[0] ?? '').startsWith(header.begins);
  const heads = block.flatMap((row, index) => (begins(row) ? [index] : []));
  const first = heads[header.occurrence - 1];
  if (first === undefined) return undefined;
  if (header.toEnd) return { first, rows: room - first };
  const below = block.slice(first + 1);
  const end = below.findIndex((row) => typeof row[0] !== 'number');
  return { first, rows: 1 + (end < 0 ? below.length : end) };
}

/** Fixed ranges for the axes, so that both hosts draw the same picture. */
function withAxes(builder: Builder, chart: ChartLayout, rows: Block): Builder {
  const [heading = [], ...below] = rows;
  builder.setOption('hAxis.title', String(heading[0] ?? '')).setOption('vAxis.title', chart.up ?? '');
  if (chart.kind !== 'curves') return builder;
  const x = axisRange(numbers(below.map((row) => row[0] ?? null)), false);
  const y = axisRange(numbers(below.flatMap((row) => row.slice(1, chart.columns))), chart.fromZero);
  if (x) builder.setOption('hAxis.viewWindow.min', x.min).setOption('hAxis.viewWindow.max', x.max);
  if (y) builder.setOption('vAxis.viewWindow.min', y.min).setOption('vAxis.viewWindow.max', y.max);
  return builder;
}

function built(
  builder: Builder,
  chart: ChartLayout,
  placed: PlacedResult,
  block: Block,
  packages: Packages,
): Chart {
  const { result, view, row, column } = placed;
  const part = partOf(chart, result.rows, block) ?? { first: 0, rows: result.rows };
  const data = rangeOf({ view, row: row + part.first, column, rows: part.rows, columns: chart.columns });
  const isCurves = chart.kind === 'curves';
  builder
    .clearRanges()
    .addRange(data)
    .setNumHeaders(1)
    .setChartType(isCurves ? Charts.ChartType.SCATTER : Charts.ChartType.BAR)
    .setOption('title', own(chart.title))
    .setOption('series', seriesOf(chart, packages))
    .setOption('legend.position', 'right')
    .setOption('width', chart.width)
    .setOption('height', chart.height);
  if (isCurves) builder.setOption('lineWidth', 2).setOption('pointSize', 0);
  else builder.setOption('isStacked', true);
  return withAxes(builder, chart, block.slice(part.first, part.first + part.rows)).build();
}

const titleOf = (chart: Chart) => String(chart.getOptions()?.get('title') ?? '');

/** Draws a sheet's charts: one that a person moved or resized stays where it is, one the layout no longer has goes. */
export function drawCharts(
  { sheet }: View,
  placed: readonly PlacedResult[],
  blockOf: (placed: PlacedResult) => Block,
  packages: Packages,
): void {
  const present = sheet.getCharts().filter((chart) => isOwn(titleOf(chart)));
  const titles = new Set(placed.flatMap(({ result }) => result.charts.map(({ title }) => own(title))));
  for (const chart of present) if (!titles.has(titleOf(chart))) sheet.removeChart(chart);
  for (const each of placed) {
    for (const chart of each.result.charts) {
      const found = present.find((candidate) => titleOf(candidate) === own(chart.title));
      if (found) sheet.updateChart(built(found.modify(), chart, each, blockOf(each), packages));
      else {
        const builder = sheet.newChart().setPosition(chart.row, chart.column, 0, 0);
        sheet.insertChart(built(builder, chart, each, blockOf(each), packages));
      }
    }
  }
}
