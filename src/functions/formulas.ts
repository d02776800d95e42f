import type { Cell, Grid } from '../tables/cell.ts';
import { airFormulas } from './airFormulas.ts';
import { balanceFormulas } from './balanceFormulas.ts';
import { coolingFormulas } from './coolingFormulas.ts';
import { engineFormulas } from './engineFormulas.ts';
import { flightFormulas } from './flightFormulas.ts';
import type { Formula } from './formula.ts';
import { systemFormulas } from './systemFormulas.ts';
import { weightFormulas } from './weightFormulas.ts';

/** Every formula function, in the order in which the reference lists them. */
export const formulas: readonly Formula[] = [
  ...airFormulas,
  ...engineFormulas,
  ...weightFormulas,
  ...balanceFormulas,
  ...flightFormulas,
  ...coolingFormulas,
  ...systemFormulas,
];

/** Calls the function of that name among those given, as the sheet would. */
export function callNamed<R>(
  functions: readonly { readonly name: string; readonly call: (cells: readonly (Cell | Grid)[]) => R }[],
  name: string,
  cells: ArrayLike<Cell | Grid>,
): R {
  const found = functions.find((each) => each.name === name);
  if (found === undefined) throw new RangeError(`${name}: no such function`);
  return found.call(Array.from(cells));
}

/** Calls a formula function. */
export const callFormula = (name: string, cells: ArrayLike<Cell | Grid>) => callNamed(formulas, name, cells);
