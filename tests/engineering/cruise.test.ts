import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type AircraftInFlight, airAt } from '../../src/engineering/aircraftInFlight.ts';
import {
  type CruiseConditions,
  cruiseOnFuel,
  cruiseOverDistance,
  cruiseState,
} from '../../src/engineering/cruise.ts';
import { drag } from '../../src/engineering/dragPolar.ts';
import { breguetRange } from '../../src/engineering/endurance.ts';
import { fourSeater, fourSeaterMass } from './exampleAircraft.ts';
import { integrate } from './independentIntegrator.ts';

const conditions: CruiseConditions = { setting: 0.7, mixture: 'lean', air: airAt(2000), headwind: 0 };

test('one state: fuel flow is power times BSFC, ground speed is airspeed less wind', () => {
  const state = cruiseState(fourSeater, { ...conditions, headwind: 10 }, fourSeaterMass)!;
  expect(state.shaftPower).toBeCloseTo(84e3, 6);
  expect(state.fuelFlow).toBeCloseTo(84e3 * 7.2e-8, 12);
  expect(state.groundSpeed).toBeCloseTo(state.trueAirspeed - 10, 12);
  expect(state.fullThrottle).toBe(false);
});

test('a headwind as fast as the aircraft leaves it in place: no cruise, and no range without end', () => {
  const { trueAirspeed } = cruiseState(fourSeater, conditions, fourSeaterMass)!;
  expect(cruiseState(fourSeater, { ...conditions, headwind: trueAirspeed }, fourSeaterMass)).toBeUndefined();
});

describe('against Breguet', () => {
  // Little fuel: lift coefficient and efficiency stay what they are at the middle, and Breguet's formula holds
  test('with little fuel it is Breguet with the mean lift–drag ratio and efficiency', () => {
    const fuel = 10;
    const leg = cruiseOnFuel(fourSeater, conditions, fourSeaterMass, fuel)!;
    const middle = fourSeaterMass - fuel / 2;
    const { trueAirspeed, shaftPower } = cruiseState(fourSeater, conditions, middle)!;
    const resistance = drag(fourSeater.dragPolar, 14, middle, trueAirspeed, conditions.air.density);
    const breguet = breguetRange(
      (resistance * trueAirspeed) / shaftPower,
      (middle * 9.80665) / resistance,
      7.2e-8,
      fourSeaterMass,
      fourSeaterMass - fuel,
    );
    expect(leg.distance / breguet).toBeCloseTo(1, 4);
  });

  test('with induced drag taken away speed does not change: distance is speed × fuel / fuel flow', () => {
    const { dragPolar } = fourSeater;
    const flat: AircraftInFlight = { ...fourSeater, dragPolar: { ...dragPolar, spanEfficiency: 1e9 } };
    const { groundSpeed, fuelFlow } = cruiseState(flat, conditions, 1000)!;
    const leg = cruiseOnFuel(flat, conditions, 1000, 150)!;
    expect(leg.distance / ((groundSpeed * 150) / fuelFlow)).toBeCloseTo(1, 5); // speeds are found to 1 mm/s
    expect(leg.time).toBeCloseTo(150 / fuelFlow, 6);
  });
});

test('an independent integrator burns the same', () => {
  const leg = cruiseOverDistance(fourSeater, { ...conditions, headwind: 8 }, fourSeaterMass, 900e3)!;
  const perMetre = (_: number, [fuel]: number[]) => {
    const state = cruiseState(fourSeater, { ...conditions, headwind: 8 }, fourSeaterMass - fuel!)!;
    return [state.fuelFlow / state.groundSpeed, 1 / state.groundSpeed];
  };
  const [fuel, time] = integrate(perMetre, 0, [0, 0], 900e3);
  expect(leg.fuel / fuel!).toBeCloseTo(1, 5);
  expect(leg.time / time!).toBeCloseTo(1, 5);
});

test('distance on fuel and fuel for distance are inverse', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 5, max: 200, noNaN: true }),
      fc.double({ min: 0.6, max: 0.8, noNaN: true }),
      fc.double({ min: -20, max: 20, noNaN: true }),
      (fuel, setting, headwind) => {
        const wind = { ...conditions, setting, headwind };
        const out = cruiseOnFuel(fourSeater, wind, fourSeaterMass, fuel)!;
        const back = cruiseOverDistance(fourSeater, wind, fourSeaterMass, out.distance)!;
        expect(back.fuel / fuel).toBeCloseTo(1, 4);
        expect(back.time / out.time).toBeCloseTo(1, 4);
      },
    ),
  );
});

test('lighter goes farther on the same fuel, against the wind less far', () => {
  const distance = (mass: number, headwind: number) =>
    cruiseOnFuel(fourSeater, { ...conditions, headwind }, mass, 80)!.distance;
  expect(distance(1000, 0)).toBeGreaterThan(distance(1100, 0));
  expect(distance(1100, 10)).toBeLessThan(distance(1100, 0));
});

test('nothing where it cannot cruise', () => {
  expect(cruiseState(fourSeater, { ...conditions, setting: 0.2 }, fourSeaterMass)).toBeUndefined();
  expect(cruiseState(fourSeater, { ...conditions, headwind: 100 }, fourSeaterMass)).toBeUndefined();
  expect(cruiseOnFuel(fourSeater, { ...conditions, setting: 0.2 }, fourSeaterMass, 50)).toBeUndefined();
  expect(
    cruiseOverDistance(fourSeater, { ...conditions, setting: 0.2 }, fourSeaterMass, 1e5),
  ).toBeUndefined();
  expect(cruiseOverDistance(fourSeater, conditions, fourSeaterMass, 2e7)).toBeUndefined();
});
