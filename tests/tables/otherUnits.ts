import type { TableName } from '../../src/tables/catalogue.ts';
import type { Cell } from '../../src/tables/cell.ts';

/** Other units of the same kind: what a number of the first is in the second. Exact by definition. */
export const otherUnits: Readonly<Record<string, readonly [string, (value: number) => number]>> = {
  lb: ['kg', (value) => value * 0.45359237],
  in: ['mm', (value) => value * 25.4],
  ft: ['m', (value) => value * 0.3048],
  'ft²': ['m²', (value) => value * 0.09290304],
  'in²': ['cm²', (value) => value * 6.4516],
  'US gal': ['L', (value) => value * 3.785411784],
  'US gal/h': ['L/h', (value) => value * 3.785411784],
  'lb/US gal': ['kg/L', (value) => (value * 0.45359237) / 3.785411784],
  hp: ['kW', (value) => value * 0.74569987158227],
  kt: ['km/h', (value) => value * 1.852],
  nmi: ['km', (value) => value * 1.852],
  '°F': ['°C', (value) => (value - 32) / 1.8],
  '°C': ['°F', (value) => value * 1.8 + 32],
  'lb/hp·h': ['g/kWh', (value) => (value * 453.59237) / 0.74569987158227],
  '%': ['fraction', (value) => value / 100],
  lb·in: ['kg·m', (value) => value * 0.45359237 * 0.0254],
  'lb·ft²': ['kg·m²', (value) => value * 0.45359237 * 0.3048 ** 2],
  'MJ/kg': ['Btu/lb', (value) => (value * 1e6) / 2326],
  'ft/min': ['m/s', (value) => value * 0.00508],
  min: ['h', (value) => value / 60],
  weeks: ['days', (value) => value * 7],
  'USD/US gal': ['USD/L', (value) => value / 3.785411784],
};

/** Rewrites every quantity of a workbook in other units. */
export function inOtherUnits(grids: Readonly<Partial<Record<TableName, Cell[][]>>>): void {
  for (const grid of Object.values(grids)) {
    const header = grid[0] as Cell[];
    const rowsHaveUnits = header[0] === 'attribute';
    const unitAt = header.indexOf('unit');
    grid.forEach((row, index) => {
      if (index === 0) return;
      row.forEach((cell, column) => {
        const unit = rowsHaveUnits ? row[unitAt] : grid[1]?.[column];
        const other = otherUnits[String(unit)];
        if (typeof cell === 'number' && other) row[column] = other[1](cell);
      });
    });
    grid.forEach((row, index) => {
      if (index !== 1 && !rowsHaveUnits) return;
      row.forEach((cell, column) => {
        if (rowsHaveUnits && column !== unitAt) return;
        const other = otherUnits[String(cell)];
        if (other) row[column] = other[0];
      });
    });
  }
}
