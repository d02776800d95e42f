import { type InputName, type Inputs, inputNames, inputPlace } from '../tables/inputs.ts';
import type { Finding } from './finding.ts';

/** A cell of the inputs by its names; without a row, the table as a whole. */
export interface NamedPlace {
  readonly table: InputName;
  readonly row?: string;
  readonly column?: string;
}

/** The table that a finding's source names, the longest name first: "fuel points table" is not of any "points". */
function tableNamed(source: string): InputName | undefined {
  const byLength = [...inputNames].sort((one, other) => other.length - one.length);
  return byLength.find((name) => new RegExp(`\\b${name}\\b`).test(source));
}

/**
 * Where a finding can be mended: the row its subject names, in the table its source names or in any other, else that
 * table; undefined where it concerns no input.
 */
export function findingPlace(inputs: Inputs, finding: Finding): NamedPlace | undefined {
  const first = tableNamed(finding.source);
  const tables = [...(first === undefined ? [] : [first]), ...inputNames.filter((name) => name !== first)];
  const rows = [finding.subject, `${finding.package}, ${finding.subject}`];
  for (const table of tables) {
    for (const row of rows) {
      if (inputPlace(inputs, table, row) === undefined) continue;
      const column = [finding.package, 'value'].find((name) => inputPlace(inputs, table, row, name));
      return column === undefined ? { table, row } : { table, row, column };
    }
  }
  return first === undefined ? undefined : { table: first };
}
