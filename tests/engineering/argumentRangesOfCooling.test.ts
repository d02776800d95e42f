/** Ranges of the arguments: cooling air, radiators, fins. */
import {
  coolingAirflow,
  coolingExitArea,
  coolingHeat,
  coolingInletArea,
  coolingPressureAvailable,
  heatedDensity,
  slipstreamPressure,
} from '../../src/engineering/coolingAir.ts';
import {
  coreFromKnownPoint,
  radiatorFromNtu,
  radiatorFromRatedPoint,
} from '../../src/engineering/coolingCalibration.ts';
import { coolingDrag } from '../../src/engineering/coolingDrag.ts';
import { coolingFlow, streamHeat } from '../../src/engineering/coolingFlow.ts';
import { highestOutsideAirTemperature, requiredAirflow } from '../../src/engineering/coolingLimit.ts';
import { coolingResult } from '../../src/engineering/coolingResult.ts';
import { exchangerTemperature } from '../../src/engineering/exchangerTemperature.ts';
import {
  effectiveGasTemperature,
  finCoefficient,
  finTemperature,
  headFinLaw,
} from '../../src/engineering/fins.ts';
import { crossFlowEffectiveness, crossFlowNtu } from '../../src/engineering/radiator.ts';
import { above, aboveUpTo, atLeast, between, testRanges } from './argumentRange.ts';
import { climb, duct, radiatorStream } from './coolingSamples.ts';

const density = above(0, 'kg/m³', 1.1);
const airflow = atLeast(0, 'kg/s', 1.2);

testRanges('coolingHeat', coolingHeat, {
  power: atLeast(0, 'W', 1e5),
  heatFraction: aboveUpTo(0, 2, '', 0.5),
});
testRanges('coolingAirflow', coolingAirflow, {
  heat: atLeast(0, 'W', 5e4),
  airTemperatureRise: above(0, 'K', 40),
});
testRanges('slipstreamPressure', slipstreamPressure, {
  slipstreamShare: between(0, 1, '', 0.35),
  thrust: atLeast(0, 'N', 1700),
  discArea: above(0, 'm²', 2.8),
});
testRanges('coolingPressureAvailable', coolingPressureAvailable, {
  trueAirspeed: atLeast(0, 'm/s', 42),
  density,
  slipstream: atLeast(0, 'Pa', 200),
  inletRecovery: between(0, 1, '', 0.8),
  exitPressureCoefficient: between(-2, 1, '', -0.1),
});
testRanges('heatedDensity', heatedDensity, {
  density,
  airTemperature: above(0, 'K', 300),
  airTemperatureRise: atLeast(0, 'K', 40),
});
testRanges('coolingInletArea', coolingInletArea, {
  airflow,
  trueAirspeed: above(0, 'm/s', 42),
  density,
  velocityRatio: above(0, '', 0.35),
});
testRanges('coolingExitArea', coolingExitArea, {
  airflow,
  exitPressureDifference: above(0, 'Pa', 400),
  exitDensity: above(0, 'kg/m³', 0.95),
  dischargeCoefficient: aboveUpTo(0, 1, '', 0.9),
});

testRanges(
  'coolingFlow',
  (referenceAirflow, referencePressureDrop, pressureExponent, exitArea, exitDischargeCoefficient) =>
    coolingFlow(
      { ...duct, exitArea: exitArea!, exitDischargeCoefficient: exitDischargeCoefficient! },
      {
        referenceAirflow: referenceAirflow!,
        referencePressureDrop: referencePressureDrop!,
        pressureExponent: pressureExponent!,
      },
      climb,
    ).airflow,
  {
    referenceAirflow: above(0, 'kg/s', 1.2),
    referencePressureDrop: above(0, 'Pa', 550),
    pressureExponent: between(1, 2, '', 1.8),
    exitArea: above(0, 'm²', 0.04),
    exitDischargeCoefficient: aboveUpTo(0, 1, '', 0.9),
  },
);
testRanges(
  'streamHeat',
  (power, heatFraction) =>
    streamHeat({ fraction: heatFraction!, of: 'shaftPower' }, { ...climb, shaftPower: power! }),
  { power: atLeast(0, 'W', 1e5), heatFraction: aboveUpTo(0, 2, '', 0.5) },
);
testRanges(
  'coolingDrag',
  (leakageDragArea, exitAngle) =>
    coolingDrag(
      { ...duct, leakageDragArea: leakageDragArea!, exitAngle: exitAngle! },
      climb,
      coolingFlow(duct, duct.core, climb),
    ).momentum,
  { leakageDragArea: atLeast(0, 'm²', 0.01), exitAngle: between(0, Math.PI / 2, 'rad', 0.2) },
);

testRanges('coreFromKnownPoint', (share, exponent) => coreFromKnownPoint(duct, climb, share!, exponent!), {
  corePressureShare: aboveUpTo(0, 0.999, '', 0.5),
  pressureExponent: between(1, 2, '', 1.8),
});
const coolant = { kind: 'radiator', airSideShare: 0.8, temperatureAt: 'radiatorInlet' } as const;
const referenceAirflow = above(0, 'kg/s', 1.2);
const coolantCapacityRate = above(0, 'W/K', 6000);
testRanges(
  'radiatorFromNtu',
  (ntu, rate, reference) =>
    radiatorFromNtu(
      { ...coolant, coolantCapacityRate: rate! },
      { ...duct.core, referenceAirflow: reference! },
      ntu!,
    ).conductance,
  { ntu: above(0, '', 1.2), coolantCapacityRate, referenceAirflow },
);
testRanges(
  'radiatorFromRatedPoint',
  (heat, rate, reference) =>
    radiatorFromRatedPoint(
      { ...coolant, coolantCapacityRate: rate! },
      { ...duct.core, referenceAirflow: reference! },
      heat!,
      70,
    ).conductance,
  { heat: above(0, 'W', 4e4), coolantCapacityRate, referenceAirflow },
);

testRanges(
  'exchangerTemperature',
  (air, conductance, airSideShare, rate, engineSpeedRatio) =>
    exchangerTemperature(
      {
        ...radiatorStream,
        exchanger: {
          ...coolant,
          conductance: conductance!,
          airSideShare: airSideShare!,
          coolantCapacityRate: rate!,
        },
      },
      { ...climb, engineSpeedRatio: engineSpeedRatio! },
      air!,
    ),
  {
    airflow: above(0, 'kg/s', 1.2),
    conductance: above(0, 'W/K', 1800),
    airSideShare: between(0, 1, '', 0.8),
    coolantCapacityRate,
    engineSpeedRatio: above(0, '', 1),
  },
);
const limit = above(0, 'K', 390);
testRanges('coolingResult', (kelvin) => coolingResult({ ...radiatorStream, limit: kelvin! }, climb).margin, {
  limit,
});
testRanges('requiredAirflow', (kelvin) => requiredAirflow({ ...radiatorStream, limit: kelvin! }, climb), {
  limit,
});
testRanges(
  'highestOutsideAirTemperature',
  (kelvin) => highestOutsideAirTemperature({ ...radiatorStream, limit: kelvin! }, () => climb).temperature,
  { limit },
);

const outsideAirTemperature = above(0, 'K', 300);
const densityPressureDrop = above(0, 'Pa', 900);
testRanges('effectiveGasTemperature', (air) => effectiveGasTemperature(headFinLaw, air!), {
  outsideAirTemperature,
});
testRanges(
  'finTemperature',
  (coefficient, power, drop, air) => finTemperature(headFinLaw, coefficient!, power!, drop!, air!),
  {
    coefficient: above(0, '', 0.0065),
    power: atLeast(0, 'W', 1e5),
    densityPressureDrop,
    outsideAirTemperature,
  },
);
testRanges(
  'finCoefficient',
  (temperature, power, drop, air) => finCoefficient(headFinLaw, temperature!, power!, drop!, air!),
  {
    temperature: above(300, 'K', 450),
    power: above(0, 'W', 1e5),
    densityPressureDrop,
    outsideAirTemperature,
  },
);
testRanges('crossFlowEffectiveness', crossFlowEffectiveness, {
  ntu: between(0, 500, '', 1.2),
  capacityRatio: between(0, 1, '', 0.25),
});
testRanges('crossFlowNtu', crossFlowNtu, {
  effectiveness: atLeast(0, '', 0.5),
  capacityRatio: between(0, 1, '', 0.25),
});
