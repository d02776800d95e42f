import type { GoogleNamedRange, GoogleRange } from './google.ts';
import { placeOf } from './rangePlace.ts';
import { strict } from './strict.ts';
import type { Workbook } from './workbook.ts';

/** Names a range, or moves the name if it is taken. */
export function setNamedRange(workbook: Workbook, name: string, range: GoogleRange): void {
  requireName(name);
  const { sheetId, zone } = placeOf(range);
  const ranges = [{ _sheetId: sheetId, _zone: zone }];
  // The engine's own adapters expect a sheet in a command about ranges, and hold the range against its size.
  if (workbook.model.getters.getNamedRange(name)) {
    const names = { oldRangeName: name, newRangeName: name };
    workbook.dispatch('UPDATE_NAMED_RANGE', { ...names, ranges, ...{ sheetId } });
  } else {
    workbook.dispatch('CREATE_NAMED_RANGE', { name, ranges, ...{ sheetId } });
  }
}

export function namedRangesOf(workbook: Workbook, sheetId?: string): GoogleNamedRange[] {
  return workbook.model.getters
    .getNamedRanges()
    .filter(({ range }) => sheetId === undefined || range.sheetId === sheetId)
    .map(({ name }) => createNamedRange(workbook, name));
}

export function rangeByName(workbook: Workbook, name: string): GoogleRange | null {
  const range = workbook.model.getters.getNamedRange(name)?.range;
  return range ? workbook.range(range.sheetId, range.zone) : null;
}

export function removeNamedRange(workbook: Workbook, name: string): void {
  workbook.dispatch('DELETE_NAMED_RANGE', { name });
}

function createNamedRange(workbook: Workbook, firstName: string): GoogleNamedRange {
  let name = firstName;
  const rangeNow = (): GoogleRange => {
    const range = rangeByName(workbook, name);
    if (!range) throw new Error(`the named range ${name} was removed`);
    return range;
  };
  const namedRange: GoogleNamedRange = strict<GoogleNamedRange>(workbook.calls, 'NamedRange', {
    getName: () => name,
    getRange: rangeNow,
    remove: () => removeNamedRange(workbook, name),
    setName(newName: string) {
      requireName(newName);
      const { sheetId, zone } = placeOf(rangeNow());
      const ranges = [{ _sheetId: sheetId, _zone: zone }];
      const names = { oldRangeName: name, newRangeName: newName };
      workbook.dispatch('UPDATE_NAMED_RANGE', { ...names, ranges, ...{ sheetId } });
      name = newName;
      return namedRange;
    },
    setRange(range: GoogleRange) {
      rangeNow();
      setNamedRange(workbook, name, range);
      return namedRange;
    },
  });
  return namedRange;
}

/** Google's rule, from memory: letters, digits and underscores, no digit first, not shaped like a cell, not a truth value. */
function requireName(name: string): void {
  const isShaped = /^[A-Z_][A-Z0-9_]*$/i.test(name) && name.length <= 250;
  const isTaken = /^(?:[A-Z]{1,3}\d+|R\d*C\d*|TRUE|FALSE)$/i.test(name);
  if (!isShaped || isTaken) throw new Error(`'${name}' can't name a range`);
}
