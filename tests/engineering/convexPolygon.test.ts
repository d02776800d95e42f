import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type ConvexPolygon,
  clipAtMaximum,
  cornersOf,
  minkowskiSum,
  segment,
  type Vector,
} from '../../src/engineering/convexPolygon.ts';
import { between } from './between.ts';

const outlineOf = (polygon: ConvexPolygon) => {
  const { lower, upper } = cornersOf(polygon);
  return [...lower, ...upper.reverse()];
};
const support = (polygon: ConvexPolygon, angle: number) =>
  Math.max(...outlineOf(polygon).map(([x, y]) => x! * Math.cos(angle) + y! * Math.sin(angle)));

/** The area inside the outline, by the shoelace formula. */
function area(polygon: ConvexPolygon): number {
  const outline = outlineOf(polygon);
  return outline.reduce((sum, [x1, y1], index) => {
    const [x2, y2] = outline[(index + 1) % outline.length]!;
    return sum + (x1! * y2! - x2! * y1!) / 2;
  }, 0);
}

const number = between(-50, 50);
const width = fc.oneof(fc.constant(0), between(1e-3, 30));
const anySegment = fc
  .tuple(number, number, width, number)
  .map(([x, y, width, rise]) => segment([x, y], [x + width, y + rise]));
const anyPolygon = fc
  .array(anySegment, { minLength: 1, maxLength: 8 })
  .map((segments) => segments.reduce(minkowskiSum));

describe('Minkowski sum', () => {
  test('by hand: two segments make a parallelogram', () => {
    const corners = cornersOf(minkowskiSum(segment([0, 0], [2, 1]), segment([1, 1], [2, 4])));
    expect(corners.lower).toEqual([
      [1, 1],
      [3, 2],
      [4, 5],
    ]);
    expect(corners.upper).toEqual([
      [1, 1],
      [2, 4],
      [4, 5],
    ]);
  });

  test('parallel segments follow one another, each with what it carries', () => {
    const sum = minkowskiSum(segment([0, 0, 0, 0], [1, 2, 1, 0]), segment([0, 0, 0, 0], [2, 4, 0, 2]));
    expect(cornersOf(sum).lower).toEqual([
      [0, 0, 0, 0],
      [1, 2, 1, 0],
      [3, 6, 1, 2],
    ]);
  });

  test('a point only moves the other', () => {
    const square = minkowskiSum(segment([0, 0], [1, -1]), segment([0, 0], [1, 1]));
    const moved = minkowskiSum(square, segment([5, 7], [5, 7]));
    expect(cornersOf(moved).lower.map(([x, y]) => [x! - 5, y! - 7])).toEqual(cornersOf(square).lower);
  });

  test('an edge too short to move a corner does not upset the order of the others', () => {
    // Added to 500, a width of 1e-15 vanishes; taken for level with everything it would let the steep edge go first
    const sum = [
      segment([500, 40_000], [500, 40_000]),
      segment([0, 0], [1e-15, 2e-14]),
      segment([0, 0], [8, 160]),
      segment([0, 0], [5e-324, 0]),
      segment([0, 0], [300, 12_000]),
      segment([0, 0], [50, 1500]),
    ].reduce(minkowskiSum);
    const weights = cornersOf(sum).lower.map(([x]) => x);
    expect([...new Set(weights)]).toEqual([500, 508, 558, 858]);
  });

  test('supports add in every direction: h(A + B) = h(A) + h(B)', () => {
    fc.assert(
      fc.property(anyPolygon, anyPolygon, between(0, 6.283), (one, other, angle) => {
        expect(support(minkowskiSum(one, other), angle)).toBeCloseTo(
          support(one, angle) + support(other, angle),
          8,
        );
      }),
    );
  });

  test('the sum is convex, in order of x, and both boundaries end at the same corner', () => {
    fc.assert(
      fc.property(anyPolygon, anyPolygon, (one, other) => {
        const { lower, upper } = cornersOf(minkowskiSum(one, other));
        for (const [boundary, rising] of [
          [lower, 1],
          [upper, -1],
        ] as const) {
          for (let index = 1; index < boundary.length; index++)
            expect(boundary[index]![0]).toBeGreaterThanOrEqual(boundary[index - 1]![0]!);
          for (let index = 2; index < boundary.length; index++) {
            const [[x1, y1], [x2, y2], [x3, y3]] = boundary.slice(index - 2) as [Vector, Vector, Vector];
            const cross = (x2! - x1!) * (y3! - y2!) - (x3! - x2!) * (y2! - y1!);
            expect(rising * cross).toBeGreaterThan(-1e-8);
          }
        }
        lower.at(-1)!.forEach((value, index) => {
          expect(value).toBeCloseTo(upper.at(-1)![index]!, 8);
        });
      }),
    );
  });

  test('n segments make at most n edges a side: nothing multiplies', () => {
    fc.assert(
      fc.property(fc.array(anySegment, { minLength: 1, maxLength: 60 }), (segments) => {
        const sum = segments.reduce(minkowskiSum);
        expect(sum.lower.length).toBeLessThanOrEqual(segments.length);
        expect(sum.upper.length).toBeLessThanOrEqual(segments.length);
      }),
      { numRuns: 30 },
    );
  });
});

describe('clipping', () => {
  test('by hand: a square on its corner cut in half, and what it carries interpolated', () => {
    const square = minkowskiSum(segment([0, 0, 0], [1, -1, 10]), segment([0, 0, 0], [1, 1, 0]));
    const half = cornersOf(clipAtMaximum(square, 0.5));
    expect(half.lower).toEqual([
      [0, 0, 0],
      [0.5, -0.5, 5],
    ]);
    expect(half.upper).toEqual([
      [0, 0, 0],
      [0.5, 0.5, 0],
    ]);
    expect(cornersOf(clipAtMaximum(square, 1)).lower).toEqual([
      [0, 0, 0],
      [1, -1, 10],
    ]);
    expect(clipAtMaximum(square, 2)).toEqual(square);
    expect(cornersOf(clipAtMaximum(square, 0)).upper).toEqual([[0, 0, 0]]);
  });

  test('the area that is left is the integral of the height up to the cut', () => {
    fc.assert(
      fc.property(anyPolygon, between(0.05, 1), (polygon, share) => {
        const { lower, upper } = cornersOf(polygon);
        const [left, right] = [lower[0]![0]!, lower.at(-1)![0]!];
        const cut = left + share * (right - left);
        const heightAt = (boundary: readonly Vector[], x: number) => {
          const index = Math.max(
            1,
            boundary.findIndex((point) => point[0]! >= x),
          );
          const [from, to] = [boundary[index - 1]!, boundary[index] ?? boundary[index - 1]!];
          const fraction = to[0]! > from[0]! ? (x - from[0]!) / (to[0]! - from[0]!) : 0;
          return from[1]! + fraction * (to[1]! - from[1]!);
        };
        const steps = 4000;
        let integral = 0;
        for (let step = 0; step < steps; step++) {
          const x = left + ((step + 0.5) / steps) * (cut - left);
          integral += (heightAt(upper, x) - heightAt(lower, x)) * ((cut - left) / steps);
        }
        expect(Math.abs(area(clipAtMaximum(polygon, cut)) - integral)).toBeLessThan(
          1e-4 * Math.max(1, area(polygon)),
        );
      }),
      { numRuns: 40 },
    );
  });
});
