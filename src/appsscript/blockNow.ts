import { noResult } from '../assessment/faultsBlock.ts';
import { call } from '../functions/library.ts';
import type { Cell, Grid } from '../tables/cell.ts';
import type { ResultLayout } from '../workbook/layout.ts';

/**
 * What a block says now, computed here: a sheet that was just written may not have computed yet. Nothing while the tables
 * have faults, whose list wants no looks of its own.
 * @param gridOf what a named range holds; undefined where there is none
 */
export function blockNow(
  result: ResultLayout,
  gridOf: (range: string) => Grid | undefined,
): readonly (readonly Cell[])[] {
  try {
    const value = call(
      result.function,
      result.arguments.map((range) => gridOf(range) ?? null),
    );
    const block = Array.isArray(value) ? (value as Cell[][]) : [];
    return String(block[0]?.[0]).startsWith(noResult) ? [] : block;
  } catch {
    return []; // the cell itself says what is wrong
  }
}
