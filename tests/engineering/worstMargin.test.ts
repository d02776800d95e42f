import { describe, expect, test } from 'vitest';
import { envelopeFrom } from '../../src/engineering/envelope.ts';
import { loadingPolygon } from '../../src/engineering/loadingPolygon.ts';
import { worstMargins } from '../../src/engineering/worstMargin.ts';
import { circularAircraft } from './circularAircraft.ts';
import { station } from './station.ts';

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

/** 1,000 at 100 and up to 1,000 at 200: CG = 200 − 10⁵/W. */
const oneHold = () =>
  loadingPolygon({
    empty: { weight: 1000, moment: 100_000 },
    stations: [station('hold', 200, 1000)],
    tanks: [],
    maximumWeight: 2000,
  });

describe('by hand', () => {
  test('AC 43.13-1B figures 10-10 and 10-11 (read): +2.69 forward, +0.57 aft, both satisfactory there', () => {
    const polygon = loadingPolygon(circularAircraft);
    const margins = worstMargins(polygon, envelopeFrom([{ weight: 2100, forward: 8.5, aft: 21.9 }]));
    expect(margins.forward.margin).toBeCloseTo(16_104 / 1439 - 8.5, 2);
    expect(margins.aft.margin).toBeCloseTo(21.9 - 43_428 / 2036, 2);
    expect(margins.aft.cause).toBe('rear passengers');
    expect(margins.forward.cause).toBe('oil');
    expect(margins.worst).toBe(margins.aft);
  });

  test('a sloping limit: the worst margin is inside an edge, not at the extreme CG', () => {
    // CG = 200 − 10⁵/W. Aft limit 110 + 0.05 W, from 160 to 210.
    // Margin 10⁵/W + 0.05 W − 90 is least at W = √(2 × 10⁶): 2 √5000 − 90; at both ends it is 60.
    const polygon = oneHold();
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
    // CG is 133.33 at 1,500, where the aft limit dips to 135 between 200 and 200
    const polygon = oneHold();
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

  test('a half-width weighs most on the lightest: 20 kg·m take 20 mm at 1,000 kg and 10 mm at 2,000', () => {
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

  test('loadings beyond the envelope are refused, not extrapolated', () => {
    const polygon = oneHold();
    expect(() => worstMargins(polygon, envelopeFrom([{ weight: 1900, forward: 50, aft: 300 }]))).toThrow(
      /at most 1900 \(end of the envelope\), got 2000/,
    );
  });
});
