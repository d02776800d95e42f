import { costBlock } from '../assessment/costBlock.ts';
import { packageFunction } from './packageFunction.ts';
import type { TableFunction } from './tableFunction.ts';

export const costFunctions: readonly TableFunction[] = [
  packageFunction({
    name: 'COST_TABLE',
    help: 'What is still to be bought, what an hour of flight costs by cause, and when a package is cheaper than the baseline.',
    block: costBlock,
  }),
];
