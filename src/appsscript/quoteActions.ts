import { messageOf } from '../functions/messages.ts';
import { issueQuote } from './issueQuote.ts';
import { panelState, setOption, setQuotedPackage, showInput, showPanel } from './panel.ts';
import { printQuote } from './printQuote.ts';
import { compareIssuedQuotes, quoteChanges } from './quoteDrifts.ts';

/** Issues a quote from the menu: shows it, or says why there is none. */
function issueQuoteFromMenu(): void {
  try {
    const { number, revision } = issueQuote();
    printQuote(number, revision);
  } catch (error) {
    SpreadsheetApp.getUi().alert(messageOf(error));
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
