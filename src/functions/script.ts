/** What the pushed script needs of the library, and no more: naming it here lets the bundler leave out the rest. */
export { act } from '../appsscript/actions.ts';
export { call } from './library.ts';
