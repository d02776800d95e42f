import type { LocalHost } from '../../src/local/host/localHost.ts';
import type { Answer } from '../../src/local/host/ui.ts';

/** Words that are not for persons: what an error of the language says, or a value that is none. */
export const foreign = /Cannot |undefined|is not a|not iterable|Unexpected|JSON|null|NaN|\[object/;

/** What is said to a call that failed. */
export const stopped = /^It stopped on the way: Service failed at call \d+\. Nothing is lost: do it again\.$/;

/** What a person gets from an action. */
export interface Told {
  readonly words: string;
  /** What the panel gets, as JSON. */
  readonly result: string;
  /** Whether a page was shown. */
  readonly isShown: boolean;
}

/** Runs an action, as the panel does where it is given values. */
export function told(
  host: LocalHost,
  action: string,
  answers: readonly Answer[] = [],
  values?: readonly unknown[],
): Told {
  const { ui } = host.workbook;
  const pages = () => ui.dialogs.length + ui.sidebars.length;
  const [alerts, toasts, before] = [ui.alerts.length, ui.toasts.length, pages()];
  let thrown = '';
  let result = '';
  ui.answers.push(...answers);
  try {
    if (values === undefined) host.run(action);
    else result = JSON.stringify(host.runFromPanel(action, ...values)) ?? '';
  } catch (error) {
    thrown = (error as Error).message;
  }
  ui.answers.length = 0;
  const said = [...ui.alerts.slice(alerts), ...ui.toasts.slice(toasts)].map((each) => JSON.stringify(each));
  return {
    words: [thrown, ...said].filter((each) => each !== '').join('\n'),
    result,
    isShown: pages() > before,
  };
}
