/** Heights at which climbs and level flights are looked at. Every list by hand; 2,000 ft are 609.6 m, 100 ft/min 0.508 m/s. */
import { describe, expect, test } from 'vitest';
import { contextOf } from '../../src/assessment/context.ts';
import {
  heightsBetween,
  heightsClimbed,
  powerCorners,
  scanHeights,
  withSpeedCorner,
} from '../../src/assessment/scanHeights.ts';
import { godwit, si } from './sampleCatalogue.ts';

const step = si('height', 2000, 'ft');

describe('from sea level to the ceiling', () => {
  test('every 2,000 ft, and the ceiling itself once', () => {
    expect(scanHeights(1500, [])).toEqual([0, step, 2 * step, 1500]);
    expect(scanHeights(2 * step, [])).toEqual([0, step, 2 * step]);
    expect(scanHeights(0, [])).toEqual([0]);
  });

  test('corners between, none at the ends or beyond, each once', () => {
    expect(scanHeights(1500, [1000, 300, 0, 1500, -10, 2000, 1000])).toEqual([
      0,
      300,
      step,
      1000,
      2 * step,
      1500,
    ]);
  });

  test('a corner takes the place of a height no more than a micrometre away, of no other', () => {
    expect(scanHeights(1000, [step + 5e-7])).toEqual([0, step + 5e-7, 1000]);
    expect(scanHeights(1000, [step + 2e-6])).toEqual([0, step, step + 2e-6, 1000]);
  });
});

describe('between two heights', () => {
  test('bottom, middle, top, and the corners within', () => {
    expect(heightsBetween(1000, 3000, [2500, 1500, 3000, 500])).toEqual([1000, 1500, 2000, 2500, 3000]);
  });

  test('one height alone where bottom is top', () => {
    expect(heightsBetween(900, 900, [900])).toEqual([900]);
  });
});

describe('as far as it climbs by 100 ft/min', () => {
  const heights = [0, 2000, 4000, 6000];

  test('up to where 5 m/s less 1 m/s per 1,000 m has come down to it: 4,492 m', () => {
    const climbed = heightsClimbed(heights, (altitude) => 5 - altitude / 1000);
    expect(climbed.slice(0, -1)).toEqual([0, 2000, 4000]);
    expect(climbed.at(-1)).toBeCloseTo(4492, 2); // searched to 1 mm
  });

  test('all of them where it climbs by just that everywhere', () => {
    expect(heightsClimbed(heights, () => si('climb', 100, 'ft/min'))).toEqual(heights);
  });

  test('no further than a height at which it climbs by just that', () => {
    const rate = (altitude: number) => (altitude <= 2000 ? si('climb', 100, 'ft/min') : 0);
    expect(heightsClimbed(heights, rate)).toEqual([0, 2000]);
  });

  test('the first in any case', () => {
    expect(heightsClimbed(heights, () => -1)).toEqual([0]);
    expect(heightsClimbed([700], () => -1)).toEqual([700]);
  });
});

describe('where the speed of best rate becomes a stated one', () => {
  const heights = [1000, 2000, 4000];
  const speed = (altitude: number) => 40 + altitude / 1000; // m/s: 43 at 3,000 m

  test('among the heights, once', () => {
    const looked = withSpeedCorner(heights, speed, 43);
    expect(looked).toHaveLength(4);
    expect(looked[2]).toBeCloseTo(3000, 2); // searched to 1 mm
    expect(looked.filter((_, index) => index !== 2)).toEqual(heights);
  });

  test('none where it is faster from the first on, or slower up to the last, or none is stated', () => {
    for (const stated of [40, 41, 44, 45, undefined])
      expect(withSpeedCorner(heights, speed, stated)).toEqual(heights);
  });
});

test('the power has a corner at the critical altitude and at every power point of the sample', () => {
  const feet = (name: string) =>
    powerCorners(
      contextOf(godwit),
      godwit.packages.find((engine) => engine.name === name) as (typeof godwit.packages)[number],
    ).map((altitude) => Math.round(altitude / 0.3048));
  const points = [0, 8000, 16_000, 20_000, 25_000];
  expect(feet('Larch')).toEqual([16_000, ...points, ...points]);
  expect(feet('Alder')).toEqual([9000]);
  expect(feet('Rowan')).toEqual([]);
});
