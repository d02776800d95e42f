/** Weighings, and wheel loads, which are weighings turned round. Pounds and inches unless said otherwise. */
import { weigh } from '../../../src/engineering/weighing.ts';
import { fromFunction, type Topic } from '../publishedValue.ts';

const handbook = 'FAA-H-8083-1B, Weight and Balance Handbook';
const questionBank = 'EASA question-bank style exercises';

/** Readings and arms; no tares. Results: weight, CG. */
const weighed = (readings: readonly number[], arms: readonly number[], result: number) =>
  fromFunction('WEIGHED_EMPTY_WEIGHT', [[readings], [readings.map(() => 0)], [arms]], result);

export const weighing: Topic = {
  topic: 'weighing',
  values: [
    {
      what: 'weighed empty weight, nosewheel 340 at −32, mains 1,666 at 46',
      source: `${handbook}, nosewheel aircraft, datum at the firewall`,
      status: 'from memory',
      expected: 2006,
      tolerance: 1e-9,
      compute: () => weighed([340, 1666], [-32, 46], 0),
    },
    {
      what: 'weighed empty CG of the same',
      source: `${handbook}, nosewheel aircraft, datum at the firewall`,
      status: 'from memory',
      expected: 32.8,
      tolerance: 0.05,
      compute: () => weighed([340, 1666], [-32, 46], 1),
    },
    {
      what: 'empty CG from the main wheels',
      source: `${handbook}, electronic calculator example, as a training site prints it`,
      status: 'read',
      expected: -13.2,
      tolerance: 0.05,
      compute: () => weighed([340, 1666], [-78, 0], 1),
    },
    {
      what: 'empty CG, datum 128 ahead of the main wheels',
      source: `${handbook}, datum forward of the airplane, nosewheel`,
      status: 'from memory',
      expected: 114.8,
      tolerance: 0.05,
      compute: () => weighed([340, 1666], [50, 128], 1),
    },
    {
      what: 'empty CG, datum 75 behind the main wheels',
      source: `${handbook}, datum aft of the main wheels, nosewheel`,
      status: 'from memory',
      expected: -88.2,
      tolerance: 0.05,
      compute: () => weighed([340, 1666], [-153, -75], 1),
    },
    {
      what: 'empty CG, tailwheel 67 of 1,218, 222 behind mains at 7.5',
      source: `${handbook}, datum forward of the main wheels, tailwheel`,
      status: 'from memory',
      expected: 19.7,
      tolerance: 0.05,
      compute: () => weighed([67, 1151], [229.5, 7.5], 1),
    },
    {
      what: 'empty CG of the same, datum 80 behind the mains',
      source: `${handbook}, datum aft of the main wheels, tailwheel`,
      status: 'from memory',
      expected: -67.8,
      tolerance: 0.05,
      compute: () => weighed([67, 1151], [142, -80], 1),
    },
    {
      what: 'nosewheel load of 2,006 at 65,756/2,006',
      source: `${handbook}, nosewheel weighing turned round`,
      status: 'from memory',
      expected: 340,
      tolerance: 1e-6,
      compute: () => fromFunction('WHEEL_LOAD', [2006, 65_756 / 2006, -32, 46]),
    },
    {
      what: 'main wheel load of 2,006 at 65,756/2,006',
      source: `${handbook}, nosewheel weighing turned round`,
      status: 'from memory',
      expected: 1666,
      tolerance: 1e-6,
      compute: () => fromFunction('WHEEL_LOAD', [2006, 65_756 / 2006, -32, 46], 1),
    },
    {
      what: 'weight on three jacks, kg',
      source: questionBank,
      status: 'secondary',
      expected: 42_054,
      tolerance: 1e-9,
      compute: () => weighed([6488, 17_783, 17_783], [161, 775, 775], 0),
    },
    {
      what: 'CG on three jacks',
      source: questionBank,
      status: 'secondary',
      expected: 680.3,
      tolerance: 0.05,
      compute: () => weighed([6488, 17_783, 17_783], [161, 775, 775], 1),
    },
    {
      what: 'CG aft of the nosewheel, 285, 1,465 and 1,395 kg on 92',
      source: questionBank,
      status: 'secondary',
      expected: 83.7,
      tolerance: 0.05,
      compute: () => weighed([285, 1465, 1395], [0, 92, 92], 1),
    },
    {
      what: 'empty mass of 5,330, 12,370 and 12,480 kg on the wheels with 1,780 kg of operational items, kg',
      source: questionBank,
      status: 'secondary',
      expected: 28_400,
      tolerance: 1e-9,
      compute: () => {
        const points = [5330, 12_370, 12_480].map((reading) => ({ reading, tare: 0, arm: 1, accuracy: 0 }));
        return weigh(points, [{ weight: 1780, arm: 1 }], []).basicEmpty.weight;
      },
    },
  ],
};
