import type { Cell } from '../tables/cell.ts';
import { digestOf } from './digest.ts';
import type { Book, Sheet } from './places.ts';
import { plainJson } from './plainJson.ts';
import { partsOf } from './quoteRecords.ts';
import { wrappedHeight, writeRows } from './rows.ts';

/** What a cell holds, as text keeps it: a formula is no text that looks like one. */
export type KeptCell =
  | string
  | number
  | boolean
  | null
  | { readonly formula: string }
  | { readonly date: number };

/** A cell that was written: where, and what it held before and after. */
export interface KeptEdit {
  readonly table: string;
  readonly row: number;
  readonly column: number;
  readonly was: KeptCell;
  readonly is: KeptCell;
}

const states = ['begun', 'taken in', 'put back'] as const;

/** begun: some of its cells may be written; put back: none of them is any more. */
export type RecordState = (typeof states)[number];

/** Something that was taken into the tables, with what stood there before. */
export interface AdoptionRecord {
  readonly row: number;
  readonly date: string;
  readonly what: string;
  readonly state: RecordState;
  readonly edits: readonly KeptEdit[];
}

const sheetName = 'Former values';
const heads = ['Date', 'Taken in', 'State', 'Before → after', 'SHA-256 of the record', 'Record'];
const stateColumn = 3;
const wordsColumn = 4;
const firstPart = heads.length;
const tallest = 400; // px
const widths = [90, 260, 80, 560, 90, 90];

/** @throws Error when a record is not what was written */
export function readAdoptions(book: Book): AdoptionRecord[] {
  const rows = book.getSheetByName(sheetName)?.getDataRange().getValues() ?? [];
  return rows.flatMap((cells, index): AdoptionRecord[] => {
    const [date, what, state] = cells;
    const digest = cells[firstPart - 2];
    if (index === 0 || cells.every((cell) => cell === '')) return [];
    const text = cells.slice(firstPart - 1).join('');
    if (digestOf(text) !== digest || !states.includes(state))
      throw new Error(
        `Row ${index + 1} of the sheet "${sheetName}" was changed: what it keeps can't be put back by itself any more. Note what you need of it and delete that row.`,
      );
    return [
      {
        row: index + 1,
        date: String(date),
        what: String(what),
        state: state as RecordState,
        edits: JSON.parse(text) as KeptEdit[],
      },
    ];
  });
}

function recordSheet(book: Book): Sheet {
  const sheet = book.getSheetByName(sheetName) ?? book.insertSheet(sheetName, book.getNumSheets());
  if (sheet.getLastRow() === 0) {
    widths.forEach((width, index) => {
      sheet.setColumnWidth(index + 1, width);
    });
    sheet.setFrozenRows(1);
    sheet.protect().setDescription('What stood in the tables before').setWarningOnly(true);
    writeRows(sheet, 1, 1, [heads]).setFontWeight('bold');
  }
  return sheet;
}

/**
 * Keeps what is about to be written, in one call, before any of it is.
 * @returns its row
 * @throws Error when it does not read back as it was written
 */
export function keepAdoption(
  book: Book,
  date: string,
  what: string,
  words: string,
  edits: readonly KeptEdit[],
): number {
  const sheet = recordSheet(book);
  const row = sheet.getLastRow() + 1;
  const text = plainJson(edits);
  const state: RecordState = 'begun';
  const cells: Cell[] = [date, what, state, words, digestOf(text), ...partsOf(text)];
  const [written = []] = writeRows(sheet, row, 1, [cells]).getValues();
  if (written.slice(firstPart - 1).join('') !== text)
    throw new Error('What stands in the tables could not be kept: nothing was written into them.');
  return row;
}

/** Gives a record's row the height of its words; the record itself is wrapped, so that it stays in its narrow cells. */
export function dressAdoption(book: Book, row: number, words: string): void {
  const width = widths[wordsColumn - 1] as number;
  const height = words.split('\n').reduce((sum, line) => sum + wrappedHeight(line, width), 0);
  const sheet = book.getSheetByName(sheetName);
  sheet?.getRange(row, 1, 1, firstPart).setWrap(true).setVerticalAlignment('top');
  sheet?.setRowHeight(row, Math.min(height, tallest));
}

export function markAdoption(book: Book, row: number, state: RecordState): void {
  book.getSheetByName(sheetName)?.getRange(row, stateColumn).setValue(state);
}
