/** Faults of the builder's tables that show when values are held against each other and against the catalogue. */
import { describe, expect, test } from 'vitest';
import { readBuild } from '../../src/tables/build.ts';
import type { Cell } from '../../src/tables/cell.ts';
import { faultText } from '../../src/tables/faults.ts';
import { buildFaults, buildOf, catalogueOf, smallBuild } from './smallBuild.ts';
import { put, smallWorkbook } from './smallWorkbook.ts';

describe('what is left on the scales', () => {
  // A: 905 lb net of tares of 20. B: 905 lb, no tares; 0.8 gal of oil at 7.5 to come
  const nothingLeft = (row: number, name: string, got: number) =>
    `weighings, row ${row} (${name}, nosewheel), reading: got ${got}, expected more than tares and weighing items, all points together`;

  test('more than what was aboard and is no part of it', () => {
    const aboard = (weight: number) => {
      const grids = smallBuild();
      put(grids['weighing items'], 3, 'weight', weight);
      return buildFaults(grids);
    };
    expect(aboard(904)).toEqual([]);
    expect(aboard(905)).toEqual([nothingLeft(3, 'A', 260)]);
  });

  test('what comes in later leaves more', () => {
    const grids = smallBuild();
    put(grids['weighing items'], 3, 'state', 'part, not aboard');
    put(grids['weighing items'], 3, 'weight', 2000);
    expect(buildFaults(grids)).toEqual([]);
  });

  test('more than the tares', () => {
    const grids = smallBuild();
    for (const [row, tare] of [
      [3, 260],
      [4, 330],
      [5, 335],
    ] as const)
      put(grids.weighings, row, 'tare', tare);
    expect(buildFaults(grids)).toEqual([nothingLeft(3, 'A', 260)]);
  });

  test('fuel of no stated density is reckoned as the densest of the packages: 6.7 lb/gal', () => {
    const drained = (gallons: number) => {
      const grids = smallBuild();
      put(grids['weighing items'], 4, 'state', 'aboard, not part');
      put(grids['weighing items'], 4, 'volume', gallons);
      return buildFaults(grids);
    };
    expect(drained(135)).toEqual([]); // 904.5 of 911
    expect(drained(136)).toEqual([nothingLeft(6, 'B', 250)]); // 911.2; of avgas it would be 816
  });

  test('two points are enough', () => {
    const grids = smallBuild();
    grids.weighings.splice(4, 1);
    expect(buildOf(grids).weighings).toHaveLength(5);
  });
});

test('a tank that ran dry is one of the tanks table, in any case', () => {
  const workbook = smallWorkbook();
  const catalogue = catalogueOf({
    ...workbook,
    tanks: [...workbook.tanks, ['aft tank', 110, 5, 0, 1, '', true, '', 0]],
    loadings: [],
  });
  const dry = (tank: string) => {
    const grids = smallBuild();
    grids['test results'].forEach((row, index) => {
      row.push(...((index === 0 ? ['tank', 'volume'] : ['', index === 1 ? 'US gal' : '']) as Cell[]));
    });
    const last = grids['test results'].push([...grids['test results'][4]!]);
    put(grids['test results'], last, 'test', 'unusable fuel');
    put(grids['test results'], last, 'tank', tank);
    put(grids['test results'], last, 'volume', 1);
    return readBuild(grids, catalogue).faults.map(faultText);
  };
  expect(dry('Main Tank')).toEqual([]);
  expect(dry('aft tank')).toEqual([]);
  expect(dry('tip tank')).toEqual([
    'test results, row 6 (unusable fuel), tank: got "tip tank", expected a tank of the tanks table (main tank, aft tank)',
  ]);
});
