import type { Cell, Grid } from '../tables/cell.ts';
import { builderFunctions } from './builderFunctions.ts';
import { comparisonFunctions } from './comparisonFunctions.ts';
import { costFunctions } from './costFunctions.ts';
import { flightFunctions } from './flightFunctions.ts';
import { callNamed, formulas } from './formulas.ts';
import { fuelFunctions } from './fuelFunctions.ts';
import { loadingFunctions } from './loadingFunctions.ts';
import { missionFunctions } from './missionFunctions.ts';
import { quoteFunctions } from './quoteFunctions.ts';
import type { TableFunction } from './tableFunction.ts';

export { formulas };

/** Every table function, in the order in which the reference lists them. */
export const tableFunctions: readonly TableFunction[] = [
  ...comparisonFunctions,
  ...loadingFunctions,
  ...fuelFunctions,
  ...flightFunctions,
  ...costFunctions,
  ...missionFunctions,
  ...quoteFunctions,
  ...builderFunctions,
];

/** Calls a table function. */
export const callTable = (name: string, cells: ArrayLike<Cell | Grid>) =>
  callNamed(tableFunctions, name, cells);

/** Calls any custom function, as the sheet would. */
export const call = (name: string, cells: ArrayLike<Cell | Grid>): Cell | Cell[][] =>
  callNamed<Cell | Cell[][]>([...formulas, ...tableFunctions], name, cells);
