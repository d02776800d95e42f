import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type Allowance,
  expectedCg,
  expectedMass,
  type MassItemWithBasis,
} from '../../src/engineering/expectedWeight.ts';
import { between } from './between.ts';
import { normalNumbers } from './randomNumbers.ts';

const allowance = (basis: string, growth: number, scatter: number, correlation: number): Allowance => ({
  basis,
  growth,
  scatter,
  correlation,
});
const allowances = [
  allowance('estimated', 0.1, 0.1, 0.5),
  allowance('calculated', 0.05, 0.04, 0.2),
  allowance('weighed', 0, 0.01, 0),
];

describe('by hand', () => {
  test('two estimated rows: 100 at 1 and 200 at 2', () => {
    const mass = expectedMass(
      [
        { weight: 100, arm: 1, basis: 'estimated' },
        { weight: 200, arm: 2, basis: 'estimated' },
      ],
      allowances,
    );
    expect(mass.nominal).toEqual({ weight: 300, moment: 500 });
    expect(mass.expected.weight).toBeCloseTo(330, 10);
    expect(mass.expected.moment).toBeCloseTo(550, 10);
    // errors 10 and 20: 0.5 × 30² + 0.5 × (10² + 20²) = 450 + 250
    expect(mass.weightHalfWidth).toBeCloseTo(Math.sqrt(700), 10);
    // errors 10 and 40: 0.5 × 50² + 0.5 × (10² + 40²) = 1250 + 850
    expect(mass.momentHalfWidth).toBeCloseTo(Math.sqrt(2100), 10);
  });

  test('bases do not go together: their half-widths add in squares', () => {
    const mass = expectedMass(
      [
        { weight: 100, arm: 1, basis: 'estimated' },
        { weight: 100, arm: 1, basis: 'calculated' },
        { weight: 700, arm: 1, basis: 'weighed' },
      ],
      allowances,
    );
    expect(mass.weightHalfWidth).toBeCloseTo(Math.hypot(10, 4, 7), 10);
    expect(mass.expected.weight).toBeCloseTo(110 + 105 + 700, 10);
  });

  test('an item off the scales has their half-widths, not those of its basis, and does not grow', () => {
    const items: MassItemWithBasis[] = [
      { weight: 1000, arm: 2, basis: 'estimated', known: { weight: 3, arm: 0.01 } },
      { weight: 100, arm: 1, basis: 'calculated' },
    ];
    const mass = expectedMass(items, allowances);
    expect(mass.expected.weight).toBeCloseTo(1105, 10);
    expect(mass.weightHalfWidth).toBeCloseTo(Math.hypot(3, 4), 10);
    // moment: 3 × 2 and 1000 × 0.01 of the first, 4 × 1 of the second
    expect(mass.momentHalfWidth).toBeCloseTo(Math.hypot(6, 10, 4), 10);
    // alone, its CG is known as well as its arm: about its own arm its weight has no moment
    expect(expectedCg(items.slice(0, 1), allowances).halfWidth).toBeCloseTo(0.01, 12);
  });

  test('an item of which only the arm is known has the growth and scatter of its basis, and that of its arm', () => {
    const items: MassItemWithBasis[] = [
      { weight: 1000, arm: 2, basis: 'estimated', known: { weight: undefined, arm: 0.01 } },
    ];
    const mass = expectedMass(items, allowances);
    expect(mass.expected.weight).toBeCloseTo(1100, 10);
    expect(mass.weightHalfWidth).toBeCloseTo(100, 10);
    // moment: 100 × 2 and 1000 × 0.01
    expect(mass.momentHalfWidth).toBeCloseTo(Math.hypot(200, 10), 10);
    // about its own arm the weight has no moment: 1000 × 0.01 on 1100
    expect(expectedCg(items, allowances).halfWidth).toBeCloseTo(10 / 1100, 12);
  });

  test('a removed row does not grow, and its scatter counts', () => {
    const mass = expectedMass(
      [
        { weight: 100, arm: 1, basis: 'estimated' },
        { weight: -60, arm: 3, basis: 'estimated' },
      ],
      allowances,
    );
    expect(mass.nominal.weight).toBe(40);
    expect(mass.expected.weight).toBeCloseTo(110 - 60, 10);
    expect(mass.expected.moment).toBeCloseTo(110 - 180, 10);
    // errors 10 and 6: 0.5 × 16² + 0.5 × 136
    expect(mass.weightHalfWidth).toBeCloseTo(Math.sqrt(196), 10);
  });

  test('CG of two weighed halves: 1 % of 500 at each end of a 2 m lever', () => {
    const cg = expectedCg(
      [
        { weight: 500, arm: 1, basis: 'weighed' },
        { weight: 500, arm: 3, basis: 'weighed' },
      ],
      allowances,
    );
    expect(cg.cg).toBeCloseTo(2, 12);
    // each error of 5 turns 5 about the CG: √50/1000
    expect(cg.halfWidth).toBeCloseTo(Math.sqrt(50) / 1000, 12);
  });
});

describe('properties', () => {
  const row: fc.Arbitrary<MassItemWithBasis> = fc.record({
    weight: between(0.5, 400),
    arm: between(-100, 300),
    basis: fc.constantFrom('estimated', 'calculated', 'weighed'),
  });
  const rows = fc.array(row, { minLength: 1, maxLength: 30 });

  test('order does not matter', () => {
    fc.assert(
      fc.property(rows, (items) => {
        const [one, other] = [
          expectedMass(items, allowances),
          expectedMass([...items].reverse(), allowances),
        ];
        expect(other.expected.weight).toBeCloseTo(one.expected.weight, 8);
        expect(other.weightHalfWidth).toBeCloseTo(one.weightHalfWidth, 8);
        expect(other.momentHalfWidth).toBeCloseTo(one.momentHalfWidth, 6);
      }),
    );
  });

  test('the CG half-width does not depend on the datum; the CG moves with it', () => {
    fc.assert(
      fc.property(rows, between(-200, 200), (items, datum) => {
        const one = expectedCg(items, allowances);
        const moved = items.map((item) => ({ ...item, arm: item.arm - datum }));
        const other = expectedCg(moved, allowances);
        expect(other.halfWidth).toBeCloseTo(one.halfWidth, 8);
        expect(other.cg).toBeCloseTo(one.cg - datum, 8);
      }),
    );
  });

  test('correlation 0 adds squares, correlation 1 adds errors, and anything lies between', () => {
    fc.assert(
      fc.property(rows, between(0, 1), (items, correlation) => {
        const estimated = items.map((item) => ({ ...item, basis: 'estimated' }));
        const errors = estimated.map(({ weight }) => 0.1 * weight);
        const { weightHalfWidth } = expectedMass(estimated, [allowance('estimated', 0, 0.1, correlation)]);
        expect(weightHalfWidth).toBeGreaterThanOrEqual(Math.hypot(...errors) * (1 - 1e-12));
        expect(weightHalfWidth).toBeLessThanOrEqual(errors.reduce((sum, error) => sum + error) * (1 + 1e-12));
      }),
    );
  });

  test('half-width of weight and CG against simulated errors, for items that all lie on one side of the CG', () => {
    // Independent route: draw equally correlated errors e = s (√ρ z₀ + √(1 − ρ) zᵢ) and look at the spread. The engine's
    // rows are all ahead of the CG, so the magnitudes in the formula are what the errors really do.
    const rowsAhead: MassItemWithBasis[] = [
      { weight: 900, arm: 130, basis: 'exact' },
      { weight: 280, arm: 35, basis: 'estimated' },
      { weight: 60, arm: 20, basis: 'estimated' },
      { weight: 45, arm: 50, basis: 'estimated' },
    ];
    const table = [allowance('exact', 0, 0, 0), allowance('estimated', 0, 0.06, 0.5)];
    const normal = normalNumbers(1);
    const [weights, cgs]: [number[], number[]] = [[], []];
    for (let draw = 0; draw < 20_000; draw++) {
      const common = normal();
      let [weight, moment] = [0, 0];
      for (const { weight: nominal, arm, basis } of rowsAhead) {
        const scatter = basis === 'exact' ? 0 : 0.06;
        const drawn = nominal * (1 + scatter * (Math.SQRT1_2 * common + Math.SQRT1_2 * normal()));
        weight += drawn;
        moment += drawn * arm;
      }
      weights.push(weight);
      cgs.push(moment / weight);
    }
    const deviation = (values: number[]) => {
      const mean = values.reduce((sum, value) => sum + value) / values.length;
      return Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / values.length);
    };
    // 20,000 draws know a deviation to 0.5 % (one sigma): three of them
    expect(Math.abs(expectedMass(rowsAhead, table).weightHalfWidth / deviation(weights) - 1)).toBeLessThan(
      0.015,
    );
    expect(Math.abs(expectedCg(rowsAhead, table).halfWidth / deviation(cgs) - 1)).toBeLessThan(0.015);
  });
});

describe('refusals', () => {
  const rows = [{ weight: 1, arm: 1, basis: 'guessed' }];

  test('a basis without allowance, by name', () => {
    expect(() => expectedMass(rows, allowances)).toThrow(/basis must have an allowance, got guessed/);
  });

  test('a basis with two allowances', () => {
    expect(() => expectedMass(rows, [...allowances, ...allowances])).toThrow(/estimated twice/);
  });

  test('a CG of nothing', () => {
    expect(() => expectedCg([{ weight: -5, arm: 1, basis: 'weighed' }], allowances)).toThrow(
      /expected weight must be above 0/,
    );
  });
});
