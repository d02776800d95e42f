/** Power of a piston engine at altitude and off-standard temperature. */
import { fromFunction, type PublishedValue, type Topic } from '../publishedValue.ts';

/** Feet, power over sea-level power, σ of the standard atmosphere to five digits put into the formula. */
const gaggFarrar = [
  [2_000, 0.9352],
  [5_000, 0.8433],
  [8_000, 0.7577],
  [10_000, 0.7038],
  [15_000, 0.5801],
  [20_000, 0.4709],
  [25_000, 0.375],
] as const;

/** The same fit as it is printed elsewhere: 1.132 σ − 0.132. */
const otherForm = [
  [10_000, 0.704],
  [20_000, 0.4711],
] as const;

export const enginePower: Topic = {
  topic: 'engine power',
  values: [
    ...gaggFarrar.map(
      ([feet, expected]): PublishedValue => ({
        what: `power at ${feet} ft, of a naturally aspirated engine, per cent`,
        source: 'Gagg and Farrar, SAE 1934, σ − (1 − σ)/7.55, as cited by Gudmundsson, eq. 7-16',
        status: 'derived',
        expected: 100 * expected,
        tolerance: 0.006,
        note: 'formula read in a secondary source',
        compute: () => fromFunction('ENGINE_POWER_AT_ALTITUDE', [100, feet]),
      }),
    ),
    ...otherForm.map(
      ([feet, expected]): PublishedValue => ({
        what: `power at ${feet} ft by 1.132 σ − 0.132, per cent`,
        source: 'aircraft design textbooks',
        status: 'derived',
        expected: 100 * expected,
        tolerance: 0.05,
        note: 'the same fit, its constants rounded',
        compute: () => fromFunction('ENGINE_POWER_AT_ALTITUDE', [100, feet]),
      }),
    ),
    {
      what: 'power at 8,000 ft, where handbooks reach 75 % at full throttle, per cent',
      source: "pilot's operating handbooks, cruise tables",
      status: 'from memory',
      expected: 75,
      tolerance: 2,
      compute: () => fromFunction('ENGINE_POWER_AT_ALTITUDE', [100, 8_000]),
    },
    {
      what: 'power at sea level and 25 °C, per cent',
      source: 'FAA AC 23-8, appendix 1: √(T_std/T)',
      status: 'from memory',
      expected: 100 * Math.sqrt(288.15 / 298.15),
      tolerance: 0.001,
      compute: () => fromFunction('ENGINE_POWER_AT_ALTITUDE', [100, 0, 25]),
    },
    {
      what: 'power at sea level and 10 °F above standard, per cent',
      source: "engine operators' manuals: 1 % for 10 °F",
      status: 'from memory',
      expected: 99,
      tolerance: 0.1,
      compute: () => fromFunction('ENGINE_POWER_AT_ALTITUDE', [100, 0, 15 + 10 / 1.8]),
    },
    {
      what: 'power of a turbocharged engine at its critical altitude, per cent',
      source: 'definition of the critical altitude, 14 CFR 1.1',
      status: 'from memory',
      expected: 100,
      tolerance: 1e-9,
      compute: () => fromFunction('ENGINE_POWER_AT_ALTITUDE', [100, 16_000, '', 16_000]),
    },
    {
      what: 'power at 20,000 ft, critical altitude 16,000 ft, per cent',
      source: 'Gagg and Farrar, SAE 1934, on 0.53281/0.60896, ratios of the standard atmosphere',
      status: 'derived',
      expected: 85.839,
      tolerance: 0.005,
      compute: () => fromFunction('ENGINE_POWER_AT_ALTITUDE', [100, 20_000, '', 16_000]),
    },
  ],
};
