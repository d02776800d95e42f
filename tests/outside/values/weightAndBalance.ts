/** Loadings, changes of weight, ballast, MAC. Pounds and inches unless said otherwise. */
import { weightToMove } from '../../../src/engineering/ballast.ts';
import { cgAtMacFraction } from '../../../src/engineering/mac.ts';
import { negligibleWeightChange } from '../../../src/engineering/weightChange.ts';
import { fromSi, toSi } from '../../../src/units.ts';
import { fromFunction, type PublishedValue, type Topic } from '../publishedValue.ts';

const circular = 'FAA AC 43.13-1B, chapter 10';
const handbook = 'FAA-H-8083-1B, Weight and Balance Handbook';
const pilotsHandbook = "FAA-H-8083-25, Pilot's Handbook, weight and balance";
const questionBank = 'EASA question-bank style exercises';

// Figures 10-10 to 10-14: one aircraft
const empty = [1169, 10.6] as const;
const oil = [17, -49] as const;
const pilot = [170, 16] as const;
const frontPassenger = [170, 16] as const;
const rearPassengers = [340, 48] as const;
const baggage = [100, 75.5] as const;
const fuel = (pounds: number) => [pounds, 22] as const;

/** Weight, CG and moment of a loading: results 0, 1 and 2 of INSTALLED_WEIGHT. */
function loading(
  figure: string,
  rows: readonly (readonly [number, number])[],
  published: { weight?: number; moment?: number; cg?: number },
): PublishedValue[] {
  const value = (what: string, expected: number | undefined, tolerance: number, result: number) =>
    expected === undefined
      ? []
      : [
          {
            what: `${what}, ${figure}`,
            source: `${circular}, ${figure}`,
            status: 'read' as const,
            expected,
            tolerance,
            compute: () => fromFunction('INSTALLED_WEIGHT', [rows], result),
          },
        ];
  return [
    ...value('loaded weight', published.weight, 1e-9, 0),
    ...value('CG', published.cg, 0.05, 1),
    ...value('moment', published.moment, 0.5, 2),
  ];
}

const foremost = [empty, oil, pilot, fuel(83)];
const rearmost = [empty, oil, pilot, rearPassengers, fuel(240), baggage];
const fourAboard = [empty, oil, pilot, frontPassenger, rearPassengers, fuel(234)];
const bagsAboard = [empty, oil, pilot, frontPassenger, [170, 48] as const, fuel(240), baggage];

/** Arm, minimum, maximum. Fuel from the minimum that the circular rounds to 83 lb. */
const stations = [
  [-49, 17, 17],
  [16, 170, 170],
  [16, 0, 170],
  [48, 0, 340],
  [22, 83, 240],
  [75.5, 0, 100],
];
const limits = [
  [1000, 8.5, 21.9],
  [2100, 8.5, 21.9],
];

function extreme(figure: string, direction: string, weight: number, cg: number): PublishedValue[] {
  const value = (what: string, expected: number, tolerance: number, result: number) => ({
    what: `${what} of the most ${direction} loading`,
    source: `${circular}, ${figure}`,
    status: 'read' as const,
    expected,
    tolerance,
    compute: () => fromFunction('CG_EXTREME', [...empty, stations, 2100, direction], result),
  });
  return [value('weight', weight, 1e-9, 0), value('CG', cg, 0.05, 1)];
}

const pounds = (value: number) => toSi('mass', value, 'lb');

export const weightAndBalance: Topic = {
  topic: 'weight and balance',
  values: [
    ...loading('figure 10-10', foremost, { weight: 1439, moment: 16_104, cg: 11.2 }),
    ...loading('figure 10-11', rearmost, { weight: 2036, moment: 43_428, cg: 21.3 }),
    ...loading('figure 10-13', fourAboard, { weight: 2100, moment: 38_466 }),
    {
      what: 'CG, figure 10-13',
      source: `${circular}, figure 10-13: 38,466/2,100`,
      status: 'derived',
      expected: 18.32,
      tolerance: 0.005,
      note: 'the figure prints 18.6: see the misprints',
      compute: () => fromFunction('INSTALLED_WEIGHT', [fourAboard], 1),
    },
    ...loading('figure 10-14', bagsAboard, { moment: 37_988, cg: 18.7 }),
    ...extreme('figure 10-10', 'forward', 1439, 11.2),
    ...extreme('figure 10-11', 'aft', 2036, 21.3),
    {
      what: 'difference in weight, figure 10-11 less figure 10-10',
      source: `${circular}: 2,036 − 1,439`,
      status: 'derived',
      expected: 597,
      tolerance: 1e-9,
      compute: () => fromFunction('WEIGHT_DELTA', [rearmost, foremost]),
    },
    {
      what: 'difference in moment, figure 10-11 less figure 10-10',
      source: `${circular}: 43,428 − 16,104`,
      status: 'derived',
      expected: 27_324,
      tolerance: 1,
      compute: () => fromFunction('WEIGHT_DELTA', [rearmost, foremost], 1),
    },
    {
      what: 'margin of the most forward loading to 8.5',
      source: `${circular}, figure 10-10: 16,104/1,439 − 8.5`,
      status: 'derived',
      expected: 2.69,
      tolerance: 0.005,
      compute: () => fromFunction('CG_MARGIN', [1439, 16_104 / 1439, limits]),
    },
    {
      what: 'worst margin of all loadings, to 21.9',
      source: `${circular}, figure 10-11: 21.9 − 43,428/2,036`,
      status: 'derived',
      expected: 0.57,
      tolerance: 0.005,
      compute: () => fromFunction('CG_WORST_MARGIN', [...empty, stations, 2100, limits]),
    },
    {
      what: 'weight at the worst margin',
      source: `${circular}, figure 10-11`,
      status: 'read',
      expected: 2036,
      tolerance: 1e-9,
      compute: () => fromFunction('CG_WORST_MARGIN', [...empty, stations, 2100, limits], 1),
    },
    {
      what: 'useful load, maximum 2,100, empty 1,169',
      source: `${circular}, 10-2d: maximum less empty weight`,
      status: 'derived',
      expected: 931,
      tolerance: 1e-9,
      compute: () => fromFunction('USEFUL_LOAD', [2100, 1169]),
    },
    {
      what: 'payload with 39 gal: four of 170',
      source: `${circular}, figure 10-13`,
      status: 'read',
      expected: 680,
      tolerance: 1e-9,
      note: 'oil counted into the empty weight; fuel at the 6 lb/gal of 10-2p',
      compute: () => fromFunction('PAYLOAD_FULL_FUEL', [2100, 1169 + 17, 39]),
    },
    ...[
      ['smaller aircraft', 5_000, 1.5], // 1 lb up to it, 2 lb beyond
      ['larger aircraft', 50_000, 3], // 2 lb up to it, 5 lb beyond
    ].map(
      ([size, limit, between]): PublishedValue => ({
        what: `empty weight up to which the negligible change is that of ${size}`,
        source: `${circular}, 10-2c (change 1)`,
        status: 'read',
        expected: limit as number,
        tolerance: 0.01,
        compute: () => {
          const small = (weight: number) =>
            fromSi('mass', negligibleWeightChange(pounds(weight)), 'lb') < (between as number);
          let [inside, outside] = [100, 1e6];
          while (outside - inside > 0.001) {
            const middle = (inside + outside) / 2;
            if (small(middle)) inside = middle;
            else outside = middle;
          }
          return inside;
        },
      }),
    ),
    ...[
      [1_200, 1],
      [4_999, 1],
      [12_500, 2],
      [60_000, 5],
    ].map(
      ([emptyWeight, negligible]): PublishedValue => ({
        what: `negligible weight change, empty weight ${emptyWeight}`,
        source: `${circular}, 10-2c (change 1)`,
        status: 'read',
        expected: negligible as number,
        tolerance: 1e-9,
        compute: () => fromSi('mass', negligibleWeightChange(pounds(emptyWeight as number)), 'lb'),
      }),
    ),
    {
      what: 'permanent ballast at station 228 for 1,876 at 32.2, limit 33',
      source: `${handbook}, permanent ballast (1,876 and 32.2 read)`,
      status: 'from memory',
      expected: 7.7,
      tolerance: 0.05,
      compute: () => fromFunction('BALLAST_WEIGHT', [1876, 32.2, 33, 228]),
    },
    {
      what: 'weight to move from 150 to 30 in 7,800 at 81.5, limit 80.5',
      source: `${pilotsHandbook}, weight shifting`,
      status: 'secondary',
      expected: 65,
      tolerance: 1e-9,
      compute: () => weightToMove(7800, 81.5, 80.5, 150, 30),
    },
    {
      what: 'CG of 6,680 at 80 with 140 added at 150',
      source: `${pilotsHandbook}, weight addition`,
      status: 'from memory',
      expected: 81.4,
      tolerance: 0.05,
      compute: () => fromFunction('CG_AFTER_CHANGE', [6680, 80, 140, 150]),
    },
    {
      what: 'shift of the CG of 6,860 at 80 with 140 added at 150',
      source: `${pilotsHandbook}, weight addition, as a training site quotes it`,
      status: 'secondary',
      expected: 1.4,
      tolerance: 1e-9,
      compute: () => fromFunction('CG_AFTER_CHANGE', [6860, 80, 140, 150]) - 80,
    },
    {
      what: 'CG of 5,000 at 80 with 35.9 added at 150, the most that the limit of 80.5 allows',
      source: 'FAA knowledge-test item',
      status: 'secondary',
      expected: 80.5,
      tolerance: 0.001,
      compute: () => fromFunction('CG_AFTER_CHANGE', [5000, 80, 35.9, 150]),
    },
    {
      what: 'CG of a board with 100 at 50, 100 at 90, 200 at 150',
      source: `${handbook}, chapter 2, law of the lever`,
      status: 'from memory',
      expected: 110,
      tolerance: 1e-9,
      compute: () =>
        fromFunction(
          'INSTALLED_WEIGHT',
          [
            [
              [100, 50],
              [100, 90],
              [200, 150],
            ],
          ],
          1,
        ),
    },
    {
      what: 'weight to move by 40 on that board to bring its CG to 100',
      source: `${handbook}, chapter 2, shifting the CG`,
      status: 'from memory',
      expected: 100,
      tolerance: 1e-9,
      compute: () => weightToMove(400, 110, 100, 90, 50),
    },
    {
      what: 'CG 161 on a MAC from 144 to 206, %',
      source: `${handbook}, CG in per cent MAC`,
      status: 'from memory',
      expected: 27.4,
      tolerance: 0.05,
      compute: () => fromFunction('CG_PERCENT_MAC', [161, 144, 62]),
    },
    {
      what: 'CG at 15 % of a MAC of 134.5 from 625.6',
      source: questionBank,
      status: 'secondary',
      expected: 645.78,
      tolerance: 0.01,
      compute: () => cgAtMacFraction(0.15, 625.6, 134.5),
    },
  ],
  misprints: [
    {
      what: 'CG, figure 10-13',
      source: `${circular}, figure 10-13`,
      status: 'read',
      printed: 18.6,
      tolerance: 0.05,
      note: '38,466/2,100 is 18.32',
      compute: () => fromFunction('INSTALLED_WEIGHT', [fourAboard], 1),
    },
    {
      what: 'loaded weight, figure 10-14',
      source: `${circular}, figure 10-14, in a stored copy`,
      status: 'read',
      printed: 20_366,
      tolerance: 0.5,
      note: 'the rows add up to 2,036',
      compute: () => fromFunction('INSTALLED_WEIGHT', [bagsAboard], 0),
    },
  ],
};
