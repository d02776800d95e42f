import { textOf } from './files.ts';
import type * as library from './library.ts';

type Library = typeof library;

let loaded: Library | undefined;

/**
 * The table functions and what the menu calls, read from Library.html when first asked for.
 *
 * Google loads the whole script anew for every call of every cell. A formula function needs a fifth of it, so the rest
 * stands as text in a file beside the script: reading an HTML file is among what custom functions may do (Google's guide
 * to custom functions, list of services; not tried on a live sheet).
 */
export function workbookLibrary(): Library {
  // Globals as arguments: a context of Node, where tests and the local host run it, is slow at looking them up
  loaded ??= new Function('Math', 'Number', `${JSON.parse(textOf('Library'))}\nreturn library_;`)(
    Math,
    Number,
  ) as Library;
  return loaded;
}
