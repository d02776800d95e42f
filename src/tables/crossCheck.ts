import type { Catalogue } from './catalogue.ts';
import { nameKey } from './cell.ts';
import type { Component } from './components.ts';
import type { FaultLog } from './faults.ts';

/** Names of faulty rows are undefined and match nothing. */
const sameName = (a: string | undefined, b: string | undefined) =>
  a !== undefined && b !== undefined && nameKey(a) === nameKey(b);

/** A name in one table that must stand in another. */
interface Reference {
  readonly table: string;
  readonly row: number;
  readonly column: string;
  readonly name: string | undefined;
}

function checkNames(
  references: readonly Reference[],
  known: readonly string[],
  of: string,
  log: FaultLog,
): void {
  const keys = new Set(known.filter((name) => name !== undefined).map(nameKey));
  for (const { table, row, column, name } of references) {
    if (name === undefined || name === '' || keys.has(nameKey(name))) continue;
    const list =
      known.length === 0 ? 'none is there' : known.length > 12 ? `${known.length} names` : known.join(', ');
    log.fault(table, { row, column }, name, `a name from ${of} (${list})`);
  }
}

function references<R extends { readonly row: number }>(
  table: string,
  rows: readonly R[],
  column: string,
  namesOf: (row: R) => string | undefined | readonly string[],
): Reference[] {
  return rows.flatMap((row) => {
    const names = namesOf(row);
    const list = typeof names === 'string' || names === undefined ? [names] : names;
    return list.map((name) => ({ table, row: row.row, column, name }));
  });
}

/** Names that point from one table into another: packages, equipment, bases, lumps. */
function checkReferences(tables: Catalogue, log: FaultLog): void {
  const { airframe, packages, equipment, tanks, allowances, components } = tables;
  const packageNames = packages.map(({ name }) => name);
  const itemNames = equipment.map(({ name }) => name);
  const bases = allowances.map(({ basis }) => basis);
  checkNames(
    [
      { table: 'airframe', row: airframe.row, column: 'baseline package', name: airframe.baseline },
      { table: 'airframe', row: airframe.row, column: 'weighed with package', name: airframe.weighedWith },
      ...references('components', components, 'package', (row) => row.package),
      ...references('fuel points', tables.fuelPoints, 'package', (row) => row.package),
      ...references('power points', tables.powerPoints, 'package', (row) => row.package),
      ...references('cooling', tables.cooling, 'package', (row) => row.package),
      ...references('known points', tables.knownPoints, 'package', (row) => row.package),
      ...references('equipment', equipment, 'fits', (row) => row.fits),
      ...references('tanks', tanks, 'fits', (row) => row.fits),
    ],
    packageNames,
    'the packages table',
    log,
  );
  const weighedItems = (airframe.weighedItems ?? '').split(',').map((name) => name.trim());
  checkNames(
    [
      ...weighedItems.map((name) => ({
        table: 'airframe',
        row: airframe.row,
        column: 'weighed with equipment',
        name,
      })),
      ...references('equipment', equipment, 'needs', (row) => row.needs),
      ...references('equipment', equipment, 'excludes', (row) => row.excludes),
    ],
    itemNames,
    'the equipment table',
    log,
  );
  checkNames(
    [
      { table: 'airframe', row: airframe.row, column: 'empty weight basis', name: airframe.emptyBasis },
      ...references('components', components, 'basis', (row) => row.basis),
      ...references('equipment', equipment, 'basis', (row) => row.basis),
    ],
    bases,
    'the allowances',
    log,
  );
}

/** Lumps: the named one exists, none is inside itself, and every weight has an arm of its own or of its details. */
function checkComponents(components: readonly Component[], log: FaultLog): void {
  const keyOf = (packageName: string | undefined, name: string | undefined) =>
    `${nameKey(packageName ?? '')}|${nameKey(name ?? '')}`;
  const byName = new Map(
    components.map((component) => [keyOf(component.package, component.name), component]),
  );
  const lumpOf = ({ package: packageName, includedIn }: Component) =>
    includedIn === undefined ? undefined : byName.get(keyOf(packageName, includedIn));
  const lumps = new Set(components.map(lumpOf).filter((lump) => lump !== undefined));
  for (const component of components) {
    const place = { row: component.row, rowName: `${component.package}, ${component.name}` };
    const lump = lumpOf(component);
    if (component.includedIn !== undefined && lump === undefined) {
      const expected = `a component of ${component.package}`;
      log.fault('components', { ...place, column: 'included in' }, component.includedIn, expected);
    } else if (lump?.includedIn !== undefined) {
      log.fault(
        'components',
        { ...place, column: 'included in' },
        component.includedIn,
        'a lump that is not part of another',
      );
    }
    if (component.arm === undefined && component.weight !== 0 && !lumps.has(component)) {
      log.fault(
        'components',
        { ...place, column: 'arm' },
        '',
        'an arm, or details with arms that are included in this lump',
      );
    }
  }
}

function checkEnvelope({ envelope }: Catalogue, log: FaultLog): void {
  envelope.forEach((point, index) => {
    const previous = envelope[index - 1];
    if (point.forward !== undefined && point.aft !== undefined && point.forward >= point.aft) {
      log.fault(
        'envelope',
        { row: point.row, column: 'forward limit' },
        '',
        'a forward limit ahead of the aft limit',
      );
    }
    if (previous !== undefined && point.weight <= previous.weight) {
      log.fault(
        'envelope',
        { row: point.row, column: 'weight' },
        '',
        'weights that increase from row to row',
      );
    }
  });
}

function checkStations({ stations }: Catalogue, log: FaultLog): void {
  for (const station of stations) {
    if (station.minimum > station.maximum) {
      log.fault(
        'stations',
        { row: station.row, rowName: station.name, column: 'minimum' },
        '',
        'no more than the maximum',
      );
    }
    const { group, groupMaximum } = station;
    const first = stations.find(
      (other) => other.group !== undefined && group !== undefined && sameName(other.group, group),
    );
    if (group !== undefined && first?.groupMaximum !== groupMaximum) {
      log.fault(
        'stations',
        { row: station.row, rowName: station.name, column: 'group maximum' },
        '',
        `the same as in row ${first?.row}`,
      );
    }
    if (group !== undefined && groupMaximum === undefined) {
      log.fault(
        'stations',
        { row: station.row, rowName: station.name, column: 'group maximum' },
        '',
        'the limit of the group',
      );
    }
  }
}

function checkFuelPoints({ fuelPoints }: Catalogue, log: FaultLog): void {
  for (const { row, package: name, bsfc, fuelFlow } of fuelPoints) {
    if ((bsfc === undefined) === (fuelFlow === undefined)) {
      log.fault(
        'fuel points',
        { row, rowName: name, column: 'BSFC' },
        '',
        'either BSFC or fuel flow, not both',
      );
    }
  }
}

/** Faults that only show when tables are held against each other. */
export function crossCheck(tables: Catalogue, log: FaultLog): void {
  checkReferences(tables, log);
  checkComponents(tables.components, log);
  checkEnvelope(tables, log);
  checkStations(tables, log);
  checkFuelPoints(tables, log);
}
