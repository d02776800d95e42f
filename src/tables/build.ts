import { type AsQuoted, asQuotedTable } from './asQuoted.ts';
import type { Catalogue } from './catalogue.ts';
import { type Grid, nameKey } from './cell.ts';
import { type Change, changesTable } from './changes.ts';
import { conflict, rowNameOf } from './conflict.ts';
import { type Fault, FaultLog } from './faults.ts';
import { readAttributes } from './readAttributes.ts';
import { readRows } from './readRows.ts';
import { labelOf, recordedIn, type TestResult, testResultsTable } from './testResults.ts';
import { type WeighingItem, weighingItemsTable } from './weighingItems.ts';
import { type WeighingRow, weighingsTable } from './weighings.ts';

/** The builder's tables, beside those a package is compared from; each may be left out. */
export const buildTables = ['weighings', 'weighing items', 'changes', 'as quoted', 'test results'] as const;
export type BuildTable = (typeof buildTables)[number];
export type BuildGrids = Readonly<Partial<Record<BuildTable, Grid | undefined>>>;

/** One aircraft as it was built, weighed, changed and flown. */
export interface Build {
  readonly weighings: readonly WeighingRow[];
  readonly weighingItems: readonly WeighingItem[];
  readonly changes: readonly Change[];
  readonly asQuoted: AsQuoted;
  readonly testResults: readonly TestResult[];
}

export type BuildReading =
  | { readonly build: Build; readonly faults: readonly [] }
  | { readonly build: undefined; readonly faults: readonly Fault[] };

const sameArm = 1e-3; // m; no two weighing points of an aircraft that are two stand so near

/** Rows of one weighing agree on its date and attitude, and stand on more than one point at more than one arm. */
function checkWeighings(weighings: readonly WeighingRow[], log: FaultLog): void {
  const first = new Map<string, WeighingRow>();
  const arms = new Map<string, number[]>();
  for (const row of weighings) {
    const key = nameKey(row.weighing ?? '');
    const place = { row: row.row, rowName: rowNameOf(row.weighing, row.point) };
    const other = first.get(key) ?? row;
    first.set(key, other);
    arms.set(key, [...(arms.get(key) ?? []), row.arm]);
    if (row.date !== other.date) conflict(log, 'weighings', place, 'date', `the same as in row ${other.row}`);
    if (row.level !== other.level)
      conflict(log, 'weighings', place, 'level', `the same as in row ${other.row}`);
  }
  for (const [key, row] of first) {
    const place = { row: row.row, rowName: rowNameOf(row.weighing, row.point) };
    const stood = arms.get(key) ?? [];
    if (stood.length < 2) conflict(log, 'weighings', place, 'point', 'a weighing of at least two points');
    else if (stood.every((arm) => Math.abs(arm - row.arm) < sameArm))
      conflict(
        log,
        'weighings',
        place,
        'arm',
        `points of "${row.weighing}" at more than one arm: all ${stood.length} stand at this one`,
      );
  }
}

function checkItems(items: readonly WeighingItem[], weighings: readonly WeighingRow[], log: FaultLog): void {
  const known = new Set(weighings.map(({ weighing }) => nameKey(weighing ?? '')));
  for (const { row, weighing, item, weight, volume } of items) {
    const place = { row, rowName: rowNameOf(weighing, item) };
    if (!known.has(nameKey(weighing ?? '')))
      conflict(log, 'weighing items', place, 'weighing', 'the name of a weighing');
    if ((weight === undefined) === (volume === undefined) && !log.isFaulty('weighing items', row, 'volume'))
      conflict(log, 'weighing items', place, 'weight', 'either weight or volume');
  }
}

/** What is no part of the aircraft weighs less than all that stood on the scales. */
function checkNet(
  { weighings, weighingItems }: Pick<Build, 'weighings' | 'weighingItems'>,
  { packages }: Catalogue,
  log: FaultLog,
): void {
  const densest = Math.max(...packages.map(({ fuelDensity }) => fuelDensity));
  const net = new Map<string, number>();
  const first = new Map<string, WeighingRow>();
  const add = (key: string, weight: number) => net.set(key, (net.get(key) ?? 0) + weight);
  for (const row of weighings) {
    const key = nameKey(row.weighing ?? '');
    first.set(key, first.get(key) ?? row);
    add(key, row.reading - row.tare);
  }
  for (const { weighing, state, weight, volume = 0, density = densest } of weighingItems) {
    const mass = weight ?? volume * density;
    add(nameKey(weighing ?? ''), state === 'aboard, not part' ? -mass : mass);
  }
  for (const [key, row] of first) {
    const place = { row: row.row, rowName: rowNameOf(row.weighing, row.point) };
    if ((net.get(key) ?? 0) <= 0)
      conflict(log, 'weighings', place, 'reading', 'more than tares and weighing items, all points together');
  }
}

function checkResults(results: readonly TestResult[], catalogue: Catalogue, log: FaultLog): void {
  const tanks = catalogue.tanks.map(({ name }) => name);
  for (const result of results) {
    const place = { row: result.row, rowName: result.test };
    for (const field of recordedIn[result.test] ?? []) {
      const isAirspeed = field === 'trueAirspeed';
      const given = result[field] ?? (isAirspeed ? result.calibratedAirspeed : undefined);
      if (given === undefined) {
        const expected = isAirspeed ? 'true or calibrated airspeed' : 'a value, for this test';
        conflict(log, 'test results', place, labelOf(field), expected);
      }
    }
    const { tank } = result;
    if (tank !== undefined && !tanks.some((name) => nameKey(name) === nameKey(tank)))
      conflict(log, 'test results', place, 'tank', `a tank of the tanks table (${tanks.join(', ')})`);
  }
}

/** Reads the builder's tables and holds them against each other and the catalogue they are for. */
export function readBuild(grids: BuildGrids, catalogue: Catalogue): BuildReading {
  const log = new FaultLog();
  const build = {
    weighings: readRows(weighingsTable, grids.weighings, log),
    weighingItems: readRows(weighingItemsTable, grids['weighing items'], log),
    changes: readRows(changesTable, grids.changes, log),
    asQuoted: readAttributes(asQuotedTable, grids['as quoted'], log),
    testResults: readRows(testResultsTable, grids['test results'], log),
  };
  checkWeighings(build.weighings, log);
  checkItems(build.weighingItems, build.weighings, log);
  checkNet(build, catalogue, log);
  checkResults(build.testResults, catalogue, log);
  return log.faults.length > 0 ? { build: undefined, faults: log.faults } : { build, faults: [] };
}
