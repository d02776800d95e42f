/**
 * What the sample folders say, from the text of their files by plain arithmetic, without the project's own engineering.
 */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import Papa from 'papaparse';

export const folderOf = (sample: string) =>
  fileURLToPath(new URL(`../../samples/${sample}`, import.meta.url));
export const textOf = (sample: string, file: string) =>
  readFileSync(`${folderOf(sample)}/${file}.csv`, 'utf8');

type Row = Readonly<Record<string, string>>;

/** Records of a file by their column headers; in a table of rows the first is the row of units. */
function records(sample: string, file: string): Row[] {
  return Papa.parse<Row>(textOf(sample, file), { header: true, skipEmptyLines: true }).data;
}
export const rows = (sample: string, file: string) => records(sample, file).slice(1);

export function attribute(sample: string, file: string, name: string, column = 'value'): string {
  return records(sample, file).find((row) => row.attribute === name)?.[column] ?? '';
}
export const airframe = (sample: string, name: string) => Number(attribute(sample, 'airframe', name));
export const packageValue = (sample: string, name: string, engine: string) =>
  Number(attribute(sample, 'packages', name, engine));

export interface Mass {
  readonly weight: number;
  readonly arm: number;
}
export const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

export function together(masses: readonly Mass[]): Mass {
  const weight = sum(masses.map((mass) => mass.weight));
  return { weight, arm: sum(masses.map((mass) => mass.weight * mass.arm)) / weight };
}

/** Weights of a package that count, arms from the datum: a lump that has no arm is replaced by its details. */
export function masses(sample: string, engine: string): Mass[] {
  const firewall = airframe(sample, 'firewall arm');
  const own = rows(sample, 'components').filter((row) => row.package === engine);
  const lumpsWithoutArm = own
    .filter((row) => row.arm === '' && Number(row.weight) !== 0)
    .map((row) => row.component);
  return own
    .filter((row) => Number(row.weight) !== 0 && row.arm !== '')
    .filter((row) => row['included in'] === '' || lumpsWithoutArm.includes(row['included in']))
    .map((row) => ({
      weight: Number(row.weight),
      arm: row['arm from'] === 'firewall' ? firewall - Number(row.arm) : Number(row.arm),
    }));
}

export const installed = (sample: string, engine: string) => together(masses(sample, engine));

interface Range {
  readonly arm: number;
  readonly minimum: number;
  readonly maximum: number;
}

/** Least distance inside the forward and the aft limit over loadings in even steps of every station and tank. */
export function worstMargins(
  empty: Mass,
  ranges: readonly Range[],
  maximumWeight: number,
  forwardLimit: (weight: number) => number,
  aftLimit: number,
): { forward: number; aft: number } {
  const steps = 8;
  const worst = { forward: Number.POSITIVE_INFINITY, aft: Number.POSITIVE_INFINITY };
  const load = (index: number, weight: number, moment: number): void => {
    const range = ranges[index];
    if (weight > maximumWeight) return;
    if (range === undefined) {
      worst.forward = Math.min(worst.forward, moment / weight - forwardLimit(weight));
      worst.aft = Math.min(worst.aft, aftLimit - moment / weight);
      return;
    }
    for (let step = 0; step <= steps; step++) {
      const added = range.minimum + ((range.maximum - range.minimum) * step) / steps;
      load(index + 1, weight + added, moment + added * range.arm);
    }
  };
  load(0, empty.weight, empty.weight * empty.arm);
  return worst;
}

export function stationRanges(sample: string): Range[] {
  return rows(sample, 'stations').map((row) => ({
    arm: Number(row.arm),
    minimum: Number(row.minimum),
    maximum: Number(row.maximum),
  }));
}
