import { type IssuedQuote, keyText, type QuoteKey } from '../assessment/issuedQuote.ts';
import { readRecord, readRecords } from './quoteRecords.ts';

const placeholder = '"ISSUED QUOTE"';
const width = 900; // px
const height = 720;

/** What the page shows: everything but the inputs. */
export type PrintedQuote = Omit<IssuedQuote, 'inputs'>;

/** JSON that nothing in a page takes for markup. */
const embedded = (data: unknown) =>
  JSON.stringify(data).replace(
    /[<>&\u007f-\uffff]/g,
    (character) => `\\u${character.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );

/** Shows an issued quote in a dialog that prints it. */
export function printQuote(number: number, revision: string): void {
  const key: QuoteKey = { number, revision };
  const { inputs: _, ...printed } = readRecord(readRecords(SpreadsheetApp.getActiveSpreadsheet()), key);
  const page = HtmlService.createHtmlOutputFromFile('QuotePage');
  const content = page.getContent().replace(placeholder, () => embedded(printed satisfies PrintedQuote));
  page.setContent(content).setWidth(width).setHeight(height);
  SpreadsheetApp.getUi().showModalDialog(page, `Quote ${keyText(key)}`);
}
