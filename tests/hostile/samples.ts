/** The samples as tables, to be changed cell by cell. */
import { fileURLToPath } from 'node:url';
import { type Assessment, compare } from '../../src/assessment/assess.ts';
import { worstOf } from '../../src/assessment/cooling.ts';
import { readTableFolder } from '../../src/local/tableFolder.ts';
import { readCatalogue, type TableGrids } from '../../src/tables/catalogue.ts';
import { faultText } from '../../src/tables/faults.ts';
import { numbersOf } from './numbers.ts';
import { type Grids, type Spot, spotsOf, withSpot } from './workbooks.ts';

export const sampleGrids = (name: string) =>
  readTableFolder(fileURLToPath(new URL(`../../samples/${name}`, import.meta.url))).grids as Grids;

/** @throws Error naming the faults */
export function comparisonOf(grids: Grids) {
  const { catalogue, faults } = readCatalogue(grids as TableGrids);
  if (catalogue === undefined) throw new Error(faults.map(faultText).join('\n'));
  return compare(catalogue);
}

/** Every number that is read from the tables. */
export const numberSpots = (grids: Grids): Spot[] =>
  spotsOf({ grids }).filter(({ role, cell }) => role === 'value' && typeof cell === 'number');

/** The tables with numbers changed where `change` gives another one. */
export const withNumbers = (grids: Grids, change: (spot: Spot) => number | undefined): Grids =>
  numberSpots(grids).reduce((sum, spot) => {
    const to = change(spot);
    return to === undefined ? sum : withSpot(sum, spot, to);
  }, grids);

/** Inputs, words, and parts of a result that stand in it a second time. */
const repeated = [
  ...['row', 'findings', 'asked', 'context', 'package', 'configuration'],
  ...['flying', 'answer', 'cooled', 'cooledEnough'],
];

/** Every number of one package's assessment. */
export const everyFigure = (assessment: Assessment) => numbersOf(assessment, repeated);

/**
 * Numbers that follow the inputs without a jump, by name. Not among them: which of several is the worst, and what follows from
 * that alone (its weight, arm, loads); corners of the polygon, which come and go; the heights of the scan on the hot day, of
 * which the least margins are kept.
 */
export function steadyFigures(assessment: Assessment): Map<string, number> {
  const { polygon, ...balance } = assessment.balance;
  const figures = numbersOf(
    { ...assessment, balance, cooling: undefined, mission: undefined, range: undefined },
    [...repeated, ...['loads', 'items', 'fluids', 'scope', 'envelope', 'data', 'stream', 'streams']],
  );
  for (const path of figures.keys())
    if (/\.(margins\.(forward|aft|worst)|worst|critical)\.(weight|moment|cg|limit)$/.test(path))
      figures.delete(path);
  for (const side of ['forward', 'aft'] as const) {
    const boundary = polygon?.[side] ?? [];
    if (boundary.length > 0)
      figures.set(`polygon ${side}`, Math.max(...boundary.map(({ weight }) => weight)));
  }
  const { range, cooling, mission } = assessment;
  for (const [name, point] of Object.entries({
    full: range?.fullTanks,
    most: range?.mostPayload,
    alone: range?.pilotAlone,
  }))
    numbersOf(point, repeated, `range.${name}`, figures);
  for (const { data, hotDay, idleTemperature } of cooling?.streams ?? []) {
    const { stream } = data.row;
    if (idleTemperature !== undefined) figures.set(`cooling.${stream}.idle`, idleTemperature);
    for (const rating of ['continuous', 'takeoff'] as const)
      for (const speed of ['best rate', 'cooling climb'] as const) {
        const margin = worstOf(hotDay, rating, speed)?.result.margin;
        if (margin !== undefined) figures.set(`cooling.${stream}.${rating}.${speed}`, margin);
      }
  }
  for (const { name, leg, margin } of mission?.conditions ?? [])
    if (margin !== undefined) figures.set(`mission.${name}.${leg ?? 'both'}`, margin);
  for (const { name, ...leg } of mission?.legs ?? [])
    numbersOf(leg, repeated, `mission.leg.${name}`, figures);
  return figures;
}
