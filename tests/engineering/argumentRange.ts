/**
 * Tests of the range of every argument at its ends: what is refused, in which words, and what is still accepted. The ranges
 * stated in a test are those that the docstring of the function promises.
 */
import { describe, expect, test } from 'vitest';

interface Range {
  /** Taken while another argument is tried. */
  readonly usual: number;
  readonly accepted: readonly number[];
  readonly refused: readonly { readonly value: number; readonly must: string }[];
}

const nextTo = 1e-6; // this far outside a limit is outside

const quantity = (limit: number, unit: string) => (unit === '' ? `${limit}` : `${limit} ${unit}`);

export const finite = (usual: number): Range => ({ usual, accepted: [], refused: [] });

export const above = (limit: number, unit: string, usual: number): Range => ({
  usual,
  accepted: [],
  refused: [{ value: limit, must: `be above ${quantity(limit, unit)}` }],
});

export const atLeast = (limit: number, unit: string, usual: number): Range => ({
  usual,
  accepted: [limit],
  refused: [{ value: limit - nextTo, must: `be at least ${quantity(limit, unit)}` }],
});

export const between = (low: number, high: number, unit: string, usual: number): Range => ({
  usual,
  accepted: [low, high],
  refused: [low - nextTo, high + nextTo].map((value) => ({
    value,
    must: `be between ${low} and ${quantity(high, unit)}`,
  })),
});

/** The lower limit is refused, the upper accepted. */
export const aboveUpTo = (low: number, high: number, unit: string, usual: number): Range => ({
  usual,
  accepted: [high],
  refused: [
    { value: low, must: `be above ${quantity(low, unit)}` },
    { value: high + nextTo, must: `be between ${low} and ${quantity(high, unit)}` },
  ],
});

/** Tries each argument, the others at their usual values. The names are those of the messages. */
export function testRanges(
  functionName: string,
  call: (...values: number[]) => unknown,
  ranges: Readonly<Record<string, Range>>,
): void {
  const names = Object.keys(ranges);
  const calledWith = (name: string, value: number) =>
    call(...names.map((other) => (other === name ? value : ranges[other]!.usual)));

  describe(functionName, () => {
    test.each(names)('%s', (name) => {
      const { usual, accepted, refused } = ranges[name]!;
      const notFinite = [Number.NaN, Number.POSITIVE_INFINITY].map((value) => ({
        value,
        must: 'be a finite number',
      }));
      for (const { value, must } of [...refused, ...notFinite])
        expect(() => calledWith(name, value)).toThrow(new RangeError(`${name} must ${must}, got ${value}`));
      for (const value of [usual, ...accepted]) {
        const result = calledWith(name, value);
        if (typeof result === 'number') expect(result).toSatisfy(Number.isFinite);
      }
    });
  });
}
