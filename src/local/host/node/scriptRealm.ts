import { createContext, Script } from 'node:vm';

import type { Evaluate } from '../localHost.ts';

/**
 * The script in a context as bare as Google's runtime: the language, the given services and nothing else.
 * @param code the built script's text
 */
export function scriptRealm(code: string): Evaluate {
  const script = new Script(code, { filename: 'Code.js' });
  return (globals) => {
    const context = createContext({ ...globals });
    new Script(
      'delete globalThis.console; delete globalThis.WebAssembly; delete globalThis.SharedArrayBuffer;',
    ).runInContext(context);
    script.runInContext(context);
    return Object.fromEntries(Object.entries(context).filter(([name]) => !(name in globals)));
  };
}
