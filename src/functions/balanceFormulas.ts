import {
  cgMargins,
  type Envelope,
  envelopeFrom,
  heaviest,
  weightTolerance,
} from '../engineering/envelope.ts';
import { extremeLoading, type Station } from '../engineering/loading.ts';
import { loadingPolygon } from '../engineering/loadingPolygon.ts';
import { worstMargins } from '../engineering/worstMargin.ts';
import { given, word } from './argument.ts';
import { type Formula, formula } from './formula.ts';
import { mustBe } from './messages.ts';
import { requireDistinct, rows } from './rowsArgument.ts';
import { emptyWeight, maximumWeight } from './sharedArguments.ts';

const emptyCg = given('empty_cg', { help: 'its centre of gravity, aft of the datum' });
const stations = rows(
  'stations',
  [{ name: 'arm' }, { name: 'minimum weight', atLeast: 0 }, { name: 'maximum weight', atLeast: 0 }],
  {
    help: 'rows of arm, minimum weight, maximum weight; tanks included',
    check: (records) => {
      for (const [, minimum, maximum, row] of records) {
        if (maximum < minimum)
          throw mustBe('stations maximum weight', `at least the minimum, ${minimum}`, maximum, {
            row,
            column: 3,
          });
      }
    },
  },
);
const envelope = rows(
  'envelope',
  [{ name: 'weight', above: 0 }, { name: 'forward limit' }, { name: 'aft limit' }],
  {
    help: 'rows of weight, forward limit, aft limit; straight lines between',
    check: (records) => {
      for (const [, forward, aft, row] of records) {
        if (forward >= aft)
          throw mustBe('envelope aft limit', `above the forward limit, ${forward}`, aft, { row, column: 3 });
      }
      requireDistinct(
        'envelope weight',
        records.map(([weight]) => weight),
        records.map(([, , , row]) => row),
      );
    },
  },
);

type ThreeColumns = readonly [number, number, number, row: number];

const asStations = (list: readonly ThreeColumns[]): Station[] =>
  list.map(([arm, minimum, maximum, row]) => ({ name: `row ${row}`, arm, minimum, maximum }));
const asEnvelope = (list: readonly ThreeColumns[]): Envelope =>
  envelopeFrom(list.map(([weight, forward, aft]) => ({ weight, forward, aft })));

/** The stations' least loads are always aboard. */
function requireRoom(weight: number, list: readonly Station[], maximum: number): void {
  const least = list.reduce((sum, { minimum }) => sum + minimum, weight);
  if (least > maximum * (1 + weightTolerance))
    throw mustBe('maximum_weight', `at least ${least}, empty with the minimum weights`, maximum);
}

export const balanceFormulas: readonly Formula[] = [
  formula({
    name: 'CG_MARGIN',
    help: 'Distance of a loading inside the nearer CG limit; negative = outside.',
    source: 'definition; limits are straight lines between the points, those of the first below it',
    arguments: [
      given('weight', { help: 'weight, not beyond the envelope', above: 0 }),
      given('cg', { help: 'centre of gravity, aft of the datum' }),
      envelope,
    ],
    results: [{ label: 'margin' }],
    compute: (weight, cg, limits) => cgMargins(asEnvelope(limits), weight, cg).nearest,
  }),
  formula({
    name: 'CG_EXTREME',
    help: 'Weight and CG of the loading that puts the CG as far forward or aft as the stations allow.',
    source: 'adverse-loaded CG checks of FAA AC 43.13-1B, chapter 10, generalised; exact',
    arguments: [
      emptyWeight,
      emptyCg,
      stations,
      maximumWeight,
      word('direction', ['forward', 'aft'], { help: '"forward" or "aft"' }),
    ],
    results: [{ label: 'weight' }, { label: 'CG' }],
    compute: (weight, cg, list, maximum, direction) => {
      const holds = asStations(list);
      requireRoom(weight, holds, maximum);
      const extreme = extremeLoading({ weight, moment: weight * cg }, holds, maximum, direction);
      return [extreme.weight, extreme.cg];
    },
  }),
  formula({
    name: 'CG_WORST_MARGIN',
    help: 'Smallest CG margin of all possible loadings, with the weight and CG where it occurs.',
    source: 'vertices, envelope points and stationary points of every edge of the loading polygon; exact',
    arguments: [emptyWeight, emptyCg, stations, maximumWeight, envelope],
    results: [{ label: 'margin' }, { label: 'weight' }, { label: 'CG' }],
    compute: (weight, cg, list, maximum, limits) => {
      const holds = asStations(list);
      requireRoom(weight, holds, maximum);
      const within = asEnvelope(limits);
      const polygon = loadingPolygon({
        empty: { weight, moment: weight * cg },
        stations: holds,
        tanks: [],
        maximumWeight: maximum,
      });
      const most = Math.max(...polygon.forward.map((loading) => loading.weight));
      if (most > heaviest(within) * (1 + weightTolerance))
        throw mustBe('maximum_weight', `at most ${heaviest(within)}, where the envelope ends`, maximum);
      const { worst } = worstMargins(polygon, within);
      return [worst.margin, worst.weight, worst.cg];
    },
  }),
];
