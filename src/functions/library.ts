import type { Cell, Grid } from '../tables/cell.ts';
import { airFormulas } from './airFormulas.ts';
import { balanceFormulas } from './balanceFormulas.ts';
import { comparisonFunctions } from './comparisonFunctions.ts';
import { coolingFormulas } from './coolingFormulas.ts';
import { costFunctions } from './costFunctions.ts';
import { engineFormulas } from './engineFormulas.ts';
import { flightFormulas } from './flightFormulas.ts';
import { flightFunctions } from './flightFunctions.ts';
import type { Formula } from './formula.ts';
import { fuelFunctions } from './fuelFunctions.ts';
import { loadingFunctions } from './loadingFunctions.ts';
import { missionFunctions } from './missionFunctions.ts';
import { quoteFunctions } from './quoteFunctions.ts';
import { systemFormulas } from './systemFormulas.ts';
import type { TableFunction } from './tableFunction.ts';
import { weightFormulas } from './weightFormulas.ts';

/** Every custom function, in the order in which the reference lists them. */
export const formulas: readonly Formula[] = [
  ...airFormulas,
  ...engineFormulas,
  ...weightFormulas,
  ...balanceFormulas,
  ...flightFormulas,
  ...coolingFormulas,
  ...systemFormulas,
];
export const tableFunctions: readonly TableFunction[] = [
  ...comparisonFunctions,
  ...loadingFunctions,
  ...fuelFunctions,
  ...flightFunctions,
  ...costFunctions,
  ...missionFunctions,
  ...quoteFunctions,
];

/** Calls the custom function of that name, as the sheet would. */
export function call(name: string, cells: ArrayLike<Cell | Grid>): Cell | Cell[][] {
  const found = [...formulas, ...tableFunctions].find((each) => each.name === name);
  if (found === undefined) throw new RangeError(`${name}: no such function`);
  return found.call(Array.from(cells));
}
