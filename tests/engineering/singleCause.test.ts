import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { armHalfWidth, singleCause, weighingScatter } from '../../src/engineering/singleCause.ts';
import type { WeighingPoint } from '../../src/engineering/weighing.ts';
import { between } from './between.ts';

const scale = (arm: number, accuracy: number, reading = 400, armAccuracy = 0): WeighingPoint => ({
  reading,
  tare: 0,
  arm,
  accuracy,
  armAccuracy,
});

describe('by hand', () => {
  test('scatter of three scales, ±1 at 40 and ±2 at 110 twice, arms ±0.1 under 200 and 500', () => {
    const scatter = weighingScatter([
      scale(40, 1, 200, 0.1),
      scale(110, 2, 500, 0.1),
      scale(110, 2, 500, 0.1),
    ]);
    expect(scatter.weight).toBeCloseTo(1 + 4 + 4, 12);
    expect(scatter.both).toBeCloseTo(40 + 440 + 440, 12);
    expect(scatter.moment).toBeCloseTo(1600 + 400 + 2 * (48_400 + 2500), 9);
  });

  test('an arm ±0.01 under 300 with 100 of chocks moves 200 by it', () => {
    const scatter = weighingScatter([{ ...scale(2, 1, 300, 0.01), tare: 100 }, scale(4, 1)]);
    expect(scatter.moment).toBeCloseTo(4 + 4 + 16, 12);
  });

  test('14 heavier at 38: weight and moment say so, 1.75 half-widths of an item known to ±8', () => {
    const scatter = weighingScatter([scale(38, 1), scale(112, 1), scale(112, 1)]);
    const cause = singleCause({ weight: 14, moment: 14 * 38 }, scatter, 38, 8);
    expect(cause.error).toBeCloseTo(14, 9);
    expect(cause.halfWidths).toBeCloseTo(1.75, 9);
    expect(cause.misfit).toBeCloseTo(0, 5);
    expect(cause.distance).toBeCloseTo(1.75, 6);
  });

  test('two scales, ±1 at 0 and at 100: 10 at 50 blamed on 0 leaves all of its moment', () => {
    // errors of the scales (e₀, e₁₀₀) = (5, 5); a cause at 0 takes away e₀ alone
    const scatter = weighingScatter([scale(0, 1), scale(100, 1)]);
    const cause = singleCause({ weight: 10, moment: 500 }, scatter, 0, 1);
    expect(cause.error).toBeCloseTo(5, 9);
    expect(cause.misfit).toBeCloseTo(5, 9);
    expect(cause.distance).toBeCloseTo(Math.hypot(5, 5), 9);
  });

  test('how well the arm of a difference is known: two scales ±1 at 0 and 100, 20 at 50', () => {
    // √(1² 50² + 1² 50²)/20
    const scatter = weighingScatter([scale(0, 1), scale(100, 1)]);
    expect(armHalfWidth({ weight: 20, moment: 1000 }, scatter)).toBeCloseTo(Math.hypot(50, 50) / 20, 9);
    expect(armHalfWidth({ weight: -20, moment: -1000 }, scatter)).toBeCloseTo(Math.hypot(50, 50) / 20, 9);
  });
});

const scales = fc
  .tuple(between(-100, 60), between(80, 300), between(0.2, 5), between(0.2, 5))
  .map(([first, second, one, other]) => [scale(first, one), scale(second, other), scale(second, other)]);

describe('properties', () => {
  test('the error is the one that leaves least: a search finds no better', () => {
    fc.assert(
      fc.property(
        scales,
        between(-50, 50),
        between(-50, 250),
        between(-50, 250),
        (points, weight, at, arm) => {
          const scatter = weighingScatter(points);
          const left = (error: number) => {
            const [w, m] = [weight - error, weight * at - error * arm];
            const determinant = scatter.weight * scatter.moment - scatter.both ** 2;
            return (scatter.moment * w * w - 2 * scatter.both * w * m + scatter.weight * m * m) / determinant;
          };
          const found = singleCause({ weight, moment: weight * at }, scatter, arm, 1);
          const least = left(found.error);
          expect(Math.sqrt(Math.max(0, least))).toBeCloseTo(found.misfit, 4);
          for (const step of [-1, -0.01, 0.01, 1]) expect(left(found.error + step)).toBeGreaterThan(least);
        },
      ),
    );
  });

  test('where the datum lies makes no difference', () => {
    fc.assert(
      fc.property(
        scales,
        between(1, 50),
        between(-50, 250),
        between(-50, 250),
        between(-200, 200),
        (points, weight, at, arm, datum) => {
          const moved = points.map((point) => ({ ...point, arm: point.arm - datum }));
          const here = singleCause({ weight, moment: weight * at }, weighingScatter(points), arm, 2);
          const there = singleCause(
            { weight, moment: weight * (at - datum) },
            weighingScatter(moved),
            arm - datum,
            2,
          );
          expect(there.error).toBeCloseTo(here.error, 5);
          expect(there.distance).toBeCloseTo(here.distance, 5);
        },
      ),
    );
  });

  test('of items known equally well, the one at the arm of the difference is the likeliest', () => {
    fc.assert(
      fc.property(scales, between(5, 50), between(0, 200), between(5, 80), (points, weight, arm, away) => {
        const scatter = weighingScatter(points);
        const difference = { weight, moment: weight * arm };
        const there = singleCause(difference, scatter, arm, 3);
        expect(singleCause(difference, scatter, arm + away, 3).misfit).toBeGreaterThan(there.misfit);
      }),
    );
  });
});

test('refusals', () => {
  expect(() => weighingScatter([scale(10, 0), scale(20, 0)])).toThrow(
    'scatter of the weighing must be above 0',
  );
  expect(() => weighingScatter([scale(10, 1)])).toThrow('scatter of the weighing');
  const scatter = weighingScatter([scale(0, 1), scale(100, 1)]);
  expect(() => singleCause({ weight: 1, moment: 1 }, scatter, 1, 0)).toThrow('halfWidth must be above 0');
  expect(() => armHalfWidth({ weight: 0, moment: 1 }, scatter)).toThrow('weight of the difference');
});
