import type { SheetLayout } from '../workbook/layout.ts';
import { colours } from '../workbook/palette.ts';
import { markInput } from './inputLooks.ts';
import { cellPlace, rangeOf, type View } from './places.ts';
import { linesRow } from './words.ts';

/** Looks of the first sheet: headings, and every mark shown as it looks elsewhere. */
export function startLooks(view: View, { lines, widths }: SheetLayout): void {
  widths.forEach((width, index) => {
    view.sheet.setColumnWidth(index + 1, width);
  });
  rangeOf(cellPlace(view, 1, 1))
    .setFontWeight('bold')
    .setFontSize(12);
  rangeOf(cellPlace(view, 2, 1)).setFontColor(colours.help);
  lines.forEach(({ look }, index) => {
    if (look === undefined) return;
    const cell = rangeOf(cellPlace(view, linesRow + index, 1));
    if (look === 'heading') cell.setFontWeight('bold');
    if (look === 'input') markInput(cell);
    if (look === 'stop') cell.setBackground(colours.stopFill).setFontWeight('bold');
    if (look === 'check') cell.setBackground(colours.checkFill);
    if (look === 'note') cell.setFontColor(colours.noteInk);
    if (look === 'unknown') cell.setFontColor(colours.unknownInk).setFontStyle('italic');
  });
}
