import { type QuantityKind, unitNamed } from '../units.ts';

/** What Google tells of an edit by a person; of several cells at once it tells no values. */
interface EditEvent {
  readonly range: GoogleAppsScript.Spreadsheet.Range;
  readonly value?: unknown;
  readonly oldValue?: unknown;
}

/** Kinds of which a workbook chooses the unit that it shows them in. */
const chosenKinds: readonly QuantityKind[] = ['mass', 'length', 'volume', 'power', 'speed', 'height'];

const isUnit = (value: unknown) =>
  typeof value === 'string' &&
  (/^[A-Z]{3}(\/|$)/.test(value) || chosenKinds.some((kind) => unitNamed(kind, value) !== undefined));

/**
 * Asked at every edit by a person, so it looks no further than it must: where a unit was typed or taken away, or several
 * cells were changed at once, the charts may have to say another unit.
 */
export function touchesUnits({ range, value, oldValue }: EditEvent): boolean {
  return range.getNumRows() * range.getNumColumns() > 1 || isUnit(value) || isUnit(oldValue);
}
