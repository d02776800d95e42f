import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { centreOfGravity } from '../../src/engineering/massItem.ts';
import { unexplained, type WeighingPoint, weigh } from '../../src/engineering/weighing.ts';
import { between } from './between.ts';

const point = (reading: number, arm: number, tare = 0, accuracy = 0): WeighingPoint => ({
  reading,
  tare,
  arm,
  accuracy,
});

// Weighings without tares and items stand in tests/outside/values/weighing.ts
test('FAA-H-8083-30, figure 4-20 (read as reproduced, answer too): chocks, full tanks at 5.9 lb/gal, 1,331.5 lb, 66,698 lb·in, +50.1 in', () => {
  const { asWeighed, basicEmpty } = weigh(
    [point(650, 70, 5), point(640, 70, 5), point(225, -30, 2.5)],
    [{ weight: 30 * 5.9, arm: 95 }],
    [{ weight: 6, arm: 98 }],
  );
  expect(asWeighed.weight).toBe(1502.5);
  expect(basicEmpty.weight).toBeCloseTo(1331.5, 9);
  expect(basicEmpty.moment).toBeCloseTo(66_698, 6);
  expect(Math.abs(centreOfGravity(basicEmpty) - 50.1)).toBeLessThanOrEqual(0.05);
});

describe('by hand', () => {
  test('tare off, usable fuel out, unusable fuel and a missing seat in', () => {
    const { asWeighed, basicEmpty } = weigh(
      [point(405, 40, 5), point(612, 110, 12), point(588, 110, 8)],
      [{ weight: 60, arm: 104 }],
      [
        { weight: 12, arm: 104 },
        { weight: 20, arm: 139 },
      ],
    );
    // 400 × 40 + 1,180 × 110
    expect(asWeighed).toEqual({ weight: 1580, moment: 145_800 });
    expect(basicEmpty).toEqual({ weight: 1552, moment: 145_800 - 6240 + 1248 + 2780 });
  });

  test('a tail held down reads less than its tare', () => {
    expect(weigh([point(100, 200, 150), point(1050, 80)], [], []).asWeighed).toEqual({
      weight: 1000,
      moment: 84_000 - 10_000,
    });
  });

  test('scales of ±3, ±4 and ±12 lb: 13 lb together; the CG by their levers about it', () => {
    const weighing = weigh([point(200, 0, 0, 3), point(400, 50, 0, 4), point(400, 50, 0, 12)], [], []);
    expect(weighing.weightHalfWidth).toBeCloseTo(13, 12);
    // CG 40: 3 × 40, 4 × 10 and 12 × 10 in squares, over 1,000
    expect(weighing.cgHalfWidth).toBeCloseTo(Math.hypot(120, 40, 120) / 1000, 12);
  });

  test('arms measured to ±0.1, ±0.2 and ±0.2: each with the weight on it', () => {
    const uncertain = (reading: number, arm: number, armAccuracy: number) => ({
      ...point(reading, arm),
      armAccuracy,
    });
    const weighing = weigh(
      [uncertain(200, 0, 0.1), uncertain(400, 50, 0.2), uncertain(400, 50, 0.2)],
      [],
      [],
    );
    expect(weighing.weightHalfWidth).toBe(0);
    // 20, 80 and 80 in squares, over 1,000
    expect(weighing.cgHalfWidth).toBeCloseTo(Math.sqrt(400 + 6400 + 6400) / 1000, 12);
  });

  test('what a weighing does not explain, and where it would have to sit', () => {
    const weighing = weigh([point(400, 0, 0, 3), point(1000, 120, 0, 4)], [], []);
    const found = unexplained(weighing, {
      expected: { weight: 1380, moment: 118_000 },
      weightHalfWidth: 12,
      cgHalfWidth: 0.5,
    });
    expect(found.weight).toBe(20);
    expect(found.moment).toBe(2000);
    expect(found.arm).toBe(100);
    expect(found.cg).toBeCloseTo(120_000 / 1400 - 118_000 / 1380, 12);
    expect(found.weightInside).toBe(false); // 20 against √(5² + 12²) = 13
    expect(found.cgInside).toBe(true);
  });

  test('13 lb are inside a half-width of √(5² + 12²), 13.1 are not', () => {
    const weighing = weigh([point(400, 0, 0, 3), point(1000, 120, 0, 4)], [], []);
    const against = (weight: number) =>
      unexplained(weighing, {
        expected: { weight, moment: 120_000 },
        weightHalfWidth: 12,
        cgHalfWidth: 0,
      }).weightInside;
    expect([against(1387.001), against(1386.9), against(1412.999), against(1413.1)]).toEqual([
      true,
      false,
      true,
      false,
    ]);
  });

  test('just the half-width is inside, and has no arm; a CG beyond its own is not inside', () => {
    // 4 heavier than predicted, scales known to √(0² + 4²); the CG of 2.5 against 2 and 1.9, known to √(0.3² + 0.4²) = 0.5
    const weighed = { basicEmpty: { weight: 104, moment: 260 }, weightHalfWidth: 4, cgHalfWidth: 0.3 };
    const against = (cg: number) =>
      unexplained(weighed, {
        expected: { weight: 100, moment: 100 * cg },
        weightHalfWidth: 0,
        cgHalfWidth: 0.4,
      });
    expect(against(2)).toMatchObject({ weightInside: true, cgInside: true, arm: undefined });
    expect(against(1.9).cgInside).toBe(false);
  });

  test('what stands under a scale does not make a wrong arm worse: half-width of reading less tare', () => {
    // 300 − 100 at an arm known to ±0.01, 200 at a known one: 2 of moment on 400
    const { cgHalfWidth } = weigh([{ ...point(300, 2, 100), armAccuracy: 0.01 }, point(200, 4)], [], []);
    expect(cgHalfWidth).toBeCloseTo(0.005, 12);
  });

  test('a difference that the scales themselves could make has no arm', () => {
    const weighing = weigh([point(400, 0, 0, 3), point(1000, 120, 0, 4)], [], []);
    const against = (weight: number) =>
      unexplained(weighing, { expected: { weight, moment: 119_000 }, weightHalfWidth: 0, cgHalfWidth: 0 })
        .arm;
    expect(against(1396)).toBeUndefined();
    expect(against(1400)).toBeUndefined();
    expect(against(1394)).toBeCloseTo(1000 / 6, 10);
  });
});

describe('properties', () => {
  const points = fc.array(
    fc.record({
      reading: between(200, 2000),
      tare: between(0, 20),
      arm: between(-100, 300),
      accuracy: between(0, 5),
    }),
    { minLength: 2, maxLength: 6 },
  );

  test('the CG lies between the weighing points; the datum moves it, not its half-width', () => {
    fc.assert(
      fc.property(points, between(-100, 100), (scales, datum) => {
        const weighing = weigh(scales, [], []);
        const cg = centreOfGravity(weighing.asWeighed);
        expect(cg).toBeGreaterThanOrEqual(Math.min(...scales.map(({ arm }) => arm)) - 1e-9);
        expect(cg).toBeLessThanOrEqual(Math.max(...scales.map(({ arm }) => arm)) + 1e-9);
        const moved = weigh(
          scales.map((scale) => ({ ...scale, arm: scale.arm - datum })),
          [],
          [],
        );
        expect(centreOfGravity(moved.asWeighed)).toBeCloseTo(cg - datum, 8);
        expect(moved.cgHalfWidth).toBeCloseTo(weighing.cgHalfWidth, 9);
      }),
    );
  });

  test('a hidden weight is found at its arm', () => {
    fc.assert(
      fc.property(points, between(1, 100), between(-50, 250), (scales, weight, arm) => {
        const exact = scales.map((scale) => ({ ...scale, accuracy: 0 }));
        const { basicEmpty } = weigh(exact, [{ weight, arm }], []);
        const found = unexplained(weigh(exact, [], []), {
          expected: basicEmpty,
          weightHalfWidth: 0,
          cgHalfWidth: 0,
        });
        expect(found.weight).toBeCloseTo(weight, 8);
        expect(found.arm).toBeCloseTo(arm, 5);
      }),
    );
  });
});

describe('refusals', () => {
  test.each([
    ['no scale', [], /as-weighed weight must be above 0/],
    ['a tare above the reading everywhere', [point(10, 1, 20)], /as-weighed weight/],
    ['no arm', [point(10, Number.NaN)], /arm/],
  ])('%s', (_, points, message) => {
    expect(() => weigh(points, [], [])).toThrow(message);
  });

  test('more taken out than was weighed', () => {
    expect(() => weigh([point(10, 1)], [{ weight: 10, arm: 1 }], [])).toThrow(/basic empty weight/);
  });
});
