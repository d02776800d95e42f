/**
 * Cross-flow heat exchanger, neither fluid mixed: the core of nearly every radiator, oil cooler and intercooler.
 *
 * Effectiveness ε = heat exchanged / heat exchanged by an endless counter-flow core, Q = ε C_min (T_hot,in − T_cold,in).
 * NTU = UA/C_min, C_r = C_min/C_max, C = mass flow × specific heat.
 */
import { requireAtLeast, requireBetween } from './check.ts';
import { findRoot } from './solve.ts';

/** Far beyond any real core (0.5 to 5); e^−NTU, where the series begins, is still well above the smallest number. */
export const largestNtu = 500;

/**
 * Effectiveness of a cross-flow exchanger, both fluids unmixed:
 * ε = 1/(C_r NTU) Σ_{n≥0} P(N_a > n) P(N_b > n), with N_a, N_b Poisson-distributed about NTU and C_r NTU.
 *
 * This is the exact series Σ [1 − e^−a Σ aᵏ/k!] [1 − e^−b Σ bᵏ/k!], k to n, with its brackets named for what they are.
 * They are summed from the far end upwards, so nothing cancels. The usual correlation with NTU^0.22 errs by up to 0.009.
 * @param ntu NTU, 0 to 500 [-]
 * @param capacityRatio C_r, 0 to 1 [-]
 * @returns ε [-]; 1 − e^−NTU at C_r = 0
 * @throws RangeError when an argument is outside its range
 * @source Mason 1955; tabulated by Kays and London, Compact Heat Exchangers (series from memory; checked by integrating
 *   the exchanger numerically)
 */
export function crossFlowEffectiveness(ntu: number, capacityRatio: number): number {
  requireBetween('ntu', ntu, 0, largestNtu, '');
  requireBetween('capacityRatio', capacityRatio, 0, 1, '');
  const product = capacityRatio * ntu;
  // Below 1e-12 the C_r-term, about −C_r (1 − e^−NTU)²/2 or smaller, is lost in rounding.
  if (product < 1e-12) return -Math.expm1(-ntu);
  // The lesser mean decides how many terms count; 20 standard deviations past it, none is above 1e-18 of the sum.
  const terms = Math.ceil(product + 20 * Math.sqrt(product) + 20);
  const tailA = poissonTails(ntu, terms);
  const tailB = poissonTails(product, terms);
  let sum = 0;
  for (let n = terms; n >= 0; n--) sum += tailA[n]! * tailB[n]!;
  return sum / product;
}

/** P(N > n) for n = 0 … terms, N Poisson-distributed about mean. */
function poissonTails(mean: number, terms: number): number[] {
  const last = Math.max(terms + 1, Math.ceil(mean + 20 * Math.sqrt(mean) + 20));
  const probability: number[] = [Math.exp(-mean)];
  for (let k = 1; k <= last; k++) probability.push((probability[k - 1]! * mean) / k);
  const tails: number[] = [];
  let tail = 0;
  for (let n = last; n >= 0; n--) {
    if (n <= terms) tails[n] = tail;
    tail += probability[n]!;
  }
  return tails;
}

/**
 * Number of transfer units for an effectiveness; the inverse of `crossFlowEffectiveness`.
 * @param effectiveness ε, at least 0, below what NTU = 500 gives at this C_r [-]
 * @param capacityRatio C_r, 0 to 1 [-]
 * @returns NTU [-]
 * @throws RangeError when no exchanger up to NTU = 500 is that effective
 * @source root of the exact series, ε rises with NTU
 */
export function crossFlowNtu(effectiveness: number, capacityRatio: number): number {
  requireAtLeast('effectiveness', effectiveness, 0, '');
  const greatest = crossFlowEffectiveness(largestNtu, capacityRatio);
  // At C_r below 1 the last digits of ε hold any NTU: what is within rounding of the greatest is no measurement.
  requireBetween('effectiveness', effectiveness, 0, greatest * (1 - 1e-9), '');
  return findRoot((ntu) => crossFlowEffectiveness(ntu, capacityRatio) - effectiveness, 0, largestNtu, 1e-11);
}
