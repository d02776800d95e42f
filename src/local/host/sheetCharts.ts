import {
  builtChart,
  type ChartRecord,
  type ChartSpec,
  createChart,
  createChartBuilder,
  readOption,
} from './chart.ts';
import { chartDefinition } from './chartDefinition.ts';
import type { GoogleChart, GoogleSheet } from './google.ts';
import type { SheetContext } from './sheet.ts';

const defaultSize = { width: 600, height: 371 }; // px, Google's own

/** Size of a chart in pixels. */
export function chartSize(options: ChartSpec['options']): { width: number; height: number } {
  return {
    width: Number(readOption(options, 'width') ?? defaultSize.width),
    height: Number(readOption(options, 'height') ?? defaultSize.height),
  };
}

/** Charts of a sheet. */
export function sheetCharts({ workbook, sheetId }: SheetContext): Partial<GoogleSheet> {
  const figure = ({ options, position }: ChartSpec) => ({
    col: position.column - 1,
    row: position.row - 1,
    offset: { x: position.offsetX, y: position.offsetY },
    size: chartSize(options),
  });
  const engineIds = (id: number) => ({ sheetId, chartId: `chart-${id}`, figureId: `figure-${id}` });
  const recordOf = (chart: GoogleChart): ChartRecord => {
    const { id } = builtChart(chart);
    const record = workbook.charts.find((known) => known.id === id && known.sheetId === sheetId);
    if (!record) throw new Error('the chart is not on this sheet');
    return record;
  };

  return {
    newChart: () => createChartBuilder(workbook),

    getCharts: () =>
      workbook.charts
        .filter((record) => record.sheetId === sheetId)
        .map(({ id, spec }) => createChart(workbook, { id, spec })),

    insertChart(chart: GoogleChart) {
      const { spec } = builtChart(chart);
      const id = workbook.nextNumber();
      const definition = chartDefinition(workbook, sheetId, spec);
      workbook.dispatch('CREATE_CHART', { ...engineIds(id), ...figure(spec), definition });
      workbook.charts.push({ id, sheetId, spec });
    },

    updateChart(chart: GoogleChart) {
      const record = recordOf(chart);
      const { spec } = builtChart(chart);
      const { chartId, figureId } = engineIds(record.id);
      const definition = chartDefinition(workbook, sheetId, spec);
      workbook.dispatch('UPDATE_CHART', { sheetId, chartId, figureId, definition });
      const { size, ...place } = figure(spec);
      workbook.dispatch('UPDATE_FIGURE', { sheetId, figureId, ...place, ...size });
      record.spec = spec;
    },

    removeChart(chart: GoogleChart) {
      const record = recordOf(chart);
      workbook.dispatch('DELETE_FIGURE', { sheetId, figureId: engineIds(record.id).figureId });
      workbook.charts.splice(workbook.charts.indexOf(record), 1);
    },
  };
}
