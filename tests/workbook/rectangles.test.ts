import { expect, test } from 'vitest';
import { rectangles } from '../../src/workbook/rectangles.ts';

test('equal cells make few rectangles that cover them all', () => {
  const a = 'a';
  const matrix = [
    [a, a, undefined],
    [a, a, 'b'],
  ];
  expect(rectangles(matrix)).toEqual([
    { value: 'a', row: 0, rows: 2, column: 0, columns: 2 },
    { value: 'b', row: 1, rows: 1, column: 2, columns: 1 },
  ]);
});
