/** A rectangle of cells with the same value, counted from 0. */
export interface Rectangle<T> {
  readonly value: T;
  readonly row: number;
  readonly rows: number;
  readonly column: number;
  readonly columns: number;
}

/** Cells with the same value in few rectangles: down the columns first, then equal columns side by side. */
export function rectangles<T>(matrix: readonly (readonly (T | undefined)[])[]): Rectangle<T>[] {
  const found: (Rectangle<T> & { columns: number })[] = [];
  const width = matrix[0]?.length ?? 0;
  for (let column = 0; column < width; column++) {
    const cells = matrix.map((line) => line[column]);
    for (let row = 0; row < cells.length; ) {
      const value = cells[row];
      let end = row + 1;
      while (end < cells.length && cells[end] === value) end++;
      const rows = end - row;
      const beside = found.find(
        (each) =>
          each.value === value &&
          each.row === row &&
          each.rows === rows &&
          each.column + each.columns === column,
      );
      if (beside) beside.columns++;
      else if (value !== undefined) found.push({ value, row, rows, column, columns: 1 });
      row = end;
    }
  }
  return found;
}
