import { type Assessment, type Comparison, compare } from '../assessment/assess.ts';
import { packageNamed } from '../assessment/context.ts';
import { type Cell, isBlank } from '../tables/cell.ts';
import { type TableArgument, type TableFunction, tableFunction } from './tableFunction.ts';

/** Which package a block is for. */
export const packageArgument: TableArgument = {
  name: 'package_name', // `package` is reserved in strict mode, which the script is in
  help: 'the name of one package; all of them where left out',
  optional: true,
};

/** The package named, or all. @throws RangeError naming the packages there are */
function chosenPackages({ context, assessments }: Comparison, name: Cell): readonly Assessment[] {
  if (isBlank(name)) return assessments;
  const chosen = packageNamed(context.catalogue, String(name));
  return assessments.filter((each) => each.package === chosen);
}

/** A table function on the package named or, left out, on all. */
export function packageFunction(declaration: {
  name: string;
  help: string;
  block: (comparison: Comparison, chosen: readonly Assessment[]) => readonly (readonly Cell[])[];
}): TableFunction {
  const { name, help, block } = declaration;
  return tableFunction({
    name,
    help,
    extras: [packageArgument],
    compute: (catalogue, [chosen]) => {
      const comparison = compare(catalogue);
      return block(comparison, chosenPackages(comparison, chosen));
    },
  });
}
