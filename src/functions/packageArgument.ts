import type { Assessment, Comparison } from '../assessment/assess.ts';
import { packageNamed } from '../assessment/context.ts';
import { type Cell, isBlank } from '../tables/cell.ts';
import type { TableArgument } from './tableFunction.ts';

/** Which package a block is for. */
export const packageArgument: TableArgument = {
  name: 'package_name', // `package` is reserved in strict mode, which the script is in
  help: 'the name of one package; all of them where left out',
  optional: true,
};

/** The package named, or all. @throws RangeError naming the packages there are */
export function chosenPackages({ context, assessments }: Comparison, name: Cell): readonly Assessment[] {
  if (isBlank(name)) return assessments;
  const chosen = packageNamed(context.catalogue, String(name));
  return assessments.filter((each) => each.package === chosen);
}
