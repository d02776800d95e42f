import { builtPackage } from '../assessment/builtPackage.ts';
import { changeRecordBlock } from '../assessment/changeRecordBlock.ts';
import { packageNamed } from '../assessment/context.ts';
import { faultsBlock } from '../assessment/faultsBlock.ts';
import { testCardsBlock } from '../assessment/testCardsBlock.ts';
import { weighingBlock } from '../assessment/weighingBlock.ts';
import { type Build, type BuildGrids, type BuildTable, readBuild } from '../tables/build.ts';
import type { Catalogue } from '../tables/catalogue.ts';
import { type Cell, type Grid, isBlank } from '../tables/cell.ts';
import type { Package } from '../tables/packages.ts';
import { packageArgument } from './packageFunction.ts';
import { type TableArgument, type TableFunction, tableFunction } from './tableFunction.ts';

const packageBuilt: TableArgument = {
  ...packageArgument,
  help: 'the package that is built; the baseline where left out',
};

const tables: Readonly<Record<BuildTable, TableArgument>> = {
  weighings: { name: 'weighings', help: 'scales, tares, arms', optional: false },
  'weighing items': { name: 'weighing_items', help: 'aboard or missing', optional: true },
  changes: { name: 'changes', help: 'in and out since', optional: true },
  'as quoted': { name: 'as_quoted', help: 'what was promised', optional: true },
  'test results': { name: 'test_results', help: 'as measured', optional: true },
};

function packageOf(catalogue: Catalogue, cell: Cell): Package {
  return isBlank(cell) ? builtPackage(catalogue) : packageNamed(catalogue, String(cell));
}

/** A table function on the builder's tables and, last, the package: a sheet leaves it out. */
function builderFunction(declaration: {
  name: string;
  help: string;
  order: readonly (BuildTable | 'package')[];
  block: (catalogue: Catalogue, build: Build, engine: Package) => readonly (readonly Cell[])[];
}): TableFunction {
  const { name, help, order, block } = declaration;
  return tableFunction({
    name,
    help,
    extras: order.map((each) => (each === 'package' ? packageBuilt : tables[each])),
    compute: (catalogue, extras) => {
      const grids: Partial<Record<BuildTable, Grid | undefined>> = {};
      order.forEach((each, index) => {
        const cells: unknown = extras[index];
        if (each !== 'package' && Array.isArray(cells)) grids[each] = cells as Grid;
      });
      const { build, faults } = readBuild(grids as BuildGrids, catalogue);
      if (build === undefined) return faultsBlock(faults);
      return block(catalogue, build, packageOf(catalogue, extras[order.indexOf('package')]));
    },
  });
}

export const builderFunctions: readonly TableFunction[] = [
  builderFunction({
    name: 'WEIGHING_CHECK',
    help: 'The weighed aircraft: basic empty weight and CG, against prediction and quote, what explains the difference, what it changes.',
    order: ['weighings', 'weighing items', 'changes', 'as quoted', 'package'],
    block: weighingBlock,
  }),
  builderFunction({
    name: 'CHANGE_RECORD',
    help: 'Basic empty weight and CG from the weighing through every change since, what is negligible, when to weigh again.',
    order: ['weighings', 'weighing items', 'changes', 'package'],
    block: changeRecordBlock,
  }),
  builderFunction({
    name: 'FLIGHT_TEST_CARDS',
    help: 'A card for every test on the ground and in flight: predicted with its band, limit, what to record, how to reduce it; with results, what they change.',
    order: ['test results', 'package'],
    block: testCardsBlock,
  }),
];
