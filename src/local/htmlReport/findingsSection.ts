import { gravities, gravityLabels, gravityMeanings } from '../../assessment/finding.ts';
import { isFilled, type Row } from '../block.ts';
import { rowTexts } from '../report/layout.ts';
import { html, type Markup, nothing } from './markup.ts';
import { type ReportData, type Section, withTitle } from './section.ts';

/** One finding: package and subject, number against limit, words, where the limit is from. */
function finding(row: Row): Markup {
  const [, name, subject, value, limit, unit, words, source] = row;
  const [shown = '', bound = ''] = rowTexts([value ?? null, limit ?? null]);
  const figures = isFilled(value)
    ? html` <span class="figures">${shown}${isFilled(limit) ? ` against ${bound}` : ''} ${String(unit ?? '')}</span>`
    : nothing;
  return html`<li><strong>${String(name)}, ${String(subject)}</strong>${figures}: ${String(words)}${
    isFilled(source) ? html` <span class="source">${String(source)}</span>` : nothing
  }</li>`;
}

export function findingsSection({ block }: ReportData): Section {
  const [, ...rows] = block('INSTALLATION_FINDINGS');
  const groups = gravities.map((gravity) => {
    const own = rows.filter(([label]) => label === gravityLabels[gravity]);
    const title = `${gravityLabels[gravity]}: ${gravityMeanings[gravity]}`;
    const list = own.length > 0 ? html`<ul class="${gravity}">${own.map(finding)}</ul>` : html`<p>None.</p>`;
    return withTitle(title, list);
  });
  return { id: 'findings', title: 'What stands in the way, and what is not known?', body: html`${groups}` };
}
