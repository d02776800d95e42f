import type { Sheet } from './places.ts';

const description = 'Catalogue: a change here changes every comparison and quote';

/** A warning before a catalogue sheet is changed; nobody is locked out, and a person's own protection stays as it is. */
export function warnBeforeChange(sheet: Sheet): void {
  const [known] = sheet.getProtections(SpreadsheetApp.ProtectionType.SHEET);
  if (known && known.getDescription() !== description && known.getDescription() !== '') return;
  const protection = known ?? sheet.protect();
  protection.setWarningOnly(true).setDescription(description);
}
