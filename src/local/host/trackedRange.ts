import type { Zone } from './engine.ts';
import type { GoogleRange } from './google.ts';
import type { Workbook } from './workbook.ts';

/** A range that moves with its cells when rows or columns come or go; its zone is lost with its cells. */
export interface TrackedRange {
  readonly sheetId: string;
  zone: Zone | undefined;
}

/** The ranges that still have cells, where they are now. */
export function rangesOf(workbook: Workbook, tracked: readonly TrackedRange[]): GoogleRange[] {
  return tracked.flatMap(({ sheetId, zone }) => (zone ? [workbook.range(sheetId, zone)] : []));
}
