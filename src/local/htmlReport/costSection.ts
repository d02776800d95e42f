import { blockParts, partNamed } from './blockParts.ts';
import { html } from './markup.ts';
import { type ReportData, type Section, withTitle } from './section.ts';
import { packagesTable, recordsTable } from './tables.ts';

export function costSection({ block, packages }: ReportData): Section {
  const parts = blockParts(block('COST_TABLE'));
  const [header = [], ...rows] = parts[0]?.rows ?? [];
  const scope = partNamed(parts, 'Still to buy');
  return {
    id: 'cost',
    title: 'What does it cost to buy, to fly and to keep?',
    body: html`${withTitle(String(header[0]), packagesTable(rows, packages))}
${withTitle(scope.title, recordsTable(scope.rows))}`,
  };
}
