import type { Book } from './places.ts';

/** Today on the workbook's clock, such as 2026-05-31. */
export const today = (book: Book) =>
  Utilities.formatDate(new Date(), book.getSpreadsheetTimeZone(), 'yyyy-MM-dd');
