/** The sample aircraft as records, and changes of them. */
import { fileURLToPath } from 'node:url';
import { type Assessment, type Comparison, compare } from '../../src/assessment/assess.ts';
import { readTableFolder } from '../../src/local/tableFolder.ts';
import { type Catalogue, readCatalogue } from '../../src/tables/catalogue.ts';
import { faultText } from '../../src/tables/faults.ts';
import type { Mission } from '../../src/tables/mission.ts';
import type { Package } from '../../src/tables/packages.ts';
import { fromSi, type QuantityKind, toSi } from '../../src/units.ts';

export function sampleCatalogue(name: 'godwit' | 'sanderling' | 'minimal'): Catalogue {
  const folder = fileURLToPath(new URL(`../../samples/${name}`, import.meta.url));
  const { catalogue, faults } = readCatalogue(readTableFolder(folder).grids);
  if (catalogue === undefined) throw new Error(faults.map(faultText).join('\n'));
  return catalogue;
}

export const godwit = sampleCatalogue('godwit');

export const withMission = (changes: Partial<Mission>, catalogue = godwit): Catalogue => ({
  ...catalogue,
  mission: { ...catalogue.mission, ...changes },
});

/** One package with other values. */
export const withPackage = (name: string, changes: Partial<Package>, catalogue = godwit): Catalogue => ({
  ...catalogue,
  packages: catalogue.packages.map((each) => (each.name === name ? { ...each, ...changes } : each)),
});

export function packageOf(comparison: Comparison, name: string): Assessment {
  const found = comparison.assessments.find((each) => each.package.name === name);
  if (found === undefined) throw new Error(`no package ${name}`);
  return found;
}

/** Of a copy: a comparison is kept with its catalogue, and every test is to make its own. */
export const assessed = (name: string, catalogue = godwit): Assessment =>
  packageOf(compare({ ...catalogue }), name);

/** An SI value in a unit, and back. */
export const show = (kind: QuantityKind, value: number | undefined, unit: string): number =>
  value === undefined ? Number.NaN : fromSi(kind, value, unit);
export const si = toSi;
