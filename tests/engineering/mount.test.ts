import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  firewallMoment,
  gyroscopicCouple,
  gyroscopicRates,
  meanTorque,
  sideLoadFactor,
  torqueCases,
  torqueFactor,
} from '../../src/engineering/mount.ts';
import { foot, horsepower, poundForce } from './tradeUnits.ts';

const footPound = poundForce * foot; // N·m

describe('engine torque', () => {
  // The trade's formula, Q [lbf·ft] = 5,252.11 hp / rpm (33,000 / 2π): 180 hp at 2,700 rpm is 350.1 lbf·ft
  test('mean torque of 180 hp at 2,700 rpm', () => {
    expect(meanTorque({ power: 180 * horsepower, shaftSpeed: 45 }) / footPound).toBeCloseTo(
      (5252.113 * 180) / 2700,
      3,
    );
  });

  test('a gearbox multiplies it', () => {
    const direct = meanTorque({ power: 1e5, shaftSpeed: 90 });
    expect(meanTorque({ power: 1e5, shaftSpeed: 90 / 2.43 }) / direct).toBeCloseTo(2.43, 12);
  });

  // 14 CFR 23.361(c) before amendment 64 (read); one cylinder: CS-VLA 361(b) (secondary); CS 22.361 agrees (read)
  test.each([
    [1, 8],
    [2, 4],
    [3, 3],
    [4, 2],
    [5, 1.33],
    [6, 1.33],
    [12, 1.33],
  ])('factor of a four-stroke engine with %d cylinders: %d', (cylinders, factor) => {
    expect(torqueFactor(cylinders, 4)).toBe(factor);
  });

  // CS-VLA 361(b) (secondary; the same figures read in a national translation of the rule)
  test.each([
    [1, 6],
    [2, 3],
    [3, 2],
    [4, 2],
    [6, 2],
  ])('factor of a two-stroke engine with %d cylinders: %d', (cylinders, factor) => {
    expect(torqueFactor(cylinders, 2)).toBe(factor);
  });

  test('half a cylinder or none is refused', () => {
    expect(() => torqueFactor(0, 4)).toThrow('cylinders must be at least 1, got 0');
    expect(() => torqueFactor(4.5, 4)).toThrow('cylinders must be a whole number, got 4.5');
  });

  // By hand: 100 kW at 40 rev/s is 397.887 N·m, 80 kW at 36 rev/s 353.678 N·m; four cylinders double both
  test('two cases: takeoff with 75 %, continuous with 100 % of the limit loads', () => {
    const [takeoff, continuous] = torqueCases(
      { power: 100_000, shaftSpeed: 40 },
      { power: 80_000, shaftSpeed: 36 },
      2,
    );
    expect(takeoff.limitTorque).toBeCloseTo(795.775, 3);
    expect(takeoff).toMatchObject({ rating: 'takeoff', limitLoadFraction: 0.75 });
    expect(continuous.limitTorque).toBeCloseTo(707.355, 3);
    expect(continuous).toMatchObject({ rating: 'maximumContinuous', limitLoadFraction: 1 });
  });
});

// 14 CFR 23.363 before amendment 64 (read)
test.each([
  [3.8, 1.33],
  [4.4, 4.4 / 3],
  [6, 2],
])('side load at n = %d: %d', (n, factor) => {
  expect(sideLoadFactor(n)).toBeCloseTo(factor, 12);
});

describe('gyroscopic couple', () => {
  test('14 CFR 23.371(a)(2) before amendment 64 (read): 2.5 rad/s yaw, 1 rad/s pitch', () => {
    expect(gyroscopicRates).toEqual({ yaw: 2.5, pitch: 1 });
  });

  // By hand: 2 kg·m² · 250 rad/s · 2.5 rad/s = 1,250 N·m; doubled for two blades, AMC 23.371 (secondary)
  test('three blades by hand, two blades twice that', () => {
    expect(gyroscopicCouple(2, 250, 2.5, 3)).toBe(1250);
    expect(gyroscopicCouple(2, 250, 2.5, 4)).toBe(1250);
    expect(gyroscopicCouple(2, 250, 2.5, 2)).toBe(2500);
  });

  // Independent of the formula: blades as point masses, their positions differentiated twice in an inertial frame. The
  // couple about the aircraft's pitch axis while it yaws: I Ω ω steadily for three, between 0 and 2 I Ω ω for two.
  test('point masses spun and yawed need these couples', () => {
    const [inertia, spin, turn, step] = [2, 250, 2.5, 1e-5];
    type Vector = [number, number, number];
    const pitchAxis = (t: number): Vector => [-Math.sin(turn * t), Math.cos(turn * t), 0];
    const blade = (t: number, offset: number): Vector => {
      const [x, y] = pitchAxis(t);
      const angle = spin * t + offset;
      return [x * Math.cos(angle), y * Math.cos(angle), Math.sin(angle)];
    };
    const couple = (t: number, blades: number) => {
      let sum = 0;
      for (let i = 0; i < blades; i++) {
        const offset = (2 * Math.PI * i) / blades;
        const [x, y, z] = blade(t, offset);
        const [ax, ay, az] = blade(t, offset).map((middle, k) => {
          const [before, after] = [blade(t - step, offset)[k]!, blade(t + step, offset)[k]!];
          return (before - 2 * middle + after) / step ** 2;
        }) as Vector;
        const [ux, uy] = pitchAxis(t);
        sum += ((y * az - z * ay) * ux + (z * ax - x * az) * uy) * (inertia / blades);
      }
      return Math.abs(sum);
    };
    const turnOfTheShaft = Array.from({ length: 360 }, (_, i) => ((2 * Math.PI) / spin) * (i / 360));
    for (const blades of [2, 3]) {
      const peak = Math.max(...turnOfTheShaft.map((t) => couple(t, blades)));
      expect(gyroscopicCouple(inertia, spin, turn, blades) / peak).toBeCloseTo(1, 3);
    }
    expect(Math.min(...turnOfTheShaft.map((t) => couple(t, 3)))).toBeCloseTo(1250, 0);
    expect(Math.min(...turnOfTheShaft.map((t) => couple(t, 2)))).toBeLessThan(1);
  });
});

describe('firewall moment', () => {
  const engine = { mass: 150, arm: 0.9 };
  const propeller = { mass: 20, arm: 0.3 };
  const seats = { mass: 30, arm: 2.5 };

  // By hand: firewall at 1.5 m: 150 · 0.6 + 20 · 1.2 = 114 kg·m, 1,117.958 N·m; what lies behind does not count
  test('counts what lies ahead', () => {
    expect(firewallMoment([engine, propeller, seats], 1.5, 1)).toBeCloseTo(1117.958, 3);
    expect(firewallMoment([engine, propeller, seats], 1.5, 3.8)).toBeCloseTo(3.8 * 1117.9581, 3);
    expect(firewallMoment([seats], 1.5, 1)).toBe(0);
    expect(firewallMoment([], 1.5, 1)).toBe(0);
  });

  test('what is removed ahead relieves it', () => {
    expect(firewallMoment([engine, { mass: -20, arm: 0.9 }], 1.5, 1)).toBeCloseTo(130 * 0.6 * 9.80665, 9);
  });

  test('does not depend on the datum', () => {
    fc.assert(
      fc.property(fc.double({ min: -10, max: 10, noNaN: true }), (shift) => {
        const shifted = [engine, propeller, seats].map(({ mass, arm }) => ({ mass, arm: arm + shift }));
        expect(firewallMoment(shifted, 1.5 + shift, 1)).toBeCloseTo(1117.9581, 6);
      }),
    );
  });
});
