import { columnLetters } from '../../src/local/host/a1.ts';
import type { TableGrids } from '../../src/tables/catalogue.ts';
import type { Cell } from '../../src/tables/cell.ts';

/** A sheet of cells by their A1 reference. */
export type PlainSheet = Record<string, string>;

function placed(sheet: PlainSheet, rows: readonly (readonly Cell[])[], left: number): void {
  for (const [r, row] of rows.entries()) {
    for (const [c, cell] of row.entries()) {
      if (cell !== null && cell !== undefined && cell !== '')
        sheet[`${columnLetters(left + c)}${r + 1}`] = String(cell);
    }
  }
}

/**
 * The weights of the comparison as somebody would write them into a spreadsheet by hand: installed weight and arm, empty
 * weight and CG, useful load, payload with full fuel, fuel flow at 75 %. Far less than the comparison computes.
 */
export function plainFormulas(
  grids: TableGrids,
  packages: readonly string[],
): { sheet: PlainSheet; results: number } {
  const components = (grids.components ?? []).slice(2).filter((row) => row[9] === '' || row[9] === null);
  const rows = components.map((row) => {
    const arm = Number(row[4]);
    return [row[0], Number(row[3]), row[5] === 'firewall' ? 60 - arm : arm];
  }) as Cell[][];
  const sheet: PlainSheet = {};
  placed(sheet, rows, 0);
  const last = rows.length;
  packages.forEach((name, index) => {
    const column = columnLetters(6 + index);
    const put = (row: number, content: string) => {
      sheet[`${column}${row}`] = content;
    };
    put(1, name);
    put(2, `=SUMIFS($B$1:$B$${last},$A$1:$A$${last},${column}1)`);
    put(3, `=SUMPRODUCT(($A$1:$A$${last}=${column}1)*$B$1:$B$${last}*$C$1:$C$${last})`);
    put(4, `=${column}3/${column}2`);
    put(5, `=936+12+${column}2`);
    put(6, `=(936*126.5+12*104+${column}3)/${column}5`);
    put(7, `=2520-${column}5`);
    put(8, `=${column}7-42*6`);
    put(9, `=185*0.75*0.43/6`);
    put(10, `=42/${column}9-0.5`);
  });
  return { sheet, results: packages.length * 9 };
}
