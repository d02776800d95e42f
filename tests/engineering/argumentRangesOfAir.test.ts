/** Ranges of the arguments: air, airspeeds, charge air. */
import { expect, test } from 'vitest';
import {
  airDensity,
  densityRatio,
  hotDayTemperature,
  pressureAltitude,
  soundSpeed,
  standardPressure,
  standardTemperature,
  viscosity,
} from '../../src/engineering/air.ts';
import {
  calibratedFromTrue,
  equivalentFromTrue,
  trueFromCalibrated,
  trueFromEquivalent,
} from '../../src/engineering/airspeed.ts';
import {
  compressorOutletTemperature,
  intercooledTemperature,
  intercoolerHeat,
} from '../../src/engineering/chargeAir.ts';
import { ambientAtLimit, hotDayCorrected } from '../../src/engineering/hotDay.ts';
import { above, aboveUpTo, atLeast, between, testRanges } from './argumentRange.ts';

const altitude = between(-5_000, 20_000, 'm', 1000);
const temperature = above(0, 'K', 290);
const pressure = above(0, 'Pa', 90_000);

testRanges('standardTemperature', standardTemperature, { pressureAltitude: altitude });
testRanges('standardPressure', standardPressure, { pressureAltitude: altitude });
testRanges('hotDayTemperature', hotDayTemperature, { pressureAltitude: altitude });
test('pressureAltitude', () => {
  expect(pressureAltitude(standardPressure(20_000))).toBeCloseTo(20_000, 6);
  expect(pressureAltitude(standardPressure(-5_000))).toBeCloseTo(-5_000, 6);
  expect(() => pressureAltitude(0.999 * standardPressure(20_000))).toThrow(/^pressure must be between/);
  expect(() => pressureAltitude(1.001 * standardPressure(-5_000))).toThrow(/^pressure must be between/);
});
testRanges('airDensity', airDensity, { pressure, temperature });
testRanges('densityRatio', densityRatio, { pressureAltitude: altitude, temperature });
testRanges('soundSpeed', soundSpeed, { temperature });
testRanges('viscosity', viscosity, { temperature });

const calibratedAirspeed = atLeast(0, 'm/s', 60);
const trueAirspeed = atLeast(0, 'm/s', 60);
testRanges('trueFromCalibrated', trueFromCalibrated, {
  calibratedAirspeed,
  pressureAltitude: altitude,
  temperature,
});
testRanges('calibratedFromTrue', calibratedFromTrue, {
  trueAirspeed,
  pressureAltitude: altitude,
  temperature,
});
testRanges('trueFromEquivalent', trueFromEquivalent, {
  equivalentAirspeed: atLeast(0, 'm/s', 60),
  densityRatio: above(0, '', 0.9),
});
testRanges('equivalentFromTrue', equivalentFromTrue, { trueAirspeed, densityRatio: above(0, '', 0.9) });

testRanges('compressorOutletTemperature', compressorOutletTemperature, {
  inletTemperature: temperature,
  pressureRatio: atLeast(1, '', 1.4),
  efficiency: aboveUpTo(0, 1, '', 0.7),
});
testRanges('intercooledTemperature', intercooledTemperature, {
  chargeTemperature: temperature,
  coolingTemperature: temperature,
  effectiveness: between(0, 1, '', 0.6),
});
testRanges('intercoolerHeat', intercoolerHeat, {
  chargeAirflow: atLeast(0, 'kg/s', 0.1),
  chargeTemperature: temperature,
  intercooledTemperature: temperature,
});

const factor = above(0, '', 1);
testRanges('hotDayCorrected', hotDayCorrected, {
  measured: temperature,
  outsideAirTemperature: temperature,
  hotDayTemperature: temperature,
  factor,
});
testRanges('ambientAtLimit', ambientAtLimit, {
  measured: temperature,
  outsideAirTemperature: temperature,
  limit: temperature,
  factor,
});
