/**
 * The Sanderling adds up to the outline it was made from.
 * Expected values: the outline of the invented aircraft (read), its rounding as the tolerance; margins are those of its
 * simple model, which steps through loadings as `worstMargins` does.
 */
import { describe, expect, test } from 'vitest';
import {
  airframe,
  attribute,
  installed,
  type Mass,
  packageValue,
  rows,
  stationRanges,
  together,
  worstMargins,
} from './sampleFiles.ts';

describe('Sanderling, in kg and mm', () => {
  const sample = 'sanderling';
  const unusable = 2; // L
  const bare = { weight: 228, arm: 1400 };
  const fuelArm = 760;
  const density = (engine: string) => packageValue(sample, 'fuel density', engine);
  const emptyWith = (engine: string, changes: readonly Mass[] = []) =>
    together([
      bare,
      installed(sample, engine),
      { weight: unusable * density(engine), arm: fuelArm },
      ...changes,
    ]);
  const forwardLimit = (weight: number) => (weight <= 480 ? 850 : 850 + (30 * (weight - 480)) / 120);
  const margins = (engine: string, changes: readonly Mass[] = []) =>
    worstMargins(
      emptyWith(engine, changes),
      [...stationRanges(sample), { arm: fuelArm, minimum: 0, maximum: 90 * density(engine) }],
      600,
      forwardLimit,
      1015,
    );

  test('weighed without powerplant', () => {
    expect(attribute(sample, 'airframe', 'weighed with package')).toBe('');
    expect(airframe(sample, 'empty weight')).toBe(bare.weight);
    expect(airframe(sample, 'empty CG')).toBe(bare.arm);
  });

  test.each([
    ['Sorrel', 92, -430],
    ['Thistle', 98, -400],
    ['Clover', 118, -440],
  ])('%s: %d kg installed at %d mm', (engine, weight, arm) => {
    const total = installed(sample, engine);
    expect(Math.abs(total.weight - weight)).toBeLessThanOrEqual(0.5);
    expect(Math.abs(total.arm - arm)).toBeLessThanOrEqual(0.5);
  });

  test('Sorrel and Thistle stay within the limits, Clover is nose-heavy solo until its battery moves', () => {
    for (const engine of ['Sorrel', 'Thistle'])
      expect(Math.min(margins(engine).forward, margins(engine).aft)).toBeGreaterThan(0);
    const solo = together([emptyWith('Clover'), { weight: 85, arm: 980 }]);
    expect(solo.arm).toBeLessThan(forwardLimit(solo.weight) - 20);
    const moving = rows(sample, 'equipment')
      .filter((row) => row.item?.startsWith('battery'))
      .map((row) => ({ weight: Number(row.weight), arm: Number(row.arm) }));
    expect(moving).toHaveLength(3);
    const after = margins('Clover', moving);
    expect(Math.min(after.forward, after.aft)).toBeGreaterThan(0);
  });

  test('Clover is over the approved power, Thistle has a tip Mach number of 0.88', () => {
    const approved = airframe(sample, 'approved power');
    const over = ['Sorrel', 'Thistle', 'Clover'].filter(
      (engine) => packageValue(sample, 'takeoff power', engine) > approved,
    );
    expect(over).toEqual(['Clover']);
    const tipSpeed =
      (Math.PI *
        packageValue(sample, 'propeller diameter', 'Thistle') *
        packageValue(sample, 'takeoff rpm', 'Thistle')) /
      60;
    const airspeed = airframe(sample, 'VNO') / 3.6;
    expect(Math.abs(Math.hypot(tipSpeed, airspeed) / 340.294 - 0.88)).toBeLessThanOrEqual(0.005);
  });
});
