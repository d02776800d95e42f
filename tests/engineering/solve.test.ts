import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { findRoot, maximise } from '../../src/engineering/solve.ts';

describe('root', () => {
  test('finds √2 from either side', () => {
    const rising = findRoot((x) => x * x - 2, 0, 2, 1e-12);
    expect(rising.converged).toBe(true);
    expect(Math.abs(rising.x - Math.SQRT2)).toBeLessThanOrEqual(1e-12);
    expect(Math.abs(findRoot((x) => 2 - x * x, 0, 2, 1e-9).x - Math.SQRT2)).toBeLessThanOrEqual(1e-9);
  });

  test('an end that is a root is the root', () => {
    expect(findRoot((x) => x, 0, 5, 0.1)).toEqual({ x: 0, converged: true });
    expect(findRoot((x) => x - 5, 0, 5, 0.1)).toEqual({ x: 5, converged: true });
  });

  test('no change of sign is said, with the end nearer to zero', () => {
    expect(findRoot((x) => x + 1, 0, 5, 0.1)).toEqual({ x: 0, converged: false });
    expect(findRoot((x) => x - 10, 0, 5, 0.1)).toEqual({ x: 5, converged: false });
  });

  test('a step and an infinite end are no obstacle', () => {
    expect(Math.abs(findRoot((x) => (x < 0.3 ? -1 : 1), 0, 1, 1e-6).x - 0.3)).toBeLessThanOrEqual(1e-6);
    expect(Math.abs(findRoot((x) => 1 - 1 / x, 0, 4, 1e-9).x - 1)).toBeLessThanOrEqual(1e-9);
  });

  test('a tolerance finer than the numbers ends, and says so', () => {
    let calls = 0;
    const root = findRoot(
      (x) => {
        calls++;
        return x - 1e6 - 1 / 3;
      },
      0,
      2e6,
      1e-30,
    );
    expect(root.converged).toBe(false);
    expect(root.x).toBeCloseTo(1e6 + 1 / 3, 8);
    expect(calls).toBeLessThanOrEqual(202);
  });

  test('is within its tolerance of the root of any line', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -99, max: 99, noNaN: true }),
        fc.double({ min: 0.1, max: 9, noNaN: true }),
        (r, k) => {
          const root = findRoot((x) => k * (x - r), -100, 100, 1e-6);
          expect(root.converged).toBe(true);
          expect(Math.abs(root.x - r)).toBeLessThanOrEqual(1e-6);
        },
      ),
    );
  });

  test('one step more than bisection at the worst, a third of its steps for a smooth function', () => {
    const stepsFor = (f: (x: number) => number) => {
      let calls = 0;
      const root = findRoot(
        (x) => {
          calls++;
          return f(x);
        },
        0,
        1,
        2 ** -31,
      );
      expect(root.converged).toBe(true);
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

describe('golden-section maximum', () => {
  test('of a parabola, and of x e^−x, which is 1/e at 1', () => {
    const parabola = maximise((x) => 3 - (x - 2) ** 2, 0, 7, 1e-6);
    expect(parabola.converged).toBe(true);
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

  test('a tolerance finer than the numbers ends, and says so', () => {
    expect(maximise((x) => -((x - 1e6 / 3) ** 2), 0, 1e6, 1e-30).converged).toBe(false);
  });

  test('is within its tolerance of the top of any parabola', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 99, noNaN: true }), (top) => {
        expect(Math.abs(maximise((x) => -((x - top) ** 2), 0, 100, 1e-4).x - top)).toBeLessThanOrEqual(1e-4);
      }),
    );
  });

  test('NaN, an empty interval and no tolerance are refused', () => {
    expect(() => maximise(() => Number.NaN, 0, 1, 0.1)).toThrow('the function must give a number at');
    expect(() => maximise((x) => x, 1, 1, 0.1)).toThrow('high must be above 1, got 1');
    expect(() => maximise((x) => x, 0, 1, 0)).toThrow('tolerance must be above 0, got 0');
  });
});
