import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { seaLevelDensity } from '../../src/engineering/air.ts';
import {
  discArea,
  groundClearance,
  helicalTipMach,
  idealEfficiency,
  inducedVelocity,
  propellerThrust,
  requiredGroundClearance,
  staticThrust,
} from '../../src/engineering/propeller.ts';
import { inch } from './tradeUnits.ts';

const powers = fc.double({ min: 1e3, max: 5e5, noNaN: true });
const speeds = fc.double({ min: 0, max: 200, noNaN: true });
const diameters = fc.double({ min: 1, max: 3, noNaN: true });

describe('actuator disc', () => {
  // Froude disc: formulas read in a secondary source, numbers derived from T = 2 ρ A (V + w) w; 0.1 %
  test('1,000 N at 60 m/s from a 1.8 m disc', () => {
    expect(discArea(1.8)).toBeCloseTo(2.5447, 4);
    expect(inducedVelocity(1000, 60, 1.8, 1.225)).toBeCloseTo(2.564, 3);
    expect(idealEfficiency(1000, 60, 1.8, 1.225)).toBeCloseTo(0.959, 3);
    expect(Math.abs(propellerThrust(62_564, 60, 1.8, 1.225, 1) / 1000 - 1)).toBeLessThan(1e-3);
  });

  // By hand: disc 2 m² (D = √(8/π)), ρ 1, T 400 N, V 15: T/2ρA = 100, w = −7.5 + √(56.25 + 100) = 5, P = 400 · 20
  test('an example in whole numbers', () => {
    const diameter = Math.sqrt(8 / Math.PI);
    expect(inducedVelocity(400, 15, diameter, 1)).toBeCloseTo(5, 12);
    expect(idealEfficiency(400, 15, diameter, 1)).toBeCloseTo(0.75, 12);
    expect(propellerThrust(8000, 15, diameter, 1, 1)).toBeCloseTo(400, 10);
    expect(propellerThrust(10_000, 15, diameter, 1, 0.8)).toBeCloseTo(400, 10);
    // Standing still with the same disc: w = 10, T = 2 · 2 · 100 = 400, P = 4,000
    expect(staticThrust(4000, diameter, 1, 1)).toBeCloseTo(400, 10);
    expect(propellerThrust(4000, 0, diameter, 1, 1)).toBeCloseTo(400, 10);
  });

  test('thrust times speed at the disc is the useful power', () => {
    fc.assert(
      fc.property(powers, speeds, diameters, fc.double({ min: 0.01, max: 1, noNaN: true }), (P, V, D, k) => {
        const thrust = propellerThrust(P, V, D, 0.9, k);
        expect((thrust * (V + inducedVelocity(thrust, V, D, 0.9))) / (k * P)).toBeCloseTo(1, 9);
      }),
    );
  });

  test('thrust falls with speed, rises with power, diameter and density, and never exceeds the static', () => {
    fc.assert(
      fc.property(powers, speeds, diameters, (P, V, D) => {
        const thrust = propellerThrust(P, V, D, 1, 0.8);
        expect(propellerThrust(P, V + 1, D, 1, 0.8)).toBeLessThan(thrust);
        expect(propellerThrust(P * 1.1, V, D, 1, 0.8)).toBeGreaterThan(thrust);
        expect(propellerThrust(P, V, D * 1.1, 1, 0.8)).toBeGreaterThan(thrust);
        expect(propellerThrust(P, V, D, 1.1, 0.8)).toBeGreaterThan(thrust);
        expect(thrust).toBeLessThanOrEqual(staticThrust(P, D, 1, 0.8) * (1 + 1e-12));
        expect(thrust * V).toBeLessThan(0.8 * P);
      }),
    );
  });

  test('thrust is smooth to standing still, where its slope is −kP / 3u²', () => {
    // u³ − V u² = c differentiated at V = 0 gives du/dV = 1/3, and T = kP/u
    const discSpeed = 1e5 / staticThrust(1e5, 1.9, seaLevelDensity, 1);
    const step = 1e-4;
    const slope =
      (propellerThrust(1e5, step, 1.9, seaLevelDensity, 1) -
        propellerThrust(1e5, 0, 1.9, seaLevelDensity, 1)) /
      step;
    expect(slope / (-1e5 / (3 * discSpeed ** 2))).toBeCloseTo(1, 4);
  });

  test('no power, no thrust; no thrust, no induced velocity', () => {
    expect(propellerThrust(0, 0, 1.8, 1.2, 0.8)).toBe(0);
    expect(propellerThrust(0, 50, 1.8, 1.2, 0.8)).toBe(0);
    expect(inducedVelocity(0, 0, 1.8, 1.2)).toBe(0);
    expect(idealEfficiency(0, 0, 1.8, 1.2)).toBe(0);
    expect(idealEfficiency(0, 50, 1.8, 1.2)).toBe(1);
    expect(() => propellerThrust(0, 0, 0, 1.2, 0.8)).toThrow('diameter must be above 0 m, got 0'); // refused all the same
  });
});

// Kinematics (derived), 0.1 %: 1.8 m at 2,700 rpm turns its tips at 254.47 m/s
test('tip Mach number of 1.8 m at 2,700 rpm', () => {
  expect(helicalTipMach(0, 45, 1.8, 1)).toBeCloseTo(254.47, 2);
  expect(helicalTipMach(0, 45, 1.8, 340.29)).toBeCloseTo(0.7478, 4);
  expect(helicalTipMach(60, 45, 1.8, 340.29)).toBeCloseTo(0.7683, 4);
});

describe('ground clearance', () => {
  test('axis 44 in high, 74 in propeller: 7 in; a longer one strikes', () => {
    expect(groundClearance(44 * inch, 74 * inch)).toBeCloseTo(7 * inch, 12);
    expect(groundClearance(1, 2.1)).toBeCloseTo(-0.05, 12);
  });

  test('14 CFR 23.925(a) before amendment 64 (read): 7 in with a nosewheel, 9 in with a tailwheel', () => {
    expect(requiredGroundClearance.nosewheel / inch).toBeCloseTo(7, 12);
    expect(requiredGroundClearance.tailwheel / inch).toBeCloseTo(9, 12);
  });
});
