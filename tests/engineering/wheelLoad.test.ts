import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { noseOverAngle, tipBackAngle, wheelLoads } from '../../src/engineering/wheelLoad.ts';
import { between } from './between.ts';

const degrees = (radians: number) => (radians * 180) / Math.PI;

describe('wheel loads', () => {
  test('FAA-H-8083-1B nosewheel weighing backwards (from memory; its CG is 65,756/2,006): 340 and 1,666 lb', () => {
    const loads = wheelLoads(2006, 65_756 / 2006, -32, 46);
    expect(loads.noseOrTail).toBeCloseTo(340, 9);
    expect(loads.mains).toBeCloseTo(1666, 9);
  });

  test('by hand: a tailwheel aircraft of 600 kg, CG 0.36 m behind mains that are 4.05 m ahead of the tailwheel', () => {
    const loads = wheelLoads(600, 0.96, 4.65, 0.6);
    expect(loads.noseOrTail).toBeCloseTo((600 * 0.36) / 4.05, 10);
  });

  test('a CG behind the mains of a nosewheel aircraft shows as a negative nose load', () => {
    expect(wheelLoads(1000, 115, 38, 112).noseOrTail).toBeCloseTo((1000 * -3) / 74, 10);
  });

  test('both loads together are the weight and have its moment', () => {
    const arm = between(-50, 250);
    fc.assert(
      fc.property(between(1, 5000), arm, arm, arm, (weight, cg, third, main) => {
        fc.pre(Math.abs(third - main) > 1);
        const loads = wheelLoads(weight, cg, third, main);
        expect(loads.noseOrTail + loads.mains).toBeCloseTo(weight, 6);
        expect(Math.abs(loads.noseOrTail * third + loads.mains * main - weight * cg) / weight).toBeLessThan(
          1e-6,
        );
      }),
    );
  });

  test('wheels in one place are refused', () => {
    expect(() => wheelLoads(1, 1, 3, 3)).toThrow(/must differ from mainWheelArm 3/);
  });
});

describe('tipping', () => {
  test('by hand: as far ahead of the mains as it is high is 45°', () => {
    expect(degrees(tipBackAngle(100, 12, 112))).toBeCloseTo(45, 10);
    expect(degrees(noseOverAngle(1.6, 1, 0.6))).toBeCloseTo(45, 10);
  });

  test('by hand: tan 15° = 2 − √3', () => {
    expect(degrees(tipBackAngle(112 - 40 * (2 - Math.sqrt(3)), 40, 112))).toBeCloseTo(15, 9);
    expect(degrees(noseOverAngle(112 + 40 * (2 - Math.sqrt(3)), 40, 112))).toBeCloseTo(15, 9);
  });

  test('over the wheels is 0, beyond them negative', () => {
    expect(tipBackAngle(112, 40, 112)).toBe(0);
    expect(noseOverAngle(112, 40, 112)).toBe(0);
    expect(tipBackAngle(113, 40, 112)).toBeLessThan(0);
    expect(noseOverAngle(111, 40, 112)).toBeLessThan(0);
  });
});
