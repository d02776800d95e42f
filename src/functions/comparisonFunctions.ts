import { compare } from '../assessment/assess.ts';
import { comparisonBlock } from '../assessment/comparisonBlock.ts';
import { findingsBlock } from '../assessment/finding.ts';
import { weightBuildUpBlock } from '../assessment/weightBuildUpBlock.ts';
import { type TableFunction, tableFunction } from './tableFunction.ts';

export const comparisonFunctions: readonly TableFunction[] = [
  tableFunction({
    name: 'PACKAGE_COMPARISON',
    help: 'All engine packages on the airframe side by side: price, weight, CG, payload, fuel, installation, loadings.',
    compute: (catalogue) => comparisonBlock(compare(catalogue)),
  }),
  tableFunction({
    name: 'WEIGHT_BUILD_UP',
    help: 'What every package weighs installed, by system, for a chart; what is removed from the airframe by itself.',
    compute: (catalogue) => weightBuildUpBlock(compare(catalogue)),
  }),
  tableFunction({
    name: 'INSTALLATION_FINDINGS',
    help: 'Every limit exceeded and every datum missing, defaulted or doubtful, the gravest first.',
    compute: (catalogue) => {
      const comparison = compare(catalogue);
      return findingsBlock(comparison.findings, comparison.context.display);
    },
  }),
];
