import { type IssuedQuote, keyText, type QuoteKey } from '../assessment/issuedQuote.ts';
import type { Cell } from '../tables/cell.ts';
import { digestOf } from './digest.ts';
import type { Book, Sheet } from './places.ts';
import { plainJson } from './plainJson.ts';
import { writeRows } from './rows.ts';

/** Where a record stands in the hidden sheet. */
export interface RecordHead extends QuoteKey {
  readonly row: number;
  /** false from when the record is written until its quote is in the register */
  readonly isIssued: boolean;
}

/** The hidden sheet as it was read: every question to a sheet makes Google finish what was written before. */
export interface Records {
  readonly sheet: Sheet | null;
  readonly heads: readonly RecordHead[];
  readonly lastRow: number;
  readonly lastColumn: number;
}

const sheetName = 'Quote records';
const headings = ['Number', 'Revision', 'Issued', 'SHA-256 of the record', 'Record'];
const issuedColumn = 3;
const firstPart = headings.length; // column of the record's first part
const longestPart = 40_000; // characters; a cell of Google Sheets takes 50,000

/** Parts that fit a cell each. */
export function partsOf(text: string): string[] {
  const count = Math.ceil(text.length / longestPart);
  return Array.from({ length: count }, (_, index) =>
    text.slice(index * longestPart, (index + 1) * longestPart),
  );
}

export function readRecords(book: Book): Records {
  const sheet = book.getSheetByName(sheetName);
  const rows = sheet?.getDataRange().getValues() ?? [];
  const heads = rows.flatMap(([number, revision, isIssued], index): RecordHead[] =>
    typeof number === 'number' && typeof revision === 'string'
      ? [{ number, revision, isIssued: isIssued === true, row: index + 1 }]
      : [],
  );
  return { sheet, heads, lastRow: rows.length, lastColumn: rows[0]?.length ?? 0 };
}

/** @throws Error when the record is gone, or is not what was written */
export function readRecord({ sheet, heads, lastColumn }: Records, key: QuoteKey): IssuedQuote {
  const head = heads.find(({ number, revision }) => number === key.number && revision === key.revision);
  if (head === undefined || sheet === null) {
    const others = heads.filter(({ number }) => number === key.number).map(keyText);
    throw new Error(
      others.length > 0
        ? `There was no ${keyText(key).trim()}, there was ${others.join(', ')}: its row of the register was changed by hand. Delete it: the next issue writes it anew from its record.`
        : `The record of ${keyText(key)} is gone from the hidden sheet "${sheetName}".`,
    );
  }
  const [cells = []] = sheet.getRange(head.row, 1, 1, Math.max(firstPart, lastColumn)).getValues();
  const text = cells.slice(firstPart - 1).join('');
  if (digestOf(text) !== cells[firstPart - 2]) {
    throw new Error(`The record of ${keyText(key)} was changed since it was issued: it can't be relied on.`);
  }
  return JSON.parse(text) as IssuedQuote;
}

/** The sheet of records, made and hidden where there is none, before there is any copy of a quote. */
export function withSheet(book: Book, records: Records): Records & { readonly sheet: Sheet } {
  const sheet = records.sheet ?? book.insertSheet(sheetName, book.getNumSheets());
  if (records.sheet === null || records.lastRow < 2) {
    writeRows(sheet, 1, 1, [headings]);
    sheet.hideSheet();
    sheet.protect().setDescription('Records of issued quotes').setWarningOnly(true);
  }
  return { ...records, sheet, lastRow: Math.max(1, records.lastRow) };
}

/**
 * Writes a record in one call, over that of an issue of the same number that did not come to its end.
 * @returns its row
 * @throws Error when it does not read back as it was written
 */
export function writeRecord(
  issued: IssuedQuote,
  { sheet, heads, lastRow, lastColumn }: Records & { readonly sheet: Sheet },
): number {
  const { number, revision } = issued;
  const leftover = heads.find((head) => head.number === number && head.revision === revision);
  const row = leftover?.row ?? lastRow + 1;
  const text = plainJson(issued);
  const cells: Cell[] = [number, revision, false, digestOf(text), ...partsOf(text)];
  const surplus = Math.max(0, lastColumn - cells.length); // parts of a longer leftover
  const range = writeRows(sheet, row, 1, [[...cells, ...Array.from({ length: surplus }, () => null)]]);
  const [written = []] = range.getValues();
  if (written.slice(firstPart - 1).join('') !== text) {
    throw new Error(
      `The record of ${keyText(issued)} does not read back as it was written: nothing was issued.`,
    );
  }
  return row;
}

export function markIssued(sheet: Sheet, row: number): void {
  sheet.getRange(row, issuedColumn).setValue(true);
}
