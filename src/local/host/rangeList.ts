import { setBorder } from './borders.ts';
import type { Style, Zone } from './engine.ts';
import type { GoogleBorderStyle, GoogleRangeList } from './google.ts';
import { engineFormat } from './numberFormat.ts';
import { type Horizontal, horizontal, type Vertical, vertical, wrapped } from './rangeAlignment.ts';
import { type FontStyle, type FontWeight, fill, fontColour, fontStyle, fontWeight } from './rangeFormats.ts';
import { strict } from './strict.ts';
import type { Workbook } from './workbook.ts';

/** Ranges of one sheet that are changed by one call. */
export function createRangeList(
  workbook: Workbook,
  sheetId: string,
  zones: readonly Zone[],
): GoogleRangeList {
  const target = [...zones];
  const setStyle = (style: Style): GoogleRangeList => {
    workbook.dispatch('SET_FORMATTING', { sheetId, target, style });
    return list;
  };
  const list: GoogleRangeList = strict<GoogleRangeList>(workbook.calls, 'RangeList', {
    getRanges: () => zones.map((zone) => workbook.range(sheetId, zone)),
    setBackground: (colour: string | null) => setStyle(fill(colour)),
    setFontColor: (colour: string | null) => setStyle(fontColour(colour)),
    setFontSize: (points: number) => setStyle({ fontSize: points }),
    setFontStyle: (value: FontStyle) => setStyle(fontStyle(value)),
    setFontWeight: (value: FontWeight) => setStyle(fontWeight(value)),
    setHorizontalAlignment: (alignment: Horizontal) => setStyle(horizontal(alignment)),
    setVerticalAlignment: (alignment: Vertical) => setStyle(vertical(alignment)),
    setWrap: (isWrapped: boolean) => setStyle(wrapped(isWrapped)),
    setNumberFormat(format: string) {
      const known = engineFormat(workbook.engine, format);
      workbook.dispatch('SET_FORMATTING', { sheetId, target, format: known });
      return list;
    },
    setBorder(
      top: boolean | null,
      left: boolean | null,
      bottom: boolean | null,
      right: boolean | null,
      between: boolean | null,
      below: boolean | null,
      colour: string | null = null,
      style: GoogleBorderStyle | null = null,
    ) {
      const edges = { top, left, bottom, right, vertical: between, horizontal: below };
      for (const zone of zones) setBorder({ workbook, sheetId, zone }, edges, colour, style);
      return list;
    },
  });
  return list;
}
