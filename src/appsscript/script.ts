/** What the pushed script needs of the library, and no more: naming it here lets the bundler leave out the rest. */
export { call } from '../functions/library.ts';
export { act } from './actions.ts';
