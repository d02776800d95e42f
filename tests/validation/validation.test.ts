import { describe, expect, test } from 'vitest';
import { certificatedAircraft } from './certificatedAircraft.ts';
import { compareAll, summaries } from './validation.ts';

/**
 * What the default constants are worth. The bounds are what was found, rounded up to the next whole per cent: a change
 * of method or constants that makes them worse must be noticed, and the README's figures changed with them.
 */
describe('default constants against published figures', () => {
  const found = summaries();

  test('every published figure is compared', () => {
    const published = certificatedAircraft
      .flatMap((one) => Object.values(one.published))
      .filter(Number.isFinite);
    expect(published).toHaveLength(84);
    expect(compareAll().map((one) => one.published)).toEqual(published);
  });

  test.each([
    ['climb', 18, 0.06, 0.02],
    ['best-climb speed', 13, 0.08, 0.06],
    ['service ceiling', 18, 0.08, 0.03],
    ['ground roll', 17, 0.1, 0.01],
    ['over 50 ft', 18, 0.11, 0.03],
    ['aircraft held out of the choice of constants', 20, 0.07, 0.03],
    ['aircraft used in the choice', 64, 0.09, 0.02],
    ['all', 84, 0.09, 0.02],
  ])('%s, %d figures: rms error within %d, mean within %d', (title, count, rms, mean) => {
    const summary = found.find((one) => one.title === title)!;
    expect(summary.count).toBe(count);
    expect(summary.rms).toBeLessThan(rms);
    expect(Math.abs(summary.mean)).toBeLessThan(mean);
  });

  test('no prediction is off by more than 15 %, but for five of 84 that are within a third', () => {
    const errors = compareAll().map(({ error }) => Math.abs(error));
    expect(errors.filter((error) => error > 0.15)).toHaveLength(5);
    expect(Math.max(...errors)).toBeLessThan(1 / 3);
  });
});
