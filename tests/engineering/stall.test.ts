import { describe, expect, test } from 'vitest';
import { stallSpeed } from '../../src/engineering/stall.ts';
import { foot, knot, pound } from './tradeUnits.ts';

describe('stall speed', () => {
  // By hand: 1,000 kg, 10 m², C_Lmax 1.6, ρ 1.225: √(2 · 9,806.65 / 19.6) = √1,000.6786 = 31.63350 m/s
  test('by hand', () => {
    expect(stallSpeed(1000, 10, 1.6, 1.225)).toBeCloseTo(31.6335, 4);
  });

  // By hand in trade units: 2,400 lb, 174 ft², 1.6, ρ 0.0023769 slug/ft³: √(4,800 / 0.661729) = 85.169 ft/s, 50.461 kt
  test('by hand, in pounds and feet', () => {
    const speed = stallSpeed(2400 * pound, 174 * foot ** 2, 1.6, 1.225);
    expect(speed / knot).toBeCloseTo(50.46, 2);
  });

  test('in a 60° banked turn (n = 2) it is √2 times as fast, at no load 0', () => {
    expect(stallSpeed(1000, 10, 1.6, 1.225, 2) / stallSpeed(1000, 10, 1.6, 1.225)).toBeCloseTo(
      Math.SQRT2,
      12,
    );
    expect(stallSpeed(1000, 10, 1.6, 1.225, 0)).toBe(0);
  });
});
