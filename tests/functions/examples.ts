import type { Cell, Grid } from '../../src/tables/cell.ts';

/** A call as it stands in a cell, and what it should give, worked by hand beside it. */
export interface Example {
  readonly cells: readonly (Cell | Grid)[];
  readonly expected: number | readonly number[];
  /** how far the result may be off: the rounding of the source or of the working */
  readonly within: number;
}

const example = (
  cells: readonly (Cell | Grid)[],
  expected: number | readonly number[],
  within: number,
): Example => ({ cells, expected, within });

const envelope = [
  [1200, 97, 110],
  [2000, 97, 110],
  [2520, 103, 110],
];
const stations = [
  [80, 0, 200],
  [100, 100, 300],
  [120, 0, 50],
];

/** Every formula function by name. */
export const examples: Readonly<Record<string, readonly Example[]>> = {
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
  INSTALLED_WEIGHT: [
    // AC 43.13-1B, figure 10-10: 1,439 lb, 16,104 lb·in, 11.2 in (read); 16,104.4/1,439 = 11.1914
    example(
      [
        [
          [1169, 10.6],
          [17, -49],
          [170, 16],
          [83, 22],
        ],
      ],
      [1439, 11.1914, 16_104.4],
      1e-4,
    ),
  ],
  WEIGHT_DELTA: [
    // 320 − 280; 300 × 40 + 20 × 50 − 280 × 42
    example(
      [
        [
          [300, 40],
          [20, 50],
        ],
        [[280, 42]],
      ],
      [40, 1240],
      1e-9,
    ),
  ],
  EXPECTED_WEIGHT: [
    // 104 + 52 + 200 − 20; estimated: errors 8 and 4, ½ × 12² + ½ × (64 + 16) = 112; weighed: 1 and 0.1, 1.01; √113.01
    example(
      [
        [
          [100, 'estimated'],
          [50, 'Estimated'],
          [200, 'weighed'],
          [-20, 'weighed'],
        ],
        [
          ['estimated', 0.04, 0.08, 0.5],
          ['weighed', 0, 0.005, 0],
        ],
      ],
      [330, 336, 10.630_616],
      1e-6,
    ),
  ],
  CG_AFTER_CHANGE: [
    // FAA-H-8083-25, weight addition (from memory): 81.4; (6,680 × 80 + 140 × 150)/6,820
    example([6680, 80, 140, 150], 81.437, 5e-4),
    // Taken out: (1,000 × 90 − 100 × 40)/900
    example([1000, 90, -100, 40], 95.555_556, 1e-6),
  ],
  CG_PERCENT_MAC: [
    // FAA-H-8083-1B (from memory): 27.4; 17 × 100/62
    example([161, 144, 62], 27.419_355, 1e-6),
  ],
  BALLAST_WEIGHT: [
    // FAA-H-8083-1B, permanent ballast (inputs read, result from memory): 7.7; 1,876 × 0.8/195
    example([1876, 32.2, 33, 228], 7.696_41, 1e-5),
    example([1876, 33, 33, 228], 0, 0),
  ],
  USEFUL_LOAD: [example([2520, 1400], 1120, 1e-12), example([1500, 1600], -100, 1e-12)],
  PAYLOAD_FULL_FUEL: [
    example([2520, 1400, 42], 868, 1e-9), // 1,120 − 252
    example([2520, 1400, 42, 6.7], 838.6, 1e-9), // 1,120 − 281.4
    example([1600, 1500, 40], -140, 1e-9),
  ],
  WEIGHED_EMPTY_WEIGHT: [
    // FAA-H-8083-1B, nosewheel (from memory): nose 340, mains 1,666 net, 2,006 lb at 65,756/2,006 = 32.78
    example(
      [
        [[345], [836], [836]],
        [[5], [3], [3]],
        [[-32], [46], [46]],
      ],
      [2006, 32.779_661],
      1e-6,
    ),
  ],
  WHEEL_LOAD: [
    // The same backwards: (46 × 2,006 − 65,756)/78 = 340
    example([2006, 65_756 / 2006, -32, 46], [340, 1666], 1e-9),
    // A CG aft of the main wheels: the nosewheel does not stay down
    example([1000, 50, -30, 46], [(1000 * -4) / 76, 1000 + 4000 / 76], 1e-9),
  ],
  CG_MARGIN: [
    // Forward limit at 2,260: 97 + 6 × 260/520 = 100; 4 in behind it, 6 in ahead of 110
    example([2260, 104, envelope], 4, 1e-9),
    example([2260, 111, envelope], -1, 1e-9),
    example([1000, 98, envelope], 1, 1e-9), // below the first row its limits hold
  ],
  CG_EXTREME: [
    // Empty 1,000 at 90 with 100 always at 100: 1,100, 100,000, 90.9. Forward: 200 at 80 → 116,000/1,300; 100 and 120 are aft
    example([1000, 90, stations, 1400, 'forward'], [1300, 89.230_769], 1e-6),
    // Aft: 50 at 120 → 106,000/1,150 = 92.2; 200 at 100 → 126,000/1,350; 80 is forward
    example([1000, 90, stations, 1400, 'AFT'], [1350, 93.333_333], 1e-6),
    // Stopped by the maximum weight: 50 at 120, then 50 at 100 → 111,000/1,200
    example([1000, 90, stations, 1200, 'aft'], [1200, 92.5], 1e-9),
  ],
  CG_WORST_MARGIN: [
    // Of the two extremes above, 89.23 − 85 and 95 − 93.33
    example(
      [
        1000,
        90,
        stations,
        1400,
        [
          [1000, 85, 95],
          [1400, 85, 95],
        ],
      ],
      [1.666_667, 1350, 93.333_333],
      1e-6,
    ),
  ],
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
  FIREWALL_MOMENT: [
    // 300 × 20 + 20 × 10; what is behind the firewall does not count
    example(
      [
        [
          [300, 40],
          [20, 50],
          [10, 70],
        ],
        60,
      ],
      6200,
      1e-9,
    ),
    example(
      [
        [
          [300, 40],
          [20, 50],
          [10, 70],
        ],
        60,
        3.8,
      ],
      23_560,
      1e-8,
    ),
  ],
  MOUNT_TORQUE_LIMIT: [
    // 5,252.113 × 180/2,700 = 350.141 lbf·ft; 14 CFR 23.361: 2 for four cylinders, 1.33 for six
    example([180, 2700, 4], 700.282, 0.002),
    example([180, 2700, 6], 465.687, 0.002),
    // CS-VLA 361 (secondary): 3 for a two-stroke with two cylinders
    example([180, 2700, 2, 2], 1050.423, 0.003),
  ],
  BATTERY_MINUTES: [
    // 0.8 × 20 − 12 × 5/60 = 15 A·h; 5 + 60 × (15/6)^1.15
    example([20, 1, 12, 6], 177.1006, 1e-4),
    example([20, 1, 12, 6, 5, 0.8, 1.05], 162.032, 1e-3),
    // Empty before it is noticed: 16 A·h at 400 A
    example([20, 1, 400, 6], 2.4, 1e-9),
  ],
};
