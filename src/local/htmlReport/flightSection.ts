import { blockParts, partNamed } from './blockParts.ts';
import { html } from './markup.ts';
import { partChart } from './partChart.ts';
import { type ReportData, type Section, withTitle } from './section.ts';
import { packagesTable } from './tables.ts';

export function flightSection({ block, packages }: ReportData): Section {
  const parts = blockParts(block('FLIGHT_TABLE'));
  const figures = partNamed(parts, 'Figures');
  return {
    id: 'flight',
    title: 'How does it climb, how fast is it, what field does it need?',
    body: html`<div class="charts">${partChart(partNamed(parts, 'Best rate of climb'), packages, 'rate of climb', true)}
${partChart(partNamed(parts, 'Level speed at 75 %'), packages, 'true airspeed', false)}</div>
${withTitle(figures.title, packagesTable(figures.rows.slice(1), packages))}`,
  };
}
