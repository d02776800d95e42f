import type { Zone } from './engine.ts';
import type { GoogleRange } from './google.ts';
import { ObjectRecords } from './objectRecords.ts';
import type { Workbook } from './workbook.ts';

/** Where a range is. Like Google's, it stays where it is when rows are inserted above it. */
export interface RangePlace {
  readonly workbook: Workbook;
  readonly sheetId: string;
  readonly zone: Zone;
}

/** A range's place and, for methods that return it, the range. */
export interface RangeContext extends RangePlace {
  readonly range: () => GoogleRange;
}

export const rangePlaces = new ObjectRecords<RangePlace>('a Range');

export const placeOf = (range: GoogleRange): RangePlace => rangePlaces.of(range);
