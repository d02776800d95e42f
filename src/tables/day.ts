import { isDate, plain } from './cell.ts';
import { type Field, text } from './field.ts';

const calendar = /^(\d{4})-(\d{2})-(\d{2})$/;

/** A day as 2026-03-14, which sorts as text; undefined for a day that no calendar has. */
function dayText(year: number, month: number, date: number): string | undefined {
  const found = new Date(Date.UTC(year, month - 1, date));
  const exists = found.getUTCFullYear() === year && found.getUTCMonth() === month - 1;
  return exists ? found.toISOString().slice(0, 10) : undefined;
}

/** The day of a date cell, which is a day on the sheet's own clock, not on Greenwich's. */
export const dayOf = (cell: Date): string | undefined =>
  dayText(cell.getFullYear(), cell.getMonth() + 1, cell.getDate());

/** A day: a cell that holds a date, or the text 2026-03-14. "3/4/26" means two days in two countries. */
export function day(label: string, options: { help: string; required: true }): Field<string> {
  return {
    ...text(label, options),
    read: (cell) => {
      const [, year, month, date] = calendar.exec(typeof cell === 'string' ? plain(cell) : '') ?? [];
      const value = isDate(cell) ? dayOf(cell) : dayText(Number(year), Number(month), Number(date));
      return value === undefined ? { expected: 'a date such as 2026-03-14' } : { value };
    },
  };
}
