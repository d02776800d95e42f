import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type AircraftInFlight, airAt, thrust } from '../../src/engineering/aircraftInFlight.ts';
import { drag, minimumDragSpeed } from '../../src/engineering/dragPolar.ts';
import { fullThrottleLevelSpeed, levelFlight, powerRequired } from '../../src/engineering/levelFlight.ts';
import { fourSeater, fourSeaterMass, textbookAirplane, textbookMass } from './exampleAircraft.ts';
import { foot } from './tradeUnits.ts';

function speedOf(flight: ReturnType<typeof levelFlight>): number {
  if (!flight.possible) throw new Error('level flight expected');
  return flight.trueAirspeed;
}

describe('CP-1 of Anderson, Introduction to Flight, example 6.4', () => {
  // Greatest speed at sea level about 81 m/s, read off the curves in the Scilab companion; 265 ft/s (80.8 m/s) in the
  // book (from memory), 255 ft/s at 12,000 ft. Tolerance 2 %, what a reading off a curve is worth.
  test('greatest speed at sea level and at 12,000 ft', () => {
    const atSeaLevel = speedOf(levelFlight(textbookAirplane, 'continuous', airAt(0), textbookMass));
    expect(Math.abs(atSeaLevel / 81 - 1)).toBeLessThan(0.02);
    const high = speedOf(levelFlight(textbookAirplane, 'continuous', airAt(12_000 * foot), textbookMass));
    expect(Math.abs(high / (255 * foot) - 1)).toBeLessThan(0.02);
  });

  // Independent: η P = ½ρV³SC_D0 + 2K W²/(ρVS) solved by hand-run bisection in another language: 261.55 ft/s with the
  // book's 0.002377 slug/ft³
  test('greatest speed at sea level, to the digit', () => {
    const speed = speedOf(levelFlight(textbookAirplane, 'continuous', airAt(0), textbookMass));
    expect(speed / foot).toBeCloseTo(261.55, 1);
  });
});

test('thrust equals drag, and faster there is not enough', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.6, max: 1, noNaN: true }),
      fc.double({ min: 0, max: 2500, noNaN: true }),
      fc.double({ min: -20, max: 30, noNaN: true }),
      (setting, altitude, deviation) => {
        const air = airAt(altitude, deviation);
        const speed = speedOf(levelFlight(fourSeater, setting, air, fourSeaterMass));
        const available = thrust(fourSeater, setting, air);
        const required = (v: number) =>
          drag(fourSeater.dragPolar, fourSeater.wingArea, fourSeaterMass, v, air.density);
        expect(Math.abs(available(speed) / required(speed) - 1)).toBeLessThan(2e-4);
        expect(available(speed * 1.05)).toBeLessThan(required(speed * 1.05));
      },
    ),
  );
});

test('the power a speed takes gives that speed back', () => {
  const air = airAt(2500);
  const power = powerRequired(fourSeater, air, fourSeaterMass, 62);
  const setting = power / fourSeater.maximumContinuousPower;
  const flight = levelFlight(fourSeater, setting, air, fourSeaterMass);
  expect(speedOf(flight)).toBeCloseTo(62, 2);
  expect(flight).toMatchObject({ fullThrottle: false });
});

test('more power is faster, more weight and more drag slower', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.6, max: 0.78, noNaN: true }), // at 1,500 m there is 0.86
      fc.double({ min: 800, max: 1150, noNaN: true }),
      (setting, mass) => {
        const air = airAt(1500);
        const speed = speedOf(levelFlight(fourSeater, setting, air, mass));
        expect(speedOf(levelFlight(fourSeater, setting + 0.05, air, mass))).toBeGreaterThan(speed);
        expect(speedOf(levelFlight(fourSeater, setting, air, mass + 50))).toBeLessThan(speed);
        const dirty: AircraftInFlight = {
          ...fourSeater,
          dragPolar: { ...fourSeater.dragPolar, zeroLiftDragCoefficient: 0.03 },
        };
        expect(speedOf(levelFlight(dirty, setting, air, mass))).toBeLessThan(speed);
      },
    ),
  );
});

test('a setting that the thin air does not give is full throttle', () => {
  const high = levelFlight(fourSeater, 0.75, airAt(4000), fourSeaterMass);
  expect(high).toMatchObject({ possible: true, fullThrottle: true });
  if (high.possible) expect(high.shaftPower).toBeLessThan(90e3);
  expect(levelFlight(fourSeater, 'continuous', airAt(0), fourSeaterMass)).toMatchObject({
    fullThrottle: true,
  });
});

test('too little power for level flight', () => {
  expect(levelFlight(fourSeater, 0.2, airAt(0), fourSeaterMass)).toEqual({ possible: false });
  expect(levelFlight(fourSeater, 'continuous', airAt(12_000), fourSeaterMass)).toEqual({ possible: false });
  expect(() =>
    fullThrottleLevelSpeed({ ...fourSeater, fullThrottlePower: () => 20e3 }, fourSeaterMass),
  ).toThrow('maximumContinuousPower must be enough for level flight at sea level');
});

/** k rises with speed: the thrust that is left is greatest below the speed of least drag. */
const peaky: AircraftInFlight = {
  ...fourSeater,
  propellerEfficiency: (v) => Math.min(0.85, 0.3 + v / 120),
};

test('just enough power, with thrust to spare only away from the speed of least drag', () => {
  const air = airAt(0);
  const setting = 0.54; // at 0.545 there is some at the speed of least drag too, at 0.536 none anywhere
  const leastDrag = minimumDragSpeed(peaky.dragPolar, 14, fourSeaterMass, air.density);
  expect(thrust(peaky, setting, air)(leastDrag)).toBeLessThan(
    drag(peaky.dragPolar, 14, fourSeaterMass, leastDrag, air.density),
  );
  const speed = speedOf(levelFlight(peaky, setting, air, fourSeaterMass));
  expect(speed).toBeLessThan(leastDrag);
  expect(powerRequired(peaky, air, fourSeaterMass, speed) / (setting * 120e3)).toBeCloseTo(1, 3);
});

test('level flight is possible where a search of all speeds finds thrust to spare, near the least power too', () => {
  const air = airAt(0);
  for (let setting = 0.3; setting < 0.5; setting += 0.004) {
    const available = thrust(peaky, setting, air);
    let most = Number.NEGATIVE_INFINITY;
    for (let speed = 30; speed < 80; speed += 0.1)
      most = Math.max(most, available(speed) - drag(peaky.dragPolar, 14, fourSeaterMass, speed, air.density));
    if (Math.abs(most) > 0.1)
      expect(levelFlight(peaky, setting, air, fourSeaterMass).possible).toBe(most > 0);
  }
});

test('power that would carry it only below its stall speed carries it not at all', () => {
  // By hand: C_Lmax 0.4 stalls at 57.6 m/s; least drag is at 44 m/s and 62 kW hold 50 m/s, which this wing cannot fly
  const highStall: AircraftInFlight = { ...textbookAirplane, maximumLiftCoefficient: 0.4 };
  const setting = 62e3 / textbookAirplane.maximumContinuousPower;
  expect(speedOf(levelFlight(textbookAirplane, setting, airAt(0), textbookMass))).toBeCloseTo(50, 0);
  expect(levelFlight(highStall, setting, airAt(0), textbookMass)).toEqual({ possible: false });
});

test('full-throttle level speed ignores the fixed pitch it is to anchor', () => {
  const fixed: AircraftInFlight = { ...fourSeater, shaftSpeedFraction: () => 0.9 };
  expect(fullThrottleLevelSpeed(fixed, fourSeaterMass)).toBe(
    speedOf(levelFlight(fourSeater, 'continuous', airAt(0), fourSeaterMass)),
  );
});

test('a weight below 0 is refused', () => {
  expect(() => levelFlight(fourSeater, 0.75, airAt(0), -1)).toThrow('mass must be above 0 kg, got -1');
});

test('a power that no propeller aircraft has is refused; a weight that none carries does not fly', () => {
  const strong: AircraftInFlight = { ...fourSeater, fullThrottlePower: () => 1e12 };
  const thousand = /^greatest airspeed of this power and drag must be between 0 and 1000 m\/s, got \d/;
  expect(() => levelFlight(strong, 'continuous', airAt(0), fourSeaterMass)).toThrow(thousand);
  expect(levelFlight(fourSeater, 'continuous', airAt(0), 1e7)).toEqual({ possible: false });
});
