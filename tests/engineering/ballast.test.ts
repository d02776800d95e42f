import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ballastWeight, weightToMove } from '../../src/engineering/ballast.ts';
import { afterChange } from '../../src/engineering/weightChange.ts';
import { between } from './between.ts';

describe('published', () => {
  test('FAA-H-8083-1B, permanent ballast (1,876 lb at 32.2 read; limit 33, station 228 and 7.7 lb from memory)', () => {
    expect(Math.abs(ballastWeight(1876, 32.2, 33, 228) - 7.7)).toBeLessThanOrEqual(0.05);
  });

  test('FAA-H-8083-25, weight shifting (secondary): 7,800 lb from 81.5 to 80.5 takes 65 lb from 150 to 30', () => {
    expect(weightToMove(7800, 81.5, 80.5, 150, 30)).toBeCloseTo(65, 10);
  });
});

describe('properties', () => {
  const weight = between(100, 5000);
  const arm = between(-100, 300);
  const distance = between(0.01, 100);

  test('ballast, once aboard, brings the CG to the target, from either side', () => {
    fc.assert(
      fc.property(weight, arm, distance, distance, fc.constantFrom(1, -1), (mass, cg, move, beyond, aft) => {
        const target = cg + aft * move;
        const ballastArm = target + aft * beyond;
        const ballast = ballastWeight(mass, cg, target, ballastArm);
        expect(ballast).toBeGreaterThan(0);
        const after = afterChange(
          { weight: mass, moment: mass * cg },
          { weight: ballast, moment: ballast * ballastArm },
        );
        expect(after.cg).toBeCloseTo(target, 6);
      }),
    );
  });

  test('weight, once moved, brings the CG to the target', () => {
    fc.assert(
      fc.property(weight, arm, distance, arm, distance, (mass, cg, move, from, along) => {
        const moved = weightToMove(mass, cg, cg - move, from, from - along);
        const after = afterChange({ weight: mass, moment: mass * cg }, { weight: 0, moment: -moved * along });
        expect(after.cg).toBeCloseTo(cg - move, 6);
      }),
    );
  });

  test('further out takes less', () => {
    fc.assert(
      fc.property(weight, arm, distance, distance, distance, (mass, cg, move, beyond, further) => {
        const target = cg + move;
        expect(ballastWeight(mass, cg, target, target + beyond + further)).toBeLessThan(
          ballastWeight(mass, cg, target, target + beyond),
        );
      }),
    );
  });
});

describe('refusals', () => {
  test('nothing to do takes nothing', () => {
    expect(ballastWeight(1000, 50, 50, 20)).toBe(0);
    expect(weightToMove(1000, 50, 50, 20, 20)).toBe(0);
  });

  test('ballast on the wrong side, or at the target', () => {
    expect(() => ballastWeight(1000, 50, 52, 51)).toThrow(/ballastArm must be aft of targetCg 52, got 51/);
    expect(() => ballastWeight(1000, 50, 48, 60)).toThrow(/forward of targetCg 48/);
    expect(() => ballastWeight(1000, 50, 52, 52)).toThrow(RangeError);
  });

  test('a move the wrong way, or none', () => {
    expect(() => weightToMove(1000, 50, 52, 30, 10)).toThrow(/toArm must be aft of fromArm 30, got 10/);
    expect(() => weightToMove(1000, 50, 48, 10, 10)).toThrow(/forward of fromArm 10/);
    expect(() => weightToMove(1000, 50, 52, 10, 10)).toThrow(/aft of fromArm 10/);
  });
});
