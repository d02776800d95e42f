import { blockParts, partNamed } from './blockParts.ts';
import { html } from './markup.ts';
import { partChart } from './partChart.ts';
import { type ReportData, type Section, withTitle } from './section.ts';
import { recordsTable } from './tables.ts';

export function coolingSection({ block, packages }: ReportData): Section {
  const parts = blockParts(block('COOLING_CHECK'));
  const climbs = partNamed(parts, 'Steady climb');
  const margins = partNamed(parts, 'Least margin');
  const columns = [
    'Package',
    'Stream',
    'Power',
    'At',
    'Temperature',
    'Limit',
    'Margin',
    'Highest OAT at the field',
    'Exit needed',
    'Exit built',
    'Verdict',
  ];
  return {
    id: 'cooling',
    title: 'Does it stay cool on the hottest day?',
    body: html`${partChart(margins, packages, 'margin', false)}
${withTitle(climbs.title, recordsTable(climbs.rows, columns))}`,
  };
}
