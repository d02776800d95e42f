import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { densityRatio, soundSpeed, standardTemperature } from '../../src/engineering/air.ts';
import {
  calibratedFromTrue,
  equivalentFromTrue,
  trueFromCalibrated,
  trueFromEquivalent,
} from '../../src/engineering/airspeed.ts';
import { foot, knot } from './tradeUnits.ts';

describe('calibrated and true airspeed', () => {
  // The isentropic formulas written out in a separate program with printed values of p and T (derived)
  test.each([
    [150, 10_000, 174.053],
    [250, 25_000, 363.387],
  ])('%d kt calibrated at %d ft standard', (calibrated, feet, expected) => {
    expect(trueFromCalibrated(calibrated * knot, feet * foot) / knot).toBeCloseTo(expected, 2);
  });

  test('at standard sea level the three airspeeds are one', () => {
    expect(trueFromCalibrated(80, 0)).toBeCloseTo(80, 9);
    expect(calibratedFromTrue(80, 0)).toBeCloseTo(80, 9);
    expect(trueFromEquivalent(80, densityRatio(0))).toBeCloseTo(80, 9);
  });

  test('one undoes the other', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 130, noNaN: true }),
        fc.double({ min: -1000, max: 9000, noNaN: true }),
        fc.double({ min: -30, max: 30, noNaN: true }),
        (speed, altitude, rise) => {
          const temperature = standardTemperature(altitude) + rise;
          const trueAirspeed = trueFromCalibrated(speed, altitude, temperature);
          expect(calibratedFromTrue(trueAirspeed, altitude, temperature)).toBeCloseTo(speed, 8);
        },
      ),
    );
  });

  test('slow, calibrated is equivalent; at altitude it is a little more', () => {
    const sigma = densityRatio(3000);
    expect(trueFromCalibrated(1, 3000)).toBeCloseTo(trueFromEquivalent(1, sigma), 4);
    // 100 m/s calibrated at 3,000 m: the isentropic formulas in a separate program (derived)
    expect(equivalentFromTrue(trueFromCalibrated(100, 3000), sigma)).toBeCloseTo(99.537, 3);
  });

  test('warmer air, faster at the same calibrated airspeed', () => {
    const standard = standardTemperature(3000);
    const ratio = trueFromCalibrated(60, 3000, standard * 1.1) / trueFromCalibrated(60, 3000, standard);
    expect(ratio).toBeCloseTo(Math.sqrt(1.1), 12);
  });

  test('Mach 1 and beyond are refused', () => {
    expect(() => trueFromCalibrated(341, 0)).toThrow(/below Mach 1/);
    expect(() => calibratedFromTrue(341, 0)).toThrow(/below Mach 1/);
    // At Mach 1 itself the impact pressure ahead of the shock is no longer what the pitot tube feels
    expect(() => calibratedFromTrue(soundSpeed(250), 0, 250)).toThrow('below Mach 1, got Mach 1');
  });
});

test('at a quarter of sea-level density true is twice equivalent', () => {
  expect(trueFromEquivalent(50, 0.25)).toBe(100);
  expect(equivalentFromTrue(100, 0.25)).toBe(50);
});
