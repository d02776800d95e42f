import { expect, test } from 'vitest';
import { meantLabel } from '../../src/tables/readCell.ts';

test('the label that was probably meant is the nearest, of equals the first', () => {
  expect(meantLabel('maximun', ['maximum', 'maximal'])).toBe('maximum');
  expect(meantLabel('maximun', ['maximal', 'maximum'])).toBe('maximum');
  expect(meantLabel('tank c', ['tank a', 'tank b'])).toBe('tank a');
  expect(meantLabel('colour', ['system', 'weight'])).toBeUndefined();
});
