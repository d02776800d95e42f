/** Every cell of a set of tables with what is read from it. */
import { airframeTable } from '../../src/tables/airframe.ts';
import { allowancesTable } from '../../src/tables/allowances.ts';
import { asQuotedTable } from '../../src/tables/asQuoted.ts';
import { type Cell, isBlank, nameKey } from '../../src/tables/cell.ts';
import { changesTable } from '../../src/tables/changes.ts';
import { componentsTable } from '../../src/tables/components.ts';
import { coolingTable } from '../../src/tables/cooling.ts';
import { envelopeTable } from '../../src/tables/envelope.ts';
import { equipmentTable } from '../../src/tables/equipment.ts';
import type { Field, Fields } from '../../src/tables/field.ts';
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
import { type Grids, soundCatalogue, type Workbook } from './workbooks.ts';

const fixed: readonly Table<Fields>[] = [
  ...[airframeTable, envelopeTable, stationsTable, tanksTable, packagesTable, fuelPointsTable],
  ...[powerPointsTable, coolingTable, knownPointsTable, componentsTable, equipmentTable, allowancesTable],
  ...[missionTable, ratesTable, quoteTable, weighingsTable, weighingItemsTable, changesTable, asQuotedTable],
  testResultsTable,
] as unknown as readonly Table<Fields>[];

/** The declaration of a table; the loadings' follows from the stations and tanks beside it. */
function declarationOf(table: string, grids: Grids): Table<Fields> {
  if (table !== 'loadings') return fixed.find(({ name }) => name === table) as Table<Fields>;
  const { stations, tanks } = soundCatalogue(grids);
  return loadingsTable(stations, tanks) as Table<Fields>;
}

export const declaredFields = fixed.flatMap(({ name, fields }) =>
  Object.values(fields).map(({ label }) => `${name}: ${label}`),
);

/** One cell that a field reads its value from, or the unit of one. */
export interface Spot {
  readonly table: string;
  readonly unique: boolean;
  readonly shape: Table<Fields>['shape'];
  readonly field: Field<unknown>;
  /** what the cell is for its field; a unit that stands beside a value */
  readonly role: 'value' | 'unit' | 'label';
  readonly row: number;
  readonly column: number;
  /** where a fault of this cell is said to be */
  readonly at: { readonly row: number; readonly column: string };
  readonly cell: Cell;
}

const spotsOfRows = (table: Table<Fields>, grid: readonly (readonly Cell[])[]): Spot[] => {
  const header = grid[0] as readonly Cell[];
  return Object.values(table.fields).flatMap((field): Spot[] => {
    const column = header.findIndex((cell) => nameKey(String(cell)) === nameKey(field.label));
    if (column < 0) return [];
    const spot = (role: Spot['role'], row: number, at: string): Spot => ({
      ...{ table: table.name, unique: table.unique, shape: table.shape, field, role, row, column },
      at: { row: row + 1, column: at },
      cell: grid[row]?.[column],
    });
    const values = grid.flatMap((_, row) => (row > 1 ? [spot('value', row, field.label)] : []));
    return [spot('label', 0, 'column'), spot('unit', 1, `unit of ${field.label}`), ...values];
  });
};

const spotsOfAttributes = (table: Table<Fields>, grid: readonly (readonly Cell[])[]): Spot[] => {
  const header = (grid[0] as readonly Cell[]).map(String);
  const [nameAt, unitAt] = [header.indexOf('attribute'), header.indexOf('unit')];
  const noteAt = header.indexOf('note');
  return grid.flatMap((line, row): Spot[] => {
    const field = Object.values(table.fields).find(
      ({ label }) => nameKey(label) === nameKey(String(line[nameAt])),
    );
    if (field === undefined || row === 0) return [];
    const spot = (role: Spot['role'], column: number, at: string): Spot => ({
      ...{ table: table.name, unique: table.unique, shape: table.shape, field, role, row, column },
      at: { row: row + 1, column: at },
      cell: line[column],
    });
    const values = header.flatMap((name, column) =>
      [nameAt, unitAt, noteAt].includes(column) ? [] : [spot('value', column, name)],
    );
    return [spot('label', nameAt, 'attribute'), spot('unit', unitAt, 'unit'), ...values];
  });
};

/** Every cell of a workbook's tables that is read. */
export function spotsOf({ grids }: Pick<Workbook, 'grids'>): Spot[] {
  return Object.entries(grids).flatMap(([name, grid]) => {
    const table = declarationOf(name, grids);
    return table.shape === 'rows' ? spotsOfRows(table, grid) : spotsOfAttributes(table, grid);
  });
}

/** The tables with one cell another. */
export const withSpot = (grids: Grids, { table, row, column }: Spot, cell: Cell): Grids => ({
  ...grids,
  [table]: (grids[table] ?? []).map((line, r) => (r === row ? line.with(column, cell) : line)),
});

/** True where the unit of a spot has something to measure. */
export const isMeasured = (spot: Spot, all: readonly Spot[]) =>
  all.some(
    ({ role, table, row, column, field, cell }) =>
      role === 'value' &&
      table === spot.table &&
      field === spot.field &&
      (spot.shape === 'rows' ? column === spot.column : row === spot.row) &&
      !isBlank(cell),
  );
