import { isBlank } from '../tables/cell.ts';
import type { Layout, SheetLayout } from '../workbook/layout.ts';
import { isOwn } from '../workbook/own.ts';
import { type Book, emptyView, type View, viewOf } from './places.ts';
import { state } from './state.ts';

const isEmpty = ({ values, formulas }: View) =>
  values.every((line) => line.every(isBlank)) && formulas.every((line) => line.every((text) => text === ''));

/** A sheet that an earlier run made: empty, or with the workbook's own words or one of its tables on it. */
function isOurs(view: View, layout: SheetLayout): boolean {
  if (isEmpty(view) || view.values.some((line) => line.some(isOwn))) return true;
  const ranges = new Set(layout.tables.map(({ range }) => range));
  return view.sheet.getNamedRanges().some((named) => ranges.has(named.getName()));
}

/** The sheet of that name if it is the workbook's, else the next free name: a person's own sheet is left alone. */
function ownSheetOrName(
  layout: SheetLayout,
  views: ReadonlyMap<string, View>,
  taken: readonly number[],
): View | string {
  for (let number = 1; ; number++) {
    const name = number === 1 ? layout.name : `${layout.name} ${number}`;
    const view = views.get(name);
    if (view === undefined) return name;
    if (!taken.includes(view.id) && isOurs(view, layout)) return view;
  }
}

/**
 * Finds every sheet of the layout, however it was renamed or moved, and makes the missing ones, each after the one before
 * it in reading order.
 * @returns by name in the layout; and all others of the workbook
 */
export function placeSheets(book: Book, layout: Layout): { placed: Map<string, View>; all: View[] } {
  const numbers = state.sheetNumbers();
  const existing = book.getSheets().map(viewOf);
  const [only] = existing;
  const first = layout.sheets[0]?.name ?? '';
  if (existing.length === 1 && only && Object.keys(numbers).length === 0 && isEmpty(only))
    only.sheet.setName(first);

  const byName = new Map(existing.map((view) => [view.sheet.getName(), view]));
  const order = [...existing];
  const placed = new Map<string, View>();
  let position = 0;
  for (const each of layout.sheets) {
    const known = existing.find(({ id }) => id === numbers[each.name]);
    const found = known ?? ownSheetOrName(each, byName, Object.values(numbers));
    const view = typeof found === 'string' ? emptyView(book.insertSheet(found, position)) : found;
    if (typeof found === 'string') order.splice(position, 0, view);
    placed.set(each.name, view);
    position = order.indexOf(view) + 1;
  }
  const ids = Object.fromEntries([...placed].map(([name, { id }]) => [name, id]));
  if (JSON.stringify(ids) !== JSON.stringify(numbers)) state.setSheetNumbers(ids);
  return { placed, all: order };
}
