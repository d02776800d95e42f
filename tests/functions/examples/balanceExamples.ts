import { type Examples, example } from './example.ts';

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

export const balanceExamples: Examples = {
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
};
