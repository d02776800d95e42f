import { airframeTable } from './airframe.ts';
import { allowancesTable } from './allowances.ts';
import { tableNames } from './catalogue.ts';
import { componentsTable } from './components.ts';
import { coolingTable } from './cooling.ts';
import { envelopeTable } from './envelope.ts';
import { equipmentTable } from './equipment.ts';
import type { Fields } from './field.ts';
import { fuelPointsTable } from './fuelPoints.ts';
import { knownPointsTable } from './knownPoints.ts';
import { loadingsTable } from './loadings.ts';
import { missionTable } from './mission.ts';
import { packagesTable } from './packages.ts';
import { powerPointsTable } from './powerPoints.ts';
import { quoteTable } from './quote.ts';
import { ratesTable } from './rates.ts';
import { stationsTable } from './stations.ts';
import type { Table } from './table.ts';
import { tanksTable } from './tanks.ts';

/** Everything a quote is computed from: the tables of the catalogue, and the terms. */
export const inputNames = [...tableNames, 'quote'] as const;
export type InputName = (typeof inputNames)[number];

/** Their declarations; the loadings table without the columns that stations and tanks give it. */
export const inputTables: Readonly<Record<InputName, Table<Fields>>> = {
  airframe: airframeTable,
  envelope: envelopeTable,
  stations: stationsTable,
  loadings: loadingsTable([], []),
  tanks: tanksTable,
  packages: packagesTable,
  'fuel points': fuelPointsTable,
  'power points': powerPointsTable,
  cooling: coolingTable,
  'known points': knownPointsTable,
  components: componentsTable,
  equipment: equipmentTable,
  allowances: allowancesTable,
  mission: missionTable,
  rates: ratesTable,
  quote: quoteTable,
};
