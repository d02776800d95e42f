import type { Zone } from './engine.ts';
import { protectionTypes } from './enumerations.ts';
import type { GoogleProtection, GoogleProtectionType, GoogleRange } from './google.ts';
import { placeOf } from './rangePlace.ts';
import { strict } from './strict.ts';
import { rangesOf, type TrackedRange } from './trackedRange.ts';
import type { Workbook } from './workbook.ts';

/**
 * A protection as the script set it. It is recorded and not enforced: the engine's own lock binds the script too, which
 * Google's does not.
 */
export interface ProtectionRecord {
  readonly sheetId: string;
  /** A protected range; without one, the whole sheet is protected. */
  readonly range?: TrackedRange;
  description: string;
  isWarningOnly: boolean;
  unprotected: readonly TrackedRange[];
}

/** Protects a range, or the whole sheet. Protecting a sheet again gives its protection back. */
export function protect(workbook: Workbook, sheetId: string, zone?: Zone): GoogleProtection {
  const existing = workbook.protections.find(
    (record) => !zone && !record.range && record.sheetId === sheetId,
  );
  if (existing) return createProtection(workbook, existing);
  const record: ProtectionRecord = {
    sheetId,
    ...(zone ? { range: workbook.track(sheetId, zone) } : {}),
    description: '',
    isWarningOnly: false,
    unprotected: [],
  };
  workbook.protections.push(record);
  return createProtection(workbook, record);
}

/** Protections of one type, of one sheet or of the whole workbook; those whose cells are gone are gone. */
export function protectionsOf(
  workbook: Workbook,
  type: GoogleProtectionType,
  sheetId?: string,
): GoogleProtection[] {
  return workbook.protections
    .filter((record) => workbook.model.getters.tryGetSheet(record.sheetId) !== undefined)
    .filter((record) => sheetId === undefined || record.sheetId === sheetId)
    .filter((record) => (type === protectionTypes.RANGE ? record.range?.zone : !record.range))
    .map((record) => createProtection(workbook, record));
}

function createProtection(workbook: Workbook, record: ProtectionRecord): GoogleProtection {
  const protection: GoogleProtection = strict<GoogleProtection>(workbook.calls, 'Protection', {
    canEdit: () => true,
    getDescription: () => record.description,
    setDescription(description: string) {
      record.description = description;
      return protection;
    },
    isWarningOnly: () => record.isWarningOnly,
    setWarningOnly(isWarningOnly: boolean) {
      record.isWarningOnly = isWarningOnly;
      return protection;
    },
    getProtectionType: () => (record.range ? protectionTypes.RANGE : protectionTypes.SHEET),
    getRange() {
      const { sheetId, range } = record;
      return workbook.range(sheetId, range?.zone ?? workbook.model.getters.getSheetZone(sheetId));
    },
    getUnprotectedRanges: () => rangesOf(workbook, record.unprotected),
    setUnprotectedRanges(ranges: GoogleRange[]) {
      record.unprotected = ranges.map((range) => {
        const { sheetId, zone } = placeOf(range);
        if (sheetId !== record.sheetId)
          throw new Error('the unprotected ranges must lie on the protected sheet');
        return workbook.track(sheetId, zone);
      });
      return protection;
    },
    remove() {
      const index = workbook.protections.indexOf(record);
      if (index >= 0) workbook.protections.splice(index, 1);
    },
  });
  return protection;
}
