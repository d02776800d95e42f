import { asQuotedTable } from '../../src/tables/asQuoted.ts';
import { tableNames } from '../../src/tables/catalogue.ts';
import { changesTable } from '../../src/tables/changes.ts';
import type { Fields } from '../../src/tables/field.ts';
import { inputTables } from '../../src/tables/inputTables.ts';
import type { Table } from '../../src/tables/table.ts';
import { testResultsTable } from '../../src/tables/testResults.ts';
import { weighingItemsTable } from '../../src/tables/weighingItems.ts';
import { weighingsTable } from '../../src/tables/weighings.ts';

const declared: readonly Table<Fields>[] = [
  ...Object.values(inputTables),
  weighingsTable,
  weighingItemsTable,
  changesTable,
  asQuotedTable,
  testResultsTable,
];

/** Every table of the workbook; the catalogue's in the order in which functions take them, then quote and builder's. */
export const everyTable = declared.map((table) => ({
  table,
  isBuilders: !tableNames.some((name) => name === table.name),
}));
