import { positionsOf, zoneOf } from './a1.ts';
import type { Style } from './engine.ts';
import type { GoogleRange } from './google.ts';
import type { RangeContext } from './rangePlace.ts';
import { requireSize } from './requireSize.ts';

/** Gives every cell of a range a style of its own; a cell that looks so already is left alone, which is most of them. */
export function setStyles<T>(
  context: RangeContext,
  values: readonly (readonly T[])[],
  styleOf: (value: T) => Style,
): GoogleRange {
  const { workbook, sheetId, zone } = context;
  const { getters } = workbook.model;
  requireSize(values, zone);
  for (const { col, row } of positionsOf(zone)) {
    const style = styleOf(values[row - zone.top]?.[col - zone.left] as T);
    const current: Style = getters.getCell({ sheetId, col, row })?.style ?? {};
    if (looksSo(current, style)) continue;
    workbook.dispatch('SET_FORMATTING', { sheetId, target: [zoneOf({ col, row })], style });
  }
  return context.range();
}

const defaults: Style = { wrapping: 'overflow' };

/** No bold and no colour are the same whether they were never set or taken back. */
function looksSo(current: Style, style: Style): boolean {
  return (Object.keys(style) as (keyof Style)[]).every(
    (key) => (current[key] || defaults[key]) === (style[key] || defaults[key]),
  );
}
