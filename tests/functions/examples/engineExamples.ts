import { type Examples, example } from './example.ts';

export const engineExamples: Examples = {
  ENGINE_POWER_AT_ALTITUDE: [
    // Gagg and Farrar at 8,000 ft: σ 0.78602 − (1 − 0.78602)/7.55 = 0.7577 (derived from the formula)
    example([180, 8000], 180 * 0.7577, 0.02),
    // √(272.300/288.15) of that at 15 °C
    example([180, 8000, 15], 132.58, 0.02),
    example([160, 8000, '', 16_000], 160, 1e-9),
    // 20,000 ft above a critical altitude of 16,000: s = 0.53281/0.60896 = 0.87495; s − (1 − s)/7.55 = 0.85839
    example([160, 20_000, '', 16_000], 137.34, 0.02),
  ],
  FUEL_FLOW: [
    example([150, 0.45], 11.25, 1e-9), // 150 × 0.45/6
    example([150, 0.45, 6.7], 10.074_627, 1e-6), // 67.5/6.7
  ],
  FUEL_FLOW_AT_SETTING: [
    // At a point: 0.75 × 180 × 0.43/6
    example(
      [
        75,
        180,
        [
          [65, 0.43],
          [75, 0.43],
          [100, 0.5],
        ],
      ],
      9.675,
      1e-9,
    ),
    // Two points, fuel flow straight between: 90 × 0.50 = 45 and 180 × 0.46 = 82.8 lb/h, at 75 % 63.9 lb/h
    example(
      [
        75,
        180,
        [
          [50, 0.5],
          [100, 0.46],
        ],
      ],
      10.65,
      1e-9,
    ),
    // One point holds: 0.5 × 180 × 0.45/6.7
    example([50, 180, [[75, 0.45]], 6.7], 6.044_776, 1e-6),
  ],
  FUEL_FLOW_TO_DEMONSTRATE: [
    // 14 CFR 23.955: 125 % with a pump, 150 % by gravity
    example([20, 'pump'], 25, 1e-12),
    example([20, 'Gravity'], 30, 1e-12),
  ],
  MINIMUM_FUEL: [
    example([165, 0.5], 41.25, 1e-9), // 165 × 0.5 × ½ h
    example([165, 0.5, 60], 82.5, 1e-9), // AC 43.13-1B: METO hp/2 lb, which is an hour at 0.5 lb/hp·h
  ],
};
