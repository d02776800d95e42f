/** Inputs by name: what moved is told cell by cell, and a table that was only sorted or moved has not changed. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Cell, Grid } from '../../src/tables/cell.ts';
import { inputChanges } from '../../src/tables/inputChanges.ts';
import {
  canonicalText,
  type Inputs,
  inputCells,
  inputNames,
  inputPlace,
  keptInputs,
} from '../../src/tables/inputs.ts';
import { smallInputs, withCell } from '../assessment/quoteFixture.ts';

const gridOf = (inputs: Inputs, table: keyof Inputs): Grid => inputs[table] ?? [];

describe('what moved', () => {
  test('nothing', () => expect(inputChanges(smallInputs, smallInputs)).toEqual([]));

  test.each<[keyof Inputs, string, string, Cell, object]>([
    ['airframe', 'kit price', 'value', 43000, { was: '41234.55 EUR', is: '43000 EUR' }],
    ['airframe', 'kit price', 'unit', 'CHF', { was: 'EUR', is: 'CHF' }],
    ['equipment', 'radio', 'fitted', false, { was: 'TRUE', is: 'FALSE' }],
    ['equipment', 'radio', 'price', null, { was: '1999.95 EUR', is: '' }],
    ['equipment', 'radio', 'needs', 'seat belts', { was: '', is: 'seat belts' }],
    ['packages', 'lead time', 'Elm', 12, { was: '10 weeks', is: '12 weeks' }],
    ['quote', 'package', 'value', 'Ash', { was: 'Elm', is: 'Ash' }],
  ])('%s, %s, %s', (table, row, column, value, change) => {
    const moved = withCell(smallInputs, table, row, column, value);
    expect(inputChanges(smallInputs, moved)).toEqual([{ table, row, column, ...change }]);
    expect(canonicalText(moved)).not.toBe(canonicalText(smallInputs));
  });

  test('a row of two names', () => {
    const components = gridOf(smallInputs, 'components').map((line) =>
      line[0] === 'Ash' && line[1] === 'propeller' ? line.map((cell, at) => (at === 9 ? 3300 : cell)) : line,
    );
    expect(inputChanges(smallInputs, { ...smallInputs, components })).toEqual([
      { table: 'components', row: 'Ash, propeller', column: 'price', was: '3100 EUR', is: '3300 EUR' },
    ]);
  });

  test('a unit of a column: every value there has another meaning, and the unit’s own cell says so', () => {
    const equipment = gridOf(smallInputs, 'equipment').map((line, at) =>
      at === 1 ? line.map((cell) => (cell === 'kg' ? 'lb' : cell)) : line,
    );
    expect(inputChanges(smallInputs, { ...smallInputs, equipment })).toEqual([
      { table: 'equipment', row: 'unit', column: 'weight', was: 'kg', is: 'lb' },
    ]);
  });

  test('rows that came and went are one change each', () => {
    const without = { ...smallInputs, tanks: gridOf(smallInputs, 'tanks').slice(0, 2) };
    const row = { table: 'tanks', row: 'wing tanks', column: 'whole row' };
    expect(inputChanges(smallInputs, without)).toEqual([{ ...row, was: 'there', is: '' }]);
    expect(inputChanges(without, smallInputs)).toEqual([{ ...row, was: '', is: 'new' }]);
  });

  test('the second of two rows of one name is told apart', () => {
    const twice = { ...smallInputs, tanks: [...gridOf(smallInputs, 'tanks'), ['wing tanks', 2.4, 60, 0]] };
    const heavier = {
      ...twice,
      tanks: twice.tanks.map((line, at) => (at === 3 ? ['wing tanks', 2.4, 70, 0] : line)),
    };
    expect(inputChanges(twice, heavier)).toEqual([
      { table: 'tanks', row: 'wing tanks (2)', column: 'usable', was: '60 L', is: '70 L' },
    ]);
  });
});

describe('what has not moved', () => {
  test('sorted rows, moved columns, titles above, empty rows between, spaces in a name', () => {
    const rowsOfIt = fc.shuffledSubarray([2, 3, 4, 5], { minLength: 4 });
    const turnedBy = fc.integer({ min: 1, max: 9 });
    const sameWhen = fc.property(rowsOfIt, turnedBy, (rows, columns) => {
      const grid = gridOf(smallInputs, 'equipment');
      const lines = [grid[0], grid[1], ...rows.map((at) => grid[at])] as Cell[][];
      const turned = lines.map((line) => [...line.slice(columns), ...line.slice(0, columns)]);
      const padded: Cell[][] = [
        ['Options'],
        ['', null],
        ...turned.flatMap((line) => [line, [false, '', null]]),
      ];
      const equipment = padded.map((line) =>
        line.map((cell) => (cell === 'seat belts' ? ' seat  belts' : cell)),
      );
      const moved = { ...smallInputs, equipment };
      expect(inputChanges(smallInputs, moved)).toEqual([]);
      expect(canonicalText(moved)).toBe(canonicalText(smallInputs));
    });
    fc.assert(sameWhen, { numRuns: 20 });
  });

  test('what is kept is the same, as JSON too', () => {
    const kept = JSON.parse(JSON.stringify(keptInputs(smallInputs))) as Inputs;
    expect(inputChanges(smallInputs, kept)).toEqual([]);
    expect(canonicalText(kept)).toBe(canonicalText(smallInputs));
    expect(Object.keys(kept)).toEqual(inputNames.filter((name) => smallInputs[name] !== undefined));
  });
});

test('a date stays what it is when kept: text that no field accepts', () => {
  const dated = withCell(smallInputs, 'quote', 'customer', 'value', new Date(Date.UTC(2026, 1, 3)));
  expect(keptInputs(dated).quote?.flat()).toContain('#DATE 2026-02-03T00:00:00.000Z');
  expect(canonicalText(keptInputs(dated))).toBe(canonicalText(dated));
});

test('a cell knows its place in the range, an empty one too', () => {
  const titled = { ...smallInputs, equipment: [['Options'], ['help'], ...gridOf(smallInputs, 'equipment')] };
  const found = inputCells(titled).find(({ row, column }) => row === 'radio' && column === 'fitted');
  expect(found?.at).toEqual({ row: 5, column: 6 });
  expect(inputPlace(titled, 'equipment', 'Radio', 'needs')).toEqual({ row: 5, column: 8 });
  expect(inputPlace(titled, 'equipment', 'radio')).toEqual({ row: 5, column: 0 });
  expect(inputPlace(titled, 'equipment', 'radio', 'colour')).toBeUndefined();
  expect(inputPlace(titled, 'components', 'Ash, oil', 'price')).toEqual({ row: 11, column: 9 });
  expect(inputPlace(titled, 'packages', 'cycle', 'Ash')).toEqual({ row: 1, column: 3 });
  expect(inputPlace({}, 'packages', 'cycle', 'Ash')).toBeUndefined();
});

test('values that look alike are not', () => {
  const one = withCell(smallInputs, 'quote', 'customer', 'value', 'a: "b"');
  const other = withCell(smallInputs, 'quote', 'customer', 'value', 'a: \\"b\\"');
  expect(canonicalText(one)).not.toBe(canonicalText(other));
});
