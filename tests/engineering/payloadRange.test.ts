import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type LoadLimits, payloadRange } from '../../src/engineering/payloadRange.ts';
import { type TripPlan, tripOnFuel } from '../../src/engineering/trip.ts';
import { fourSeater } from './exampleAircraft.ts';

const plan: TripPlan = {
  fieldAltitude: 0,
  cruiseAltitude: 2400,
  temperatureDeviation: 0,
  setting: 0.7,
  mixture: 'lean',
  headwind: 0,
  taxiFuel: 2,
  reserveTime: 1800,
};
const limits: LoadLimits = {
  emptyMass: 640,
  maximumMass: 1100,
  cabinLimit: 380,
  usableFuel: 140,
  leastPayload: 80,
};
const rangeOf = (mass: number, fuel: number) => {
  const trip = tripOnFuel(fourSeater, plan, mass, fuel);
  return trip.possible ? trip.distance : 0;
};

// By hand: useful mass 460 kg. Seats and bays 380 leave 80 kg of fuel; full tanks 140 leave 320 kg; the pilot 80.
test('corner points by hand', () => {
  const found = payloadRange(fourSeater, plan, limits)!;
  expect(found.mostPayload).toMatchObject({ payload: 380, fuel: 80 });
  expect(found.fullTanks).toMatchObject({ payload: 320, fuel: 140 });
  expect(found.pilotAlone).toMatchObject({ payload: 80, fuel: 140 });
  expect(found.mostPayload.range).toBeCloseTo(rangeOf(1100, 80), 6);
  expect(found.fullTanks!.range).toBeCloseTo(rangeOf(1100, 140), 6);
  expect(found.pilotAlone.range).toBeCloseTo(rangeOf(860, 140), 6);
});

test('the curve starts at no range and runs through the corners', () => {
  const { curve, mostPayload, fullTanks, pilotAlone } = payloadRange(fourSeater, plan, limits)!;
  expect(curve[0]).toEqual({ payload: 380, fuel: 0, range: 0 });
  for (const corner of [mostPayload, fullTanks, pilotAlone]) expect(curve).toContainEqual(corner);
});

test('five points to each corner, none twice', () => {
  expect(payloadRange(fourSeater, plan, limits)!.curve).toHaveLength(1 + 5 + 4);
});

test('the pilot alone with full tanks, and the pilot alone with none: both just possible', () => {
  // Useful mass 460 kg: 380 of fuel leave 80, and all corners after the first are one
  const full = payloadRange(fourSeater, plan, { ...limits, usableFuel: 380 })!;
  expect(full.fullTanks).toMatchObject({ payload: 80, fuel: 380 });
  expect(full.curve).toHaveLength(1 + 5);
  const without = payloadRange(fourSeater, plan, { ...limits, emptyMass: 1020 })!;
  expect(without.pilotAlone).toMatchObject({ payload: 80, fuel: 0, range: 0 });
  expect(without.curve).toHaveLength(1 + 1);
  expect(payloadRange(fourSeater, plan, { ...limits, emptyMass: 1020.001 })).toBeUndefined();
});

test('less payload never gives less range', () => {
  fc.assert(
    fc.property(
      fc.record({
        emptyMass: fc.double({ min: 550, max: 900, noNaN: true }),
        maximumMass: fc.constant(1100),
        cabinLimit: fc.double({ min: 150, max: 450, noNaN: true }),
        usableFuel: fc.double({ min: 60, max: 250, noNaN: true }),
        leastPayload: fc.constant(80),
      }),
      (random) => {
        const found = payloadRange(fourSeater, plan, random)!;
        found.curve.forEach((point, i) => {
          expect(random.emptyMass + point.payload + point.fuel).toBeLessThanOrEqual(1100 + 1e-9);
          if (i === 0) return;
          expect(point.payload).toBeLessThanOrEqual(found.curve[i - 1]!.payload);
          expect(point.range).toBeGreaterThanOrEqual(found.curve[i - 1]!.range);
        });
      },
    ),
    { numRuns: 40 },
  );
});

describe('when corners fall together', () => {
  test('tanks too small to limit the cabin: full tanks with most payload', () => {
    const found = payloadRange(fourSeater, plan, { ...limits, usableFuel: 60 })!;
    expect(found.fullTanks).toEqual(found.mostPayload);
    expect(found.mostPayload).toMatchObject({ payload: 380, fuel: 60 });
  });

  test('tanks too large for the pilot to fill', () => {
    const found = payloadRange(fourSeater, plan, { ...limits, usableFuel: 400 })!;
    expect(found.fullTanks).toBeUndefined();
    expect(found.pilotAlone).toMatchObject({ payload: 80, fuel: 380 });
  });

  test('weight leaves no fuel with the cabin full: said, not hidden', () => {
    const found = payloadRange(fourSeater, plan, { ...limits, emptyMass: 800 })!;
    expect(found.mostPayload).toEqual({
      payload: 300,
      fuel: 0,
      range: 0,
      stops: 'the fuel does not cover taxi, climb and reserve',
    });
  });

  test('not even the pilot', () => {
    expect(payloadRange(fourSeater, plan, { ...limits, emptyMass: 1050 })).toBeUndefined();
  });
});
