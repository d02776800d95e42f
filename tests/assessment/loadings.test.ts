/** Named loadings, the worst of all, and what cures it: Godwit worked by hand from its tables. */
import { describe, expect, test } from 'vitest';
import { compare } from '../../src/assessment/assess.ts';
import { balanceCures } from '../../src/assessment/balanceCures.ts';
import type { LoadingCheck } from '../../src/assessment/loadingCheck.ts';
import { loadingFindings } from '../../src/assessment/loadingCheck.ts';
import { loadingRegionBlock } from '../../src/assessment/loadingRegionBlock.ts';
import { worstLoadings } from '../../src/assessment/worstLoadings.ts';
import type { Equipment } from '../../src/tables/equipment.ts';
import { assessed, godwit, packageOf, show, si } from './sampleCatalogue.ts';

const loadingOf = (name: string, loading: string, catalogue = godwit): LoadingCheck => {
  const found = assessed(name, catalogue).balance.loadings.find((each) => each.name === loading);
  if (found === undefined) throw new Error(loading);
  return found;
};

describe('named loadings', () => {
  // 1,379 lb at 97.93 in; 2 × 180 at 106, 360 at 139, 60 at 163: 2,159 lb, 233,025.47 lb·in; 30 gal of 6 lb at 104
  test('four and bags in Rowan', () => {
    const { takeoff, zeroFuel, worst, passes } = loadingOf('Rowan', 'four and bags');
    expect(show('mass', zeroFuel.weight, 'lb')).toBeCloseTo(2159, 6);
    expect(show('length', zeroFuel.cg, 'in')).toBeCloseTo(233_025.47 / 2159, 6);
    expect(show('mass', takeoff.weight, 'lb')).toBeCloseTo(2339, 6);
    expect(show('length', takeoff.cg, 'in')).toBeCloseTo(251_745.47 / 2339, 6);
    expect(worst?.side).toBe('aft');
    expect(show('length', worst?.margin, 'in')).toBeCloseTo(110 - 233_025.47 / 2159, 6);
    expect(passes).toBe(true);
  });

  test('a landing weight below it: fuel to burn first; below the zero-fuel weight: it never may land', () => {
    const limited = (weight: number) => ({
      ...godwit,
      airframe: { ...godwit.airframe, maximumLandingWeight: si('mass', weight, 'lb') },
    });
    const above = loadingOf('Rowan', 'four and bags', limited(2300));
    expect(show('mass', above.burnBeforeLanding, 'lb')).toBeCloseTo(39, 6);
    expect(above.passes).toBe(true);
    const below = loadingOf('Rowan', 'four and bags', limited(2100));
    expect(below.passes).toBe(false);
    expect(below.weight.name).toBe('landing weight');
    expect(show('mass', below.weight.margin, 'lb')).toBeCloseTo(-59, 6);
  });

  test('what stops a loading is said in words, and the worst weight limit is the one named', () => {
    const tight = {
      ...godwit,
      airframe: { ...godwit.airframe, maximumZeroFuelWeight: si('mass', 2100, 'lb') },
    };
    const comparison = compare(tight);
    const rowan = packageOf(comparison, 'Rowan');
    const failed = loadingFindings(comparison.context, rowan.package, rowan.balance.loadings);
    expect(failed.find(({ subject }) => subject === 'four and bags')?.text).toBe(
      '59.0 lb over the maximum zero-fuel weight',
    );
  });
});

describe('every loading', () => {
  test('Rowan without usable fuel, the lightest pilot alone: forward; with the rear seats and bags: aft', () => {
    const comparison = compare(godwit);
    const found = worstLoadings(comparison.context, packageOf(comparison, 'Rowan'));
    const none = found.find(({ fuel }) => fuel === 'none')?.margins;
    // 1,379 at 97.93 and 130 at 106; with 400 at 139 and 100 at 163 as well
    const pilot = 1379 * 97.93 + 130 * 106;
    expect(show('length', none?.forward.margin, 'in')).toBeCloseTo(pilot / 1509 - 97, 6);
    const loaded = pilot + 400 * 139 + 100 * 163;
    expect(show('length', none?.aft.margin, 'in')).toBeCloseTo(110 - loaded / 2009, 6);
  });

  test('any fuel is no better than half an hour of it, or none', () => {
    const comparison = compare(godwit);
    for (const each of comparison.assessments) {
      const [any, ...others] = worstLoadings(comparison.context, each);
      expect(others.map(({ fuel }) => fuel)).toEqual(['minimum', 'none']);
      for (const { margins } of others) {
        expect(any?.margins.forward.margin).toBeLessThanOrEqual(margins.forward.margin + 1e-12);
        expect(any?.margins.aft.margin).toBeLessThanOrEqual(margins.aft.margin + 1e-12);
      }
    }
  });

  test('with the minimum fuel: that much in the tanks, no more and no less', () => {
    const comparison = compare(godwit);
    const rowan = packageOf(comparison, 'Rowan');
    const least = worstLoadings(comparison.context, rowan).find(({ fuel }) => fuel === 'minimum')?.margins;
    // Half an hour at MCP, 14 CFR 23.25(a)(1) before amendment 64: 185 hp × 0.5 lb/hp·h / 2
    for (const side of ['forward', 'aft'] as const)
      expect(show('mass', least?.[side].loads.at(-1), 'lb')).toBeCloseTo((185 * 0.5) / 2, 6);
  });

  test('where the minimum fuel is not known, any and none; too heavy for any loading, nothing', () => {
    const unknown = compare({ ...godwit, fuelPoints: [] });
    const found = worstLoadings(unknown.context, packageOf(unknown, 'Rowan'));
    expect(found.map(({ fuel }) => fuel)).toEqual(['any', 'none']);
    const heavy = compare({
      ...godwit,
      airframe: { ...godwit.airframe, maximumTakeoffWeight: si('mass', 1450, 'lb') },
    });
    expect(worstLoadings(heavy.context, packageOf(heavy, 'Rowan'))).toEqual([]);
  });
});

describe('cures', () => {
  const item = (weight: number, arm: number): Equipment => ({
    ...(godwit.equipment[0] as Equipment),
    name: `cure at ${arm}`,
    weight,
    arm,
    standard: false,
    fitted: true,
    fits: [],
    needs: [],
    excludes: [],
  });

  test.each(['Hazel', 'Alder'])(
    '%s: the cure, entered as equipment, puts the worst loading on the limit',
    (name) => {
      const comparison = compare(godwit);
      const cures = balanceCures(comparison.context, packageOf(comparison, name));
      expect(cures.length).toBeGreaterThan(0);
      for (const { side, weight, fromArm, toArm } of cures) {
        const items = [item(weight, toArm), ...(fromArm === undefined ? [] : [item(-weight, fromArm)])];
        const cured = assessed(name, { ...godwit, equipment: [...godwit.equipment, ...items] });
        expect(cured.balance.margins?.[side].margin).toBeCloseTo(0, 5);
      }
    },
  );

  test('Alder: its 28 lb battery, moved to the tailcone, is enough; ballast there costs payload', () => {
    const comparison = compare(godwit);
    const [ballast, moved] = balanceCures(comparison.context, packageOf(comparison, 'Alder'));
    expect(moved?.moved).toBe('battery for compression ignition');
    expect(show('mass', moved?.weight, 'lb')).toBeLessThan(28);
    expect(moved?.payloadLost).toBe(0);
    expect(ballast?.payloadLost).toBe(ballast?.weight);
  });

  test('what balances needs none', () => {
    const comparison = compare(godwit);
    expect(balanceCures(comparison.context, packageOf(comparison, 'Rowan'))).toEqual([]);
  });
});

describe('the region for a chart', () => {
  const block = () => {
    const comparison = compare(godwit);
    const [header = [], ...rows] = loadingRegionBlock(comparison, comparison.assessments);
    return { header, rows };
  };

  test('CG first, the limits, then the packages', () => {
    expect(block().header.slice(1)).toEqual(['CG limits', 'Rowan', 'Larch', 'Hazel', 'Alder']);
  });

  test('every row has an x and one y; every outline is in consecutive rows and closed', () => {
    const { header, rows } = block();
    for (const row of rows) {
      expect(typeof row[0]).toBe('number');
      expect(row.slice(1).filter((cell) => cell !== null)).toHaveLength(1);
    }
    for (let column = 1; column < header.length; column++) {
      const at = rows.flatMap((row, index) => (row[column] === null ? [] : [index]));
      expect(at.length).toBeGreaterThan(3);
      expect((at.at(-1) as number) - (at[0] as number)).toBe(at.length - 1);
      expect(rows[at.at(-1) as number]?.[column]).toBe(rows[at[0] as number]?.[column]);
      expect(rows[at.at(-1) as number]?.[0]).toBe(rows[at[0] as number]?.[0]);
    }
  });

  test('the limits as the table has them', () => {
    const limits = block()
      .rows.filter((row) => row[1] !== null)
      .map((row) => [row[0], row[1]]);
    expect(limits).toEqual([
      [97, 1200],
      [97, 2000],
      [103, 2520],
      [110, 2520],
      [110, 2000],
      [110, 1200],
      [97, 1200],
    ]);
  });
});
