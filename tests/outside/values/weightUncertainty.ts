/** Expected weight and its half-width. */
import { fromFunction, type Topic } from '../publishedValue.ts';

const guide = 'JCGM 100:2008, 5.2.2, example';
const resistors = (correlation: number) =>
  fromFunction(
    'EXPECTED_WEIGHT',
    [Array.from({ length: 10 }, () => [1e6, 'calibrated']), [['calibrated', 0, 1e-4, correlation]]],
    2,
  );

export const weightUncertainty: Topic = {
  topic: 'weight growth and uncertainty',
  values: [
    {
      what: 'predicted weight of 100 estimated and 50 existing, allowances 18 and 2 %',
      source:
        'ANSI/AIAA S-120A, predicted = basic + allowance; allowances as in a public spacecraft mass script',
      status: 'secondary',
      expected: 169,
      tolerance: 1e-9,
      compute: () =>
        fromFunction(
          'EXPECTED_WEIGHT',
          [
            [
              [100, 'estimated'],
              [50, 'existing'],
            ],
            [
              ['estimated', 0.18, 0, 0],
              ['existing', 0.02, 0, 0],
            ],
          ],
          1,
        ),
    },
    {
      what: 'ten resistors of 1,000 Ω, each by 100 mΩ and all by the same standard: mΩ together',
      source: guide,
      status: 'from memory',
      expected: 1000,
      tolerance: 1e-6,
      compute: () => resistors(1),
    },
    {
      what: 'the same, were they independent',
      source: guide,
      status: 'from memory',
      expected: 320,
      tolerance: 5,
      compute: () => resistors(0),
    },
    {
      what: 'the same, more exactly',
      source: `${guide}: 100 √10`,
      status: 'derived',
      expected: 100 * Math.sqrt(10),
      tolerance: 1e-6,
      compute: () => resistors(0),
    },
  ],
};
