/** The sample folders are read without faults and add up in themselves. */
import { readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { csvOfGrid, gridOfCsv, readTableFolder } from '../../src/local/tableFolder.ts';
import { readCatalogue } from '../../src/tables/catalogue.ts';
import { faultText } from '../../src/tables/faults.ts';
import { sampleNames } from '../sample.ts';
import { folderOf, rows, sum, textOf } from './sampleFiles.ts';

describe.each(sampleNames)('%s', (sample) => {
  test('reads without faults or remarks', () => {
    const { grids, remarks } = readTableFolder(folderOf(sample));
    const { catalogue, faults } = readCatalogue(grids);
    expect(faults.map(faultText)).toEqual([]);
    expect([...remarks, ...(catalogue?.remarks ?? [])]).toEqual([]);
  });

  test('its files are written as they stand', () => {
    for (const file of readdirSync(folderOf(sample))) {
      const text = textOf(sample, file.replace('.csv', ''));
      expect(csvOfGrid(gridOfCsv(text, file))).toBe(text);
    }
  });
});

test('lumps are the sum of their details', () => {
  const lumps = sampleNames.flatMap((sample) => {
    const components = rows(sample, 'components');
    return components.flatMap((lump) => {
      const details = components.filter(
        (row) => row.package === lump.package && row['included in'] === lump.component,
      );
      if (details.length === 0) return [];
      const weight = sum(details.map((row) => Number(row.weight)));
      return [{ of: `${sample}, ${lump.component}`, isSum: Math.abs(weight - Number(lump.weight)) < 1e-6 }];
    });
  });
  expect(lumps).toEqual([
    { of: 'godwit, engine kit as delivered', isSum: true },
    { of: 'sanderling, turbo set as delivered', isSum: true },
  ]);
});

describe('minimal', () => {
  test('holds the required tables and nothing else', () => {
    expect(readdirSync(folderOf('minimal')).sort()).toEqual(
      ['airframe', 'components', 'envelope', 'packages', 'stations', 'tanks'].map((name) => `${name}.csv`),
    );
    const { catalogue } = readCatalogue(readTableFolder(folderOf('minimal')).grids);
    expect(catalogue?.packages.map(({ name }) => name)).toEqual(['Elm', 'Ash']);
    expect(catalogue?.allowancesDefaulted).toBe(true);
    expect(catalogue?.airframe.defaulted).toContain('emptyBasis');
  });
});
