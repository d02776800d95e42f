/** The Godwit sample, its tables to be changed, and its assessment. */
import { type Comparison, compare } from '../../src/assessment/assess.ts';
import { readCatalogue, type TableGrids, type TableName } from '../../src/tables/catalogue.ts';
import type { Cell, Grid } from '../../src/tables/cell.ts';
import { sample } from '../sample.ts';

export type Row = readonly Cell[];

export const godwit = sample('godwit');
/** Without what flight is computed from: weights, balance, payload, fuel and prices stay. */
export const onTheGround: TableGrids = Object.fromEntries(
  Object.entries(godwit).filter(([table]) => !['known points', 'cooling', 'mission'].includes(table)),
);

export function assessed(grids: TableGrids): Comparison {
  const { catalogue, faults } = readCatalogue(grids);
  if (catalogue === undefined) throw new Error(faults.map((fault) => JSON.stringify(fault)).join('\n'));
  return compare(catalogue);
}
export const named = (comparison: Comparison, name: string) =>
  comparison.assessments.find((each) => each.package.name === name)!;
export const ground = assessed(onTheGround);

export const headers = (table: TableName) => onTheGround[table]![0] as readonly string[];
export const column = (table: TableName, header: string) => headers(table).indexOf(header);
/** The records of a table of rows: below the header and the row of units. */
export const records = (table: TableName): Row[] => onTheGround[table]!.slice(2) as Row[];
export const withRecords = (table: TableName, rows: readonly Row[], grids = onTheGround): TableGrids => ({
  ...grids,
  [table]: [...onTheGround[table]!.slice(0, 2), ...rows] as Grid,
});
export const withCell = (row: Row, at: number, cell: Cell): Row =>
  row.map((old, index) => (index === at ? cell : old));
