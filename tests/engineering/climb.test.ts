import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type AircraftInFlight,
  airAt,
  type Rating,
  shaftPower,
} from '../../src/engineering/aircraftInFlight.ts';
import {
  bestAngleOfClimb,
  bestRateOfClimb,
  ceiling,
  climbToHeight,
  rateOfClimb,
  rateOfClimbFromPower,
  serviceCeilingRate,
} from '../../src/engineering/climb.ts';
import {
  foot,
  fourSeater,
  fourSeaterMass,
  horsepower,
  pound,
  textbookAirplane,
  textbookMass,
} from './exampleAircraft.ts';
import { integrate } from './independentIntegrator.ts';

const feetPerMinute = foot / 60;

describe('CP-1 of Anderson, Introduction to Flight', () => {
  // Anderson, Aircraft Performance and Design, equation 5.122 (from memory), propeller airplane with constant power:
  // (R/C)max = ηP/W − √(2/ρ √(K/3C_D0) W/S) · 1.155/(L/D)max: an independent closed form
  const { zeroLiftDragCoefficient: parasite, aspectRatio, spanEfficiency } = textbookAirplane.dragPolar;
  const induced = 1 / (Math.PI * spanEfficiency * aspectRatio);
  const weight = textbookMass * 9.80665;
  const closedForm = (density: number) =>
    (0.8 * 230 * horsepower * (density / 1.225)) / weight -
    Math.sqrt((2 / density) * Math.sqrt(induced / (3 * parasite)) * (weight / textbookAirplane.wingArea)) *
      ((4 / Math.sqrt(3)) * Math.sqrt(parasite * induced));

  test('best rate: about 1,500 ft/min in the book (from memory), and its closed form', () => {
    const best = bestRateOfClimb(textbookAirplane, 'continuous', airAt(0), textbookMass);
    expect(Math.abs(best.rateOfClimb / feetPerMinute / 1500 - 1)).toBeLessThan(0.01);
    expect(best.rateOfClimb / closedForm(1.225)).toBeCloseTo(1, 4);
    expect(best.limitedByStall).toBe(false);
    const high = bestRateOfClimb(textbookAirplane, 'continuous', airAt(4000), textbookMass);
    expect(high.rateOfClimb / closedForm(airAt(4000).density)).toBeCloseTo(1, 4);
  });

  // Speed of least power: C_L = √(3 π e A C_D0), V = √(2W/(ρ S C_L)), the textbook's condition for best rate
  test('best-rate speed is that of least power', () => {
    const lift = Math.sqrt((3 * parasite) / induced);
    const leastPower = Math.sqrt((2 * weight) / (1.225 * textbookAirplane.wingArea * lift));
    const best = bestRateOfClimb(textbookAirplane, 'continuous', airAt(0), textbookMass);
    expect(best.trueAirspeed).toBeCloseTo(leastPower, 1);
  });

  // Example 6.11: absolute ceiling 27,000 ft, service ceiling 25,000 ft, read off the curve (from memory); 2 %
  test('ceilings', () => {
    const absolute = ceiling(textbookAirplane, 'continuous', textbookMass, 0);
    const service = ceiling(textbookAirplane, 'continuous', textbookMass);
    expect(Math.abs(absolute.pressureAltitude / (27_000 * foot) - 1)).toBeLessThan(0.02);
    expect(Math.abs(service.pressureAltitude / (25_000 * foot) - 1)).toBeLessThan(0.02);
    expect([absolute.found, service.found]).toEqual(['yes', 'yes']);
    // and the closed form leaves exactly those rates there
    expect(closedForm(airAt(absolute.pressureAltitude).density)).toBeCloseTo(0, 2);
    expect(closedForm(airAt(service.pressureAltitude).density)).toBeCloseTo(100 * feetPerMinute, 2);
  });
});

// Excess power by hand: 50 hp on 2,000 lb is 33,000 · 50 / 2,000 = 825 ft/min, the horsepower being 33,000 ft·lbf/min
test('rate of climb from excess power', () => {
  expect(rateOfClimbFromPower(50 * horsepower, 2000 * pound) / feetPerMinute).toBeCloseTo(825, 6);
  expect(rateOfClimbFromPower(-50 * horsepower, 2000 * pound) / feetPerMinute).toBeCloseTo(-825, 6);
  expect(() => rateOfClimbFromPower(1, 0)).toThrow('mass must be above 0 kg, got 0');
});

test('service ceiling rate is 100 ft/min', () => {
  expect(serviceCeilingRate).toBeCloseTo(0.508, 12);
});

describe('best speeds', () => {
  const best = () => ({
    rate: bestRateOfClimb(fourSeater, 'continuous', airAt(0), fourSeaterMass),
    angle: bestAngleOfClimb(fourSeater, 'continuous', airAt(0), fourSeaterMass),
  });

  test('no other speed climbs faster, none steeper', () => {
    const { rate, angle } = best();
    for (let speed = 29; speed < 70; speed += 0.5) {
      const here = rateOfClimb(fourSeater, 'continuous', airAt(0), fourSeaterMass, speed);
      expect(here).toBeLessThanOrEqual(rate.rateOfClimb * 1.0002);
      expect(here / speed).toBeLessThanOrEqual(angle.gradient * 1.0002);
    }
  });

  test('the best angle is slower than the best rate', () => {
    const { rate, angle } = best();
    expect(angle.trueAirspeed).toBeLessThan(rate.trueAirspeed);
    expect(angle.rateOfClimb / angle.trueAirspeed).toBeCloseTo(angle.gradient, 12);
    expect(rate.rateOfClimb / rate.trueAirspeed).toBeCloseTo(rate.gradient, 12);
  });

  test('a best angle below the stall is said to be limited by it', () => {
    const strong: AircraftInFlight = { ...textbookAirplane, maximumLiftCoefficient: 1.3 };
    const limited = bestAngleOfClimb(strong, 'continuous', airAt(0), textbookMass);
    expect(limited.limitedByStall).toBe(true);
  });
});

test('heavier, hotter, higher, with more drag or less power it climbs slower', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 800, max: 1100, noNaN: true }),
      fc.double({ min: 0, max: 4000, noNaN: true }),
      fc.double({ min: -20, max: 25, noNaN: true }),
      (mass, altitude, deviation) => {
        const climb = (aircraft = fourSeater, m = mass, h = altitude, d = deviation) =>
          bestRateOfClimb(aircraft, 'continuous', airAt(h, d), m).rateOfClimb;
        const rate = climb();
        expect(climb(fourSeater, mass + 20)).toBeLessThan(rate);
        expect(climb(fourSeater, mass, altitude + 200)).toBeLessThan(rate);
        expect(climb(fourSeater, mass, altitude, deviation + 5)).toBeLessThan(rate);
        const { dragPolar } = fourSeater;
        expect(
          climb({ ...fourSeater, dragPolar: { ...dragPolar, zeroLiftDragCoefficient: 0.03 } }),
        ).toBeLessThan(rate);
        expect(
          bestRateOfClimb(fourSeater, 'takeoff', airAt(altitude, deviation), mass).rateOfClimb,
        ).toBeGreaterThan(rate);
      },
    ),
  );
});

describe('ceiling', () => {
  test('lower when heavier or hotter, lower for 100 ft/min than for none', () => {
    const height = (mass: number, rate?: number, deviation?: number) =>
      ceiling(fourSeater, 'continuous', mass, rate, deviation).pressureAltitude;
    expect(height(1100)).toBeLessThan(height(1000) - 100);
    expect(height(1100, serviceCeilingRate, 20)).toBeLessThan(height(1100) - 100);
    expect(height(1100)).toBeLessThan(height(1100, 0) - 100);
  });

  test('at sea level where it climbs just at that rate there', () => {
    const { rateOfClimb: rate } = bestRateOfClimb(fourSeater, 'continuous', airAt(0), fourSeaterMass);
    expect(ceiling(fourSeater, 'continuous', fourSeaterMass, rate)).toEqual({
      pressureAltitude: 0,
      found: 'yes',
    });
  });

  test('none, and beyond what is looked at', () => {
    expect(ceiling({ ...fourSeater, fullThrottlePower: () => 30e3 }, 'continuous', 1100)).toEqual({
      pressureAltitude: 0,
      found: 'none',
    });
    expect(ceiling({ ...fourSeater, fullThrottlePower: () => 400e3 }, 'continuous', 1100).found).toBe(
      'beyond',
    );
    expect(() => ceiling(fourSeater, 'continuous', 1100, -1)).toThrow('rate must be at least 0 m/s, got -1');
  });
});

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

describe('climb to a height', () => {
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
    expect(climbToHeight(continuousOnly, 0, 2500, fourSeaterMass).time / flown(0)).toBeCloseTo(1, 2);
  });

  test('in warm air the layers between pressure altitudes are thicker', () => {
    const cool = climbToHeight(fourSeater, 0, 600, fourSeaterMass, 0);
    const warm = climbToHeight(fourSeater, 0, 600, fourSeaterMass, 20);
    const rates = [0, 20].map(
      (d) => bestRateOfClimb(fourSeater, 'takeoff', airAt(300, d), fourSeaterMass).rateOfClimb,
    );
    const thicker = (286.2 + 20) / 286.2; // standard temperature at 300 m is 288.15 − 1.95 K
    expect(warm.time / cool.time / ((rates[0]! / rates[1]!) * thicker)).toBeCloseTo(1, 2);
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
      expect(
        climbToHeight(fourSeater, 0, climb.pressureAltitude + 1, fourSeaterMass, deviation).reached,
      ).toBe(false);
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

  test('no height takes nothing; downwards is refused', () => {
    expect(climbToHeight(fourSeater, 500, 500, fourSeaterMass)).toEqual({
      reached: true,
      pressureAltitude: 500,
      time: 0,
      fuel: 0,
      distance: 0,
    });
    expect(() => climbToHeight(fourSeater, 500, 400, fourSeaterMass)).toThrow(
      'toAltitude must be at least 500 m, got 400',
    );
  });
});
