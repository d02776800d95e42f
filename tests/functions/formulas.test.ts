import { describe, expect, test } from 'vitest';
import type { NumberArgument } from '../../src/functions/argument.ts';
import type { Formula } from '../../src/functions/formula.ts';
import { formulas } from '../../src/functions/library.ts';
import type { Cell, Grid } from '../../src/tables/cell.ts';
import { examples } from './examples/examples.ts';

const named = formulas.map((formula) => [formula.name, formula] as const);
const firstExample = ({ name }: Formula) => examples[name]![0]!;
const isNumber = (formula: Formula, index: number) => formula.arguments[index]?.type === 'number';
/** Every argument's cell; optional ones that the example leaves out with their defaults where those are numbers. */
function allCells(formula: Formula): (Cell | Grid)[] {
  const { cells } = firstExample(formula);
  return formula.arguments.map((argument, index) => {
    if (index < cells.length) return cells[index];
    return Number.isFinite(Number(argument.omitted)) ? Number(argument.omitted) : '';
  });
}
const call = (formula: Formula, cells: readonly (Cell | Grid)[]) => formula.call(cells);
const repeated = (cell: Cell | Grid, rows: number, columns: number): Grid =>
  Array.from({ length: rows }, () => Array.from({ length: columns }, () => cell as Cell));

test('every formula function has a worked example', () => {
  expect(Object.keys(examples).sort()).toEqual(formulas.map(({ name }) => name).sort());
});

describe.each(named)('%s', (_, formula) => {
  const several = formula.results.length > 1;
  const numberArguments = formula.arguments
    .map((_argument, index) => index)
    .filter((index) => isNumber(formula, index));
  const takesRanges = numberArguments.length > 0;

  test.each(examples[formula.name]!.map((each) => [JSON.stringify(each.cells), each] as const))(
    'of %s',
    (_cells, { cells, expected, within }) => {
      const result = call(formula, cells);
      const rows = typeof expected === 'number' ? result : (result as Cell[][])[0];
      if (typeof expected === 'number') {
        expect(typeof result).toBe('number');
        expect(Math.abs((result as number) - expected)).toBeLessThanOrEqual(within);
      } else {
        expect((result as Cell[][]).length).toBe(1);
        expected.forEach((value, index) => {
          expect(Math.abs((rows as number[])[index]! - value)).toBeLessThanOrEqual(within);
        });
        expect((rows as Cell[]).length).toBe(expected.length);
      }
    },
  );

  test('the one cell of a range is that cell', () => {
    const { cells } = firstExample(formula);
    const boxed = cells.map((cell, index) => (isNumber(formula, index) ? [[cell as Cell]] : cell));
    expect(call(formula, boxed)).toEqual(call(formula, cells));
  });

  if (takesRanges && !several)
    test('a range gives its own shape, whatever that is', () => {
      const { cells } = firstExample(formula);
      const single = call(formula, cells);
      for (const [rows, columns] of [
        [1, 3],
        [4, 1],
        [2, 3],
      ] as const) {
        // Every number argument as a range of one shape, then each alone beside single cells
        const all = cells.map((cell, index) =>
          isNumber(formula, index) ? repeated(cell, rows, columns) : cell,
        );
        expect(call(formula, all)).toEqual(repeated(single as Cell, rows, columns));
        for (const at of numberArguments.filter((index) => index < cells.length)) {
          const one = cells.map((cell, index) => (index === at ? repeated(cell, rows, columns) : cell));
          expect(call(formula, one)).toEqual(repeated(single as Cell, rows, columns));
        }
      }
    });

  if (takesRanges && several)
    test('a column gives a row of results for each of its cells', () => {
      const { cells } = firstExample(formula);
      const [row] = call(formula, cells) as Cell[][];
      for (const at of numberArguments.filter((index) => index < cells.length)) {
        const column = cells.map((cell, index) => (index === at ? repeated(cell, 3, 1) : cell));
        expect(call(formula, column)).toEqual([row, row, row]);
        const wide = cells.map((cell, index) => (index === at ? repeated(cell, 2, 2) : cell));
        expect(() => call(formula, wide)).toThrow(
          new RangeError(
            `${formula.name}: ${formula.arguments[at]!.name} must be one cell or one column, because each gives a row of results; got 2 columns`,
          ),
        );
      }
    });

  if (takesRanges)
    test('an empty cell in a range gives an empty result', () => {
      const { cells } = firstExample(formula);
      const required = numberArguments.filter((index) => !formula.arguments[index]!.optional);
      for (const at of required) {
        for (const empty of ['', null, undefined, ' '] as const) {
          const range: Grid = [[cells[at] as Cell], [empty], [cells[at] as Cell]];
          const result = call(
            formula,
            cells.map((cell, index) => (index === at ? range : cell)),
          ) as Cell[][];
          expect(result[1]).toEqual(formula.results.map(() => null));
          expect(result[2]).toEqual(result[0]);
          expect(result[0]!.every((cell) => typeof cell === 'number')).toBe(true);
        }
      }
    });

  const required = formula.arguments.filter(({ optional }) => !optional).length;
  if (required < formula.arguments.length)
    test('an optional argument left empty is left out; its default said aloud gives the same', () => {
      const { cells } = firstExample(formula);
      const base = cells.slice(0, required);
      const omitted = call(formula, base);
      for (const empty of ['', null, undefined, '  '] as const) {
        const filled = [...base, ...formula.arguments.slice(required).map(() => empty)];
        expect(call(formula, filled)).toEqual(omitted);
      }
      formula.arguments.forEach((argument, index) => {
        if (!argument.optional || !Number.isFinite(Number(argument.omitted))) return;
        // Its default said aloud is the same
        const said = allCells(formula).slice(0, index + 1);
        for (let other = required; other < index; other++) said[other] = '';
        said[index] = Number(argument.omitted);
        expect(call(formula, [...base, ...said.slice(required)])).toEqual(omitted);
      });
    });

  test('an argument that must be given is missed', () => {
    const { cells } = firstExample(formula);
    formula.arguments.forEach((argument, at) => {
      if (argument.optional) return;
      for (const empty of ['', null, undefined] as const) {
        const without = cells.map((cell, index) => (index === at ? empty : cell));
        const words =
          argument.type === 'rows' && argument.columns[0] !== argument.name
            ? `${argument.name} must be a range with rows of ${argument.columns.join(', ')}, got an empty cell`
            : `${argument.name} must be given, got an empty cell`;
        const where =
          argument.type === 'rows' && argument.columns[0] === argument.name ? ' (row 1, column 1)' : '';
        expect(() => call(formula, without)).toThrow(new RangeError(`${formula.name}: ${words}${where}`));
      }
      const rest = formula.arguments.slice(at).map(({ name }) => name);
      expect(() => call(formula, cells.slice(0, at))).toThrow(
        new RegExp(`^${formula.name}: (${rest.join('|')}) must be .*, got an empty cell`),
      );
    });
  });

  const wrong: readonly (readonly [Cell, string])[] = [
    ['12,5', 'a number with a decimal point and no comma, got "12,5"'],
    ['five', 'a number without unit or separators, got "five"'],
    ['#REF!', 'a number; the cell holds an error, got "#REF!"'],
    [true, 'a number, not a tick box, got TRUE'],
    [new Date(2026, 0, 1), 'a number; the cell is formatted as a date, got a date'],
    [Number.NaN, 'a number, got NaN'],
    [Number.POSITIVE_INFINITY, 'a number, got Infinity'],
  ];

  if (takesRanges)
    test('what is no number is refused, with its place in a range', () => {
      const cells = allCells(formula);
      for (const at of numberArguments) {
        const { name } = formula.arguments[at] as NumberArgument<number>;
        for (const [cell, words] of wrong) {
          const alone = cells.map((each, index) => (index === at ? cell : each));
          expect(() => call(formula, alone)).toThrow(
            new RangeError(`${formula.name}: ${name} must be ${words}`),
          );
          const good = cells[at] === '' ? 0 : (cells[at] as Cell);
          const column = cells.map((each, index) => (index === at ? [[good], [cell]] : each));
          expect(() => call(formula, column)).toThrow(
            new RangeError(`${formula.name}: ${name} must be ${words} (row 2, column 1)`),
          );
        }
      }
    });

  if (formula.arguments.some(({ type }) => type === 'rows'))
    test('what is no number, or no name, in rows is refused, with row and column', () => {
      formula.arguments.forEach((argument, at) => {
        if (argument.type !== 'rows') return;
        const cells = allCells(formula);
        const rows = cells[at] as Grid;
        rows[0]!.forEach((good, column) => {
          const isName = typeof good === 'string';
          const columnName = argument.columns[column] ?? argument.name;
          const name = columnName === argument.name ? columnName : `${argument.name} ${columnName}`;
          for (const [cell, words] of wrong) {
            if (isName && typeof cell === 'string' && !cell.startsWith('#')) continue;
            const grid = rows.map((row, r) => row.map((each, c) => (r === 0 && c === column ? cell : each)));
            const expected = isName ? words.replace(/^.*, got /, 'a name, got ') : words;
            expect(() =>
              call(
                formula,
                cells.map((each, index) => (index === at ? grid : each)),
              ),
            ).toThrow(
              new RangeError(`${formula.name}: ${name} must be ${expected} (row 1, column ${column + 1})`),
            );
          }
        });
      });
    });

  test('more arguments than it takes', () => {
    const cells = [...allCells(formula), 1];
    expect(() => call(formula, cells)).toThrow(
      new RangeError(
        `${formula.name}: takes at most ${formula.arguments.length} arguments, got ${cells.length}`,
      ),
    );
  });

  if (numberArguments.length > 1)
    test('ranges of two shapes', () => {
      const cells = allCells(formula);
      const [first, second] = numberArguments as [number, number];
      const mixed = cells.map((cell, index) => {
        if (index === first) return repeated(cell, 2, 1);
        return index === second ? repeated(cell, 3, 1) : cell;
      });
      expect(() => call(formula, mixed)).toThrow(
        new RangeError(
          `${formula.name}: ${formula.arguments[second]!.name} must be one cell or 2 by 1 like the ranges before it, got 3 by 1`,
        ),
      );
    });
});
