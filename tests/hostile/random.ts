/** Choices of this run, from its seed. */
import { seed } from './seed.ts';

let state = seed >>> 0;

/** Mulberry32: 32 bits of state, in the public domain. */
function next(): number {
  state = (state + 0x6d2b79f5) >>> 0;
  let mixed = Math.imul(state ^ (state >>> 15), state | 1);
  mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
  return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
}

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
