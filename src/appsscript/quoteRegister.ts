import {
  type IssuedQuote,
  keyText,
  numberOfName,
  type QuoteKey,
  quoteName,
} from '../assessment/issuedQuote.ts';
import type { QuoteCell } from '../assessment/quoteSection.ts';
import type { Cell } from '../tables/cell.ts';
import { colours } from '../workbook/palette.ts';
import type { Book, Sheet } from './places.ts';
import { rangeIn, wrappedHeight, writeRows } from './rows.ts';

const sheetName = 'Quotes issued';
const heads = [
  'Quote',
  'Revision',
  'Date',
  'Valid until',
  'Customer',
  'Package',
  'Total with tax',
  'Currency',
  'Payload to be counted on',
  'Unit',
  'Inputs, SHA-256',
  'Since then',
];
const totalColumn = heads.indexOf('Total with tax') + 1;
const payloadColumn = heads.indexOf('Payload to be counted on') + 1;
const sinceColumn = heads.length;
const wideColumns = [5, 6, payloadColumn, 11]; // customer, package, payload, digest
const wideWidth = 175; // px
const sinceWidth = 560;

/** A row of the register. */
export interface RegisterEntry extends QuoteKey {
  readonly row: number;
  readonly date: string;
  readonly customer: string;
  readonly packageName: string;
  readonly cells: readonly Cell[];
}

const numberIn = (cell: QuoteCell | undefined): Cell =>
  typeof cell === 'object' ? cell.number : (cell ?? null);

function registerRow(issued: IssuedQuote): Cell[] {
  const { number, revision, date, validUntil, digest, quote } = issued;
  const [total, payload] = quote.keyFigures;
  return [
    quoteName(number),
    revision,
    date,
    validUntil,
    quote.customer[0] ?? '',
    quote.packageName,
    numberIn(total?.value),
    quote.currency,
    numberIn(payload?.value),
    payload?.unit ?? '',
    digest,
    '',
  ];
}

/** The register as it was read. */
export interface Register {
  readonly sheet: Sheet | null;
  readonly entries: readonly RegisterEntry[];
  /** row of the heads, wherever a person has put lines above it; 0 where there is none */
  readonly headRow: number;
  readonly lastRow: number;
}

export function readRegister(book: Book): Register {
  const sheet = book.getSheetByName(sheetName);
  const rows = sheet?.getDataRange().getValues() ?? [];
  const isEmpty = rows.every((cells) => cells.every((cell) => cell === ''));
  const headRow = rows.findIndex(([first, second]) => first === heads[0] && second === heads[1]) + 1;
  const entries = rows.flatMap((cells: readonly Cell[], index): RegisterEntry[] => {
    const [name, revision, date, , customer, packageName] = cells;
    const number = numberOfName(String(name));
    if (number === undefined) return [];
    return [
      {
        number,
        revision: String(revision),
        row: index + 1,
        date: String(date),
        customer: String(customer),
        packageName: String(packageName),
        cells,
      },
    ];
  });
  return { sheet, entries, headRow, lastRow: isEmpty ? 0 : rows.length };
}

/** Heads of the cells of a row that hold something else than what was issued; the last column is for notes. */
export const editedColumns = ({ cells }: RegisterEntry, issued: IssuedQuote): string[] =>
  registerRow(issued)
    .slice(0, sinceColumn - 1)
    .flatMap((was, column) => ((cells[column] ?? '') === (was ?? '') ? [] : [heads[column] as string]));

/** Writes the heads of a register that has none. */
function writeHeads(sheet: Sheet, row: number): void {
  writeRows(sheet, row, 1, [heads]).setFontWeight('bold').setBackground(colours.headerFill);
  for (const column of wideColumns) sheet.setColumnWidth(column, wideWidth);
  sheet.setColumnWidth(sinceColumn, sinceWidth);
  sheet.setFrozenRows(row);
  sheet.protect().setDescription('Register of issued quotes').setWarningOnly(true);
}

/** Adds rows for quotes in one call, to a register that is made where there is none. */
export function appendToRegister(book: Book, register: Register, quotes: readonly IssuedQuote[]): void {
  const sheet = register.sheet ?? book.insertSheet(sheetName, book.getNumSheets());
  let row = register.lastRow + 1;
  if (register.headRow === 0) writeHeads(sheet, row++);
  rangeIn(sheet, row, totalColumn, quotes.length, 1).setNumberFormat('#,##0.00');
  rangeIn(sheet, row, payloadColumn, quotes.length, 1).setNumberFormat('#,##0');
  writeRows(sheet, row, 1, quotes.map(registerRow));
}

/** Writes beside quotes what has become of their inputs. */
export function noteInRegister({ sheet, entries }: Register, notes: ReadonlyMap<string, string>): void {
  for (const entry of entries) {
    const note = notes.get(keyText(entry));
    if (note === undefined || sheet === null) continue;
    writeRows(sheet, entry.row, sinceColumn, [[note]]).setWrap(true);
    sheet.setRowHeight(entry.row, wrappedHeight(note, sinceWidth));
  }
}
