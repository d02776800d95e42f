import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cgMargins, envelopeFrom, heaviest, limitsAt } from '../../src/engineering/envelope.ts';
import { between } from './between.ts';

const sloping = envelopeFrom([
  { weight: 2000, forward: 97, aft: 110 },
  { weight: 2520, forward: 103, aft: 108 },
]);

describe('limits, by hand', () => {
  test('at the points, between them, and below the first, where its limits hold', () => {
    expect(limitsAt(sloping, 2000)).toMatchObject({ forward: 97, aft: 110 });
    expect(limitsAt(sloping, 2520)).toMatchObject({ forward: 103, aft: 108 });
    expect(limitsAt(sloping, 2260)).toMatchObject({ forward: 100, aft: 109 });
    expect(limitsAt(sloping, 1400)).toMatchObject({ forward: 97, aft: 110 });
  });

  test('rows in any order', () => {
    const reversed = envelopeFrom([...sloping.points].reverse());
    expect(limitsAt(reversed, 2260)).toMatchObject({ forward: 100, aft: 109 });
    expect(heaviest(reversed)).toBe(2520);
  });

  test('beyond the last point refused, but for the rounding of a conversion', () => {
    expect(() => limitsAt(sloping, 2520.01)).toThrow(/at most 2520 \(end of the envelope\), got 2520.01/);
    expect(limitsAt(sloping, 2520 * (1 + 1e-12))).toMatchObject({ forward: 103, aft: 108 });
  });

  test('one row: the same limits at every weight up to it', () => {
    const box = envelopeFrom([{ weight: 600, forward: 0.85, aft: 1.015 }]);
    expect(limitsAt(box, 300)).toMatchObject({ forward: 0.85, aft: 1.015 });
    expect(() => limitsAt(box, 601)).toThrow(RangeError);
  });
});

describe('margins', () => {
  test('by hand, inside and outside', () => {
    expect(cgMargins(sloping, 2260, 101)).toEqual({ forward: 1, aft: 8, nearest: 1, side: 'forward' });
    expect(cgMargins(sloping, 2260, 112)).toEqual({ forward: 12, aft: -3, nearest: -3, side: 'aft' });
    expect(cgMargins(sloping, 2000, 95)).toEqual({ forward: -2, aft: 15, nearest: -2, side: 'forward' });
  });

  test('forward and aft margin together are the width of the envelope; aft moves the CG out of the one into the other', () => {
    fc.assert(
      fc.property(between(500, 2520), between(80, 130), between(0.01, 10), (weight, cg, distance) => {
        const { forward, aft } = limitsAt(sloping, weight);
        const [here, further] = [cgMargins(sloping, weight, cg), cgMargins(sloping, weight, cg + distance)];
        expect(here.forward + here.aft).toBeCloseTo(aft - forward, 9);
        expect(further.aft).toBeLessThan(here.aft);
        expect(further.forward).toBeGreaterThan(here.forward);
        expect(here.nearest).toBe(here.side === 'aft' ? here.aft : here.forward);
      }),
    );
  });
});

test.each([
  ['no row', [], /at least 1 row/],
  ['weight 0', [{ weight: 0, forward: 1, aft: 2 }], /weight in the envelope must be above 0/],
  ['limits crossed', [{ weight: 1, forward: 2, aft: 1 }], /aft limit at 1 must be above 2/],
  ['limits equal', [{ weight: 1, forward: 2, aft: 2 }], /aft limit at 1/],
  ['no number', [{ weight: 1, forward: Number.NaN, aft: 2 }], /forward limit/],
  [
    'a weight twice',
    [
      { weight: 1, forward: 1, aft: 2 },
      { weight: 1, forward: 1.5, aft: 2 },
    ],
    /must stand once, got 1 twice/,
  ],
])('refused: %s', (_, points, message) => {
  expect(() => envelopeFrom(points)).toThrow(message);
});
