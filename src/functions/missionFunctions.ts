import { missionBlock } from '../assessment/missionBlock.ts';
import { payloadRangeBlock } from '../assessment/payloadRangeBlock.ts';
import { packageFunction } from './packageFunction.ts';
import type { TableFunction } from './tableFunction.ts';

export const missionFunctions: readonly TableFunction[] = [
  packageFunction({
    name: 'MISSION_CHECK',
    help: 'Which packages fly the mission, with what margin on each condition, what stops the others and what would let them go.',
    block: missionBlock,
  }),
  packageFunction({
    name: 'PAYLOAD_RANGE',
    help: 'Points of a chart: payload against range for every package, at the mission’s cruise with its reserve.',
    block: payloadRangeBlock,
  }),
];
