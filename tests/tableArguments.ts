import { type TableGrids, tableNames } from '../src/tables/catalogue.ts';
import type { Cell, Grid } from '../src/tables/cell.ts';

/** The tables as every table function takes them, in their order; one that there is not is an empty cell. */
export const tableArguments = (grids: TableGrids): (Cell | Grid)[] => tableNames.map((name) => grids[name]);
