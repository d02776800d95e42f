import { type Context, createContext, runInContext } from 'node:vm';

/** A global as bare as Google's runtime: a fresh context of Node still has three things that runtime lacks. */
export function bareContext(globals: object): Context {
  const context = createContext(globals);
  runInContext(
    'delete globalThis.console; delete globalThis.WebAssembly; delete globalThis.SharedArrayBuffer;',
    context,
  );
  return context;
}

/** The one service that the table functions use: the text of a file beside the script. */
export const htmlService = (files: Readonly<Record<string, string>>) => ({
  HtmlService: { createHtmlOutputFromFile: (name: string) => ({ getContent: () => files[name] }) },
});
