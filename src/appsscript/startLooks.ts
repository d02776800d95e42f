import type { SheetLayout, StartLine } from '../workbook/layout.ts';
import { colours } from '../workbook/palette.ts';
import { inputLook } from './inputLooks.ts';
import { type Look, paint } from './paint.ts';
import { cellPlace, type View } from './places.ts';
import { headingLooks } from './resultLooks.ts';
import { setWidths } from './sizes.ts';
import { linesRow } from './words.ts';

const lookOf: { readonly [K in NonNullable<StartLine['look']>]: Look } = {
  heading: { bold: true },
  input: inputLook,
  stop: { fill: colours.stopFill, bold: true },
  check: { fill: colours.checkFill },
  note: { ink: colours.noteInk },
  unknown: { ink: colours.unknownInk, italic: true },
};

/** Looks of the first sheet: headings, and every mark shown as it looks elsewhere. */
export function startLooks(view: View, { lines, widths }: SheetLayout): void {
  setWidths(view, 1, widths);
  paint([
    ...headingLooks(view, 1),
    ...lines.flatMap(({ look }, index) =>
      look === undefined ? [] : [[cellPlace(view, linesRow + index, 1), lookOf[look]] as const],
    ),
  ]);
}
