/** The sample of a builder's aircraft, and ways to plant an error in it. */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { gridOfCsv } from '../../src/local/tableFolder.ts';
import { type Build, type BuildTable, readBuild } from '../../src/tables/build.ts';
import type { Catalogue } from '../../src/tables/catalogue.ts';
import type { Grid } from '../../src/tables/cell.ts';
import { faultText } from '../../src/tables/faults.ts';
import { sample } from '../sample.ts';
import { catalogueOf } from './flightFixture.ts';

const buildTables: readonly BuildTable[] = [
  'weighings',
  'weighing items',
  'changes',
  'as quoted',
  'test results',
];

const fileOf = (table: BuildTable) =>
  fileURLToPath(new URL(`../../samples/godwit-as-built/${table.replace(/ /g, '-')}.csv`, import.meta.url));

export const asBuiltGrids = () => sample('godwit-as-built');

export const asBuiltBuildGrids = (): Record<BuildTable, Grid> =>
  Object.fromEntries(
    buildTables.map((table) => [table, gridOfCsv(readFileSync(fileOf(table), 'utf8'), table)]),
  ) as Record<BuildTable, Grid>;

export function asBuilt(): { catalogue: Catalogue; build: Build } {
  const catalogue = catalogueOf(asBuiltGrids());
  const { build, faults } = readBuild(asBuiltBuildGrids(), catalogue);
  if (build === undefined) throw new Error(faults.map(faultText).join('\n'));
  return { catalogue, build };
}
