/** Choices of this run, from its seed. */
import { randomNumbers } from '../engineering/randomNumbers.ts';
import { seed } from './seed.ts';

const next = randomNumbers(seed);

const below = (count: number) => Math.floor(next() * count);

function shuffled<T>(list: readonly T[]): T[] {
  const rest = [...list];
  return list.map(() => rest.splice(below(rest.length), 1)[0] as T);
}

export const random = {
  next,
  below,
  shuffled,
  /** So many of a list, all where it has no more. */
  some: <T>(list: readonly T[], count: number): T[] => shuffled(list).slice(0, count),
};
