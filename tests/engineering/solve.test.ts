import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { findRoot, maximise } from '../../src/engineering/solve.ts';

describe('root', () => {
  test('finds √2 from either side', () => {
    expect(Math.abs(findRoot((x) => x * x - 2, 0, 2, 1e-12) - Math.SQRT2)).toBeLessThanOrEqual(1e-12);
    expect(Math.abs(findRoot((x) => 2 - x * x, 0, 2, 1e-9) - Math.SQRT2)).toBeLessThanOrEqual(1e-9);
  });

  test('an end that is a root is the root', () => {
    expect(findRoot((x) => x, 0, 5, 0.1)).toBe(0);
    expect(findRoot((x) => x - 5, 0, 5, 0.1)).toBe(5);
  });

  test('no change of sign is refused', () => {
    expect(() => findRoot((x) => x + 1, 0, 5, 0.1)).toThrow(
      new RangeError('the function must change its sign between 0 and 5, got 1 and 6'),
    );
    expect(() => findRoot((x) => x - 10, 0, 5, 0.1)).toThrow('between 0 and 5, got -10 and -5');
  });

  test('a step and an infinite end are no obstacle', () => {
    expect(Math.abs(findRoot((x) => (x < 0.3 ? -1 : 1), 0, 1, 1e-6) - 0.3)).toBeLessThanOrEqual(1e-6);
    expect(Math.abs(findRoot((x) => 1 - 1 / x, 0, 4, 1e-9) - 1)).toBeLessThanOrEqual(1e-9);
  });

  test('with a tolerance finer than doubles it ends at the doubles beside the root', () => {
    for (const scale of [1e-300, 1, 1e6, 1e300]) {
      let calls = 0;
      const root = findRoot(
        (x) => {
          calls++;
          return x < scale / 3 ? -1 : 1e9;
        },
        0,
        2 * scale,
        Number.MIN_VALUE,
      );
      expect(Math.abs(root / (scale / 3) - 1)).toBeLessThan(12 * Number.EPSILON); // 2 ε of the upper end, 6 times the root
      expect(calls).toBeLessThanOrEqual(55); // 2⁵² such pieces, one step more, both ends
    }
  });

  test('is within its tolerance of the root of any line', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -99, max: 99, noNaN: true }),
        fc.double({ min: 0.1, max: 9, noNaN: true }),
        (r, k) => {
          expect(Math.abs(findRoot((x) => k * (x - r), -100, 100, 1e-6) - r)).toBeLessThanOrEqual(1e-6);
        },
      ),
    );
  });

  test('one step more than bisection at the worst, a third of its steps for a smooth function', () => {
    const stepsFor = (f: (x: number) => number) => {
      let calls = 0;
      findRoot(
        (x) => {
          calls++;
          return f(x);
        },
        0,
        1,
        2 ** -31,
      );
      return calls - 2; // both ends
    };
    const bisections = 30; // from 1 to 2⁻³⁰
    for (const f of [
      (x: number) => (x < 0.7 ? -1 : 1e9),
      (x: number) => x ** 9 - 0.01,
      (x: number) => Math.cbrt(x - 0.3),
    ])
      expect(stepsFor(f)).toBeLessThanOrEqual(bisections + 1);
    expect(stepsFor((x) => Math.cos(x) - x)).toBeLessThanOrEqual(bisections / 3);
  });

  test('NaN, an empty interval and no tolerance are refused', () => {
    expect(() => findRoot(() => Number.NaN, 0, 1, 0.1)).toThrow(
      'the function must give a number at 0, got NaN',
    );
    expect(() => findRoot((x) => x, 1, 1, 0.1)).toThrow('high must be above 1, got 1');
    expect(() => findRoot((x) => x, Number.NaN, 1, 0.1)).toThrow('low must be a finite number, got NaN');
    expect(() => findRoot((x) => x, 0, 1, 0)).toThrow('tolerance must be above 0, got 0');
  });
});

describe('maximum', () => {
  test('of a parabola, and of x e^−x, which is 1/e at 1', () => {
    const parabola = maximise((x) => 3 - (x - 2) ** 2, 0, 7, 1e-6);
    expect(parabola.atEnd).toBe(false);
    expect(Math.abs(parabola.x - 2)).toBeLessThanOrEqual(1e-6);
    expect(parabola.value).toBeCloseTo(3, 9);
    const hump = maximise((x) => x * Math.exp(-x), 0, 10, 1e-5);
    expect(hump.x).toBeCloseTo(1, 4);
    expect(hump.value).toBeCloseTo(1 / Math.E, 9);
  });

  test('at an end is found and said', () => {
    const rising = maximise((x) => x, 0, 7, 1e-3);
    expect(rising.atEnd).toBe(true);
    expect(Math.abs(rising.x - 7)).toBeLessThanOrEqual(1e-3);
    expect(maximise((x) => -x, 0, 7, 1e-3).atEnd).toBe(true);
  });

  test('in a corner, on a step and on a plain it ends, in the corner within its tolerance', () => {
    const corner = maximise((x) => (x < 3 ? x : 3 - 0.01 * (x - 3)), 0, 10, 1e-4);
    expect(Math.abs(corner.x - 3)).toBeLessThanOrEqual(1e-4);
    expect(maximise((x) => (x < 3 ? 0 : 1), 0, 10, 1e-4).value).toBe(1);
    expect(maximise(() => 1, 0, 10, 1e-4).value).toBe(1);
  });

  test('with a tolerance finer than doubles it ends, as near as a parabola can be told from a line', () => {
    const top = 1e6 / 3;
    const found = maximise((x) => 1 - (x / top - 1) ** 2, 0, 1e6, Number.MIN_VALUE);
    expect(Math.abs(found.x / top - 1)).toBeLessThan(4 * Math.sqrt(Number.EPSILON));
  });

  // A golden section of an interval of 75 to 0.001 takes ln(75/0.001)/ln 1.618 = 23 values, and one more to begin with
  test('a smooth hump takes half as many values as a golden section, none more', () => {
    const valuesFor = (f: (x: number) => number) => {
      let values = 0;
      maximise(
        (x) => {
          values++;
          return f(x);
        },
        25,
        100,
        1e-3,
      );
      return values;
    };
    for (const smooth of [(x: number) => x * Math.exp(-x / 40), (x: number) => Math.log(x - 24.9) - x / 30])
      expect(valuesFor(smooth)).toBeLessThanOrEqual(12);
    for (const awkward of [
      (x: number) => -((x - 40) ** 4),
      (x: number) => -Math.sqrt(Math.abs(x - 61)),
      (x: number) => (x < 33 ? 1000 * (x - 33) : 33 - x),
      (x: number) => (x < 77 ? 0 : 1),
      (x: number) => x,
    ])
      expect(valuesFor(awkward)).toBeLessThanOrEqual(24);
  });

  test('is within its tolerance of the top of any parabola and of any corner', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 99, noNaN: true }),
        fc.double({ min: 0.1, max: 10, noNaN: true }),
        (top, slope) => {
          expect(Math.abs(maximise((x) => -((x - top) ** 2), 0, 100, 1e-4).x - top)).toBeLessThanOrEqual(
            1e-4,
          );
          const roof = (x: number) => (x < top ? slope * (x - top) : top - x);
          expect(Math.abs(maximise(roof, 0, 100, 1e-4).x - top)).toBeLessThanOrEqual(1e-4);
        },
      ),
    );
  });

  test('NaN, an empty interval and no tolerance are refused', () => {
    expect(() => maximise(() => Number.NaN, 0, 1, 0.1)).toThrow('the function must give a number at');
    expect(() => maximise((x) => x, 1, 1, 0.1)).toThrow('high must be above 1, got 1');
    expect(() => maximise((x) => x, 0, 1, 0)).toThrow('tolerance must be above 0, got 0');
  });
});
