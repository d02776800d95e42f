/** The samples as tables, to be changed cell by cell. */
import { type Assessment, compare } from '../../src/assessment/assess.ts';
import { readCatalogue, type TableGrids } from '../../src/tables/catalogue.ts';
import { faultText } from '../../src/tables/faults.ts';
import { sample } from '../sample.ts';
import { numbersOf } from './numbers.ts';
import { type Spot, spotsOf, withSpot } from './spots.ts';
import type { Grids } from './workbooks.ts';

export const sampleGrids = (name: string) => sample(name) as Grids;

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
