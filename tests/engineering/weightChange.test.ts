import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { MassItem } from '../../src/engineering/massItem.ts';
import {
  afterChange,
  isNegligibleChange,
  negligibleWeightChange,
  weightChange,
} from '../../src/engineering/weightChange.ts';
import { toSi } from '../../src/units.ts';
import { between } from './between.ts';

const at = (weight: number, arm: number) => ({ weight, moment: weight * arm });
const item = fc.record({
  weight: between(0.1, 500),
  arm: between(-200, 400),
});

describe('CG after a change', () => {
  test('FAA-H-8083-25, weight addition (from memory): 6,680 lb', () => {
    const after = afterChange(at(6680, 80), at(140, 150));
    expect(after.weight).toBe(6820);
    expect(Math.abs(after.shift - 1.4)).toBeLessThanOrEqual(0.05);
    expect(Math.abs(after.cg - 81.4)).toBeLessThanOrEqual(0.05);
  });

  test('the same example as quoted by a training site (secondary): 6,860 lb, which makes 1.4 in exact', () => {
    expect(afterChange(at(6860, 80), at(140, 150)).shift).toBeCloseTo(1.4, 12);
  });

  test('FAA knowledge-test item (secondary): 35.9 lb at 150 takes 5,000 lb from 80.0 to just within 80.5', () => {
    expect(afterChange(at(5000, 80), at(35.9, 150)).cg).toBeLessThan(80.5);
    expect(afterChange(at(5000, 80), at(36.0, 150)).cg).toBeGreaterThan(80.5);
  });

  test('a moved item, by hand: 28 lb from 48 to 190 in 1,457 lb at 94.1', () => {
    const moved: MassItem[] = [
      { weight: -28, arm: 48 },
      { weight: 28, arm: 190 },
    ];
    const after = afterChange(at(1457, 94.1), weightChange(moved, []));
    expect(after.weight).toBe(1457);
    expect(after.shift).toBeCloseTo((28 * 142) / 1457, 10);
  });

  test('weight taken out ahead of the CG moves it aft', () => {
    expect(afterChange(at(1000, 100), at(-50, 40)).shift).toBeCloseTo((-50 * (40 - 100)) / 950, 12);
  });

  test('an aircraft that would weigh nothing is refused', () => {
    expect(() => afterChange(at(100, 10), at(-100, 10))).toThrow(/weight after the change must be above 0/);
    expect(() => afterChange(at(0, 10), at(100, 10))).toThrow(/weight before the change/);
  });

  test('shift is the difference of the two CGs, and has the sign of Δw (arm − x)', () => {
    fc.assert(
      fc.property(item, item, (aircraft, change) => {
        const after = afterChange(at(aircraft.weight, aircraft.arm), at(change.weight, change.arm));
        expect(after.cg - after.shift).toBeCloseTo(aircraft.arm, 7);
        if (Math.abs(change.arm - aircraft.arm) > 1e-6)
          expect(Math.sign(after.shift)).toBe(Math.sign(change.arm - aircraft.arm));
      }),
    );
  });
});

describe('weight change', () => {
  test('by hand: 438 at 36.4 against 431 at 35.6', () => {
    const change = weightChange([{ weight: 438, arm: 36.4 }], [{ weight: 431, arm: 35.6 }]);
    expect(change.weight).toBe(7);
    expect(change.moment).toBeCloseTo(15_943.2 - 15_343.6, 9);
  });

  test('a package against itself changes nothing, in whatever order it is listed', () => {
    fc.assert(
      fc.property(fc.array(item, { maxLength: 30 }), (items) => {
        expect(weightChange([...items].reverse(), items)).toEqual({ weight: 0, moment: 0 });
      }),
    );
  });
});

describe('negligible change, AC 43.13-1B Chg 1, 10-2c (read)', () => {
  const pounds = (weight: number) => toSi('mass', weight, 'lb');

  test.each([
    [4_999, 1],
    [5_000, 1],
    [5_001, 2],
    [50_000, 2],
    [50_001, 5],
  ])('empty weight %d lb: %d lb', (emptyWeight, limit) => {
    expect(negligibleWeightChange(pounds(emptyWeight))).toBeCloseTo(pounds(limit), 12);
  });

  test('weight up to the limit, CG by less than 0.05 % MAC', () => {
    const [empty, mac] = [pounds(1400), 1.4];
    expect(isNegligibleChange(empty, pounds(1), 0, mac)).toBe(true);
    expect(isNegligibleChange(empty, -pounds(1), -0.000_699, mac)).toBe(true);
    expect(isNegligibleChange(empty, pounds(1.01), 0, mac)).toBe(false);
    expect(isNegligibleChange(empty, 0, 0.000_701, mac)).toBe(false);
    expect(isNegligibleChange(empty, 0, 0.001, 2)).toBe(false); // just 0.05 %
    expect(isNegligibleChange(empty, 0, -0.000_701, mac)).toBe(false);
  });
});
