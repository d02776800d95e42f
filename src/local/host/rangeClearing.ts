import { positionsOf } from './a1.ts';
import type { RangePlace } from './rangePlace.ts';
import { applyRule } from './rangeValidation.ts';

interface ClearOptions {
  readonly contentsOnly?: boolean | undefined;
  readonly formatOnly?: boolean | undefined;
  readonly validationsOnly?: boolean | undefined;
}

/**
 * Clears contents, looks or validation rules. Number formats stay when looks are cleared, as in Google Sheets (its
 * documentation of `clearFormat`, from memory).
 */
export function clearRange(place: RangePlace, options: ClearOptions): void {
  const { workbook, sheetId, zone } = place;
  const { getters } = workbook.model;
  for (const option of Object.keys(options)) {
    if (!['contentsOnly', 'formatOnly', 'validationsOnly'].includes(option)) {
      throw new Error(`Range.clear: ${option} is not implemented by the local host`);
    }
  }
  if (options.contentsOnly) {
    for (const { col, row } of positionsOf(zone)) {
      if (getters.getCell({ sheetId, col, row })) {
        workbook.dispatch('UPDATE_CELL', { sheetId, col, row, content: '' });
      }
    }
  }
  if (options.formatOnly) {
    for (const { col, row } of positionsOf(zone)) {
      if (getters.getCell({ sheetId, col, row })?.style) {
        workbook.dispatch('UPDATE_CELL', { sheetId, col, row, style: null });
      }
    }
    workbook.dispatch('SET_ZONE_BORDERS', { sheetId, target: [zone], border: { position: 'clear' } });
  }
  if (options.validationsOnly) applyRule(place, null);
}
