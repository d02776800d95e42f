import type { Workbook } from '../../src/local/host/workbook.ts';

/** Advance widths of Helvetica's letters, which Arial has too, in thousandths of the size (Adobe's font metrics, from memory). */
const widths: Readonly<Record<string, number>> = {
  ...of(222, 'ijl’‘'),
  ...of(278, ' !,./:;I[]ft·'),
  ...of(333, '()-r'),
  ...of(350, '•'),
  ...of(355, '"'),
  ...of(500, 'ckJsvxyz'),
  ...of(584, '+<=>−±'),
  ...of(611, 'FTZ'),
  ...of(667, 'ABEKPSVXY&'),
  ...of(722, 'CDHNRUw'),
  ...of(778, 'GOQ'),
  ...of(833, 'Mm'),
  ...of(889, '%'),
  ...of(944, 'W'),
  ...of(1000, '…■▲'),
};
const usual = 556; // figures and most small letters
const boldShare = 1.07; // bold letters are wider, the widest by a tenth

function of(width: number, letters: string): Record<string, number> {
  return Object.fromEntries([...letters].map((letter) => [letter, width]));
}

/** Width of a text in pixels: a point is 4/3 of one. */
function textWidth(text: string, size: number, isBold: boolean): number {
  const thousandths = [...text].reduce((sum, letter) => sum + (widths[letter] ?? usual), 0);
  return (thousandths / 1000) * size * (4 / 3) * (isBold ? boldShare : 1);
}

/** Lines of a text that wraps between words. */
function lines(text: string, room: number, size: number, isBold: boolean): number {
  let count = 1;
  let used = 0;
  for (const word of text.split(' ')) {
    const width = textWidth(`${word} `, size, isBold);
    if (used > 0 && used + width > room) {
      count++;
      used = 0;
    }
    used += width;
    while (used - textWidth(' ', size, isBold) > room) {
      count++;
      used -= room;
    }
  }
  return count;
}

export interface Clipping {
  readonly sheet: string;
  readonly cell: string;
  readonly text: string;
  readonly why: string;
}

const padding = 3; // pixels at the sides of a cell, at least

/** Every text or number that its cell does not show whole: cut off by a neighbour, by its row's height, or shown as ###. */
export function clippings(workbook: Workbook): Clipping[] {
  workbook.flush();
  const { getters } = workbook.model;
  const found: Clipping[] = [];
  for (const sheetId of getters.getSheetIds()) {
    const positions = getters.getEvaluatedCellsPositions(sheetId);
    const shown = new Map<string, string>();
    for (const position of positions) {
      const text = getters.getEvaluatedCell(position).formattedValue;
      if (text !== '') shown.set(`${position.row} ${position.col}`, text);
    }
    const columns = getters.getNumberCols(sheetId);
    for (const { row, col } of positions) {
      const text = shown.get(`${row} ${col}`);
      if (text === undefined) continue;
      const value = getters.getEvaluatedCell({ sheetId, row, col }).value;
      const style = getters.getCellComputedStyle({ sheetId, row, col });
      const size = style.fontSize ?? 10;
      const isBold = style.bold === true;
      const own = getters.getColSize(sheetId, col) - 2 * padding;
      const say = (why: string) =>
        found.push({
          sheet: getters.getSheetName(sheetId),
          cell: `${String.fromCharCode(65 + (col % 26))}${col > 25 ? '+' : ''}${row + 1}`,
          text,
          why,
        });
      const wanted = textWidth(text, size, isBold);
      if (style.wrapping === 'wrap' && typeof value === 'string') {
        const longest = Math.max(...text.split(' ').map((word) => textWidth(word, size, isBold)));
        if (longest > own) say(`a word of ${Math.round(longest)} px in ${own}`);
        const height = getters.getUserRowSize(sheetId, row);
        const count = lines(text, own, size, isBold);
        // Google and LibreOffice raise rows whose height nobody set
        if (height !== undefined && count * size * 1.5 > height + 2) say(`${count} lines in ${height} px`);
        continue;
      }
      let room = own;
      const isFree = (c: number) => c >= 0 && c < columns && !shown.has(`${row} ${c}`);
      if (typeof value === 'string') {
        const step = style.align === 'right' ? -1 : 1;
        for (let c = col + step; room < wanted && isFree(c); c += step)
          room += getters.getColSize(sheetId, c);
      }
      if (wanted > room) say(`${Math.round(wanted)} px in ${room}`);
    }
  }
  return found;
}
