import { type Cell, isBlank, nameKey } from '../tables/cell.ts';
import type { FieldLayout, TableLayout } from '../workbook/layout.ts';
import { isFree, isOwn } from '../workbook/own.ts';
import type { Place, View } from './places.ts';

/** A sheet, and whether a cell already belongs to something that was found. */
export interface Searched {
  readonly view: View;
  readonly isTaken: (row: number, column: number) => boolean;
}

/** A header with fewer of the table's labels may be another's. */
const enoughShare = 0.5;

interface Match {
  readonly share: number;
  readonly searched: Searched;
  readonly row: number;
  readonly left: number;
  readonly right: number;
}

const keyOf = (cell: Cell) => (isBlank(cell) ? '' : nameKey(String(cell)));

/**
 * Stretches of a row that may be one header: a label that comes again, or a strange word behind an empty column, is
 * another table's. An empty column before a known label, and a strange one beside its neighbours, are a person's.
 */
function stretches(line: readonly string[], labels: ReadonlySet<string>): number[][] {
  const found: number[][] = [];
  let stretch: number[] = [];
  let isBehindGap = true;
  line.forEach((key, column) => {
    const isKnown = labels.has(key);
    const isOther = isKnown ? stretch.some((each) => line[each] === key) : key !== '' && isBehindGap;
    if (isOther) stretch = [];
    if (isKnown && stretch.push(column) === 1) found.push(stretch);
    isBehindGap = key === '';
  });
  return found;
}

/** Where in a row the table's header may stand, with the share of its labels that is there. */
function matchesIn(
  { shape }: TableLayout,
  labels: ReadonlySet<string>,
  searched: Searched,
  row: number,
): Match[] {
  const { view, isTaken } = searched;
  const line = (view.values[row] ?? []).map((cell, column) => (isTaken(row, column) ? '' : keyOf(cell)));
  if (shape === 'rows') {
    return stretches(line, labels).map((columns) => ({
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

/** The header's last column: headed columns follow each other; a table across has room before its note. */
function lastColumn({ shape }: TableLayout, line: readonly Cell[], right: number): number {
  let last = right;
  while (!isFree(line[last + 1])) last++;
  if (shape !== 'across') return last;
  const note = line.findIndex((cell, column) => column > last && keyOf(cell) === 'note');
  return note > last && line.slice(last + 1, note).every(isBlank) ? note : last;
}

/** The best match of a table's header in the sheets, as the place of the table; undefined where none is good enough. */
export function tableByHeader(
  table: TableLayout,
  fields: readonly FieldLayout[],
  sheets: readonly Searched[],
): Place | undefined {
  const labels = new Set(fields.map(({ label }) => nameKey(label)));
  const matches = sheets.flatMap((searched) =>
    searched.view.values.flatMap((_, row) => matchesIn(table, labels, searched, row)),
  );
  const best = matches.reduce<Match | undefined>(
    (first, match) => (match.share >= enoughShare && match.share > (first?.share ?? 0) ? match : first),
    undefined,
  );
  if (best === undefined) return undefined;
  const { row, left } = best;
  const { view } = best.searched;
  const right = lastColumn(table, view.values[row] ?? [], best.right);
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
