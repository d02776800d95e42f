/** Metamorphic: the unit in which a number is typed never changes a result, over every table, column and unit. */
import { describe, expect, test } from 'vitest';
import { compare } from '../../src/assessment/assess.ts';
import { call, tableFunctions } from '../../src/functions/library.ts';
import { type Catalogue, readCatalogue, type TableGrids } from '../../src/tables/catalogue.ts';
import type { Cell } from '../../src/tables/cell.ts';
import { type QuantityKind, unitsOf } from '../../src/units.ts';
import { numbersOf } from './numbers.ts';
import { random } from './random.ts';
import { say, times } from './seed.ts';
import { isMeasured, type Spot, spotsOf, withSpot } from './spots.ts';
import { everyTable, type Grids, tableOf, type Workbook, workbooks } from './workbooks.ts';

/**
 * Sizes of the units in one of their kind, typed anew: NIST SP 811, appendix B, and definitions; of days a week has 7.
 * Not from src/units.ts.
 */
const sizes: Readonly<Record<string, Readonly<Record<string, number>>>> = {
  mass: { lb: 0.45359237, kg: 1 },
  length: { in: 25.4, mm: 1, cm: 10, m: 1000, ft: 304.8 },
  height: { ft: 0.3048, m: 1 },
  distance: { nmi: 1852, km: 1000, mi: 1609.344, m: 1 },
  area: { 'ft²': 0.09290304, 'm²': 1 },
  openingArea: { 'in²': 6.4516, 'cm²': 1, 'm²': 10_000 },
  volume: { 'US gal': 3.785411784, L: 1 },
  density: { 'lb/US gal': 0.45359237 / 3.785411784, 'kg/L': 1, 'kg/m³': 0.001 },
  moment: { lb·in: 0.45359237 * 25.4, kg·mm: 1, kg·m: 1000, kg·cm: 10 },
  power: { hp: 0.7456998715822702, kW: 1, PS: 0.735_498_75 },
  speed: { kt: 1.852, mph: 1.609344, 'km/h': 1, 'm/s': 3.6 },
  climb: { 'ft/min': 0.00508, 'm/s': 1 },
  rotation: { rpm: 1 },
  bsfc: { 'lb/hp·h': 453.59237 / 0.7456998715822702, 'g/kWh': 1 },
  fuelFlow: { 'US gal/h': 3.785411784, 'L/h': 1 },
  massFlow: { 'lb/min': 0.45359237 / 60, 'kg/s': 1, 'lb/h': 0.45359237 / 3600, 'kg/h': 1 / 3600 },
  pressure: { inH2O: 249.08891, Pa: 1, hPa: 100, inHg: 3386.38864, psi: 6894.757_293_168_361 },
  inertia: { 'kg·m²': 1, 'lb·ft²': 0.45359237 * 0.3048 ** 2 },
  time: { h: 60, min: 1, s: 1 / 60 },
  days: { weeks: 7, days: 1 },
  energyPerMass: { 'Btu/lb': 2326, 'MJ/kg': 1e6 },
  current: { A: 1 },
  charge: { Ah: 1 },
  fraction: { '%': 0.01, fraction: 1 },
};

/** By way of °C. */
const temperatures: Readonly<Record<string, readonly [(t: number) => number, (c: number) => number]>> = {
  '°C': [(t) => t, (c) => c],
  '°F': [(t) => (t - 32) / 1.8, (c) => c * 1.8 + 32],
  K: [(t) => t - 273.15, (c) => c + 273.15],
};

function converted(kind: QuantityKind, value: number, from: string, to: string): number {
  if (kind === 'temperature') {
    const [there] = temperatures[from] as (typeof temperatures)[string];
    const [, back] = temperatures[to] as (typeof temperatures)[string];
    return back(there(value));
  }
  const of = sizes[kind] as Readonly<Record<string, number>>;
  return (value * (of[from] as number)) / (of[to] as number);
}

const isQuantity = ({ field }: Spot) => field.unit !== undefined && !field.unit.startsWith('currency');

/** The tables with the numbers of one unit cell in another unit. */
function retold(grids: Grids, unit: Spot, all: readonly Spot[], to: string): Grids {
  const from = String(unit.cell);
  const own = all.filter(
    (spot) =>
      spot.role === 'value' &&
      spot.table === unit.table &&
      spot.field === unit.field &&
      (unit.shape === 'rows' ? spot.column === unit.column : spot.row === unit.row) &&
      typeof spot.cell === 'number',
  );
  const changed = own.reduce(
    (sum, spot) =>
      withSpot(sum, spot, converted(unit.field.unit as QuantityKind, Number(spot.cell), from, to)),
    grids,
  );
  return withSpot(changed, unit, to);
}

/** A share below 1.5 per cent is refused beside "%": it may be a hundred times as much. */
const isClear = (unit: Spot, all: readonly Spot[], to: string) =>
  to !== '%' ||
  all.every(
    ({ role, table, field, cell }) =>
      role !== 'value' ||
      table !== unit.table ||
      field !== unit.field ||
      Number(cell) === 0 ||
      Number(cell) > 0.015,
  );

/** What is not the same in two readings or results; numbers to so many parts of the greater, or of `floor`. */
function difference(one: unknown, other: unknown, relative: number, floor = 0): string {
  if (typeof one === 'number' && typeof other === 'number')
    return one === other ||
      Math.abs(one - other) <= relative * Math.max(Math.abs(one), Math.abs(other), floor)
      ? ''
      : `${one} is ${other}`;
  if (one instanceof Map && other instanceof Map) return difference([...one], [...other], relative, floor);
  if (typeof one === 'object' && typeof other === 'object' && one !== null && other !== null) {
    for (const key of new Set([...Object.keys(one), ...Object.keys(other)])) {
      const found = difference(
        (one as Record<string, unknown>)[key],
        (other as Record<string, unknown>)[key],
        relative,
        floor,
      );
      if (found !== '') return `${key}, ${found}`;
    }
    return '';
  }
  return one === other ? '' : `${String(one)} is ${String(other)}`;
}

const assessed = (grids: Grids) =>
  compare(readCatalogue(grids as TableGrids).catalogue as Catalogue).assessments;

/** What a number is a multiple of as shown: 12.7 of 0.1, 11,110 of 10. */
const step = (shown: number) => {
  let size = 1e-9;
  while (size < 1e6 && shown !== 0 && Math.abs(shown / (size * 10) - Math.round(shown / (size * 10))) < 1e-6)
    size *= 10;
  return size;
};

/** Shown cells: numbers may be rounded to the other side of a half, in texts too. */
function shownDifference(one: Cell, other: Cell): string {
  if (typeof one === 'number' && typeof other === 'number')
    return Math.abs(one - other) <= Math.min(step(one), step(other)) * 1.01 + 1e-9
      ? ''
      : `${one} is ${other}`;
  if (typeof one !== 'string' || typeof other !== 'string') return one === other ? '' : `${one} is ${other}`;
  const parts = (text: string) => text.split(/(\d[\d,]*(?:\.\d+)?)/);
  const [first, second] = [parts(one), parts(other)];
  const isSame =
    first.length === second.length &&
    first.every((part, at) => {
      if (at % 2 === 0) return part === second[at];
      const [a, b] = [part, second[at] as string].map((digits) => Number(digits.replace(/,/g, ''))) as [
        number,
        number,
      ];
      return shownDifference(a, b) === '';
    });
  return isSame ? '' : `${one} is ${other}`;
}

const measuredUnits = ({ grids }: Pick<Workbook, 'grids'>) => {
  const spots = spotsOf({ grids });
  return {
    spots,
    units: spots.filter((spot) => spot.role === 'unit' && isQuantity(spot) && isMeasured(spot, spots)),
  };
};

describe.each(workbooks.map((each) => [each.name, each] as const))('%s', (name, workbook) => {
  const { spots, units } = measuredUnits(workbook);

  test('every column in every other unit is read as the same', () => {
    const sound = workbook.read(workbook.grids);
    let pairs = 0;
    for (const unit of units) {
      for (const to of unitsOf(unit.field.unit as QuantityKind)) {
        if (to === unit.cell || !isClear(unit, spots, to)) continue;
        pairs++;
        const reading = workbook.read(retold(workbook.grids, unit, spots, to));
        expect(reading.faults, `${unit.table} ${unit.field.label} in ${to}`).toEqual([]);
        expect(
          difference(sound.value, reading.value, 1e-12),
          `${unit.table} ${unit.field.label} in ${to}`,
        ).toBe('');
      }
    }
    if (units.length > 5) expect(pairs).toBeGreaterThan(5);
    say(`${name}: ${pairs} pairs of a column and another unit`);
  });
});

test('table functions say the same whatever the units of all tables', { timeout: 120_000 }, () => {
  const grids = everyTable;
  const { spots, units } = measuredUnits({ grids });
  const blocks = (of: Grids) =>
    tableFunctions.map(({ name, arguments: all }) =>
      call(
        name,
        all.map((argument): Cell | readonly (readonly Cell[])[] => of[tableOf(argument.name) ?? '']),
      ),
    );
  const before = blocks(grids);
  const numbers = numbersOf(assessed(grids));
  expect(numbers.size).toBeGreaterThan(500);
  tableFunctions.forEach(({ name }, index) => {
    expect(String((before[index] as Cell[][])[0]?.[0]), name).not.toMatch(/^No result/);
  });
  for (let run = 0; run < times(12); run++) {
    let other = grids;
    for (const unit of units) {
      const [to] = random.some(unitsOf(unit.field.unit as QuantityKind), 1);
      if (to !== undefined && to !== unit.cell && isClear(unit, spots, to))
        other = retold(other, unit, spots, to);
    }
    const after = numbersOf(assessed(other));
    expect([...numbers.keys()].filter((path) => !after.has(path))).toEqual([]);
    expect([...after.keys()].filter((path) => !numbers.has(path))).toEqual([]);
    for (const [path, value] of numbers)
      expect(difference(value, after.get(path), 1e-9, 1e-6), path).toBe('');
    blocks(other).forEach((block, index) => {
      const first = before[index] as Cell[][];
      (block as Cell[][]).forEach((line, row) => {
        const found = line
          .map((cell, column) => shownDifference(first[row]?.[column], cell))
          .filter((each) => each !== '');
        expect(found, `${tableFunctions[index]?.name} ${line[0]}`).toEqual([]);
      });
    });
  }
});
