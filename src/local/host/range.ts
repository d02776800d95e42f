import type { Zone } from './engine.ts';
import type { GoogleRange } from './google.ts';
import { rangeAlignment } from './rangeAlignment.ts';
import { rangeFormats } from './rangeFormats.ts';
import { rangeGeometry } from './rangeGeometry.ts';
import { type RangeContext, rangePlaces } from './rangePlace.ts';
import { rangeValidation } from './rangeValidation.ts';
import { rangeValues } from './rangeValues.ts';
import { strict } from './strict.ts';
import type { Workbook } from './workbook.ts';

/** @throws Error when the zone reaches beyond the sheet */
export function createRange(workbook: Workbook, sheetId: string, zone: Zone): GoogleRange {
  const { getters } = workbook.model;
  if (!getters.tryGetSheet(sheetId)) throw new Error('the sheet was deleted');
  const { left, right, top, bottom } = zone;
  const isInside =
    left >= 0 &&
    top >= 0 &&
    left <= right &&
    top <= bottom &&
    right < getters.getNumberCols(sheetId) &&
    bottom < getters.getNumberRows(sheetId);
  if (!isInside) throw new Error('The coordinates of the range are outside the dimensions of the sheet.');
  const context: RangeContext = { workbook, sheetId, zone, range: () => range };
  const range: GoogleRange = strict<GoogleRange>(workbook.calls, 'Range', {
    ...rangeGeometry(context),
    ...rangeValues(context),
    ...rangeFormats(context),
    ...rangeAlignment(context),
    ...rangeValidation(context),
  });
  rangePlaces.set(range, context);
  return range;
}
