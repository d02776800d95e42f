import { type Cell, type Grid, isBlank, isErrorText, nameKey } from '../tables/cell.ts';
import { type NumberLimits, type NumberOptions, parseNumber, type RowsArgument } from './argument.ts';
import { missing, mustBe } from './messages.ts';

const gridOf = (cells: Cell | Grid): Grid => (Array.isArray(cells) ? (cells as Grid) : [[cells as Cell]]);

/** One column of a rows argument: a number with its limits, or a text that names the row. */
interface RowColumn extends NumberLimits {
  readonly name: string;
  readonly text?: boolean;
}

type ColumnValues<C extends readonly RowColumn[]> = {
  readonly [K in keyof C]: C[K] extends { text: true } ? string : number;
};
/** The values of the columns, then the number of the row. */
type RowOf<C extends readonly RowColumn[]> = readonly [...ColumnValues<C>, row: number];

/** Records in the rows of a range: every column must be filled; empty rows are passed over. Names have no case. */
export function rows<const C extends readonly RowColumn[]>(
  name: string,
  columns: C,
  options: { help: string; check?: (records: readonly RowOf<C>[]) => void },
): RowsArgument<RowOf<C>[]> {
  const wanted = columns.map((column) => column.name).join(', ');
  return {
    type: 'rows',
    name,
    help: options.help,
    optional: false,
    omitted: '',
    columns: columns.map((column) => column.name),
    parse: (cells) => {
      const records = gridOf(cells).flatMap((row, index): RowOf<C>[] => {
        if (row.every(isBlank)) return [];
        const surplus = row.findIndex((cell, at) => at >= columns.length && !isBlank(cell));
        if (surplus >= 0) {
          throw mustBe(name, `rows of ${columns.length}: ${wanted}`, row[surplus], {
            row: index + 1,
            column: surplus + 1,
          });
        }
        const values = columns.map((column, at) => {
          const cell = row[at];
          const place = { row: index + 1, column: at + 1 };
          if (isBlank(cell)) throw mustBe(name, `rows of ${wanted}`, cell, place);
          if (!column.text) return parseNumber(`${name} ${column.name}`, column, cell, place);
          if (typeof cell !== 'string' || isErrorText(cell))
            throw mustBe(`${name} ${column.name}`, 'a name', cell, place);
          return nameKey(cell);
        });
        return [[...values, index + 1] as unknown as RowOf<C>];
      });
      if (records.length === 0) throw mustBe(name, `a range with rows of ${wanted}`, '');
      options.check?.(records);
      return records;
    },
  };
}

/** Refuses a range in which a value that tells rows apart stands twice. */
export function requireDistinct(
  name: string,
  keys: readonly (string | number)[],
  rowNumbers: readonly number[],
): void {
  keys.forEach((key, index) => {
    if (keys.indexOf(key) !== index)
      throw mustBe(name, 'another in every row', key, { row: rowNumbers[index] as number, column: 1 });
  });
}

/** Numbers of one kind in a range of any shape, row by row; every cell must be filled. */
export function list(name: string, options: NumberOptions): RowsArgument<number[]> {
  return {
    type: 'rows',
    name,
    help: options.help,
    optional: false,
    omitted: '',
    columns: [name],
    parse: (cells) => {
      return gridOf(cells).flatMap((row, r) =>
        row.map((cell, c) => {
          const place = { row: r + 1, column: c + 1 };
          if (isBlank(cell)) throw missing(name, place);
          return parseNumber(name, options, cell, place);
        }),
      );
    },
  };
}
