/** The same with everything in Code.js, should Library.html ever fail to be read on a live sheet. */
import { callTable } from '../functions/library.ts';
import { act } from './actions.ts';

export { callFormula } from '../functions/formulas.ts';
export { onInstall, onOpen } from './menu.ts';
export { touchesUnits } from './touchesUnits.ts';
export const workbookLibrary = () => ({ callTable, act });
