import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { alternatorSurplus, batteryTime, requiredBatteryTime } from '../../src/engineering/electrical.ts';

const ampereHour = 3600; // A·s

const battery = {
  capacity: 28 * ampereHour,
  ratedTime: 20 * 3600,
  loadBeforeShedding: 25,
  essentialLoad: 15,
  timeToNotice: 300,
  derating: 0.8,
  peukertExponent: 1.15,
};

describe('time on battery', () => {
  // By hand: 0.8 · 28 − 25/12 = 20.31667 A·h left; 20.31667/(15 · 20) = 0.06772222; its power 1.15 is
  // e^(1.15 · −2.692341) = 0.0452211; 1,200 min · that = 54.2653 min, and 5 min before: 59.265 min
  test('by hand', () => {
    const result = batteryTime(battery);
    expect(result.time / 60).toBeCloseTo(59.265, 2);
    expect(result.shedInTime).toBe(true);
  });

  // A teaching page on Peukert's law (read, secondary): 100 A·h at 1 A, exponent 1.2, gives 5 A for 14.5 h
  test("Peukert's law alone", () => {
    const { time } = batteryTime({
      capacity: 100 * ampereHour,
      ratedTime: 100 * 3600,
      loadBeforeShedding: 5,
      essentialLoad: 5,
      timeToNotice: 0,
      derating: 1,
      peukertExponent: 1.2,
    });
    expect(time / 3600).toBeCloseTo(14.5, 1);
  });

  test('with exponent 1 it is charge over current: 22.4 A·h, 25 A for 5 min, then 15 A', () => {
    const { time } = batteryTime({ ...battery, peukertExponent: 1 });
    expect(time / 60).toBeCloseTo(5 + (60 * (22.4 - 25 / 12)) / 15, 9);
  });

  test('a battery empty before the load is shed lasts charge over the whole load, without a step', () => {
    const overloaded = { ...battery, loadBeforeShedding: 300 };
    expect(batteryTime(overloaded)).toEqual({ time: (22.4 * ampereHour) / 300, shedInTime: false });
    const justInTime = { ...battery, timeToNotice: (22.4 * ampereHour) / 25 - 1e-6 };
    expect(batteryTime(justInTime).shedInTime).toBe(true);
    expect(batteryTime(justInTime).time).toBeCloseTo((22.4 * ampereHour) / 25, 3);
  });

  test('a battery that is empty just when the load would be shed is not shed in time', () => {
    // 1 A·h at 10 A lasts 6 min
    const empty = {
      ...battery,
      capacity: ampereHour,
      derating: 1,
      loadBeforeShedding: 10,
      timeToNotice: 360,
    };
    expect(batteryTime(empty)).toEqual({ time: 360, shedInTime: false });
  });

  test('more load or an older battery never lasts longer', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 15, max: 200, noNaN: true }),
        fc.double({ min: 5, max: 15, noNaN: true }),
        (before, essential) => {
          const loads = { ...battery, loadBeforeShedding: before, essentialLoad: essential };
          const { time } = batteryTime(loads);
          expect(batteryTime({ ...loads, essentialLoad: essential + 1 }).time).toBeLessThanOrEqual(time);
          expect(batteryTime({ ...loads, loadBeforeShedding: before + 1 }).time).toBeLessThanOrEqual(time);
          expect(batteryTime({ ...loads, derating: 0.7 }).time).toBeLessThanOrEqual(time);
        },
      ),
    );
  });

  test('14 CFR 23.1353(h) before amendment 64 (30 min from memory)', () => {
    expect(requiredBatteryTime).toBe(1800);
  });
});

test('alternators against load, by hand: 60 + 20 A against 35 + 12 A leaves 33 A; one failed, 20 A lacks 27 A', () => {
  expect(alternatorSurplus([60, 20], [35, 12])).toBe(33);
  expect(alternatorSurplus([20], [35, 12])).toBe(-27);
  expect(alternatorSurplus([], [15])).toBe(-15);
});
