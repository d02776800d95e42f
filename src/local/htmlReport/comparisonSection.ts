import type { Block, Row } from '../block.ts';
import { blockParts, namedLoadings, partNamed } from './blockParts.ts';
import { html } from './markup.ts';
import type { ReportData, Section } from './section.ts';
import { packagesTable } from './tables.ts';

/** What other sections of the report show. */
const elsewhere = [namedLoadings, 'Gravest findings', 'Cautions'];

/** The rows of the comparison, headings and all. */
function figures(block: Block): Row[] {
  const parts = blockParts(block.slice(1)).filter(
    ({ title }) => !elsewhere.some((each) => title.startsWith(each)),
  );
  return parts.flatMap(({ title, rows }) => [[title], ...rows]);
}

export function comparisonSection({ block, packages }: ReportData): Section {
  const comparison = block('PACKAGE_COMPARISON');
  return {
    id: 'comparison',
    title: 'The packages side by side',
    body: packagesTable(figures(comparison), packages, String(comparison[0]?.[0] ?? '')),
  };
}

export function cautionsSection({ block }: ReportData): Section {
  const { rows } = partNamed(blockParts(block('PACKAGE_COMPARISON')), 'Cautions');
  return {
    id: 'cautions',
    title: 'Cautions',
    body: html`<ul>${rows.map(([text]) => html`<li>${String(text)}</li>`)}</ul>`,
  };
}
