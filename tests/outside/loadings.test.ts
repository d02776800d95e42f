/**
 * Second opinions on every loading at once, through the custom functions, columns of cells in: a linear-programming
 * solver (Charnes and Cooper's form) for CG_EXTREME, and stepping through the loading polygon for CG_WORST_MARGIN.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { between } from '../engineering/between.ts';
import { extremeCgByLinearProgramme } from '../engineering/loadingLp.ts';
import { randomAircraft, withoutOtherLimits } from '../engineering/randomAircraft.ts';
import { fromFunction } from './publishedValue.ts';

/** Arm, least load, greatest load. */
type StationRow = readonly [number, number, number];
/** Weight, forward limit, aft limit. */
type EnvelopeRow = readonly [number, number, number];

interface Aircraft {
  readonly emptyWeight: number;
  readonly emptyCg: number;
  readonly stations: readonly StationRow[];
  readonly maximumWeight: number;
}

const aircraft = randomAircraft.map(withoutOtherLimits).map((limits) => ({
  limits,
  cells: {
    emptyWeight: limits.empty.weight,
    emptyCg: limits.empty.moment / limits.empty.weight,
    stations: [...limits.stations, ...limits.tanks].map(
      ({ arm, minimum, maximum }): StationRow => [arm, minimum, maximum],
    ),
    maximumWeight: limits.maximumWeight,
  } satisfies Aircraft,
}));

describe('CG_EXTREME against javascript-lp-solver', () => {
  test.each(['forward', 'aft'] as const)('most %s, 400 random aircraft', (side) => {
    fc.assert(
      fc.property(aircraft, ({ limits, cells }) => {
        const { emptyWeight, emptyCg, stations, maximumWeight } = cells;
        const found = (result: number) =>
          fromFunction('CG_EXTREME', [emptyWeight, emptyCg, stations, maximumWeight, side], result);
        expect(Math.abs(found(1) - extremeCgByLinearProgramme(limits, side))).toBeLessThan(1e-6);
        expect(found(0)).toBeLessThanOrEqual(maximumWeight * (1 + 1e-9));
      }),
      { numRuns: 400 },
    );
  });
});

/** Least and greatest moment at a weight: minimum loads, then the stations in order of arm until the weight is reached. */
function momentAt(
  { emptyWeight, emptyCg, stations }: Aircraft,
  weight: number,
  side: 'forward' | 'aft',
): number {
  const order = side === 'forward' ? 1 : -1;
  let moment = emptyWeight * emptyCg;
  let room = weight - emptyWeight;
  for (const [arm, least] of stations) {
    moment += least * arm;
    room -= least;
  }
  for (const [arm, least, greatest] of [...stations].sort((one, other) => order * (one[0] - other[0]))) {
    const load = Math.min(Math.max(room, 0), greatest - least);
    moment += load * arm;
    room -= load;
  }
  return moment;
}

function limitsAt(envelope: readonly EnvelopeRow[], weight: number): { forward: number; aft: number } {
  const above = envelope.findIndex((row) => row[0] >= weight);
  if (above <= 0) {
    const [, forward, aft] = envelope[above === 0 ? 0 : envelope.length - 1]!;
    return { forward, aft };
  }
  const [low, high] = [envelope[above - 1]!, envelope[above]!];
  const part = (weight - low[0]) / (high[0] - low[0]);
  return { forward: low[1] + part * (high[1] - low[1]), aft: low[2] + part * (high[2] - low[2]) };
}

const total = (stations: readonly StationRow[], column: 1 | 2) =>
  stations.reduce((sum, station) => sum + station[column], 0);

/** Smallest margin of 5,000 weights on both sides of the polygon, the corners of limits and polygon among them. */
function worstByStepping(plane: Aircraft, envelope: readonly EnvelopeRow[]): number {
  const lightest = plane.emptyWeight + total(plane.stations, 1);
  const heaviest = Math.min(plane.emptyWeight + total(plane.stations, 2), plane.maximumWeight);
  const weights = Array.from({ length: 5001 }, (_, step) => lightest + ((heaviest - lightest) * step) / 5000);
  for (const [weight] of envelope) if (weight > lightest && weight < heaviest) weights.push(weight);
  for (const order of [1, -1]) {
    let weight = lightest;
    for (const [, least, greatest] of [...plane.stations].sort((one, other) => order * (one[0] - other[0]))) {
      weight = Math.min(weight + greatest - least, heaviest);
      weights.push(weight);
    }
  }
  let worst = Number.POSITIVE_INFINITY;
  for (const weight of weights) {
    const { forward, aft } = limitsAt(envelope, weight);
    worst = Math.min(
      worst,
      momentAt(plane, weight, 'forward') / weight - forward,
      aft - momentAt(plane, weight, 'aft') / weight,
    );
  }
  return worst;
}

/** Limits that slope, two to five points, the last beyond the maximum weight. */
const envelopeFor = (plane: Aircraft): fc.Arbitrary<EnvelopeRow[]> =>
  fc
    .array(fc.tuple(between(0.05, 0.95), between(60, 110), between(5, 60)), { minLength: 1, maxLength: 4 })
    .map((points) => {
      const first = plane.emptyWeight * 0.9;
      const rows = points
        .map(
          ([part, forward, width]): EnvelopeRow => [
            first + part * (plane.maximumWeight - first),
            forward,
            forward + width,
          ],
        )
        .sort((one, other) => one[0] - other[0])
        .filter((row, index, all) => row[0] !== all[index - 1]?.[0]);
      const [, forward, aft] = rows[0]!;
      return [...rows, [plane.maximumWeight * 1.01, aft - (aft - forward) / 2, aft + 20]];
    });

const aircraftWithLimits = aircraft.chain(({ cells }) => fc.tuple(fc.constant(cells), envelopeFor(cells)));

describe('CG_WORST_MARGIN against stepping through the polygon', () => {
  test('sloping limits, 300 random aircraft', () => {
    fc.assert(
      fc.property(aircraftWithLimits, ([plane, envelope]) => {
        const { emptyWeight, emptyCg, stations, maximumWeight } = plane;
        const found = (result: number) =>
          fromFunction('CG_WORST_MARGIN', [emptyWeight, emptyCg, stations, maximumWeight, envelope], result);
        const stepped = worstByStepping(plane, envelope);
        expect(found(0)).toBeLessThanOrEqual(stepped + 1e-6);
        expect(found(0)).toBeGreaterThan(stepped - 1e-4); // a step of the weight misses a minimum by so little
        const { forward, aft } = limitsAt(envelope, found(1));
        expect(Math.min(found(2) - forward, aft - found(2))).toBeCloseTo(found(0), 6);
      }),
      { numRuns: 300 },
    );
  });

  test('no loading at random is nearer to a limit, 300 random aircraft', () => {
    const loads = fc.array(between(0, 1), { minLength: 9, maxLength: 9 });
    fc.assert(
      fc.property(
        aircraftWithLimits,
        fc.array(loads, { minLength: 20, maxLength: 20 }),
        ([plane, envelope], tries) => {
          const { emptyWeight, emptyCg, stations, maximumWeight } = plane;
          const worst = fromFunction('CG_WORST_MARGIN', [
            emptyWeight,
            emptyCg,
            stations,
            maximumWeight,
            envelope,
          ]);
          for (const parts of tries) {
            let [weight, moment] = [emptyWeight, emptyWeight * emptyCg];
            stations.forEach(([arm, least, greatest], index) => {
              const load = least + parts[index]! * (greatest - least);
              weight += load;
              moment += load * arm;
            });
            if (weight > maximumWeight) continue;
            const margin = fromFunction('CG_MARGIN', [weight, moment / weight, envelope]);
            expect(margin).toBeGreaterThanOrEqual(worst - 1e-6);
          }
        },
      ),
      { numRuns: 300 },
    );
  });
});
