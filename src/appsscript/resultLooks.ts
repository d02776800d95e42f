import type { Cell } from '../tables/cell.ts';
import { type BlockLooks, blockLooks } from '../workbook/blockLooks.ts';
import { colours } from '../workbook/palette.ts';
import { rectangles } from '../workbook/rectangles.ts';
import { setBlockRules } from './findingRules.ts';
import { cellPlace, type Place, part, rangeOf, type View } from './places.ts';
import type { PlacedResult } from './results.ts';
import { textLines } from './widths.ts';

/** The packages as the pictures colour them: their names and which is the baseline. */
export interface Packages {
  readonly names: readonly string[];
  readonly baseline: number;
}

const roomOf = ({ result, view, row, column }: PlacedResult): Place => ({
  view,
  row,
  column,
  rows: result.rows,
  columns: result.columns,
});

/** Looks of a sheet of blocks that do not depend on what they say now; the last width holds for the remaining columns. */
export function resultLooks(view: View, widths: readonly number[], placed: readonly PlacedResult[]): void {
  const first = placed[0]?.column ?? 1;
  rangeOf(cellPlace(view, 1, first))
    .setFontWeight('bold')
    .setFontSize(12);
  rangeOf(cellPlace(view, 2, first)).setFontColor(colours.help);
  for (const each of placed) {
    rangeOf(cellPlace(view, each.row - 1, each.column)).setFontWeight('bold');
  }
  const last = Math.max(...placed.map(({ result, column }) => column + result.columns - 1));
  widths.forEach((width, index) => {
    const rest = index === widths.length - 1 ? last - first - index + 1 : 1;
    view.sheet.setColumnWidths(first + index, Math.max(1, rest), width);
  });
}

const headHeight = 36; // pixels: two lines

function contentLook(
  placed: PlacedResult,
  block: readonly (readonly Cell[])[],
  { formats, bold, right, heads }: BlockLooks,
  widths: readonly number[],
  firstColumn: number,
): void {
  const { view, row, column, result } = placed;
  const rows = formats.length;
  const columns = Math.min(result.columns, formats[0]?.length ?? 0);
  const at = (r: number, c: number, height: number, width: number) =>
    rangeOf(part(roomOf(placed), r, c, height, width));
  const widthAt = (c: number) => widths[Math.min(c + column - firstColumn, widths.length - 1)] ?? 90;
  const whole = at(0, 0, rows, columns);
  whole.setNumberFormats(formats.map((line) => line.slice(0, columns)));
  whole.setFontWeights(bold.map((line) => line.slice(0, columns).map((flag) => (flag ? 'bold' : 'normal'))));
  const room = at(0, 0, 1, result.columns);
  room.setBackground(null);
  at(0, 0, 1, columns).setBackground(colours.headerFill);
  whole.setHorizontalAlignment(null);
  for (const { value, ...box } of rectangles(right)) {
    if (value && box.column < columns)
      at(box.row, box.column, box.rows, box.columns).setHorizontalAlignment('right');
  }
  for (const head of heads) {
    at(head, 0, 1, columns).setWrap(true).setVerticalAlignment('bottom');
    const lines = (block[head] ?? []).map((cell, c) => textLines(String(cell ?? ''), widthAt(c), 'bold'));
    if (Math.max(...lines) > 1) view.sheet.setRowHeight(row + head, headHeight);
  }
  for (const sentences of result.sentences ?? []) {
    at(1, sentences, rows - 1, 1).setWrap(true);
    block.forEach((line, r) => {
      const lines = textLines(String(line[sentences] ?? ''), widthAt(sentences), 'plain');
      if (lines > 1) view.sheet.setRowHeight(row + r, 5 + 17 * lines);
    });
  }
}

/** Looks that follow the blocks as they are computed now: number formats and headings, a colour for each package. */
export function contentLooks(
  view: View,
  placed: readonly PlacedResult[],
  blockOf: (placed: PlacedResult) => readonly (readonly Cell[])[],
  packages: Packages,
  widths: readonly number[],
): void {
  const names = new Set(packages.names);
  for (const each of placed) {
    const block = blockOf(each).slice(0, each.result.rows);
    if (block.length > 0) contentLook(each, block, blockLooks(block, names), widths, placed[0]?.column ?? 1);
  }
  const heads = placed.flatMap((each) => {
    const { packagesFrom, rows, columns } = each.result;
    return packagesFrom === undefined
      ? []
      : [rangeOf(part(roomOf(each), 0, packagesFrom, rows, columns - packagesFrom))];
  });
  const blocks = placed.map((each) => rangeOf(roomOf(each)));
  setBlockRules(view.sheet, blocks, heads, packages);
}
