import { type Cell, isBlank, nameKey } from '../tables/cell.ts';
import type { FieldLayout, TableLayout } from '../workbook/layout.ts';
import { isFree, isOwn } from '../workbook/own.ts';
import type { Place, View } from './places.ts';

/** A sheet, and whether a cell already belongs to something that was found. */
export interface Searched {
  readonly view: View;
  readonly isTaken: (row: number, column: number) => boolean;
}

/** A header with fewer of the table's labels may be another's; one label alone is a word like any other. */
const enoughShare = 0.5;
const enoughLabels = 2;

interface Match {
  readonly share: number;
  readonly searched: Searched;
  readonly row: number;
  readonly left: number;
  readonly right: number;
}

/** A cell as a label; the workbook's own words are none. */
const keyOf = (cell: Cell) => (isBlank(cell) || isOwn(cell) ? '' : nameKey(String(cell)));

/**
 * Stretches of a row that may be one header: a label that comes again, or another table's label behind an empty column,
 * is another table's. Empty columns before a known label, and strange ones, are a person's.
 */
function stretches(
  line: readonly string[],
  labels: ReadonlySet<string>,
  others: ReadonlySet<string>,
): number[][] {
  const found: number[][] = [];
  let stretch: number[] = [];
  let isBehindGap = true;
  line.forEach((key, column) => {
    const isKnown = labels.has(key);
    const isOther = isKnown ? stretch.some((each) => line[each] === key) : isBehindGap && others.has(key);
    if (isOther) stretch = [];
    if (isKnown && stretch.push(column) === 1) found.push(stretch);
    isBehindGap = key === '';
  });
  return found;
}

/** A row as labels, without what belongs to something that was found. */
const keysOf = ({ view, isTaken }: Searched, row: number) =>
  (view.values[row] ?? []).map((cell, column) => (isTaken(row, column) ? '' : keyOf(cell)));

/** Where in a row the table's header may stand, with the share of its labels that is there. */
function matchesIn(
  { shape }: TableLayout,
  labels: ReadonlySet<string>,
  others: ReadonlySet<string>,
  searched: Searched,
  row: number,
): Match[] {
  const { view } = searched;
  const line = keysOf(searched, row);
  if (shape === 'rows') {
    return stretches(line, labels, others)
      .filter((columns) => columns.length >= enoughLabels)
      .map((columns) => ({
        share: columns.length / labels.size,
        searched,
        row,
        left: columns[0] as number,
        right: columns[columns.length - 1] as number,
      }));
  }
  const words = shape === 'attributes' ? ['value', 'unit'] : ['unit'];
  return line.flatMap((key, left): Match[] => {
    const right = Math.max(...words.map((word) => line.indexOf(word, left)));
    if (key !== 'attribute' || right < 0) return [];
    const below = new Set(view.values.slice(row + 1).map((cells) => keyOf(cells[left])));
    const share = [...labels].filter((label) => below.has(label)).length / labels.size;
    return [{ share, searched, row, left, right }];
  });
}

/**
 * The header's last column: headed columns follow each other. A table of attributes goes as far as its note, whatever
 * columns stand before it, unless another table begins first.
 */
function lastColumn(
  { shape }: TableLayout,
  { searched, row, right }: Match,
  others: ReadonlySet<string>,
): number {
  const line = searched.view.values[row] ?? [];
  let last = right;
  while (!isFree(line[last + 1])) last++;
  if (shape === 'rows') return last;
  const keys = keysOf(searched, row);
  const other = keys.findIndex(
    (key, column) => column > last && (searched.isTaken(row, column) || others.has(key)),
  );
  return Math.max(last, keys.lastIndexOf('note', other < 0 ? keys.length : other));
}

const keysOfLabels = (fields: readonly FieldLayout[]) => new Set(fields.map(({ label }) => nameKey(label)));

/**
 * The best match of a table's header in the sheets, as the place of the table; undefined where none is good enough.
 * @param allFields those of every table, by which another table's header is known
 */
export function tableByHeader(
  table: TableLayout,
  fields: readonly FieldLayout[],
  allFields: readonly FieldLayout[],
  sheets: readonly Searched[],
): Place | undefined {
  const labels = keysOfLabels(fields);
  const others = new Set(['attribute', ...keysOfLabels(allFields)]);
  for (const label of labels) others.delete(label);
  const matches = sheets.flatMap((searched) =>
    searched.view.values.flatMap((_, row) => matchesIn(table, labels, others, searched, row)),
  );
  const best = matches.reduce<Match | undefined>(
    (first, match) => (match.share >= enoughShare && match.share > (first?.share ?? 0) ? match : first),
    undefined,
  );
  if (best === undefined) return undefined;
  const { row, left } = best;
  const { view } = best.searched;
  const right = lastColumn(table, best, others);
  const own = (cells: readonly Cell[]) => cells.slice(left, right + 1);
  let bottom = row;
  for (let next = row + 1; next < view.values.length; next++) {
    const cells = own(view.values[next] ?? []);
    if (isOwn(cells[0])) break;
    if (!cells.every(isBlank)) bottom = next;
  }
  const isBelowOwnWords = view.values.slice(0, row).every((cells) => own(cells).every(isFree));
  const top = isBelowOwnWords ? 0 : row;
  return { view, row: top + 1, column: left + 1, rows: bottom - top + 1, columns: right - left + 1 };
}
