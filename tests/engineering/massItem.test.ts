import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  add,
  airframeWithoutPowerplant,
  centreOfGravity,
  type MassItem,
  subtract,
  total,
} from '../../src/engineering/massItem.ts';
import { between } from './between.ts';
import { inch, pound } from './tradeUnits.ts';

const item = fc.record({
  weight: between(0.1, 2000),
  arm: between(-200, 400),
});
const aircraft = fc.array(item, { minLength: 1, maxLength: 40 });
const cgOf = (items: readonly MassItem[]) => centreOfGravity(total(items));

// The loadings of AC 43.13-1B, chapter 10, stand in tests/outside/values/weightAndBalance.ts
describe('sums', () => {
  test('by hand: an item taken out of a lever', () => {
    // 2 at 10 and 3 at 20: 80 about the datum; less 1 at 10: 70 on 4
    const lever = total([
      { weight: 2, arm: 10 },
      { weight: 3, arm: 20 },
      { weight: -1, arm: 10 },
    ]);
    expect(lever).toEqual({ weight: 4, moment: 70 });
    expect(centreOfGravity(lever)).toBe(17.5);
  });

  test('nothing weighs nothing and has no centre of gravity', () => {
    expect(total([])).toEqual({ weight: 0, moment: 0 });
    expect(() => centreOfGravity(total([]))).toThrow(/weight must not be 0/);
  });

  test('moments that cancel to rounding error are none', () => {
    // 0.1 + 0.2 − 0.3 is 5.6e-17 in double precision
    expect(total([0.1, 0.2, -0.3].map((arm) => ({ weight: 1, arm })))).toEqual({ weight: 3, moment: 0 });
  });

  test('weights that cancel to rounding error have no centre of gravity', () => {
    // 0.1 + 0.2 − 0.3 is 5.6e-17 in double precision; its "arm" would be of the order of 1e16
    const cancelled = total([
      { weight: 0.1, arm: 10 },
      { weight: 0.2, arm: 20 },
      { weight: -0.3, arm: 5 },
    ]);
    expect(cancelled.weight).toBe(0);
    expect(cancelled.moment).toBeCloseTo(3.5, 12);
    expect(() => centreOfGravity(cancelled)).toThrow(RangeError);
  });

  test('what is taken out has an arm: where it sat', () => {
    expect(centreOfGravity(total([{ weight: -28, arm: 48 }]))).toBe(48);
  });
});

describe('airframe without powerplant', () => {
  test('by hand: 1,367 lb at 98 less 431 lb at 35.6', () => {
    // 1367 × 98 = 133,966; 431 × 35.6 = 15,343.6; 118,622.4 on 936 lb is 126.733 in
    const airframe = airframeWithoutPowerplant({ weight: 1367, moment: 133_966 }, [
      { weight: 400, arm: 35 },
      { weight: 31, arm: (15_343.6 - 14_000) / 31 },
    ]);
    expect(airframe.weight).toBeCloseTo(936, 9);
    expect(airframe.moment).toBeCloseTo(118_622.4, 8);
    expect(centreOfGravity(airframe)).toBeCloseTo(126.733, 3);
  });

  test('a powerplant as heavy as the aircraft is refused', () => {
    expect(() => airframeWithoutPowerplant({ weight: 400, moment: 1 }, [{ weight: 400, arm: 35 }])).toThrow(
      /above 0/,
    );
  });

  test('putting the same powerplant back gives the aircraft that was weighed', () => {
    fc.assert(
      fc.property(aircraft, aircraft, (airframe, powerplant) => {
        const weighed = total([...airframe, ...powerplant]);
        const again = add(airframeWithoutPowerplant(weighed, powerplant), total(powerplant));
        expect(again.weight).toBeCloseTo(weighed.weight, 7);
        expect(again.moment).toBeCloseTo(weighed.moment, 4);
      }),
    );
  });
});

describe('properties', () => {
  test('moving an item aft moves the CG aft, by w Δx/W', () => {
    fc.assert(
      fc.property(aircraft, item, between(1, 100), (others, moved, distance) => {
        const before = cgOf([...others, moved]);
        const after = cgOf([...others, { weight: moved.weight, arm: moved.arm + distance }]);
        const { weight } = total([...others, moved]);
        expect(after).toBeGreaterThan(before);
        expect(after - before).toBeCloseTo((moved.weight * distance) / weight, 8);
      }),
    );
  });

  test('the CG lies between the foremost and the aftmost item', () => {
    fc.assert(
      fc.property(aircraft, (items) => {
        const arms = items.map(({ arm }) => arm);
        expect(cgOf(items)).toBeGreaterThanOrEqual(Math.min(...arms) - 1e-9);
        expect(cgOf(items)).toBeLessThanOrEqual(Math.max(...arms) + 1e-9);
      }),
    );
  });

  test('another datum moves the CG by as much; another unit scales it', () => {
    fc.assert(
      fc.property(aircraft, between(-100, 100), (items, datum) => {
        const moved = items.map(({ weight, arm }) => ({ weight, arm: arm - datum }));
        expect(cgOf(moved)).toBeCloseTo(cgOf(items) - datum, 7);
        const metric = items.map(({ weight, arm }) => ({ weight: weight * pound, arm: arm * inch }));
        expect(cgOf(metric) / inch).toBeCloseTo(cgOf(items), 7);
      }),
    );
  });

  test('a whole less itself is nothing', () => {
    fc.assert(
      fc.property(aircraft, (items) => {
        expect(subtract(total(items), total([...items].reverse()))).toEqual({ weight: 0, moment: 0 });
      }),
    );
  });
});
