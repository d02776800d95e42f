import type { Cell } from '../tables/cell.ts';

/**
 * The workbook's own words (titles, help) end in a no-break space, which nobody sees and nobody types: laying out again
 * replaces them, and leaves alone what a person has put in their place.
 */
const mark = '\u00a0';

export const own = (text: string) => `${text}${mark}`;

export const isOwn = (cell: unknown) => typeof cell === 'string' && cell.endsWith(mark);

/** A cell that the workbook may write its own words into. */
export const isFree = (cell: unknown) => cell === null || cell === undefined || cell === '' || isOwn(cell);

/** Lines with their own words marked. */
export const ownLine = (line: readonly (string | null)[]): Cell[] =>
  line.map((text) => (text === null || text === '' ? null : own(text)));
