import { type IssuedQuote, keyText } from '../assessment/issuedQuote.ts';
import { cellsOf, issuedLines } from '../assessment/quoteBlock.ts';
import { softwareVersion } from '../assessment/version.ts';
import type { Cell } from '../tables/cell.ts';
import type { Book, Sheet } from './places.ts';
import { editedColumns, type RegisterEntry } from './quoteRegister.ts';

const mostNamed = 3; // cells in one remark

/** Cells of the copy's sheet that hold something else than what was issued, the first of them by name. */
function editedCells(copy: Sheet, issued: IssuedQuote): string {
  const lines = cellsOf(issuedLines(issued));
  const values: readonly (readonly Cell[])[] = copy.getDataRange().getValues();
  const width = Math.max(...[...lines, ...values].map((cells) => cells.length));
  const edited = Array.from({ length: Math.max(lines.length, values.length) * width }, (_, at) => ({
    row: Math.floor(at / width),
    column: at % width,
  })).filter(({ row, column }) => (values[row]?.[column] ?? '') !== (lines[row]?.[column] ?? ''));
  const named = edited
    .slice(0, mostNamed)
    .map(({ row, column }) => copy.getRange(row + 1, column + 1).getA1Notation());
  const more = edited.length > mostNamed ? ` and ${edited.length - mostNamed} more` : '';
  return `${named.join(', ')}${more}`;
}

/** What a person has changed by hand in the register's row or the copy of a quote, which its record can tell. */
export function handEdits(book: Book, entry: RegisterEntry, issued: IssuedQuote): string[] {
  const columns = editedColumns(entry, issued);
  const name = keyText(issued);
  const copy = book.getSheetByName(name);
  // Another version may lay the same quote out otherwise
  const isComparable = copy !== null && issued.quote.softwareVersion === softwareVersion;
  const cells = isComparable ? editedCells(copy, issued) : '';
  const edits = [
    ...(columns.length > 0
      ? [
          `This row of the register was changed by hand: ${columns.join(', ')}; the record holds what was issued: delete the row, and the next issue writes it anew`,
        ]
      : []),
    ...(copy === null ? [`The sheet ${name} is gone; the record holds what was issued`] : []),
    ...(cells === ''
      ? []
      : [`The sheet ${name} was changed by hand: ${cells}; the record holds what was issued`]),
  ];
  return edits;
}
