/** The standard atmosphere and densities off it. */
import {
  airSpecificHeat,
  densityAltitude,
  densityRatio,
  gasConstantAir,
  heatCapacityRatio,
  pressureAltitude,
  soundSpeed,
  standardPressure,
  standardTemperature,
  viscosity,
} from '../../../src/engineering/air.ts';
import { foot, knot } from '../../engineering/tradeUnits.ts';
import { fromFunction, type PublishedValue, type Topic } from '../publishedValue.ts';

const earthRadius = 6_356_766; // m, of the standard, for geometric heights
const geopotential = (geometric: number) => (earthRadius * geometric) / (earthRadius + geometric);
const density = (height: number) => standardPressure(height) / (gasConstantAir * standardTemperature(height));

/**
 * Geometric feet: °F, psia, 1e-4 slug/ft³, 1e-7 lbf·s/ft². The table is headed "geopotential", which its numbers are not:
 * 10,000 ft geopotential is 23.34 °F.
 */
const englishTable: readonly (readonly [number, number, number, number, number])[] = [
  [0, 59, 14.696, 23.77, 3.737],
  [5_000, 41.17, 12.228, 20.48, 3.637],
  [10_000, 23.36, 10.108, 17.56, 3.534],
  [15_000, 5.55, 8.297, 14.96, 3.43],
  [20_000, -12.26, 6.759, 12.67, 3.324],
  [25_000, -30.05, 5.461, 10.66, 3.217],
];
const english = englishTable.flatMap(([feet, fahrenheit, psia, slugs, viscosityUnits]): PublishedValue[] => {
  const height = geopotential(feet * foot);
  const row = (what: string, expected: number, tolerance: number, compute: () => number) => ({
    what: `${what} at ${feet} ft, geometric`,
    source: 'engineering reference, US Standard Atmosphere in English units',
    status: 'secondary' as const,
    expected,
    tolerance,
    note: 'its last digit is off by one in places',
    compute,
  });
  return [
    row(
      'temperature, °F',
      fahrenheit,
      0.01,
      () => fromFunction('ISA_TEMPERATURE', [height / foot]) * 1.8 + 32,
    ),
    row('pressure, psia', psia, 0.001, () => standardPressure(height) / 6894.757),
    row('density, 1e-4 slug/ft³', slugs, 0.01, () => (density(height) / 515.3788) * 1e4),
    row(
      'viscosity, 1e-7 lbf·s/ft²',
      viscosityUnits,
      0.001,
      () => (viscosity(standardTemperature(height)) / 47.880259) * 1e7,
    ),
  ];
});

/** Geopotential feet: δ, σ, speed of sound in m/s. Its temperature column and its p₀ are wrong and are not used. */
const ratioTable: readonly (readonly [number, number, number, number])[] = [
  [2_000, 0.9298, 0.9428, 338],
  [4_000, 0.8637, 0.8881, 335.6],
  [5_000, 0.832, 0.8617, 334.4],
  [6_000, 0.8014, 0.8359, 333.2],
];
const ratios = ratioTable.flatMap(([feet, delta, sigma, sound]): PublishedValue[] => {
  const row = (what: string, expected: number, tolerance: number, compute: () => number) => ({
    what: `${what} at ${feet} ft`,
    source: 'aeronautical data book, ISA table',
    status: 'secondary' as const,
    expected,
    tolerance,
    compute,
  });
  return [
    row('pressure ratio', delta, 1e-4, () => standardPressure(feet * foot) / 101_325),
    row('density ratio', sigma, 1e-4, () => fromFunction('AIR_DENSITY_RATIO', [feet])),
    row('speed of sound, m/s', sound, 0.06, () => soundSpeed(standardTemperature(feet * foot))),
  ];
});

/** One in the sixth digit: the air of ICAO is a millionth heavier, which shows at 20 km. */
const sixDigits = (value: number) => 10 ** (Math.floor(Math.log10(value)) - 5);

/** Geopotential metres: Pa and kg/m³ to six digits, m/s to eight. */
const metricTable: readonly (readonly [number, number, number, number])[] = [
  [-2_000, 127_774, 1.47808, 347.88556],
  [-1_000, 113_929, 1.347, 344.11071],
  [4_000, 61_640.2, 0.819129, 324.57861],
  [11_000, 22_632.1, 0.363918, 295.06949],
  [15_000, 12_044.6, 0.193674, 295.06949],
  [20_000, 5_474.89, 0.0880349, 295.06949],
];
const metric = metricTable.flatMap(([metres, pascals, kilograms, sound]): PublishedValue[] => {
  const row = (
    what: string,
    expected: number,
    tolerance: PublishedValue['tolerance'],
    compute: () => number,
  ) => ({
    what: `${what} at ${metres} m`,
    source: 'US Standard Atmosphere 1976, as in the tests of a public air traffic program',
    status: 'secondary' as const,
    expected,
    tolerance,
    compute,
  });
  return [
    row('pressure, Pa', pascals, sixDigits(pascals), () => standardPressure(metres)),
    row('density, kg/m³', kilograms, sixDigits(kilograms), () => density(metres)),
    row('speed of sound, m/s', sound, { relative: 1e-6 }, () => soundSpeed(standardTemperature(metres))),
  ];
});

/** Geopotential feet, from the defining constants by another program. */
const derivedTable: readonly (readonly [number, number, number, number])[] = [
  [8_000, 272.3, 0.78602, 643.03],
  [12_000, 264.376, 0.69317, 633.6],
  [20_000, 248.526, 0.53281, 614.32],
];
const derived = derivedTable.flatMap(([feet, kelvin, sigma, knots]): PublishedValue[] => {
  const row = (what: string, expected: number, compute: () => number) => ({
    what: `${what} at ${feet} ft`,
    source: 'US Standard Atmosphere 1976 / ICAO Doc 7488, defining constants',
    status: 'derived' as const,
    expected,
    tolerance: { relative: 1e-5 },
    compute,
  });
  return [
    row('temperature, K', kelvin, () => fromFunction('ISA_TEMPERATURE', [feet]) + 273.15),
    row('density ratio', sigma, () => fromFunction('AIR_DENSITY_RATIO', [feet])),
    row('speed of sound, kt', knots, () => soundSpeed(standardTemperature(feet * foot)) / knot),
  ];
});

/** hPa, °C, dew point °C, density altitude in ft. */
const weatherService: readonly (readonly [number, number, number, number])[] = [
  [1013, 30, 20, 2044.3],
  [1013, (90 - 32) / 1.8, (60 - 32) / 1.8, 676.1 / foot],
  [800, 50, (10 - 32) / 1.8, 11_559.6],
];
const moist = weatherService.map(
  ([hectopascals, celsius, dewPoint, feet]): PublishedValue => ({
    what: `density altitude, ft, ${hectopascals} hPa, ${celsius.toFixed(1)} °C, dew point ${dewPoint.toFixed(1)} °C`,
    source: 'US National Weather Service, density altitude calculation, as in the tests of a public program',
    status: 'secondary',
    expected: feet,
    tolerance: 18,
    note: 'its formula has 17.326 for 518.67/29.9213 = 17.3344, which is 12 to 17 ft; moisture alone is some 270 ft',
    compute: () =>
      fromFunction('DENSITY_ALTITUDE', [pressureAltitude(hectopascals * 100) / foot, celsius, dewPoint]),
  }),
);

const anderson = 'Anderson, Introduction to Flight, chapter 3 (companion data)';

export const atmosphere: Topic = {
  topic: 'atmosphere',
  values: [
    ...english,
    ...ratios,
    ...metric,
    ...derived,
    ...moist,
    {
      what: 'gas constant of air, J/(kg·K)',
      source: 'ICAO Doc 7488, table A',
      status: 'from memory',
      expected: 287.05287,
      tolerance: { relative: 2e-6 },
      note: 'ICAO has 28.96442 kg/kmol for air, the US standard 28.9644',
      compute: () => gasConstantAir,
    },
    {
      what: 'ratio of specific heats of air',
      source: 'US Standard Atmosphere 1976, table 2',
      status: 'from memory',
      expected: 1.4,
      tolerance: 1e-12,
      compute: () => heatCapacityRatio,
    },
    {
      what: 'specific heat of air, J/(kg·K)',
      source: 'engineering data book',
      status: 'secondary',
      expected: 1005,
      tolerance: { relative: 0.001 },
      compute: () => airSpecificHeat,
    },
    {
      what: 'specific heat of air at constant volume, J/(kg·K)',
      source: 'engineering data book',
      status: 'secondary',
      expected: 717.98,
      tolerance: { relative: 0.001 },
      compute: () => airSpecificHeat / heatCapacityRatio,
    },
    {
      what: 'speed of sound at standard sea level, kt',
      source: 'US Standard Atmosphere 1976, table 1',
      status: 'from memory',
      expected: 661.48,
      tolerance: 0.005,
      compute: () => soundSpeed(288.15) / knot,
    },
    {
      what: 'temperature at the tropopause, 36,089 ft, °C',
      source: 'ICAO Doc 7488, as quoted in training texts',
      status: 'secondary',
      expected: -56.5,
      tolerance: 0.01,
      compute: () => fromFunction('ISA_TEMPERATURE', [36_089.24]),
    },
    {
      what: 'pressure altitude of 53,000 Pa, m',
      source: anderson,
      status: 'read',
      expected: geopotential(5146.6),
      tolerance: 2,
      note: 'interpolated in his table by geometric altitude; the companion drops a digit of 5.3331e4',
      compute: () => pressureAltitude(53_000),
    },
    {
      what: 'density altitude of 53,000 Pa and 253 K, m',
      source: anderson,
      status: 'read',
      expected: geopotential(5082.2),
      tolerance: 4,
      note: 'with R = 287, which is 2 m',
      compute: () => densityAltitude(pressureAltitude(53_000), 253),
    },
    {
      what: 'density altitude, ft, at 8,000 ft and 291.2 K',
      source: "pilots' formulary",
      status: 'secondary',
      expected: 10_150,
      tolerance: 10,
      compute: () => fromFunction('DENSITY_ALTITUDE', [8_000, 291.2 - 273.15]),
    },
    {
      what: 'density altitude, m, of saturated air of 0 °C at 5,000 m',
      source: 'WMO vapour pressure, 611.21 Pa; partial pressures and perfect gases',
      status: 'derived',
      expected: 5646.14,
      tolerance: 0.05,
      note: 'moisture alone is 38.98 m, 0.5 % of which is 0.2',
      compute: () => densityAltitude(5_000, 273.15, 273.15),
    },
    {
      what: 'density altitude, m, of air of 30 °C, dew point 25 °C, at sea level',
      source: 'IAPWS vapour pressure, 3,169.9 Pa; partial pressures and perfect gases',
      status: 'derived',
      expected: 647.74,
      tolerance: 0.49,
      note: '0.4 % of the vapour pressure, what the fit promises',
      compute: () => densityAltitude(0, 303.15, 298.15),
    },
    {
      what: 'density ratio at 5,000 ft and 30 °C',
      source: 'equation of state: 0.83205 × 288.15/303.15',
      status: 'derived',
      expected: (0.83205 * 288.15) / 303.15,
      tolerance: 1e-5,
      compute: () => densityRatio(5_000 * foot, 303.15),
    },
  ],
};
