import type { Cell, Grid } from '../../../src/tables/cell.ts';

/** A call as it stands in a cell, and what it should give, worked by hand beside it. */
export interface Example {
  readonly cells: readonly (Cell | Grid)[];
  readonly expected: number | readonly number[];
  /** how far the result may be off: the rounding of the source or of the working */
  readonly within: number;
}

export const example = (
  cells: readonly (Cell | Grid)[],
  expected: number | readonly number[],
  within: number,
): Example => ({ cells, expected, within });

/** Examples of formula functions by their names. */
export type Examples = Readonly<Record<string, readonly Example[]>>;
