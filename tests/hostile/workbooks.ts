/** Sets of tables in which every column and attribute is filled, and each of their cells with what is read from it. */
import { airframeTable } from '../../src/tables/airframe.ts';
import { allowancesTable } from '../../src/tables/allowances.ts';
import { asQuotedTable } from '../../src/tables/asQuoted.ts';
import { type BuildGrids, buildTables, readBuild } from '../../src/tables/build.ts';
import { type Catalogue, readCatalogue, type TableGrids, tableNames } from '../../src/tables/catalogue.ts';
import { type Cell, isBlank, nameKey } from '../../src/tables/cell.ts';
import { changesTable } from '../../src/tables/changes.ts';
import { componentsTable } from '../../src/tables/components.ts';
import { coolingTable } from '../../src/tables/cooling.ts';
import { envelopeTable } from '../../src/tables/envelope.ts';
import { equipmentTable } from '../../src/tables/equipment.ts';
import type { Fault } from '../../src/tables/faults.ts';
import type { Field, Fields } from '../../src/tables/field.ts';
import { fuelPointsTable } from '../../src/tables/fuelPoints.ts';
import { knownPointsTable } from '../../src/tables/knownPoints.ts';
import { loadingsTable } from '../../src/tables/loadings.ts';
import { missionTable } from '../../src/tables/mission.ts';
import { packagesTable } from '../../src/tables/packages.ts';
import { powerPointsTable } from '../../src/tables/powerPoints.ts';
import { quoteTable, readQuoteTerms } from '../../src/tables/quote.ts';
import { ratesTable } from '../../src/tables/rates.ts';
import { stationsTable } from '../../src/tables/stations.ts';
import type { Table } from '../../src/tables/table.ts';
import { tanksTable } from '../../src/tables/tanks.ts';
import { testResultsTable } from '../../src/tables/testResults.ts';
import { weighingItemsTable } from '../../src/tables/weighingItems.ts';
import { weighingsTable } from '../../src/tables/weighings.ts';
import { sample } from '../sample.ts';
import { smallWorkbook } from '../tables/smallWorkbook.ts';

export type Grids = Readonly<Record<string, readonly (readonly Cell[])[]>>;

export interface Reading {
  readonly value: unknown;
  readonly faults: readonly Fault[];
}

/** A set of tables and what reads them. */
export interface Workbook {
  readonly name: string;
  readonly grids: Grids;
  readonly read: (grids: Grids) => Reading;
}

const named = (all: Grids, names: readonly string[]): Grids =>
  Object.fromEntries(Object.entries(all).filter(([table]) => names.includes(table)));

const ofCatalogue = (grids: Grids): Reading => {
  const { catalogue, faults } = readCatalogue(grids as TableGrids);
  return { value: catalogue, faults };
};
const soundCatalogue = (grids: Grids) => readCatalogue(grids as TableGrids).catalogue as Catalogue;

/** The Wren with the fields that no sample fills. */
function wren(): Grids {
  const { airframe, packages, 'known points': flown, ...others } = smallWorkbook();
  return {
    ...others,
    airframe: [
      ...airframe,
      ['empty weight known to', 3, 'lb', ''],
      ['empty CG known to', 0.2, 'in', ''],
      ['Oswald efficiency', 0.7, '', ''],
      ['propeller efficiency standing', 0.45, '', ''],
      ['propeller efficiency climb', 0.75, '', ''],
      ['propeller efficiency cruise', 0.8, '', ''],
      ['takeoff flap drag', 0.01, '', ''],
    ],
    packages: [...packages, ['power temperature exponent', '', 0.5, 0.6]],
    'known points': [
      ...flown.map((line, row) => [
        ...line,
        ...([
          ['rate of climb', 'ground roll'],
          ['ft/min', 'ft'],
        ][row] ?? ['', '']),
      ]),
      ['Ash', 'climb', 110, 1550, 3000, 12, 80, 700, ''],
      ['Ash', 'takeoff roll', 118, 1550, 100, 15, '', '', 900],
    ],
  };
}

/** The Godwit's builder's tables with a test that nobody has flown. */
function builders(): Grids {
  const { 'test results': results = [], ...others } = named(asBuilt, buildTables);
  const header = results[0] ?? [];
  const line = header.map(
    (label) => ({ test: 'static rpm', date: '2026-06-20', rpm: 2300 })[String(label)] ?? '',
  );
  return { ...others, 'test results': [...results, line] };
}

const godwit = sample('godwit') as Grids;
const asBuilt = sample('godwit-as-built') as Grids;
const builtCatalogue = soundCatalogue(asBuilt);
const wrenCatalogue = soundCatalogue(smallWorkbook());

const terms: Grids = {
  quote: [
    ['attribute', 'value', 'unit', 'note'],
    ['package', 'Ash', '', ''],
    ['customer', 'A. Buyer', '', ''],
    ['customer street', '1 Lane', '', ''],
    ['customer town', 'Town', '', ''],
    ['customer contact', 'by letter', '', ''],
    ['dealer', 'Firm', '', ''],
    ['dealer street', '2 Lane', '', ''],
    ['dealer town', 'City', '', ''],
    ['dealer contact', 'by bell', '', ''],
    ['prepared by', 'B. Seller', '', ''],
    ['valid for', 45, 'days', ''],
    ['discount', 250, 'USD', ''],
    ['discount for', 'the show', '', ''],
    ['payment 1', 30, '%', ''],
    ['payment 1 due', 'with the order', '', ''],
    ['payment 2', 40, '%', ''],
    ['payment 2 due', 'ready to ship', '', ''],
    ['payment 3', 20, '%', ''],
    ['payment 3 due', 'on delivery', '', ''],
    ['delivery', 'ex works', '', ''],
    ['remark', 'none', '', ''],
  ],
};

export const workbooks: readonly Workbook[] = [
  { name: 'Wren', grids: wren(), read: ofCatalogue },
  { name: 'Godwit', grids: named(godwit, tableNames), read: ofCatalogue },
  {
    name: 'Godwit as built',
    grids: builders(),
    read: (grids) => {
      const { build, faults } = readBuild(grids as BuildGrids, builtCatalogue);
      return { value: build, faults };
    },
  },
  {
    name: 'quote of the Wren',
    grids: terms,
    read: (grids) => {
      const { terms: read, faults } = readQuoteTerms(grids.quote, wrenCatalogue);
      return { value: read, faults };
    },
  },
];

/** All tables that any function takes: the Wren's, and the builder's of another aircraft with the Wren's tank. */
export const everyTable: Grids = {
  ...wren(),
  ...terms,
  ...Object.fromEntries(
    Object.entries(builders()).map(([table, grid]) => {
      const tankAt = table === 'test results' ? (grid[0] ?? []).indexOf('tank') : -1;
      return [
        table,
        grid.map((line, row) => (row > 1 && !isBlank(line[tankAt]) ? line.with(tankAt, 'main tank') : line)),
      ];
    }),
  ),
};

/** The table that an argument of a table function takes. */
export const tableOf = (argument: string) =>
  [...tableNames, ...buildTables, 'quote'].find((each) => each.replace(/ /g, '_') === argument);

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

/** What a reading says as one text: without the numbers of the rows, which a blank line moves, and without remarks. */
export const toldBy = (value: unknown): string =>
  JSON.stringify(value, (key, inner) => {
    if (key === 'row' || key === 'remarks') return undefined;
    if (inner instanceof Map) return [...inner];
    return typeof inner === 'number' && !Number.isFinite(inner) ? String(inner) : inner;
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
