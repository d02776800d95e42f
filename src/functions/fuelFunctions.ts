import { fuelTableBlock } from '../assessment/fuelTableBlock.ts';
import { packageFunction } from './packageFunction.ts';
import type { TableFunction } from './tableFunction.ts';

export const fuelFunctions: readonly TableFunction[] = [
  packageFunction({
    name: 'FUEL_TABLE',
    help: 'Fuel flow and endurance from 45 to 100 % power, rich and lean, and the power left at altitude.',
    block: fuelTableBlock,
  }),
];
