import { type IssuedQuote, keyText } from '../assessment/issuedQuote.ts';
import { cellsOf, issuedLines, type QuoteLine, type QuoteLineKind } from '../assessment/quoteBlock.ts';
import type { QuoteCell } from '../assessment/quoteSection.ts';
import type { Cell } from '../tables/cell.ts';
import { colours } from '../workbook/palette.ts';
import type { Book, Sheet } from './places.ts';
import { wrappedHeight, writeRows } from './rows.ts';

const firstWidth = 380; // px
const otherWidth = 150;
/** Lines of a table keep to their columns; what is said above and below them runs on over the empty cells beside it. */
const inTables: ReadonlySet<QuoteLineKind> = new Set<QuoteLineKind>(['columns', 'row', 'total']);
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

function freshSheet(book: Book, key: string, mayBeLeftover: boolean): Sheet {
  const existing = book.getSheetByName(key);
  if (existing !== null) {
    if (!mayBeLeftover || !isLeftover(existing, key)) {
      throw new Error(`A sheet named "${key}" is in the way: rename it and issue again.`);
    }
    book.deleteSheet(existing);
  }
  return book.insertSheet(key, book.getNumSheets());
}

/** Heads stand over their numbers: the columns in which the lines of their table have any. */
function numberColumns(lines: readonly QuoteLine[], head: number): Set<number> {
  const after = lines.slice(head + 1);
  const end = after.findIndex(({ kind }) => kind === 'gap');
  const rows = end < 0 ? after : after.slice(0, end);
  return new Set(
    rows.flatMap(({ cells }) => cells.flatMap((cell, column) => (typeof cell === 'object' ? [column] : []))),
  );
}

function alignmentsOf(lines: readonly QuoteLine[], columns: readonly number[]) {
  return lines.map(({ kind }, index) => {
    const numbers = kind === 'columns' ? numberColumns(lines, index) : undefined;
    return columns.map((column) => (numbers?.has(column) ? 'right' : 'normal'));
  });
}

/** What is wrapped in its column: every text of a table but a last one, which runs on to the right. */
const isWrapped = ({ kind, cells }: QuoteLine, column: number) =>
  inTables.has(kind) && (kind === 'columns' || column < cells.length - 1);

/** Rows with longer texts than their columns are wide are as high as those need. */
function giveHeights(sheet: Sheet, lines: readonly QuoteLine[]): void {
  lines.forEach((line, index) => {
    const heights = line.cells.map((cell, column) =>
      typeof cell === 'string' && isWrapped(line, column)
        ? wrappedHeight(cell, column === 0 ? firstWidth : otherWidth)
        : 0,
    );
    const height = Math.max(...heights);
    if (height > wrappedHeight('', otherWidth)) sheet.setRowHeight(index + 1, height);
  });
}

function giveLooks(sheet: Sheet, lines: readonly QuoteLine[], width: number): void {
  const columns = Array.from({ length: width }, (_, index) => index);
  const each = <T>(look: (line: QuoteLine, column: number) => T) =>
    lines.map((line) => columns.map((column) => look(line, column)));
  sheet
    .getRange(1, 1, lines.length, width)
    .setNumberFormats(each(({ cells }, column) => formatOf(cells[column])))
    .setFontWeights(each(({ kind }) => (bold.has(kind) ? 'bold' : 'normal')))
    .setBackgrounds(each(({ kind }) => (kind === 'columns' ? colours.headerFill : null)))
    .setHorizontalAlignments(alignmentsOf(lines, columns))
    .setWraps(each(isWrapped))
    .setVerticalAlignment('top');
  sheet.getRange(1, 1).setFontSize(14);
  sheet.setColumnWidth(1, firstWidth);
  sheet.setColumnWidths(2, width - 1, otherWidth);
  giveHeights(sheet, lines);
  sheet.setHiddenGridlines(true);
}

/**
 * The copy of an issued quote on a sheet of its own: values, never formulas.
 * @param mayBeLeftover false where nothing tells a quote that was issued from one that was not: its records are gone
 */
export function writeFrozenQuote(book: Book, issued: IssuedQuote, mayBeLeftover: boolean): Sheet {
  const lines = issuedLines(issued);
  const cells = cellsOf(lines);
  const width = Math.max(...cells.map((line) => line.length));
  const sheet = freshSheet(book, keyText(issued), mayBeLeftover);
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
