import { expect, test } from 'vitest';
import {
  type AircraftInFlight,
  airAt,
  type Rating,
  shaftPower,
} from '../../src/engineering/aircraftInFlight.ts';
import { bestRateOfClimb, ceiling, climbToHeight, serviceCeilingRate } from '../../src/engineering/climb.ts';
import { fourSeater, fourSeaterMass } from './exampleAircraft.ts';
import { integrate } from './independentIntegrator.ts';

/** The same climb over time by an independent integrator: altitude, fuel and distance at the end. */
function integrated(from: number, deviation: number, time: number, rating: Rating, burnt: number): number[] {
  const rates = (_: number, [altitude, fuel]: number[]) => {
    const air = airAt(altitude!, deviation);
    const best = bestRateOfClimb(fourSeater, rating, air, fourSeaterMass - fuel!);
    const layer = air.temperature / (air.temperature - deviation);
    const flow = fourSeater.fuelFlow(shaftPower(fourSeater, rating, air)(best.trueAirspeed), 'rich');
    return [best.rateOfClimb / layer, flow, Math.sqrt(best.trueAirspeed ** 2 - best.rateOfClimb ** 2)];
  };
  return integrate(rates, 0, [from, burnt, 0], time);
}

test.each([
  [0, 0],
  [1000, 25],
])('from %d m at standard + %d K it agrees with an independent integrator', (from, deviation) => {
  const climb = climbToHeight(fourSeater, from, from + 2500, fourSeaterMass, deviation);
  expect(climb.reached).toBe(true);
  expect(climb.time).toBeGreaterThan(300);
  const [height, burnt, covered] = integrated(from, deviation, 300, 'takeoff', 0);
  const end = integrated(height!, deviation, climb.time - 300, 'continuous', burnt!);
  // 0.2 %: the slice in which takeoff power ends is flown as its middle is, whichever part of it is left
  expect(Math.abs((end[0]! - from) / 2500 - 1)).toBeLessThan(0.002);
  expect(Math.abs(climb.fuel / end[1]! - 1)).toBeLessThan(0.002);
  expect(Math.abs(climb.distance / (covered! + end[2]!) - 1)).toBeLessThan(0.002);
});

test('takeoff power only within its minutes', () => {
  const flown = (takeoffPowerTime: number) =>
    climbToHeight({ ...fourSeater, takeoffPowerTime }, 0, 2500, fourSeaterMass).time;
  expect(flown(300)).toBeLessThan(flown(60));
  expect(flown(60)).toBeLessThan(flown(0));
  const continuousOnly: AircraftInFlight = {
    ...fourSeater,
    fullThrottlePower: (_, h, t) => fourSeater.fullThrottlePower('continuous', h, t),
  };
  // the slices are cut elsewhere: 0.2 %
  const ratio = climbToHeight(continuousOnly, 0, 2500, fourSeaterMass).time / flown(0);
  expect(Math.abs(ratio - 1)).toBeLessThan(0.002);
});

test('in warm air the layers between pressure altitudes are thicker', () => {
  const cool = climbToHeight(fourSeater, 0, 600, fourSeaterMass, 0);
  const warm = climbToHeight(fourSeater, 0, 600, fourSeaterMass, 20);
  const rates = [0, 20].map(
    (d) => bestRateOfClimb(fourSeater, 'takeoff', airAt(300, d), fourSeaterMass).rateOfClimb,
  );
  const thicker = (286.2 + 20) / 286.2; // standard temperature at 300 m is 288.15 − 1.95 K
  expect(warm.time / cool.time / ((rates[0]! / rates[1]!) * thicker)).toBeCloseTo(1, 4);
});

test('a height above the ceiling is not reached, and it says where it stops', () => {
  for (const deviation of [0, 15]) {
    const climb = climbToHeight(fourSeater, 0, 9000, fourSeaterMass, deviation);
    expect(climb.reached).toBe(false);
    // the service ceiling of what is left after the climb's fuel, each sought to 0.1 m
    const service = ceiling(
      fourSeater,
      'continuous',
      fourSeaterMass - climb.fuel,
      serviceCeilingRate,
      deviation,
    );
    expect(Math.abs(climb.pressureAltitude - service.pressureAltitude)).toBeLessThan(0.5);
    expect(Number.isFinite(climb.time + climb.fuel + climb.distance)).toBe(true);
    // up to there it is the climb to that height, and a metre more is not reached
    const { reached, ...below } = climbToHeight(
      fourSeater,
      0,
      climb.pressureAltitude - 0.2,
      fourSeaterMass,
      deviation,
    );
    expect(reached).toBe(true);
    expect(Math.abs(climb.time - below.time)).toBeLessThan(1); // s; 0.2 m at 100 ft/min and a tolerance of 0.1 m
    expect(climbToHeight(fourSeater, 0, climb.pressureAltitude + 1, fourSeaterMass, deviation).reached).toBe(
      false,
    );
  }
});

test('what a climb that gives up comes to changes as little as its conditions, slice or no slice', () => {
  const climbFrom = (elevation: number) => climbToHeight(fourSeater, elevation, 9000, fourSeaterMass);
  for (let elevation = 0; elevation < 700; elevation += 7) {
    const [one, other] = [climbFrom(elevation), climbFrom(elevation + 1e-3)];
    expect(Math.abs(one.pressureAltitude - other.pressureAltitude)).toBeLessThan(0.3);
    expect(Math.abs(one.time / other.time - 1)).toBeLessThan(1e-4);
  }
});

test('where takeoff power ends above the ceiling of continuous power the climb ends', () => {
  const strong: AircraftInFlight = {
    ...fourSeater,
    takeoffPowerTime: 300,
    fullThrottlePower: (rating, ...air) =>
      rating === 'takeoff' ? 150e3 : 0.3 * fourSeater.fullThrottlePower(rating, ...air),
  };
  const climb = climbToHeight(strong, 1000, 5000, fourSeaterMass);
  expect(climb.reached).toBe(false);
  expect(climb.time).toBe(300);
  expect(climb.pressureAltitude).toBeGreaterThan(2000);
});

test('where the weaker of two ratings is that for takeoff, it gives up in it as well', () => {
  const weak: AircraftInFlight = {
    ...fourSeater,
    takeoffPowerTime: 3600,
    fullThrottlePower: (rating, ...air) =>
      (rating === 'takeoff' ? 0.7 : 1) * fourSeater.fullThrottlePower('continuous', ...air),
  };
  const { reached, pressureAltitude, fuel } = climbToHeight(weak, 0, 4000, fourSeaterMass);
  const { pressureAltitude: service } = ceiling(weak, 'takeoff', fourSeaterMass - fuel);
  expect(reached).toBe(false);
  expect(Math.abs(pressureAltitude - service)).toBeLessThan(0.5);
});

test('a field above the ceiling is where it stays', () => {
  const weak: AircraftInFlight = { ...fourSeater, fullThrottlePower: () => 30e3 };
  expect(climbToHeight(weak, 500, 900, fourSeaterMass)).toEqual({
    reached: false,
    pressureAltitude: 500,
    time: 0,
    fuel: 0,
    distance: 0,
  });
});

test('more thrust than weight goes straight up, with no distance and no NaN', () => {
  const rocket: AircraftInFlight = { ...fourSeater, fullThrottlePower: () => 300e3 };
  const climb = climbToHeight(rocket, 0, 600, 200);
  expect(climb.reached).toBe(true);
  expect(climb.distance).toBe(0);
});

test('no height takes nothing', () => {
  expect(climbToHeight(fourSeater, 500, 500, fourSeaterMass)).toEqual({
    reached: true,
    pressureAltitude: 500,
    time: 0,
    fuel: 0,
    distance: 0,
  });
});
