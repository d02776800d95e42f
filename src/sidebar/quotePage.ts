import type { PrintedQuote } from '../appsscript/printQuote.ts';
import { keyText } from '../assessment/issuedQuote.ts';
import type { QuoteSection } from '../assessment/quoteSection.ts';
import { cellText, pictured } from '../assessment/quoteText.ts';
import { byId, html } from './element.ts';
import { loadingFigure } from './loadingDrawing.ts';
import { printedData, readyToPrint } from './printedPage.ts';

const longestUnbroken = 20; // rows of a table that is kept on one page
const longestWord = 10; // characters of a cell that is kept on one line

/** A column of a table as it is printed: one of numbers where any of its cells is one. */
interface Column {
  readonly index: number;
  readonly label: string;
  readonly className: string | undefined;
}

/** The columns that hold anything. */
function columnsOf({ columns, rows }: QuoteSection): Column[] {
  return columns.flatMap((label, index) => {
    const cells = rows.map((row) => row.cells[index]);
    const isEmpty = cells.every((content) => content === '' || content === undefined);
    const className = cells.some((content) => typeof content === 'object') ? 'number' : undefined;
    return isEmpty ? [] : [{ index, label, className }];
  });
}

function sectionElement(section: QuoteSection): HTMLElement {
  const { title, rows, notes } = section;
  const columns = columnsOf(section);
  const hasHeads = columns.some(({ label }) => label !== '');
  const heads = columns.map(({ label, className }) => html('th', { scope: 'col', class: className }, label));
  const table = html(
    'table',
    {},
    ...(hasHeads ? [html('thead', {}, html('tr', {}, ...heads))] : []),
    html(
      'tbody',
      {},
      ...rows.map(({ cells, isTotal }) =>
        html(
          'tr',
          { class: isTotal === true ? 'total' : undefined },
          ...columns.map(({ index, className }) => {
            const content = cellText(cells[index] ?? '');
            const short = content.length <= longestWord ? 'short' : undefined;
            return html('td', { class: className ?? short }, content);
          }),
        ),
      ),
    ),
  );
  return html(
    'section',
    { class: rows.length > longestUnbroken ? 'long' : undefined },
    html('h2', {}, title),
    table,
    ...notes.map((note) => html('p', { class: 'note' }, note)),
  );
}

function lines(title: string, content: readonly string[]): HTMLElement {
  return html(
    'div',
    { class: 'party' },
    html('h2', {}, title),
    ...(content.length > 0 ? content : ['not given']).map((line) => html('div', {}, line)),
  );
}

function head({ quote, date, validUntil, ...key }: PrintedQuote): HTMLElement {
  return html(
    'header',
    {},
    html('div', { class: 'dealer' }, ...quote.dealer.map((line) => html('div', {}, line))),
    html(
      'div',
      { class: 'issue' },
      html('h1', {}, `Quote ${keyText(key)}`),
      html('div', {}, `Date of issue ${date}`),
      html('div', {}, `Valid until ${validUntil}`),
      ...(key.revision === 'A' ? [] : [html('div', {}, 'Replaces the revisions before it')]),
    ),
  );
}

function keyFigures({ quote }: PrintedQuote): HTMLElement {
  return html(
    'dl',
    { class: 'figures' },
    ...quote.keyFigures.map(({ label, value, unit }) =>
      html('div', {}, html('dt', {}, label), html('dd', {}, `${cellText(value)} ${unit}`)),
    ),
  );
}

/** Shows the quote that the script has put into the page. */
function show(): void {
  const issued = printedData<PrintedQuote>();
  const { quote, digest } = issued;
  byId('quote').append(
    head(issued),
    html(
      'div',
      { class: 'parties' },
      lines('For', quote.customer),
      lines('Prepared by', quote.preparedBy === '' ? [] : [quote.preparedBy]),
    ),
    html('h2', { class: 'subject' }, `${quote.airframe} with ${quote.packageName}`),
    keyFigures(issued),
    ...quote.sections.flatMap((section) =>
      section.title === pictured
        ? [loadingFigure(quote.picture), sectionElement(section)]
        : [sectionElement(section)],
    ),
    html(
      'footer',
      {},
      `Inputs of this quote, SHA-256: ${digest}. Software version ${quote.softwareVersion}. The copy and the inputs are kept in the seller’s workbook.`,
    ),
  );
  readyToPrint(`Quote ${keyText(issued)}`);
}

show();
