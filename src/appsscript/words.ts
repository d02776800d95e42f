import type { SheetLayout } from '../workbook/layout.ts';
import { isFree, isOwn, own, ownLine } from '../workbook/own.ts';
import { empty, refreshOwn, write } from './cells.ts';
import { cellPlace, type Place, type View } from './places.ts';
import type { PlacedResult } from './results.ts';

/** First row of the lines of the first sheet. */
export const linesRow = 4;

interface Word {
  readonly row: number;
  readonly column: number;
  readonly text: string;
}

/** What a sheet says beside its tables: its question, how to read it, the title of every block. */
function wordsOf(layout: SheetLayout, results: readonly PlacedResult[]): Word[] {
  const [first] = results;
  if (first === undefined) return [];
  const heading = [
    { row: 1, column: first.column, text: layout.question },
    { row: 2, column: first.column, text: layout.reading },
  ];
  const titles = results.map(({ result, row, column }) => ({ row: row - 1, column, text: result.title }));
  return [...heading, ...titles].sort((a, b) => a.row - b.row || a.column - b.column);
}

/** The workbook's own words on a sheet that do not belong to one of its tables. */
function ownWords({ values }: View, tables: readonly Place[]) {
  const isTables = (row: number, column: number) =>
    tables.some((t) => column >= t.column && column <= t.column + t.columns && row < t.row + t.rows);
  return values.flatMap((line, r) =>
    line.flatMap((cell, c) =>
      isOwn(cell) && !isTables(r + 1, c + 1) ? [{ row: r + 1, column: c + 1, text: String(cell) }] : [],
    ),
  );
}

/**
 * Writes a sheet's words. Where as many stand as there are to write, each is replaced where a person has left or moved it;
 * else they are taken away and written in their places, as far as those are free.
 */
export function writeWords(
  view: View,
  layout: SheetLayout,
  results: readonly PlacedResult[],
  tables: readonly Place[],
): void {
  const words = wordsOf(layout, results);
  const present = ownWords(view, tables);
  const isInPlace = present.length === words.length;
  if (!isInPlace) for (const { row, column } of present) empty(cellPlace(view, row, column));
  words.forEach((word, index) => {
    const { row, column } = isInPlace ? (present[index] as Word) : word;
    const text = own(word.text);
    const current = view.values[row - 1]?.[column - 1];
    if (isFree(current) && current !== text) write(view, row, column, [[text]]);
  });
}

/** Writes the lines of the first sheet; words of an older one that stand elsewhere are taken away. */
export function writeLines(view: View, { question, reading, lines }: SheetLayout): void {
  const above = [
    [question, null],
    [reading, null],
    ...Array.from({ length: linesRow - 3 }, () => [null, null]),
  ];
  const cells = [...above, ...lines.map(({ text, note }) => [text, note ?? null])].map(ownLine);
  for (const { row, column } of ownWords(view, [])) {
    if (row > cells.length || column > 2) empty(cellPlace(view, row, column));
  }
  refreshOwn(view, 1, 1, cells);
}
