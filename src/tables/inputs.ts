import { type Cell, type Grid, isBlank, isDate, nameKey, plain } from './cell.ts';
import { FaultLog } from './faults.ts';
import { type InputName, inputNames, inputTables } from './inputTables.ts';
import { type Line, type Lines, linesOf } from './lines.ts';

export { type InputName, inputNames };
export type Inputs = Readonly<Partial<Record<InputName, Grid>>>;

/** One cell of the inputs, by names that survive sorting. */
export interface InputCell {
  readonly table: InputName;
  readonly row: string;
  readonly column: string;
  /** what it holds, in words; "TRUE" or "FALSE" for a tick box */
  readonly text: string;
  readonly unit: string;
  /** place in the table's range, counted from 0 */
  readonly at: { readonly row: number; readonly column: number };
}

const attribute = 'attribute';
const unit = 'unit';

/** A table's lines from its header on, or undefined where the range holds none. */
function linesIn(table: InputName, grid: Grid | undefined): Lines | undefined {
  const { shape, fields } = inputTables[table];
  const labels = shape === 'rows' ? Object.values(fields).map(({ label }) => label) : [attribute];
  return linesOf(table, grid, labels, Math.min(2, labels.length), new FaultLog());
}

/** Names that tell rows apart: of the key fields, or the attribute. */
function namingColumns(table: InputName, { columns }: Lines): number[] {
  const { shape, fields } = inputTables[table];
  const keys = Object.values(fields).filter(({ key }) => key);
  const labels = shape === 'rows' ? keys.map(({ label }) => label) : [attribute];
  return labels
    .map((label) => columns.get(nameKey(label)))
    .filter((index): index is number => index !== undefined);
}

function textOf(cell: Cell): string {
  if (isBlank(cell)) return '';
  if (isDate(cell)) return dateText(cell);
  if (typeof cell === 'boolean') return cell ? 'TRUE' : 'FALSE';
  return typeof cell === 'number' ? String(cell === 0 ? 0 : cell) : plain(String(cell));
}

/** A date among the inputs is a fault; as text it must stay one: it begins like an error's. */
const dateText = (date: Date) => `#DATE ${Number.isNaN(date.getTime()) ? '' : date.toISOString()}`.trim();

/** Row names, each once: a second row of the same name gets a number. */
function rowNames(lines: readonly Line[], naming: readonly number[]): string[] {
  const seen = new Map<string, number>();
  return lines.map(({ cells }) => {
    const name =
      naming
        .map((index) => textOf(cells[index]))
        .filter((text) => text !== '')
        .join(', ') || 'no name';
    const count = (seen.get(nameKey(name)) ?? 0) + 1;
    seen.set(nameKey(name), count);
    return count === 1 ? name : `${name} (${count})`;
  });
}

function cellsOfTable(table: InputName, grid: Grid | undefined): InputCell[] {
  const lines = linesIn(table, grid);
  if (lines === undefined) return [];
  const { header, body } = lines;
  const isRows = inputTables[table].shape === 'rows';
  const units = isRows ? body[0] : undefined;
  const unitAt = lines.columns.get(unit);
  const naming = namingColumns(table, lines);
  const records = isRows ? body.slice(1) : body;
  const names = rowNames(records, naming);
  const all: { line: Line; name: string }[] = [
    ...(units ? [{ line: units, name: unit }] : []),
    ...records.map((line, index) => ({ line, name: names[index] as string })),
  ];
  return all.flatMap(({ line, name }) =>
    header.cells.flatMap((head, column): InputCell[] => {
      const text = textOf(line.cells[column]);
      if (isBlank(head) || text === '' || (naming.includes(column) && line !== units)) return [];
      const ownUnit = isRows
        ? units?.cells[column]
        : unitAt === undefined || unitAt === column
          ? ''
          : line.cells[unitAt];
      return [
        {
          table,
          row: name,
          column: plain(String(head)),
          text,
          unit: line === units || nameKey(String(head)) === 'note' ? '' : textOf(ownUnit),
          at: { row: line.row - 1, column },
        },
      ];
    }),
  );
}

/**
 * Place of a cell in its table's range, counted from 0; it may be empty. Without a column, that of the row's name.
 * @returns undefined where the table has no such row or column
 */
export function inputPlace(
  inputs: Inputs,
  table: InputName,
  row: string,
  column?: string,
): InputCell['at'] | undefined {
  const lines = linesIn(table, inputs[table]);
  if (lines === undefined) return undefined;
  const naming = namingColumns(table, lines);
  const records = inputTables[table].shape === 'rows' ? lines.body.slice(1) : lines.body;
  const index = rowNames(records, naming).findIndex((name) => nameKey(name) === nameKey(row));
  const at = column === undefined ? naming[0] : lines.columns.get(nameKey(column));
  const line = records[index];
  return line === undefined || at === undefined ? undefined : { row: line.row - 1, column: at };
}

/** Every cell of the inputs that holds something, beside those that name its row. */
export function inputCells(inputs: Inputs): InputCell[] {
  return inputNames.flatMap((table) => cellsOfTable(table, inputs[table]));
}

/** A cell by its names, whatever their case. */
export const cellKey = ({ table, row, column }: Pick<InputCell, 'table' | 'row' | 'column'>) =>
  JSON.stringify([table, nameKey(row), nameKey(column)]);

/**
 * The inputs as one text, the same for the same cells however the rows are sorted and wherever the table stands: what a
 * digest is taken of.
 */
export function canonicalText(inputs: Inputs): string {
  return inputCells(inputs)
    .map((cell) => `${cellKey(cell)}: ${JSON.stringify(cell.text)}`)
    .sort()
    .join('\n');
}

const plainCell = (cell: Cell): Cell => (isBlank(cell) ? null : isDate(cell) ? dateText(cell) : cell);

/** The inputs where they stand, for what carries no dates. */
export function withoutDates(inputs: Inputs): Inputs {
  const grids: Partial<Record<InputName, Grid>> = {};
  for (const table of inputNames) {
    const grid = inputs[table];
    if (grid !== undefined) grids[table] = grid.map((row) => row.map(plainCell));
  }
  return grids;
}

/** The inputs as they are kept: from each header on, without empty rows, as text, numbers and tick boxes only. */
export function keptInputs(inputs: Inputs): Inputs {
  const kept: Partial<Record<InputName, Grid>> = {};
  for (const table of inputNames) {
    const lines = linesIn(table, inputs[table]);
    if (lines === undefined) continue;
    const rows = [lines.header, ...lines.body].map(({ cells }) => cells.map(plainCell));
    const width = Math.max(
      ...rows.map((row) => row.reduce<number>((last, cell, at) => (cell === null ? last : at + 1), 0)),
    );
    kept[table] = rows.map((row) => row.slice(0, width));
  }
  return kept;
}
