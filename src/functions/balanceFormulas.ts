import { cgMargins, envelopeFrom } from '../engineering/envelope.ts';
import { extremeLoading } from '../engineering/loading.ts';
import { loadingPolygon } from '../engineering/loadingPolygon.ts';
import { worstMargins } from '../engineering/worstMargin.ts';
import { given, rows, word } from './argument.ts';
import { type Formula, formula } from './formula.ts';

const emptyWeight = given('empty_weight', { help: 'basic empty weight', above: 0 });
const emptyCg = given('empty_cg', { help: 'its centre of gravity, aft of the datum' });
const maximumWeight = given('maximum_weight', { help: 'maximum weight', above: 0 });
const stations = rows(
  'stations',
  [{ name: 'arm' }, { name: 'minimum weight', atLeast: 0 }, { name: 'maximum weight', atLeast: 0 }],
  { help: 'rows of arm, minimum weight, maximum weight; tanks included' },
);
const envelope = rows(
  'envelope',
  [{ name: 'weight', above: 0 }, { name: 'forward limit' }, { name: 'aft limit' }],
  { help: 'rows of weight, forward limit, aft limit; straight lines between' },
);

type StationRow = readonly [number, number, number];
type EnvelopeRow = readonly [number, number, number];

const asStations = (list: readonly StationRow[]) =>
  list.map(([arm, minimum, maximum], index) => ({ name: `station ${index + 1}`, arm, minimum, maximum }));
const asEnvelope = (list: readonly EnvelopeRow[]) =>
  envelopeFrom(list.map(([weight, forward, aft]) => ({ weight, forward, aft })));

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
      const extreme = extremeLoading({ weight, moment: weight * cg }, asStations(list), maximum, direction);
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
      const polygon = loadingPolygon({
        empty: { weight, moment: weight * cg },
        stations: asStations(list),
        tanks: [],
        maximumWeight: maximum,
      });
      const { worst } = worstMargins(polygon, asEnvelope(limits));
      return [worst.margin, worst.weight, worst.cg];
    },
  }),
];
