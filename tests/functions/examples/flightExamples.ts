import { type Examples, example } from './example.ts';

export const flightExamples: Examples = {
  ENDURANCE: [
    example([42, 9], 42 / 9 - 0.5, 1e-9),
    example([42, 9, 45], 42 / 9 - 0.75, 1e-9),
    example([4, 9], 4 / 9 - 0.5, 1e-9), // short of the reserve
  ],
  RANGE_BREGUET: [
    // In the trade's units: 375 (η/c)(L/D) ln(W₀/W₁) statute miles = 880.0; 764.7 nmi
    example([0.8, 12, 0.45, 2400, 2150], 764.705, 0.01),
    example([0.8, 12, 0.45, 2400, 2400], 0, 1e-12),
  ],
  STALL_SPEED: [
    // √(2 × 2,520/(0.0023769 × 150 × 1.95)) = 85.14 ft/s (slug and foot)
    example([2520, 150, 1.95], 50.4456, 0.002),
    example([2520, 150, 1.95, 0.8], 56.3999, 0.002), // over √0.8
  ],
  PROPELLER_TIP_MACH: [
    // 1.8 m, 2,700 rpm, 60 m/s, 340.29 m/s: √(60² + 254.47²)/340.29 = 0.7683 (derived)
    example([70.866_142, 2700, 116.630_67], 0.7683, 5e-5),
    // 30 °C: a is √(303.15/288.15) greater
    example([70.866_142, 2700, 116.630_67, 30], 0.749, 5e-5),
  ],
  PROPELLER_THRUST: [
    // 1,000 N at 60 m/s through a disc of 1.8 m needs 62,564 W without losses (derived): 83.900 hp, 224.809 lbf
    example([83.899_706, 116.630_67, 70.866_142, 1, 1], 224.809, 0.01),
    // With an efficiency of 0.85 that takes 1/0.85 of the power
    example([83.899_706 / 0.85, 116.630_67, 70.866_142], 224.809, 0.01),
    // Standing still: T³ = (k P)² 2 ρ A; 0.42 × 180 × 745.70 W, A 2.7747 m² (74 in), ρ 1.225: 2,785.2 N
    example([180, 0, 74, 1, 0.42], 626.13, 0.05),
  ],
  PROPELLER_CLEARANCE: [example([46.5, 74], 9.5, 1e-12), example([35, 74], -2, 1e-12)],
  CLIMB_RATE: [
    example([50, 2500], 660, 1e-9), // 50 × 33,000/2,500
    example([-10, 2500], -132, 1e-9),
  ],
};
