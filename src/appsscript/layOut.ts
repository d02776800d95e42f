import type { TableGrids, tableNames } from '../tables/catalogue.ts';
import type { Layout, ResultLayout, SheetLayout, TableLayout } from '../workbook/layout.ts';
import { fieldsOf, tableCells } from '../workbook/tableCells.ts';
import { currencyOf, recordNames } from '../workbook/tableSource.ts';
import { rangeIn, write } from './cells.ts';

type Spreadsheet = GoogleAppsScript.Spreadsheet.Spreadsheet;
type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

const gap = 1;
const resultRow = 4;

/** The sheet of that name at its place in the order, made where there is none. */
function sheetNamed(book: Spreadsheet, name: string, index: number): Sheet {
  return book.getSheetByName(name) ?? book.insertSheet(name, index);
}

/** Writes the workbook's sheets with what the given tables hold. */
export function layOut(layout: Layout, grids: TableGrids): void {
  const book = SpreadsheetApp.getActiveSpreadsheet();
  const tables = layout.sheets.flatMap((sheet) => sheet.tables);
  const byName = new Map(tables.map((table) => [table.table, table]));
  const names = (name: (typeof tableNames)[number]) =>
    recordNames(byName.get(name) as TableLayout, grids[name]);
  const currency =
    tables.map((table) => currencyOf(table, grids[table.table])).find((code) => code !== undefined) ?? 'USD';

  const placeTable = (sheet: Sheet, table: TableLayout, column: number): number => {
    const { cells } = tableCells(table, fieldsOf(table, names), grids[table.table], currency);
    book.setNamedRange(table.range, write(sheet, 1, column, cells));
    return column + (cells[0]?.length ?? 0) + gap;
  };
  const placeResult = (sheet: Sheet, result: ResultLayout, column: number): number => {
    write(sheet, resultRow - 1, column, [[result.title]]);
    rangeIn(sheet, resultRow, column).setFormula(`=${result.function}(${result.arguments.join(';')})`);
    return column + result.columns + gap;
  };
  const sheets = layout.sheets.map((each, index) => sheetNamed(book, each.name, index));
  const columns = layout.sheets.map(({ tables: own }, index) =>
    own.reduce((column, table) => placeTable(sheets[index] as Sheet, table, column), 1),
  );
  layout.sheets.forEach(({ results, question, name }: SheetLayout, index) => {
    const sheet = sheets[index] as Sheet;
    const column = columns[index] ?? 1;
    if (results.length > 0) write(sheet, 1, column, [[`${name}: ${question}`]]);
    results.reduce((at, result) => placeResult(sheet, result, at), column);
  });
}
