import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { densityRatio, standardTemperature } from '../../src/engineering/air.ts';
import {
  type EnginePowerLaw,
  makersTable,
  naturallyAspirated,
  powerAvailable,
  turbocharged,
} from '../../src/engineering/enginePower.ts';
import { foot } from './tradeUnits.ts';

const aspirated: EnginePowerLaw = {
  altitudeLaw: naturallyAspirated,
  temperatureExponent: 0.5,
  controlled: false,
};
const turbo: EnginePowerLaw = {
  altitudeLaw: (altitude) => turbocharged(16_000 * foot)(altitude),
  temperatureExponent: 0.5,
  controlled: true,
};

describe('naturally aspirated', () => {
  // Gagg and Farrar, SAE 1934, s − (1 − s)/7.55 (formula read in a secondary source, numbers derived from it with the
  // standard density ratio); also the two other forms in print, 1.132 s − 0.132 and s − 0.117 over 0.883: 5e-4
  test.each([
    [0, 1],
    [2_000, 0.9352],
    [4_000, 0.8733],
    [5_000, 0.8433],
    [8_000, 0.7577],
    [10_000, 0.7038],
    [12_000, 0.6525],
    [15_000, 0.5801],
    [20_000, 0.4709],
    [25_000, 0.375],
  ])('standard air at %d ft: %d of sea-level power', (feet, ratio) => {
    const { value } = naturallyAspirated(feet * foot);
    const sigma = densityRatio(feet * foot);
    expect(Math.abs(value - ratio)).toBeLessThanOrEqual(5.1e-5);
    expect(Math.abs(value - (1.132 * sigma - 0.132))).toBeLessThan(5e-4);
    expect(Math.abs(value - (sigma - 0.117) / 0.883)).toBeLessThan(5e-4);
    expect(powerAvailable(aspirated, 134_000, feet * foot)).toEqual({
      power: 134_000 * value,
      extrapolated: false,
      limited: false,
    });
  });

  test('never below 0', () => {
    expect(naturallyAspirated(20_000).value).toBe(0); // σ = 0.0719, below 0.117
  });

  // By hand: 10 °C above standard at sea level, √(288.15/298.15) = 0.98309: 1.7 % less, "about 1 % per 6 °C"
  test('hot air costs power as the root of temperature, at the same pressure altitude', () => {
    expect(powerAvailable(aspirated, 100_000, 0, 298.15).power).toBeCloseTo(98_308.7, 0);
    const standard = powerAvailable(aspirated, 100_000, 3000).power;
    const hot = powerAvailable(aspirated, 100_000, 3000, standardTemperature(3000) * 1.21).power;
    expect(hot / standard).toBeCloseTo(1 / 1.1, 12);
  });

  test('cold air gives more than rated power unless a controller prevents it', () => {
    expect(powerAvailable(aspirated, 100_000, 0, 268.15).power).toBeGreaterThan(100_000);
    expect(powerAvailable({ ...aspirated, controlled: true }, 100_000, 0, 268.15)).toEqual({
      power: 100_000,
      extrapolated: false,
      limited: true,
    });
    expect(powerAvailable({ ...aspirated, controlled: true }, 100_000, 0).limited).toBe(false);
  });
});

describe('turbocharged', () => {
  test('rated power to the critical altitude, then falling from there', () => {
    expect(powerAvailable(turbo, 127_000, 0).power).toBe(127_000);
    expect(powerAvailable(turbo, 127_000, 16_000 * foot).power).toBe(127_000);
    // By the law alone, without the engine's controller: air denser than at the critical altitude gives no more
    expect(turbocharged(16_000 * foot)(0).value).toBe(1);
    // By hand: σ(20,000 ft)/σ(16,000 ft) = 0.53281/0.60896 = 0.87495 (ratios of the standard), GF = 0.85839
    expect(powerAvailable(turbo, 1, 20_000 * foot).power).toBeCloseTo(0.85839, 4);
    // A formula for all heights, unlike a maker's table
    expect(powerAvailable(turbo, 1, 20_000 * foot).extrapolated).toBe(false);
  });

  test('takeoff power and maximum continuous power obey the same law', () => {
    fc.assert(
      fc.property(fc.double({ min: -500, max: 12_000, noNaN: true }), (altitude) => {
        const takeoff = powerAvailable(turbo, 170, altitude, 290).power;
        expect(powerAvailable(turbo, 160, altitude, 290).power / takeoff).toBeCloseTo(160 / 170, 12);
      }),
    );
  });

  test('with no critical altitude it is a naturally aspirated engine', () => {
    expect(turbocharged(0)(4000).value).toBeCloseTo(naturallyAspirated(4000).value, 12);
  });

  test('never gains with altitude', () => {
    fc.assert(
      fc.property(fc.double({ min: -500, max: 15_000, noNaN: true }), (altitude) => {
        for (const law of [turbo, aspirated])
          expect(powerAvailable(law, 1e5, altitude + 100).power).toBeLessThanOrEqual(
            powerAvailable(law, 1e5, altitude).power,
          );
      }),
    );
  });
});

describe("the maker's table", () => {
  const law: EnginePowerLaw = {
    altitudeLaw: (altitude) =>
      makersTable(
        [
          { x: 6000, y: 60_000 },
          { x: 0, y: 100_000 },
          { x: 3000, y: 90_000 },
        ],
        100_000,
      )(altitude),
    temperatureExponent: 0.5,
    controlled: false,
  };

  test('replaces the altitude law, by straight lines', () => {
    expect(powerAvailable(law, 100_000, 1500).power).toBeCloseTo(95_000, 6);
    expect(powerAvailable(law, 80_000, 4500).power).toBeCloseTo(60_000, 6); // 0.75 of the other rating
  });

  test('is held and flagged beyond its ends', () => {
    expect(powerAvailable(law, 100_000, 7000).extrapolated).toBe(true);
    expect(powerAvailable(law, 100_000, 7000).power).toBeCloseTo(60_000, 6);
    expect(powerAvailable(law, 100_000, -100).extrapolated).toBe(true);
    expect(powerAvailable(law, 100_000, 6000).extrapolated).toBe(false);
  });

  test('nonsense in it is refused', () => {
    expect(() => makersTable([], 1)).toThrow(RangeError);
    expect(() => makersTable([{ x: 0, y: -1 }], 1)).toThrow('power must be at least 0 W, got -1');
    expect(() => makersTable([{ x: 0, y: 1 }], 0)).toThrow('rating must be above 0 W, got 0');
  });
});
