import type { Cell } from '../tables/cell.ts';
import { type Fault, faultText } from '../tables/faults.ts';

/** Lines of faults that a block keeps room for: a longer list would run into the block below. */
const listed = 40;

/** How the block begins that stands in place of results. */
export const noResult = 'No result:';

/**
 * What stands in place of results while the tables have faults: one line of text each, with nothing beside it, so that
 * it can be read however narrow the block's columns are.
 */
export function faultsBlock(faults: readonly Fault[]): Cell[][] {
  const what = faults.length === 1 ? '1 fault' : `${faults.length} faults`;
  const rest = faults.length - listed;
  return [
    [`${noResult} ${what} in the tables. Correct what is listed here.`],
    ...faults.slice(0, listed).map((fault): Cell[] => [faultText(fault)]),
    ...(rest > 0 ? [[`and ${rest} more, which follow when these are corrected`]] : []),
  ];
}
