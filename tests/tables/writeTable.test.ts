/** What is written into cells is read as the same records: the readers are the check of the writer. */
import { describe, expect, test } from 'vitest';
import { airframeTable } from '../../src/tables/airframe.ts';
import { coolingTable } from '../../src/tables/cooling.ts';
import { FaultLog } from '../../src/tables/faults.ts';
import type { Fields } from '../../src/tables/field.ts';
import { fuelPointsTable } from '../../src/tables/fuelPoints.ts';
import { knownPointsTable } from '../../src/tables/knownPoints.ts';
import { readAttributes } from '../../src/tables/readAttributes.ts';
import { readRows } from '../../src/tables/readRows.ts';
import type { Table } from '../../src/tables/table.ts';
import { tanksTable } from '../../src/tables/tanks.ts';
import { type UnitOf, writeAttributes, writeRows } from '../../src/tables/writeTable.ts';
import { catalogueOf } from './smallBuild.ts';

const customary: UnitOf = ({ customaryUnit }) => customaryUnit;
const metric: UnitOf = ({ unit, customaryUnit }) =>
  ({ mass: 'kg', length: 'mm', power: 'kW', speed: 'km/h', volume: 'L', temperature: 'K' })[String(unit)] ??
  customaryUnit;

/** Six digits are written. */
function expectSame(found: unknown, given: unknown): void {
  if (typeof given === 'number')
    expect(Math.abs((found as number) - given)).toBeLessThanOrEqual(5.001e-6 * Math.abs(given));
  else expect(found).toEqual(given);
}

function roundTrip<F extends Fields>(table: Table<F>, records: readonly object[], unitOf: UnitOf): void {
  const log = new FaultLog();
  const grid = writeRows(table, records as never, unitOf);
  const found = readRows(table, grid, log);
  expect(log.faults).toEqual([]);
  expect(found).toHaveLength(records.length);
  found.forEach((record, index) => {
    for (const key of Object.keys(table.fields))
      expectSame(record[key], (records[index] as Record<string, unknown>)[key]);
  });
}

describe.each([
  ['customary units', customary],
  ['metric units', metric],
])('rows in %s', (_, unitOf) => {
  const catalogue = catalogueOf();
  test('known points', () => roundTrip(knownPointsTable, catalogue.knownPoints, unitOf));
  test('fuel points', () => roundTrip(fuelPointsTable, catalogue.fuelPoints, unitOf));
  test('cooling', () => roundTrip(coolingTable, catalogue.cooling, unitOf));
  test('tanks', () => roundTrip(tanksTable, catalogue.tanks, unitOf));
});

test('what nobody gave is not written as if it were given', () => {
  const { cooling } = catalogueOf();
  expect(cooling[0]?.defaulted).toContain('recovery');
  const [header] = writeRows(coolingTable, cooling, customary);
  expect(header).not.toContain('inlet recovery');
  expect(header).toContain('exit area');
});

test('attributes, with what stood there before in the note', () => {
  const { airframe } = catalogueOf();
  const values = { emptyWeight: 410, weighedWith: 'Birch', weighedFluids: true };
  const grid = writeAttributes(airframeTable, values, airframe, '2026-03-08', customary);
  expect(grid).toEqual([
    ['attribute', 'value', 'unit', 'note'],
    ['empty weight', 903.895, 'lb', 'before 2026-03-08: 900 lb'],
    ['weighed with package', 'Birch', '', 'before 2026-03-08: Ash'],
    ['weighed with fluids', true, '', 'before 2026-03-08: TRUE'],
  ]);
  const required = [
    ['airframe', 'Wren', '', ''],
    ['firewall arm', 50, 'in', ''],
    ['empty CG', 80, 'in', ''],
    ['maximum takeoff weight', 1600, 'lb', ''],
    ['wing area', 120, 'ft²', ''],
    ['wing span', 30, 'ft', ''],
    ['CLmax clean', 1.5, '', ''],
    ['landing gear', 'nosewheel', '', ''],
  ];
  const log = new FaultLog();
  const found = readAttributes(airframeTable, [...grid, ...required], log);
  expect(log.faults).toEqual([]);
  expect(found.emptyWeight).toBeCloseTo(410, 3);
  expect(found).toMatchObject({ weighedWith: 'Birch', weighedFluids: true });
});
