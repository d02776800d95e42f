import type { Issue } from '../appsscript/issueQuote.ts';
import type { PanelQuote, PanelState } from '../appsscript/panel.ts';
import type { NamedPlace } from '../assessment/findingPlace.ts';
import { cellText } from '../assessment/quoteText.ts';
import { messageOf } from '../functions/messages.ts';
import type { Inputs } from '../tables/inputs.ts';
import { driftElement } from './driftElement.ts';
import { byId, html } from './element.ts';
import { followSheet } from './followSheet.ts';
import { type PanelFinding, type PanelModel, type PanelOption, panelModel, withInput } from './panelModel.ts';
import { ask } from './server.ts';

let inputs: Inputs = {};
let quotes: readonly PanelQuote[] = [];
/** Asked of the script one after the other, so that the last click is the last write. */
let queue: Promise<unknown> = Promise.resolve();
let waiting = 0;
let writes = 0;

function say(text: string, isError = false): void {
  const status = byId('status');
  status.textContent = text;
  status.className = isError ? 'error' : '';
}

/** Puts new content into a part of the page; the control that had the focus has it again. */
function replace(id: string, ...content: readonly (Node | string)[]): void {
  const focused = document.activeElement?.id ?? '';
  byId(id).replaceChildren(...content);
  if (focused !== '') document.getElementById(focused)?.focus();
}

function setBusy(isBusy: boolean): void {
  for (const button of document.querySelectorAll<HTMLButtonElement>('button[data-issues]')) {
    button.disabled = isBusy;
  }
}

/** Writes a choice: shown at once, then as the workbook has it when the last of them is written. */
function write(
  table: 'equipment' | 'tanks' | 'quote',
  row: string,
  column: string,
  value: string | boolean,
  call: () => Promise<PanelState>,
): void {
  inputs = withInput(inputs, table, row, column, value);
  show();
  waiting++;
  writes++;
  setBusy(true);
  say('Writing…');
  queue = queue
    .then(call)
    .then((state) => {
      waiting--;
      if (waiting === 0) take(state, 'Written.');
    })
    .catch(async (error) => {
      waiting--;
      if (waiting === 0) await refresh();
      say(messageOf(error), true);
    })
    .then(() => setBusy(waiting > 0));
}

function take(state: PanelState, message: string): void {
  inputs = state.inputs;
  quotes = state.quotes;
  show();
  say(message);
}

async function refresh(): Promise<void> {
  try {
    take(await ask('panelState'), '');
  } catch (error) {
    say(messageOf(error), true);
  }
}

/** Takes in what was edited in the sheet; what is chosen meanwhile in the panel goes before it. */
async function follow(): Promise<void> {
  if (waiting > 0) return;
  const before = writes;
  try {
    const state = await ask('panelState');
    const isNew = JSON.stringify(state) !== JSON.stringify({ inputs, quotes });
    if (isNew && writes === before) take(state, 'Read again: the workbook was changed.');
  } catch {} // the next one tries again; "Read the workbook again" says what is wrong
}

function goTo(place: NamedPlace): void {
  ask('showInput', place).catch((error) => say(messageOf(error), true));
}

function findingList(findings: readonly PanelFinding[]): HTMLElement {
  return html(
    'ul',
    {},
    ...findings.map(({ text, place }) => {
      const item = html('li', {}, text);
      if (place === undefined) return item;
      const where = place.row === undefined ? place.table : `${place.table}, ${place.row}`;
      const link = html(
        'button',
        { type: 'button', class: 'link', 'aria-label': `Go to ${where}` },
        'Go to cell',
      );
      link.addEventListener('click', () => goTo(place));
      item.append(' ', link);
      return item;
    }),
  );
}

function packageChoices({ packages, chosen }: PanelModel): HTMLElement[] {
  return packages.map(({ name, price, payload, verdict }, index) => {
    const id = `package-${index}`;
    const input = html('input', { type: 'radio', name: 'package', id, checked: name === chosen });
    input.addEventListener('change', () =>
      write('quote', 'package', 'value', name, () => ask('setQuotedPackage', name)),
    );
    return html(
      'div',
      { class: 'choice' },
      input,
      html(
        'label',
        { for: id },
        html('strong', {}, name),
        ...[price, payload, verdict].map((line) => html('span', {}, line)),
      ),
    );
  });
}

function optionChoice({ table, name, isFitted, isOffered, text }: PanelOption, index: number): HTMLElement {
  const id = `option-${index}`;
  // What can't be had can still be taken out
  const disabled = !isOffered && !isFitted;
  const input = html('input', { type: 'checkbox', id, checked: isFitted, disabled });
  input.addEventListener('change', () => {
    const { checked } = input;
    write(table, name, 'fitted', checked, () => ask('setOption', table, name, checked));
  });
  return html(
    'div',
    { class: disabled ? 'choice off' : 'choice' },
    input,
    html('label', { for: id }, html('strong', {}, name), html('span', {}, text)),
  );
}

function figures({ keyFigures, chosen }: PanelModel): HTMLElement {
  return html(
    'dl',
    {},
    ...keyFigures.flatMap(({ label, value, unit }) => [
      html('dt', {}, label),
      html('dd', {}, `${cellText(value)} ${unit}`),
    ]),
    ...(keyFigures.length === 0
      ? [
          html(
            'dt',
            {},
            chosen === undefined ? 'Choose a package to see its quote.' : 'No figures: see below.',
          ),
        ]
      : []),
  );
}

function show(): void {
  const model = panelModel(inputs);
  const part = (id: string, isShown: boolean) => {
    byId(id).hidden = !isShown;
  };
  replace('packages', ...packageChoices(model));
  replace('options', ...model.options.map(optionChoice));
  const text = byId('figures').textContent;
  const next = figures(model);
  if (text !== next.textContent) replace('figures', next);
  replace('faults', findingList(model.faults));
  replace('findings', model.findings.length > 0 ? findingList(model.findings) : 'No stop and no check.');
  replace('notes', findingList(model.notes));
  byId('notes-count').textContent = String(model.notes.length);
  part('faults-part', model.faults.length > 0);
  part('options-part', model.options.length > 0);
  part('packages-part', model.packages.length > 0);
  part('findings-part', model.packages.length > 0);
  part('quotes-part', quotes.length > 0);
  const selected = chosenQuote()?.number;
  replace(
    'quotes',
    ...quotes.map(({ number, text: label }) =>
      html('option', { value: String(number), selected: number === selected }, label),
    ),
  );
}

function chosenQuote(): PanelQuote | undefined {
  const value = (byId('quotes') as HTMLSelectElement).value;
  return quotes.find(({ number }) => String(number) === value) ?? quotes[quotes.length - 1];
}

async function issue(revisionOf: number | null): Promise<void> {
  setBusy(true);
  say('Issuing…');
  try {
    await queue;
    const issued: Issue = await ask('issueQuote', revisionOf);
    replace('drift');
    await refresh();
    (byId('quotes') as HTMLSelectElement).value = String(issued.number);
    say(`Quote ${issued.name} is issued, valid until ${issued.validUntil}.`);
    await ask('printQuote', issued.number, issued.revision);
  } catch (error) {
    say(messageOf(error), true);
  } finally {
    setBusy(false);
  }
}

/** Runs something on the quote that is chosen in the list. */
function onQuote(id: string, action: (quote: PanelQuote) => Promise<unknown>): void {
  byId(id).addEventListener('click', () => {
    const quote = chosenQuote();
    if (quote !== undefined) action(quote).catch((error) => say(messageOf(error), true));
  });
}

byId('issue').addEventListener('click', () => issue(null));
byId('refresh').addEventListener('click', () => refresh());
byId('quotes').addEventListener('change', () => replace('drift'));
onQuote('print', ({ number, revision }) => ask('printQuote', number, revision));
onQuote('changes', async ({ number }) => replace('drift', driftElement(await ask('quoteChanges', number))));
onQuote('reissue', ({ number }) => issue(number));
onQuote('compare', () => ask('compareIssuedQuotes'));
refresh();
followSheet(follow);
