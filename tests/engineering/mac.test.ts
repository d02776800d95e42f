import fc from 'fast-check';
import { expect, test } from 'vitest';
import { cgAtMacFraction, macFraction } from '../../src/engineering/mac.ts';
import { between } from './between.ts';

test('FAA-H-8083-1B (from memory): MAC 144 to 206, CG 161 is 27.4 %', () => {
  expect(Math.abs(100 * macFraction(161, 144, 206 - 144) - 27.4)).toBeLessThanOrEqual(0.05);
});

test('EASA question-bank style exercise (secondary): 15 % of 134.5 aft of 625.6 is 645.78', () => {
  expect(Math.abs(cgAtMacFraction(0.15, 625.6, 134.5) - 645.78)).toBeLessThanOrEqual(0.01);
});

test('there and back', () => {
  const arm = between(-500, 500);
  fc.assert(
    fc.property(arm, arm, between(0.1, 200), (cg, leadingEdge, length) => {
      expect(cgAtMacFraction(macFraction(cg, leadingEdge, length), leadingEdge, length)).toBeCloseTo(cg, 8);
    }),
  );
});
