import type { NamedPlace } from '../assessment/findingPlace.ts';
import { keyText } from '../assessment/issuedQuote.ts';
import type { Cell } from '../tables/cell.ts';
import { type InputName, type Inputs, inputNames, inputPlace, withoutDates } from '../tables/inputs.ts';
import { typed } from './cells.ts';
import { inputRange, readInputs } from './inputs.ts';
import type { Book } from './places.ts';
import { lastRevisions } from './quoteDrifts.ts';
import { readRegister } from './quoteRegister.ts';

/** What the panel knows. It computes prices and payloads itself, from the same tables by the same functions. */
export interface PanelState {
  readonly inputs: Inputs;
  readonly quotes: readonly PanelQuote[];
}

/** The last revision of an issued quote. */
export interface PanelQuote {
  readonly number: number;
  readonly revision: string;
  readonly name: string;
  readonly text: string;
}

function stateOf(book: Book): PanelState {
  const quotes = lastRevisions(readRegister(book)).map((quote): PanelQuote => {
    const { number, revision, customer, packageName, date } = quote;
    const name = keyText(quote);
    return { number, revision, name, text: `${name}, ${date}, ${packageName}, ${customer || 'no customer'}` };
  });
  return { inputs: withoutDates(readInputs(book)), quotes };
}

export const panelState = (): PanelState => stateOf(SpreadsheetApp.getActiveSpreadsheet());

/** Writes one input cell, found by its names. @throws Error when it is not there */
function setInput(book: Book, table: InputName, row: string, column: string, value: Cell): void {
  const range = inputRange(book, table);
  const place = inputPlace(readInputs(book), table, row, column);
  if (range === null || place === undefined) {
    throw new Error(
      `The ${table} table has no cell "${row}", "${column}": lay out or upgrade the workbook, then try again.`,
    );
  }
  range.getCell(place.row + 1, place.column + 1).setValue(typed(value));
}

/** Ticks or unticks an option or a tank. */
export function setOption(table: 'equipment' | 'tanks', item: string, isFitted: boolean): PanelState {
  const book = SpreadsheetApp.getActiveSpreadsheet();
  setInput(book, table === 'tanks' ? 'tanks' : 'equipment', item, 'fitted', isFitted === true);
  return stateOf(book);
}

/** Chooses the package to be quoted. */
export function setQuotedPackage(name: string): PanelState {
  const book = SpreadsheetApp.getActiveSpreadsheet();
  setInput(book, 'quote', 'package', 'value', name);
  return stateOf(book);
}

/** Goes to an input, or to its table where it has no cell of its own. */
export function showInput({ table, row, column }: NamedPlace): void {
  const book = SpreadsheetApp.getActiveSpreadsheet();
  const range = inputNames.includes(table) ? inputRange(book, table) : null;
  if (range === null) throw new Error(`There is no ${table} table in this workbook.`);
  const place = row === undefined ? undefined : inputPlace(readInputs(book), table, row, column);
  range.getCell((place?.row ?? 0) + 1, (place?.column ?? 0) + 1).activate();
}

export function showPanel(): void {
  const page = HtmlService.createHtmlOutputFromFile('Panel').setTitle('Packages and quote');
  SpreadsheetApp.getUi().showSidebar(page);
}
