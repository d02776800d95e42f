import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fuelWithCabinLoad, payloadWithFuel, usefulLoad } from '../../src/engineering/payload.ts';
import { between } from './between.ts';

describe('by hand', () => {
  test('AC 43.13-1B figure 10-13 (read): 2,100 less 1,169 lb leaves 39 gal with oil and four aboard, as it says', () => {
    // oil 17, four occupants of 170; the tank holds 40 gal (figure 10-11)
    expect(usefulLoad(2100, 1169)).toBe(931);
    expect(fuelWithCabinLoad(2100, 1169 + 17, 4 * 170, 40 * 6)).toBe(39 * 6);
  });

  test('AC 43.13-1B figure 10-14 (read): with two passengers and 100 lb of bags the tank can be full', () => {
    expect(fuelWithCabinLoad(2100, 1169 + 17, 3 * 170 + 100, 40 * 6)).toBe(240);
  });

  test('payload with full fuel, and the shortfall of a heavy aircraft', () => {
    expect(payloadWithFuel(2520, 1379, 252)).toBe(889);
    expect(payloadWithFuel(2520, 2400, 252)).toBe(-132);
    expect(fuelWithCabinLoad(2520, 1457, 1100, 252)).toBe(-37);
  });

  test('a zero-fuel limit holds whatever fuel is left out', () => {
    expect(payloadWithFuel(2520, 1379, 252, 2200)).toBe(2200 - 1379);
    expect(payloadWithFuel(2520, 1379, 252, 2400)).toBe(889);
  });
});

test('the fuel that a cabin load leaves lets that cabin load be carried', () => {
  const load = between(0, 1500);
  fc.assert(
    fc.property(load, between(0, 400), (cabinLoad, tanks) => {
      const fuel = fuelWithCabinLoad(2520, 1379, cabinLoad, tanks);
      expect(fuel).toBeLessThanOrEqual(tanks);
      if (fuel >= 0) expect(payloadWithFuel(2520, 1379, fuel)).toBeGreaterThanOrEqual(cabinLoad - 1e-9);
    }),
  );
});
