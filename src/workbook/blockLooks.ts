import type { Cell } from '../tables/cell.ts';

/** Where a cell's text stands; null where the sheet decides. */
export type Side = 'right' | 'center' | null;

/** How the cells of a computed block are shown, judged by what stands in them now. */
export interface BlockLooks {
  readonly formats: string[][];
  readonly bold: boolean[][];
  /**
   * Numbers stand right, so heads, units and words in columns of numbers do. Words between two columns of numbers stand in
   * the middle, clear of both. Never in the first column, which holds the list of faults while there is one: it could not
   * run on to the left.
   */
  readonly sides: Side[][];
  /** Rows of heads, which may take more than one line. */
  readonly heads: number[];
}

/** A row is one of these: a line by itself, the heads of columns, their units, values. */
type Kind = 'line' | 'head' | 'unit' | 'values';
/** Rows under a head of packages side by side are read along, other tables down. */
type Reading = 'along' | 'down';

interface Row {
  readonly kind: Kind;
  readonly reading: Reading;
  /** Number of the part of the block under one head. */
  readonly part: number;
}

const general = 'General'; // shows a number as it is
const minus = '"\u2212"';
const whole = '#,##0';
const decimals = '#,##0.0##'; // shows every digit that a cell has: it hides none when rows move
const longestHeading = 100; // characters; longer lines are sentences
const longestHead = 60; // characters of a column's head
const longestWord = 16; // characters of a word that stands where a number would

const isEmpty = (cell: Cell) => cell === null || cell === undefined || cell === '';
const isNumber = (cell: Cell): cell is number => typeof cell === 'number';

const filled = (row: readonly Cell[]) => row.filter((cell) => !isEmpty(cell)).length;

function rowsOf(block: readonly (readonly Cell[])[]): Row[] {
  let reading: Reading = 'along';
  let part = 0;
  let before: Kind = 'line';
  return block.map((row, index): Row => {
    const [first, second] = row;
    const next = block[index + 1] ?? [];
    const isAlone = row.slice(1).every(isEmpty) && typeof first === 'string';
    const isWords = !row.some(isNumber);
    const isAboveUnits =
      isEmpty(next[0] ?? null) && !next.some(isNumber) && filled(next) > 0 && filled(next) <= filled(row);
    const isWithoutLabel = isEmpty(first ?? null);
    const beginsTable =
      index === 0 || second === 'unit' || isAboveUnits || isWithoutLabel || isNumber(next[0] ?? null);
    const isAboveNumbers = isWithoutLabel && !isEmpty(next[0] ?? null) && next.some(isNumber);
    const isShort = row.every((cell) => String(cell ?? '').length <= longestHead);
    const isThere = before === 'line' ? beginsTable : before === 'values' && isAboveNumbers;
    const isHead = isWords && isShort && !isEmpty(second ?? null) && isThere;
    let kind: Kind = 'values';
    if (isAlone) kind = 'line';
    else if (isHead) kind = 'head';
    else if (before === 'head' && isWords && isWithoutLabel) kind = 'unit';
    if (kind === 'line' || kind === 'head') part++;
    if (kind === 'head') reading = second === 'unit' ? 'along' : 'down';
    before = kind;
    return { kind, reading, part };
  });
}

function numberFormat(numbers: readonly number[], isDifference: boolean): string {
  if (numbers.length === 0) return general;
  const hasDecimals = !numbers.every(Number.isInteger);
  const digits = hasDecimals ? decimals : whole;
  if (isDifference) return `+${digits};${minus}${digits};0`;
  const isLarge = numbers.some((value) => Math.abs(value) >= 1000);
  const isNegative = numbers.some((value) => value < 0);
  return hasDecimals || isLarge || isNegative ? `${digits};${minus}${digits}` : general;
}

/** @param packages names, which head columns but begin rows too */
export function blockLooks(block: readonly (readonly Cell[])[], packages: ReadonlySet<string>): BlockLooks {
  const rows = rowsOf(block);
  const column = (part: number, c: number) =>
    block.filter((_, r) => rows[r]?.part === part && rows[r]?.kind === 'values').map((row) => row[c] ?? null);
  const formats = block.map((row, r) => {
    const { reading, part } = rows[r] as Row;
    const isDifference = typeof row[0] === 'string' && row[0].startsWith('  against');
    const along = numberFormat(row.slice(1).filter(isNumber), isDifference);
    return row.map((cell, c) => {
      if (!isNumber(cell)) return general;
      return reading === 'along' ? along : numberFormat(column(part, c).filter(isNumber), false);
    });
  });
  const bold = block.map((row, r) => {
    const { kind } = rows[r] as Row;
    const isHeading = kind === 'line' && /^[A-Z]/.test(String(row[0])) && !/\.$/.test(String(row[0]));
    return row.map(
      (_, c) => kind === 'head' || (isHeading && c === 0 && String(row[0]).length < longestHeading),
    );
  });
  const sideOf = (part: number, c: number): Side => {
    const hasNumbers = (at: number) => at > 0 && column(part, at).some(isNumber);
    if (hasNumbers(c)) return 'right';
    const isBetween = hasNumbers(c - 1) && hasNumbers(c + 1);
    if (!column(part, c).every(isEmpty)) return isBetween ? 'center' : null;
    const units = block.find((_, r) => rows[r]?.part === part && rows[r]?.kind === 'unit');
    return isBetween || !isEmpty(units?.[c] ?? null) ? 'right' : null; // where numbers are on other days
  };
  const sides = block.map((row, r): Side[] => {
    const { kind, reading, part } = rows[r] as Row;
    const isWord = (cell: Cell) => isNumber(cell) || String(cell ?? '').length <= longestWord;
    if (kind === 'line') return row.map(() => null);
    if (reading === 'along') {
      const areWords = row.slice(2).every(isWord);
      return row.map((_, c) => (c >= 2 && areWords && !packages.has(String(row[0])) ? 'right' : null));
    }
    return row.map((cell, c) => (c > 0 && (kind !== 'values' || isWord(cell)) ? sideOf(part, c) : null));
  });
  const heads = rows.flatMap(({ kind }, r) => (kind === 'head' ? [r] : []));
  return { formats, bold, sides, heads };
}
