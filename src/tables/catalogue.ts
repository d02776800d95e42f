import { type Airframe, airframeTable } from './airframe.ts';
import { type Allowance, allowancesTable, customaryAllowances } from './allowances.ts';
import type { Grid } from './cell.ts';
import { type Component, componentsTable } from './components.ts';
import { type CoolingStreamRow, coolingTable } from './cooling.ts';
import { crossCheck } from './crossCheck.ts';
import { type EnvelopePoint, envelopeTable } from './envelope.ts';
import { type Equipment, equipmentTable } from './equipment.ts';
import { type Fault, FaultLog, type Remark } from './faults.ts';
import { type FuelPoint, fuelPointsTable } from './fuelPoints.ts';
import { type KnownPoint, knownPointsTable } from './knownPoints.ts';
import { type Loading, readLoadings } from './loadings.ts';
import { type Mission, missionTable } from './mission.ts';
import { type Package, packagesTable } from './packages.ts';
import { type PowerPoint, powerPointsTable } from './powerPoints.ts';
import { type Rates, ratesTable } from './rates.ts';
import { readAcross, readAttributes } from './readAttributes.ts';
import { readRows } from './readRows.ts';
import { type Station, stationsTable } from './stations.ts';
import { type Tank, tanksTable } from './tanks.ts';

/** The tables in the order in which the table functions take them. */
export const tableNames = [
  'airframe',
  'envelope',
  'stations',
  'loadings',
  'tanks',
  'packages',
  'fuel points',
  'power points',
  'cooling',
  'known points',
  'components',
  'equipment',
  'allowances',
  'mission',
  'rates',
] as const;

export type TableName = (typeof tableNames)[number];
export type TableGrids = Readonly<Partial<Record<TableName, Grid>>>;

/** Everything the tables say, typed and in SI. */
export interface Catalogue {
  readonly airframe: Airframe;
  readonly envelope: readonly EnvelopePoint[];
  readonly stations: readonly Station[];
  readonly loadings: readonly Loading[];
  readonly tanks: readonly Tank[];
  readonly packages: readonly Package[];
  readonly fuelPoints: readonly FuelPoint[];
  readonly powerPoints: readonly PowerPoint[];
  readonly cooling: readonly CoolingStreamRow[];
  readonly knownPoints: readonly KnownPoint[];
  readonly components: readonly Component[];
  readonly equipment: readonly Equipment[];
  readonly allowances: readonly Omit<Allowance, 'row' | 'defaulted'>[];
  readonly allowancesDefaulted: boolean;
  readonly mission: Mission;
  readonly rates: Rates;
  readonly currency: string;
  readonly remarks: readonly Remark[];
}

export type CatalogueReading =
  | { readonly catalogue: Catalogue; readonly faults: readonly [] }
  | { readonly catalogue: undefined; readonly faults: readonly Fault[] };

/** Reads all tables and checks them against each other; either everything is sound or every fault is returned. */
export function readCatalogue(grids: TableGrids): CatalogueReading {
  const log = new FaultLog();
  const stations = readRows(stationsTable, grids.stations, log);
  const tanks = readRows(tanksTable, grids.tanks, log);
  const allowances = readRows(allowancesTable, grids.allowances, log);
  const tables = {
    airframe: readAttributes(airframeTable, grids.airframe, log),
    envelope: readRows(envelopeTable, grids.envelope, log),
    stations,
    loadings: readLoadings(grids.loadings, stations, tanks, log),
    tanks,
    packages: readAcross(packagesTable, grids.packages, log),
    fuelPoints: readRows(fuelPointsTable, grids['fuel points'], log),
    powerPoints: readRows(powerPointsTable, grids['power points'], log),
    cooling: readRows(coolingTable, grids.cooling, log),
    knownPoints: readRows(knownPointsTable, grids['known points'], log),
    components: readRows(componentsTable, grids.components, log),
    equipment: readRows(equipmentTable, grids.equipment, log),
    allowances: allowances.length > 0 ? allowances : customaryAllowances,
    allowancesDefaulted: allowances.length === 0,
    mission: readAttributes(missionTable, grids.mission, log),
    rates: readAttributes(ratesTable, grids.rates, log),
    currency: log.settleCurrency() ?? 'USD',
    remarks: log.remarks,
  };
  crossCheck(tables, log);
  return log.faults.length > 0
    ? { catalogue: undefined, faults: log.faults }
    : { catalogue: tables, faults: [] };
}
