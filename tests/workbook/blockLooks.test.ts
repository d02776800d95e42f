/** Looks of computed blocks: digits, signs, alignment, never a digit hidden. */
import { describe, expect, test } from 'vitest';
import type { Cell } from '../../src/tables/cell.ts';
import { blockLooks } from '../../src/workbook/blockLooks.ts';

const packages = new Set(['Elm', 'Ash']);
const looks = (block: Cell[][]) => blockLooks(block, packages);

describe('packages side by side', () => {
  const block: Cell[][] = [
    ['Turnstone', 'unit', 'Elm', 'Ash'],
    ['Weight', null, null, null],
    ['empty weight', 'lb', 1525.3, 1601],
    ['  against Elm', 'lb', null, 75.7],
    ['price', 'USD', 98000, 'not known'],
    ['  against Elm', 'USD', null, 1200],
    ['seats', '', 2, 4],
    ['Estimates for choosing and quoting an engine, not for flight.', null, null, null],
  ];
  const { formats, bold, sides, heads } = looks(block);

  test('have the same digits along a row', () => {
    expect(formats[2]?.slice(2)).toEqual(['#,##0.0##;"\u2212"#,##0.0##', '#,##0.0##;"\u2212"#,##0.0##']);
    expect(formats[4]?.[2]).toBe('#,##0;"\u2212"#,##0');
    expect(formats[6]?.[2]).toBe('General');
  });

  test('show a difference with its sign', () => {
    expect(formats[3]?.[3]).toBe('+#,##0.0##;"\u2212"#,##0.0##;0');
    expect(formats[5]?.[3]).toBe('+#,##0;"\u2212"#,##0;0');
  });

  test('stand right, words among numbers too; headings are bold, sentences are not', () => {
    expect(sides[4]?.slice(2)).toEqual(['right', 'right']);
    expect(bold.map((line) => line[0])).toEqual([true, true, false, false, false, false, false, false]);
    expect(heads).toEqual([0]);
  });
});

describe('a table of records', () => {
  const block: Cell[][] = [
    ['Named loadings', null, null],
    ['Package', 'Weight', 'In words'],
    [null, 'lb', null],
    ['Elm', 1559, 'fine'],
    ['Ash', 1811.5, 'too heavy by far, and what that means'],
    ['What would help', null, null],
    ['Elm', 'ballast', 'none'],
  ];
  const { formats, sides, heads, bold } = looks(block);

  test('has the same digits down a column', () => {
    expect([3, 4].map((row) => formats[row]?.[1])).toEqual(Array(2).fill('#,##0.0##;"\u2212"#,##0.0##'));
  });

  test('has heads and units over their numbers', () => {
    expect([1, 2, 3].map((row) => sides[row]?.slice(0, 3))).toEqual(Array(3).fill([null, 'right', null]));
    expect(heads).toEqual([1]);
    expect(bold[1]).toEqual([true, true, true]);
  });

  test('a row of words below a heading is no head', () => {
    expect(bold[6]).toEqual([false, false, false]);
  });
});

describe('a card', () => {
  const { sides, heads, bold } = looks([
    ['Card 2: static rpm', null, null, null],
    ['Set up', 'brakes on, chocks in front of the wheels', null, null],
    [null, 'Predicted', 'limit', 'unit'],
    ['engine speed', 2390, 2700, 'rpm'],
    ['oil pressure', 60, 100, 'psi'],
    ['Record', 'rpm and outside air temperature', null, null],
  ]);

  test('has the heads of its numbers over them, wherever they begin', () => {
    expect(heads).toEqual([2]);
    expect(bold[2]).toEqual([true, true, true, true]);
    expect(sides[2]).toEqual([null, 'right', 'right', null]);
    expect(bold[1]).toEqual([false, false, false, false]);
  });
});

describe('words between numbers', () => {
  const { sides } = looks([
    ['Every loading: the worst', null, null, null, null],
    ['Package', 'Limit', 'Caused by', 'pilot', 'long-range tank'],
    [null, 'in', null, 'lb', 'lb'],
    ['Elm', 97, 'rear seats', 130, null],
    ['Ash', 110, 'what fills the place behind the seats', 130, null],
  ]);

  test('stand in the middle, clear of both; sentences stand as they are', () => {
    expect(sides.map((line) => line[2])).toEqual([null, 'center', 'center', 'center', null]);
  });

  test('a column with a unit and no number now has its head over where the number will stand', () => {
    expect([1, 2, 3].map((row) => sides[row]?.[4])).toEqual(['right', 'right', 'right']);
  });

  test('so has one among numbers of the unit that their heading names', () => {
    const table = looks([
      ['Fuel flow, US gal/h', null, null, null],
      ['power, % of MCP', 'Elm lean', 'Ash rich', 'Ash lean'],
      [45, 6.4, null, 5.6],
      [50, 6.9, null, 6.1],
    ]);
    expect(table.sides[1]).toEqual([null, 'right', 'right', 'right']);
  });
});
