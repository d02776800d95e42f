import { type Cell, isBlank } from '../tables/cell.ts';

const pixelsPerCharacter = 6.6; // Arial at 10 points, a little more than the mean
const smallPixelsPerCharacter = 5.2; // at 8 points
const padding = 14;
const narrowest = 64;
const widest = 260;

/** Width of a column whose head wraps between words and whose cells do not: at most `widest`. */
export function columnWidth(head: string, cells: readonly Cell[]): number {
  const longestWord = Math.max(0, ...head.split(/[\s/]+/).map((word) => word.length));
  const halfHead = Math.ceil(head.length / 3); // at most about three lines
  const longestCell = Math.max(
    0,
    ...cells.filter((cell) => !isBlank(cell)).map((cell) => String(cell).length),
  );
  const characters = Math.max(longestWord + 1, halfHead, longestCell);
  return Math.round(Math.min(widest, Math.max(narrowest, padding + pixelsPerCharacter * characters)));
}

/** Lines that a small text takes in a column. */
export function textLines(text: string, width: number): number {
  const perLine = Math.max(4, Math.floor((width - 8) / smallPixelsPerCharacter));
  let lines = 1;
  let used = 0;
  for (const word of text.split(' ')) {
    if (used > 0 && used + 1 + word.length > perLine) {
      lines++;
      used = 0;
    }
    used += (used > 0 ? 1 : 0) + word.length;
    lines += Math.floor((used - 1) / perLine) * (used > perLine ? 1 : 0);
    if (used > perLine) used %= perLine;
  }
  return lines;
}
