/** Second opinion on conversions: unitmath, a general unit library, for every unit it knows. */
import fc from 'fast-check';
import unitmath from 'unitmath';
import { describe, expect, test } from 'vitest';
import { fromSi, toSi, unitsOf } from '../../src/units.ts';
import { between } from '../engineering/between.ts';
import { namedUnits } from './unitNames.ts';

const known = namedUnits.flatMap(({ unitmath: name, ...rest }) =>
  name === undefined ? [] : [{ ...rest, name }],
);
const temperatures = { '°C': 'degC', '°F': 'degF', K: 'K' } as const;

test.each(known)('$kind: 1 $unit', ({ kind, unit, name, si }) => {
  expect(toSi(kind, 1, unit) / unitmath(1, name).to(si).getValue()).toBeCloseTo(1, 12);
});

test('any number of any unit, there and back', () => {
  fc.assert(
    fc.property(fc.constantFrom(...known), between(-1e4, 1e4), ({ kind, unit, name, si }, value) => {
      const theirs = unitmath(value, name).to(si).getValue();
      expect(Math.abs(toSi(kind, value, unit) - theirs)).toBeLessThanOrEqual(1e-12 * Math.abs(theirs));
      expect(Math.abs(fromSi(kind, theirs, unit) - value)).toBeLessThanOrEqual(1e-12 * Math.abs(value));
    }),
  );
});

describe('temperatures', () => {
  test('are these', () => {
    expect(Object.keys(temperatures).sort()).toEqual([...unitsOf('temperature')].sort());
  });

  test.each(Object.entries(temperatures))('any %s', (unit, name) => {
    fc.assert(
      fc.property(between(-200, 2000), (value) => {
        const kelvin = unitmath(value, name).to('K').getValue();
        expect(toSi('temperature', value, unit)).toBeCloseTo(kelvin, 9);
        expect(fromSi('temperature', kelvin, unit)).toBeCloseTo(value, 9);
      }),
    );
  });
});

test('units it does not know are left out, and are these', () => {
  const unknown = namedUnits.filter(({ unitmath: name }) => name === undefined).map(({ unit }) => unit);
  expect(unknown).toEqual(['nmi', 'PS', 'kt', '°C', 'inH2O', 'inHg', '%', 'fraction', '']);
});
