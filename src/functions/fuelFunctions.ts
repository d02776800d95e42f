import { compare } from '../assessment/assess.ts';
import { fuelTableBlock } from '../assessment/fuelTableBlock.ts';
import { chosenPackages, packageArgument } from './packageArgument.ts';
import { type TableFunction, tableFunction } from './tableFunction.ts';

export const fuelFunctions: readonly TableFunction[] = [
  tableFunction({
    name: 'FUEL_TABLE',
    help: 'Fuel flow and endurance from 45 to 100 % power, rich and lean, and the power left at altitude.',
    extras: [packageArgument],
    compute: (catalogue, [name]) => {
      const comparison = compare(catalogue);
      return fuelTableBlock(comparison, chosenPackages(comparison, name));
    },
  }),
];
