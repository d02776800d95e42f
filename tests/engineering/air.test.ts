import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  airDensity,
  airSpecificHeat,
  densityAltitude,
  densityRatio,
  gasConstantAir,
  hotDayTemperature,
  pressureAltitude,
  seaLevelTemperature,
  soundSpeed,
  standardPressure,
  standardTemperature,
  viscosity,
} from '../../src/engineering/air.ts';
import { foot } from './tradeUnits.ts';

const altitudes = fc.double({ min: -5000, max: 20_000, noNaN: true });

/** Within half a unit of the last printed digit, a little more for rounding of the printed digit itself. */
const expectPrinted = (value: number, printed: number, digit: number) =>
  expect(Math.abs(value - printed)).toBeLessThanOrEqual(0.51 * digit);

describe('US Standard Atmosphere 1976 / ICAO Doc 7488, geopotential', () => {
  // Derived from the standard's defining constants by a separate program; agrees with two printed tables.
  test.each([
    [0, 288.15, 101_325, 1.225, 1, 340.29, 1.7894e-5],
    [2_000, 284.188, 94_212.9, 1.1549, 0.94277, 337.95, 1.7702e-5],
    [4_000, 280.225, 87_510.5, 1.08791, 0.88809, 335.58, 1.7509e-5],
    [5_000, 278.244, 84_307.3, 1.05555, 0.86167, 334.39, 1.7412e-5],
    [8_000, 272.3, 75_262.4, 0.96287, 0.78602, 330.8, 1.7119e-5],
    [10_000, 268.338, 69_681.7, 0.90464, 0.73848, 328.39, 1.6922e-5],
    [12_000, 264.376, 64_440.9, 0.84914, 0.69317, 325.95, 1.6723e-5],
    [15_000, 258.432, 57_182, 0.77082, 0.62924, 322.27, 1.6423e-5],
    [20_000, 248.526, 46_563.3, 0.65269, 0.53281, 316.03, 1.5915e-5],
    [25_000, 238.62, 37_600.9, 0.54895, 0.44812, 309.67, 1.5398e-5],
  ])('%d ft', (feet, temperature, pressure, density, sigma, sound, mu) => {
    const h = feet * foot;
    expectPrinted(standardTemperature(h), temperature, 1e-3);
    expectPrinted(standardPressure(h), pressure, 0.1);
    expectPrinted(airDensity(standardPressure(h), standardTemperature(h)), density, 1e-5);
    expectPrinted(densityRatio(h), sigma, 1e-5);
    expectPrinted(soundSpeed(standardTemperature(h)), sound, 0.01);
    expectPrinted(viscosity(standardTemperature(h)), mu, 1e-9);
  });

  // US Standard Atmosphere 1976, table I (from memory): tropopause 22,632 Pa, 20 km 5,474.9 Pa, both 216.65 K
  test.each([
    [11_000, 22_632.1, 0.1],
    [20_000, 5_474.89, 0.05],
  ])('isothermal layer at %d m', (h, pressure, tolerance) => {
    expect(standardTemperature(h)).toBeCloseTo(216.65, 10);
    expect(Math.abs(standardPressure(h) - pressure)).toBeLessThan(tolerance);
  });

  test('the gas constant of the standard, and 3.5 times it at constant pressure', () => {
    expect(gasConstantAir).toBeCloseTo(287.05307, 5); // by hand: 8,314.32/28.9644; ICAO has 287.05287
    expect(airSpecificHeat).toBeCloseTo(1004.6858, 4); // by hand: γ/(γ − 1) is 3.5
  });

  test('the layers join without a step', () => {
    expect(standardPressure(11_000 + 1e-6)).toBeCloseTo(standardPressure(11_000 - 1e-6), 4);
  });

  test('pressure altitude undoes pressure, and pressure falls with altitude', () => {
    fc.assert(
      fc.property(altitudes, (h) => {
        expect(Math.abs(pressureAltitude(standardPressure(h)) - h)).toBeLessThan(1e-6);
        if (h < 19_999) expect(standardPressure(h + 1)).toBeLessThan(standardPressure(h));
      }),
    );
  });
});

describe('density altitude', () => {
  test('of standard air is its pressure altitude', () => {
    fc.assert(
      fc.property(altitudes, (h) => {
        expect(Math.abs(densityAltitude(h, standardTemperature(h)) - h)).toBeLessThan(1e-5);
      }),
    );
  });

  test('is where standard air has the same density', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1000, max: 12_000, noNaN: true }),
        fc.integer({ min: -40, max: 40 }),
        (h, rise) => {
          const temperature = standardTemperature(h) + rise;
          expect(densityRatio(densityAltitude(h, temperature))).toBeCloseTo(densityRatio(h, temperature), 9);
        },
      ),
    );
  });

  // By hand with vapour pressure from the IAPWS steam tables (from memory): 3,169.9 Pa at 25 °C, 2,339.3 Pa at 20 °C.
  // 0.4 % of the vapour pressure, the fit's error, is 0.5 m.
  test.each([
    [0, 303.15, 298.15, 647.74],
    [1_524, 308.15, 293.15, 2_642.03],
  ])('of moist air at %d m', (h, temperature, dewPoint, expected) => {
    expect(Math.abs(densityAltitude(h, temperature, dewPoint) - expected)).toBeLessThan(0.5);
  });

  test('moisture raises it, a very dry dew point does not', () => {
    expect(densityAltitude(0, 303.15, 293.15)).toBeGreaterThan(densityAltitude(0, 303.15));
    expect(densityAltitude(0, 303.15, 210)).toBeCloseTo(densityAltitude(0, 303.15), 0);
  });

  test('a dew point above the temperature, and boiling, are refused', () => {
    expect(() => densityAltitude(0, 290, 291)).toThrow('dewPoint must be between 200 and 290 K, got 291');
    // The vapour formula is fitted to 50 °C
    expect(densityAltitude(0, 325, 323.15)).toBeGreaterThan(densityAltitude(0, 325));
    expect(() => densityAltitude(0, 325, 323.16)).toThrow('dewPoint must be between 200 and 323.15 K');
    expect(() => densityAltitude(20_000, 320, 315)).toThrow(/boiling point/);
    expect(() => densityAltitude(20_000, 280)).toThrow(/density altitude must be between/);
  });
});

describe('hot day, 14 CFR 23.1043 before amendment 64 (read)', () => {
  test.each([
    [0, 100],
    [5_000, 82],
    [8_000, 71.2],
    [10_000, 64],
    [60_000, -69.7],
  ])('%d ft is %d °F', (feet, fahrenheit) => {
    expect(hotDayTemperature(feet * foot)).toBeCloseTo((fahrenheit + 459.67) / 1.8, 9);
  });

  test('stays about 23 °C above standard: its lapse is 2 K in 304.8 m against 6.5 K in 1,000 m', () => {
    expect(hotDayTemperature(0) - seaLevelTemperature).toBeCloseTo(22.7778, 4); // 100 °F = 37.7778 °C
    const difference = 22.7778 - 3000 * (2 / 304.8 - 0.0065);
    expect(hotDayTemperature(3000) - standardTemperature(3000)).toBeCloseTo(difference, 4);
  });
});
