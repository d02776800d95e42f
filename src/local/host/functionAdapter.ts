import { scriptValue } from './cellValue.ts';
import { dateFormat, isDate, serialFromDate } from './dates.ts';
import type { Arg, Engine, EvalContext, FunctionResultObject } from './engine.ts';
import type { Workbook } from './workbook.ts';

/** One custom function as the sheet's help shows it. */
export interface FunctionDescriptor {
  readonly name: string;
  readonly description: string;
  readonly arguments: readonly {
    readonly name: string;
    readonly description: string;
    readonly optional?: boolean;
  }[];
}

const category = 'Custom';

/**
 * Makes the script's functions known to the engine. The engine keeps one list for all its models; the function that is
 * called is the one of the workbook that calls it.
 */
export function registerFunctions(engine: Engine, functions: readonly FunctionDescriptor[]): void {
  const registry = engine.registries.functionRegistry;
  for (const { name, description, arguments: parameters } of functions) {
    const isOwn = !registry.contains(name) || registry.get(name).category === category;
    if (!isOwn) throw new Error(`${name} is a function of the spreadsheet itself`);
    registry.replace(name, {
      description,
      category,
      // Not declared as a range, an argument would be taken apart and the function called for each cell.
      args: parameters.map((parameter) =>
        engine.helpers.arg(
          `${parameter.name} (any, range<any>${parameter.optional ? ', optional' : ''})`,
          parameter.description,
        ),
      ),
      compute(this: EvalContext, ...values: Arg[]) {
        const { scope } = this.workbook as Workbook;
        return callFunction(engine, name, scope[name], values);
      },
    });
  }
}

/** What the cell shows when the function threw: the error, and its message on hover. */
function callFunction(
  engine: Engine,
  name: string,
  scriptFunction: unknown,
  values: readonly Arg[],
): FunctionResultObject | FunctionResultObject[][] {
  try {
    if (typeof scriptFunction !== 'function') throw new Error(`${name} is not defined by the script`);
    return cellResult(scriptFunction(...values.map((value) => scriptArgument(engine, value))));
  } catch (error) {
    const message: unknown = (error as { message?: unknown } | null)?.message;
    return { value: '#ERROR', message: String(message ?? error) };
  }
}

/** A range as rows (the engine has columns), a single cell as a scalar, an omitted argument as undefined. */
function scriptArgument(engine: Engine, value: Arg): unknown {
  if (value === undefined) return undefined;
  if (!Array.isArray(value)) return scriptValue(engine, value);
  const rows = transpose(value).map((row) => row.map((cell) => scriptValue(engine, cell)));
  return rows.length === 1 && rows[0]?.length === 1 ? rows[0][0] : rows;
}

/**
 * What a function returned as cells.
 * @throws Error for what Google could not put in a cell, or this engine would show as something else
 */
function cellResult(result: unknown): FunctionResultObject | FunctionResultObject[][] {
  if (!Array.isArray(result)) return cell(result, 'the result');
  const width: unknown = result[0]?.length;
  if (
    !result.every((row) => Array.isArray(row) && row.length === width && row.length > 0) ||
    width === undefined
  ) {
    throw new Error('the result must be a scalar or rows of equal length');
  }
  const rows: FunctionResultObject[][] = result.map((row: unknown[], rowIndex) =>
    Array.from(row, (value, column) =>
      cell(value, `row ${rowIndex + 1}, column ${column + 1} of the result`),
    ),
  );
  return transpose(rows);
}

function cell(value: unknown, place: string): FunctionResultObject {
  if (value === null) return { value: '' }; // the engine would show null as 0
  if (typeof value === 'string' || typeof value === 'boolean') return { value };
  if (typeof value === 'number' && Number.isFinite(value)) return { value };
  if (isDate(value)) return { value: serialFromDate(value), format: dateFormat(value) };
  const shown = typeof value === 'object' ? 'an object' : String(value);
  throw new Error(`${place} must be a finite number, text, true, false, a date or null, got ${shown}`);
}

function transpose<T>(matrix: readonly (readonly T[])[]): T[][] {
  return (matrix[0] ?? []).map((_, index) => matrix.map((line) => line[index] as T));
}
