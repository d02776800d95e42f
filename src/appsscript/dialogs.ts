/** Says something and waits until it is read. */
export function tell(title: string, text: string): void {
  const ui = SpreadsheetApp.getUi();
  ui.alert(title, text, ui.ButtonSet.OK);
}

/** Whether the answer is OK. */
export function isConfirmed(title: string, text: string): boolean {
  const ui = SpreadsheetApp.getUi();
  return ui.alert(title, text, ui.ButtonSet.OK_CANCEL) === ui.Button.OK;
}

/** The first lines of a list, as many as a dialog takes, and how many more there are. */
export function firstOf(lines: readonly string[], most: number): string[] {
  const rest = lines.length - most;
  return [...lines.slice(0, most), ...(rest > 0 ? [`and ${rest} more`] : [])];
}

/** The same as one text. */
export const listed = (lines: readonly string[], most: number): string => firstOf(lines, most).join('\n');
