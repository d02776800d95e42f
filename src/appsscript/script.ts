/** What Code.js holds: the formula functions, the menu, and the way to the rest, which is read on demand. */
export { callFormula } from '../functions/formulas.ts';
export { onInstall, onOpen } from './menu.ts';
export { workbookLibrary } from './onDemand.ts';
export { touchesUnits } from './touchesUnits.ts';
