import { argumentOfTable } from '../functions/tableArguments.ts';
import type { Cell } from '../tables/cell.ts';
import { type InputName, type Inputs, inputNames } from '../tables/inputs.ts';
import type { Book, Range } from './places.ts';

/** The range that holds an input table, null where there is none. */
export const inputRange = (book: Book, table: InputName): Range | null =>
  book.getRangeByName(argumentOfTable(table));

/** All tables of the workbook as they stand now. */
export function readInputs(book: Book): Inputs {
  const inputs: Partial<Record<InputName, Cell[][]>> = {};
  for (const table of inputNames) {
    const range = inputRange(book, table);
    if (range !== null) inputs[table] = range.getValues() as Cell[][];
  }
  return inputs;
}
