import { type IssuedQuote, keyText } from '../assessment/issuedQuote.ts';
import { cellsOf, issuedLines, type QuoteLine, type QuoteLineKind } from '../assessment/quoteBlock.ts';
import type { QuoteCell } from '../assessment/quoteSection.ts';
import type { Cell } from '../tables/cell.ts';
import { colours } from '../workbook/palette.ts';
import type { Book, Sheet } from './places.ts';
import { writeRows } from './rows.ts';

const firstWidth = 380; // px
const otherWidth = 120;
const bold: ReadonlySet<QuoteLineKind> = new Set<QuoteLineKind>(['title', 'heading', 'columns', 'total']);

/** As many decimals as the printed text has. */
function formatOf(cell: QuoteCell | undefined): string {
  if (typeof cell !== 'object') return 'General';
  const decimals = cell.text.split('.')[1]?.length ?? 0;
  return decimals === 0 ? '#,##0' : `#,##0.${'0'.repeat(decimals)}`;
}

/** A sheet left by an issue that did not come to its end: empty, or beginning with this very quote. */
function isLeftover(sheet: Sheet, key: string): boolean {
  return sheet.getLastRow() === 0 || String(sheet.getRange(1, 1).getValue()).startsWith(`Quote ${key}`);
}

function freshSheet(book: Book, key: string): Sheet {
  const existing = book.getSheetByName(key);
  if (existing !== null) {
    if (!isLeftover(existing, key)) {
      throw new Error(`A sheet named "${key}" is in the way: rename it and issue again.`);
    }
    book.deleteSheet(existing);
  }
  return book.insertSheet(key, book.getNumSheets());
}

function giveLooks(sheet: Sheet, lines: readonly QuoteLine[], width: number): void {
  const columns = Array.from({ length: width }, (_, index) => index);
  const range = sheet.getRange(1, 1, lines.length, width);
  range.setNumberFormats(lines.map(({ cells }) => columns.map((column) => formatOf(cells[column]))));
  range.setFontWeights(lines.map(({ kind }) => columns.map(() => (bold.has(kind) ? 'bold' : 'normal'))));
  range.setBackgrounds(
    lines.map(({ kind }) => columns.map(() => (kind === 'columns' ? colours.headerFill : null))),
  );
  range.setVerticalAlignment('top');
  sheet.getRange(1, 1).setFontSize(14);
  sheet.setColumnWidth(1, firstWidth);
  if (width > 1) sheet.setColumnWidths(2, width - 1, otherWidth);
  sheet.getRange(1, 1, lines.length, 1).setWrap(true);
  sheet.setHiddenGridlines(true);
}

/** The copy of an issued quote on a sheet of its own: values, never formulas. */
export function writeFrozenQuote(book: Book, issued: IssuedQuote): Sheet {
  const lines = issuedLines(issued);
  const cells = cellsOf(lines);
  const width = Math.max(...cells.map((line) => line.length));
  const sheet = freshSheet(book, keyText(issued));
  writeRows(
    sheet,
    1,
    1,
    cells.map((line) => Array.from({ length: width }, (_, column): Cell => line[column] ?? null)),
  );
  giveLooks(sheet, lines, width);
  sheet
    .protect()
    .setDescription(`Issued quote ${keyText(issued)}`)
    .setWarningOnly(true);
  return sheet;
}
