import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Side } from '../../src/engineering/envelope.ts';
import { extremeLoading, loadedWith, type Station } from '../../src/engineering/loading.ts';
import { circularAircraft } from './circularAircraft.ts';
import { extremeCgByGlpk, extremeCgByLinearProgramme } from './loadingLp.ts';
import { randomAircraft, withoutOtherLimits } from './randomAircraft.ts';

describe('AC 43.13-1B, extreme conditions', () => {
  const { empty, stations, tanks, maximumWeight } = circularAircraft;
  const extreme = (side: Side) => extremeLoading(empty, [...stations, ...tanks], maximumWeight, side);

  test('figure 10-10, most forward: 1,439 lb at +11.2 in', () => {
    const forward = extreme('forward');
    expect(forward.weight).toBe(1439);
    expect(Math.abs(forward.cg - 11.2)).toBeLessThanOrEqual(0.05);
    expect(forward.loads).toEqual([17, 170, 0, 0, 0, 83]);
  });

  test('figure 10-11, most rearward: 2,036 lb, 43,428 lb·in, +21.33 in', () => {
    const aft = extreme('aft');
    expect(aft.weight).toBe(2036);
    expect(Math.abs(aft.moment - 43_428)).toBeLessThanOrEqual(0.5);
    expect(aft.cg).toBeCloseTo(43_428 / 2036, 3);
    expect(aft.loads).toEqual([17, 170, 0, 340, 100, 240]);
  });
});

describe('by hand', () => {
  const lever: Station[] = [
    { name: 'front', arm: 0, minimum: 0, maximum: 50 },
    { name: 'rear', arm: 40, minimum: 0, maximum: 50 },
    { name: 'tail', arm: 100, minimum: 0, maximum: 20 },
  ];
  const body = { weight: 100, moment: 1000 };

  test('the maximum weight stops the filling part of the way', () => {
    // tail first: 1000 + 2000 on 120; then 30 of the rear: 4200 on 150
    expect(extremeLoading(body, lever, 150, 'aft')).toMatchObject({ weight: 150, moment: 4200, cg: 28 });
    expect(extremeLoading(body, lever, 150, 'aft').loads).toEqual([0, 30, 20]);
  });

  test('a station that the CG has passed stays empty', () => {
    // tail and rear: 1000 + 2000 + 2000 on 170 is 29.4, aft of front
    expect(extremeLoading(body, lever, 1000, 'aft').loads).toEqual([0, 50, 20]);
    expect(extremeLoading(body, lever, 1000, 'forward').loads).toEqual([50, 0, 0]);
  });

  test('a station at the CG itself stays empty: it would not move it', () => {
    const atCg = [{ name: 'seat', arm: 10, minimum: 0, maximum: 50 }];
    for (const side of ['forward', 'aft'] as const)
      expect(extremeLoading(body, atCg, 1000, side)).toMatchObject({ weight: 100, loads: [0] });
  });

  test('a maximum weight that leaves no room: minimum loads only', () => {
    const pilot = [{ name: 'pilot', arm: 20, minimum: 60, maximum: 120 }];
    expect(extremeLoading(body, pilot, 160, 'aft')).toMatchObject({ weight: 160, moment: 2200 });
  });

  test('minimum loads beyond the maximum weight are refused, but not for rounding', () => {
    const pilot = [{ name: 'pilot', arm: 20, minimum: 60, maximum: 120 }];
    expect(() => extremeLoading(body, pilot, 159, 'aft')).toThrow(/maximumWeight must be at least 160/);
    const bits = [{ name: 'bits', arm: 20, minimum: 0.1 + 0.2, maximum: 1 }];
    expect(extremeLoading(body, bits, 100.3, 'aft').loads[0]).toBeCloseTo(0.3, 12);
  });

  test('impossible stations are refused by name', () => {
    const refused = (station: Partial<Station>) => () =>
      extremeLoading(body, [{ name: 'bay', arm: 1, minimum: 0, maximum: 1, ...station }], 1000, 'aft');
    expect(refused({ minimum: -1 })).toThrow(/minimum of bay must be at least 0/);
    expect(refused({ minimum: 2 })).toThrow(/maximum of bay must be at least 2/);
    expect(refused({ arm: Number.NaN })).toThrow(/arm of bay/);
    expect(refused({ maximum: Number.POSITIVE_INFINITY })).toThrow(/maximum of bay/);
    expect(() => extremeLoading({ weight: 0, moment: 0 }, [], 10, 'aft')).toThrow(/empty weight/);
    expect(() => extremeLoading(body, [], Number.NaN, 'aft')).toThrow(/maximumWeight/);
  });
});

describe('properties', () => {
  test.each([
    ['javascript-lp-solver', extremeCgByLinearProgramme, 1e-6],
    ['GLPK', extremeCgByGlpk, 1e-3], // each sum within 1e-7 of the weight, at arms of up to 260
  ] as const)('a linear-programming solver finds the same extremes: %s', (_, extremeCgBySolver, within) => {
    fc.assert(
      fc.property(randomAircraft, fc.constantFrom('forward', 'aft'), (aircraft, side) => {
        const limits = withoutOtherLimits(aircraft);
        const all = [...limits.stations, ...limits.tanks];
        const extreme = extremeLoading(limits.empty, all, limits.maximumWeight, side);
        expect(Math.abs(extreme.cg - extremeCgBySolver(limits, side))).toBeLessThan(within);
      }),
      { numRuns: 500 },
    );
  });

  test('the loading is one that can be: within its stations and the maximum weight, and it weighs what it says', () => {
    fc.assert(
      fc.property(randomAircraft, fc.constantFrom('forward', 'aft'), (limits, side) => {
        const all = [...limits.stations, ...limits.tanks];
        const extreme = extremeLoading(limits.empty, all, limits.maximumWeight, side);
        expect(extreme.weight).toBeLessThanOrEqual(limits.maximumWeight * (1 + 1e-12));
        extreme.loads.forEach((load, index) => {
          expect(load).toBeGreaterThanOrEqual(all[index]!.minimum);
          expect(load).toBeLessThanOrEqual(all[index]!.maximum * (1 + 1e-12));
        });
        expect(loadedWith(limits.empty, all, extreme.loads).cg).toBeCloseTo(extreme.cg, 9);
      }),
    );
  });

  test('the order in which stations are listed does not matter', () => {
    fc.assert(
      fc.property(randomAircraft, fc.constantFrom('forward', 'aft'), (limits, side) => {
        const all = [...limits.stations, ...limits.tanks];
        const reversed = extremeLoading(limits.empty, [...all].reverse(), limits.maximumWeight, side);
        expect(reversed.cg).toBeCloseTo(extremeLoading(limits.empty, all, limits.maximumWeight, side).cg, 8);
      }),
    );
  });

  test('a heavier nose never moves either extreme aft', () => {
    fc.assert(
      fc.property(randomAircraft, fc.constantFrom('forward', 'aft'), (limits, side) => {
        const all = [...limits.stations, ...limits.tanks];
        const { weight, moment } = limits.empty;
        const noseHeavy = { weight, moment: moment - 5 * weight };
        expect(extremeLoading(noseHeavy, all, limits.maximumWeight, side).cg).toBeLessThan(
          extremeLoading(limits.empty, all, limits.maximumWeight, side).cg,
        );
      }),
    );
  });
});
