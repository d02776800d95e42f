import fc from 'fast-check';
import { expect, test } from 'vitest';
import { hotDayTemperature } from '../../src/engineering/air.ts';
import { ambientAtLimit, ambientFactor, hotDayCorrected } from '../../src/engineering/hotDay.ts';
import { fromSi, toSi } from '../../src/units.ts';

const kelvin = (fahrenheit: number) => toSi('temperature', fahrenheit, '°F');

// 14 CFR 23.1043(b), (c) before amendment 64 (read): 100 °F at sea level less 3.6 °F per 1,000 ft, difference added in full
test('oil of 205 °F in air of 59 °F at sea level is 246 °F on the hot day', () => {
  const corrected = hotDayCorrected(kelvin(205), kelvin(59), hotDayTemperature(0));
  expect(fromSi('temperature', corrected, '°F')).toBeCloseTo(246, 9);
});

test('at 5,000 ft the hot day is 82 °F', () => {
  const corrected = hotDayCorrected(kelvin(205), kelvin(41), hotDayTemperature(1524));
  expect(fromSi('temperature', corrected, '°F')).toBeCloseTo(246, 9);
});

// 14 CFR 25.1043(d) (read), the twin of 23.1043(d): barrels by 0.7 of the difference
test('a barrel of 300 °F in air of 50 °F at sea level is 335 °F on the hot day', () => {
  const corrected = hotDayCorrected(
    kelvin(300),
    kelvin(50),
    hotDayTemperature(0),
    ambientFactor.cylinderBarrel,
  );
  expect(fromSi('temperature', corrected, '°F')).toBeCloseTo(335, 9);
});

test('the ambient at the limit is where the corrected temperature is the limit', () => {
  const temperature = fc.double({ min: 250, max: 500, noNaN: true });
  fc.assert(
    fc.property(temperature, temperature, temperature, fc.constantFrom(1, 0.7), (t, air, limit, factor) => {
      fc.pre(air + (limit - t) / factor > 0);
      const ambient = ambientAtLimit(t, air, limit, factor);
      expect(hotDayCorrected(t, air, ambient, factor)).toBeCloseTo(limit, 9);
    }),
  );
});
