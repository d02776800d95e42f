/** What engine and air do to a cooling stream, by hand for an engine that turns and burns as told here. */
import { describe, expect, test } from 'vitest';
import { coolingConditionOf } from '../../src/assessment/coolingCondition.ts';
import type { Air, AircraftInFlight, Mixture } from '../../src/engineering/aircraftInFlight.ts';

const asked: Mixture[] = [];
const aircraft = {
  propellerDiameter: 2, // a disc of π m²
  propellerEfficiency: (trueAirspeed: number) => (trueAirspeed === 0 ? 0.5 : 0.8),
  shaftSpeedFraction: (trueAirspeed: number) => 0.8 + trueAirspeed / 1000,
  fuelFlow: (power: number, mixture: Mixture) => {
    asked.push(mixture);
    return power / 1e7; // 0.36 kg/kWh
  },
} as unknown as AircraftInFlight;
const air: Air = { pressureAltitude: 1000, temperature: 300, density: 1.1 };
const heatingValue = 43e6; // J/kg
const at = (trueAirspeed: number, power = 100_000, ratio?: number) =>
  coolingConditionOf(aircraft, heatingValue, air, trueAirspeed, power, ratio);

test('power, speed and air as they are given', () => {
  expect(at(50)).toMatchObject({
    shaftPower: 100_000,
    trueAirspeed: 50,
    pressureAltitude: 1000,
    outsideAirTemperature: 300,
  });
});

describe('fuel', () => {
  test('0.01 kg/s of 43 MJ/kg, rich: 430 kW', () => {
    asked.length = 0;
    expect(at(50).fuelPower).toBeCloseTo(430_000, 6);
    expect(asked).toEqual(['rich']);
  });

  test('burnt only where a stream asks: an engine without fuel points is cooled all the same', () => {
    const dry = {
      ...aircraft,
      fuelFlow: () => {
        throw new RangeError('no fuel points');
      },
    } as AircraftInFlight;
    const condition = coolingConditionOf(dry, heatingValue, air, 50, 100_000);
    expect(condition.thrust).toBeGreaterThan(0);
    expect(() => condition.fuelPower).toThrow('no fuel points');
  });
});

test('engine speed: that of the propeller at this airspeed, unless it is given', () => {
  expect(at(50).engineSpeedRatio).toBeCloseTo(0.85, 12);
  expect(at(50, 100_000, 0.4).engineSpeedRatio).toBe(0.4);
});

describe('propeller (momentum theory of the actuator disc: Rankine, Froude)', () => {
  test('a disc of π m²', () => {
    expect(at(50).discArea).toBeCloseTo(Math.PI, 12);
  });

  test('standing still: T³ = (k P)² 2 ρ A with k = 0.5', () => {
    expect(at(0).thrust).toBeCloseTo(Math.cbrt(50_000 ** 2 * 2 * 1.1 * Math.PI), 6);
  });

  test('at 50 m/s: k P = T u, T = 2 ρ A u (u − V) with k = 0.8', () => {
    const { thrust } = at(50);
    const throughDisc = 80_000 / thrust;
    expect(2 * 1.1 * Math.PI * throughDisc * (throughDisc - 50)).toBeCloseTo(thrust, 6);
  });
});
