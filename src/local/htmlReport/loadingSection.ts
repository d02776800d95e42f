import type { Block } from '../block.ts';
import { blockParts, namedLoadings, partNamed } from './blockParts.ts';
import { html, type Markup, nothing } from './markup.ts';
import { columnPoints, domainOf, figure, limitCurve, packageCurve, picture } from './pictures.ts';
import { type ReportData, type Section, withTitle } from './section.ts';
import { type PackageLook, packagesTable, recordsTable } from './tables.ts';

const limitsColumn = 1;
const size = { width: 420, height: 300 };

/** For every package a picture of all its loadings over the CG limits, all to the same scale. */
function regions([header = [], ...rows]: Block, packages: readonly PackageLook[]): Markup {
  const [, arm = '', weight = ''] = /^(.*) \(weights in (.*)\)$/.exec(String(header[0])) ?? [];
  const limits = columnPoints(rows, limitsColumn);
  const all = header.flatMap((_, column) => (column === 0 ? [] : columnPoints(rows, column)));
  const domain = {
    x: domainOf(
      all.map(({ x }) => x),
      false,
    ),
    y: domainOf(
      all.map(({ y }) => y),
      false,
    ),
  };
  const axes = { x: `${arm} aft of datum`, y: `weight, ${weight}`, yFromZero: false, domain };
  return html`<div class="pictures">${packages.map((look) => {
    const own = packageCurve({ ...look, name: '' }, columnPoints(rows, header.indexOf(look.name)));
    return figure(
      look.name,
      picture(`CG limits and loadings with ${look.name}`, [limitCurve(limits), own], axes, size),
    );
  })}</div>`;
}

export function loadingSection({ block, packages }: ReportData): Section {
  const parts = blockParts(block('LOADING_CHECK'));
  const worst = partNamed(parts, 'Every loading the stations and tanks allow');
  const cures = partNamed(parts, 'What would bring every loading inside');
  const named = blockParts(block('PACKAGE_COMPARISON')).filter(({ title }) =>
    title.startsWith(namedLoadings),
  );
  return {
    id: 'loading',
    title: 'Does it stay inside its CG limits, however it is loaded?',
    body: html`<p>Grey: the CG limits. In the package’s colour: every loading that seats and tanks allow with it.</p>
${regions(block('LOADING_REGION'), packages)}
${named.map(({ title, rows }) => withTitle(title, packagesTable(rows, packages)))}
${withTitle(
  worst.title,
  recordsTable(worst.rows, ['Package', 'Fuel', 'Result', 'Limit', 'Least margin', 'at weight', 'Caused by']),
)}
${cures.rows.length > 2 ? withTitle(cures.title, recordsTable(cures.rows)) : nothing}`,
  };
}
