export const menuName = 'Engine packages';

/** The menu's items, each with the action that it runs; null draws a line. */
export const menuItems: readonly (readonly [caption: string, action: string] | null)[] = [
  ['Choose and quote …', 'showPanel'],
  ['Issue quote', 'issueQuoteFromMenu'],
  ['Compare issued quotes', 'compareIssuedQuotes'],
  null,
  ['Compare weighing with quote …', 'takeQuoteIn'],
  ['Take weighing in …', 'adoptWeighing'],
  ['Take measured results in …', 'adoptResults'],
  ['Put back what stood before …', 'putBackAdopted'],
  ['Print flight-test cards', 'printTestCards'],
  null,
  ['Check data', 'checkData'],
  ['Lay out or upgrade', 'layOutFromMenu'],
  null,
  ['Load a sample …', 'loadSample'],
  ['Start blank …', 'startBlank'],
];

/**
 * Runs when the workbook is opened, for an add-on before a person has authorised anything: it builds the menu and asks
 * nothing else. Published as an add-on, the menu stands under Extensions by the add-on's own name (Google's reference of
 * Ui.createMenu, from memory).
 */
export function onOpen(): void {
  const menu = SpreadsheetApp.getUi().createMenu(menuName);
  for (const item of menuItems) {
    if (item === null) menu.addSeparator();
    else menu.addItem(...item);
  }
  menu.addToUi();
}

/** Runs once when an add-on is installed; the workbook is open already, so nothing else will draw its menu. */
export const onInstall = (): void => onOpen();
