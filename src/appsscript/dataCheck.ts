import { readCatalogue, type TableGrids } from '../tables/catalogue.ts';
import type { Cell } from '../tables/cell.ts';
import type { Fault, Remark } from '../tables/faults.ts';
import type { Layout, TableLayout } from '../workbook/layout.ts';
import { isFree } from '../workbook/own.ts';
import type { Book, Range } from './places.ts';

/** What is wrong in the tables, and what is in the sheets but not read. */
export interface DataCheck {
  readonly faults: readonly Fault[];
  readonly remarks: readonly Remark[];
  readonly unread: readonly string[];
}

/** Rows that stand directly below a table's range: nothing reads them. */
function unreadBelow({ table }: TableLayout, range: Range): string[] {
  const sheet = range.getSheet();
  const row = range.getLastRow() + 1;
  if (row > sheet.getLastRow()) return [];
  const [below = []] = sheet
    .getRange(row, range.getColumn(), 1, range.getNumColumns())
    .getValues() as Cell[][];
  return below.every(isFree)
    ? []
    : [`${table}: row ${row} stands below the table and is not read; "Lay out or upgrade" takes it in`];
}

/** Goes to the row of a fault. */
export function showFault(layout: Layout, fault: Fault): void {
  const book = SpreadsheetApp.getActiveSpreadsheet();
  const table = layout.sheets.flatMap((sheet) => sheet.tables).find((each) => each.table === fault.table);
  const range = table && book.getRangeByName(table.range);
  if (range) range.offset((fault.row ?? 1) - 1, 0, 1, 1).activate();
}

/** Reads all tables, as the custom functions do. */
export function dataCheck(layout: Layout): DataCheck {
  const book: Book = SpreadsheetApp.getActiveSpreadsheet();
  const tables = layout.sheets.flatMap((sheet) => sheet.tables);
  const ranges = tables.map((table) => ({ table, range: book.getRangeByName(table.range) }));
  const grids = Object.fromEntries(
    ranges.flatMap(({ table, range }) => (range ? [[table.table, range.getValues()]] : [])),
  ) as TableGrids;
  const { catalogue, faults } = readCatalogue(grids);
  const unread = ranges.flatMap(({ table, range }) => (range ? unreadBelow(table, range) : []));
  return { faults, remarks: catalogue?.remarks ?? [], unread };
}
