/** Every formula function with everything a cell or a range may hold, in every argument. */
import fc from 'fast-check';
import { afterAll, describe, expect, test, vi } from 'vitest';
import type { Argument as Described } from '../../src/functions/argument.ts';
import { formulas } from '../../src/functions/library.ts';
import type { Cell } from '../../src/tables/cell.ts';
import { quoted } from '../../src/tables/cell.ts';
import { examples } from '../functions/examples/examples.ts';
import { hostileCell, hostileNumber, hostileRange, meaning, oddCells } from './cells.ts';
import { type Answer, type Argument, answer, watch } from './script.ts';
import { say, seed, times } from './seed.ts';
import { faultOf } from './sound.ts';

vi.setConfig({ testTimeout: 180_000 }); // where other work goes on beside

let calls = 0;
let refused = 0;
const asked = (name: string, cells: readonly Argument[]): Answer => {
  calls++;
  const given = answer(name, cells);
  if ('message' in given) refused++;
  return given;
};
afterAll(() => say(`formula functions: ${calls} calls, ${refused} refused`));

/** How a message may begin. */
const namedBy = ({ arguments: all, results }: (typeof formulas)[number]) => [
  ...all.map(({ name }) => `${name} `),
  ...results.map(({ label }) => `the arguments lead to no finite ${label}; check them against each other`),
  `takes at most ${all.length} arguments`,
  'scale_readings, tares and arms must be equally many',
];

const exampleOf = (name: string) => fc.constantFrom(...(examples[name] ?? []).map(({ cells }) => [...cells]));

/** A number where the limits let it through more often than not. */
const likely = (described: Described): fc.Arbitrary<Argument> =>
  described.type === 'number'
    ? hostileNumber
    : described.type === 'word'
      ? fc.constantFrom(...described.choices)
      : fc.array(
          fc.array(hostileNumber, {
            minLength: described.columns.length,
            maxLength: described.columns.length,
          }),
          {
            minLength: 1,
            maxLength: 5,
          },
        );

/** One cell of a range is another. */
const planted = (grid: readonly (readonly Cell[])[]) =>
  fc
    .tuple(fc.nat(grid.length - 1), fc.nat((grid[0]?.length ?? 1) - 1), hostileCell)
    .map(([row, column, cell]) =>
      grid.map((line, r) => line.map((old, c) => (r === row && c === column ? cell : old))),
    );

/** Arguments that are sound but for a few. */
const spoilt = (name: string, all: readonly Described[]): fc.Arbitrary<Argument[]> =>
  exampleOf(name).chain((sound) =>
    fc
      .tuple(
        ...all.map((described, index): fc.Arbitrary<Argument> => {
          const own = sound[index];
          return fc.oneof(
            { arbitrary: fc.constant(own), weight: all.length * 2 },
            { arbitrary: likely(described), weight: 2 },
            { arbitrary: hostileCell, weight: 1 },
            { arbitrary: hostileRange, weight: 1 },
            { arbitrary: Array.isArray(own) ? planted(own as Cell[][]) : hostileCell, weight: 3 },
          );
        }),
      )
      .map((cells) => cells as Argument[]),
  );

const anything = (all: readonly Described[]) =>
  fc.array(fc.oneof(hostileCell, hostileRange), { maxLength: all.length + 1 });
const numeric = (all: readonly Described[]) =>
  fc.tuple(...all.map(likely)).map((cells) => cells as Argument[]);

const perBatch = 50;

describe('gives a finite result, or says which argument is wrong', () => {
  test.each(formulas.map((each) => [each.name, each] as const))('%s', (name, described) => {
    const { arguments: all } = described;
    const named = namedBy(described);
    const call = fc.oneof(
      { arbitrary: spoilt(name, all), weight: 3 },
      { arbitrary: numeric(all), weight: 2 },
      { arbitrary: anything(all), weight: 1 },
    );
    const [callsBefore, refusedBefore] = [calls, refused];
    fc.assert(
      fc.property(fc.array(call, { minLength: perBatch, maxLength: perBatch, size: 'max' }), (batch) => {
        const faults = watch(() => batch.map((cells) => faultOf(name, asked(name, cells), named, cells)));
        const at = faults.findIndex((fault) => fault !== '');
        if (at >= 0) expect.fail(`${faults[at]} for ${JSON.stringify(batch[at])}`);
      }),
      { seed, numRuns: times(55) },
    );
    // 6 to 56 of 100 calls give results; where none did, nothing behind the arguments would have been tried
    expect((refused - refusedBefore) / (calls - callsBefore)).toBeLessThan(0.99);
  });
});

/** The same answer, but for what it quotes. */
const unquoted = (given: Answer) =>
  'value' in given ? given.value : given.message.replace(/got .*/s, 'got …');

/** A cell in one place of sound arguments: `at` puts it there. */
function expectMeaning(
  name: string,
  argument: Described,
  at: (cell: Cell) => Answer,
  cell: Cell,
  place: string,
): void {
  const given = at(cell);
  const means = meaning(cell);
  if (typeof means === 'number') expect(unquoted(given)).toEqual(unquoted(at(means)));
  else if (means === 'refused') {
    expect(given).toHaveProperty('message');
    const { message } = given as { message: string };
    expect(message.startsWith(`${name}: ${argument.name} `)).toBe(true);
    expect(message.endsWith(`, got ${quoted(cell)}${place}`)).toBe(true);
  } else if (argument.optional) expect(unquoted(given)).toEqual(unquoted(at(undefined)));
}

describe('reads a cell as what it says, or not at all', () => {
  const cases = formulas.flatMap((each) =>
    each.arguments.flatMap((argument, index) =>
      argument.type === 'number' ? [[each.name, argument.name, argument, index] as const] : [],
    ),
  );
  test.each(cases)('%s %s', (name, _, argument, index) => {
    const [sound] = examples[name] ?? [];
    const before = Array.from(
      { length: Math.max(index + 1, sound?.cells.length ?? 0) },
      (_, at) => sound?.cells[at],
    );
    const one = (cell: Cell) => asked(name, before.with(index, cell));
    const own = before[index] as Cell;
    const inColumn = (cell: Cell) => asked(name, before.with(index, [[own], [cell], [own]]));
    watch(() => {
      for (const cell of oddCells) {
        expectMeaning(name, argument, one, cell, '');
        expectMeaning(name, argument, inColumn, cell, ' (row 2, column 1)');
        if (meaning(cell) === 'blank' && !argument.optional) {
          expect(one(cell)).toMatchObject({
            message: `${name}: ${argument.name} must be given, got an empty cell`,
          });
          const blank = (inColumn(cell) as { value: Cell[][] }).value;
          expect(blank[1]?.every((each) => each === null)).toBe(true);
          expect(blank[0]?.some((each) => each === null)).toBe(false);
        }
      }
    });
  });

  const ranges = formulas.flatMap((each) =>
    each.arguments.flatMap((argument, index) =>
      argument.type === 'rows' ? [[each.name, argument.name, argument, index] as const] : [],
    ),
  );
  test.each(ranges)('%s %s', (name, _, argument, index) => {
    for (const { cells } of examples[name] ?? []) {
      const grid = cells[index] as Cell[][];
      grid.forEach((line, row) => {
        line.forEach((own, column) => {
          if (typeof own !== 'number') return; // names are told apart by other rules
          const at = (cell: Cell) =>
            asked(
              name,
              cells.with(
                index,
                grid.map((each, r) => (r === row ? each.with(column, cell) : each)),
              ) as Argument[],
            );
          watch(() => {
            for (const cell of oddCells) {
              if (meaning(cell) === 'blank') expect(at(cell)).toHaveProperty('message');
              else expectMeaning(name, argument, at, cell, ` (row ${row + 1}, column ${column + 1})`);
            }
          });
        });
      });
    }
  });
});
