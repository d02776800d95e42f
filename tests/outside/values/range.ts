/** Range and endurance. */
import { breguetEndurance, breguetRange } from '../../../src/engineering/endurance.ts';
import { standardGravity } from '../../../src/units.ts';
import { fromFunction, type Topic } from '../publishedValue.ts';

const companion = 'Anderson, Introduction to Flight, example 6.12 (companion read, output computed from it)';
const book = 'Anderson, Introduction to Flight, example 6.12';
// Weights 13,127.5 and 11,495 N, fuel weight 2.0025 N in an hour and horsepower of 746 W
const bsfc = 2.0025 / (3600 * 746) / standardGravity;
const start = 13_127.5 / standardGravity;
const end = 11_495 / standardGravity;

export const range: Topic = {
  topic: 'range and endurance',
  values: [
    {
      what: 'range of the textbook aircraft, m',
      source: companion,
      status: 'derived',
      expected: 1_940_549,
      tolerance: 10,
      compute: () => breguetRange(0.8, 13.62, bsfc, start, end),
    },
    {
      what: 'its endurance, s',
      source: companion,
      status: 'derived',
      expected: 51_826,
      tolerance: 2,
      compute: () => breguetEndurance(0.8, 12.81, bsfc, 1.225, 16.165, start, end),
    },
    {
      what: 'its range, mi',
      source: book,
      status: 'from memory',
      expected: 1207,
      tolerance: 3,
      note: '0.45 lb/hp·h, 2,950 and 2,583.4 lb, L/D read off a plot',
      compute: () => fromFunction('RANGE_BREGUET', [0.8, 13.62, 0.45, 2950, 2583.4]) * 1.1507794,
    },
    {
      what: 'its endurance, h',
      source: book,
      status: 'from memory',
      expected: 14.4,
      tolerance: 0.05,
      compute: () => breguetEndurance(0.8, 12.81, bsfc, 1.225, 16.165, start, end) / 3600,
    },
    {
      what: 'range of 0.8, L/D 10, 0.5 lb/hp·h, 2,500 to 2,200 lb, mi',
      source: 'aircraft design textbooks: 375 (η/c) (L/D) ln(W₀/W₁)',
      status: 'derived',
      expected: 375 * (0.8 / 0.5) * 10 * Math.log(2500 / 2200),
      tolerance: 0.01,
      compute: () => fromFunction('RANGE_BREGUET', [0.8, 10, 0.5, 2500, 2200]) * 1.1507794,
    },
    {
      what: 'endurance of 28 gal at 9.5 gal/h, min',
      source: 'flight computer exercise on a training page',
      status: 'read',
      expected: 176.8,
      tolerance: 0.05,
      compute: () => 60 * fromFunction('ENDURANCE', [28, 9.5, 0]),
    },
  ],
};
