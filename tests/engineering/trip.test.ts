import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type AircraftInFlight, airAt } from '../../src/engineering/aircraftInFlight.ts';
import { climbToHeight } from '../../src/engineering/climb.ts';
import { cruiseOverDistance, cruiseState } from '../../src/engineering/cruise.ts';
import { visualReserveTime } from '../../src/engineering/endurance.ts';
import { type TripPlan, tripOnFuel, tripOverDistance } from '../../src/engineering/trip.ts';
import { fourSeater, fourSeaterMass } from './exampleAircraft.ts';

const plan: TripPlan = {
  fieldAltitude: 300,
  cruiseAltitude: 2300,
  temperatureDeviation: 10,
  setting: 0.7,
  mixture: 'lean',
  headwind: 5,
  taxiFuel: 3,
  reserveTime: visualReserveTime.day,
};

function flown(trip: ReturnType<typeof tripOnFuel>) {
  if (!trip.possible) throw new Error(`trip expected, but: ${trip.stops}`);
  return trip;
}

describe('a trip by its phases', () => {
  const phases = () => {
    const trip = flown(tripOverDistance(fourSeater, plan, fourSeaterMass, 600e3));
    const climb = climbToHeight(fourSeater, 300, 2300, fourSeaterMass - 3, 10);
    const climbDistance = climb.distance - 5 * climb.time; // over the ground, against 5 m/s
    const cruise = cruiseOverDistance(
      fourSeater,
      { setting: 0.7, mixture: 'lean', headwind: 5, air: airAt(2300, 10) },
      fourSeaterMass - 3 - climb.fuel,
      600e3 - climbDistance,
    )!;
    return { trip, climb, cruise };
  };

  test('climb and cruise add up to the distance and the time', () => {
    const { trip, climb, cruise } = phases();
    expect(trip.distance).toBeCloseTo(600e3, 3);
    expect(trip.climbFuel).toBeCloseTo(climb.fuel, 9);
    expect(trip.cruiseFuel).toBeCloseTo(cruise.fuel, 9);
    expect(trip.time).toBeCloseTo(climb.time + cruise.time, 6);
    expect(trip.endsInClimb).toBe(false);
  });

  // 30 min by day at cruise: 70 % of 120 kW at 7.2e-8 kg/J for 1,800 s = 10.8864 kg (14 CFR 91.151)
  test('the reserve, and the sum', () => {
    const { trip, climb, cruise } = phases();
    expect(trip.reserveFuel).toBeCloseTo(10.8864, 6);
    expect(trip.totalFuel).toBeCloseTo(3 + climb.fuel + cruise.fuel + 10.8864, 6);
    const night = flown(
      tripOverDistance(fourSeater, { ...plan, reserveTime: visualReserveTime.night }, fourSeaterMass, 600e3),
    );
    expect(night.totalFuel - trip.totalFuel).toBeCloseTo(10.8864 / 2, 6);
  });
});

test('distance on fuel and fuel for distance are inverse, and all fuel is accounted for', () => {
  fc.assert(
    fc.property(fc.double({ min: 40, max: 150, noNaN: true }), (fuel) => {
      const out = flown(tripOnFuel(fourSeater, plan, fourSeaterMass, fuel));
      expect(out.totalFuel / fuel).toBeCloseTo(1, 6);
      const back = flown(tripOverDistance(fourSeater, plan, fourSeaterMass, out.distance));
      expect(back.totalFuel / fuel).toBeCloseTo(1, 4);
      expect(back.time / out.time).toBeCloseTo(1, 4);
    }),
  );
});

test('the reserve is flown at the mass with which the trip ends', () => {
  // With a fixed pitch at full throttle the lighter aircraft is faster, turns faster and burns more
  const fixedPitch: AircraftInFlight = { ...fourSeater, shaftSpeedFraction: (v) => 0.65 + v / 400 };
  const fullThrottle: TripPlan = { ...plan, setting: 'continuous' };
  const { setting, mixture, headwind } = fullThrottle;
  const flowAt = (mass: number) =>
    cruiseState(fixedPitch, { setting, mixture, headwind, air: airAt(2300, 10) }, mass)!.fuelFlow;
  for (const trip of [
    flown(tripOnFuel(fixedPitch, fullThrottle, fourSeaterMass, 150)),
    flown(tripOverDistance(fixedPitch, fullThrottle, fourSeaterMass, 900e3)),
  ]) {
    const burnt = trip.taxiFuel + trip.climbFuel + trip.cruiseFuel;
    expect(trip.reserveFuel / (flowAt(fourSeaterMass - burnt) * 1800)).toBeCloseTo(1, 8);
    expect(trip.reserveFuel / (flowAt(fourSeaterMass) * 1800)).toBeGreaterThan(1.001);
  }
  // and tripOnFuel leaves no drop of it over
  const { totalFuel } = flown(tripOnFuel(fixedPitch, fullThrottle, fourSeaterMass, 150));
  expect(totalFuel / 150).toBeCloseTo(1, 5);
});

test('farther takes more; wind, weight and reserve take more', () => {
  const total = (change: Partial<TripPlan>, mass = 1050, distance = 500e3) =>
    flown(tripOverDistance(fourSeater, { ...plan, ...change }, mass, distance)).totalFuel;
  expect(total({}, 1050, 520e3)).toBeGreaterThan(total({}));
  expect(total({ headwind: 12 })).toBeGreaterThan(total({}));
  expect(total({}, 1100)).toBeGreaterThan(total({}));
  expect(total({ reserveTime: visualReserveTime.night })).toBeGreaterThan(total({}));
});

test('a trip shorter than its climb says so', () => {
  const hop = flown(tripOverDistance(fourSeater, plan, fourSeaterMass, 10e3));
  expect(hop.endsInClimb).toBe(true);
  expect(hop.cruiseFuel).toBe(0);
  expect(hop.distance).toBeGreaterThan(10e3);
  const nowhere = flown(tripOverDistance(fourSeater, { ...plan, cruiseAltitude: 300 }, fourSeaterMass, 0));
  expect(nowhere).toMatchObject({ distance: 0, time: 0, endsInClimb: false });
});

const noCruise = 'it does not hold the cruise altitude at this setting, or makes no way against the wind';

test.each([
  [{ cruiseAltitude: 9000 }, 100, 'it does not climb to the cruise altitude'],
  [{ setting: 0.2 }, 100, noCruise],
  [{ headwind: 90 }, 100, noCruise],
  [{}, 20, 'the fuel does not cover taxi, climb and reserve'],
  [{}, 0, 'the fuel does not cover taxi, climb and reserve'],
] as const)('what stops it: %o with %d kg', (change, fuel, stops) => {
  expect(tripOnFuel(fourSeater, { ...plan, ...change }, fourSeaterMass, fuel)).toEqual({
    possible: false,
    stops,
  });
});

test('a distance has the same obstacles', () => {
  expect(tripOverDistance(fourSeater, { ...plan, setting: 0.2 }, fourSeaterMass, 300e3)).toEqual({
    possible: false,
    stops: noCruise,
  });
});

test('no aircraft carries fuel for that', () => {
  expect(tripOverDistance(fourSeater, plan, fourSeaterMass, 2e7)).toEqual({
    possible: false,
    stops: 'the distance takes more fuel than it could carry',
  });
});
