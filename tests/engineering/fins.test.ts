import fc from 'fast-check';
import { expect, test } from 'vitest';
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

// 14 CFR 23.1043(c) before amendment 64 (read); barrels, and the powers of NACA TN 584, stand in tests/outside
test('a head follows the outside air one for one', () => {
  const coefficient = finCoefficient(headFinLaw, kelvin(400), 1e5, 1000, kelvin(60));
  const at = (air: number) => finTemperature(headFinLaw, coefficient, 1e5, 1000, kelvin(air));
  expect(at(100) - at(60)).toBeCloseTo(40 / 1.8, 9);
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
