import { adoptActions } from './adopt.ts';
import { explained } from './explained.ts';
import { homeCard } from './homeCard.ts';
import { nameAxes } from './nameAxes.ts';
import { printTestCards } from './printCards.ts';
import { quoteActions } from './quoteActions.ts';
import { workbookActions } from './workbookActions.ts';

/** What Google, a person's menu and the panel call by name. */
export const actions = {
  ...workbookActions,
  ...quoteActions,
  ...adoptActions,
  printTestCards,
  homeCard,
  nameAxes_: nameAxes,
} as const;

export type ActionName = keyof typeof actions;

/** Runs one of them. @throws Error that says what a person can do */
export function act(name: ActionName, values: ArrayLike<unknown>): unknown {
  const action: (...given: never[]) => unknown = actions[name];
  try {
    return action(...(Array.from(values) as never[]));
  } catch (error) {
    throw new Error(explained(error));
  }
}
