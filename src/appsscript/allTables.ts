import type { AllGrids } from '../assessment/adoptions.ts';
import { argumentOfTable } from '../functions/tableArguments.ts';
import { buildTables } from '../tables/build.ts';
import { tableNames } from '../tables/catalogue.ts';
import type { Cell, Grid } from '../tables/cell.ts';
import type { Book } from './places.ts';

/** All tables of the workbook but the terms of the quote, as they stand now. */
export function readAllTables(book: Book): AllGrids {
  const grids: Record<string, Grid> = {};
  for (const table of [...tableNames, ...buildTables]) {
    const range = book.getRangeByName(argumentOfTable(table));
    if (range !== null) grids[table] = range.getValues() as Cell[][];
  }
  return grids;
}
