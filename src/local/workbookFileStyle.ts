import type { CellStyle } from 'hucre/xlsx';
import { columnLetters } from './host/a1.ts';
import type { Border, BorderDescr, Style, Zone } from './host/engine.ts';
import type { Workbook } from './host/workbook.ts';

/** Google Sheets' own; a font of the file without a name is whatever a program likes. */
export const defaultFont = { name: 'Arial', size: 10 } as const;

export const pointsPerPixel = 0.75; // 96 pixels and 72 points to the inch

/** The engine's looks of a cell as the file has them. */
export function cellStyle(style: Style, format?: string, border?: Border | null): CellStyle {
  const { bold, italic, underline, strikethrough, fontSize, textColor, fillColor } = style;
  const font = {
    ...(bold ? { bold } : {}),
    ...(italic ? { italic } : {}),
    ...(underline ? { underline } : {}),
    ...(strikethrough ? { strikethrough } : {}),
    ...(fontSize ? { size: fontSize } : {}),
    ...(textColor ? { color: { rgb: rgb(textColor) } } : {}),
  };
  const alignment = {
    ...(style.align ? { horizontal: style.align } : {}),
    ...(style.verticalAlign ? { vertical: verticals[style.verticalAlign] } : {}),
    ...(style.wrapping === 'wrap' ? { wrapText: true } : {}),
  };
  const fill = fillColor
    ? { type: 'pattern' as const, pattern: 'solid' as const, fgColor: { rgb: rgb(fillColor) } }
    : undefined;
  return {
    ...(Object.keys(font).length > 0 ? { font: { name: defaultFont.name, ...font } } : {}),
    ...(Object.keys(alignment).length > 0 ? { alignment } : {}),
    ...(fill ? { fill } : {}),
    ...(border ? { border: fileBorder(border) } : {}),
    ...(format ? { numFmt: format } : {}),
  };
}

const verticals = { top: 'top', middle: 'center', bottom: 'bottom' } as const;

function fileBorder({ top, bottom, left, right }: Border): NonNullable<CellStyle['border']> {
  const side = ({ style, color }: BorderDescr) => ({ style, color: { rgb: rgb(color) } });
  return {
    ...(top ? { top: side(top) } : {}),
    ...(bottom ? { bottom: side(bottom) } : {}),
    ...(left ? { left: side(left) } : {}),
    ...(right ? { right: side(right) } : {}),
  };
}

/** A colour without its mark, as the file has it. */
export function rgb(colour: string): string {
  return colour.replace('#', '').toUpperCase();
}

/** `'Sheet name'!$A$1:$B$2`. The engine allows no apostrophe in a sheet's name. */
export function absoluteReference(
  workbook: Workbook,
  { sheetId, zone }: { readonly sheetId: string; readonly zone: Zone },
): string {
  const corner = (column: number, row: number) => `$${columnLetters(column)}$${row + 1}`;
  const first = corner(zone.left, zone.top);
  const last = corner(zone.right, zone.bottom);
  const name = workbook.model.getters.getSheetName(sheetId);
  return `'${name}'!${first === last ? first : `${first}:${last}`}`;
}
