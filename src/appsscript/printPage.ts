const placeholder = '"PRINTED"';
const width = 900; // px
const height = 720;

/** JSON that nothing in a page takes for markup. */
const embedded = (data: unknown) =>
  JSON.stringify(data).replace(
    /[<>&\u007f-\uffff]/g,
    (character) => `\\u${character.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );

/** Shows a page with what it is to print in a dialog. */
export function showPrinted(file: 'QuotePage' | 'CardsPage', title: string, data: unknown): void {
  const page = HtmlService.createHtmlOutputFromFile(file);
  const content = page.getContent().replace(placeholder, () => embedded(data));
  page.setContent(content).setWidth(width).setHeight(height);
  SpreadsheetApp.getUi().showModalDialog(page, title);
}
