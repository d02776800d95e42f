import { describe, expect, test } from 'vitest';
import {
  type AircraftInFlight,
  airAt,
  airspeedRange,
  climbGradient,
  shaftPower,
  thrust,
} from '../../src/engineering/aircraftInFlight.ts';
import { drag } from '../../src/engineering/dragPolar.ts';
import { propellerThrust } from '../../src/engineering/propeller.ts';
import { fourSeater, fourSeaterMass, textbookAirplane, textbookMass } from './exampleAircraft.ts';

test('air: standard at 2,000 m, and 20 K warmer', () => {
  // US Standard Atmosphere 1976 at 2,000 m geopotential: 275.15 K, 79,495 Pa, 1.00649 kg/m³ (from memory; to 1e-4)
  expect(airAt(2000).temperature).toBeCloseTo(275.15, 10);
  expect(airAt(2000).density).toBeCloseTo(1.0065, 4);
  expect(airAt(2000, 20).density / airAt(2000).density).toBeCloseTo(275.15 / 295.15, 12);
});

describe('shaft power', () => {
  const fixedPitch: AircraftInFlight = {
    ...fourSeater,
    shaftSpeedFraction: (trueAirspeed) => Math.min(1, 0.8 + trueAirspeed / 400),
  };

  test('full throttle by rating', () => {
    expect(shaftPower(fourSeater, 'takeoff', airAt(0))(30)).toBeCloseTo(135e3, 6);
    expect(shaftPower(fourSeater, 'continuous', airAt(0))(30)).toBeCloseTo(120e3, 6);
  });

  test('a fraction of maximum continuous power, while the air gives it', () => {
    expect(shaftPower(fourSeater, 0.75, airAt(0))(60)).toBeCloseTo(90e3, 6);
    expect(shaftPower(fourSeater, 0.75, airAt(6000))(60)).toBe(
      shaftPower(fourSeater, 'continuous', airAt(6000))(60),
    );
  });

  test('a fraction of continuous power is never drawn from the takeoff rating', () => {
    const continuousOnly: AircraftInFlight = {
      ...fourSeater,
      fullThrottlePower: (rating) => (rating === 'continuous' ? 100e3 : Number.NaN),
    };
    expect(shaftPower(continuousOnly, 1, airAt(0))(60)).toBe(100e3);
  });

  test('a fixed pitch holds the engine back when slow, throttled or not', () => {
    expect(shaftPower(fixedPitch, 'continuous', airAt(0))(40)).toBeCloseTo(0.9 * 120e3, 6);
    expect(shaftPower(fixedPitch, 0.85, airAt(0))(0)).toBeCloseTo(0.8 * 120e3, 6);
    expect(shaftPower(fixedPitch, 0.85, airAt(0))(40)).toBeCloseTo(0.85 * 120e3, 6);
  });
});

test('thrust is that of the disc at k(V), the gradient excess thrust over weight', () => {
  const air = airAt(1000);
  const available = propellerThrust(
    shaftPower(fourSeater, 'continuous', air)(38),
    38,
    1.9,
    air.density,
    0.76, // at the climb anchor
  );
  expect(thrust(fourSeater, 'continuous', air)(38)).toBeCloseTo(available, 9);
  const excess = available - drag(fourSeater.dragPolar, fourSeater.wingArea, fourSeaterMass, 38, air.density);
  expect(climbGradient(fourSeater, 'continuous', air, fourSeaterMass)(38)).toBeCloseTo(
    excess / (fourSeaterMass * 9.80665),
    12,
  );
});

test('the range of speeds ends where nothing can fly', () => {
  const air = airAt(0);
  const { stall, highest } = airspeedRange(textbookAirplane, 'continuous', air, textbookMass);
  // C_L = C_Lmax at the stall, by the definition of lift
  expect((2 * textbookMass * 9.80665) / (air.density * stall ** 2 * textbookAirplane.wingArea)).toBeCloseTo(
    2,
    10,
  );
  // By hand: 230 hp = 171,511 W, 174 ft² = 16.165 m², 1.225 kg/m³: (2 · 171,511 / (1.225 · 16.165 · 0.025))^⅓ = 88.49 m/s
  expect(highest).toBeCloseTo(88.49, 2);
  expect(climbGradient(textbookAirplane, 'continuous', air, textbookMass)(highest)).toBeLessThan(0);
});

test('with next to no power speeds are still looked at from the stall to half as much again', () => {
  const idling: AircraftInFlight = { ...textbookAirplane, fullThrottlePower: () => 1 };
  const { stall, highest } = airspeedRange(idling, 'continuous', airAt(0), textbookMass);
  expect(highest / stall).toBeCloseTo(1.5, 12);
});
