import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Catalogue, readCatalogue, type TableName } from '../../src/tables/catalogue.ts';
import type { Cell } from '../../src/tables/cell.ts';
import { sample } from '../sample.ts';
import { inOtherUnits } from './otherUnits.ts';
import { faultsOf, put, smallWorkbook, without } from './smallWorkbook.ts';

function soundCatalogue(grids: ReturnType<typeof smallWorkbook>): Catalogue {
  const { catalogue, faults } = readCatalogue(grids);
  expect(faults).toEqual([]);
  return catalogue as Catalogue;
}

test('what stands in the tables, in SI', () => {
  const catalogue = soundCatalogue(smallWorkbook());
  const pound = 0.45359237;
  expect(catalogue.airframe.firewallArm).toBeCloseTo(1.27, 12); // 50 in
  expect(catalogue.airframe.wingArea).toBeCloseTo(120 * 0.3048 ** 2, 12);
  expect(catalogue.envelope.map(({ forward }) => forward)).toEqual([
    expect.closeTo(78 * 0.0254, 12),
    expect.closeTo(82 * 0.0254, 12),
  ]);
  expect(catalogue.stations.map(({ group }) => group)).toEqual([undefined, undefined, 'rear', 'rear']);
  expect(catalogue.packages.map(({ name }) => name)).toEqual(['Ash', 'Birch']);
  expect(catalogue.packages[0]?.takeoffPower).toBeCloseTo(120 * 745.69987158227, 6);
  expect(catalogue.packages[1]?.staticRpm).toBeUndefined();
  expect(catalogue.fuelPoints[0]?.setting).toBe(0.75);
  expect(catalogue.components[1]).toMatchObject({ name: 'oil', armFrom: 'firewall', fluid: true, row: 4 });
  expect(catalogue.components[1]?.weight).toBeCloseTo(12 * pound, 12);
  expect(catalogue.components[0]?.leadTime).toBe(84); // days
  expect(catalogue.equipment[2]).toMatchObject({ fits: ['Birch'], needs: ['radio'], fitted: false });
  expect(catalogue.allowances[2]).toMatchObject({ basis: 'weighed', scatter: expect.closeTo(0.006, 12) });
  expect(catalogue.allowancesDefaulted).toBe(false);
  expect(catalogue.mission.slope).toBeCloseTo(0.005, 12);
  expect(catalogue.rates.avgas).toBeCloseTo(6.5 / 0.003785411784, 9);
  expect(catalogue.currency).toBe('USD');
  expect(catalogue.remarks).toEqual([]);
});

test('all faults together, of every table, in one reading', () => {
  const grids = smallWorkbook();
  put(grids.airframe, 5, 'value', 'light');
  put(grids.envelope, 3, 'weight', '1,000');
  put(grids.stations, 2, 'arm', '');
  put(grids.loadings, 3, 'pilot', null);
  put(grids.tanks, 3, 'usable', -1);
  put(grids.packages, 3, 'Ash', '#REF!');
  put(grids['fuel points'], 3, 'mixture', 'medium');
  put(grids['power points'], 4, 'altitude', 90_000);
  put(grids.cooling, 3, 'stream', 'water');
  put(grids['known points'], 3, 'OAT', 77);
  put(grids.components, 3, 'weight', '220 lb');
  put(grids.equipment, 3, 'arm', true);
  put(grids.allowances, 3, 'growth', 60);
  put(grids.mission, 2, 'value', 2.5);
  put(grids.rates, 5, 'unit', 'of the price');
  const faults = faultsOf(grids);
  const tables: TableName[] = [
    'airframe',
    'envelope',
    'stations',
    'loadings',
    'tanks',
    'packages',
    'fuel points',
    'power points',
    'cooling',
    'known points',
    'components',
    'equipment',
    'allowances',
    'mission',
    'rates',
  ];
  for (const table of tables) expect(faults.filter((fault) => fault.startsWith(`${table},`))).toHaveLength(1);
  expect(faults).toHaveLength(tables.length);
});

test('one fault anywhere and there is no catalogue', () => {
  const grids = smallWorkbook();
  put(grids.equipment, 7, 'weight', 'light');
  expect(readCatalogue(grids).catalogue).toBeUndefined();
});

test('two currencies are one too many, whichever tables they stand in', () => {
  const grids = smallWorkbook();
  put(grids.rates, 2, 'unit', 'EUR/L');
  put(grids.rates, 4, 'unit', 'EUR');
  expect(faultsOf(grids)).toEqual([
    'rates, row 2 (avgas), unit: got "EUR/L", expected USD, the workbook\'s currency',
    'rates, row 4 (labour an hour), unit: got "EUR", expected USD, the workbook\'s currency',
  ]);
});

test('without allowances the customary ones stand in, and it is said', () => {
  const { catalogue } = readCatalogue(without('allowances'));
  expect(catalogue?.allowancesDefaulted).toBe(true);
  // common practice, no source
  expect(catalogue?.allowances.map(({ basis, correlation }) => [basis, correlation])).toEqual([
    ['estimated', 0.5],
    ['calculated', 0.2],
    ['weighed', 0],
  ]);
});

test('nothing at all is six tables missing, and no more is said', () => {
  expect(faultsOf({})).toEqual(
    ['stations', 'tanks', 'airframe', 'envelope', 'packages', 'components'].map(
      (table) => `${table}: got nothing, expected this table`,
    ),
  );
});

/** Numbers of a record alike to twelve digits, all else the same. */
function expectAlike(one: unknown, other: unknown, path = ''): void {
  if (typeof one === 'number' && typeof other === 'number') {
    expect(Math.abs(one - other), path).toBeLessThanOrEqual(1e-12 * Math.abs(one));
  } else if (one instanceof Map && other instanceof Map) {
    expectAlike([...one], [...other], path);
  } else if (typeof one === 'object' && one !== null) {
    expect(Object.keys(other as object), path).toEqual(Object.keys(one));
    for (const [key, value] of Object.entries(one))
      expectAlike(value, (other as Record<string, unknown>)[key], `${path}.${key}`);
  } else expect(other, path).toBe(one);
}

describe('units of any kind give the same records', () => {
  test('of the small workbook', () => {
    const grids = smallWorkbook();
    inOtherUnits(grids);
    expect(grids.components[1]).toContain('kg');
    expect(grids.cooling[1]).toContain('°C');
    expectAlike(soundCatalogue(smallWorkbook()), soundCatalogue(grids));
  });

  test.each(['godwit', 'sanderling'])('of %s', (name) => {
    const copy = () =>
      Object.fromEntries(
        Object.entries(sample(name)).map(([table, grid]) => [table, grid.map((row) => [...row])]),
      ) as ReturnType<typeof smallWorkbook>;
    const grids = copy();
    inOtherUnits(grids);
    expectAlike(soundCatalogue(copy()), soundCatalogue(grids));
  });
});

test('the order of columns does not matter', () => {
  const usual = soundCatalogue(smallWorkbook());
  fc.assert(
    fc.property(fc.infiniteStream(fc.nat({ max: 1000 })), (stream) => {
      const grids = smallWorkbook();
      for (const table of Object.keys(grids) as TableName[]) {
        if (table === 'packages') continue; // its columns are records, and stand in their order
        const order = (grids[table][0] as Cell[])
          .map((_, column) => ({ column, key: stream.next().value as number }))
          .sort((one, other) => one.key - other.key);
        grids[table] = grids[table].map((row) => order.map(({ column }) => row[column] as Cell));
      }
      expectAlike(usual, soundCatalogue(grids));
    }),
    { numRuns: 25 },
  );
});
