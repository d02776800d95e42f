import fc from 'fast-check';

/**
 * Numbers spread evenly from min to max, both included. `fc.double` spreads them over the bit patterns instead, which from
 * 0 up gives mostly numbers like 1e-150.
 */
export const between = (min: number, max: number): fc.Arbitrary<number> =>
  fc.integer({ min: 0, max: 1_000_000 }).map((part) => min + ((max - min) * part) / 1_000_000);
