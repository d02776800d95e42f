import { type IssuedQuote, keyText, type QuoteKey } from '../assessment/issuedQuote.ts';
import { showPrinted } from './printPage.ts';
import { readRecord, readRecords } from './quoteRecords.ts';

/** What the page shows: everything but the inputs. */
export type PrintedQuote = Omit<IssuedQuote, 'inputs'>;

/** Shows an issued quote in a dialog that prints it. */
export function printQuote(number: number, revision: string): void {
  const key: QuoteKey = { number, revision };
  const { inputs: _, ...printed } = readRecord(readRecords(SpreadsheetApp.getActiveSpreadsheet()), key);
  showPrinted('QuotePage', `Quote ${keyText(key)}`, printed satisfies PrintedQuote);
}
