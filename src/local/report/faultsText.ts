import { type Fault, faultText } from '../../tables/faults.ts';
import { type Emphasis, paragraph } from './layout.ts';

/** Every fault of the tables, one a paragraph. */
export function faultsText(faults: readonly Fault[], emphasis: Emphasis): string {
  const title = faults.length === 1 ? '1 fault in the tables' : `${faults.length} faults in the tables`;
  return [
    emphasis.stop(`${title}; nothing was written.`),
    ...faults.map((fault) => paragraph(faultText(fault))),
  ].join('\n');
}
