import type { Cell } from '../tables/cell.ts';
import { type BlockLooks, blockLooks } from '../workbook/blockLooks.ts';
import { colours } from '../workbook/palette.ts';
import type { BlockRules } from './findingRules.ts';
import { type PlaceLook, paint } from './paint.ts';
import { cellPlace, part, rangeOf, type View } from './places.ts';
import { type PlacedResult, roomOf } from './results.ts';
import { setHeights, setWidths, textHeight } from './sizes.ts';
import { textLines } from './widths.ts';

type Block = readonly (readonly Cell[])[];

/** The packages as the pictures colour them: their names and which is the baseline. */
export interface Packages {
  readonly names: readonly string[];
  readonly baseline: number;
}

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

const isEmpty = (cell: Cell | undefined) => cell === null || cell === undefined || cell === '';

/** How many empty cells a text can run on into, on the side where it does; all beyond the block are free. */
function runOn(line: readonly Cell[], column: number, isRight: boolean): readonly number[] | 'enough' {
  const step = isRight ? -1 : 1;
  const free: number[] = [];
  for (let c = column + step; c >= 0 && c < line.length; c += step) {
    if (!isEmpty(line[c])) return free;
    free.push(c);
  }
  return isRight ? free : 'enough';
}

/** The lines that every cell of a block takes: more than one where its neighbours would cut it off, and in columns of sentences. */
function linesOf(
  { result }: PlacedResult,
  block: Block,
  { sides, heads, bold }: BlockLooks,
  widthAt: (column: number) => number,
): number[][] {
  return block.map((line, r) =>
    line.map((cell, c) => {
      if (typeof cell !== 'string') return 1;
      const weight = bold[r]?.[c] ? 'bold' : 'plain';
      const side = sides[r]?.[c];
      const isKept =
        (heads.includes(r) && c > 0) || (r > 0 && result.sentences?.includes(c)) || side === 'center';
      const beside = isKept ? [] : runOn(line, c, side === 'right');
      if (beside === 'enough') return 1;
      const room = beside.reduce((sum, each) => sum + widthAt(each), widthAt(c));
      return textLines(cell, room, weight) > 1 ? textLines(cell, widthAt(c), weight) : 1;
    }),
  );
}

/** What a block's cells look like, every kind of look in one call, and the heights of its rows. */
function contentLook(
  placed: PlacedResult,
  block: Block,
  looks: BlockLooks,
  widthAt: (c: number) => number,
): void {
  const { result, view, row } = placed;
  const { formats, bold, sides, heads } = looks;
  const columns = Math.min(result.columns, formats[0]?.length ?? 0);
  const shown = <T, U>(rows: readonly (readonly T[])[], value: (cell: T) => U): U[][] =>
    rows.map((line) => line.slice(0, columns).map(value));
  const { WRAP, OVERFLOW } = SpreadsheetApp.WrapStrategy;
  const lines = linesOf(placed, block, looks, widthAt);
  const isWrapped = lines.map((line, r) => line.map((count, c) => count > 1 || (heads.includes(r) && c > 0)));
  rangeOf(part(roomOf(placed), 0, 0, formats.length, columns))
    .setNumberFormats(shown(formats, (format) => format))
    .setFontWeights(shown(bold, (flag) => (flag ? 'bold' : 'normal')))
    .setHorizontalAlignments(shown(sides, (side) => side))
    .setWrapStrategies(shown(isWrapped, (flag) => (flag ? WRAP : OVERFLOW)));
  const fills = Array.from({ length: result.columns }, (_, c) => (c < columns ? colours.headerFill : null));
  rangeOf(part(roomOf(placed), 0, 0, 1, result.columns)).setBackgrounds([fills]);
  const most = lines.map((line) => Math.max(1, ...line));
  const tall = most.flatMap((count, r) => (count > 1 && !heads.includes(r) ? [r] : []));
  paint(tall.map((r): PlaceLook => [part(roomOf(placed), r, 0, 1, columns), { vertical: 'top' }]));
  setHeights(
    view,
    row,
    most.map((count) => (count > 1 ? textHeight(count) : undefined)),
  );
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
    const widthAt = (c: number) => widths[Math.min(c + each.column - first, widths.length - 1)] ?? 90;
    contentLook(each, block, blockLooks(block, names), widthAt);
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
