import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { monotoneCubic, piecewiseLinear } from '../../src/engineering/curve.ts';

const points = (...pairs: [number, number][]) => pairs.map(([x, y]) => ({ x, y }));

const pointSets = fc
  .uniqueArray(fc.tuple(fc.integer({ min: -50, max: 50 }), fc.integer({ min: -100, max: 100 })), {
    minLength: 2,
    maxLength: 8,
    selector: ([x]) => x,
  })
  .map((pairs) => points(...pairs));

describe.each([
  ['piecewise linear', piecewiseLinear],
  ['monotone cubic', monotoneCubic],
])('%s', (_, curveThrough) => {
  test('passes through its points, in whatever order they come', () => {
    fc.assert(
      fc.property(pointSets, (set) => {
        const curve = curveThrough(set);
        for (const { x, y } of set) {
          expect(curve(x).value).toBeCloseTo(y, 9);
          expect(curve(x).extrapolated).toBe(false);
        }
      }),
    );
  });

  test('stays between neighbouring points: no overshoot', () => {
    fc.assert(
      fc.property(pointSets, fc.double({ min: 0, max: 1, noNaN: true }), (set, t) => {
        const sorted = [...set].sort((a, b) => a.x - b.x);
        const curve = curveThrough(set);
        for (let i = 1; i < sorted.length; i++) {
          const [left, right] = [sorted[i - 1]!, sorted[i]!];
          const { value } = curve(left.x + t * (right.x - left.x));
          expect(value).toBeGreaterThanOrEqual(Math.min(left.y, right.y) - 1e-9);
          expect(value).toBeLessThanOrEqual(Math.max(left.y, right.y) + 1e-9);
        }
      }),
    );
  });

  test('is monotone between neighbouring points', () => {
    fc.assert(
      fc.property(pointSets, fc.double({ min: 0, max: 0.98, noNaN: true }), (set, t) => {
        const sorted = [...set].sort((a, b) => a.x - b.x);
        const curve = curveThrough(set);
        for (let i = 1; i < sorted.length; i++) {
          const [left, right] = [sorted[i - 1]!, sorted[i]!];
          const width = right.x - left.x;
          const rise = curve(left.x + (t + 0.02) * width).value - curve(left.x + t * width).value;
          expect(rise * Math.sign(right.y - left.y)).toBeGreaterThanOrEqual(-1e-9);
        }
      }),
    );
  });

  test('is held at its ends, and says so', () => {
    const curve = curveThrough(points([1, 10], [2, 30], [4, 20]));
    expect(curve(0)).toEqual({ value: 10, extrapolated: true });
    expect(curve(1)).toEqual({ value: 10, extrapolated: false });
    expect(curve(4)).toEqual({ value: 20, extrapolated: false });
    expect(curve(9)).toEqual({ value: 20, extrapolated: true });
  });

  test('one point is that value everywhere, extrapolated but at itself', () => {
    const curve = curveThrough(points([3, 7]));
    expect(curve(3)).toEqual({ value: 7, extrapolated: false });
    expect(curve(2)).toEqual({ value: 7, extrapolated: true });
    expect(curve(4)).toEqual({ value: 7, extrapolated: true });
  });

  test('no point, one x twice and NaN are refused', () => {
    expect(() => curveThrough([])).toThrow('points must be at least one, got none');
    expect(() => curveThrough(points([1, 2], [3, 4], [1, 5]))).toThrow(
      'points must differ in x, got 1 twice',
    );
    expect(() => curveThrough(points([1, Number.NaN]))).toThrow('y must be a finite number, got NaN');
    expect(() => curveThrough(points([1, 2], [Number.NaN, 3]))).toThrow('x must be a finite number, got NaN');
    expect(() => curveThrough(points([1, 2]))(Number.NaN)).toThrow(RangeError);
  });
});

test('piecewise linear, by hand', () => {
  const curve = piecewiseLinear(points([0, 0.82], [40, 0.9], [60, 1]));
  expect(curve(20).value).toBeCloseTo(0.86, 12);
  expect(curve(50).value).toBeCloseTo(0.95, 12);
});

describe('monotone cubic, by hand', () => {
  test('two points are a straight line', () => {
    expect(monotoneCubic(points([0, 1], [4, 9]))(1).value).toBeCloseTo(3, 12);
  });

  // Points (0,0), (1,1), (2,3): secants 1 and 2, slopes 1, 1.5, 2; every α² + β² is below 9.
  // At 0.5: ½·0 + ½·1 + (1 − 1.5)/8 = 0.4375; at 1.5: ½·1 + ½·3 + (1.5 − 2)/8 = 1.9375.
  test('gentle points keep the mean of the secants', () => {
    const curve = monotoneCubic(points([0, 0], [1, 1], [2, 3]));
    expect(curve(0.5).value).toBeCloseTo(0.4375, 12);
    expect(curve(1.5).value).toBeCloseTo(1.9375, 12);
  });

  // Points (0,0), (1,1), (2,11): secants 1 and 10, slopes 1, 5.5, 10. First interval α = 1, β = 5.5: √31.25 = 5.590170
  // > 3, both shortened by 3/5.590170 = 0.5366563: 0.5366563 and 2.9516097. Second α = 0.295, β = 1: kept.
  // At 0.5: 0.5 + (0.5366563 − 2.9516097)/8 = 0.1981308; at 1.5: 6 + (2.9516097 − 10)/8 = 5.1189512.
  test('a sudden rise is shortened to the circle of radius 3', () => {
    const curve = monotoneCubic(points([0, 0], [1, 1], [2, 11]));
    expect(curve(0.5).value).toBeCloseTo(0.1981308, 6);
    expect(curve(1.5).value).toBeCloseTo(5.1189512, 6);
  });

  // Points (0,0), (1,1), (2,5.678): secants 1 and 4.678, slopes 1 and 2.839: √(1 + 2.839²) = 3.00997, only just outside the
  // circle: both shortened by 0.996688. At 0.5: 0.5 − (2.839 − 1) 0.996688/8 = 0.270886, where unshortened is 0.270125
  test('just outside the circle is shortened too', () => {
    expect(monotoneCubic(points([0, 0], [1, 1], [2, 5.678]))(0.5).value).toBeCloseTo(0.270886, 6);
  });

  test('the lowest point of a hollow is its lowest value', () => {
    const curve = monotoneCubic(points([0.5, 0.46], [0.7, 0.42], [1, 0.5]));
    expect(curve(0.69).value).toBeGreaterThanOrEqual(0.42);
    expect(curve(0.71).value).toBeGreaterThanOrEqual(0.42);
  });

  test('its slope is continuous at the points', () => {
    const curve = monotoneCubic(points([0, 0], [1, 1], [2, 11], [5, 12]));
    const step = 1e-6;
    for (const x of [1, 2]) {
      const before = (curve(x).value - curve(x - step).value) / step;
      const after = (curve(x + step).value - curve(x).value) / step;
      expect(after).toBeCloseTo(before, 3);
    }
  });
});
