import type { View } from './places.ts';

/** Stretches of neighbours of the same size, as [first, count, size]; undefined stays as it is. */
function stretches(sizes: readonly (number | undefined)[]): [number, number, number][] {
  const found: [number, number, number][] = [];
  sizes.forEach((size, index) => {
    const last = found[found.length - 1];
    if (size === undefined) return;
    if (last && last[0] + last[1] === index && last[2] === size) last[1]++;
    else found.push([index, 1, size]);
  });
  return found;
}

/** Widths in pixels from a column on, neighbours of the same width in one call. */
export function setWidths({ sheet }: View, column: number, widths: readonly (number | undefined)[]): void {
  for (const [first, count, width] of stretches(widths)) sheet.setColumnWidths(column + first, count, width);
}

/** Heights in pixels from a row on. */
export function setHeights({ sheet }: View, row: number, heights: readonly (number | undefined)[]): void {
  for (const [first, count, height] of stretches(heights)) sheet.setRowHeights(row + first, count, height);
}

const line = 17; // px, at 10 points
const smallLine = 12; // px, at 8 points
const space = 5; // px, above and below

/** Height in pixels of a row with so many lines of text. */
export const textHeight = (lines: number) => space + line * lines;
export const smallTextHeight = (lines: number) => space + smallLine * lines;
