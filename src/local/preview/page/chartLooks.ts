import type { Chart as ChartInstance, Plugin } from 'chart.js';
import { readOption } from '../../host/chart.ts';
import type { LocalHost } from '../../host/localHost.ts';

declare const Chart: typeof ChartInstance;

/**
 * Widths and dashes of curves, which the script asks for and the engine's charts do not know: a chart is known by its title.
 * The engine begins an axis at zero unless it is told where; Google fits it to the curves.
 */
export function drawCurvesAsAsked({ workbook }: LocalHost): void {
  const looks: Plugin = {
    id: 'looks-of-curves',
    beforeUpdate({ data, options }) {
      const title = options.plugins?.title?.text;
      const spec = workbook.charts
        .map((each) => each.spec)
        .find((each) => readOption(each.options, 'title') === title);
      if (title === undefined || spec === undefined) return;
      if (readOption(spec.options, 'vAxis.viewWindow.min') === undefined && options.scales?.y)
        Object.assign(options.scales.y, { beginAtZero: false });
      data.datasets.forEach((curve, index) => {
        const dash = readOption(spec.options, `series.${index}.lineDashStyle`) as number[] | undefined;
        const width = readOption(spec.options, `series.${index}.lineWidth`) as number | undefined;
        Object.assign(curve, dash && { borderDash: dash }, width && { borderWidth: width });
      });
    },
  };
  Chart.register(looks);
}
