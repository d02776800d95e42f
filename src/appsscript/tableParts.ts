import { type Cell, isBlank, nameKey } from '../tables/cell.ts';
import type { FieldLayout, TableLayout } from '../workbook/layout.ts';
import { headerRow } from '../workbook/tableSource.ts';
import { gridOf, type Place, part } from './places.ts';

/** A table's cells by what they are: columns and rows counted from 0 inside its place. */
export interface TableParts {
  readonly table: TableLayout;
  readonly place: Place;
  readonly grid: readonly (readonly Cell[])[];
  readonly header: number;
  /** The field of each column (a rows table) or of each row (a table of attributes). */
  readonly fields: readonly (FieldLayout | undefined)[];
  readonly labelColumn: number;
  readonly unitColumn: number;
  /** Columns that hold values of records. */
  readonly isValue: readonly boolean[];
}

export function tableParts(table: TableLayout, place: Place): TableParts {
  const grid = gridOf(place);
  const header = headerRow(table, grid);
  const head = (grid[header] ?? []).map((cell) => (isBlank(cell) ? '' : nameKey(String(cell))));
  const field = (cell: Cell) =>
    table.fields.find(({ label }) => !isBlank(cell) && nameKey(label) === nameKey(String(cell)));
  if (table.shape === 'rows') {
    const [perRecord] = table.perRecordOf;
    const fields = (grid[header] ?? []).map(
      (cell, c) => field(cell) ?? (c > 0 && !isBlank(cell) ? perRecord?.field : undefined),
    );
    return {
      table,
      place,
      grid,
      header,
      fields,
      labelColumn: -1,
      unitColumn: -1,
      isValue: head.map(() => true),
    };
  }
  const labelColumn = head.indexOf('attribute');
  const unitColumn = head.indexOf('unit');
  const isValue = head.map((name, c) =>
    table.shape === 'across' ? c !== labelColumn && c !== unitColumn && name !== 'note' : name === 'value',
  );
  const fields = grid.map((line, r) => (r > header ? field(line[labelColumn] ?? null) : undefined));
  return { table, place, grid, header, fields, labelColumn, unitColumn, isValue };
}

/** Consecutive indices for which something holds, as [first, count]. */
export function runs(flags: readonly boolean[]): [number, number][] {
  const found: [number, number][] = [];
  flags.forEach((flag, index) => {
    const last = found[found.length - 1];
    if (!flag) return;
    if (last && last[0] + last[1] === index) last[1]++;
    else found.push([index, 1]);
  });
  return found;
}

/** The cells that a person fills in: values, notes, names of records, and the units of what has one. */
export function inputPlaces(parts: TableParts): Place[] {
  const { table, place, grid, header, fields, labelColumn, unitColumn, isValue } = parts;
  if (table.shape === 'rows') {
    const units = runs(fields.map((field) => field?.unit !== undefined));
    return [
      ...units.map(([first, count]) => part(place, header + 1, first, 1, count)),
      part(place, header + 2, 0, place.rows - header - 2, place.columns),
    ];
  }
  const isFilled = isValue.map((_, c) => c !== labelColumn && c !== unitColumn);
  const labelled = runs(grid.map((line, r) => r > header && !isBlank(line[labelColumn])));
  const names = table.shape === 'across' ? runs(isValue) : [];
  return [
    ...names.map(([first, count]) => part(place, header, first, 1, count)),
    ...runs(isFilled).flatMap(([first, count]) =>
      labelled.map(([row, rows]) => part(place, row, first, rows, count)),
    ),
    ...runs(fields.map((field) => field?.unit !== undefined)).map(([row, rows]) =>
      part(place, row, unitColumn, rows, 1),
    ),
  ];
}
