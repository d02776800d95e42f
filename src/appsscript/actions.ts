import type { TableGrids } from '../tables/catalogue.ts';
import { readLayout } from './files.ts';
import { layOut } from './layOut.ts';

/** What a person can do from the menu, and what else the pushed script offers by name. */
export const actions = {
  layOutWorkbook: () => layOut(readLayout(), {}),
  /** Ends in an underscore: out of the panel's reach. */
  layOutTables_: (grids: TableGrids) => layOut(readLayout(), grids),
} as const;

export type ActionName = keyof typeof actions;

/** Runs one of them. */
export function act(name: ActionName, values: ArrayLike<unknown>): unknown {
  const action: (...given: never[]) => unknown = actions[name];
  return action(...(Array.from(values) as never[]));
}
