import { loadingBlock } from '../assessment/loadingBlock.ts';
import { loadingRegionBlock } from '../assessment/loadingRegionBlock.ts';
import { packageFunction } from './packageFunction.ts';
import type { TableFunction } from './tableFunction.ts';

export const loadingFunctions: readonly TableFunction[] = [
  packageFunction({
    name: 'LOADING_CHECK',
    help: 'Every named loading from takeoff to zero fuel, the worst of all loadings, and the ballast that would cure what fails.',
    block: loadingBlock,
  }),
  packageFunction({
    name: 'LOADING_REGION',
    help: 'Points of a chart: the CG limits and, for every package, all that the stations and tanks allow; CG, then weight.',
    block: loadingRegionBlock,
  }),
];
