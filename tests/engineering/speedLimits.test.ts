import { expect, test } from 'vitest';
import { airAt } from '../../src/engineering/aircraftInFlight.ts';
import { speedMargins } from '../../src/engineering/speedLimits.ts';
import { foot, knot } from './tradeUnits.ts';

const limits = { normalOperating: 150 * knot, neverExceed: 185 * knot, neverExceedIsTrue: true };

test('at sea level true and calibrated are the same', () => {
  const margins = speedMargins(limits, 140 * knot, airAt(0));
  expect(margins.calibratedAirspeed / knot).toBeCloseTo(140, 6);
  expect(margins.normalOperating / knot).toBeCloseTo(10, 6);
  expect(margins.neverExceed / knot).toBeCloseTo(45, 6);
});

// 190 kt true at 20,000 ft: equivalent 190 · √0.53281 = 138.7 kt; calibrated 139.575 kt by the isentropic formulas in a
// separate program (derived)
test('at 20,000 ft a true V_NE is exceeded while the indicator shows 140 kt', () => {
  const air = airAt(20_000 * foot);
  const margins = speedMargins(limits, 190 * knot, air);
  expect(margins.calibratedAirspeed / knot).toBeCloseTo(139.575, 3);
  expect(margins.normalOperating / knot).toBeCloseTo(10.425, 3);
  expect(margins.neverExceed / knot).toBeCloseTo(-5, 6);
  const calibrated = speedMargins({ ...limits, neverExceedIsTrue: false }, 190 * knot, air);
  expect(calibrated.neverExceed / knot).toBeCloseTo(185 - margins.calibratedAirspeed / knot, 6);
});
