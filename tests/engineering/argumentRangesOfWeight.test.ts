/** Ranges of the arguments: weights and arms, limits, loadings, weighing, wheels. */
import { describe, expect, test } from 'vitest';
import { ballastWeight, weightToMove } from '../../src/engineering/ballast.ts';
import { cgMargins, envelopeFrom, limitsAt } from '../../src/engineering/envelope.ts';
import { expectedCg, expectedMass } from '../../src/engineering/expectedWeight.ts';
import { extremeLoading, loadedWith } from '../../src/engineering/loading.ts';
import { loadingPolygon } from '../../src/engineering/loadingPolygon.ts';
import { loadingRegion } from '../../src/engineering/loadingRegion.ts';
import { cgAtMacFraction, macFraction } from '../../src/engineering/mac.ts';
import { airframeWithoutPowerplant, centreOfGravity, total } from '../../src/engineering/massItem.ts';
import { fuelWithCabinLoad, payloadWithFuel, usefulLoad } from '../../src/engineering/payload.ts';
import { armHalfWidth, singleCause } from '../../src/engineering/singleCause.ts';
import { unexplained, weigh } from '../../src/engineering/weighing.ts';
import {
  afterChange,
  isNegligibleChange,
  negligibleWeightChange,
} from '../../src/engineering/weightChange.ts';
import { noseOverAngle, tipBackAngle, wheelLoads } from '../../src/engineering/wheelLoad.ts';
import { above, atLeast, between, finite, testRanges } from './argumentRange.ts';

const weight = above(0, '', 700);

testRanges('ballastWeight', ballastWeight, {
  weight,
  cg: finite(2),
  targetCg: finite(2.1),
  ballastArm: finite(5),
});
testRanges('weightToMove', weightToMove, {
  weight,
  cg: finite(2),
  targetCg: finite(2.1),
  fromArm: finite(1),
  toArm: finite(3),
});
const mac = { leadingEdge: finite(1.8), length: above(0, '', 1.4) };
testRanges('macFraction', macFraction, { cg: finite(2.1), ...mac });
testRanges('cgAtMacFraction', cgAtMacFraction, { fraction: finite(0.25), ...mac });

testRanges('total', (pounds, arm) => total([{ weight: pounds!, arm: arm! }]).moment, {
  weight: finite(-20),
  arm: finite(1),
});
testRanges('centreOfGravity', (pounds, moment) => centreOfGravity({ weight: pounds!, moment: moment! }), {
  weight: finite(700),
  moment: finite(1400),
});
testRanges(
  'afterChange',
  (before) => afterChange({ weight: before!, moment: 1400 }, { weight: 20, moment: 30 }).cg,
  {
    'weight before the change': above(0, '', 700),
  },
);
testRanges('negligibleWeightChange', negligibleWeightChange, { emptyWeight: above(0, 'kg', 500) });
testRanges('isNegligibleChange', isNegligibleChange, {
  emptyWeight: above(0, 'kg', 500),
  weightDifference: finite(-0.2),
  cgShift: finite(0.0001),
  macLength: above(0, 'm', 1.4),
});

testRanges('usefulLoad', usefulLoad, { maximumWeight: above(0, '', 1100), emptyWeight: above(0, '', 700) });
testRanges('payloadWithFuel', (fuel) => payloadWithFuel(1100, 700, fuel!), {
  fuelWeight: atLeast(0, '', 100),
});
testRanges('fuelWithCabinLoad', (cabin, fuel) => fuelWithCabinLoad(1100, 700, cabin!, fuel!), {
  cabinLoad: atLeast(0, '', 200),
  usableFuelWeight: atLeast(0, '', 120),
});

const corners = [
  { weight: 700, forward: 2, aft: 2.3 },
  { weight: 1100, forward: 2.1, aft: 2.3 },
];
testRanges(
  'envelopeFrom',
  (pounds, forward) => envelopeFrom([{ weight: pounds!, forward: forward!, aft: 2.3 }]).points,
  { 'weight in the envelope': above(0, '', 700), 'forward limit': finite(2) },
);
testRanges('envelopeFrom', (aft) => envelopeFrom([{ weight: 700, forward: 2, aft: aft! }]).points, {
  'aft limit at 700': above(2, '(the forward limit)', 2.3),
});
testRanges('limitsAt', (pounds) => limitsAt(envelopeFrom(corners), pounds!).aft, {
  weight: above(0, '', 900),
});
testRanges('cgMargins', (pounds, cg) => cgMargins(envelopeFrom(corners), pounds!, cg!).nearest, {
  weight: above(0, '', 900),
  cg: finite(2.2),
});

const allowance = (growth: number, scatter: number, correlation: number) => [
  { basis: 'estimated', growth, scatter, correlation },
];
const estimated = [{ weight: 100, arm: 1, basis: 'estimated' }];
testRanges(
  'expectedMass',
  (growth, scatter, correlation) =>
    expectedMass(estimated, allowance(growth!, scatter!, correlation!)).weightHalfWidth,
  {
    'growth of estimated': above(-1, '', 0.05),
    'scatter of estimated': atLeast(0, '', 0.03),
    'correlation of estimated': between(0, 1, '', 0.5),
  },
);
testRanges(
  'expectedCg',
  (pounds) => expectedCg([{ weight: pounds!, arm: 2, basis: 'estimated' }], allowance(0, 0.01, 0)).cg,
  { weight: finite(700) },
);

const bag = { name: 'bag', arm: 3, minimum: 0, maximum: 50 };
const empty = { weight: 700, moment: 1400 };
const loadedStations = (arm: number, minimum: number, maximum: number) =>
  extremeLoading(empty, [{ name: 'bag', arm, minimum, maximum }], 1100, 'aft').cg;
testRanges('stations', (arm, minimum, maximum) => loadedStations(arm!, minimum!, maximum!), {
  'arm of bag': finite(3),
  'minimum of bag': atLeast(0, '', 10),
  'maximum of bag': atLeast(10, '(its minimum)', 50),
});
testRanges('loadedWith', (pounds) => loadedWith({ ...empty, weight: pounds! }, [bag], [20]).cg, {
  'empty weight': above(0, '', 700),
});
const limits = { empty, stations: [bag], tanks: [], maximumWeight: 1100 };
testRanges(
  'loadingPolygon',
  (pounds) => loadingPolygon({ ...limits, empty: { ...empty, weight: pounds! } }).aft,
  { 'empty weight': above(0, '', 700) },
);
testRanges('loadingRegion', (steps) => loadingRegion(loadingPolygon(limits), steps!), {
  steps: atLeast(1, '', 4),
});

const main = { reading: 300, tare: 2, arm: 2.4, accuracy: 0.5, armAccuracy: 0.002 };
testRanges(
  'weigh',
  (reading, tare, accuracy, armAccuracy) =>
    weigh(
      [main, { reading: reading!, tare: tare!, arm: 0.8, accuracy: accuracy!, armAccuracy: armAccuracy! }],
      [],
      [],
    ).cgHalfWidth,
  {
    reading: finite(120),
    tare: atLeast(0, '', 3),
    accuracy: atLeast(0, '', 0.5),
    armAccuracy: atLeast(0, '', 0.002),
  },
);
const weighed = { basicEmpty: empty, weightHalfWidth: 0.7, cgHalfWidth: 0.002 };
testRanges(
  'unexplained',
  (pounds, weightHalfWidth, cgHalfWidth) =>
    unexplained(weighed, {
      expected: { weight: pounds!, moment: 1380 },
      weightHalfWidth: weightHalfWidth!,
      cgHalfWidth: cgHalfWidth!,
    }).cg,
  {
    'predicted weight': above(0, '', 690),
    'predicted weightHalfWidth': atLeast(0, '', 5),
    'predicted cgHalfWidth': atLeast(0, '', 0.01),
  },
);
const scatter = { weight: 0.5, both: 1, moment: 3 };
testRanges(
  'singleCause',
  (arm, halfWidth) => singleCause({ weight: 3, moment: 4 }, scatter, arm!, halfWidth!).distance,
  { arm: finite(1), halfWidth: above(0, '', 2) },
);
testRanges('armHalfWidth', (pounds) => armHalfWidth({ weight: -pounds!, moment: 4 }, scatter), {
  'weight of the difference': above(0, '', 3),
});

testRanges('wheelLoads', (pounds, cg, nose, mains) => wheelLoads(pounds!, cg!, nose!, mains!).mains, {
  weight,
  cg: finite(2.1),
  noseOrTailWheelArm: finite(0.5),
  mainWheelArm: finite(2.4),
});
const balance = { cg: finite(2.1), cgHeight: above(0, '', 0.9), mainWheelArm: finite(2.4) };
testRanges('tipBackAngle', tipBackAngle, balance);
testRanges('noseOverAngle', noseOverAngle, balance);

describe('what is left of a weight must be above 0', () => {
  const all = { weight: 298, arm: 2 };
  test.each([
    [
      'weight of the airframe without powerplant',
      () => airframeWithoutPowerplant({ weight: 298, moment: 596 }, [all]),
    ],
    [
      'weight after the change',
      () => afterChange({ weight: 298, moment: 596 }, { weight: -298, moment: -596 }),
    ],
    ['as-weighed weight', () => weigh([{ ...main, reading: main.tare }], [], [])],
    ['basic empty weight', () => weigh([main], [all], [])],
    ['expected weight', () => expectedCg([{ weight: 0, arm: 2, basis: 'estimated' }], allowance(0, 0.01, 0))],
  ])('%s', (name, call) => {
    expect(call).toThrow(new RangeError(`${name} must be above 0, got 0`));
  });
});
