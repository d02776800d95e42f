/** Invented streams and random conditions that the cooling tests share. */
import fc from 'fast-check';
import type { CoolingCondition, CoolingStream } from '../../src/engineering/coolingStream.ts';
import { headFinLaw } from '../../src/engineering/fins.ts';

export const duct = {
  heat: { fraction: 0.5, of: 'shaftPower' },
  inletRecovery: 0.8,
  slipstreamShare: 0.35,
  exitPressureCoefficient: -0.1,
  exitArea: 0.04,
  exitDischargeCoefficient: 0.9,
  exitAngle: 0.2,
  leakageDragArea: 0.01,
  core: { referenceAirflow: 1.2, referencePressureDrop: 550, pressureExponent: 1.8 },
} as const;

export const radiatorStream: CoolingStream = {
  ...duct,
  exchanger: {
    kind: 'radiator',
    conductance: 1800,
    airSideShare: 0.8,
    coolantCapacityRate: 6000,
    temperatureAt: 'radiatorInlet',
  },
  limit: 390,
};

export const finStream: CoolingStream = {
  ...duct,
  exchanger: { kind: 'fins', law: headFinLaw, coefficient: 0.0065 },
  limit: 500,
};

export const climb: CoolingCondition = {
  shaftPower: 100_000,
  fuelPower: 380_000,
  trueAirspeed: 42,
  pressureAltitude: 1000,
  outsideAirTemperature: 300,
  thrust: 1700,
  discArea: 2.8,
};

export const conditions: fc.Arbitrary<CoolingCondition> = fc.record({
  shaftPower: fc.double({ min: 20_000, max: 200_000, noNaN: true }),
  engineSpeedRatio: fc.double({ min: 0.4, max: 1.05, noNaN: true }),
  trueAirspeed: fc.double({ min: 0, max: 90, noNaN: true }),
  pressureAltitude: fc.double({ min: -300, max: 7500, noNaN: true }),
  outsideAirTemperature: fc.double({ min: 230, max: 320, noNaN: true }),
  thrust: fc.double({ min: 200, max: 3000, noNaN: true }),
  discArea: fc.double({ min: 1.5, max: 4, noNaN: true }),
});

export const streams = fc.constantFrom(
  radiatorStream,
  { ...radiatorStream, exchanger: { ...radiatorStream.exchanger, temperatureAt: 'radiatorOutlet' as const } },
  finStream,
) as fc.Arbitrary<CoolingStream>;
