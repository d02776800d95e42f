import { sizeOf } from './a1.ts';
import type { Zone } from './engine.ts';

/** Google's wording, so that what a person finds by searching for it is right. From memory. */
export function requireSize(values: readonly (readonly unknown[])[], zone: Zone): void {
  const { rows, columns } = sizeOf(zone);
  if (!Array.isArray(values) || !values.every(Array.isArray)) {
    throw new Error('the values must be rows of cells');
  }
  if (values.length !== rows) {
    throw new Error(
      `The number of rows in the data does not match the number of rows in the range. The data has ${values.length} but the range has ${rows}.`,
    );
  }
  const odd = values.find((row) => row.length !== columns);
  if (odd) {
    throw new Error(
      `The number of columns in the data does not match the number of columns in the range. The data has ${odd.length} but the range has ${columns}.`,
    );
  }
}
