import { expect, test } from 'vitest';
import { simpson } from '../../src/engineering/simpson.ts';

/** The rule over a function from one end to the other. */
function integral(f: (x: number) => number, from: number, to: number, intervals: number): number {
  const step = (to - from) / intervals;
  return simpson(
    Array.from({ length: intervals + 1 }, (_, index) => f(from + index * step)),
    step,
  );
}

test.each([2, 4, 10])('a cubic is integrated exactly over %d intervals', (intervals) => {
  // x⁴ − x³ + x² − x is 60 at 3, 4 at −1
  expect(integral((x) => 4 * x ** 3 - 3 * x ** 2 + 2 * x - 1, -1, 3, intervals)).toBeCloseTo(56, 12);
});

// The error is (b − a) h⁴ f⁗(ξ)/180, f⁗ between 1 and e for eˣ from 0 to 1; source of the bound: textbooks, from memory
test.each([2, 4, 20])(
  'the integral of eˣ is off by no more, nor less, than the rule is, over %d intervals',
  (intervals) => {
    const error = integral(Math.exp, 0, 1, intervals) - (Math.E - 1);
    const unit = (1 / intervals) ** 4 / 180;
    expect(error).toBeGreaterThan(unit);
    expect(error).toBeLessThan(Math.E * unit);
  },
);

test('backwards it is as much below 0', () => {
  expect(integral((x) => x ** 2, 3, 0, 2)).toBeCloseTo(-9, 12);
});

test.each([0, 1, 2, 4])('%d values are refused', (count) => {
  expect(() =>
    simpson(
      Array.from({ length: count }, () => 1),
      1,
    ),
  ).toThrow(new RangeError(`values must be an odd number, at least 3, got ${count}`));
});
