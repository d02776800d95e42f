import { compare } from '../assessment/assess.ts';
import { missionBlock } from '../assessment/missionBlock.ts';
import { payloadRangeBlock } from '../assessment/payloadRangeBlock.ts';
import { chosenPackages, packageArgument } from './packageArgument.ts';
import { type TableFunction, tableFunction } from './tableFunction.ts';

export const missionFunctions: readonly TableFunction[] = [
  tableFunction({
    name: 'MISSION_CHECK',
    help: 'Which packages fly the mission, with what margin on each condition, what stops the others and what would let them go.',
    extras: [packageArgument],
    compute: (catalogue, [name]) => {
      const comparison = compare(catalogue);
      return missionBlock(comparison, chosenPackages(comparison, name));
    },
  }),
  tableFunction({
    name: 'PAYLOAD_RANGE',
    help: 'Points of a chart: payload against range for every package, at the mission’s cruise with its reserve.',
    extras: [packageArgument],
    compute: (catalogue, [name]) => {
      const comparison = compare(catalogue);
      return payloadRangeBlock(comparison, chosenPackages(comparison, name));
    },
  }),
];
