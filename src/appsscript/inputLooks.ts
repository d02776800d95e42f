import { colours } from '../workbook/palette.ts';
import type { Look, PlaceLook } from './paint.ts';
import { gridOf, type Place, part } from './places.ts';
import { setHeights, setWidths, smallTextHeight, textHeight } from './sizes.ts';
import { inputPlaces, runs, type TableParts } from './tableParts.ts';
import { columnWidths, rowLines, textLines } from './widths.ts';

/** An input: framed and filled, everywhere in the same way. */
export const inputLook: Look = { fill: colours.inputFill, framed: true };

const small: Look = { size: 8, ink: colours.help, wrap: true };

/** Looks of an input table: title, help, header, and which cells are a person's. */
export function inputLooks(parts: TableParts): PlaceLook[] {
  const { table, place, header, fields } = parts;
  const at = (row: number, column: number, rows: number, columns: number): Place =>
    part(place, row, column, rows, columns);
  const below = place.rows - header - 1;
  const common: PlaceLook[] = [
    ...(header > 0 ? [[at(0, 0, 1, 1), { bold: true, size: 12 }] as PlaceLook] : []),
    ...(header > 1
      ? [[at(header - 1, 0, 1, place.columns), { ...small, vertical: 'top' }] as PlaceLook]
      : []),
    [at(header, 0, 1, place.columns), { bold: true, fill: colours.headerFill, wrap: true }],
    ...inputPlaces(parts).map((input): PlaceLook => [input, inputLook]),
  ];
  if (table.shape !== 'rows') {
    return [
      ...common,
      [at(header, place.columns, below + 1, 1), { ...small, vertical: 'middle' }],
      [at(header + 1, 0, below, place.columns), { wrap: true, vertical: 'middle' }],
      [at(header + 1, parts.unitColumn, below, 1), { horizontal: 'center' }],
    ];
  }
  const isNumber = fields.map((field) => field?.isNumber === true);
  return [
    ...common,
    ...runs(isNumber).map(
      ([first, count]): PlaceLook => [at(header, first, 2, count), { horizontal: 'right' }],
    ),
    ...runs(isNumber.map((flag) => !flag)).flatMap(([first, count]): PlaceLook[] => [
      [at(header, first, below + 1, count), { horizontal: 'left' }],
      [at(header + 2, first, below - 1, count), { wrap: true }],
    ]),
  ];
}

const meaningWidth = 330; // px

/** Column widths that fit what stands in a table, and rows as high as their texts. */
export function tableSizes(parts: TableParts): void {
  const { table, place, header } = parts;
  const widths = columnWidths(parts);
  const isMeant = table.shape !== 'rows';
  setWidths(place.view, place.column, isMeant ? [...widths, meaningWidth] : widths);
  const meanings = gridOf(part(place, 0, place.columns, place.rows, 1));
  const heights = rowLines(parts, widths).map((lines, row) => {
    const meaning = isMeant && row > header ? String(meanings[row]?.[0] ?? '') : '';
    const height = Math.max(textHeight(lines), smallTextHeight(textLines(meaning, meaningWidth, 'small')));
    return height > textHeight(1) ? height : undefined;
  });
  setHeights(place.view, place.row, heights);
}

/** Height of the row of help above a table's header. */
export function helpHeight(parts: TableParts): number {
  const { table, grid, header } = parts;
  if (table.shape !== 'rows' || header < 2) return 0;
  const widths = columnWidths(parts);
  const lines = (grid[header - 1] ?? []).map((help, c) =>
    textLines(String(help ?? ''), widths[c] ?? 0, 'small'),
  );
  return smallTextHeight(Math.max(1, ...lines));
}
