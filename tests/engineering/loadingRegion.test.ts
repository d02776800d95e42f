import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { loadingPolygon } from '../../src/engineering/loadingPolygon.ts';
import { loadingRegion } from '../../src/engineering/loadingRegion.ts';
import { randomAircraft } from './randomAircraft.ts';

const seatAndTank = {
  empty: { weight: 100, moment: 1000 },
  stations: [{ name: 'seat', arm: 20, minimum: 0, maximum: 50 }],
  tanks: [{ name: 'tank', arm: 5, minimum: 0, maximum: 50 }],
  maximumWeight: 150,
};

describe('by hand', () => {
  test('up the forward boundary, across at the maximum weight, down the aft one, on hyperbolas', () => {
    // forward CG = 5 + 500/W, aft CG = 20 − 1000/W
    const outline = loadingRegion(loadingPolygon(seatAndTank), 2);
    const expected = [
      [10, 100],
      [5 + 500 / 125, 125],
      [5 + 500 / 150, 150],
      [20 - 1000 / 150, 150],
      [20 - 1000 / 125, 125],
      [10, 100],
    ];
    expect(outline).toHaveLength(expected.length);
    outline.forEach(({ cg, weight }, index) => {
      expect(cg).toBeCloseTo(expected[index]![0]!, 12);
      expect(weight).toBeCloseTo(expected[index]![1]!, 12);
    });
  });

  test('every point of a fine outline lies on its hyperbola', () => {
    const outline = loadingRegion(loadingPolygon(seatAndTank), 10);
    const top = outline.findIndex(({ cg }) => cg > 10);
    expect(top).toBe(11); // ten steps up from the empty aircraft, then across
    outline.forEach(({ cg, weight }, index) => {
      expect(cg).toBeCloseTo(index < top ? 5 + 500 / weight : 20 - 1000 / weight, 12);
    });
  });

  test('the empty aircraft alone is a point, closed', () => {
    const alone = loadingPolygon({
      empty: { weight: 100, moment: 1000 },
      stations: [],
      tanks: [],
      maximumWeight: 100,
    });
    expect(loadingRegion(alone)).toEqual([
      { cg: 10, weight: 100 },
      { cg: 10, weight: 100 },
    ]);
  });
});

test('closed, finite, no gap in weight wider than the range over the steps, and not many points', () => {
  fc.assert(
    fc.property(randomAircraft, fc.integer({ min: 1, max: 60 }), (limits, steps) => {
      const polygon = loadingPolygon(limits);
      const outline = loadingRegion(polygon, steps);
      expect(outline.at(-1)).toEqual(outline[0]);
      const weights = outline.map(({ weight }) => weight);
      const spacing = (Math.max(...weights) - Math.min(...weights)) / steps;
      outline.forEach(({ cg, weight }, index) => {
        expect(Number.isFinite(cg)).toBe(true);
        if (index > 0)
          expect(Math.abs(weight - outline[index - 1]!.weight)).toBeLessThanOrEqual(spacing + 1e-9);
      });
      const edges = polygon.forward.length + polygon.aft.length;
      expect(outline.length).toBeLessThanOrEqual(2 * steps + edges + 1);
    }),
    { numRuns: 200 },
  );
});
