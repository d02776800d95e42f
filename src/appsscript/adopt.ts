import type { CellEdit } from '../assessment/adoptEdits.ts';
import { type Adoption, quoteAdoption, resultsAdoption, weighingAdoption } from '../assessment/adoptions.ts';
import { numberOfName, quoteName } from '../assessment/issuedQuote.ts';
import { type Cell, isDate, plain } from '../tables/cell.ts';
import {
  type AdoptionRecord,
  dressAdoption,
  type KeptCell,
  type KeptEdit,
  keepAdoption,
  markAdoption,
  readAdoptions,
} from './adoptionRecords.ts';
import { byTable, keptCells, reachDown, sameCell, tableRange, writeTableCells } from './adoptWrite.ts';
import { readAllTables } from './allTables.ts';
import { isConfirmed, listed, tell } from './dialogs.ts';
import { withDocumentLock } from './documentLock.ts';
import { explained } from './explained.ts';
import type { Book } from './places.ts';
import { lastRevisions } from './quoteDrifts.ts';
import { readRecord, readRecords } from './quoteRecords.ts';
import { readRegister } from './quoteRegister.ts';
import { today } from './today.ts';

const mostLines = 24; // of a dialog

const wordsOf = (edits: readonly CellEdit[]) => edits.flatMap(({ words }) => words ?? []);

const told = (adoption: Adoption) =>
  [adoption.words.join('\n'), `What will be written:\n${listed(wordsOf(adoption.edits), mostLines)}`].join(
    '\n\n',
  );

/** Where every cell of a record stands now: as it was, as it was written, or as somebody has changed it since. */
function standing(book: Book, edits: readonly KeptEdit[]): ('was' | 'is' | 'else')[] {
  const tables = new Map(
    [...byTable(edits).keys()].map((table) => [table, keptCells(tableRange(book, table))]),
  );
  return edits.map(({ table, row, column, was, is }) => {
    const now = tables.get(table)?.[row]?.[column];
    return sameCell(now, is) ? 'is' : sameCell(now, was) ? 'was' : 'else';
  });
}

/** Writes what stood there before over the cells that hold what was taken in. */
function putBack(book: Book, { edits, row }: AdoptionRecord): void {
  const now = standing(book, edits);
  const own = edits.filter((_, index) => now[index] === 'is');
  for (const [table, cells] of [...byTable(own)].reverse())
    writeTableCells(book, table, cells, (index) => (cells[index] as KeptEdit).was);
  markAdoption(book, row, 'put back');
}

/** A run that was interrupted has perhaps written some tables and not others: all of it is put back first. */
function repair(book: Book): void {
  for (const record of readAdoptions(book)) if (record.state === 'begun') putBack(book, record);
}

const keptOf = (cell: Cell): KeptCell =>
  cell === undefined || cell === '' ? null : isDate(cell) ? { date: cell.getTime() } : cell;

/** Keeps what stands there, writes, marks it as taken in: in this order, so that it can be put back from any point on. */
function write(book: Book, { what, edits }: Adoption): void {
  const tables = byTable(edits);
  for (const [table, cells] of tables) reachDown(book, table, Math.max(...cells.map(({ row }) => row)));
  const kept = [...tables].flatMap(([table, cells]): KeptEdit[] => {
    const now = keptCells(tableRange(book, table));
    return cells.map(({ row, column, is }) => ({
      table,
      row,
      column,
      was: now[row]?.[column] ?? null,
      is: keptOf(is),
    }));
  });
  const words = wordsOf(edits).join('\n');
  const row = keepAdoption(book, today(book), what, words, kept);
  dressAdoption(book, row, words);
  for (const [table, cells] of byTable(kept))
    writeTableCells(book, table, cells, (index) => (cells[index] as KeptEdit).is);
  markAdoption(book, row, 'taken in');
}

/**
 * Asks, and takes something into the tables. The document's lock is held while it reads and while it writes, and not while
 * a person reads the question; what was asked and what is written are the same, or nothing is written.
 */
function takeIn(title: string, adoption: (book: Book) => Adoption): void {
  const book = SpreadsheetApp.getActiveSpreadsheet();
  try {
    const asked = withDocumentLock(() => {
      repair(book);
      return adoption(book);
    });
    if (wordsOf(asked.edits).length === 0) {
      tell(title, `${asked.what}: the tables hold it already.`);
      return;
    }
    if (!isConfirmed(`${title}: ${asked.what}`, told(asked))) return;
    withDocumentLock(() => {
      repair(book);
      const now = adoption(book);
      if (JSON.stringify(now.edits) !== JSON.stringify(asked.edits))
        throw new Error('The tables were changed while the question stood: nothing was written. Look again.');
      write(book, now);
    });
  } catch (error) {
    tell(title, explained(error));
    return;
  }
  book.toast('Taken in. "Put back what stood before" undoes it.', title);
}

const adoptWeighing = () => takeIn('Take weighing in', (book) => weighingAdoption(readAllTables(book)));

const adoptResults = () => takeIn('Take measured results in', (book) => resultsAdoption(readAllTables(book)));

/** The number of a quote as a person types it: 7, 0007, Q-0007. */
function typedNumber(text: string): number | undefined {
  const digits = plain(text).replace(/^q-?/i, '');
  return /^\d+$/.test(digits) ? numberOfName(quoteName(Number(digits))) : undefined;
}

/** Asks for a quote of the register, and takes what its last revision promised into the as-quoted table. */
function takeQuoteIn(): void {
  const title = 'Compare weighing with quote';
  const book = SpreadsheetApp.getActiveSpreadsheet();
  const ui = SpreadsheetApp.getUi();
  const quotes = lastRevisions(readRegister(book));
  if (quotes.length === 0) {
    tell(title, 'No quote was issued from this workbook: fill the as quoted table by hand.');
    return;
  }
  const known = quotes.map(
    ({ number, customer, packageName }) =>
      `${quoteName(number)}, ${packageName}, ${customer || 'no customer'}`,
  );
  const answer = ui.prompt(
    title,
    `Which? Type its number.\n${listed(known, mostLines)}`,
    ui.ButtonSet.OK_CANCEL,
  );
  if (answer.getSelectedButton() !== ui.Button.OK) return;
  const number = typedNumber(answer.getResponseText());
  const key = quotes.find((quote) => quote.number === number);
  if (key === undefined) {
    tell(title, `There is no quote "${answer.getResponseText()}" in the register.`);
    return;
  }
  takeIn(title, (own) => quoteAdoption(readAllTables(own), readRecord(readRecords(own), key)));
}

/** Puts back what stood in the tables before the last thing that was taken in. */
function putBackAdopted(): void {
  const title = 'Put back what stood before';
  const book = SpreadsheetApp.getActiveSpreadsheet();
  try {
    const last = withDocumentLock(() => {
      repair(book);
      return readAdoptions(book)
        .filter(({ state }) => state === 'taken in')
        .pop();
    });
    if (last === undefined) {
      tell(title, 'Nothing is taken in that could be put back.');
      return;
    }
    const text = `${last.what}, taken in on ${last.date}: ${last.edits.length} cells become what they were. The sheet "Former values" lists them.`;
    if (!isConfirmed(title, text)) return;
    withDocumentLock(() => {
      const now = standing(book, last.edits);
      const changed = last.edits.filter((_, index) => now[index] === 'else');
      const [first] = changed;
      if (first !== undefined)
        throw new Error(
          `${changed.length === 1 ? '1 cell was' : `${changed.length} cells were`} changed since, the first in row ${first.row + 1} of the ${first.table} table. Nothing was put back: do it by hand from the sheet "Former values".`,
        );
      markAdoption(book, last.row, 'begun');
      putBack(book, last);
    });
  } catch (error) {
    tell(title, explained(error));
    return;
  }
  book.toast('The tables are as they were.', title);
}

/** What the menu calls by name: what was measured and promised, into the tables and out again. */
export const adoptActions = { adoptWeighing, adoptResults, takeQuoteIn, putBackAdopted } as const;
