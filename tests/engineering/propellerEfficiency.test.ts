import fc from 'fast-check';
import { expect, test } from 'vitest';
import { drag, withDragArea } from '../../src/engineering/dragPolar.ts';
import { propellerThrust, staticThrust } from '../../src/engineering/propeller.ts';
import {
  climbAnchorSpeed,
  efficiencyFromClimb,
  efficiencyFromThrust,
  propellerEfficiency,
} from '../../src/engineering/propellerEfficiency.ts';
import { fourSeater, textbookAirplane, textbookMass } from './exampleAircraft.ts';

test.each([
  [0, 0.4, false],
  [20, 0.55, false],
  [40, 0.7, false],
  [60, 0.75, false],
  [80, 0.8, false],
  [120, 0.8, true],
])('k at %d m/s is %d', (trueAirspeed, value, extrapolated) => {
  const found = propellerEfficiency({ static: 0.4, climb: 0.7, cruise: 0.8 }, 40, 80)(trueAirspeed);
  expect(found.value).toBeCloseTo(value, 12);
  expect(found.extrapolated).toBe(extrapolated);
});

// Speed of least drag of CP-1 by its own formula: C_L = √(π e A C_D0) = √(π · 0.8 · 7.3657 · 0.025) = 0.68029,
// V = √(2 · 1338.1 · 9.80665 / (1.225 · 16.165 · 0.68029)) = 44.138 m/s; 0.95 of it is 41.93
test('climb anchor by hand', () => {
  expect(climbAnchorSpeed(textbookAirplane.dragPolar, textbookAirplane.wingArea, textbookMass)).toBeCloseTo(
    41.93,
    2,
  );
});

test('a known thrust gives back the k that made it, moving or standing', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.2, max: 1, noNaN: true }),
      fc.double({ min: 0, max: 90, noNaN: true }),
      (k, trueAirspeed) => {
        const thrust = propellerThrust(100e3, trueAirspeed, 1.8, 1.1, k);
        expect(efficiencyFromThrust(thrust, 100e3, trueAirspeed, 1.8, 1.1)).toBeCloseTo(k, 9);
      },
    ),
  );
  expect(efficiencyFromThrust(staticThrust(100e3, 1.8, 1.1, 0.45), 100e3, 0, 1.8, 1.1)).toBeCloseTo(0.45, 12);
});

test('a measured climb gives back the k that made it', () => {
  const polar = withDragArea(fourSeater.dragPolar, 0.03, fourSeater.wingArea);
  const flight = {
    shaftPower: 110e3,
    trueAirspeed: 40,
    density: 1.15,
    mass: 1050,
    propellerDiameter: 1.9,
    dragArea: 0.03,
  };
  const thrust = propellerThrust(110e3, 40, 1.9, 1.15, 0.73);
  const rateOfClimb = (40 * (thrust - drag(polar, fourSeater.wingArea, 1050, 40, 1.15))) / (1050 * 9.80665);
  expect(rateOfClimb).toBeGreaterThan(2);
  expect(
    efficiencyFromClimb(fourSeater.dragPolar, fourSeater.wingArea, { ...flight, rateOfClimb }),
  ).toBeCloseTo(0.73, 10);
});
