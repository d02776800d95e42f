import { serviceCeilingRate } from '../engineering/climb.ts';
import { findRoot } from '../engineering/solve.ts';
import type { Package } from '../tables/packages.ts';
import { toSi } from '../units.ts';
import type { Context } from './context.ts';

const scanStep = toSi('height', 2000, 'ft');

const sameHeight = 1e-6; // m
const heightTolerance = 1e-3; // m

/** Rising heights and the corners between the first and the last of them, each once. */
function together(heights: readonly number[], corners: readonly number[]): number[] {
  const [first, last] = [heights[0] as number, heights[heights.length - 1] as number];
  const within = corners.filter((corner) => corner > first && corner < last);
  const besides = heights.filter((one) => within.every((corner) => Math.abs(one - corner) > sameHeight));
  return [...new Set([...besides, ...within])].sort((a, b) => a - b);
}

/**
 * Heights from sea level to the ceiling at which curves are looked at, those where something changes among them. They stand
 * still when the ceiling moves: what is worst among them then follows it without a jump.
 */
export function scanHeights(top: number, corners: readonly number[]): number[] {
  const even = Array.from({ length: Math.ceil(top / scanStep) }, (_, step) => step * scanStep);
  return together([...even, top], corners);
}

/** Heights at which the power has a corner. */
export const powerCorners = (context: Context, { name, criticalAltitude }: Package): number[] => [
  ...(criticalAltitude === undefined ? [] : [criticalAltitude]),
  ...context.powerPoints.of(name).map(({ altitude }) => altitude),
];

/** Bottom, middle and top, and where something changes between them. */
export const heightsBetween = (bottom: number, top: number, corners: readonly number[]): number[] =>
  together([bottom, (bottom + top) / 2, top], corners);

/** Of rising heights those at which it still climbs by the least rate, up to where it climbs by just that; the first in any case. */
export function heightsClimbed(
  heights: readonly number[],
  rateOfClimb: (altitude: number) => number,
): readonly number[] {
  const spare = (altitude: number) => rateOfClimb(altitude) - serviceCeilingRate;
  const beyond = heights.findIndex((altitude, index) => index > 0 && spare(altitude) < 0);
  if (beyond < 0) return heights;
  const climbed = heights.slice(0, beyond);
  const last = climbed[beyond - 1] as number;
  if (spare(last) <= 0) return climbed;
  return [...climbed, findRoot(spare, last, heights[beyond] as number, heightTolerance)];
}

/**
 * The same heights, and that at which the speed of best rate becomes as fast as a stated one: a climb at the faster of the
 * two has a corner there, and is often hottest.
 */
export function withSpeedCorner(
  heights: readonly number[],
  bestRateSpeed: (altitude: number) => number,
  stated: number | undefined,
): readonly number[] {
  if (stated === undefined) return heights;
  const [first, last] = [heights[0] as number, heights[heights.length - 1] as number];
  const spare = (altitude: number) => bestRateSpeed(altitude) - stated;
  if (spare(first) >= 0 || spare(last) <= 0) return heights;
  return together(heights, [findRoot(spare, first, last, heightTolerance)]);
}
