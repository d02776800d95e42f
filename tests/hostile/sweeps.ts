/** Inputs swept over a range, in SI, each on one package of a sample: how a catalogue is changed, and what is read of it. */
import type { Airframe } from '../../src/tables/airframe.ts';
import type { Catalogue } from '../../src/tables/catalogue.ts';
import type { Mission } from '../../src/tables/mission.ts';
import type { Package } from '../../src/tables/packages.ts';
import { sampleCatalogue } from '../assessment/sampleCatalogue.ts';
import type { Part } from './steady.ts';

export interface Sweep {
  readonly what: string;
  readonly package: string;
  readonly from: number;
  readonly to: number;
  readonly reads: readonly Part[];
  readonly at: (x: number) => Catalogue;
}

type Rows =
  | 'components'
  | 'equipment'
  | 'tanks'
  | 'stations'
  | 'envelope'
  | 'fuelPoints'
  | 'powerPoints'
  | 'cooling'
  | 'knownPoints';
type Row<T extends Rows> = Catalogue[T][number];
type Range = readonly [from: number, to: number];

const catalogues = { godwit: sampleCatalogue('godwit'), sanderling: sampleCatalogue('sanderling') };
type Sample = keyof typeof catalogues;

const sweep = (
  sample: Sample,
  packageName: string,
  what: string,
  [from, to]: Range,
  reads: readonly Part[],
  change: (catalogue: Catalogue, x: number) => Partial<Catalogue>,
): Sweep => {
  const catalogue = catalogues[sample];
  return {
    what: `${packageName}, ${what}`,
    package: packageName,
    from,
    to,
    reads,
    at: (x) => ({ ...catalogue, ...change(catalogue, x) }),
  };
};

/** An attribute of the mission, the airframe or the package takes the values. */
const ofMission = (sample: Sample, name: string, key: keyof Mission, range: Range, reads: readonly Part[]) =>
  sweep(sample, name, `mission ${key}`, range, reads, ({ mission }, x) => ({
    mission: { ...mission, [key]: x },
  }));
const ofAirframe = (
  sample: Sample,
  name: string,
  key: keyof Airframe,
  range: Range,
  reads: readonly Part[],
) =>
  sweep(sample, name, `airframe ${key}`, range, reads, ({ airframe }, x) => ({
    airframe: { ...airframe, [key]: x },
  }));
const ofPackage = (sample: Sample, name: string, key: keyof Package, range: Range, reads: readonly Part[]) =>
  sweep(sample, name, `package ${key}`, range, reads, ({ packages }, x) => ({
    packages: packages.map((each) => (each.name === name ? { ...each, [key]: x } : each)),
  }));

/** A column of a table of rows is multiplied, in the rows that are picked. */
const ofRows = <T extends Rows>(
  sample: Sample,
  name: string,
  table: T,
  key: keyof Row<T>,
  range: Range,
  reads: readonly Part[],
  picks: (row: Row<T>) => boolean = () => true,
  add = false,
) =>
  sweep(sample, name, `${table} ${String(key)}`, range, reads, (catalogue, x) => ({
    [table]: (catalogue[table] as readonly Row<T>[]).map((row) => {
      const value = row[key];
      return typeof value === 'number' && picks(row) ? { ...row, [key]: add ? value + x : value * x } : row;
    }),
  }));

/** An optional item is aboard. */
const withOption = (
  sample: Sample,
  name: string,
  item: string,
  key: 'weight' | 'arm' | 'dragArea' | 'price',
  range: Range,
  reads: readonly Part[],
) =>
  sweep(sample, name, `${item}: ${key}`, range, reads, ({ equipment }, x) => ({
    equipment: equipment.map((row) => (row.name === item ? { ...row, fitted: true, [key]: x } : row)),
  }));

const air: readonly Part[] = ['flight', 'cooling', 'range', 'mission'];
const loads: readonly Part[] = ['weight', 'balance', 'range', 'mission'];
const ground: readonly Part[] = ['weight', 'balance'];

const fliers = [
  ['godwit', 'Rowan'],
  ['godwit', 'Larch'],
  ['godwit', 'Hazel'],
  ['sanderling', 'Sorrel'],
  ['sanderling', 'Clover'],
] as const;

export const sweeps: readonly Sweep[] = [
  ...fliers.flatMap(([sample, name]) => [
    ofMission(sample, name, 'cruiseAltitude', [300, 7500], ['flight', 'fuel', 'range', 'mission']),
    ofMission(sample, name, 'elevation', [-200, 3000], air),
    ofMission(sample, name, 'temperature', [250, 325], air),
    ofMission(sample, name, 'cruiseSetting', [0.4, 1], ['fuel', 'range', 'mission']),
    ofAirframe(sample, name, 'maximumTakeoffWeight', sample === 'godwit' ? [950, 1250] : [480, 640], [
      ...ground,
      ...air,
    ]),
  ]),
  ofMission('godwit', 'Rowan', 'destinationElevation', [-200, 3000], ['mission']),
  ofMission('godwit', 'Rowan', 'destinationTemperature', [250, 325], ['mission']),
  ofMission('godwit', 'Rowan', 'distance', [20e3, 1200e3], ['mission']),
  ofMission('sanderling', 'Sorrel', 'distance', [20e3, 1200e3], ['mission']),
  ofMission('godwit', 'Rowan', 'headwind', [-30, 40], ['mission']),
  ofMission('sanderling', 'Clover', 'headwind', [-30, 40], ['mission']),
  ofMission('godwit', 'Rowan', 'reserve', [0, 7200], ['range', 'mission', 'fuel']),
  ofMission('godwit', 'Rowan', 'personWeight', [50, 130], ['mission', 'range']),
  ofMission('sanderling', 'Sorrel', 'personWeight', [50, 130], ['mission', 'range']),
  ofMission('godwit', 'Rowan', 'bags', [0, 80], ['mission']),
  ofMission('godwit', 'Rowan', 'slope', [-0.08, 0.08], ['flight', 'mission']),
  ofMission('sanderling', 'Sorrel', 'fieldWind', [-12, 40], ['flight', 'mission']),
  ofMission('godwit', 'Rowan', 'minimumClimb', [0, 8], ['mission']),

  ofAirframe('godwit', 'Rowan', 'emptyWeight', [550, 750], [...ground, 'range', 'mission']),
  ofAirframe('godwit', 'Larch', 'emptyArm', [2.3, 2.7], loads),
  ofAirframe('godwit', 'Rowan', 'wingArea', [9, 20], air),
  ofAirframe('godwit', 'Rowan', 'wingSpan', [7, 14], air),
  ofAirframe('godwit', 'Rowan', 'liftClean', [0.9, 2.5], ['flight', 'mission']),
  ofAirframe('sanderling', 'Sorrel', 'oswaldEfficiency', [0.5, 0.9], air),
  ofAirframe('godwit', 'Hazel', 'propellerClimb', [0.6, 0.9], air),
  ofAirframe('godwit', 'Rowan', 'firewallArm', [1.2, 1.8], ground),
  ofAirframe('godwit', 'Rowan', 'maximumRampWeight', [1144, 1200], ['range', 'mission']),
  ofAirframe('godwit', 'Rowan', 'maximumZeroFuelWeight', [900, 1143], loads),
  ofAirframe('godwit', 'Rowan', 'maximumLandingWeight', [900, 1143], ['balance', 'mission']),
  ofAirframe('godwit', 'Rowan', 'emptyArmKnownTo', [0, 0.05], ['weight', 'mission']),

  ofPackage('godwit', 'Larch', 'takeoffPower', [115e3, 150e3], air),
  ofPackage('godwit', 'Alder', 'continuousPower', [90e3, 134e3], [...air, 'fuel']),
  ofPackage('godwit', 'Alder', 'takeoffPower', [123e3, 150e3], air),
  ofPackage('godwit', 'Alder', 'criticalAltitude', [0, 6000], air),
  ofPackage('godwit', 'Larch', 'takeoffMinutes', [0, 3600], air),
  ofPackage('godwit', 'Alder', 'takeoffMinutes', [0, 3600], air),
  ofPackage('sanderling', 'Sorrel', 'takeoffMinutes', [0, 3600], air),
  ofPackage('godwit', 'Hazel', 'propellerDiameter', [1.4, 2.2], air),
  ofPackage('godwit', 'Hazel', 'staticRpm', [0.6, 0.9], air),
  ofPackage('godwit', 'Hazel', 'climbRpm', [0.86, 1], air),
  ofPackage('godwit', 'Larch', 'coolingClimbSpeed', [35, 80], ['cooling', 'mission']),
  ofPackage('godwit', 'Rowan', 'fuelDensity', [600, 900], ['weight', 'balance', 'fuel', 'range', 'mission']),
  ofPackage('godwit', 'Larch', 'batteryCapacity', [3600 * 5, 3600 * 40], ['fuel']),
  ofPackage('godwit', 'Larch', 'essentialLoad', [1, 30], ['fuel']),
  ofPackage('godwit', 'Rowan', 'temperatureExponent', [0, 1], ['flight', 'mission']),

  ofRows('godwit', 'Larch', 'components', 'weight', [0.6, 1.5], loads, ({ package: of }) => of === 'Larch'),
  ofRows('godwit', 'Larch', 'components', 'arm', [0.6, 1.5], loads, ({ package: of }) => of === 'Larch'),
  ofRows('godwit', 'Rowan', 'tanks', 'usable', [0.3, 2.5], loads),
  ofRows('godwit', 'Rowan', 'tanks', 'unusable', [0, 5], loads),
  ofRows('godwit', 'Rowan', 'tanks', 'arm', [0.8, 1.2], loads),
  ofRows('godwit', 'Rowan', 'stations', 'arm', [0.9, 1.1], ['balance', 'mission']),
  ofRows('godwit', 'Rowan', 'stations', 'maximum', [0.7, 1.5], ['balance', 'range', 'mission']),
  ofRows('godwit', 'Rowan', 'envelope', 'forward', [-0.1, 0.1], ['balance', 'mission'], undefined, true),
  ofRows('godwit', 'Rowan', 'envelope', 'aft', [-0.15, 0.15], ['balance', 'mission'], undefined, true),
  ofRows('godwit', 'Rowan', 'fuelPoints', 'setting', [0.8, 1], ['fuel', 'range', 'mission']),
  ofRows('godwit', 'Rowan', 'fuelPoints', 'bsfc', [0.5, 2], ['fuel', 'range', 'mission']),
  ofRows('godwit', 'Larch', 'powerPoints', 'power', [0.8, 1], air),
  ofRows('godwit', 'Larch', 'powerPoints', 'altitude', [0.4, 1], air),
  ofRows(
    'godwit',
    'Larch',
    'cooling',
    'exitArea',
    [0.1, 3],
    ['cooling', 'flight', 'mission'],
    ({ package: of }) => of === 'Larch', // Rowan's are those of the known flights
  ),
  ofRows('godwit', 'Rowan', 'cooling', 'exitArea', [0.3, 3], ['cooling', 'flight', 'mission']),
  ofRows('godwit', 'Larch', 'cooling', 'recovery', [0.5, 1.3], ['cooling', 'flight']),
  ofRows('godwit', 'Larch', 'cooling', 'limit', [0.9, 1.1], ['cooling', 'mission']),
  ofRows('godwit', 'Larch', 'cooling', 'leakageDrag', [0, 5], ['cooling', 'flight']),
  ofRows('godwit', 'Rowan', 'knownPoints', 'airspeed', [0.92, 1.08], air),
  ofRows('godwit', 'Rowan', 'knownPoints', 'power', [0.85, 1.1], air),
  ofRows('godwit', 'Rowan', 'knownPoints', 'altitude', [0, 2], air),

  withOption('godwit', 'Rowan', 'wheel fairings', 'dragArea', [-0.06, 0.3], air),
  withOption('godwit', 'Rowan', 'tow bar and covers', 'weight', [0, 60], [...ground, 'range', 'mission']),
  withOption('godwit', 'Rowan', 'tow bar and covers', 'arm', [1, 6], [...ground, 'mission']),
  withOption('godwit', 'Rowan', 'tow bar and covers', 'price', [0, 5000], ['weight', 'fuel']),
];
