import { readAll } from '../assessment/adoptions.ts';
import { printedCards } from '../assessment/printedCards.ts';
import { messageOf } from '../functions/messages.ts';
import { readAllTables } from './allTables.ts';
import { showPrinted } from './printPage.ts';

/** Shows the flight-test cards in a dialog that prints them, or says why there are none. */
export function printTestCards(): void {
  try {
    const { catalogue } = readAll(readAllTables(SpreadsheetApp.getActiveSpreadsheet()));
    showPrinted('CardsPage', 'Flight-test cards', printedCards(catalogue));
  } catch (error) {
    SpreadsheetApp.getUi().alert(messageOf(error));
  }
}
