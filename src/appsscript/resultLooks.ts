import type { Cell } from '../tables/cell.ts';
import { type BlockLooks, blockLooks } from '../workbook/blockLooks.ts';
import { colours } from '../workbook/palette.ts';
import type { BlockRules } from './findingRules.ts';
import { type PlaceLook, paint } from './paint.ts';
import { cellPlace, type Place, part, rangeOf, type View } from './places.ts';
import type { PlacedResult } from './results.ts';
import { setHeights, setWidths } from './sizes.ts';
import { textLines } from './widths.ts';

type Block = readonly (readonly Cell[])[];

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

/** The sheet's question, and how it is read. */
export const headingLooks = (view: View, column: number): PlaceLook[] => [
  [cellPlace(view, 1, column), { bold: true, size: 12 }],
  [cellPlace(view, 2, column), { ink: colours.help }],
];

/** Looks of a sheet of blocks that do not depend on what they say now; the last width holds for the remaining columns. */
export function resultLooks(view: View, widths: readonly number[], placed: readonly PlacedResult[]): void {
  const first = placed[0]?.column ?? 1;
  const titles = placed.map(
    ({ row, column }): PlaceLook => [cellPlace(view, row - 1, column), { bold: true }],
  );
  paint([...headingLooks(view, first), ...titles]);
  const last = Math.max(...placed.map(({ result, column }) => column + result.columns - 1));
  setWidths(
    view,
    first,
    Array.from({ length: last - first + 1 }, (_, index) => widths[Math.min(index, widths.length - 1)]),
  );
}

const headHeight = 36; // pixels: two lines

/** What a block's cells look like, every kind of look in one call. */
function contentLook(
  placed: PlacedResult,
  block: Block,
  { formats, bold, right, heads }: BlockLooks,
  widths: readonly number[],
  firstColumn: number,
): void {
  const { result, column } = placed;
  const columns = Math.min(result.columns, formats[0]?.length ?? 0);
  const widthAt = (c: number) => widths[Math.min(c + column - firstColumn, widths.length - 1)] ?? 90;
  const shown = <T, U>(rows: readonly (readonly T[])[], value: (cell: T) => U): U[][] =>
    rows.map((line) => line.slice(0, columns).map(value));
  const { WRAP, OVERFLOW } = SpreadsheetApp.WrapStrategy;
  // A first head that fits stays on its line, and so does what else its cell may say.
  const isWrapped = block.map((line, r) =>
    line.map((cell, c) => {
      if (!heads.includes(r)) return r > 0 && result.sentences?.includes(c) === true;
      return c > 0 || textLines(String(cell ?? ''), widthAt(c), 'bold') > 1;
    }),
  );
  rangeOf(part(roomOf(placed), 0, 0, formats.length, columns))
    .setNumberFormats(shown(formats, (format) => format))
    .setFontWeights(shown(bold, (flag) => (flag ? 'bold' : 'normal')))
    .setHorizontalAlignments(shown(right, (flag) => (flag ? 'right' : null)))
    .setWrapStrategies(shown(isWrapped, (flag) => (flag ? WRAP : OVERFLOW)));
  const fills = Array.from({ length: result.columns }, (_, c) => (c < columns ? colours.headerFill : null));
  rangeOf(part(roomOf(placed), 0, 0, 1, result.columns)).setBackgrounds([fills]);
}

/** Heights of a block's rows that take more than a line. */
function contentHeights(
  { result, column }: PlacedResult,
  block: Block,
  { heads }: BlockLooks,
  widths: readonly number[],
  firstColumn: number,
): (number | undefined)[] {
  const widthAt = (c: number) => widths[Math.min(c + column - firstColumn, widths.length - 1)] ?? 90;
  return block.map((line, r) => {
    const linesAt = (c: number, size: 'bold' | 'plain') => textLines(String(line[c] ?? ''), widthAt(c), size);
    if (heads.includes(r)) return line.some((_, c) => linesAt(c, 'bold') > 1) ? headHeight : undefined;
    const lines = Math.max(1, ...(result.sentences ?? []).map((c) => linesAt(c, 'plain')));
    return lines > 1 ? 5 + 17 * lines : undefined;
  });
}

/** Looks that follow the blocks as they are computed now: number formats and headings, a colour for each package. */
export function contentLooks(
  view: View,
  placed: readonly PlacedResult[],
  blockOf: (placed: PlacedResult) => Block,
  packages: Packages,
  widths: readonly number[],
  rules: BlockRules,
): void {
  const names = new Set(packages.names);
  const first = placed[0]?.column ?? 1;
  for (const each of placed) {
    const block = blockOf(each).slice(0, each.result.rows);
    if (block.length === 0) continue;
    const looks = blockLooks(block, names);
    contentLook(each, block, looks, widths, first);
    setHeights(view, each.row, contentHeights(each, block, looks, widths, first));
  }
  const heads = placed.flatMap((each) => {
    const { packagesFrom, rows, columns } = each.result;
    return packagesFrom === undefined
      ? []
      : [rangeOf(part(roomOf(each), 0, packagesFrom, rows, columns - packagesFrom))];
  });
  const blocks = placed.map((each) => rangeOf(roomOf(each)));
  rules.setOn(view.sheet, blocks, heads);
}
