import { messageOf } from '../functions/messages.ts';
import { explained } from './explained.ts';
import { issueQuote } from './issueQuote.ts';
import { panelState, setOption, setQuotedPackage, showInput, showPanel } from './panel.ts';
import { printQuote } from './printQuote.ts';
import { compareIssuedQuotes, quoteChanges } from './quoteDrifts.ts';

/** @throws Error that says the quote is issued all the same */
function show(number: number, revision: string, name: string): void {
  try {
    printQuote(number, revision);
  } catch (error) {
    throw new Error(
      `${name} is issued and stands in the register, but could not be shown (${messageOf(error)}): print it from the panel.`,
    );
  }
}

/** Issues a quote from the menu: shows it, or says why there is none. */
function issueQuoteFromMenu(): void {
  try {
    const { number, revision, name } = issueQuote();
    show(number, revision, name);
  } catch (error) {
    SpreadsheetApp.getUi().alert(explained(error));
  }
}

/** What the menu and the panel call by name, of quotes. */
export const quoteActions = {
  showPanel,
  panelState,
  setOption,
  setQuotedPackage,
  showInput,
  issueQuote,
  issueQuoteFromMenu,
  printQuote,
  quoteChanges,
  compareIssuedQuotes,
} as const;
