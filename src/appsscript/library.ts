/** What Library.html holds: the table functions, and what the menu and the panel call. */
export { callTable } from '../functions/library.ts';
export { act } from './actions.ts';
