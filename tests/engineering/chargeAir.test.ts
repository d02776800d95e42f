import { expect, test } from 'vitest';
import {
  compressorOutletTemperature,
  intercooledTemperature,
  intercoolerHeat,
} from '../../src/engineering/chargeAir.ts';

test('compressor: 300 K, pressure ratio 1.6, efficiency 0.7', () => {
  // By hand: 1.6^(2/7) = e^(0.470004/3.5) = 1.14372; 300 (1 + 0.14372/0.7) = 361.6. Formula of the textbooks.
  expect(compressorOutletTemperature(300, 1.6, 0.7)).toBeCloseTo(361.6, 1);
  expect(compressorOutletTemperature(300, 1, 0.7)).toBe(300);
});

test('a pressure ratio of 2^3.5 doubles the temperature when nothing is lost (γ = 1.4)', () => {
  expect(compressorOutletTemperature(288.15, 2 ** 3.5, 1)).toBeCloseTo(576.3, 9);
});

test('intercooler: 361.6 K, air of 300 K, effectiveness 0.7 gives 318.48 K (definition)', () => {
  expect(intercooledTemperature(361.6, 300, 0.7)).toBeCloseTo(318.48, 9);
  // 0.2 kg/s × 1,005 J/kg·K × 43.12 K = 8,667 W, specific heat rounded
  expect(Math.abs(intercoolerHeat(0.2, 361.6, 318.48) / 8667 - 1)).toBeLessThan(1e-3);
});
