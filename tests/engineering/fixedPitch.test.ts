import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fixedPitchSpeedFraction } from '../../src/engineering/fixedPitch.ts';

const speeds = {
  staticFraction: 0.82,
  bestClimbFraction: 0.9,
  levelFraction: 1,
  bestClimbSpeed: 40,
  levelSpeed: 60,
};

describe('shaft speed with a fixed-pitch propeller', () => {
  test.each([
    [0, 0.82],
    [20, 0.86],
    [40, 0.9],
    [50, 0.95],
    [60, 1],
  ])('by hand at %d m/s: %d', (airspeed, fraction) => {
    const result = fixedPitchSpeedFraction(speeds, airspeed);
    expect(result.value).toBeCloseTo(fraction, 12);
    expect(result.limited).toBe(false);
  });

  test('is capped at rated speed in a dive, and says so', () => {
    expect(fixedPitchSpeedFraction(speeds, 60.1)).toEqual({ value: 1, limited: true });
  });

  test('a fine-pitch propeller reaches the cap before level speed', () => {
    const fine = { ...speeds, bestClimbFraction: 0.96, levelFraction: 1.04 };
    expect(fixedPitchSpeedFraction(fine, 49.9).limited).toBe(false);
    expect(fixedPitchSpeedFraction(fine, 50.1)).toEqual({ value: 1, limited: true });
  });

  test('a coarse-pitch propeller stays below rated speed and goes on gaining', () => {
    const coarse = { ...speeds, levelFraction: 0.96 };
    expect(fixedPitchSpeedFraction(coarse, 70).value).toBeCloseTo(0.99, 12);
  });

  test('faster never turns it slower', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 99, noNaN: true }), (airspeed) => {
        expect(fixedPitchSpeedFraction(speeds, airspeed + 0.5).value).toBeGreaterThanOrEqual(
          fixedPitchSpeedFraction(speeds, airspeed).value,
        );
      }),
    );
  });
});
