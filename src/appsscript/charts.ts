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
  readonly lineWidth?: number;
  readonly lineDashStyle?: readonly number[];
}

/** How each curve is drawn: limits dark grey and thicker, packages in their colour and dash, the baseline black. */
function seriesOf(
  { curves }: ChartLayout,
  count: number,
  { names, baseline }: Packages,
): Record<number, Series> {
  const styles = packageStyles(names.length, baseline);
  const all = Array.from({ length: count }, (_, index): Series => {
    if (curves === 'groups') return { color: groupColours[index % groupColours.length] as string };
    if (curves === 'limits, packages' && index === 0) return { color: limitColour, lineWidth: 4 };
    const at = curves === 'limits, packages' ? index - 1 : curves === 'packages twice' ? index >> 1 : index;
    const { colour, dash } = styles[at] ?? { colour: limitColour, dash: undefined };
    const isRich = curves === 'packages twice' && index % 2 === 0;
    return { color: colour, lineWidth: isRich ? 1 : 2, ...(dash && { lineDashStyle: dash }) };
  });
  return Object.fromEntries(all.entries());
}

/** Columns of a chart with its x. */
function columnsOf({ curves }: ChartLayout, { names: { length } }: Packages, width: number): number {
  if (curves === 'groups') return width;
  if (curves === 'packages twice') return 1 + 2 * length;
  return curves === 'limits, packages' ? 2 + length : 1 + length;
}

const numbers = (cells: readonly Cell[]) => cells.filter((cell): cell is number => typeof cell === 'number');

/** The part of a block that a chart draws: its header's index, its rows with the header. */
function partOf(
  { header, kind }: ChartLayout,
  room: number,
  block: Block,
): { first: number; rows: number } | undefined {
  const begins = (row: readonly Cell[]) => String(row[0] ?? '').startsWith(header.begins);
  const heads = block.flatMap((row, index) => (begins(row) ? [index] : []));
  const first = heads[header.occurrence - 1];
  if (first === undefined) return undefined;
  if (header.toEnd) return { first, rows: room - first };
  const below = block.slice(first + 1);
  const end = below.findIndex((row) => (kind === 'curves' ? typeof row[0] !== 'number' : !row[0]));
  return { first, rows: 1 + (end < 0 ? below.length : end) };
}

/** Titles and fixed ranges of the axes, so that both hosts draw the same picture. */
function withAxes(builder: Builder, chart: ChartLayout, above: string, rows: Block): Builder {
  const [heading = [], ...below] = rows;
  const first = String(heading[0] ?? '');
  const unit = new RegExp(chart.unit.pattern).exec(chart.unit.above ? above : first)?.[1];
  const values = unit === undefined ? chart.up : `${chart.up}, ${unit}`;
  if (chart.kind !== 'curves') return builder.setOption('hAxis.title', values);
  builder.setOption('hAxis.title', first.replace(/ \(.*/, '')).setOption('vAxis.title', values);
  const x = axisRange(numbers(below.map((row) => row[0] ?? null)), false);
  const y = axisRange(numbers(below.flatMap((row) => row.slice(1))), chart.fromZero);
  if (x) builder.setOption('hAxis.viewWindow.min', x.min).setOption('hAxis.viewWindow.max', x.max);
  if (y) builder.setOption('vAxis.viewWindow.min', y.min).setOption('vAxis.viewWindow.max', y.max);
  return builder;
}

/** @returns undefined while the block has not the part that the chart draws: its tables have faults */
function built(
  builder: Builder,
  chart: ChartLayout,
  placed: PlacedResult,
  block: Block,
  packages: Packages,
): Chart | undefined {
  const { result, view, row, column } = placed;
  const part = partOf(chart, result.rows, block);
  if (part === undefined) return undefined;
  const lines = block.slice(part.first, part.first + part.rows);
  const columns = columnsOf(chart, packages, lines[0]?.length ?? 2);
  const data = rangeOf({ view, row: row + part.first, column, rows: part.rows, columns });
  const isCurves = chart.kind === 'curves';
  builder
    .clearRanges()
    .addRange(data)
    .setNumHeaders(1)
    .setChartType(isCurves ? Charts.ChartType.SCATTER : Charts.ChartType.BAR)
    .setOption('title', own(chart.title))
    .setOption('series', seriesOf(chart, columns - 1, packages))
    .setOption('legend.position', 'right')
    .setOption('width', chart.width)
    .setOption('height', chart.height);
  if (isCurves) builder.setOption('lineWidth', 2).setOption('pointSize', 0);
  else builder.setOption('isStacked', true);
  const above = String(block[part.first - 1]?.[0] ?? '');
  const shown = lines.map((line) => line.slice(0, columns));
  return withAxes(builder, chart, above, shown).build();
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
      const builder = found?.modify() ?? sheet.newChart().setPosition(chart.row, chart.column, 0, 0);
      const drawn = built(builder, chart, each, blockOf(each), packages);
      if (drawn === undefined) continue;
      if (found) sheet.updateChart(drawn);
      else sheet.insertChart(drawn);
    }
  }
}
