import { type Cell, nameKey } from '../tables/cell.ts';
import type { Grids, Layout } from '../workbook/layout.ts';
import { checkWords } from './checkWords.ts';
import { type DataCheck, dataCheck, showFault } from './dataCheck.ts';
import { isConfirmed, listed, tell } from './dialogs.ts';
import { withDocumentLock } from './documentLock.ts';
import { readLayout, readSamples } from './files.ts';
import type { KeptItem } from './kept.ts';
import { layOut } from './layOut.ts';

const mostLines = 12; // of a list that a person reads in a dialog

/** Lays out while nobody else does, and says what could not stay in its place. */
function layOutAndReport(layout: Layout, given: Grids): KeptItem[] {
  const kept = withDocumentLock(() => layOut(layout, given));
  SpreadsheetApp.getActiveSpreadsheet().toast('The workbook is ready.', 'Laid out');
  if (kept.length > 0) {
    tell(
      'Kept',
      listed(
        kept.map(({ from, why }) => `${from}: ${why}. It is on the sheet "Kept".`),
        mostLines,
      ),
    );
  }
  return kept;
}

/** New contents for every table: those not given become empty. */
function replaceTables(given: Grids, question: string): KeptItem[] {
  const layout = readLayout();
  if (!isConfirmed('Replace all tables', question)) return [];
  const tables = layout.sheets.flatMap((sheet) => sheet.tables);
  const nothing: readonly Cell[][] = [];
  return layOutAndReport(
    layout,
    Object.fromEntries(tables.map(({ table }) => [table, given[table] ?? nothing])),
  );
}

const keepsInputs = 'What the tables hold now is kept on the sheet "Kept".';

function loadSample(): KeptItem[] {
  const samples = readSamples();
  const names = Object.keys(samples);
  const ui = SpreadsheetApp.getUi();
  const prompt = `Which invented aircraft? Type ${names.join(', ')}.`;
  const answer = ui.prompt('Load a sample', prompt, ui.ButtonSet.OK_CANCEL);
  if (answer.getSelectedButton() !== ui.Button.OK) return [];
  const name = names.find((each) => nameKey(each) === nameKey(answer.getResponseText()));
  if (name === undefined) {
    tell('Load a sample', `There is no sample "${answer.getResponseText()}". There are ${names.join(', ')}.`);
    return [];
  }
  return replaceTables(
    samples[name] as Grids,
    `The tables will hold the invented aircraft ${name}. ${keepsInputs}`,
  );
}

const startBlank = () => replaceTables({}, `The tables will be empty. ${keepsInputs}`);

/** Says what is wrong in the tables, and goes to the first of it. */
function checkData(): DataCheck {
  const layout = readLayout();
  const check = dataCheck(layout);
  const [first] = check.faults;
  if (first) showFault(layout, first);
  const { title, lines, notes } = checkWords(check);
  const parts = [
    listed(lines, mostLines),
    ...(notes.length > 0 ? [`To know:\n${listed(notes, mostLines)}`] : []),
  ];
  tell(title, parts.join('\n\n'));
  return check;
}

/** What the menu offers for the workbook, and what the local host calls; the panel reaches no name that ends in `_`. */
export const workbookActions = {
  layOutFromMenu: () => layOutAndReport(readLayout(), {}),
  layOutTables_: (grids: Grids) => layOut(readLayout(), grids),
  loadSample,
  startBlank,
  checkData,
} as const;
