import type { Grid } from '../tables/cell.ts';
import type { Grids, Layout, TableLayout } from '../workbook/layout.ts';
import { fieldsOf, tableCells } from '../workbook/tableCells.ts';
import { currencyOf, headerRow, holdsInputs, recordNames } from '../workbook/tableSource.ts';
import { empty, write } from './cells.ts';
import { completeTable, refreshWords } from './completeTable.ts';
import { type Searched, tableByHeader } from './headerScan.ts';
import { type KeptItem, keep, keptName } from './kept.ts';
import { writeMeanings } from './meanings.ts';
import { type Book, gridOf, isInside, type Place, placeOf, rangeOf, type View } from './places.ts';
import { makeRoomBelow, makeRoomRight } from './room.ts';
import { state } from './state.ts';

/** Where a table stands. */
export interface PlacedTable {
  readonly table: TableLayout;
  readonly place: Place;
}

/** The sheets as the search for headers sees them: without tables that were found, without computed blocks. */
function searched(layout: Layout, views: readonly View[], found: readonly Place[]): Searched[] {
  const results = layout.sheets.flatMap((sheet) => sheet.results);
  return views.map((view) => {
    const blocks = view.formulas.flatMap((line, r) =>
      line.flatMap((text, c): Place[] => {
        const block = results.find((each) => text.toUpperCase().startsWith(`=${each.function}(`));
        return block ? [{ view, row: r + 1, column: c + 1, rows: block.rows, columns: block.columns }] : [];
      }),
    );
    const taken = [...found.filter((place) => place.view === view), ...blocks];
    return { view, isTaken: (r, c) => taken.some((place) => isInside(place, r + 1, c + 1)) };
  });
}

/** Finds every table that is in the workbook already: by its named range, else by its header, which is named then. */
function locate(
  book: Book,
  layout: Layout,
  tables: readonly TableLayout[],
  views: readonly View[],
): Map<string, Place> {
  const found = new Map<string, Place>();
  for (const table of tables) {
    const range = book.getRangeByName(table.range);
    const place = range && placeOf(range, views);
    if (place && headerRow(table, gridOf(place)) >= 0) found.set(table.table, place);
  }
  const missing = tables.filter(({ table }) => !found.has(table));
  if (missing.length === 0) return found;
  const names = namesIn(tables, (name) => gridAt(found.get(name)));
  const places = views.filter(({ sheet }) => sheet.getName() !== keptName);
  const allFields = tables.flatMap((table) => fieldsOf(table, names));
  for (const table of missing) {
    const fields = fieldsOf(table, names);
    const place = tableByHeader(table, fields, allFields, searched(layout, places, [...found.values()]));
    if (place === undefined) continue;
    book.setNamedRange(table.range, rangeOf(place));
    found.set(table.table, place);
  }
  return found;
}

const gridAt = (place: Place | undefined): Grid | undefined => place && gridOf(place);

const namesIn =
  (tables: readonly TableLayout[], grid: (name: string) => Grid | undefined) => (name: string) =>
    recordNames(tables.find(({ table }) => table === name) as TableLayout, grid(name));

const whyKept = (table: TableLayout, isFound: boolean) =>
  isFound
    ? `the ${table.table} table before it was replaced`
    : `the ${table.table} table: its header was not found`;

/** True where a table holds these cells already. */
function isSame(present: Grid, cells: Grid): boolean {
  const sizes = [present, cells].map((grid) => `${grid.length} ${grid[0]?.length}`);
  return (
    sizes[0] === sizes[1] &&
    present.every((line, r) => line.every((cell, c) => (cell ?? '') === (cells[r]?.[c] ?? '')))
  );
}

/** The first column of a sheet with nothing at or right of it, one column apart from what stands there. */
function freeColumn({ values }: View): number {
  const width = Math.max(
    0,
    ...values.map((line) => line.reduce<number>((last, cell, c) => (cell === '' ? last : c + 1), 0)),
  );
  return width === 0 ? 1 : width + 2;
}

/**
 * Finds or makes every table, with the given contents where there are any, and gives it the columns and rows that it
 * lacks. Existing cells keep their contents and their neighbours.
 */
export function placeTables(
  book: Book,
  layout: Layout,
  sheets: ReadonlyMap<string, View>,
  views: readonly View[],
  given: Grids,
  kept: KeptItem[],
): PlacedTable[] {
  const announce = (changed: readonly TableLayout[]): void => {
    const undressed = state.undressed();
    const more = changed.map(({ range }) => range).filter((range) => !undressed.includes(range));
    if (more.length > 0) state.setUndressed([...undressed, ...more]);
  };
  const tables = layout.sheets.flatMap((sheet) => sheet.tables);
  const located = locate(book, layout, tables, views);
  const grids = new Map(tables.map(({ table }) => [table, given[table] ?? gridAt(located.get(table))]));
  const names = namesIn(tables, (name) => grids.get(name));
  const currency =
    tables.map((table) => currencyOf(table, grids.get(table.table))).find((code) => code) ?? 'USD';
  // A place is asked of Google once, and again only after its sheet's rows or columns moved.
  const known = new Map<TableLayout, { place: Place; moves: number }>();
  const remember = (table: TableLayout, place: Place) => known.set(table, { place, moves: place.view.moves });
  const namedPlace = (table: TableLayout): Place | undefined => {
    const last = known.get(table);
    if (last && last.moves === last.place.view.moves) return last.place;
    const named = book.getRangeByName(table.range);
    const place = named ? placeOf(named, views) : undefined;
    if (place) remember(table, place);
    return place;
  };
  for (const table of tables) {
    const place = located.get(table.table);
    if (place) remember(table, place);
  }

  const make = (table: TableLayout, view: View): void => {
    const cells = tableCells(table, fieldsOf(table, names), given[table.table], currency);
    const size = { rows: cells.length, columns: cells[0]?.length ?? 1 };
    const before = namedPlace(table);
    if (before && isSame(gridOf(before), cells)) return;
    if (before && holdsInputs(table, gridOf(before)))
      kept.push(keep(book, before, whyKept(table, located.has(table.table))));
    else if (before) empty(before);
    if (before) {
      makeRoomBelow(before, size.rows - before.rows);
      makeRoomRight(before, size.columns - before.columns);
    }
    const place = before ? { ...before, ...size } : { view, row: 1, column: freeColumn(view), ...size };
    // Named while still empty: an interrupted run finds the place again.
    book.setNamedRange(table.range, rangeOf(place));
    write(place.view, place.row, place.column, cells);
    remember(table, place);
  };

  const isFound = ({ table }: TableLayout) => located.has(table) && given[table] === undefined;
  announce(tables.filter((table) => !isFound(table)));
  for (const sheet of layout.sheets) {
    for (const table of sheet.tables) {
      const named = isFound(table) ? namedPlace(table) : undefined;
      const fields = fieldsOf(table, names);
      if (named) {
        const place = completeTable(book, table, fields, named, currency, () => announce([table]));
        remember(table, place);
        refreshWords(table, fields, place);
      } else make(table, sheets.get(sheet.name) as View);
      writeMeanings(table, namedPlace(table) as Place);
    }
  }
  return tables.map((table) => ({ table, place: namedPlace(table) as Place }));
}
