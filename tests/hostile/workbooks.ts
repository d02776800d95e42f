/** Sets of tables in which every column and attribute is filled, and what reads them. */
import { type BuildGrids, buildTables, readBuild } from '../../src/tables/build.ts';
import { type Catalogue, readCatalogue, type TableGrids, tableNames } from '../../src/tables/catalogue.ts';
import { type Cell, isBlank } from '../../src/tables/cell.ts';
import type { Fault } from '../../src/tables/faults.ts';
import { readQuoteTerms } from '../../src/tables/quote.ts';
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
export const soundCatalogue = (grids: Grids) => readCatalogue(grids as TableGrids).catalogue as Catalogue;

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

/** What a reading says as one text: without the numbers of the rows, which a blank line moves, and without remarks. */
export const toldBy = (value: unknown): string =>
  JSON.stringify(value, (key, inner) => {
    if (key === 'row' || key === 'remarks') return undefined;
    if (inner instanceof Map) return [...inner];
    return typeof inner === 'number' && !Number.isFinite(inner) ? String(inner) : inner;
  });
