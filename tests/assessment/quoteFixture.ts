import type { Cell, Grid } from '../../src/tables/cell.ts';
import type { Inputs } from '../../src/tables/inputs.ts';

/** An attribute table with further lines. */
const attributes = (...lines: Cell[][]): Grid => [['attribute', 'value', 'unit', 'note'], ...lines];

/**
 * A small invented aircraft with prices that have cents, in EUR, for one quote of the package Elm. No flight data: speed
 * and climb are not known.
 */
export const smallInputs: Inputs = {
  airframe: attributes(
    ['airframe', 'Turnstone'],
    ['firewall arm', 1.2, 'm'],
    ['empty weight', 310, 'kg'],
    ['empty CG', 2.62, 'm'],
    ['empty weight basis', 'weighed'],
    ['maximum takeoff weight', 750, 'kg'],
    ['wing area', 12.5, 'm²'],
    ['wing span', 10.1, 'm'],
    ['CLmax clean', 1.4],
    ['landing gear', 'nosewheel'],
    ['kit price', 41234.55, 'EUR'],
    ['show weights in', 'kg'],
    ['show arms in', 'mm'],
    ['show fuel in', 'L'],
  ),
  envelope: [
    ['weight', 'forward limit', 'aft limit'],
    ['kg', 'm', 'm'],
    [450, 2.05, 2.34],
    [750, 2.14, 2.34],
  ],
  stations: [
    ['station', 'arm', 'maximum'],
    ['', 'm', 'kg'],
    ['seats', 2.3, 200],
    ['baggage', 2.9, 25],
  ],
  loadings: [
    ['loading', 'seats', 'baggage', 'wing tanks'],
    ['', 'kg', 'kg', 'L'],
    ['two and bags', 170, 20, 80],
    ['three in two seats', 240, 0, 50],
  ],
  tanks: [
    ['tank', 'arm', 'usable', 'unusable'],
    ['', 'm', 'L', 'L'],
    ['wing tanks', 2.2, 100, 2],
  ],
  packages: [
    ['attribute', 'unit', 'Elm', 'Ash'],
    ['cycle', null, 'spark ignition', 'spark ignition'],
    ['takeoff power', 'kW', 75, 62],
    ['takeoff rpm', 'rpm', 2750, 2900],
    ['maximum continuous power', 'kW', 75, 60],
    ['cylinders', null, 4, 4],
    ['gear ratio', null, 1, 1],
    ['fuel', null, 'avgas', 'mogas'],
    ['fuel density', 'kg/L', 0.72, 0.74],
    ['propeller', null, 'fixed pitch', 'ground adjustable'],
    ['propeller diameter', 'm', 1.75, 1.7],
    ['lead time', 'weeks', 10, 8],
  ],
  components: [
    [
      'package',
      'component',
      'system',
      'weight',
      'arm',
      'basis',
      'fluid',
      'supplied by',
      'included in',
      'price',
      'lead time',
    ],
    [null, null, null, 'kg', 'm', null, null, null, null, 'EUR', 'weeks'],
    ['Elm', 'engine', 'engine', 92, 0.72, 'weighed', false, 'kit', null, 18999.99, 14],
    ['Elm', 'starter', 'starter', 4, 0.72, 'weighed', false, 'kit', 'engine', null, null],
    ['Elm', 'mount', 'mount', 6, 1.05, 'estimated', false, 'kit', null, 1205.005, null],
    ['Elm', 'propeller', 'propeller', 14, 0.3, 'weighed', false, 'kit', null, 6000, 6],
    ['Elm', 'oil', 'oil', 5, 0.8, 'weighed', true, 'builder', null, 49.9, 1],
    ['Elm', 'radiator', 'cooling', 0, null, 'weighed', false, 'not required', null, null, null],
    ['Ash', 'engine', 'engine', 71, 0.7, 'weighed', false, 'kit', null, 15000, 9],
    ['Ash', 'mount', 'mount', 5, 1.05, 'weighed', false, 'kit', null, 900, 4],
    ['Ash', 'propeller', 'propeller', 8, 0.28, 'weighed', false, 'kit', null, 3100, 6],
    ['Ash', 'oil', 'oil', 3, 0.8, 'weighed', true, 'builder', null, 30, 1],
    ['Ash', 'radiator', 'cooling', 7, 0.9, 'weighed', false, 'kit', null, 610, 3],
  ],
  equipment: [
    ['item', 'weight', 'arm', 'basis', 'price', 'standard', 'fitted', 'fits', 'needs', 'excludes'],
    [null, 'kg', 'm', null, 'EUR', null, null, null, null, null],
    ['seat belts', 3, 2.3, 'weighed', null, true, true, null, null, null],
    ['radio', 2.2, 1.6, 'weighed', 1999.95, false, true, null, null, null],
    ['autopilot', 3, 2.5, 'calculated', 4200, false, false, null, 'radio', null],
    ['oxygen', 5, 2.9, 'weighed', 900, false, false, 'Ash', null, null],
  ],
  rates: attributes(['sales tax', 8.1, '%'], ['deposit', 25, '%']),
  quote: attributes(
    ['package', 'Elm'],
    ['customer', 'A Customer'],
    ['dealer', 'A Dealer'],
    ['discount', 333.33, 'EUR'],
  ),
};

/** The inputs with one cell of a table of attributes, or of rows found by its first cell, replaced. */
export function withCell(
  inputs: Inputs,
  table: keyof Inputs,
  row: string,
  column: string,
  value: Cell,
): Inputs {
  const grid = inputs[table] ?? [];
  const at = (grid[0] ?? []).indexOf(column);
  const index = grid.findIndex((cells) => cells[0] === row);
  if (at < 0) throw new Error(`no column ${column} in ${table}`);
  if (index < 0) return { ...inputs, [table]: [...grid, ...attributeLine(grid, row, at, value)] };
  return {
    ...inputs,
    [table]: grid.map((cells, line) =>
      line === index
        ? Array.from({ length: Math.max(cells.length, at + 1) }, (_, each) =>
            each === at ? value : cells[each],
          )
        : cells,
    ),
  };
}

function attributeLine(grid: Grid, row: string, at: number, value: Cell): Cell[][] {
  const width = grid[0]?.length ?? 0;
  return [Array.from({ length: width }, (_, index) => (index === 0 ? row : index === at ? value : null))];
}
