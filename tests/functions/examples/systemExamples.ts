import { type Examples, example } from './example.ts';

export const systemExamples: Examples = {
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
    example([20, 1, 12, 6, 5, 0.8, 1.05], 162.032, 1e-3), // 5 + 60 × (15/6)^1.05
    // Empty before it is noticed: 16 A·h at 400 A
    example([20, 1, 400, 6], 2.4, 1e-9),
  ],
};
