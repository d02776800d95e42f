import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  breguetEndurance,
  breguetRange,
  endurance,
  visualReserveTime,
} from '../../src/engineering/endurance.ts';

const gravity = 9.80665;

describe('endurance after reserve', () => {
  test('by hand: 100 kg at 25 kg/h is 4 h, less 30 min', () => {
    expect(endurance(100, 25 / 3600, 1800) / 3600).toBeCloseTo(3.5, 12);
  });

  test('fuel short of the reserve shows below 0', () => {
    expect(endurance(10, 40 / 3600, 1800) / 60).toBeCloseTo(-15, 12);
    expect(endurance(0, 1, 0)).toBe(0);
  });

  test('14 CFR 91.151(a) (read, secondary): 30 min by day, 45 by night', () => {
    expect(visualReserveTime).toEqual({ day: 1800, night: 2700 });
  });
});

describe('Breguet', () => {
  // Anderson, Introduction to Flight, example 6.12 (inputs and formula read in a textbook companion, output computed
  // apart): weights 13,127.5 and 11,495 N, fuel weight 2.0025/(3600 · 746) N/(W·s)
  const startMass = 13_127.5 / gravity;
  const endMass = 11_495 / gravity;
  const bsfc = 2.0025 / (3600 * 746) / gravity;

  test('range of the textbook aircraft: 1,940,549 m', () => {
    const range = breguetRange(0.8, 13.62, bsfc, startMass, endMass);
    expect(Math.abs(range - 1_940_549)).toBeLessThan(1);
    expect(Math.abs(range / 1609.344 / 1207 - 1)).toBeLessThan(2e-3); // the book's 1,207 mi (from memory), read off a plot
  });

  test('endurance of the textbook aircraft: 51,826 s, 14.4 h', () => {
    const time = breguetEndurance(0.8, 12.81, bsfc, 1.225, 16.165, startMass, endMass);
    expect(Math.abs(time - 51_826)).toBeLessThanOrEqual(0.5);
    expect(time / 3600).toBeCloseTo(14.4, 1);
  });

  test('range is the integral of speed over weight burnt', () => {
    // dR = η (L/D) / (c g) dm/m in 10,000 steps
    let range = 0;
    const step = (startMass - endMass) / 10_000;
    for (let m = endMass + step / 2; m < startMass; m += step)
      range += ((0.8 * 13.62) / (bsfc * gravity)) * (step / m);
    expect(breguetRange(0.8, 13.62, bsfc, startMass, endMass) / range).toBeCloseTo(1, 6);
  });

  test('no fuel, no range; more fuel, more of both', () => {
    expect(breguetRange(0.8, 10, 8e-8, 1000, 1000)).toBe(0);
    expect(breguetEndurance(0.8, 10, 8e-8, 1.2, 15, 1000, 1000)).toBe(0);
    fc.assert(
      fc.property(fc.double({ min: 1, max: 500, noNaN: true }), (fuel) => {
        expect(breguetRange(0.8, 10, 8e-8, 1001 + fuel, 1000)).toBeGreaterThan(
          breguetRange(0.8, 10, 8e-8, 1000 + fuel, 1000),
        );
        expect(breguetEndurance(0.8, 10, 8e-8, 1, 15, 1001 + fuel, 1000)).toBeGreaterThan(
          breguetEndurance(0.8, 10, 8e-8, 1, 15, 1000 + fuel, 1000),
        );
      }),
    );
  });
});
