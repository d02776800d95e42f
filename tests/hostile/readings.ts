/** Readings of spoilt tables: counted, held against the sound one, and asked for the fault of a cell. */
import { expect } from 'vitest';
import { type Cell, isBlank, quoted } from '../../src/tables/cell.ts';
import { faultText } from '../../src/tables/faults.ts';
import { random } from './random.ts';
import { say, times } from './seed.ts';
import type { Spot } from './spots.ts';
import { type Grids, type Reading, toldBy, type Workbook } from './workbooks.ts';

let readings = 0;
let named = 0;
export const read = (workbook: Workbook, grids: Grids): Reading => {
  readings++;
  const reading = workbook.read(grids);
  if (reading.faults.length > 0) named++;
  return reading;
};
export const sayReadings = (what: string) => say(`${what}: ${readings} readings, ${named} with faults`);

export const nothing = ['', ' ', null, undefined, '\u00a0', '\u200b'] as const;

export const text = ({ faults }: Reading) => faults.map(faultText).join('\n');

/** The fault of this very cell, quoting it. */
export function expectFault(
  reading: Reading,
  { table, at, row, field, role }: Spot,
  cell: Cell,
  why: string,
): void {
  // a name, or a number, in the place of a unit makes its row a record
  const isTakenForRecord = role === 'unit' && (field.key || typeof cell === 'number');
  const found = reading.faults.some(
    (fault) =>
      fault.table === table &&
      fault.row === at.row &&
      (fault.column === at.column || (isTakenForRecord && fault.column === '')) &&
      (fault.got === quoted(cell) || (isBlank(cell) && fault.got === 'an empty cell') || fault.column === ''),
  );
  if (!found)
    expect.fail(
      `${why}: ${table} ${field.label} ${role} row ${row + 1}: ${quoted(cell)} is not named in\n${text(reading)}`,
    );
}

const texts = new WeakMap<Reading, string>();
/** The sound reading is asked again and again. */
export function told(reading: Reading): string {
  const before = texts.get(reading);
  if (before !== undefined) return before;
  const now = toldBy(reading.value);
  texts.set(reading, now);
  return now;
}

export function expectSame(workbook: Workbook, one: Reading, other: Reading, why: string): void {
  if (one.faults.length > 0) expect.fail(`${workbook.name}, ${why}: ${text(one)}`);
  if (told(one) !== told(other)) expect(JSON.parse(told(one)), why).toEqual(JSON.parse(told(other)));
}

/** Some of a list, others every run; of each field at least one. */
export function some(list: readonly Spot[], each: number): Spot[] {
  const groups = new Map<unknown, Spot[]>();
  for (const spot of list) groups.set(spot.field, [...(groups.get(spot.field) ?? []), spot]);
  return [...groups.values()].flatMap((group) => random.some(group, times(each)));
}
