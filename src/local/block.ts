import { type Cell, isBlank } from '../tables/cell.ts';

/** What a custom function spills. */
export type Block = readonly Row[];
export type Row = readonly Cell[];

export const isFilled = (cell: Cell) => !isBlank(cell);

/** True for a row with nothing behind its first cell: a heading, a sentence. */
export const isAlone = (row: Row) => isFilled(row[0]) && !row.slice(1).some(isFilled);
