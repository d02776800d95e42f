import { type Examples, example } from './example.ts';

export const airExamples: Examples = {
  AIR_DENSITY_RATIO: [
    // US Standard Atmosphere 1976, derived from its constants: 8,000 ft, σ 0.78602
    example([8000], 0.78602, 5e-6),
    // 5,000 ft: σ 0.86167 at 278.244 K; at 303.15 K 0.86167 × 278.244/303.15
    example([5000, 30], 0.79088, 1e-5),
  ],
  DENSITY_ALTITUDE: [
    // On a standard day it is the pressure altitude: 15 − 1.98124 × 5 at 5,000 ft
    example([5000, 5.094], 5000, 0.1),
    // σ 0.790878 from above; h = (288.15/0.0065)(1 − σ^(1/4.25588)) = 2,377.7 m
    example([5000, 30], 7800.7, 0.5),
    // Dew point 20 °C: e 2,333 Pa at 94,213 Pa, T_v 303.15/(1 − 0.378 × 2,333/94,213) = 306.0 K, worked likewise
    example([2000, 30, 20], 4472.6, 5),
  ],
  ISA_TEMPERATURE: [
    example([10_000], 15 - 0.0065 * 3048, 1e-9),
    example([0], 15, 1e-9),
    example([45_000], -56.5, 1e-9), // above the tropopause
  ],
  HOT_DAY_TEMPERATURE: [
    // 14 CFR 23.1043: 100 − 3.6 × 5 = 82 °F
    example([5000], 27.777_778, 1e-6),
    example([0], 37.777_778, 1e-6), // 100 °F
  ],
};
