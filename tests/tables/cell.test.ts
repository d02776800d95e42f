import { runInNewContext } from 'node:vm';
import { describe, expect, test } from 'vitest';
import {
  type Cell,
  isBlank,
  isDate,
  isErrorText,
  nameKey,
  numberIn,
  plain,
  quoted,
} from '../../src/tables/cell.ts';

/** A date of another realm, as a script's host hands it over. */
const foreignDate = runInNewContext('new Date(2026, 0, 2)') as Date;

describe('numberIn', () => {
  test.each<[Cell, number]>([
    [12.5, 12.5],
    [-0.25, -0.25],
    [0, 0],
    ['12.5', 12.5],
    [' 12.5 ', 12.5],
    ['\u00a012.5', 12.5], // no-break space
    ['12.5\u200b', 12.5], // space without width, as pasted from a web page
    ['-3', -3],
    ['\u22123', -3], // the true minus sign
    ['+3', 3],
    ['.5', 0.5],
    ['.25', 0.25],
    ['12.375', 12.375],
    ['5.', 5],
    [1e12, 1e12], // nothing in a sheet is larger
    ['-1000000000000', -1e12],
  ])('%j is %d', (cell, number) => {
    expect(numberIn(cell)).toBe(number);
  });

  test.each<[Cell, string]>([
    ['12,5', 'a number with a decimal point and no comma'],
    ['1,379', 'a number with a decimal point and no comma'],
    ['-12,5', 'a number with a decimal point and no comma'],
    ['+0,5', 'a number with a decimal point and no comma'],
    ['12,5,0', 'a number without unit or separators'],
    ['5\u22123', 'a number without unit or separators'],
    ['1,379.5', 'a number without unit or separators'],
    ['ca. 12,5', 'a number without unit or separators'],
    ['12,5 kg', 'a number without unit or separators'],
    ['1 200', 'a number without unit or separators'],
    ['1\u00a0200', 'a number without unit or separators'],
    ["1'200", 'a number without unit or separators'],
    ['5 ft', 'a number without unit or separators'],
    ['25 %', 'a number without unit or separators'],
    ['about 5', 'a number without unit or separators'],
    ['1e3', 'a number without unit or separators'],
    ['Infinity', 'a number without unit or separators'],
    ['0x10', 'a number without unit or separators'],
    ['--5', 'a number without unit or separators'],
    ['#REF!', 'a number; the cell holds an error'],
    ['#N/A', 'a number; the cell holds an error'],
    ['#¡REF!', 'a number; the cell holds an error'],
    ['#ИМЯ?', 'a number; the cell holds an error'],
    [true, 'a number, not a tick box'],
    [false, 'a number, not a tick box'],
    [new Date(2026, 0, 2), 'a number; the cell is formatted as a date'],
    [foreignDate, 'a number; the cell is formatted as a date'],
    [Number.NaN, 'a number'],
    [Number.POSITIVE_INFINITY, 'a number'],
  ])('%j is none', (cell, fault) => {
    expect(numberIn(cell)).toEqual({ fault });
  });
});

test('an empty cell is empty in every form, and a zero is not', () => {
  for (const cell of ['', null, undefined, '  ', '\u00a0', '\u202f', '\u200b'] as const)
    expect(isBlank(cell)).toBe(true);
  for (const cell of [0, false, '0', '-'] as const) expect(isBlank(cell)).toBe(false);
});

test('text is read as a person sees it', () => {
  expect(plain('  long-range\u00a0 \n tanks\u200b ')).toBe('long-range tanks');
  expect(nameKey(' Long-Range  TANKS')).toBe('long-range tanks');
  expect(plain('Mu\u0308cke')).toBe('M\u00fccke'); // u and a combining diaeresis
});

test('an error cell is known by its sign, a numbered name is a name', () => {
  for (const text of ['#REF!', '#N/A', '#DIV/0!', '#NAME?', '#ERROR!', '#¡REF!'])
    expect(isErrorText(text)).toBe(true);
  for (const text of ['#1 tank', '# 2', 'No. #3', 'tank #A', '']) expect(isErrorText(text)).toBe(false);
});

test('a date of another realm is a date, for which instanceof fails', () => {
  expect(foreignDate instanceof Date).toBe(false);
  expect(isDate(foreignDate)).toBe(true);
  expect(isDate('2026-01-02')).toBe(false);
});

test('a cell is quoted so that it can be found, and no longer than it helps', () => {
  expect(quoted('12,5')).toBe('"12,5"');
  expect(quoted(12.5)).toBe('12.5');
  expect(quoted(true)).toBe('TRUE');
  expect(quoted(false)).toBe('FALSE');
  expect(quoted(foreignDate)).toBe('a date');
  expect(quoted(' ')).toBe('an empty cell');
  expect(quoted('x'.repeat(60))).toBe(`"${'x'.repeat(60)}"`);
  expect(quoted('x'.repeat(200))).toBe(`"${'x'.repeat(60)}…"`);
});
