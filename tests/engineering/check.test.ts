import { describe, expect, test } from 'vitest';
import { requireAbove, requireAtLeast, requireBetween, requireFinite } from '../../src/engineering/check.ts';

describe('refusing arguments', () => {
  test('the message names argument, limit, unit and value', () => {
    expect(() => requireAbove('mass', -3, 0, 'kg')).toThrow(
      new RangeError('mass must be above 0 kg, got -3'),
    );
    expect(() => requireAtLeast('trueAirspeed', -1, 0, 'm/s')).toThrow(
      new RangeError('trueAirspeed must be at least 0 m/s, got -1'),
    );
    expect(() => requireBetween('efficiency', 1.2, 0, 1, '')).toThrow(
      new RangeError('efficiency must be between 0 and 1, got 1.2'),
    );
  });

  test('a limit is outside for "above" and inside for the others', () => {
    expect(() => requireAbove('mass', 0, 0, 'kg')).toThrow(RangeError);
    expect(() => requireAtLeast('mass', 0, 0, 'kg')).not.toThrow();
    expect(() => requireBetween('fraction', 0, 0, 1, '')).not.toThrow();
    expect(() => requireBetween('fraction', 1, 0, 1, '')).not.toThrow();
    expect(() => requireAbove('mass', 5e-324, 0, 'kg')).not.toThrow();
  });

  test.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])(
    '%d is refused by every check',
    (value) => {
      const refusal = new RangeError(`mass must be a finite number, got ${value}`);
      expect(() => requireFinite('mass', value)).toThrow(refusal);
      expect(() => requireAbove('mass', value, 0, 'kg')).toThrow(refusal);
      expect(() => requireAtLeast('mass', value, 0, 'kg')).toThrow(refusal);
      expect(() => requireBetween('mass', value, 0, 1, 'kg')).toThrow(refusal);
    },
  );
});
