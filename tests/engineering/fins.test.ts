import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  barrelFinLaw,
  effectiveGasTemperature,
  type FinLaw,
  finCoefficient,
  finTemperature,
  headFinLaw,
} from '../../src/engineering/fins.ts';
import { toSi } from '../../src/units.ts';

const kelvin = (fahrenheit: number) => toSi('temperature', fahrenheit, '°F');

test('worked by hand', () => {
  const law: FinLaw = {
    powerExponent: 0.5,
    pressureExponent: 0.5,
    gasTemperature: 900,
    gasReferenceTemperature: 300,
    gasTemperatureSlope: 0,
  };
  // y = 0.25 √10,000 / √2,500 = 0.5; (300 + 0.5 × 900)/1.5 = 500
  expect(finTemperature(law, 0.25, 10_000, 2_500, 300)).toBeCloseTo(500, 9);
  expect(finCoefficient(law, 500, 10_000, 2_500, 300)).toBeCloseTo(0.25, 12);
  // With a slope of 1, T_g is 880 at 280 K: (280 + 0.5 × 880)/1.5 = 480
  expect(finTemperature({ ...law, gasTemperatureSlope: 1 }, 0.25, 10_000, 2_500, 280)).toBeCloseTo(480, 9);
});

describe('NACA TN 584 (1936), summary read: how T − T_a follows power and mass flow, Δp as the 1.8 power of the flow', () => {
  const air = kelvin(70);
  const slopes = (law: FinLaw, temperature: number) => {
    const coefficient = finCoefficient(law, kelvin(temperature), 1e5, 1000, air);
    const rise = (power: number, pressure: number) =>
      finTemperature(law, coefficient, power, pressure, air) - air;
    return {
      power: Math.log(rise(1.01e5, 1000) / rise(0.99e5, 1000)) / Math.log(1.01 / 0.99),
      flow: Math.log(rise(1e5, 1000 * 1.01 ** 1.8) / rise(1e5, 1000 * 0.99 ** 1.8)) / Math.log(1.01 / 0.99),
    };
  };
  // ± 0.01, the last digit printed; at usual temperatures, which the summary does not give
  test('head of 400 °F: 0.38 and −0.39', () => {
    const { power, flow } = slopes(headFinLaw, 400);
    expect(Math.abs(power - 0.38)).toBeLessThan(0.01);
    expect(Math.abs(flow + 0.39)).toBeLessThan(0.01);
  });
  test('barrel of 300 °F: 0.38 and −0.35', () => {
    const { power, flow } = slopes(barrelFinLaw, 300);
    expect(Math.abs(power - 0.38)).toBeLessThan(0.01);
    expect(Math.abs(flow + 0.35)).toBeLessThan(0.01);
  });
});

describe('14 CFR 23.1043(c), (d) before amendment 64: how a temperature follows the outside air', () => {
  const rise = (law: FinLaw, temperature: number) => {
    const coefficient = finCoefficient(law, kelvin(temperature), 1e5, 1000, kelvin(60));
    const at = (air: number) => finTemperature(law, coefficient, 1e5, 1000, kelvin(air));
    return (at(100) - at(60)) / toSi('temperatureDifference', 40, '°F');
  };
  test('heads one for one', () => expect(rise(headFinLaw, 400)).toBeCloseTo(1, 9));
  // The slope was chosen for it; 260 to 340 °F give 0.74 to 0.63
  test('a barrel of 300 °F by 0.7', () => expect(Math.abs(rise(barrelFinLaw, 300) - 0.7)).toBeLessThan(0.02));
});

test('hotter with power, cooler with pressure, always between air and gas; K reproduces its point', () => {
  const watts = fc.double({ min: 2e4, max: 3e5, noNaN: true });
  const pascals = fc.double({ min: 1, max: 5e3, noNaN: true });
  const headTemperature = fc.double({ min: 380, max: 560, noNaN: true });
  fc.assert(
    fc.property(watts, pascals, headTemperature, (power, pressure, temperature) => {
      const k = finCoefficient(headFinLaw, temperature, power, pressure, 300);
      expect(finTemperature(headFinLaw, k, power, pressure, 300)).toBeCloseTo(temperature, 8);
      expect(finTemperature(headFinLaw, k, power * 1.1, pressure, 300)).toBeGreaterThan(temperature);
      expect(finTemperature(headFinLaw, k, power, pressure * 1.1, 300)).toBeLessThan(temperature);
      expect(finTemperature(headFinLaw, k, power * 1e6, pressure, 300)).toBeLessThan(kelvin(1160));
      expect(finTemperature(headFinLaw, k, 0, pressure, 300)).toBe(300);
    }),
  );
});

test('gas at 80 °F of outside air: 1,150 °F at the head, 600 °F at the barrel (NACA, from memory)', () => {
  expect(effectiveGasTemperature(headFinLaw, kelvin(80))).toBeCloseTo(kelvin(1150), 9);
  expect(effectiveGasTemperature(barrelFinLaw, kelvin(80))).toBeCloseTo(kelvin(600), 9);
});

test('refused: a head as cold as the air or as hot as the gas, no pressure', () => {
  expect(() => finCoefficient(headFinLaw, 300, 1e5, 1000, 300)).toThrow(RangeError);
  expect(() => finCoefficient(headFinLaw, 900, 1e5, 1000, 300)).toThrow(RangeError);
  const gas = effectiveGasTemperature(headFinLaw, 300);
  expect(() => finCoefficient(headFinLaw, gas, 1e5, 1000, 300)).toThrow(/must be below that of the gas/);
  expect(() => finTemperature(headFinLaw, 1, 1e5, 0, 300)).toThrow(RangeError);
});
