import { type Cell, type Grid, isBlank, nameKey } from '../tables/cell.ts';
import { type FieldLayout, largestPackageCount, type TableLayout } from './layout.ts';
import { own } from './own.ts';
import { type TableSource, tableSource } from './tableSource.ts';

/** The unit an empty table starts with, in the workbook's currency. */
export const startingUnit = ({ customaryUnit }: FieldLayout, currency: string) =>
  customaryUnit.replace(/^USD/, currency);

const blanks = (count: number): Cell[] => Array.from({ length: Math.max(0, count) }, () => null);

/** The table's own fields, and one for each record that gives it a column. */
export function fieldsOf(
  { fields, perRecordOf }: TableLayout,
  names: (table: TableLayout['table']) => readonly string[],
): FieldLayout[] {
  return [
    ...fields,
    ...perRecordOf.flatMap(({ table, field }) => names(table).map((label) => ({ ...field, label }))),
  ];
}

/** Columns of a source that are none of the table's: they are kept. */
function otherColumns(source: TableSource | undefined, labels: readonly string[]): number[] {
  const keys = new Set(labels.map(nameKey));
  return (source?.header ?? []).flatMap((cell, index) => {
    const isOwn = !isBlank(cell) && keys.has(nameKey(String(cell)));
    const isUsed = !isBlank(cell) || source?.body.some((line) => !isBlank(line[index]));
    return isOwn || !isUsed ? [] : [index];
  });
}

function rowsCells(
  table: TableLayout,
  fields: readonly FieldLayout[],
  source: TableSource | undefined,
  currency: string,
): Cell[][] {
  const others = otherColumns(
    source,
    fields.map(({ label }) => label),
  );
  const columns = [...fields.map(({ label }) => source?.column(label) ?? -1), ...others];
  const pick = (line: readonly Cell[]) => columns.map((index): Cell => line[index] ?? null);
  const units = fields.map((field, index): Cell => {
    const given = source?.units[columns[index] ?? -1];
    return isBlank(given) ? startingUnit(field, currency) || null : given;
  });
  return [
    [...fields.map(({ label }) => label), ...others.map((index) => source?.header[index] ?? null)],
    [...units, ...others.map((index) => source?.units[index] ?? null)],
    ...(source?.body ?? []).map(pick),
    ...Array.from({ length: table.room }, () => blanks(columns.length)),
  ];
}

/** Lines of the attributes in the table's order, then those that are none of its own. */
function attributeLines(fields: readonly FieldLayout[], source: TableSource | undefined) {
  const at = source?.column('attribute') ?? -1;
  const rest = new Set(source?.body ?? []);
  const own = fields.map((field) => {
    const line = [...rest].find((cells) => nameKey(String(cells[at] ?? '')) === nameKey(field.label));
    if (line) rest.delete(line);
    return { field, line: line ?? [] };
  });
  return { own, rest: [...rest] };
}

function attributeCells(table: TableLayout, source: TableSource | undefined, currency: string): Cell[][] {
  const isAcross = table.shape === 'across';
  const columnOf = (label: string) => source?.column(label) ?? -1;
  const own = isAcross ? ['attribute', 'unit', 'note'] : ['attribute', 'value', 'unit', 'note'];
  const others = otherColumns(source, own);
  const room = isAcross ? blanks(Math.max(2, largestPackageCount - others.length)) : [];
  const order = isAcross
    ? [columnOf('attribute'), columnOf('unit'), ...others, ...room.map(() => -1), columnOf('note')]
    : [columnOf('attribute'), columnOf('value'), columnOf('unit'), columnOf('note'), ...others];
  const names = others.map((index): Cell => source?.header[index] ?? null);
  const header = isAcross ? ['attribute', 'unit', ...names, ...room, 'note'] : [...own, ...names];
  const unitAt = isAcross ? 1 : 2;
  const { own: lines, rest } = attributeLines(table.fields, source);
  const pick = (line: readonly Cell[]) => order.map((index): Cell => line[index] ?? null);
  return [
    header,
    ...lines.map(({ field, line }) => {
      const cells = pick(line);
      cells[0] = field.label;
      if (isBlank(cells[unitAt])) cells[unitAt] = startingUnit(field, currency) || null;
      return cells;
    }),
    ...rest.map(pick),
  ];
}

/** The words above a table's header: its title, and below it what each column means. */
export function wordsAbove(
  table: TableLayout,
  fields: readonly FieldLayout[],
  header: readonly Cell[],
): Cell[][] {
  const help = (cell: Cell): Cell => {
    const field = fields.find(({ label }) => !isBlank(cell) && nameKey(label) === nameKey(String(cell)));
    return field === undefined ? null : own(field.help);
  };
  return [
    [own(table.title), ...blanks(header.length - 1)],
    table.shape === 'rows' ? header.map(help) : blanks(header.length),
  ];
}

/** A table's cells with what a grid holds of it: every value is kept, also of columns and rows the table does not know. */
export function tableCells(
  table: TableLayout,
  fields: readonly FieldLayout[],
  grid: Grid | undefined,
  currency: string,
): Cell[][] {
  const source = tableSource(table, grid);
  const body =
    table.shape === 'rows'
      ? rowsCells(table, fields, source, currency)
      : attributeCells(table, source, currency);
  const width = Math.max(...body.map((line) => line.length));
  const full = [...wordsAbove(table, fields, body[0] ?? []), ...body];
  return full.map((line) => [...line, ...blanks(width - line.length)]);
}
