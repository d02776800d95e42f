import type { Catalogue } from '../tables/catalogue.ts';
import type { Package } from '../tables/packages.ts';
import { packageNamed } from './context.ts';

/** The package that is built, where nobody names one: the baseline, else that of the weighing, else the first. */
export function builtPackage(catalogue: Catalogue): Package {
  const name = catalogue.airframe.baseline ?? catalogue.airframe.weighedWith;
  return name === undefined ? (catalogue.packages[0] as Package) : packageNamed(catalogue, name);
}
