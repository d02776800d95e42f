import { type Comparison, compare } from '../../src/assessment/assess.ts';
import type { Context } from '../../src/assessment/context.ts';
import { type Cooled, flyingPackages, withCooling } from '../../src/assessment/flying.ts';
import {
  type Catalogue,
  readCatalogue,
  type TableGrids,
  type TableName,
} from '../../src/tables/catalogue.ts';
import type { Cell, Grid } from '../../src/tables/cell.ts';
import { faultText } from '../../src/tables/faults.ts';

export function catalogueOf(grids: TableGrids): Catalogue {
  const { catalogue, faults } = readCatalogue(grids);
  if (catalogue === undefined) throw new Error(faults.map(faultText).join('\n'));
  return catalogue;
}

export const comparisonOf = (grids: TableGrids): Comparison => compare(catalogueOf(grids));

/** Every package with its flight and its cooling, by name. */
export function cooledPackages(grids: TableGrids): { context: Context; of: (name: string) => Cooled } {
  const { context, flying } = flyingPackages(catalogueOf(grids), undefined);
  const cooled = withCooling(context, flying);
  return {
    context,
    of: (name) => {
      const found = cooled.find((each) => each.package.name === name);
      if (found === undefined) throw new Error(`no package ${name}`);
      return found;
    },
  };
}

export function flightOf(grids: TableGrids, name: string) {
  const { flight } = cooledPackages(grids).of(name);
  if (flight === undefined) throw new Error(`${name} has no flight`);
  return flight;
}

const gridOf = (grids: TableGrids, table: TableName): Grid => {
  const grid = grids[table];
  if (grid === undefined) throw new Error(`no table ${table}`);
  return grid;
};

/** An attribute with another value: in the column `value`, or in that of a package. */
export function withAttribute(
  grids: TableGrids,
  table: TableName,
  attribute: string,
  value: Cell,
  unit?: string,
  column = 'value',
): TableGrids {
  const grid = gridOf(grids, table);
  const header = grid[0] as readonly Cell[];
  const at = header.indexOf(column);
  const unitAt = header.indexOf('unit');
  const own = grid.find((row) => row[0] === attribute) ?? [attribute];
  const changed = header.map((_, index) => {
    if (index === at) return value;
    return index === unitAt && unit !== undefined ? unit : (own[index] ?? null);
  });
  const others = grid.filter((row) => row[0] !== attribute);
  return { ...grids, [table]: [...others, changed] };
}

/** A table of rows with other cells in the rows that `picks` names by their first cells. */
export function withCells(
  grids: TableGrids,
  table: TableName,
  picks: readonly Cell[],
  cells: Readonly<Record<string, Cell>>,
): TableGrids {
  const grid = gridOf(grids, table);
  const header = grid[0] as readonly Cell[];
  const rows = grid.map((row, index) =>
    index > 1 && picks.every((pick, at) => row[at] === pick)
      ? row.map((cell, at) => (String(header[at]) in cells ? cells[String(header[at])] : cell))
      : row,
  );
  return { ...grids, [table]: rows };
}

export const withRows = (grids: TableGrids, table: TableName, ...rows: Cell[][]): TableGrids => ({
  ...grids,
  [table]: [...(grids[table] ?? []), ...rows],
});

/**
 * An invented aircraft with round numbers and no cooling, whose figures are worked in the tests by hand: 1,000 kg, 15 m²,
 * span 10 m, 110 kW, constant-speed propeller of 1.9 m; known to fly 60 m/s level at sea level on 100 kW.
 */
export const plainAircraft: TableGrids = {
  airframe: [
    ['attribute', 'value', 'unit'],
    ['airframe', 'Turnstone', ''],
    ['firewall arm', 1.2, 'm'],
    ['empty weight', 500, 'kg'],
    ['empty CG', 2.2, 'm'],
    ['maximum takeoff weight', 1000, 'kg'],
    ['wing area', 15, 'm²'],
    ['wing span', 10, 'm'],
    ['CLmax clean', 1.5, ''],
    ['CLmax takeoff', 1.7, ''],
    ['CLmax landing', 2, ''],
    ['landing gear', 'nosewheel', ''],
    ['Oswald efficiency', 0.7, ''],
    ['propeller efficiency standing', 0.42, ''],
    ['propeller efficiency climb', 0.74, ''],
    ['propeller efficiency cruise', 0.85, ''],
    ['takeoff flap drag', 0.02, ''],
    ['VNO', 70, 'm/s'],
    ['VNE', 80, 'm/s'],
    ['VNE is', 'true airspeed', ''],
  ],
  envelope: [
    ['weight', 'forward limit', 'aft limit'],
    ['kg', 'm', 'm'],
    [500, 2, 2.6],
    [1000, 2, 2.6],
  ],
  stations: [
    ['station', 'arm', 'maximum'],
    ['', 'm', 'kg'],
    ['seats', 2.3, 300],
  ],
  tanks: [
    ['tank', 'arm', 'usable'],
    ['', 'm', 'L'],
    ['wing tanks', 2.2, 150],
  ],
  packages: [
    ['attribute', 'unit', 'Elm'],
    ['cycle', '', 'spark ignition'],
    ['takeoff power', 'kW', 110],
    ['takeoff rpm', 'rpm', 2700],
    ['maximum continuous power', 'kW', 110],
    ['cylinders', '', 4],
    ['fuel', '', 'avgas'],
    ['fuel density', 'kg/L', 0.72],
    ['propeller', '', 'constant speed'],
    ['propeller diameter', 'm', 1.9],
  ],
  'fuel points': [
    ['package', 'mixture', 'power', 'BSFC'],
    ['', '', '%', 'g/kWh'],
    ['Elm', 'rich', 100, 302.4],
  ],
  'known points': [
    [
      'package',
      'condition',
      'power',
      'weight',
      'pressure altitude',
      'OAT',
      'true airspeed',
      'rate of climb',
      'ground roll',
    ],
    ['', '', 'kW', 'kg', 'm', '°C', 'm/s', 'm/s', 'm'],
    ['Elm', 'level flight', 100, 1000, 0, 15, 60, '', ''],
  ],
  components: [
    ['package', 'component', 'system', 'weight', 'arm'],
    ['', '', '', 'kg', 'm'],
    ['Elm', 'engine', 'engine', 150, 0.7],
  ],
  mission: [
    ['attribute', 'value', 'unit'],
    ['field elevation', 0, 'm'],
    ['field temperature', 15, '°C'],
    ['cruise altitude', 8000, 'ft'],
  ],
};
