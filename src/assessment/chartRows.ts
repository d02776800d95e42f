import type { Cell } from '../tables/cell.ts';

/** Curves for one chart: x first, then one column for each curve's y; every curve in rows of its own. */
export function chartRows(curves: readonly (readonly (readonly [Cell, Cell])[])[]): Cell[][] {
  return curves.flatMap((points, index) =>
    points.map(([x, y]): Cell[] => [x, ...curves.map((_, column) => (column === index ? y : null))]),
  );
}
