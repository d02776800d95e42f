import type { TableGrids, TableName } from '../../src/tables/catalogue.ts';
import { type Cell, type Grid, isBlank } from '../../src/tables/cell.ts';

/** A rows table with as many rows: those it has, then light ones of their kind under numbered names. */
export function manyRows(grids: TableGrids, table: TableName, name: string, wanted: number): TableGrids {
  const [header = [], units = [], ...rows] = grids[table] as Grid;
  const at = (label: string) => header.indexOf(label);
  const kind = rows.find((row) => Number(row[at('weight')]) > 0 && isBlank(row[at('included in')])) ?? [];
  const more = Array.from({ length: Math.max(0, wanted - rows.length) }, (_, index) =>
    kind.map((cell, column): Cell => {
      if (column === at(name)) return `${name} ${index + 1}`;
      return column === at('weight') ? 0.01 : cell;
    }),
  );
  return { ...grids, [table]: [header, units, ...rows, ...more] };
}
