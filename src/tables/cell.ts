/** What a spreadsheet hands over: one cell, and a range as rows of cells. */
export type Cell = string | number | boolean | Date | null | undefined;
export type Grid = readonly (readonly Cell[])[];

/** True for the three forms of an empty cell, and for one that holds only spaces. */
export function isBlank(cell: Cell): boolean {
  return cell === null || cell === undefined || (typeof cell === 'string' && plain(cell) === '');
}

/** ASCII words with one space between them: most names by far. */
const alreadyPlain = /^[!-~]+( [!-~]+)*$/;

/**
 * Text as a person reads it: every kind of space is a space, runs of them are one, none at the ends or without width; an
 * accent is one with its letter, however it was typed.
 */
export function plain(text: string): string {
  if (alreadyPlain.test(text)) return text;
  return text
    .normalize()
    .replace(/[\u200b-\u200d\u2060]/g, '')
    .replace(/\s+/g, ' ')
    .trim();
}

/** A typed name reduced to what tells names apart, for finding headers and choices whatever their case. */
export function nameKey(text: string): string {
  return plain(text).toLowerCase();
}

/** Another realm's Date is not `instanceof Date`: its tag is asked instead. */
export function isDate(cell: Cell): cell is Date {
  return Object.prototype.toString.call(cell) === '[object Date]';
}

/** An error cell (#REF!, #N/A … in whatever language) arrives as its text; "#1 tank" is a name. */
export function isErrorText(cell: Cell): cell is string {
  return typeof cell === 'string' && /^#[^\s\d]/.test(cell);
}

/** Of a long text a message quotes the beginning. */
const longestQuote = 60;

/** The cell as it is quoted in a message. */
export function quoted(cell: Cell): string {
  if (isBlank(cell)) return 'an empty cell';
  if (isDate(cell)) return 'a date';
  if (typeof cell === 'boolean') return cell ? 'TRUE' : 'FALSE';
  if (typeof cell !== 'string') return String(cell);
  return `"${cell.length > longestQuote ? `${cell.slice(0, longestQuote)}…` : cell}"`;
}

/** A remainder of rounding, such as 0.1 + 0.2 − 0.3, is not above 0. */
export const negligible = 1e-12;

/** Nothing in a sheet is larger: weights in lb, prices, hours. */
const largest = 1e12;

const bounded = (value: number) =>
  Math.abs(value) <= largest ? value : { fault: `a number no larger than ${largest}` };

/**
 * The number in a cell, or why it is none.
 * Text that holds nothing but a number in decimal-point notation counts as that number; "12,5", "1 200", "5 ft" do not.
 */
export function numberIn(cell: Cell): number | { readonly fault: string } {
  if (typeof cell === 'number') {
    return Number.isFinite(cell) ? bounded(cell) : { fault: 'a number' };
  }
  if (isErrorText(cell)) return { fault: 'a number; the cell holds an error' };
  if (isDate(cell)) return { fault: 'a number; the cell is formatted as a date' };
  if (typeof cell === 'boolean') return { fault: 'a number, not a tick box' };
  const text = plain(cell ?? '').replace('\u2212', '-');
  if (/^[+-]?(\d+(\.\d*)?|\.\d+)$/.test(text)) return bounded(Number(text));
  if (/^[+-]?\d+,\d+$/.test(text)) return { fault: 'a number with a decimal point and no comma' };
  return { fault: 'a number without unit or separators' };
}
