import { ballastWeight } from '../engineering/ballast.ts';
import { expectedMass } from '../engineering/expectedWeight.ts';
import { macFraction } from '../engineering/mac.ts';
import { centreOfGravity, total } from '../engineering/massItem.ts';
import { payloadWithFuel, usefulLoad } from '../engineering/payload.ts';
import { weigh } from '../engineering/weighing.ts';
import { afterChange, weightChange } from '../engineering/weightChange.ts';
import { wheelLoads } from '../engineering/wheelLoad.ts';
import { given } from './argument.ts';
import { type Formula, formula } from './formula.ts';
import { gallons, percent, pounds } from './measures.ts';
import { mustBe } from './messages.ts';
import { list, requireDistinct, rows } from './rowsArgument.ts';
import { emptyWeight, fuelDensity, maximumWeight } from './sharedArguments.ts';

const definition = 'definition; FAA AC 43.13-1B, chapter 10';
const components = (name: string, what: string) =>
  rows(name, [{ name: 'weight' }, { name: 'arm' }], {
    help: `${what}: rows of weight, arm; any units that agree, negative weight = removed`,
  });
const asItems = (list: readonly (readonly [number, number, row: number])[]) =>
  list.map(([weight, arm]) => ({ weight, arm }));

const share = { atLeast: 0, atMost: 1, hintBeyond: '4 % is 0.04' } as const;

const weight = given('weight', { help: 'weight, above 0', above: 0 });
const cg = given('cg', { help: 'centre of gravity, aft of the datum, in the unit of the arms' });

export const weightFormulas: readonly Formula[] = [
  formula({
    name: 'INSTALLED_WEIGHT',
    help: 'Weight, centre of gravity and moment of a list of components.',
    source: definition,
    arguments: [components('components', 'what is installed')],
    results: [{ label: 'weight' }, { label: 'CG' }, { label: 'moment' }],
    compute: (installed) => {
      const sum = total(asItems(installed));
      if (sum.weight === 0) throw mustBe('components', 'of a weight other than 0 together, to have a CG', 0);
      return [sum.weight, centreOfGravity(sum), sum.moment];
    },
  }),
  formula({
    name: 'WEIGHT_DELTA',
    help: 'By how much a candidate is heavier than the baseline, and its moment greater.',
    source: definition,
    arguments: [
      components('candidate_components', 'the candidate'),
      components('baseline_components', 'the baseline'),
    ],
    results: [{ label: 'weight' }, { label: 'moment' }],
    compute: (candidate, baseline) => {
      const change = weightChange(asItems(candidate), asItems(baseline));
      return [change.weight, change.moment];
    },
  }),
  formula({
    name: 'EXPECTED_WEIGHT',
    help: 'Nominal weight, expected weight and half-width of a build-up whose weights are known on different bases.',
    source: 'the idea of ANSI/AIAA S-120A: predicted = basic + growth allowance',
    arguments: [
      rows('components', [{ name: 'weight' }, { name: 'basis', text: true }], {
        help: 'rows of weight, basis',
      }),
      rows(
        'allowances',
        [
          { name: 'basis', text: true },
          { name: 'growth', ...share },
          { name: 'scatter', ...share },
          { name: 'correlation', ...share },
        ],
        {
          help: 'rows of basis, growth, scatter, correlation, as fractions or cells shown as per cent: 0.04 is 4 %',
          check: (records) =>
            requireDistinct(
              'allowances basis',
              records.map(([basis]) => basis),
              records.map(([, , , , row]) => row),
            ),
        },
      ),
    ],
    results: [{ label: 'nominal weight' }, { label: 'expected weight' }, { label: 'half-width' }],
    compute: (items, allowances) => {
      const bases = allowances.map(([basis]) => basis);
      for (const [, basis, row] of items) {
        if (!bases.includes(basis))
          throw mustBe('components basis', `one of the allowances, ${bases.join(', ')}`, basis, {
            row,
            column: 2,
          });
      }
      const mass = expectedMass(
        items.map(([itemWeight, basis]) => ({ weight: itemWeight, arm: 0, basis })),
        allowances.map(([basis, growth, scatter, correlation]) => ({ basis, growth, scatter, correlation })),
      );
      return [mass.nominal.weight, mass.expected.weight, mass.weightHalfWidth];
    },
  }),
  formula({
    name: 'CG_AFTER_CHANGE',
    help: 'Centre of gravity after a weight is added (or, negative, removed) at an arm.',
    source: 'definition; FAA-H-8083-25, weight addition and removal',
    arguments: [
      weight,
      cg,
      given('weight_change', { help: 'weight added; negative = removed' }),
      given('change_arm', { help: 'its arm, aft of the datum' }),
    ],
    results: [{ label: 'CG' }],
    compute: (before, at, change, arm) =>
      afterChange({ weight: before, moment: before * at }, { weight: change, moment: change * arm }).cg,
  }),
  formula({
    name: 'CG_PERCENT_MAC',
    help: 'Centre of gravity in per cent of the mean aerodynamic chord.',
    source: 'definition; FAA-H-8083-1B',
    arguments: [
      cg,
      given('mac_leading_edge', { help: 'leading edge of the mean aerodynamic chord, aft of the datum' }),
      given('mac_length', { help: 'length of the mean aerodynamic chord', above: 0 }),
    ],
    results: [{ label: '% MAC', measure: percent }],
    compute: macFraction,
  }),
  formula({
    name: 'BALLAST_WEIGHT',
    help: 'Ballast at an arm that brings the centre of gravity to a target.',
    source: 'moments about the target; FAA-H-8083-1B, permanent ballast',
    arguments: [
      weight,
      cg,
      given('target_cg', { help: 'where the CG should be' }),
      given('ballast_arm', { help: 'where the ballast can sit: beyond the target' }),
    ],
    results: [{ label: 'ballast' }],
    compute: (aircraft, at, target, ballast) => {
      if (at !== target && (target - at) * (ballast - target) <= 0) {
        const side = target > at ? 'aft' : 'forward';
        throw mustBe('ballast_arm', `${side} of target_cg, ${target}`, ballast);
      }
      return ballastWeight(aircraft, at, target, ballast);
    },
  }),
  formula({
    name: 'USEFUL_LOAD',
    help: 'Maximum weight less basic empty weight; negative is a shortfall.',
    source: definition,
    arguments: [maximumWeight, emptyWeight],
    results: [{ label: 'useful load' }],
    compute: usefulLoad,
  }),
  formula({
    name: 'PAYLOAD_FULL_FUEL',
    help: 'People and bags with all usable fuel aboard, lb; negative is a shortfall.',
    source: definition,
    arguments: [
      given('maximum_weight', { help: 'maximum weight, lb', above: 0, measure: pounds }),
      given('empty_weight', { help: 'basic empty weight, lb', above: 0, measure: pounds }),
      given('usable_fuel_gal', { help: 'usable fuel, US gal', atLeast: 0, measure: gallons }),
      fuelDensity,
    ],
    results: [{ label: 'payload', measure: pounds }],
    compute: (maximum, empty, usable, density) => payloadWithFuel(maximum, empty, usable * density),
  }),
  formula({
    name: 'WEIGHED_EMPTY_WEIGHT',
    help: 'Weight and centre of gravity from the scales: net = reading − tare at each point.',
    source: 'FAA AC 43.13-1B, chapter 10; FAA-H-8083-1B',
    arguments: [
      list('scale_readings', { help: 'reading of each scale', atLeast: 0 }),
      list('tares', { help: 'tare of each scale; 0 for none', atLeast: 0 }),
      list('arms', { help: 'arm of each weighing point, aft of the datum' }),
    ],
    results: [{ label: 'weight' }, { label: 'CG' }],
    compute: (readings, tares, arms) => {
      if (tares.length !== readings.length || arms.length !== readings.length) {
        throw new RangeError(
          `scale_readings, tares and arms must be equally many, got ${readings.length}, ${tares.length} and ${arms.length}`,
        );
      }
      const points = readings.map((reading, index) => ({
        reading,
        tare: tares[index] as number,
        arm: arms[index] as number,
        accuracy: 0,
      }));
      const net = points.reduce((sum, { reading, tare }) => sum + reading - tare, 0);
      if (net <= 0) throw mustBe('scale_readings', 'above the tares, all together', net);
      const { asWeighed } = weigh(points, [], []);
      return [asWeighed.weight, centreOfGravity(asWeighed)];
    },
  }),
  formula({
    name: 'WHEEL_LOAD',
    help: 'Static load of the nose or tail wheel and of the main wheels together.',
    source: 'moments about the main wheels',
    arguments: [
      weight,
      cg,
      given('nose_or_tail_wheel_arm', { help: 'nose or tail wheel, aft of the datum' }),
      given('main_wheel_arm', { help: 'main wheels, aft of the datum' }),
    ],
    results: [{ label: 'nose or tail wheel' }, { label: 'main wheels' }],
    compute: (aircraft, at, third, main) => {
      if (third === main) throw mustBe('nose_or_tail_wheel_arm', 'another than main_wheel_arm', third);
      const loads = wheelLoads(aircraft, at, third, main);
      return [loads.noseOrTail, loads.mains];
    },
  }),
];
