import { describe, expect, test } from 'vitest';
import { fuelFlowToDemonstrate, minimumFuel } from '../../src/engineering/fuelSystem.ts';
import { horsepower, pound, poundPerHorsepowerHour } from './tradeUnits.ts';

// 14 CFR 23.955(b), (c) before amendment 64 (read); CS-VLA 955 has the same (from memory)
test('fuel flow to demonstrate: 125 % with a pump, 150 % by gravity', () => {
  expect(fuelFlowToDemonstrate(16, 'pump')).toBe(20);
  expect(fuelFlowToDemonstrate(16, 'gravity')).toBe(24);
});

describe('minimum fuel', () => {
  test('half an hour at MCP, by hand: 180 hp at 0.5 lb/hp·h is 45 lb', () => {
    expect(minimumFuel(180 * horsepower, 0.5 * poundPerHorsepowerHour) / pound).toBeCloseTo(45, 10);
  });

  // AC 43.13-1B, chapter 10 (read): 82.5 lb for 165 hp, METO hp / 2. As half an hour at MCP that is 1 lb/hp·h, twice
  // what a four-stroke engine burns: the rule is older and more than this method gives.
  test('the METO rule of AC 43.13-1B is half an hour at 1 lb/hp·h', () => {
    expect(minimumFuel(165 * horsepower, poundPerHorsepowerHour) / pound).toBeCloseTo(82.5, 10);
  });

  test('an hour is twice as much', () => {
    expect(minimumFuel(75_000, 8e-8, 3600)).toBeCloseTo(21.6, 12); // 75 kW · 3,600 s · 0.08 kg/MJ
    expect(minimumFuel(75_000, 8e-8)).toBeCloseTo(10.8, 12);
  });
});
