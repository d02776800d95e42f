import type { Cell } from '../tables/cell.ts';
import { axisTitles, isAboveZero } from '../workbook/axes.ts';
import { type ChartLayout, largestPackageCount } from '../workbook/layout.ts';
import { isOwn, own } from '../workbook/own.ts';
import { groupColours, limitColour, type PackageStyle, packageStyles } from '../workbook/palette.ts';
import { rangeOf, type View } from './places.ts';
import type { Packages } from './resultLooks.ts';
import type { PlacedResult } from './results.ts';

export type Chart = GoogleAppsScript.Spreadsheet.EmbeddedChart;
type Builder = GoogleAppsScript.Spreadsheet.EmbeddedChartBuilder;
type Block = readonly (readonly Cell[])[];

interface Series {
  readonly color: string;
  readonly lineWidth?: number;
  readonly lineDashStyle?: readonly number[];
  readonly visibleInLegend?: boolean;
}

/** Curves beyond the packages there are now wait for the next ones: they have their looks, and no name yet. */
function seriesOf(
  { curves }: ChartLayout,
  columns: number,
  { names, baseline }: Packages,
): Record<number, Series> {
  const styles = packageStyles(Math.max(largestPackageCount, names.length), baseline);
  const all = Array.from({ length: columns - 1 }, (_, index): Series => {
    if (curves === 'groups') return { color: groupColours[index % groupColours.length] as string };
    if (curves === 'limits, packages' && index === 0) return { color: limitColour, lineWidth: 4 };
    const at = curves === 'limits, packages' ? index - 1 : curves === 'packages twice' ? index >> 1 : index;
    const { colour, dash } = styles[at] as PackageStyle;
    const isRich = curves === 'packages twice' && index % 2 === 0;
    return {
      color: colour,
      lineWidth: isRich ? 1 : 2,
      ...(dash && { lineDashStyle: dash }),
      ...(at >= names.length && { visibleInLegend: false }),
    };
  });
  return Object.fromEntries(all.entries());
}

/** Columns of a chart with its x: room for as many packages as the workbook keeps room for. */
function columnsOf({ curves }: ChartLayout, { names }: Packages, { result }: PlacedResult): number {
  const packages = Math.max(largestPackageCount, names.length);
  if (curves === 'groups') return result.columns;
  if (curves === 'packages twice') return 1 + 2 * packages;
  return curves === 'limits, packages' ? 2 + packages : 1 + packages;
}

/**
 * Axes with their titles. No range is fixed, so that a curve that grows stays in the picture; one begins at zero where zero
 * matters and nothing is below.
 */
function withAxes(builder: Builder, chart: ChartLayout, block: Block): Builder {
  const { hAxis, vAxis } = axisTitles(chart, block);
  const fromZero = chart.fromZero && isAboveZero(chart, block) && { viewWindow: { min: 0 } };
  builder.setOption('hAxis', { title: hAxis });
  return vAxis === undefined ? builder : builder.setOption('vAxis', { title: vAxis, ...fromZero });
}

/** @param block empty while its tables have faults: the chart then keeps the axes that it has */
function built(
  builder: Builder,
  chart: ChartLayout,
  placed: PlacedResult,
  block: Block,
  packages: Packages,
): Chart {
  const { view, row, column } = placed;
  const columns = columnsOf(chart, packages, placed);
  const { part } = chart;
  const data = rangeOf({ view, row: row + part.row, column: column + part.column, rows: part.rows, columns });
  const isCurves = chart.kind === 'curves';
  builder
    .clearRanges()
    .addRange(data)
    .setNumHeaders(1)
    .setChartType(isCurves ? Charts.ChartType.SCATTER : Charts.ChartType.BAR)
    .setOption('title', own(chart.title))
    .setOption('series', seriesOf(chart, columns, packages))
    .setOption('legend.position', 'right')
    .setOption('width', chart.width)
    .setOption('height', chart.height);
  if (isCurves) builder.setOption('lineWidth', 2).setOption('pointSize', 0);
  else builder.setOption('isStacked', true);
  return (block.length > 0 ? withAxes(builder, chart, block) : builder).build();
}

export const titleOf = (chart: Chart) => String(chart.getOptions()?.get('title') ?? '');

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
      if (found) sheet.updateChart(drawn);
      else sheet.insertChart(drawn);
    }
  }
}
