import { columnLetters } from './a1.ts';
import { type ChartSpec, readOption } from './chart.ts';
import type { ChartDefinition, Zone } from './engine.ts';
import type { Workbook } from './workbook.ts';

/** Series of a chart as Google reads its ranges: columns side by side, the first for all, a header row or none. */
export interface ChartData {
  readonly domain: ColumnReference;
  readonly series: readonly (ColumnReference & {
    readonly color: string | undefined;
    readonly label: string | undefined;
    readonly lineWidth: number;
    readonly pointSize: number;
    readonly dash: readonly number[] | undefined;
    readonly pointShape: string | undefined;
  })[];
  readonly hasHeader: boolean;
}

export interface ColumnReference {
  readonly sheetId: string;
  readonly zone: Zone;
}

const defaultLineWidth: Readonly<Record<string, number>> = { LINE: 2, SCATTER: 0 }; // Google Charts' defaults
const defaultPointSize: Readonly<Record<string, number>> = { LINE: 0, SCATTER: 7 };

/** @throws Error when the ranges are none, or of different heights, or the header rows were not said */
export function chartData({ type, ranges, headerRows, options }: ChartSpec): ChartData {
  if (headerRows !== 0 && headerRows !== 1) {
    throw new Error('EmbeddedChartBuilder: setNumHeaders must be called with 0 or 1');
  }
  const columns = ranges.flatMap(({ sheetId, zone }): ColumnReference[] => {
    if (!zone) throw new Error('the cells of a chart were deleted');
    return Array.from({ length: zone.right - zone.left + 1 }, (_, index) => {
      const column = zone.left + index;
      return { sheetId, zone: { ...zone, left: column, right: column } };
    });
  });
  const [domain, ...values] = columns;
  if (!domain || values.length === 0) throw new Error('a chart needs a first column and a series');
  const height = ({ zone }: ColumnReference) => zone.bottom - zone.top;
  if (values.some((column) => height(column) !== height(domain))) {
    throw new Error("a chart's ranges must have the same number of rows");
  }
  const kind = String(type);
  const ofSeries = (index: number, name: string) =>
    readOption(options, `series.${index}.${name}`) ?? readOption(options, name);
  const series = values.map((column, index) => ({
    ...column,
    color: (readOption(options, `series.${index}.color`) ?? readOption(options, `colors.${index}`)) as
      | string
      | undefined,
    label: readOption(options, `series.${index}.labelInLegend`) as string | undefined,
    lineWidth: Number(ofSeries(index, 'lineWidth') ?? defaultLineWidth[kind] ?? 0),
    pointSize: Number(ofSeries(index, 'pointSize') ?? defaultPointSize[kind] ?? 0),
    dash: ofSeries(index, 'lineDashStyle') as readonly number[] | undefined,
    pointShape: ofSeries(index, 'pointShape') as string | undefined,
  }));
  return { domain, series, hasHeader: headerRows === 1 };
}

/**
 * The engine's definition of a chart. The engine's scatter has no lines: a scatter with a line width is drawn as a line
 * over numeric labels, which looks the same.
 */
export function chartDefinition(workbook: Workbook, sheetId: string, spec: ChartSpec): ChartDefinition {
  const { options } = spec;
  const { domain, series, hasHeader } = chartData(spec);
  const reference = (column: ColumnReference, top = column.zone.top) => {
    const letters = columnLetters(column.zone.left);
    const name = workbook.model.getters.getSheetName(column.sheetId);
    const prefix = column.sheetId === sheetId ? '' : `'${name}'!`; // the engine allows no apostrophe in a name
    return `${prefix}${letters}${top + 1}:${letters}${column.zone.bottom + 1}`;
  };
  const dataSetStyles = Object.fromEntries(
    series.map(({ color, label }, index) => [
      `series-${index}`,
      { ...(color ? { backgroundColor: color } : {}), ...(label ? { label } : {}) },
    ]),
  );
  const common = {
    title: { text: String(readOption(options, 'title') ?? '') },
    legendPosition: legendPosition(options),
    axesDesign: { x: axis(options, 'hAxis'), y: axis(options, 'vAxis') },
    dataSetStyles,
    dataSource: {
      type: 'range' as const,
      dataSets: series.map((column, index) => ({
        dataSetId: `series-${index}`,
        dataRange: reference(column),
      })),
      dataSetsHaveTitle: hasHeader,
      labelRange: reference(domain, domain.zone.top + (hasHeader ? 1 : 0)),
    },
  };
  const stacked = readOption(options, 'isStacked') === true;
  const hideDataMarkers = series.every(({ pointSize }) => pointSize === 0);
  switch (String(spec.type)) {
    case 'SCATTER':
      return series.some(({ lineWidth }) => lineWidth > 0)
        ? { ...common, type: 'line', labelsAsText: false, stacked: false, cumulative: false, hideDataMarkers }
        : { ...common, type: 'scatter', labelsAsText: false };
    case 'LINE':
      return { ...common, type: 'line', labelsAsText: true, stacked, cumulative: false, hideDataMarkers };
    case 'BAR':
      return { ...common, type: 'bar', stacked, horizontal: true };
    case 'COLUMN':
      return { ...common, type: 'bar', stacked, horizontal: false };
    default:
      throw new Error(`chart type ${spec.type} is not implemented by the local host`);
  }
}

export type LegendPosition = 'top' | 'bottom' | 'left' | 'right' | 'none';

export function legendPosition(options: ChartSpec['options']): LegendPosition {
  const legend = readOption(options, 'legend');
  const position = typeof legend === 'string' ? legend : (readOption(options, 'legend.position') ?? 'right');
  if (!['top', 'bottom', 'left', 'right', 'none'].includes(String(position))) {
    throw new Error(`legend position ${position} is not implemented by the local host`);
  }
  return position as LegendPosition;
}

/** Title and fixed limits of an axis. */
export function axis(options: ChartSpec['options'], name: 'hAxis' | 'vAxis'): AxisDesign {
  const title = readOption(options, `${name}.title`);
  const min = readOption(options, `${name}.viewWindow.min`);
  const max = readOption(options, `${name}.viewWindow.max`);
  return {
    ...(title === undefined ? {} : { title: { text: String(title) } }),
    ...(min === undefined ? {} : { min: Number(min) }),
    ...(max === undefined ? {} : { max: Number(max) }),
  };
}

export interface AxisDesign {
  readonly title?: { readonly text: string };
  readonly min?: number;
  readonly max?: number;
}
