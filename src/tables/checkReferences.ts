import type { Catalogue } from './catalogue.ts';
import { nameKey, plain } from './cell.ts';
import { attributeConflict, conflict, type RecordPlace, rowNameOf } from './conflict.ts';
import type { FaultLog } from './faults.ts';
import { meantLabel } from './readCell.ts';

/** Names that one table may use of another. */
interface Known {
  readonly names: readonly string[];
  readonly keys: ReadonlySet<string>;
  /** where they stand, in words */
  readonly from: string;
}

const mostListed = 12; // names in one message

function knownFrom(from: string, typed: readonly (string | undefined)[]): Known {
  const names = typed.filter((name) => name !== undefined);
  return { names, keys: new Set(names.map(nameKey)), from };
}

const unknownAmong = (names: readonly (string | undefined)[], { keys }: Known): string[] =>
  names.filter((name): name is string => name !== undefined && name !== '' && !keys.has(nameKey(name)));

function expectedName(unknown: string, { names, from }: Known): string {
  const meant = meantLabel(unknown, names);
  if (meant !== undefined) return `"${meant}" or another name from ${from}`;
  const list = names.length > mostListed ? `${names.length} names` : names.join(', ');
  return `a name from ${from} (${names.length === 0 ? 'none is there' : list})`;
}

function checkColumn<R extends RecordPlace>(
  table: string,
  rows: readonly R[],
  column: string,
  namesOf: (row: R) => string | undefined | readonly string[],
  known: Known,
  log: FaultLog,
): void {
  for (const row of rows) {
    const names = namesOf(row);
    const unknown = unknownAmong(typeof names === 'string' || names === undefined ? [names] : names, known);
    if (unknown.length > 0)
      conflict(log, table, row, column, expectedName(unknown[0] as string, known), unknown.join(', '));
  }
}

function checkAttribute(
  attribute: string,
  typed: readonly (string | undefined)[],
  known: Known,
  log: FaultLog,
) {
  const unknown = unknownAmong(typed, known);
  if (unknown.length > 0) {
    const expected = expectedName(unknown[0] as string, known);
    attributeConflict(log, 'airframe', attribute, 'value', expected, unknown.join(', '));
  }
}

/** Names that point from one table into another: packages, equipment, bases. A faulty name is undefined and none. */
export function checkReferences(tables: Catalogue, log: FaultLog): void {
  const { airframe, equipment, tanks, components } = tables;
  const namesIn = (records: readonly { readonly name: string | undefined }[]) =>
    records.map(({ name }) => name);
  const packages = knownFrom('the packages table', namesIn(tables.packages));
  const items = knownFrom('the equipment table', namesIn(equipment));
  const bases = knownFrom(
    'the allowances',
    tables.allowances.map(({ basis }) => basis),
  );
  const parts = components.map((row) => ({ ...row, rowName: rowNameOf(row.package, row.name) }));
  const options = equipment.map((row) => ({ ...row, rowName: row.name }));

  // Without packages there is a fault of that table, and all that name one would only repeat it
  if (packages.names.length > 0) {
    checkAttribute('baseline package', [airframe.baseline], packages, log);
    checkAttribute('weighed with package', [airframe.weighedWith], packages, log);
    checkColumn('components', parts, 'package', (row) => row.package, packages, log);
    checkColumn('fuel points', tables.fuelPoints, 'package', (row) => row.package, packages, log);
    checkColumn('power points', tables.powerPoints, 'package', (row) => row.package, packages, log);
    checkColumn('cooling', tables.cooling, 'package', (row) => row.package, packages, log);
    checkColumn('known points', tables.knownPoints, 'package', (row) => row.package, packages, log);
    checkColumn('equipment', options, 'fits', (row) => row.fits, packages, log);
    checkColumn('tanks', tanks, 'fits', (row) => row.fits, packages, log);
  }
  checkAttribute('weighed with equipment', (airframe.weighedItems ?? '').split(',').map(plain), items, log);
  checkColumn('equipment', options, 'needs', (row) => row.needs, items, log);
  checkColumn('equipment', options, 'excludes', (row) => row.excludes, items, log);

  checkAttribute('empty weight basis', [airframe.emptyBasis], bases, log);
  checkColumn('components', parts, 'basis', (row) => row.basis, bases, log);
  checkColumn('equipment', options, 'basis', (row) => row.basis, bases, log);
}
