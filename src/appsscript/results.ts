import type { Layout, ResultLayout } from '../workbook/layout.ts';
import { isFree } from '../workbook/own.ts';
import { type KeptItem, keep } from './kept.ts';
import { type Book, cellPlace, gridOf, type Place, rangeOf, type View } from './places.ts';
import type { PlacedTable } from './tables.ts';

/** Where a computed block stands. */
export interface PlacedResult {
  readonly result: ResultLayout;
  readonly view: View;
  readonly row: number;
  readonly column: number;
}

const formulaOf = (result: ResultLayout) => `=${result.function}(${result.arguments.join(';')})`;

/** The names a formula passes to the function, undefined where it is not a call of that function and nothing else. */
function argumentsIn(formula: string, name: string): string[] | undefined {
  const text = formula.trim();
  if (!text.toUpperCase().startsWith(`=${name}(`) || !text.endsWith(')')) return undefined;
  return text
    .slice(name.length + 2, -1)
    .split(/[;,]/)
    .map((argument) => argument.trim().toLowerCase());
}

/** The block's call wherever a person has moved it, its own sheet first; a call with other arguments is a person's own. */
function findCall(home: View, views: readonly View[], result: ResultLayout, ranges: ReadonlySet<string>) {
  for (const view of [home, ...views.filter((each) => each !== home)]) {
    for (const [r, line] of view.formulas.entries()) {
      const c = line.findIndex((text) =>
        argumentsIn(text, result.function)?.every((name) => ranges.has(name)),
      );
      if (c >= 0) return { view, row: r + 1, column: c + 1, formula: line[c] as string };
    }
  }
  return undefined;
}

/** The cells kept free for a block. */
export const roomOf = ({ result, view, row, column }: PlacedResult): Place => ({
  view,
  row,
  column,
  rows: result.rows,
  columns: result.columns,
});

/** What stands in the way of a block that cannot spill is moved to the kept sheet. */
function clearTheWay(book: Book, placed: PlacedResult, kept: KeptItem[]): void {
  const room = roomOf(placed);
  const grid = gridOf(room);
  if (grid[0]?.[0] !== '#REF!') return;
  grid.forEach((line, r) => {
    let first = r === 0 ? 1 : 0;
    while (first < line.length) {
      let end = first;
      while (end < line.length && !isFree(line[end])) end++;
      if (end > first) {
        const run = {
          ...room,
          row: room.row + r,
          column: room.column + first,
          rows: 1,
          columns: end - first,
        };
        kept.push(keep(book, run, `stood in the way of "${placed.result.title}"`));
      }
      first = end + 1;
    }
  });
}

/** First column right of a sheet's tables, one column apart. */
function firstColumn(view: View, tables: readonly PlacedTable[]): number {
  const ends = tables
    .filter(({ place }) => place.view === view)
    .map(({ table, place }) => place.column + place.columns + (table.shape === 'rows' ? 0 : 1));
  return ends.length === 0 ? 1 : Math.max(...ends) + 1;
}

/** Puts every block's one call into its cell, or leaves it where a person has moved it. */
export function placeResults(
  book: Book,
  layout: Layout,
  sheets: ReadonlyMap<string, View>,
  views: readonly View[],
  tables: readonly PlacedTable[],
  kept: KeptItem[],
): PlacedResult[] {
  const ranges = new Set(tables.map(({ table }) => table.range.toLowerCase()));
  const place = (home: View, result: ResultLayout): PlacedResult => {
    const found = findCall(home, views, result, ranges);
    if (found) {
      const placed = { result, view: found.view, row: found.row, column: found.column };
      const isCurrent =
        argumentsIn(found.formula, result.function)?.join() === result.arguments.join().toLowerCase();
      if (!isCurrent) rangeOf(cellPlace(found.view, found.row, found.column)).setFormula(formulaOf(result));
      clearTheWay(book, placed, kept);
      return placed;
    }
    const wanted = {
      result,
      view: home,
      row: result.row,
      column: firstColumn(home, tables) + result.column - 1,
    };
    const isClear = gridOf(roomOf(wanted)).every((line) => line.every(isFree));
    const placed = isClear ? wanted : { ...wanted, row: home.values.length + 3 };
    rangeOf(roomOf(placed));
    rangeOf(cellPlace(home, placed.row, placed.column)).setFormula(formulaOf(result));
    return placed;
  };
  return layout.sheets.flatMap(({ name, results }) =>
    results.map((result) => place(sheets.get(name) as View, result)),
  );
}
