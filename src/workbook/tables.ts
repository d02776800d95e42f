import { airframeTable } from '../tables/airframe.ts';
import { allowancesTable } from '../tables/allowances.ts';
import { asQuotedTable } from '../tables/asQuoted.ts';
import { changesTable } from '../tables/changes.ts';
import { componentsTable } from '../tables/components.ts';
import { coolingTable } from '../tables/cooling.ts';
import { envelopeTable } from '../tables/envelope.ts';
import { equipmentTable } from '../tables/equipment.ts';
import { quantity } from '../tables/field.ts';
import { fuelPointsTable } from '../tables/fuelPoints.ts';
import { knownPointsTable } from '../tables/knownPoints.ts';
import { loadingsTable } from '../tables/loadings.ts';
import { missionTable } from '../tables/mission.ts';
import { packagesTable } from '../tables/packages.ts';
import { powerPointsTable } from '../tables/powerPoints.ts';
import { quoteTable } from '../tables/quote.ts';
import { ratesTable } from '../tables/rates.ts';
import { stationsTable } from '../tables/stations.ts';
import { tanksTable } from '../tables/tanks.ts';
import { testResultsTable } from '../tables/testResults.ts';
import { weighingItemsTable } from '../tables/weighingItems.ts';
import { weighingsTable } from '../tables/weighings.ts';
import { largestPackageCount, type TableLayout } from './layout.ts';
import { fieldLayout, tableLayout } from './tableLayout.ts';

const ofPackages = { package: 'packages' } as const;
const weightThere = fieldLayout(quantity('mass', '', { help: 'weight there; 0 for nothing' }));
const fuelInIt = fieldLayout(quantity('volume', '', { help: 'fuel in it; 0 for none' }));

/** Every input table of the workbook. */
export const tableLayouts = {
  airframe: tableLayout(airframeTable, {
    title: 'The airframe: weights, limits, wing, gear',
    room: 0,
    names: { 'baseline package': 'packages', 'weighed with package': 'packages' },
  }),
  envelope: tableLayout(envelopeTable, { title: 'CG limits', room: 8 }),
  stations: tableLayout(stationsTable, { title: 'Seats and baggage', room: 8 }),
  loadings: tableLayout(loadingsTable([], []), {
    title: 'Loadings to check',
    room: 8,
    perRecordOf: [
      { table: 'stations', field: weightThere },
      { table: 'tanks', field: fuelInIt },
    ],
  }),
  tanks: tableLayout(tanksTable, { title: 'Fuel tanks', room: 4 }),
  packages: tableLayout(packagesTable, {
    title: 'The engine packages side by side',
    room: largestPackageCount,
  }),
  'fuel points': tableLayout(fuelPointsTable, {
    title: 'Fuel consumption at power settings',
    room: 20,
    names: ofPackages,
  }),
  'power points': tableLayout(powerPointsTable, {
    title: 'Power against altitude, from the maker',
    room: 20,
    names: ofPackages,
  }),
  cooling: tableLayout(coolingTable, { title: 'Cooling streams', room: 8, names: ofPackages }),
  'known points': tableLayout(knownPointsTable, {
    title: 'Measured flight of this airframe',
    room: 6,
    names: ofPackages,
  }),
  components: tableLayout(componentsTable, {
    title: 'What every package weighs, part by part',
    room: 40,
    names: { package: 'packages', basis: 'allowances' },
  }),
  equipment: tableLayout(equipmentTable, {
    title: 'Options of the airframe',
    room: 20,
    names: { basis: 'allowances' },
  }),
  allowances: tableLayout(allowancesTable, { title: 'How well a weight is known', room: 4 }),
  mission: tableLayout(missionTable, { title: 'The mission', room: 0 }),
  rates: tableLayout(ratesTable, { title: 'Prices and rates', room: 0 }),
  quote: tableLayout(quoteTable, { title: 'The terms of the quote', room: 0, names: ofPackages }),
  weighings: tableLayout(weighingsTable, { title: 'The aircraft on its scales', room: 12 }),
  'weighing items': tableLayout(weighingItemsTable, {
    title: 'Aboard and not part of it, or missing',
    room: 12,
  }),
  changes: tableLayout(changesTable, { title: 'In and out since it was weighed', room: 20 }),
  'as quoted': tableLayout(asQuotedTable, { title: 'What the quote promised', room: 0 }),
  'test results': tableLayout(testResultsTable, { title: 'What was measured', room: 30 }),
} as const satisfies Readonly<Record<string, TableLayout>>;
