import { type Examples, example } from './example.ts';

export const weightExamples: Examples = {
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
};
