import { compare } from '../assessment/assess.ts';
import { costBlock } from '../assessment/costBlock.ts';
import { chosenPackages, packageArgument } from './packageArgument.ts';
import { type TableFunction, tableFunction } from './tableFunction.ts';

export const costFunctions: readonly TableFunction[] = [
  tableFunction({
    name: 'COST_TABLE',
    help: 'What is still to be bought, what an hour of flight costs by cause, and when a package is cheaper than the baseline.',
    extras: [packageArgument],
    compute: (catalogue, [name]) => {
      const comparison = compare(catalogue);
      return costBlock(comparison, chosenPackages(comparison, name));
    },
  }),
];
