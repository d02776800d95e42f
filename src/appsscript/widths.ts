import { type Cell, isBlank } from '../tables/cell.ts';
import type { TableParts } from './tableParts.ts';

/** Arial's mean width at 10 points, at 10 bold, at 8; in pixels, a little more than measured. */
const pixels = { plain: 6.2, bold: 7.4, small: 5 };
const padding = 12;
const narrowest = 84; // the longest word of a help at 8 points
const step = 12;
const linesOfHelp = 6; // what the help above a column may take
const widest = { rows: 270, attributes: 210, across: 132 };
const roomToType = 120; // in a value or note of an attribute, empty or not

const longest = (texts: readonly string[]) => texts.reduce((most, text) => Math.max(most, text.length), 0);
const textOf = (cell: Cell) => (isBlank(cell) ? '' : String(cell));

/** Lines that a text takes in a column when it wraps between words. */
export function textLines(text: string, width: number, size: keyof typeof pixels): number {
  const perLine = Math.max(4, Math.floor((width - padding) / pixels[size]));
  let lines = 1;
  let used = 0;
  for (const word of text.split(' ')) {
    const wanted = used === 0 ? word.length : used + 1 + word.length;
    const isNext = used > 0 && wanted > perLine;
    if (isNext) lines++;
    used = isNext ? word.length : wanted;
    while (used > perLine) {
      lines++;
      used -= perLine;
    }
  }
  return lines;
}

/** Widths of a table's columns: what stands in them fits, long words in a few lines. */
export function columnWidths({ table, grid, header, labelColumn, unitColumn }: TableParts): number[] {
  return (grid[header] ?? []).map((name, column) => {
    const head = textOf(name);
    const cells = grid.slice(header + 1).map((line) => textOf(line[column] ?? null));
    const help = table.shape === 'rows' && header > 1 ? textOf(grid[header - 1]?.[column] ?? null) : '';
    const wanted = Math.max(
      pixels.bold * Math.max(longest(head.split(/[ /]/)), head.length / 3),
      pixels.plain * 1.1 * longest(cells),
      Math.min(150, (pixels.small * help.length) / (linesOfHelp - 1)),
    );
    const most = column === 0 ? widest.rows : widest[table.shape];
    const isTyped = table.shape === 'attributes' && column !== labelColumn && column !== unitColumn;
    const width = Math.min(most, Math.max(isTyped ? roomToType : narrowest, wanted + padding));
    return step * Math.ceil(width / step); // neighbours of the same width are set together
  });
}

/** Lines that every row of a table takes in columns of those widths. */
export function rowLines({ grid, header }: TableParts, widths: readonly number[]): number[] {
  return grid.map((line, row) =>
    row <= header
      ? 1
      : Math.max(
          1,
          ...line.map((cell, column) => textLines(textOf(cell), widths[column] ?? narrowest, 'plain')),
        ),
  );
}
