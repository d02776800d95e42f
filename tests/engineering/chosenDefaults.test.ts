import { expect, test } from 'vitest';
import {
  defaultDischargeCoefficient,
  defaultExitPressureCoefficient,
  defaultHeatFraction,
  defaultInletRecovery,
  defaultInletVelocityRatio,
  defaultSlipstreamShare,
} from '../../src/engineering/coolingAir.ts';
import { defaultCorePressureShare } from '../../src/engineering/coolingCalibration.ts';
import { defaultAirSideShare, defaultCorePressureExponent } from '../../src/engineering/coolingStream.ts';
import { defaultSpanEfficiency } from '../../src/engineering/dragPolar.ts';
import { barrelFinLaw, headFinLaw } from '../../src/engineering/fins.ts';
import {
  defaultEfficiency,
  defaultFixedPitchSpeedFraction,
} from '../../src/engineering/propellerEfficiency.ts';

/**
 * Values that were chosen, not measured: no published figure stands behind them to the last digit, so no outside check
 * would notice that one has been changed. Changing one is a decision; it is made here as well.
 */
test('cooling: common practice, no source', () => {
  expect(defaultInletRecovery).toBe(0.8);
  expect(defaultSlipstreamShare).toBe(0.35);
  expect(defaultExitPressureCoefficient).toBe(-0.1);
  expect(defaultDischargeCoefficient).toBe(0.9);
  expect(defaultInletVelocityRatio).toBe(0.35);
  expect(defaultHeatFraction).toEqual({ coolant: 0.55, fins: 0.45, oil: 0.1, charge: 0.08 });
  expect(defaultCorePressureShare).toBe(0.5);
  expect(defaultCorePressureExponent).toBe(1.8);
  expect(defaultAirSideShare).toEqual({ coolant: 0.8, oil: 0.4 });
});

test('fins: read off the summary of NACA TN 584 at assumed temperatures', () => {
  expect(headFinLaw).toMatchObject({ powerExponent: 0.55, pressureExponent: 0.31 });
  expect(barrelFinLaw).toMatchObject({ powerExponent: 0.67, pressureExponent: 0.34 });
});

test('flight: chosen on fourteen certificated aircraft, see tests/validation', () => {
  expect(defaultSpanEfficiency).toBe(0.64);
  expect(defaultEfficiency).toEqual({ static: 0.42, climb: 0.76, cruise: 0.81 });
  expect(defaultFixedPitchSpeedFraction).toEqual({ static: 0.87, climb: 0.93, levelFlight: 1 });
});
