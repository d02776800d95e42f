import { coolingBlock } from '../assessment/coolingBlock.ts';
import { flightBlock } from '../assessment/flightBlock.ts';
import { flyingPackages, withCooling } from '../assessment/flying.ts';
import { type Cell, isBlank } from '../tables/cell.ts';
import { packageArgument } from './packageFunction.ts';
import { type TableFunction, tableFunction } from './tableFunction.ts';

const nameIn = (cell: Cell) => (isBlank(cell) ? undefined : String(cell));

export const flightFunctions: readonly TableFunction[] = [
  tableFunction({
    name: 'FLIGHT_TABLE',
    help: 'Climb and level speed against altitude for charts, then climb, ceiling, takeoff and stall, at maximum weight.',
    extras: [packageArgument],
    compute: (catalogue, [name]) => {
      const { context, flying } = flyingPackages(catalogue, nameIn(name));
      return flightBlock(context, flying);
    },
  }),
  tableFunction({
    name: 'COOLING_CHECK',
    help: 'Every cooling stream on the hot day: temperature against limit, highest OAT, exit needed; margin against OAT.',
    extras: [packageArgument],
    compute: (catalogue, [name]) => {
      const { context, flying } = flyingPackages(catalogue, nameIn(name));
      return coolingBlock(context, withCooling(context, flying));
    },
  }),
];
