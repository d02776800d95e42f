import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { crossFlowEffectiveness, crossFlowNtu } from '../../src/engineering/radiator.ts';
import { crossFlowSeries } from '../outside/values/heatExchangers.ts';

/**
 * The exchanger itself, cut into cells: hot air-like stream a along x, stream b along y, in each cell
 * ΔT_a = −NTU h (T_a − T_b), ΔT_b = C_r NTU h (T_a − T_b) with mean temperatures (second order). No series.
 */
function integrated(ntu: number, capacityRatio: number, cells: number): number {
  const a = (ntu / cells) * 0.5;
  const b = ((capacityRatio * ntu) / cells) * 0.5;
  const streamB: number[] = new Array(cells).fill(0); // enters at 0
  let leaving = 0;
  for (let y = 0; y < cells; y++) {
    let streamA = 1; // enters at 1
    for (let x = 0; x < cells; x++) {
      const before = streamB[x]!;
      // Mean difference d of the cell: d = (A − B) − (a + b) d with A, B entering
      const difference = (streamA - before) / (1 + a + b);
      streamA -= 2 * a * difference;
      streamB[x] = before + 2 * b * difference;
    }
    leaving += streamA / cells;
  }
  return 1 - leaving;
}

/** Richardson: the error falls as the square of the cell. */
const exchanger = (ntu: number, capacityRatio: number) =>
  (4 * integrated(ntu, capacityRatio, 400) - integrated(ntu, capacityRatio, 200)) / 3;

describe('cross-flow, both unmixed', () => {
  // Mason's series as tabulated by Kays and London; values derived by a separate program.
  test.each(crossFlowSeries)('NTU %d, C_r %d', (ntu, capacityRatio, effectiveness) => {
    expect(Math.abs(crossFlowEffectiveness(ntu, capacityRatio) - effectiveness)).toBeLessThanOrEqual(6e-6);
  });

  test.each([
    [0.1, 0.3],
    [0.7, 1],
    [1.25, 0.2],
    [2.5, 0.6],
    [4, 0.9],
    [5.4455, 0.345181],
    [10, 1],
    [20, 0.05],
    [20, 1],
  ])('NTU %d, C_r %d agrees with the integrated exchanger', (ntu, capacityRatio) => {
    expect(Math.abs(crossFlowEffectiveness(ntu, capacityRatio) - exchanger(ntu, capacityRatio))).toBeLessThan(
      1e-6,
    );
  });

  test('the ends: no exchanger, one side boiling or condensing, a hair beside it', () => {
    expect(crossFlowEffectiveness(0, 0.5)).toBe(0);
    expect(crossFlowEffectiveness(1, 0)).toBeCloseTo(1 - Math.exp(-1), 15);
    expect(crossFlowEffectiveness(20, 0)).toBeCloseTo(1 - Math.exp(-20), 15);
    expect(crossFlowEffectiveness(1, 1e-13)).toBeCloseTo(1 - Math.exp(-1), 12);
    expect(crossFlowEffectiveness(1, 1e-11)).toBeCloseTo(1 - Math.exp(-1), 10);
    expect(crossFlowEffectiveness(1e-9, 1)).toBeCloseTo(1e-9, 17);
  });

  const capacityRatio = fc.double({ min: 0, max: 1, noNaN: true });

  test('more core is more effective, a greater capacity ratio less; never better than counter-flow', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 20, noNaN: true }),
        fc.double({ min: 1e-3, max: 5, noNaN: true }),
        capacityRatio,
        capacityRatio,
        (ntu, more, c1, c2) => {
          const effectiveness = crossFlowEffectiveness(ntu, c1);
          expect(crossFlowEffectiveness(ntu + more, c1)).toBeGreaterThanOrEqual(effectiveness);
          expect(crossFlowEffectiveness(ntu, Math.min(c1, c2))).toBeGreaterThanOrEqual(
            crossFlowEffectiveness(ntu, Math.max(c1, c2)) - 1e-13,
          );
          // Counter-flow, textbook closed form
          const e = Math.exp(-ntu * (1 - c1));
          const counterFlow = 1 - c1 < 1e-9 ? ntu / (1 + ntu) : (1 - e) / (1 - c1 * e);
          expect(effectiveness).toBeLessThanOrEqual(counterFlow + 1e-9);
          expect(effectiveness).toBeGreaterThanOrEqual(0);
        },
      ),
    );
  });

  test('NTU of an effectiveness gives that effectiveness', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 20, noNaN: true }), capacityRatio, (ntu, c) => {
        const effectiveness = crossFlowEffectiveness(ntu, c);
        fc.pre(effectiveness < 1 - 1e-7);
        expect(crossFlowEffectiveness(crossFlowNtu(effectiveness, c), c)).toBeCloseTo(effectiveness, 10);
      }),
    );
    expect(crossFlowNtu(0.47622, 1)).toBeCloseTo(1, 3); // row of the table above, turned round
  });

  // With C_r 1 the series is ε = 1 − e^−2N (I₀(2N) + I₁(2N)) (from memory); for large N the Bessel functions' own series leave
  // 1 − (1 − 1/16N)/√(πN), here 1 − 0.99984375/√(400 π) = 0.9717949
  test('a core of 400 NTU, for which a thousand terms count', () => {
    expect(crossFlowEffectiveness(400, 1)).toBeCloseTo(0.9717949, 7);
  });

  test.each([
    ['an effectiveness no core reaches', () => crossFlowNtu(0.99, 1)],
    ['one that needs a core without end', () => crossFlowNtu(crossFlowEffectiveness(500, 0.5), 0.5)],
    ['effectiveness in percent', () => crossFlowNtu(60, 0.5)],
  ])('refused: %s', (_, call) => {
    expect(call).toThrow(RangeError);
  });
});
