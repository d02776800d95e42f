import { positionsOf } from './a1.ts';
import { hexColour } from './colour.ts';
import type { Border, BorderDescr } from './engine.ts';
import { borderStyles } from './enumerations.ts';
import type { GoogleBorderStyle } from './google.ts';
import type { RangePlace } from './rangePlace.ts';

/** For each edge: true draws it, false takes it away, null leaves it. */
interface Edges {
  readonly top: boolean | null;
  readonly left: boolean | null;
  readonly bottom: boolean | null;
  readonly right: boolean | null;
  /** Between the range's columns. */
  readonly vertical: boolean | null;
  /** Between the range's rows. */
  readonly horizontal: boolean | null;
}

export function setBorder(
  { workbook, sheetId, zone }: RangePlace,
  edges: Edges,
  colour: string | null,
  style: GoogleBorderStyle | null,
): void {
  const line: BorderDescr = { color: hexColour(colour) ?? '#000000', style: engineLine(style) };
  const change = (isDrawn: boolean | null, current: BorderDescr | undefined) =>
    isDrawn === null ? current : isDrawn ? line : undefined;

  for (const { col, row } of positionsOf(zone)) {
    const current = workbook.model.getters.getCellBorder({ sheetId, col, row }) ?? {};
    const border = {
      top: change(row === zone.top ? edges.top : edges.horizontal, current.top),
      bottom: change(row === zone.bottom ? edges.bottom : edges.horizontal, current.bottom),
      left: change(col === zone.left ? edges.left : edges.vertical, current.left),
      right: change(col === zone.right ? edges.right : edges.vertical, current.right),
    };
    workbook.dispatch('SET_BORDER', { sheetId, col, row, border: border as Border });
  }
}

function engineLine(style: GoogleBorderStyle | null): BorderDescr['style'] {
  switch (style) {
    case null:
    case borderStyles.SOLID:
      return 'thin';
    case borderStyles.SOLID_MEDIUM:
      return 'medium';
    case borderStyles.SOLID_THICK:
      return 'thick';
    case borderStyles.DASHED:
      return 'dashed';
    case borderStyles.DOTTED:
      return 'dotted';
    default:
      throw new Error(`border style ${style} can't be shown by the local host`);
  }
}
