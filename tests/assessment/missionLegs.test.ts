/** The two flights of a mission: each is the trip that the engineering flies with what is aboard, from its own field. */
import { describe, expect, test } from 'vitest';
import { destinationField, missionLegs } from '../../src/assessment/missionLegs.ts';
import { tripOverDistance } from '../../src/engineering/trip.ts';
import type { Mission as MissionTable } from '../../src/tables/mission.ts';
import { assessed, godwit, si } from './sampleCatalogue.ts';

const feet = (height: number) => height * 0.3048;
const knots = (speed: number) => si('speed', speed, 'kt');
const distance = si('distance', 350, 'nmi');

function asking() {
  const { asked } = assessed('Rowan').mission!;
  return { asked, aircraft: asked.aircraft!, mass: asked.empty.weight + si('mass', 780, 'lb') };
}

function legsOf(changes: Partial<MissionTable>) {
  const { asked, aircraft, mass } = asking();
  return missionLegs({ ...asked.mission, ...changes }, distance, aircraft, asked.taxiFuel, mass);
}

function flown(changes: Partial<MissionTable>) {
  const legs = legsOf(changes);
  if (!legs.possible) throw new Error(legs.stops);
  return legs;
}

/** Fuel of a trip as heavy at its start, kg. */
function fuelOf(
  weight: number,
  height: number,
  warmer: number,
  headwind: number,
  reserveTime: number,
  cruise = 8000,
) {
  const { asked, aircraft, mass } = asking();
  const trip = tripOverDistance(
    aircraft,
    {
      ...{ fieldAltitude: feet(height), cruiseAltitude: feet(cruise), temperatureDeviation: warmer },
      ...{ setting: 0.75, mixture: 'lean', headwind: knots(headwind), taxiFuel: asked.taxiFuel, reserveTime },
    },
    mass + weight,
    distance,
  );
  if (!trip.possible) throw new Error(trip.stops);
  return trip.totalFuel;
}

// 34.06 °C at 3,000 ft, 32 °C at 1,200 ft
const warmerAtHome = 34.06 - (15 - 0.0065 * feet(3000));
const warmerThere = 32 - (15 - 0.0065 * feet(1200));

test('out from home against the wind, back from there with it, each with its reserve', () => {
  const { out, back } = flown({ headwind: knots(15) });
  expect([out.name, back.name]).toEqual(['out', 'back']);
  expect(fuelOf(out.fuel, 3000, warmerAtHome, 15, 1800)).toBeCloseTo(out.fuel, 2);
  expect(fuelOf(back.fuel, 1200, warmerThere, -15, 1800)).toBeCloseTo(back.fuel, 2);
  for (const { fuelLeft, flown: trip } of [out, back]) expect(fuelLeft).toBe(trip.reserveFuel);
  expect(out.field.air.pressureAltitude).toBeCloseTo(feet(3000), 9);
  expect(back.field.air.pressureAltitude).toBeCloseTo(feet(1200), 9);
});

test('without fuel there the way home rides along, and one reserve is enough', () => {
  const { out, back } = flown({ refuel: false });
  const ownFuel = out.fuel - back.fuel;
  expect(fuelOf(out.fuel, 3000, warmerAtHome, 0, 0)).toBeCloseTo(ownFuel, 2);
  expect(out.fuelLeft).toBeCloseTo(back.fuel, 9);
  expect(back.fuelLeft).toBe(back.flown.reserveFuel);
});

test('a cruise no lower than the field it begins at', () => {
  const { back } = flown({ destinationElevation: feet(5000), cruiseAltitude: feet(4000) });
  const warmer = 32 - (15 - 0.0065 * feet(5000));
  expect(fuelOf(back.fuel, 5000, warmer, 0, 1800, 5000)).toBeCloseTo(back.fuel, 2);
});

test('the first flight that cannot be flown is named: neither makes way against 200 kt', () => {
  const stops = expect.stringMatching(/makes no way against the wind$/);
  expect(legsOf({ headwind: knots(200) })).toEqual({ possible: false, leg: 'out', stops });
  expect(legsOf({ headwind: knots(-200) })).toEqual({ possible: false, leg: 'back', stops });
});

describe('the destination’s field', () => {
  const field = (changes: Partial<MissionTable>) => destinationField({ ...godwit.mission, ...changes });

  test('its own height and temperature', () => {
    expect(field({}).air.pressureAltitude).toBeCloseTo(feet(1200), 9);
    expect(field({}).air.temperature).toBeCloseTo(273.15 + 32, 9);
    expect(field({}).temperatureDeviation).toBeCloseTo(warmerThere, 2);
  });

  test('as home where nothing is said', () => {
    const as = field({ destinationElevation: undefined, destinationTemperature: undefined });
    expect(as.air.pressureAltitude).toBeCloseTo(feet(3000), 9);
    expect(as.air.temperature).toBeCloseTo(273.15 + 34.06, 9);
  });

  test('standard where no temperature is given of either', () => {
    const standard = field({ temperature: undefined, destinationTemperature: undefined });
    expect(standard.temperatureDeviation).toBe(0);
    expect(standard.air.temperature).toBeCloseTo(288.15 - 0.0065 * feet(1200), 2);
  });
});
