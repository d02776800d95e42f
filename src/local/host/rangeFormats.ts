import { positionsOf, rowsOf, zoneOf } from './a1.ts';
import { setBorder } from './borders.ts';
import { setStyles } from './cellStyles.ts';
import { hexColour } from './colour.ts';
import type { Style } from './engine.ts';
import type { GoogleBorderStyle, GoogleRange } from './google.ts';
import { engineFormat, generalFormat } from './numberFormat.ts';
import type { RangeContext } from './rangePlace.ts';
import { requireSize } from './requireSize.ts';

const defaultFontSize = 10; // pt, of Google Sheets and of the engine

export type FontWeight = 'normal' | 'bold' | null;
export type FontStyle = 'normal' | 'italic' | null;
type FontLine = 'none' | 'underline' | 'line-through' | null;

/** Number formats, colours, fonts and borders of a range. */
export function rangeFormats(context: RangeContext): Partial<GoogleRange> {
  const { workbook, sheetId, zone } = context;
  const { getters } = workbook.model;

  const setStyle = (style: Style): GoogleRange => {
    workbook.dispatch('SET_FORMATTING', { sheetId, target: [zone], style });
    return context.range();
  };
  const read = <T>(value: (style: Style, format: string) => T): T[][] =>
    rowsOf(zone, (col, row) => {
      const cell = getters.getCell({ sheetId, col, row });
      return value(cell?.style ?? {}, cell?.format ?? '');
    });
  const first = <T>(rows: T[][]): T => rows[0]?.[0] as T;

  const background = (style: Style) => (style.fillColor || '#ffffff').toLowerCase();
  const weight = (style: Style) => (style.bold ? 'bold' : 'normal');
  const slant = (style: Style) => (style.italic ? 'italic' : 'normal');
  const size = (style: Style) => style.fontSize ?? defaultFontSize;
  const numberFormat = (_style: Style, format: string) => format || generalFormat;

  return {
    setNumberFormat(format: string) {
      const known = engineFormat(workbook.engine, format);
      workbook.dispatch('SET_FORMATTING', { sheetId, target: [zone], format: known });
      return context.range();
    },

    setNumberFormats(formats: string[][]) {
      requireSize(formats, zone);
      for (const { col, row } of positionsOf(zone)) {
        const format = engineFormat(workbook.engine, formats[row - zone.top]?.[col - zone.left] ?? '');
        if ((getters.getCell({ sheetId, col, row })?.format ?? '') === format) continue;
        workbook.dispatch('SET_FORMATTING', { sheetId, target: [zoneOf({ col, row })], format });
      }
      return context.range();
    },

    getNumberFormat: () => first(read(numberFormat)),
    getNumberFormats: () => read(numberFormat),

    setBackground: (colour: string | null) => setStyle(fill(colour)),
    setBackgrounds: (colours: (string | null)[][]) => setStyles(context, colours, fill),
    getBackground: () => first(read(background)),
    getBackgrounds: () => read(background),

    setFontColor: (colour: string | null) => setStyle(fontColour(colour)),
    setFontColors: (colours: (string | null)[][]) => setStyles(context, colours, fontColour),

    setFontWeight: (value: FontWeight) => setStyle(fontWeight(value)),
    setFontWeights: (values: FontWeight[][]) => setStyles(context, values, fontWeight),
    getFontWeight: () => first(read(weight)),
    getFontWeights: () => read(weight),

    setFontStyle: (value: FontStyle) => setStyle(fontStyle(value)),
    setFontStyles: (values: FontStyle[][]) => setStyles(context, values, fontStyle),
    getFontStyle: () => first(read(slant)),
    getFontStyles: () => read(slant),

    setFontLine: (value: FontLine) => setStyle(fontLine(value)),

    setFontSize: (points: number) => setStyle({ fontSize: points }),
    setFontSizes: (points: number[][]) => setStyles(context, points, (value) => ({ fontSize: value })),
    getFontSize: () => first(read(size)),
    getFontSizes: () => read(size),

    setBorder(
      top: boolean | null,
      left: boolean | null,
      bottom: boolean | null,
      right: boolean | null,
      vertical: boolean | null,
      horizontal: boolean | null,
      colour: string | null = null,
      style: GoogleBorderStyle | null = null,
    ) {
      setBorder(context, { top, left, bottom, right, vertical, horizontal }, colour, style);
      return context.range();
    },
  };
}

/** An empty colour is the default one. */
export const fill = (colour: string | null): Style => ({ fillColor: hexColour(colour) ?? '' });
export const fontColour = (colour: string | null): Style => ({ textColor: hexColour(colour) ?? '' });
export const fontWeight = (value: FontWeight): Style => ({ bold: value === 'bold' });
export const fontStyle = (value: FontStyle): Style => ({ italic: value === 'italic' });
const fontLine = (value: FontLine): Style => ({
  underline: value === 'underline',
  strikethrough: value === 'line-through',
});
