import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type AircraftInFlight, airAt } from '../../src/engineering/aircraftInFlight.ts';
import {
  bestAngleOfClimb,
  bestRateOfClimb,
  ceiling,
  rateOfClimb,
  rateOfClimbFromPower,
  serviceCeilingRate,
} from '../../src/engineering/climb.ts';
import { fourSeater, fourSeaterMass, textbookAirplane, textbookMass } from './exampleAircraft.ts';
import { foot, horsepower, pound } from './tradeUnits.ts';

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
  });
});
