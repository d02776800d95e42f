/** The worst margin of random aircraft, against brute force. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  cgMargins,
  type Envelope,
  envelopeFrom,
  limitsAt,
  type Side,
} from '../../src/engineering/envelope.ts';
import { loadedWith } from '../../src/engineering/loading.ts';
import { type LoadingLimits, loadingPolygon } from '../../src/engineering/loadingPolygon.ts';
import { worstMargins } from '../../src/engineering/worstMargin.ts';
import { between } from './between.ts';
import { randomAircraft, withoutOtherLimits } from './randomAircraft.ts';

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
