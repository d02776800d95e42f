/** Second opinions from general numeric libraries: interpolation, roots, integrals, probabilities. */
import { points as controlPoints } from '@yr/monotone-cubic-spline';
import { scaleLinear } from 'd3-scale';
import fc from 'fast-check';
import jstat from 'jstat';
import { bisect as libraryBisect } from 'simple-statistics';
import { describe, expect, test } from 'vitest';
import { gasConstantAir, standardPressure, standardTemperature } from '../../src/engineering/air.ts';
import { monotoneCubic, type Point, piecewiseLinear } from '../../src/engineering/curve.ts';
import { crossFlowNtu } from '../../src/engineering/radiator.ts';
import { findRoot } from '../../src/engineering/solve.ts';
import { between } from '../engineering/between.ts';
import { integrate } from '../engineering/independentIntegrator.ts';
import { fromFunction } from './publishedValue.ts';

/** Points a step of at least 0.1 apart. */
const pointsOf = (step: fc.Arbitrary<number>) =>
  fc.array(fc.tuple(between(0.1, 10), step), { minLength: 2, maxLength: 8 }).map((steps): Point[] => {
    let [x, y] = [0, 50];
    return steps.map(([dx, dy]) => {
      x += dx;
      y += dy;
      return { x, y };
    });
  });

test('straight lines between points: d3-scale', () => {
  fc.assert(
    fc.property(pointsOf(between(-20, 20)), between(-5, 90), (points, x) => {
      const theirs = scaleLinear()
        .domain(points.map((point) => point.x))
        .range(points.map((point) => point.y))
        .clamp(true);
      expect(piecewiseLinear(points)(x).value).toBeCloseTo(theirs(x), 9);
    }),
  );
});

describe('the monotone curve: @yr/monotone-cubic-spline', () => {
  /** Slopes at the points: a control point lies on the tangent of its end. */
  function slopesOf(points: readonly Point[]): number[] {
    const rows = controlPoints(points.map(({ x, y }) => [x, y]));
    return points.map((point, index) => {
      const row = rows[index]!;
      const [x, y] =
        index === 0 ? [rows[1]![0]!, rows[1]![1]!] : [row[row.length - 4]!, row[row.length - 3]!];
      return (y - point.y) / (x - point.x);
    });
  }

  // It takes Fritsch and Carlson's slopes as we do, but does not level out highest and lowest points: monotone data
  const monotone = fc
    .boolean()
    .chain((rising) => pointsOf(between(0.2, 20).map((dy) => (rising ? dy : -dy))));

  test('goes through the middle of every interval where its slopes say', () => {
    fc.assert(
      fc.property(monotone, (points) => {
        const curve = monotoneCubic(points);
        const slopes = slopesOf(points);
        points.slice(1).forEach((right, index) => {
          const left = points[index]!;
          // Hermite's cubic at t = 1/2
          const middle =
            (left.y + right.y) / 2 + ((right.x - left.x) * (slopes[index]! - slopes[index + 1]!)) / 8;
          expect(curve((left.x + right.x) / 2).value).toBeCloseTo(middle, 6);
        });
      }),
    );
  });

  test('and so does FUEL_FLOW_AT_SETTING', () => {
    const settings = [
      [50, 0.52],
      [60, 0.48],
      [75, 0.45],
      [100, 0.44],
    ] as const;
    const slopes = slopesOf(settings.map(([x, y]) => ({ x, y })));
    const bsfc = (0.48 + 0.45) / 2 + (15 * (slopes[1]! - slopes[2]!)) / 8;
    // 67.5 % of 200 hp, 6 lb/US gal
    expect(fromFunction('FUEL_FLOW_AT_SETTING', [67.5, 200, settings, 6])).toBeCloseTo((135 * bsfc) / 6, 9);
  });
});

describe('roots: simple-statistics', () => {
  test('of rising functions with a root between 0 and 100', () => {
    fc.assert(
      fc.property(between(0.1, 99), between(0.01, 5), between(0, 3), (root, slope, bend) => {
        const f = (x: number) => slope * (x - root) + bend * (x ** 3 - root ** 3);
        const theirs = libraryBisect(f, 0, 100, 100, 1e-9);
        expect(findRoot(f, 0, 100, 1e-9)).toBeCloseTo(theirs, 6);
      }),
    );
  });

  test('NTU of an effectiveness', () => {
    fc.assert(
      fc.property(between(0.05, 0.7), between(0, 1), (effectiveness, ratio) => {
        const spare = (ntu: number) => fromFunction('RADIATOR_EFFECTIVENESS', [ntu, ratio]) - effectiveness;
        expect(crossFlowNtu(effectiveness, ratio)).toBeCloseTo(libraryBisect(spare, 0, 60, 200, 1e-10), 6);
      }),
      { numRuns: 40 },
    );
  });

  test("thrust of a disc: Froude's 2 ρ A (V + w)² w = 0.85 P solved for w, T = 0.85 P/(V + w)", () => {
    fc.assert(
      fc.property(between(20, 350), between(0, 200), between(50, 90), (horsepower, knots, inches) => {
        const [power, speed, diameter] = [
          horsepower * 745.69987158227,
          (knots * 1852) / 3600,
          inches * 0.0254,
        ];
        const area = (Math.PI / 4) * diameter ** 2;
        const spare = (induced: number) => 2 * 1.225 * area * (speed + induced) ** 2 * induced - 0.85 * power;
        const newtons = (0.85 * power) / (speed + libraryBisect(spare, 0, 200, 200, 1e-10));
        const pounds = fromFunction('PROPELLER_THRUST', [horsepower, knots, inches]);
        expect(pounds * 4.4482216152605).toBeCloseTo(newtons, 2);
      }),
    );
  });
});

const integral = (f: (x: number) => number, from: number, to: number): number =>
  integrate((x) => [f(x)], from, [0], to)[0]!;

describe('integrals: odex', () => {
  test('the weight of the air above: ln p falls as ∫ g/(R T) dh', () => {
    for (const height of [500, 3_000, 8_000, 11_000]) {
      const column = integral((h) => 9.80665 / (gasConstantAir * standardTemperature(h)), 0, height);
      expect(standardPressure(height)).toBeCloseTo(101_325 * Math.exp(-column), 3);
    }
  });

  test('range: distance per pound, added up over the pounds burnt', () => {
    fc.assert(
      fc.property(between(1500, 4000), between(0.6, 0.95), between(6, 16), (start, part, glide) => {
        // η L/D 375 mi·lb of force in a horsepower hour, 0.45 lb of fuel for it
        const miles = integral((weight) => (0.8 * glide * 375) / (0.45 * weight), start * part, start);
        const nautical = fromFunction('RANGE_BREGUET', [0.8, glide, 0.45, start, start * part]);
        expect(nautical * (1852 / 1609.344)).toBeCloseTo(miles, 3);
      }),
    );
  });

  test("cross-flow: Triboix's integral, with the Bessel function as its own integral", () => {
    // ε = 1/C − e^(−CN)/(2 (CN)²) ∫₀^(2N√C) (1 + N − s) e^(−s) v I₀(v) dv, s = v²/(4CN); I₀(v) = 1/π ∫₀^π e^(v cos t) dt
    const bessel = (v: number) => integral((t) => Math.exp(v * Math.cos(t)), 0, Math.PI) / Math.PI;
    for (const [ntu, ratio] of [
      [0.8, 0.9],
      [1.5, 0.3],
      [2.5, 0.6],
      [4, 1],
    ] as const) {
      const product = ratio * ntu;
      const inside = (v: number) => {
        const s = v ** 2 / (4 * product);
        return (1 + ntu - s) * Math.exp(-s) * v * bessel(v);
      };
      const theirs =
        1 / ratio -
        (Math.exp(-product) / (2 * product ** 2)) * integral(inside, 0, 2 * ntu * Math.sqrt(ratio));
      expect(fromFunction('RADIATOR_EFFECTIVENESS', [ntu, ratio])).toBeCloseTo(theirs, 7);
    }
  });
});

test('cross-flow: the series with the Poisson probabilities of jstat', () => {
  fc.assert(
    fc.property(between(0.05, 12), between(0.05, 1), (ntu, ratio) => {
      let sum = 0;
      for (let n = 0; n < 80; n++)
        sum += (1 - jstat.poisson.cdf(n, ntu)) * (1 - jstat.poisson.cdf(n, ratio * ntu));
      expect(fromFunction('RADIATOR_EFFECTIVENESS', [ntu, ratio])).toBeCloseTo(sum / (ratio * ntu), 9);
    }),
  );
});
