import { JSDOM, VirtualConsole } from 'jsdom';
import { pageFiles } from '../../src/local/pages.ts';

export const pages = pageFiles();

export interface Call {
  readonly name: string;
  readonly values: readonly unknown[];
  readonly succeed: (value: unknown) => void;
  readonly fail: (error: Error) => void;
}

/** What the page asked of the script, in order; a test answers. */
export interface OpenPage {
  readonly window: JSDOM['window'];
  readonly document: Document;
  readonly calls: Call[];
  /** Answers the next call that has none yet, once it is there, and lets the page take it in. */
  readonly answer: (name: string, value?: unknown, isFailure?: boolean) => Promise<Call>;
  /** Errors that the page's script threw. */
  readonly errors: unknown[];
}

/** Text that would be markup, a formula or script where it was not taken as text. */
export const hostile = '<img src=x onerror="document.title=1"> </script> =1+1 "\' & 🛩️';

export const textOf = (element: Element | null) => (element?.textContent ?? '').replace(/\s+/g, ' ').trim();

const settled = () => new Promise((resolve) => setTimeout(resolve, 0));

/** Opens a page as it is pushed, its script running, with a stand-in for the script's side. */
export function open(html: string): OpenPage {
  const calls: Call[] = [];
  const errors: unknown[] = [];
  let answered = 0;
  const runner = () => {
    const handlers: Pick<Call, 'succeed' | 'fail'> = { succeed: () => {}, fail: () => {} };
    const taking = (key: 'succeed' | 'fail') => (handler: Call['succeed']) => {
      Object.assign(handlers, { [key]: handler });
      return api;
    };
    const api: unknown = new Proxy(
      {},
      {
        get: (_, key) => {
          if (key === 'withSuccessHandler') return taking('succeed');
          if (key === 'withFailureHandler') return taking('fail');
          return (...values: unknown[]) => calls.push({ name: String(key), values, ...handlers });
        },
      },
    );
    return api;
  };
  const dom = new JSDOM(html, {
    runScripts: 'dangerously',
    virtualConsole: new VirtualConsole(), // which says nothing of the page margins, unknown to it
    beforeParse(window) {
      Object.defineProperty(window, 'google', {
        value: { script: Object.defineProperty({}, 'run', { get: runner }) },
      });
      window.addEventListener('error', (event: ErrorEvent) => errors.push(event.error ?? event.message));
    },
  });
  return {
    window: dom.window,
    document: dom.window.document,
    calls,
    errors,
    async answer(name, value, isFailure = false) {
      for (let wait = 0; wait < 50 && calls.length <= answered; wait++) await settled();
      const call = calls[answered++];
      if (call?.name !== name) throw new Error(`expected a call of ${name}, got ${call?.name ?? 'none'}`);
      if (isFailure) call.fail(new Error(String(value)));
      else call.succeed(value === undefined ? value : JSON.parse(JSON.stringify(value)));
      await settled();
      await settled();
      return call;
    },
  };
}
