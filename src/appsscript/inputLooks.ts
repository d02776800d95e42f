import { colours } from '../workbook/palette.ts';
import { gridOf, type Place, part, type Range, rangeOf } from './places.ts';
import { inputPlaces, runs, type TableParts } from './tableParts.ts';
import { columnWidths, rowLines, textLines } from './widths.ts';

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
    rangeOf(part(place, header + 1, 0, place.rows - header - 1, place.columns))
      .setWrap(true)
      .setVerticalAlignment('middle');
    align(parts, header + 1, place.rows - header - 1, parts.unitColumn, 1, 'center');
    return;
  }
  const isNumber = fields.map((field) => field?.isNumber === true);
  for (const [first, count] of runs(isNumber)) align(parts, header, 2, first, count, 'right');
  for (const [first, count] of runs(isNumber.map((flag) => !flag))) {
    align(parts, header, place.rows - header, first, count, 'left');
    rangeOf(part(place, header + 2, first, place.rows - header - 2, count)).setWrap(true);
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

const meaningWidth = 330;
/** Heights in pixels: of a line of text, at 8 points, and what stands above and below it. */
const line = 17;
const smallLine = 12;
const space = 5;

/** Column widths that fit what stands in a table, and rows as high as their texts. */
export function tableSizes(parts: TableParts): void {
  const { table, place, header } = parts;
  const { sheet } = place.view;
  const widths = columnWidths(parts);
  widths.forEach((width, c) => {
    sheet.setColumnWidth(place.column + c, width);
  });
  if (table.shape !== 'rows') sheet.setColumnWidth(place.column + place.columns, meaningWidth);
  const meanings = gridOf(part(place, 0, place.columns, place.rows, 1));
  const heights = rowLines(parts, widths).map((lines, row) => {
    const isMeant = table.shape !== 'rows' && row > header;
    const meant = isMeant ? textLines(String(meanings[row]?.[0] ?? ''), meaningWidth, 'small') : 1;
    return space + Math.max(line * lines, smallLine * meant);
  });
  for (const height of new Set(heights.filter((each) => each > space + line))) {
    for (const [row, rows] of runs(heights.map((each) => each === height))) {
      sheet.setRowHeights(place.row + row, rows, height);
    }
  }
}

/** Height of the row of help above a table's header. */
export function helpHeight(parts: TableParts): number {
  const { table, grid, header } = parts;
  if (table.shape !== 'rows' || header < 2) return 0;
  const widths = columnWidths(parts);
  const lines = (grid[header - 1] ?? []).map((help, c) =>
    textLines(String(help ?? ''), widths[c] ?? 0, 'small'),
  );
  return space + smallLine * Math.max(1, ...lines);
}
