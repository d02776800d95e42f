import { nameKey } from '../tables/cell.ts';
import type { Grids, Layout, SheetLayout } from '../workbook/layout.ts';
import { recordNames, tableSource } from '../workbook/tableSource.ts';
import { blockNow } from './blockNow.ts';
import { drawCharts } from './charts.ts';
import { Choices, offerChoices } from './choices.ts';
import { BlockRules } from './findingRules.ts';
import { helpHeight, inputLooks, tableSizes } from './inputLooks.ts';
import type { KeptItem } from './kept.ts';
import { paint } from './paint.ts';
import { type Book, gridOf, type View } from './places.ts';
import { progress } from './progress.ts';
import { warnBeforeChange } from './protection.ts';
import { contentLooks, type Packages, resultLooks } from './resultLooks.ts';
import { type PlacedResult, placeResults } from './results.ts';
import { placeSheets } from './sheets.ts';
import { setHeights } from './sizes.ts';
import { startLooks } from './startLooks.ts';
import { state } from './state.ts';
import { type TableParts, tableParts } from './tableParts.ts';
import { type PlacedTable, placeTables } from './tables.ts';
import { writeLines, writeWords } from './words.ts';

/** The packages' order and baseline, for their colours. */
function packagesIn(tables: readonly PlacedTable[]): Packages {
  const of = (name: string) => tables.find(({ table }) => table.table === name) as PlacedTable;
  const names = recordNames(of('packages').table, gridOf(of('packages').place));
  const source = tableSource(of('airframe').table, gridOf(of('airframe').place));
  const line = source?.body.find(
    (cells) => nameKey(String(cells[source.column('attribute')])) === 'baseline package',
  );
  const baseline = nameKey(String(line?.[source?.column('value') ?? -1] ?? ''));
  return { names, baseline: Math.max(0, names.map(nameKey).indexOf(baseline)) };
}

/** Looks of a sheet that has not got this layout's yet. */
function newLooks(
  view: View,
  layout: SheetLayout,
  tables: readonly TableParts[],
  results: readonly PlacedResult[],
): void {
  const { sheet } = view;
  sheet.setHiddenGridlines(true);
  for (const parts of tables) tableSizes(parts);
  const height = Math.max(0, ...tables.map(helpHeight));
  if (height > 0) setHeights(view, 2, [height]);
  if (results.length > 0) resultLooks(view, layout.widths, results);
  if (layout.lines.length > 0) startLooks(view, layout);
  if (layout.frozenRows > 0) sheet.setFrozenRows(layout.frozenRows);
  if (layout.frozenColumns > 0) sheet.setFrozenColumns(layout.frozenColumns);
  if (layout.role === 'data') warnBeforeChange(sheet);
}

/**
 * Lays the workbook out, or brings an older or edited one up to date. Every step looks first at what is there, so that a
 * run that was interrupted is simply done again.
 * @param given contents for tables, in place of what they hold
 * @returns what could not stay in its place
 */
export function layOut(layout: Layout, given: Grids): KeptItem[] {
  const book: Book = SpreadsheetApp.getActiveSpreadsheet();
  const kept: KeptItem[] = [];
  progress(book, 'Sheets');
  const { placed: sheets, all } = placeSheets(book, layout);
  progress(book, 'Tables');
  const tables = placeTables(book, layout, sheets, all, given, kept);
  progress(book, 'Results');
  const results = placeResults(book, layout, sheets, all, tables, kept);
  const parts = new Map(tables.map(({ table, place }) => [table, tableParts(table, place)]));
  const undressed = state.undressed();
  const packages = packagesIn(tables);
  const choices = new Choices([...parts.values()], layout.units);
  const rules = new BlockRules(packages);
  const grids = new Map(tables.map(({ table, place }) => [table.range, gridOf(place)]));
  const blocks = new Map(
    results.map((placed) => [placed, blockNow(placed.result, (range) => grids.get(range))]),
  );
  const blockOf = (placed: PlacedResult) => blocks.get(placed) ?? [];
  const looks = { ...state.looks() };
  for (const each of layout.sheets) {
    const view = sheets.get(each.name) as View;
    const isNew = looks[each.name] !== layout.version;
    const ownParts = each.tables.flatMap((table) => parts.get(table) ?? []);
    const ownResults = results.filter(({ result, view: at }) => each.results.includes(result) && at === view);
    progress(book, each.name);
    if (each.lines.length > 0) writeLines(view, each);
    else
      writeWords(
        view,
        each,
        ownResults,
        ownParts.map(({ place }) => place),
      );
    const toDress = ownParts.filter(({ table }) => isNew || undressed.includes(table.range));
    paint(toDress.flatMap(inputLooks));
    for (const dressed of toDress) offerChoices(dressed, choices);
    if (isNew) newLooks(view, each, ownParts, ownResults);
    if (ownResults.length > 0) contentLooks(view, ownResults, blockOf, packages, each.widths, rules);
    const drawn = results.filter(({ result }) => each.results.includes(result));
    drawCharts(view, drawn, blockOf, packages);
    looks[each.name] = layout.version;
    if (isNew) state.setLooks(looks);
  }
  if (undressed.length > 0) state.setUndressed([]);
  if (state.version() !== layout.version) state.setVersion(layout.version);
  book.setActiveSheet((sheets.get(layout.sheets[0]?.name ?? '') as View).sheet);
  return kept;
}
