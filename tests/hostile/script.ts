/** The pushed script in a context as bare as Google's runtime: what a cell of a sheet calls. */
import { runInContext, Script } from 'node:vm';
import { dataFiles, scriptText } from '../../src/local/build.ts';
import type { Cell, Grid } from '../../src/tables/cell.ts';
import { bareContext, htmlService } from '../local/bareContext.ts';

const longest = 30_000; // ms, after which Google ends a custom function

const context = bareContext(htmlService(await dataFiles()));
runInContext(await scriptText(), context, { filename: 'Code.js' });
const watched = new Script('work()');

export type Argument = Cell | Grid;
export type Answer = { readonly value: unknown } | { readonly message: string; readonly kind: string };

/** What a call gives back, or says. */
export function answer(name: string, cells: readonly Argument[]): Answer {
  try {
    return { value: (context[name] as (...cells: readonly Argument[]) => unknown)(...cells) };
  } catch (error) {
    const { name: kind, message } = error as Error;
    return { kind: String(kind), message: String(message) };
  }
}

/** Does many calls; one that does not come to its end is broken off. @throws Error after as long as Google waits for one */
export function watch<T>(work: () => T): T {
  let result: T | undefined;
  context.work = () => {
    result = work();
  };
  watched.runInContext(context, { timeout: longest });
  return result as T;
}
