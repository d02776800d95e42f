import { compare } from '../../src/assessment/assess.ts';
import { comparisonBlock } from '../../src/assessment/comparisonBlock.ts';
import type { TableGrids } from '../../src/tables/catalogue.ts';
import { catalogueOf } from '../tables/smallBuild.ts';
import { smallWorkbook } from '../tables/smallWorkbook.ts';

/** The lines of a group of the comparison, by label. */
export function linesIn(title: string, grids: TableGrids = smallWorkbook()) {
  const block = comparisonBlock(compare(catalogueOf(grids)));
  const start = block.findIndex(([cell]) => String(cell).startsWith(title));
  if (start < 0) throw new Error(`no group ${title}`);
  const length = block.slice(start + 1).findIndex((line) => line.length === 1);
  const lines = block.slice(start + 1, start + 1 + length);
  return {
    lines,
    of: (label: string) => lines.find(([cell]) => cell === label)?.slice(1),
    below: (label: string) => lines[lines.findIndex(([cell]) => cell === label) + 1]?.slice(1),
  };
}
