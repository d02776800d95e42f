import type { PrintedCard, PrintedCards, PrintedFigure } from '../assessment/printedCards.ts';
import { byId, html } from './element.ts';
import { printedData, readyToPrint } from './printedPage.ts';

const [fewRuns, manyRuns] = [3, 6]; // empty rows for measurements; the wide tables are of what is flown at several settings
const wideTable = 3; // columns
const remarks = 2; // empty lines below

const said = (name: string, text: string) => html('p', {}, html('strong', {}, name), ` ${text}`);

function figureRow({ label, predicted, band, limit, unit, words }: PrintedFigure): HTMLElement {
  return html(
    'tr',
    {},
    html('td', {}, words === '' ? label : `${label} (${words})`),
    html('td', { class: 'number' }, predicted),
    html('td', { class: 'number' }, band),
    html('td', { class: 'number' }, limit),
    html('td', { class: 'short' }, unit),
    html('td', { class: 'box', 'aria-label': 'measured' }),
  );
}

const predictions = (figures: readonly PrintedFigure[]) =>
  html(
    'table',
    {},
    html(
      'thead',
      {},
      html(
        'tr',
        {},
        ...['', 'Predicted', 'Band', 'Limit', 'Unit', 'Measured'].map((head, index) =>
          html('th', { scope: 'col', class: index > 0 && index < 4 ? 'number' : undefined }, head),
        ),
      ),
    ),
    html('tbody', {}, ...figures.map(figureRow)),
  );

/** A table to fill in by hand, with the columns of the test results table. */
const measurements = (columns: readonly string[]) =>
  html(
    'table',
    { class: 'write' },
    html('thead', {}, html('tr', {}, ...columns.map((column) => html('th', { scope: 'col' }, column)))),
    html(
      'tbody',
      {},
      ...Array.from({ length: columns.length < wideTable ? fewRuns : manyRuns }, () =>
        html('tr', {}, ...columns.map(() => html('td', {}))),
      ),
    ),
  );

const cardElement = ({ title, setUp, figures, columns, record, reduce, caution }: PrintedCard) =>
  html(
    'article',
    { class: 'card' },
    html('h3', {}, title),
    said('Set up', setUp),
    html('p', { class: 'caution' }, caution),
    ...(figures.length > 0 ? [predictions(figures)] : []),
    ...(columns.length > 0 ? [measurements(columns)] : []),
    said('Record', record),
    html('div', { class: 'lines' }, ...Array.from({ length: remarks }, () => html('div', {}))),
    said('Reduce', reduce),
  );

/** Written by hand at the head of every group: it may be taken to the aircraft alone. */
const blanks = () =>
  html(
    'div',
    { class: 'blanks' },
    ...['Registration', 'Pilot', 'Date, takeoff time', 'Wind, QNH, OAT'].map((label) =>
      html('div', {}, label),
    ),
  );

/** Shows the cards that the script has put into the page. */
function show(): void {
  const { title, words, groups } = printedData<PrintedCards>();
  byId('cards').append(
    html('header', {}, html('h1', {}, `Flight-test cards: ${title}`)),
    ...words.map((line) => html('p', { class: 'note' }, line)),
    ...groups.map((group) =>
      html(
        'section',
        { class: 'group' },
        html('h2', {}, group.title),
        blanks(),
        ...group.cards.map(cardElement),
      ),
    ),
  );
  readyToPrint('Flight-test cards');
}

show();
