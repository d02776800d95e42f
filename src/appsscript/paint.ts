import { colours } from '../workbook/palette.ts';
import { grow, notationOf, type Place, type View } from './places.ts';

/** How some cells look; what is left out stays as it is. */
export interface Look {
  readonly bold?: boolean;
  readonly italic?: boolean;
  /** In points. */
  readonly size?: number;
  readonly ink?: string;
  readonly fill?: string;
  readonly wrap?: boolean;
  readonly horizontal?: 'left' | 'center' | 'right';
  readonly vertical?: 'top' | 'middle';
  /** Framed: what a person fills in. */
  readonly framed?: boolean;
}

export type PlaceLook = readonly [Place, Look];

type RangeList = GoogleAppsScript.Spreadsheet.RangeList;

const painters: { readonly [K in keyof Look]-?: (ranges: RangeList, value: NonNullable<Look[K]>) => void } = {
  bold: (ranges, isBold) => ranges.setFontWeight(isBold ? 'bold' : 'normal'),
  italic: (ranges, isItalic) => ranges.setFontStyle(isItalic ? 'italic' : 'normal'),
  size: (ranges, points) => ranges.setFontSize(points),
  ink: (ranges, colour) => ranges.setFontColor(colour),
  fill: (ranges, colour) => ranges.setBackground(colour),
  wrap: (ranges, isWrapped) => ranges.setWrap(isWrapped),
  horizontal: (ranges, side) => ranges.setHorizontalAlignment(side),
  vertical: (ranges, side) => ranges.setVerticalAlignment(side),
  framed: (ranges) =>
    ranges.setBorder(
      true,
      true,
      true,
      true,
      true,
      true,
      colours.inputFrame,
      SpreadsheetApp.BorderStyle.SOLID,
    ),
};

/** Looks of many places, each kind of look in one call for all the places of a sheet that get it. */
export function paint(looks: readonly PlaceLook[]): void {
  for (const view of new Set(looks.map(([place]) => place.view))) {
    paintSheet(
      view,
      looks.filter(([place]) => place.view === view),
    );
  }
}

function paintSheet(view: View, looks: readonly PlaceLook[]): void {
  for (const [place] of looks) grow(place);
  for (const key of Object.keys(painters) as (keyof Look)[]) {
    const places = new Map<Look[typeof key], string[]>();
    for (const [place, look] of looks) {
      const value = look[key];
      if (value !== undefined) places.set(value, [...(places.get(value) ?? []), notationOf(place)]);
    }
    const painter = painters[key] as (ranges: RangeList, value: unknown) => void;
    for (const [value, notations] of places) painter(view.sheet.getRangeList(notations), value);
  }
}
