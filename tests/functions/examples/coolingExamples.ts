import { type Examples, example } from './example.ts';

export const coolingExamples: Examples = {
  COOLING_HEAT: [
    // 1 hp is 33,000/778.169 = 42.407 Btu/min
    example([180, 0.55], 4198.32, 0.01),
  ],
  COOLING_AIRFLOW: [
    // 0.24 Btu/lb·°F to three digits: 4,200/(0.24 × 150) = 116.67
    example([4200, 150], 116.67, 0.03),
  ],
  COOLING_PRESSURE_AVAILABLE: [
    // q = ½ × 0.0023769 × 168.78² = 33.855 lbf/ft² = 6.5077 inH2O; 0.8 of it
    example([100, 1], 5.2062, 5e-4),
    // With −0.1 at the exit and 1 inH2O of slipstream: 0.8 × 7.5077 + 0.65077
    example([100, 1, 0.8, -0.1, 1], 6.656_96, 5e-4),
    example([0, 1, '', '', 1], 0.8, 1e-9),
  ],
  COOLING_INLET_AREA: [
    // 0.076474 lb/ft³, 10,126.9 ft/min: 100/(0.076474 × 10,126.9 × 0.35) ft²
    example([100, 100, 1], 53.126, 0.002),
    example([100, 100, 0.8, 0.7], 53.126 / 1.6, 0.002),
  ],
  COOLING_EXIT_AREA: [
    // 0.755987/(0.9 √(2 × 1.225 × 996.356)) = 0.017001 m²
    example([100, 4, 1], 26.352, 0.002),
    // Warmed by 150 °F = 83.33 K: the density falls by 288.15/371.48
    example([100, 4, 1, 150], 29.921, 0.002),
    example([100, 4, 1, 0, 0.6], 39.528, 0.002), // 0.9/0.6
  ],
  HOT_DAY_CORRECTED: [
    // 82 °F at 5,000 ft is 27.78 °C: 110 + 12.78, and 0.7 of it for a barrel
    example([110, 15, 5000], 122.777_778, 1e-6),
    example([110, 15, 5000, 0.7], 118.944_444, 1e-6),
  ],
  RADIATOR_EFFECTIVENESS: [
    // Exact series (derived); Kays and London tabulate 0.476 at 1, 1 (from memory)
    example([1, 1], 0.476_22, 1e-5),
    example([2, 0.5], 0.732_41, 1e-5),
    example([1, 0], 0.632_121, 1e-6), // 1 − 1/e
  ],
  CHARGE_TEMPERATURE: [
    // 288.15 (1 + (2^(1/3.5) − 1)/0.7) − 273.15
    example([15, 2, 0.7], 105.1554, 1e-3),
    // 0.7 of the 90.155 above the inlet is taken out; then of the 75.155 above 30 °C
    example([15, 2, 0.7, 0.7], 42.0466, 1e-3),
    example([15, 2, 0.7, 0.7, 30], 52.5466, 1e-3),
  ],
};
