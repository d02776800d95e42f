import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fuelInTanks } from '../../src/assessment/loadStations.ts';
import type { Tank } from '../../src/tables/tanks.ts';

const tank = (usable: number, burnOrder: number): Tank => ({
  row: 3,
  defaulted: [],
  name: `tank of ${usable}`,
  arm: 2,
  usable,
  unusable: 0,
  burnOrder,
  fits: [],
  standard: true,
  fitted: true,
  weight: 0,
  price: undefined,
});

test('the tanks burnt last are filled first, those of one number to the same share', () => {
  const tanks = [tank(30, 1), tank(60, 2), tank(40, 2)];
  expect(fuelInTanks(tanks, 50)).toEqual([0, 30, 20]);
  expect(fuelInTanks(tanks, 112)).toEqual([12, 60, 40]);
  expect(fuelInTanks(tanks, 500)).toEqual([30, 60, 40]);
  expect(fuelInTanks(tanks, 0)).toEqual([0, 0, 0]);
});

test('all of the fuel that they hold, none fuller than full', () => {
  const anyTank = fc
    .tuple(fc.double({ min: 0.1, max: 400, noNaN: true }), fc.integer({ min: 1, max: 4 }))
    .map(([usable, order]) => tank(usable, order));
  fc.assert(
    fc.property(
      fc.array(anyTank, { minLength: 1, maxLength: 5 }),
      fc.double({ min: 0, max: 2500, noNaN: true }),
      (tanks, volume) => {
        const filled = fuelInTanks(tanks, volume);
        const capacity = tanks.reduce((sum, { usable }) => sum + usable, 0);
        expect(filled.reduce((sum, each) => sum + each, 0)).toBeCloseTo(Math.min(volume, capacity), 9);
        filled.forEach((each, index) => {
          expect(each).toBeGreaterThanOrEqual(-1e-9);
          expect(each).toBeLessThanOrEqual((tanks[index] as Tank).usable * (1 + 1e-12));
        });
      },
    ),
  );
});
