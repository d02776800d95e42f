/** Battery time by Peukert's law, without and with a load before shedding. */
import { alternatorSurplus } from '../../../src/engineering/electrical.ts';
import { fromFunction, type Topic } from '../publishedValue.ts';

export const electrical: Topic = {
  topic: 'electrical',
  values: [
    {
      what: '100 A·h at 1 A, exponent 1.2, on 5 A: h',
      source: "electrical engineering teaching page on Peukert's law",
      status: 'read',
      expected: 14.5,
      tolerance: 0.05,
      compute: () => fromFunction('BATTERY_MINUTES', [100, 100, 5, 5, 0, 1, 1.2]) / 60,
    },
    {
      what: '100 A·h at 20 h, exponent 1.2, on 10 A: h',
      source: "encyclopedia, Peukert's law: H (C/(I H))^k",
      status: 'from memory',
      expected: 8.7,
      tolerance: 0.05,
      compute: () => fromFunction('BATTERY_MINUTES', [100, 20, 10, 10, 0, 1, 1.2]) / 60,
    },
    {
      what: 'at the rated current it lasts the rated time, 20 h',
      source: 'definition of the rated capacity',
      status: 'derived',
      expected: 20,
      tolerance: 1e-9,
      compute: () => fromFunction('BATTERY_MINUTES', [100, 20, 5, 5, 0, 1, 1.3]) / 60,
    },
    {
      what: '28 A·h at 20 h, 25 A for 5 min, then 15 A, derated to 0.8, exponent 1.15: min',
      source: "Peukert's law on the charge left, by hand",
      status: 'derived',
      expected: 59.265,
      tolerance: 0.002,
      compute: () => fromFunction('BATTERY_MINUTES', [28, 20, 25, 15]),
    },
    {
      what: 'the same with exponent 1: charge over current, min',
      source: 'definition of the ampere hour: 5 + 60 (22.4 − 25/12)/15',
      status: 'derived',
      expected: 5 + (60 * (22.4 - 25 / 12)) / 15,
      tolerance: 1e-9,
      compute: () => fromFunction('BATTERY_MINUTES', [28, 20, 25, 15, 5, 0.8, 1]),
    },
    {
      what: 'alternators of 60 and 20 A against 35 and 12 A, A',
      source: 'sum of currents (Kirchhoff)',
      status: 'derived',
      expected: 33,
      tolerance: 1e-12,
      compute: () => alternatorSurplus([60, 20], [35, 12]),
    },
  ],
};
