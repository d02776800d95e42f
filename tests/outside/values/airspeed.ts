/** Calibrated, equivalent and true airspeed. */
import { densityRatio, soundSpeed, standardTemperature } from '../../../src/engineering/air.ts';
import {
  calibratedFromTrue,
  trueFromCalibrated,
  trueFromEquivalent,
} from '../../../src/engineering/airspeed.ts';
import { foot, knot } from '../../engineering/tradeUnits.ts';
import type { PublishedValue, Topic } from '../publishedValue.ts';

const airTraffic = 'conversions of BADA, as in the tests of a public air traffic program';

/** Geopotential metres, true airspeed of 250 kt calibrated, kt. */
const trueOf250 = [
  [1_000, 261.868],
  [3_000, 288.0309],
  [5_000, 317.8517],
  [9_000, 390.7281],
  [11_000, 434.9783],
] as const;

/** Geopotential metres, calibrated airspeed of 300 kt true, kt. */
const calibratedOf300 = [
  [2_000, 273.4342],
  [4_000, 247.9329],
  [8_000, 200.343],
  [12_000, 155.2665],
] as const;

const conversion = (what: string, expected: number, compute: () => number): PublishedValue => ({
  what,
  source: airTraffic,
  status: 'secondary',
  expected,
  tolerance: { relative: 2e-5 },
  note: 'its constants are rounded: up to 1.2e-5 at 11,000 m',
  compute,
});

/** Feet, 1/√σ, the factor from equivalent to true airspeed. */
const standardFactors = [
  [5_000, 1.0773],
  [10_000, 1.1637],
  [20_000, 1.37],
] as const;

export const airspeed: Topic = {
  topic: 'airspeed',
  values: [
    ...trueOf250.map(([height, expected]) =>
      conversion(
        `true airspeed, kt, of 250 kt calibrated at ${height} m`,
        expected,
        () => trueFromCalibrated(250 * knot, height) / knot,
      ),
    ),
    ...calibratedOf300.map(([height, expected]) =>
      conversion(
        `calibrated airspeed, kt, of 300 kt true at ${height} m`,
        expected,
        () => calibratedFromTrue(300 * knot, height) / knot,
      ),
    ),
    ...standardFactors.map(
      ([feet, expected]): PublishedValue => ({
        what: `true over equivalent airspeed at ${feet} ft`,
        source: 'standard altitude tables of performance handbooks',
        status: 'from memory',
        expected,
        tolerance: 0.0001,
        compute: () => trueFromEquivalent(100, densityRatio(feet * foot)) / 100,
      }),
    ),
    {
      what: 'Mach number of 250 kt calibrated at 10,000 ft',
      source: "pilots' formulary",
      status: 'from memory',
      expected: 0.4523,
      tolerance: 0.00005,
      compute: () =>
        trueFromCalibrated(250 * knot, 10_000 * foot) / soundSpeed(standardTemperature(10_000 * foot)),
    },
    {
      what: 'true airspeed, m/s, of 128.611 m/s calibrated at 9,000 m, 1.5 K colder than standard',
      source: 'BADA user manual, as in the tests of a public atmosphere library',
      status: 'secondary',
      expected: 201.01 * Math.sqrt((229.65 - 1.5) / 229.65),
      tolerance: 0.1,
      note: 'printed for standard air; the Mach number is the same, true airspeed goes as √T',
      compute: () => trueFromCalibrated(128.611, 9_000, 229.65 - 1.5),
    },
    {
      what: 'calibrated airspeed, m/s, of Mach 0.848 at 10,000 m and 230 K',
      source:
        'Anderson, Introduction to Flight, chapter 4, airspeed example (companion data; answers from memory)',
      status: 'from memory',
      expected: 157,
      tolerance: 0.5,
      note: 'he takes 101,000 Pa for sea level and 26,500 Pa for 10,000 m',
      compute: () => calibratedFromTrue(0.848 * soundSpeed(230), 10_000, 230),
    },
    {
      what: 'speed of sound, m/s, at 230 K',
      source: 'Anderson, Introduction to Flight, chapter 4: √(1.4 × 287 × 230)',
      status: 'derived',
      expected: 304,
      tolerance: 0.1,
      compute: () => soundSpeed(230),
    },
  ],
};
