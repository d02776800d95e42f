import { readAll } from '../assessment/adoptions.ts';
import { printedCards } from '../assessment/printedCards.ts';
import { readAllTables } from './allTables.ts';
import { explained } from './explained.ts';
import { showPrinted } from './printPage.ts';

/** Shows the flight-test cards in a dialog that prints them, or says why there are none. */
export function printTestCards(): void {
  try {
    const { catalogue } = readAll(readAllTables(SpreadsheetApp.getActiveSpreadsheet()));
    showPrinted('CardsPage', 'Flight-test cards', printedCards(catalogue));
  } catch (error) {
    SpreadsheetApp.getUi().alert(explained(error));
  }
}
