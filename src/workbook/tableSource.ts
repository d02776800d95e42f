import { type Cell, type Grid, isBlank, nameKey, plain } from '../tables/cell.ts';
import type { FieldLayout, TableLayout } from './layout.ts';
import { isFree } from './own.ts';

/** What a grid holds of a table, found by its header wherever that stands. */
export interface TableSource {
  readonly header: readonly Cell[];
  /** The units of a rows table. */
  readonly units: readonly Cell[];
  /** Lines below the header (and below the units), the empty ones left out. */
  readonly body: readonly (readonly Cell[])[];
  /** Column of a header, -1 where it has none. */
  readonly column: (label: string) => number;
}

const filled = (cells: readonly Cell[]) => cells.some((cell) => !isBlank(cell));

/** The words by which a table's header is known: two of them make it one. */
export function headerWords({ shape, fields }: TableLayout): readonly string[] {
  if (shape === 'rows') return fields.map(({ label }) => label);
  return shape === 'attributes' ? ['attribute', 'value', 'unit'] : ['attribute', 'unit'];
}

/** Index of the row that is the table's header, -1 where there is none. */
export function headerRow(table: TableLayout, grid: Grid): number {
  const words = new Set(headerWords(table).map(nameKey));
  const known = (cells: readonly Cell[]) =>
    cells.filter((cell) => typeof cell === 'string' && words.has(nameKey(cell))).length;
  return grid.findIndex((cells) => known(cells) >= Math.min(2, words.size));
}

/** @returns undefined where the grid does not hold the table's header */
export function tableSource(table: TableLayout, grid: Grid | undefined): TableSource | undefined {
  const at = grid === undefined ? -1 : headerRow(table, grid);
  if (grid === undefined || at < 0) return undefined;
  const header = grid[at] ?? [];
  const lines = grid.slice(at + 1).filter(filled);
  const keys = header.map((cell) => (isBlank(cell) ? '' : nameKey(String(cell))));
  const isRows = table.shape === 'rows';
  return {
    header,
    units: isRows ? (lines[0] ?? []) : [],
    body: isRows ? lines.slice(1) : lines,
    column: (label) => keys.indexOf(nameKey(label)),
  };
}

/** Names in the first column of a rows table, or the record columns of a table across, each once. */
export function recordNames(table: TableLayout, grid: Grid | undefined): string[] {
  const source = tableSource(table, grid);
  if (source === undefined) return [];
  const own = ['attribute', 'unit', 'note'];
  const cells =
    table.shape === 'across'
      ? source.header.filter((cell) => !isBlank(cell) && !own.includes(nameKey(String(cell))))
      : source.body.map((line) => line[source.column(table.fields[0]?.label ?? '')]);
  return [...new Set(cells.filter((cell) => !isBlank(cell)).map((cell) => plain(String(cell))))];
}

/** True where a person has put something into a table: more than its labels and units. */
export function holdsInputs(table: TableLayout, grid: Grid): boolean {
  const source = tableSource(table, grid);
  if (source === undefined) return grid.some((line) => line.some((cell) => !isFree(cell)));
  const labels = [source.column('attribute'), source.column('unit')];
  const isLabel = (column: number) => table.shape !== 'rows' && labels.includes(column);
  return source.body.some((line) => line.some((cell, column) => !isLabel(column) && !isBlank(cell)));
}

/** The currency a table names, undefined where it names none. */
export function currencyOf(table: TableLayout, grid: Grid | undefined): string | undefined {
  const source = tableSource(table, grid);
  if (source === undefined) return undefined;
  const unitAt = source.column('unit');
  const labelAt = source.column('attribute');
  const unitCell = ({ label }: FieldLayout): Cell =>
    table.shape === 'rows'
      ? source.units[source.column(label)]
      : source.body.find((line) => nameKey(String(line[labelAt] ?? '')) === nameKey(label))?.[unitAt];
  const codes = table.fields
    .filter(({ unit }) => unit?.startsWith('currency'))
    .map((field) => /^[A-Z]{3}/.exec(plain(String(unitCell(field) ?? '')))?.[0]);
  return codes.find((code) => code !== undefined);
}
