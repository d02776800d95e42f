import { type Cell, type Grid, isBlank } from '../tables/cell.ts';
import { type Argument, inUnit, type Measure, type NumberArgument, type ValueOf } from './argument.ts';
import { notFinite, oneColumn, type Place, refusal, shapeMismatch, tooManyArguments } from './messages.ts';

/** One number a function gives back: what it is, and its unit. */
export interface Result {
  readonly label: string;
  readonly measure?: Measure;
}

/** A custom function that works on numbers anywhere in any sheet. */
export interface Formula {
  readonly name: string;
  readonly help: string;
  readonly source: string;
  readonly arguments: readonly Argument[];
  readonly results: readonly Result[];
  readonly call: (cells: readonly (Cell | Grid)[]) => Cell | Cell[][];
}

type Values<A extends readonly Argument[]> = { [K in keyof A]: ValueOf<A[K]> };

interface Declaration<A extends readonly Argument[]> {
  name: string;
  help: string;
  source: string;
  arguments: A;
  results: readonly [Result, ...Result[]];
  compute: (...values: Values<A>) => number | readonly number[];
}

interface Shape {
  readonly rows: number;
  readonly columns: number;
}

const isGrid = (value: Cell | Grid): value is Grid => Array.isArray(value);

/** A one-cell range is that cell, a range without any is not given. */
function collapse(value: Cell | Grid): Cell | Grid {
  if (!isGrid(value) || value.length > 1) return value;
  const [row = []] = value;
  return row.length > 1 ? value : row[0];
}

/** The one shape of all ranges among the number arguments; undefined when all are single cells. */
function commonShape(args: readonly Argument[], cells: readonly (Cell | Grid)[]): Shape | undefined {
  let shape: Shape | undefined;
  args.forEach((argument, index) => {
    const value = cells[index];
    if (argument.type !== 'number' || !isGrid(value)) return;
    const found = { rows: value.length, columns: value[0]?.length ?? 0 };
    if (shape && (found.rows !== shape.rows || found.columns !== shape.columns)) {
      throw shapeMismatch(argument.name, found.rows, found.columns, `${shape.rows} by ${shape.columns}`);
    }
    shape = found;
  });
  return shape;
}

/**
 * Makes a custom function of a computation on SI numbers.
 * Every number argument takes a cell or a range; ranges have one shape, and the result has it too. A function with several
 * results gives a row of them, and takes columns only. An empty cell in a range gives an empty result.
 */
export function formula<const A extends readonly Argument[]>(declaration: Declaration<A>): Formula {
  const { name, compute, results } = declaration;
  const args: readonly Argument[] = declaration.arguments;

  function row(values: readonly unknown[]): number[] {
    const computed = compute(...(values as Values<A>));
    const numbers = typeof computed === 'number' ? [computed] : computed;
    return numbers.map((value, index) => {
      const result = results[index] as Result;
      const shown = inUnit(value, result.measure);
      if (!Number.isFinite(shown)) throw notFinite(result.label);
      return shown;
    });
  }

  function call(raw: readonly (Cell | Grid)[]): Cell | Cell[][] {
    try {
      if (raw.length > args.length) throw tooManyArguments(args.length, raw.length);
      const cells = args.map((argument, index) =>
        argument.type === 'rows' ? raw[index] : collapse(raw[index]),
      );
      const shape = commonShape(args, cells);
      const fixed = args.map((argument, index) =>
        argument.type === 'number' ? undefined : argument.parse(cells[index] as Cell & Grid),
      );
      const valuesAt = (place: Place | undefined): unknown[] | undefined => {
        const own = args.map((argument, index): Cell => {
          const value = cells[index];
          return isGrid(value) && argument.type === 'number' && place
            ? value[place.row - 1]?.[place.column - 1]
            : (value as Cell);
        });
        const gap = args.some(
          (argument, index) =>
            !argument.optional && isGrid(cells[index]) && argument.type === 'number' && isBlank(own[index]),
        );
        if (place && gap) return undefined;
        return args.map((argument, index) =>
          argument.type === 'number'
            ? (argument as NumberArgument<number>).parse(own[index], isGrid(cells[index]) ? place : undefined)
            : fixed[index],
        );
      };
      if (shape === undefined) {
        const numbers = row(valuesAt(undefined) as unknown[]);
        return results.length === 1 ? (numbers[0] as number) : [numbers];
      }
      if (results.length > 1 && shape.columns > 1) {
        const wide = args.find((argument, index) => argument.type === 'number' && isGrid(cells[index]));
        throw oneColumn(wide?.name ?? '', shape.columns);
      }
      return Array.from({ length: shape.rows }, (_, r) => {
        const line = Array.from({ length: shape.columns }, (_, c): Cell[] => {
          const place = { row: r + 1, column: c + 1 };
          const values = valuesAt(place);
          if (values === undefined) return results.map(() => null);
          try {
            return row(values);
          } catch (error) {
            throw refusal('', error, place);
          }
        });
        return line.flat();
      });
    } catch (error) {
      throw refusal(name, error instanceof Error ? error.message.replace(/^: /, '') : error);
    }
  }

  return { name, help: declaration.help, source: declaration.source, arguments: args, results, call };
}
