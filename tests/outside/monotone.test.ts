/** Every claim of monotone.ts, asked of the custom functions with cells. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formulas } from '../../src/functions/library.ts';
import { type MonotoneFunction, monotoneFunctions } from './monotone.ts';
import { fromFunction } from './publishedValue.ts';

describe('which way a result goes', () => {
  const claims = monotoneFunctions.flatMap((each) =>
    Object.entries(each.claims).map(([argument, direction]) => {
      const described = formulas.find(({ name }) => name === each.name)!;
      const label = described.results[each.result ?? 0]!.label;
      const argumentName = described.arguments[Number(argument)]!.name;
      return { each, argument: Number(argument), direction, label, argumentName };
    }),
  );

  const cellsOf = ({ arguments: all }: MonotoneFunction) =>
    fc.tuple(...all.map((one) => (typeof one === 'object' ? one : fc.constant(one))));

  test.each(claims)('$each.name: $label $direction with $argumentName', ({ each, argument, direction }) => {
    fc.assert(
      fc.property(cellsOf(each), cellsOf(each), (cells, others) => {
        const [low, high] = [cells[argument] as number, others[argument] as number].sort((a, b) => a - b);
        fc.pre(high! - low! > 1e-3 * Math.abs(high!));
        const at = (value: number) => fromFunction(each.name, cells.with(argument, value), each.result);
        const change = at(high!) - at(low!);
        const rounding = 1e-9 * Math.abs(at(low!));
        if (direction === 'rises') expect(change).toBeGreaterThan(0);
        if (direction === 'falls') expect(change).toBeLessThan(0);
        if (direction === 'never falls') expect(change).toBeGreaterThanOrEqual(-rounding);
        if (direction === 'never rises') expect(change).toBeLessThanOrEqual(rounding);
      }),
    );
  });
});
