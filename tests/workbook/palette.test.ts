import { expect, test } from 'vitest';
import { packageStyles } from '../../src/workbook/palette.ts';

test('packages differ in colour and dash; the baseline is black and solid', () => {
  const styles = packageStyles(8, 2);
  expect(styles[2]).toEqual({ colour: '#000000', dash: undefined, ink: '#ffffff' });
  expect(new Set(styles.map(({ colour }) => colour)).size).toBe(8);
  expect(new Set(styles.map(({ dash }) => String(dash))).size).toBe(8);
});
