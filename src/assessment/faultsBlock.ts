import type { Cell } from '../tables/cell.ts';
import type { Fault } from '../tables/faults.ts';

/** What stands in place of results while the tables have faults: all of them, with the place of each. */
export function faultsBlock(faults: readonly Fault[]): Cell[][] {
  const what = faults.length === 1 ? '1 fault' : `${faults.length} faults`;
  return [
    [`No result: ${what} in the tables. Correct what is listed here.`],
    ['Table', 'Row', 'Row name', 'Column', 'Got', 'Expected'],
    ...faults.map(({ table, row, rowName, column, got, expected }): Cell[] => [
      table,
      row ?? null,
      rowName,
      column,
      got,
      expected,
    ]),
  ];
}
