import { compare } from '../assessment/assess.ts';
import { loadingBlock } from '../assessment/loadingBlock.ts';
import { loadingRegionBlock } from '../assessment/loadingRegionBlock.ts';
import { chosenPackages, packageArgument } from './packageArgument.ts';
import { type TableFunction, tableFunction } from './tableFunction.ts';

export const loadingFunctions: readonly TableFunction[] = [
  tableFunction({
    name: 'LOADING_CHECK',
    help: 'Every named loading from takeoff to zero fuel, the worst of all loadings, and the ballast that would cure what fails.',
    extras: [packageArgument],
    compute: (catalogue, [name]) => {
      const comparison = compare(catalogue);
      return loadingBlock(comparison, chosenPackages(comparison, name));
    },
  }),
  tableFunction({
    name: 'LOADING_REGION',
    help: 'Points of a chart: the CG limits and, for every package, all that the stations and tanks allow; CG, then weight.',
    extras: [packageArgument],
    compute: (catalogue, [name]) => {
      const comparison = compare(catalogue);
      return loadingRegionBlock(comparison, chosenPackages(comparison, name));
    },
  }),
];
