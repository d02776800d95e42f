import { colours } from '../workbook/palette.ts';
import { gridOf, type Place, part, type Range, rangeOf } from './places.ts';
import { inputPlaces, runs, type TableParts } from './tableParts.ts';
import { columnWidth, textLines } from './widths.ts';

/** An input: framed and filled, everywhere in the same way. */
export function markInput(range: Range): void {
  range
    .setBackground(colours.inputFill)
    .setBorder(true, true, true, true, true, true, colours.inputFrame, SpreadsheetApp.BorderStyle.SOLID);
}

const small = (place: Place) => rangeOf(place).setFontSize(8).setFontColor(colours.help).setWrap(true);

/** Looks of an input table: title, help, header, and which cells are a person's. */
export function inputLooks(parts: TableParts): void {
  const { table, place, header, fields } = parts;
  if (header > 0)
    rangeOf(part(place, 0, 0, 1, 1))
      .setFontWeight('bold')
      .setFontSize(12);
  if (header > 1) small(part(place, header - 1, 0, 1, place.columns)).setVerticalAlignment('top');
  const head = rangeOf(part(place, header, 0, 1, place.columns));
  head.setFontWeight('bold').setBackground(colours.headerFill).setWrap(true).setVerticalAlignment('bottom');
  for (const input of inputPlaces(parts)) markInput(rangeOf(input));
  if (table.shape !== 'rows') {
    small(part(place, header, place.columns, place.rows - header, 1)).setVerticalAlignment('middle');
    align(parts, header + 1, place.rows - header - 1, parts.unitColumn, 1, 'center');
    return;
  }
  const isNumber = fields.map((field) => field?.isNumber === true);
  for (const [first, count] of runs(isNumber)) align(parts, header, 2, first, count, 'right');
  for (const [first, count] of runs(isNumber.map((flag) => !flag))) {
    align(parts, header, place.rows - header, first, count, 'left');
  }
}

function align(
  { place }: TableParts,
  row: number,
  rows: number,
  column: number,
  columns: number,
  side: 'left' | 'center' | 'right',
): void {
  rangeOf(part(place, row, column, rows, columns)).setHorizontalAlignment(side);
}

const meaningWidth = 420;

/** Column widths that fit what stands in a table, and the height of its help. */
export function tableWidths({ table, place, grid, header }: TableParts): void {
  const { sheet } = place.view;
  const widths = (grid[header] ?? []).map((name, c) =>
    columnWidth(
      String(name ?? ''),
      grid.slice(header + 1).map((line) => line[c] ?? null),
    ),
  );
  widths.forEach((width, c) => {
    sheet.setColumnWidth(place.column + c, width);
  });
  if (table.shape === 'rows') return;
  sheet.setColumnWidth(place.column + place.columns, meaningWidth);
  const meanings = gridOf(part(place, 0, place.columns, place.rows, 1));
  const lines = meanings.map(([text]) => textLines(String(text ?? ''), meaningWidth));
  for (const many of [2, 3]) {
    for (const [row, rows] of runs(lines.map((count) => Math.min(3, count) === many))) {
      sheet.setRowHeights(place.row + row, rows, 8 + smallLine * many);
    }
  }
}

const smallLine = 12; // pixels, of text at 8 points

/** Height that the help above a table's header needs. */
export function helpHeight({ table, grid, header }: TableParts): number {
  if (table.shape !== 'rows' || header < 2) return 0;
  const lines = (grid[header - 1] ?? []).map((help, c) => {
    const cells = grid.slice(header + 1).map((line) => line[c] ?? null);
    return textLines(String(help ?? ''), columnWidth(String(grid[header]?.[c] ?? ''), cells));
  });
  return 8 + smallLine * Math.max(1, ...lines);
}
