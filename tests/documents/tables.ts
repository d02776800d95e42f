import { airframeTable } from '../../src/tables/airframe.ts';
import { allowancesTable } from '../../src/tables/allowances.ts';
import { asQuotedTable } from '../../src/tables/asQuoted.ts';
import { tableNames } from '../../src/tables/catalogue.ts';
import { changesTable } from '../../src/tables/changes.ts';
import { componentsTable } from '../../src/tables/components.ts';
import { coolingTable } from '../../src/tables/cooling.ts';
import { envelopeTable } from '../../src/tables/envelope.ts';
import { equipmentTable } from '../../src/tables/equipment.ts';
import type { Fields } from '../../src/tables/field.ts';
import { fuelPointsTable } from '../../src/tables/fuelPoints.ts';
import { knownPointsTable } from '../../src/tables/knownPoints.ts';
import { loadingsTable } from '../../src/tables/loadings.ts';
import { missionTable } from '../../src/tables/mission.ts';
import { packagesTable } from '../../src/tables/packages.ts';
import { powerPointsTable } from '../../src/tables/powerPoints.ts';
import { quoteTable } from '../../src/tables/quote.ts';
import { ratesTable } from '../../src/tables/rates.ts';
import { stationsTable } from '../../src/tables/stations.ts';
import type { Table } from '../../src/tables/table.ts';
import { tanksTable } from '../../src/tables/tanks.ts';
import { testResultsTable } from '../../src/tables/testResults.ts';
import { weighingItemsTable } from '../../src/tables/weighingItems.ts';
import { weighingsTable } from '../../src/tables/weighings.ts';

const declared: readonly Table<Fields>[] = [
  airframeTable,
  envelopeTable,
  stationsTable,
  loadingsTable([], []),
  tanksTable,
  packagesTable,
  fuelPointsTable,
  powerPointsTable,
  coolingTable,
  knownPointsTable,
  componentsTable,
  equipmentTable,
  allowancesTable,
  missionTable,
  ratesTable,
  quoteTable,
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
