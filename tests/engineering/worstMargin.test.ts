import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  cgMargins,
  type Envelope,
  envelopeFrom,
  limitsAt,
  type Side,
} from '../../src/engineering/envelope.ts';
import { loadedWith, type Station } from '../../src/engineering/loading.ts';
import { type LoadingLimits, loadingPolygon } from '../../src/engineering/loadingPolygon.ts';
import { worstMargins } from '../../src/engineering/worstMargin.ts';
import { between } from './between.ts';
import { randomAircraft, withoutOtherLimits } from './loadingLp.ts';

const station = (name: string, arm: number, maximum: number, minimum = 0): Station => ({
  name,
  arm,
  minimum,
  maximum,
});

describe('the cause, by hand: load × (arm − CG) / (weight − load) is how far a load has moved the CG', () => {
  const envelope = envelopeFrom([{ weight: 2000, forward: 0, aft: 20 }]);
  const causeOf = (stations: readonly (readonly [string, arm: number, load: number])[]) => {
    const loading = { weight: 2000, moment: 20_000, cg: 10, loads: stations.map(([, , load]) => load) };
    const named = stations.map(([name, arm, load]) => station(name, arm, load));
    return worstMargins({ stations: named, forward: [loading], aft: [loading] }, envelope).aft.cause;
  };

  test.each<[string, [string, number, number][], string | undefined]>([
    [
      'a heavy load near the CG moved it by 2, a light one far aft by 100 · 30/1,900 = 1.6',
      [
        ['heavy', 12, 1000],
        ['far', 40, 100],
      ],
      'heavy',
    ],
    [
      'a load ahead of the CG is never the cause of an aft CG',
      [
        ['bag', 12, 100],
        ['crew', 9, 1000],
      ],
      'bag',
    ],
    [
      'nothing aboard, or all of it at the CG: no cause',
      [
        ['empty bay', 40, 0],
        ['seat', 10, 200],
      ],
      undefined,
    ],
  ])('%s', (_, stations, cause) => {
    expect(causeOf(stations)).toBe(cause);
  });
});

describe('by hand', () => {
  test('AC 43.13-1B figures 10-10 and 10-11 (read): +2.69 forward, +0.57 aft, both satisfactory there', () => {
    const polygon = loadingPolygon({
      empty: { weight: 1169, moment: 1169 * 10.6 },
      stations: [
        station('oil', -49, 17, 17),
        station('pilot', 16, 170, 170),
        station('front passenger', 16, 170),
        station('rear passengers', 48, 340),
        station('baggage', 75.5, 100),
      ],
      tanks: [station('fuel', 22, 240, 83)],
      maximumWeight: 2100,
    });
    const margins = worstMargins(polygon, envelopeFrom([{ weight: 2100, forward: 8.5, aft: 21.9 }]));
    expect(margins.forward.margin).toBeCloseTo(16_104 / 1439 - 8.5, 2);
    expect(margins.aft.margin).toBeCloseTo(21.9 - 43_428 / 2036, 2);
    expect(margins.aft.cause).toBe('rear passengers');
    expect(margins.forward.cause).toBe('oil');
    expect(margins.worst).toBe(margins.aft);
  });

  test('a sloping limit: the worst margin is inside an edge, not at the extreme CG', () => {
    // 1,000 at 100 and up to 1,000 at 200: CG = 200 − 10⁵/W. Aft limit 110 + 0.05 W, from 160 to 210.
    // Margin 10⁵/W + 0.05 W − 90 is least at W = √(2 × 10⁶): 2 √5000 − 90; at both ends it is 60.
    const polygon = loadingPolygon({
      empty: { weight: 1000, moment: 100_000 },
      stations: [station('hold', 200, 1000)],
      tanks: [],
      maximumWeight: 2000,
    });
    const limits = envelopeFrom([
      { weight: 1000, forward: 50, aft: 160 },
      { weight: 2000, forward: 50, aft: 210 },
    ]);
    const { aft } = worstMargins(polygon, limits);
    expect(aft.weight).toBeCloseTo(Math.sqrt(2e6), 6);
    expect(aft.margin).toBeCloseTo(2 * Math.sqrt(5000) - 90, 9);
    expect(aft.cg).toBeCloseTo(200 - 1e5 / Math.sqrt(2e6), 9);
    expect(aft.loads[0]).toBeCloseTo(Math.sqrt(2e6) - 1000, 6);
    expect(aft.limit).toBeCloseTo(110 + 0.05 * Math.sqrt(2e6), 9);
    expect(aft.cause).toBe('hold');
  });

  test('a corner of the limits: the worst margin is at its weight, in the middle of an edge', () => {
    // CG = 200 − 10⁵/W is 133.33 at 1,500, where the aft limit dips to 135 between 200 and 200
    const polygon = loadingPolygon({
      empty: { weight: 1000, moment: 100_000 },
      stations: [station('hold', 200, 1000)],
      tanks: [],
      maximumWeight: 2000,
    });
    const limits = envelopeFrom([
      { weight: 1000, forward: 50, aft: 200 },
      { weight: 1500, forward: 50, aft: 135 },
      { weight: 2000, forward: 50, aft: 200 },
    ]);
    const { aft } = worstMargins(polygon, limits);
    expect(aft.weight).toBe(1500);
    expect(aft.margin).toBeCloseTo(135 - 400 / 3, 10);
  });

  test('the worst forward margin of a nose-heavy aircraft is where its forward limit has moved aft', () => {
    // 1,500 at 95 with up to 1,000 at 100: CG 95 to 97. Limit 90 to 1,500, then straight to 99 at 2,500.
    const polygon = loadingPolygon({
      empty: { weight: 1500, moment: 1500 * 95 },
      stations: [station('seats', 100, 1000)],
      tanks: [],
      maximumWeight: 2500,
    });
    const limits = envelopeFrom([
      { weight: 1500, forward: 90, aft: 120 },
      { weight: 2500, forward: 99, aft: 120 },
    ]);
    const { forward, worst } = worstMargins(polygon, limits);
    expect(forward.margin).toBeCloseTo(97 - 99, 10);
    expect(forward.weight).toBe(2500);
    expect(forward.loads).toEqual([1000]);
    expect(forward.cause).toBeUndefined(); // the seats move the CG aft
    expect(worst).toBe(forward);
  });

  test('the empty aircraft alone', () => {
    const polygon = loadingPolygon({
      empty: { weight: 100, moment: 1000 },
      stations: [],
      tanks: [],
      maximumWeight: 100,
    });
    const margins = worstMargins(polygon, envelopeFrom([{ weight: 100, forward: 9, aft: 12 }]));
    expect(margins.forward).toMatchObject({ margin: 1, weight: 100, cg: 10, loads: [], limit: 9 });
    expect(margins.aft).toMatchObject({ margin: 2, side: 'aft', cause: undefined });
  });

  test('loadings beyond the envelope are refused, not extrapolated', () => {
    const polygon = loadingPolygon({
      empty: { weight: 1000, moment: 100_000 },
      stations: [station('hold', 200, 1000)],
      tanks: [],
      maximumWeight: 2000,
    });
    expect(() => worstMargins(polygon, envelopeFrom([{ weight: 1900, forward: 50, aft: 300 }]))).toThrow(
      /at most 1900 \(end of the envelope\), got 2000/,
    );
  });
});

/** Limits with 1 to 5 corners, sloping either way, that reach to the maximum weight. */
const anyEnvelope = (limits: LoadingLimits): fc.Arbitrary<Envelope> =>
  fc
    .array(
      fc.record({
        share: between(0.05, 1),
        forward: between(40, 110),
        width: between(1, 60),
      }),
      { minLength: 1, maxLength: 5 },
    )
    .map((corners) => {
      const heights = [...new Set(corners.map(({ share }) => Math.round(share * 1000) / 1000))];
      return envelopeFrom(
        heights.map((share, index) => ({
          weight: limits.maximumWeight * (share === Math.max(...heights) ? 1 : share),
          forward: corners[index]!.forward,
          aft: corners[index]!.forward + corners[index]!.width,
        })),
      );
    });
const withEnvelope = randomAircraft.chain((limits) => fc.tuple(fc.constant(limits), anyEnvelope(limits)));

describe('properties', () => {
  test('the loading named is one that can be, and has that margin', () => {
    fc.assert(
      fc.property(withEnvelope, fc.constantFrom<Side>('forward', 'aft'), ([limits, envelope], side) => {
        const polygon = loadingPolygon(limits);
        const critical = worstMargins(polygon, envelope)[side];
        const loaded = loadedWith(limits.empty, polygon.stations, critical.loads);
        expect(loaded.weight).toBeCloseTo(critical.weight, 6);
        expect(loaded.cg).toBeCloseTo(critical.cg, 6);
        const weight = Math.min(loaded.weight, limits.maximumWeight);
        expect(cgMargins(envelope, weight, loaded.cg)[side]).toBeCloseTo(critical.margin, 6);
      }),
      { numRuns: 300 },
    );
  });

  test('no random loading is worse, with zero-fuel and shared limits too', () => {
    const draws = fc.array(fc.array(between(0, 1), { minLength: 4, maxLength: 4 }), {
      minLength: 20,
      maxLength: 20,
    });
    fc.assert(
      fc.property(withEnvelope, draws, ([limits, envelope], shares) => {
        const polygon = loadingPolygon(limits);
        const margins = worstMargins(polygon, envelope);
        const corners = [...polygon.forward, ...polygon.aft];
        for (const share of shares) {
          // A mixture of two corners of each boundary is a loading within the limits
          const picked = share.map((value) => corners[Math.floor(value * (corners.length - 1))]!);
          const weight = picked.reduce((sum, corner) => sum + corner.weight / 4, 0);
          const cg = picked.reduce((sum, corner) => sum + corner.moment / 4, 0) / weight;
          const here = cgMargins(envelope, weight, cg);
          expect(here.forward).toBeGreaterThan(margins.forward.margin - 1e-7);
          expect(here.aft).toBeGreaterThan(margins.aft.margin - 1e-7);
        }
      }),
      { numRuns: 300 },
    );
  });

  test('dense brute force: at 2,000 weights, the least and greatest moment by filling in order of arm', () => {
    fc.assert(
      fc.property(withEnvelope, fc.constantFrom<Side>('forward', 'aft'), ([aircraft, envelope], side) => {
        const limits = withoutOtherLimits(aircraft);
        const stations = [...limits.stations, ...limits.tanks];
        const outermostFirst = [...stations].sort((one, other) =>
          side === 'aft' ? other.arm - one.arm : one.arm - other.arm,
        );
        const least = loadedWith(
          limits.empty,
          stations,
          stations.map(({ minimum }) => minimum),
        );
        const full = stations.reduce((sum, { maximum }) => sum + maximum, limits.empty.weight);
        const heaviest = Math.min(limits.maximumWeight, full);
        let brute = Number.POSITIVE_INFINITY;
        let steepest = 0;
        let previous: number | undefined;
        for (let step = 0; step <= 2000; step++) {
          const weight = least.weight + ((heaviest - least.weight) * step) / 2000;
          let [room, moment] = [weight - least.weight, least.moment];
          for (const { arm, minimum, maximum } of outermostFirst) {
            const load = Math.min(room, maximum - minimum);
            moment += load * arm;
            room -= load;
          }
          const limit = limitsAt(envelope, Math.min(weight, limits.maximumWeight))[side];
          const margin = side === 'aft' ? limit - moment / weight : moment / weight - limit;
          brute = Math.min(brute, margin);
          if (previous !== undefined) steepest = Math.max(steepest, Math.abs(margin - previous));
          previous = margin;
        }
        const { margin } = worstMargins(loadingPolygon(limits), envelope)[side];
        expect(margin).toBeLessThan(brute + 1e-7); // brute force finds nothing worse
        expect(margin).toBeGreaterThan(brute - steepest - 1e-7); // and comes within one step of it
      }),
      { numRuns: 300 },
    );
  });

  test('a moment known to so much: dense brute force finds nothing worse on the way, and comes close', () => {
    fc.assert(
      fc.property(
        withEnvelope,
        fc.constantFrom<Side>('forward', 'aft'),
        between(0, 50),
        ([aircraft, envelope], side, halfWidth) => {
          const polygon = loadingPolygon(withoutOtherLimits(aircraft));
          const boundary = polygon[side];
          const insideAt = (weight: number, moment: number) => {
            const limit = limitsAt(envelope, weight)[side];
            return (side === 'aft' ? limit - moment / weight : moment / weight - limit) - halfWidth / weight;
          };
          let brute = insideAt(boundary[0]!.weight, boundary[0]!.moment);
          let steepest = 0;
          for (let edge = 1; edge < boundary.length; edge++) {
            const [from, to] = [boundary[edge - 1]!, boundary[edge]!];
            let previous = insideAt(from.weight, from.moment);
            for (let step = 1; step <= 1000; step++) {
              const margin = insideAt(
                from.weight + ((to.weight - from.weight) * step) / 1000,
                from.moment + ((to.moment - from.moment) * step) / 1000,
              );
              brute = Math.min(brute, margin);
              steepest = Math.max(steepest, Math.abs(margin - previous));
              previous = margin;
            }
          }
          const worst = worstMargins(polygon, envelope, halfWidth)[side];
          expect(worst.margin).toBeLessThan(brute + 1e-7); // brute force finds nothing worse
          expect(worst.margin).toBeGreaterThan(brute - steepest - 1e-7); // and comes within one step of it
          // told with the loading as it is: only the margin has the half-width taken off
          const inside = side === 'aft' ? worst.limit - worst.cg : worst.cg - worst.limit;
          expect(worst.margin).toBeCloseTo(inside - halfWidth / worst.weight, 7);
        },
      ),
      { numRuns: 200 },
    );
  });

  test('a half-width weighs most on the lightest: by hand, 20 kg·m take 20 mm at 1,000 kg and 10 mm at 2,000', () => {
    const envelope = envelopeFrom([{ weight: 2000, forward: 0, aft: 10 }]);
    const states = [
      { weight: 1000, moment: 9_985, cg: 9.985, loads: [] }, // 15 mm inside
      { weight: 2000, moment: 19_976, cg: 9.988, loads: [] }, // 12 mm inside
    ];
    const along = { stations: [], forward: states, aft: states };
    expect(worstMargins(along, envelope).aft).toMatchObject({ weight: 2000 });
    const known = worstMargins(along, envelope, 20).aft;
    expect(known.weight).toBe(1000);
    expect(known.margin).toBeCloseTo(-0.005, 12);
    const alone = { stations: [], forward: states.slice(0, 1), aft: states.slice(0, 1) };
    expect(worstMargins(alone, envelope, 20).aft.margin).toBeCloseTo(-0.005, 12);
    expect(worstMargins(alone, envelope, 20).forward.margin).toBeCloseTo(9.985 - 0.02, 12);
  });

  test('the order of stations does not matter', () => {
    fc.assert(
      fc.property(withEnvelope, ([limits, envelope]) => {
        const one = worstMargins(loadingPolygon(limits), envelope);
        const reversed = {
          ...limits,
          stations: [...limits.stations].reverse(),
          tanks: [...limits.tanks].reverse(),
        };
        const other = worstMargins(loadingPolygon(reversed), envelope);
        expect(other.forward.margin).toBeCloseTo(one.forward.margin, 7);
        expect(other.aft.margin).toBeCloseTo(one.aft.margin, 7);
      }),
    );
  });

  test('a heavier tail: more forward margin, less aft margin', () => {
    fc.assert(
      fc.property(withEnvelope, ([limits, envelope]) => {
        const { weight, moment } = limits.empty;
        const tailHeavy = { ...limits, empty: { weight, moment: moment + 3 * weight } };
        const [one, other] = [
          worstMargins(loadingPolygon(limits), envelope),
          worstMargins(loadingPolygon(tailHeavy), envelope),
        ];
        expect(other.forward.margin).toBeGreaterThan(one.forward.margin);
        expect(other.aft.margin).toBeLessThan(one.aft.margin);
      }),
    );
  });
});
