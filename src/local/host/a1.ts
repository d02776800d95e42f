import type { Zone } from './engine.ts';

/** Column letters of a column index from 0: 0 → A, 26 → AA. */
export function columnLetters(column: number): string {
  const last = String.fromCharCode(65 + (column % 26));
  return column < 26 ? last : columnLetters(Math.floor(column / 26) - 1) + last;
}

function columnIndex(letters: string): number {
  return [...letters.toUpperCase()].reduce((index, letter) => index * 26 + letter.charCodeAt(0) - 64, 0) - 1;
}

/** A1 notation of a zone: `B2` or `B2:D9`. */
export function zoneToA1({ left, right, top, bottom }: Zone): string {
  const first = columnLetters(left) + (top + 1);
  const last = columnLetters(right) + (bottom + 1);
  return first === last ? first : `${first}:${last}`;
}

/**
 * Zone of an A1 reference without a sheet name: `B2`, `B2:D9`, `B:D`, `2:9` and `B2:D`; an open end reaches to the
 * sheet's end. `undefined` when it is not one.
 */
export function parseA1(reference: string, rows: number, columns: number): Zone | undefined {
  const corner = String.raw`\$?([A-Z]{1,3})?\$?(\d{1,7})?`;
  const match = new RegExp(`^${corner}(?::${corner})?$`, 'i').exec(reference);
  if (!match || reference === '') return undefined;
  const [, firstColumn, firstRow, lastColumn, lastRow] = match;
  const isRange = reference.includes(':');
  if (!isRange && (!firstColumn || !firstRow)) return undefined;
  const isOpen = !(firstColumn || firstRow) || !(lastColumn || lastRow);
  if (isRange && isOpen) return undefined;
  const left = firstColumn ? columnIndex(firstColumn) : 0;
  const top = firstRow ? Number(firstRow) - 1 : 0;
  const right = isRange ? (lastColumn ? columnIndex(lastColumn) : columns - 1) : left;
  const bottom = isRange ? (lastRow ? Number(lastRow) - 1 : rows - 1) : top;
  return {
    left: Math.min(left, right),
    right: Math.max(left, right),
    top: Math.min(top, bottom),
    bottom: Math.max(top, bottom),
  };
}

/** Splits `'Sheet name'!A1:B2` into the sheet's name, if any, and the reference. */
export function splitSheetName(reference: string): { sheetName?: string; reference: string } {
  const mark = reference.lastIndexOf('!');
  if (mark < 0) return { reference };
  const quoted = reference.slice(0, mark);
  const sheetName = /^'.*'$/.test(quoted) ? quoted.slice(1, -1).replace(/''/g, "'") : quoted;
  return { sheetName, reference: reference.slice(mark + 1) };
}

export function* positionsOf({ left, right, top, bottom }: Zone): Generator<{ col: number; row: number }> {
  for (let row = top; row <= bottom; row++) for (let col = left; col <= right; col++) yield { col, row };
}

/** A value for each cell of a zone, as rows. */
export function rowsOf<T>(zone: Zone, value: (col: number, row: number) => T): T[][] {
  const { rows, columns } = sizeOf(zone);
  return Array.from({ length: rows }, (_, row) =>
    Array.from({ length: columns }, (_, column) => value(zone.left + column, zone.top + row)),
  );
}

export function sizeOf({ left, right, top, bottom }: Zone): { rows: number; columns: number } {
  return { rows: bottom - top + 1, columns: right - left + 1 };
}

export function zoneOf({ col, row }: { col: number; row: number }): Zone {
  return { left: col, right: col, top: row, bottom: row };
}
