import type { Cell } from '../../tables/cell.ts';
import { type Block, isFilled, type Row } from '../block.ts';
import { rowTexts, signed } from '../report/layout.ts';
import { html, type Markup, nothing } from './markup.ts';

/** As many columns of values as fit across a printed page beside their label. */
const valuesAcross = 6;
const shortText = 30; // characters that stay in one line

/** How a package is shown in table heads and pictures. */
export interface PackageLook {
  readonly name: string;
  readonly colour: string;
  readonly dash: readonly number[] | undefined;
}

const scrolled = (table: Markup) => html`<div class="wide">${table}</div>`;

const isNumber = (cell: Cell) =>
  typeof cell === 'number' || (typeof cell === 'string' && /^[≥>−+]? ?[\d,.]+$/.test(cell));

/** A word that stands out where a limit is exceeded. */
const verdict = (text: string) =>
  /^(FAIL|NO|TOO HOT)\b/.test(text) ? html`<strong class="fail">${text}</strong>` : html`${text}`;

/** A package's head: its name under a stroke in its colour and dash. */
function packageHead({ name, colour, dash }: PackageLook): Markup {
  return html`<th scope="col"><svg class="stroke" viewBox="0 0 60 4" aria-hidden="true"><line x1="0" y1="2" x2="60" y2="2" stroke="${colour}" stroke-width="3" stroke-dasharray="${(dash ?? []).join(' ')}"/></svg>${name}</th>`;
}

const packageRow = (row: Row, chosen: readonly number[]): Markup => {
  const [label = '', unit] = row;
  const isDifference = String(label).startsWith('  against ');
  const texts = rowTexts(row);
  const shown = (index: number) => (isDifference ? signed(texts[index] ?? '') : (texts[index] ?? ''));
  if (!row.slice(1).some(isFilled)) {
    return html`<tr><th scope="rowgroup" colspan="${chosen.length + 2}">${String(label)}</th></tr>`;
  }
  const kind = isDifference ? 'difference' : String(label).startsWith('  ') ? 'part' : '';
  return html`<tr class="${kind}"><th scope="row">${String(label).trim()}</th><td class="unit">${String(unit ?? '')}</td>${chosen.map(
    (index) => html`<td class="value">${verdict(shown(index))}</td>`,
  )}</tr>`;
};

/** Rows of label, unit and one value a package, as many packages at a time as fit across a page. */
export function packagesTable(rows: Block, packages: readonly PackageLook[], corner = ''): Markup {
  const groups = Array.from({ length: Math.ceil(packages.length / valuesAcross) }, (_, group) =>
    packages.map((_, index) => index).slice(group * valuesAcross, (group + 1) * valuesAcross),
  );
  return html`${groups.map((group) =>
    scrolled(html`<table class="packages">
<thead><tr><th scope="col">${corner}</th><th scope="col" class="unit">unit</th>${group.map((index) => packageHead(packages[index] as PackageLook))}</tr></thead>
<tbody>
${rows.map((row) =>
  packageRow(
    row,
    group.map((index) => index + 2),
  ),
)}
</tbody>
</table>`),
  )}`;
}

/** Columns as texts, each with the same decimals all the way down. */
function columnTexts(rows: Block, columns: number): string[][] {
  return Array.from({ length: columns }, (_, column) => rowTexts(rows.map((row) => row[column] ?? null)));
}

/**
 * Records: a row of heads, a row of units, then one a row.
 * @param wanted heads of the columns to show, all of them when left out
 * @throws Error when one of them is not there
 */
export function recordsTable(block: Block, wanted?: readonly string[]): Markup {
  const [heads = [], units = [], ...rows] = block;
  const names = heads.map((cell) => String(cell ?? ''));
  const missing = wanted?.find((name) => !names.includes(name));
  if (missing !== undefined) throw new Error(`no column "${missing}" among ${names.join(', ')}`);
  const texts = columnTexts(rows, names.length);
  const isUsed = (column: number) => names[column] !== '' && rows.some((row) => isFilled(row[column]));
  const shown = names.flatMap((name, column) =>
    isUsed(column) && (wanted === undefined || wanted.includes(name)) ? [column] : [],
  );
  const shownClass = (column: number): Markup => {
    const isNumeric = rows.every((row) => !isFilled(row[column]) || isNumber(row[column]));
    const isShort = (texts[column] ?? []).every((text) => text.length <= shortText);
    return html`class="${isNumeric ? 'number' : isShort ? 'short' : ''}"`;
  };
  return scrolled(html`<table class="records">
<thead><tr>${shown.map((column) => {
    const unit = isFilled(units[column])
      ? html` <span class="unit">${String(units[column])}</span>`
      : nothing;
    return html`<th scope="col" ${shownClass(column)}>${names[column] as string}${unit}</th>`;
  })}</tr></thead>
<tbody>
${rows.map(
  (_, index) =>
    html`<tr>${shown.map((column) => html`<td ${shownClass(column)}>${verdict(texts[column]?.[index] ?? '')}</td>`)}</tr>`,
)}
</tbody>
</table>`);
}

/** Rows of a name and what is said of it. */
export function sayings(rows: Block): Markup {
  return html`<dl>${rows.map(([name, ...words]) => {
    const said = words.filter(isFilled).map(String);
    return said.length === 0
      ? html`<dd>${String(name)}</dd>`
      : html`<dt>${String(name)}</dt><dd>${said.join(': ')}</dd>`;
  })}</dl>`;
}
