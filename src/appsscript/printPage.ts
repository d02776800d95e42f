import { plainJson } from './plainJson.ts';

const placeholder = '"PRINTED"';
const width = 900; // px
const height = 720;

/** Shows a page with what it is to print in a dialog. */
export function showPrinted(file: 'QuotePage' | 'CardsPage', title: string, data: unknown): void {
  const page = HtmlService.createHtmlOutputFromFile(file);
  const content = page.getContent().replace(placeholder, () => plainJson(data));
  page.setContent(content).setWidth(width).setHeight(height);
  SpreadsheetApp.getUi().showModalDialog(page, title);
}
