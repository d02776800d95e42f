import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { airSpecificHeat, seaLevelDensity } from '../../src/engineering/air.ts';
import {
  coreFromKnownPoint,
  finsFromKnownPoint,
  radiatorFromKnownPoint,
  radiatorFromNtu,
  radiatorFromRatedPoint,
} from '../../src/engineering/coolingCalibration.ts';
import { coolingFlow } from '../../src/engineering/coolingFlow.ts';
import { coolingResult } from '../../src/engineering/coolingResult.ts';
import type { CoolingStream } from '../../src/engineering/coolingStream.ts';
import { headFinLaw } from '../../src/engineering/fins.ts';
import { crossFlowEffectiveness } from '../../src/engineering/radiator.ts';
import { climb, conditions, duct } from './coolingSamples.ts';

const coolant = {
  kind: 'radiator',
  airSideShare: 0.8,
  coolantCapacityRate: 6000,
  temperatureAt: 'radiatorInlet',
} as const;

describe('a point in flight gives back its own temperature', () => {
  test.each(['radiatorInlet', 'radiatorOutlet'] as const)('radiator, taken at %s', (temperatureAt) => {
    fc.assert(
      fc.property(conditions, fc.double({ min: 0.05, max: 6, noNaN: true }), (c, excess) => {
        const { airflow, heat } = coolingFlow(duct, duct.core, c);
        const coolantRate = 6000 * c.engineSpeedRatio!;
        // Above what any core could do: Q/C_air or Q/C_coolant, whichever is more, and a margin for cross-flow
        const least = heat / Math.min(airflow * airSpecificHeat, coolantRate);
        const inlet = c.outsideAirTemperature + least * (1.2 + excess);
        const temperature = temperatureAt === 'radiatorInlet' ? inlet : inlet - heat / coolantRate;
        const exchanger = radiatorFromKnownPoint(
          duct,
          duct.core,
          { ...coolant, temperatureAt },
          c,
          temperature,
        );
        const result = coolingResult({ ...duct, exchanger, limit: 390 }, c);
        expect(result.temperature! / temperature).toBeCloseTo(1, 8);
      }),
    );
  });

  test('fins', () => {
    fc.assert(
      fc.property(conditions, fc.double({ min: 50, max: 300, noNaN: true }), (c, rise) => {
        const temperature = c.outsideAirTemperature + rise;
        const exchanger = finsFromKnownPoint(duct, duct.core, headFinLaw, c, temperature);
        const result = coolingResult({ ...duct, exchanger, limit: 500 }, c);
        expect(result.temperature!).toBeCloseTo(temperature, 6);
      }),
    );
  });

  test('without a core: the drop is the share asked for, and the temperature still comes back', () => {
    fc.assert(
      fc.property(conditions, fc.double({ min: 0.1, max: 0.9, noNaN: true }), (c, share) => {
        const core = coreFromKnownPoint(duct, c, share);
        const flow = coolingFlow(duct, core, c);
        expect(flow.corePressureDrop / flow.pressureAvailable).toBeCloseTo(share, 9);
        expect(flow.airflow / core.referenceAirflow).toBeCloseTo(1, 9);
        expect(core.referencePressureDrop).toBeCloseTo(
          (flow.corePressureDrop * flow.density) / seaLevelDensity,
          6,
        );
        const temperature = c.outsideAirTemperature + 150;
        const exchanger = finsFromKnownPoint(duct, core, headFinLaw, c, temperature);
        const stream: CoolingStream = { ...duct, core, exchanger, limit: 500 };
        expect(coolingResult(stream, c).temperature!).toBeCloseTo(temperature, 6);
      }),
    );
  });
});

describe('from the maker', () => {
  test('NTU times the lesser capacity rate: 1.25 × 1.2 kg/s × 1,004.7 J/kg·K', () => {
    expect(radiatorFromNtu(coolant, duct.core, 1.25).conductance).toBeCloseTo(1507, 0);
    expect(
      radiatorFromNtu({ ...coolant, coolantCapacityRate: 1000 }, duct.core, 1.25).conductance,
    ).toBeCloseTo(1250, 9);
  });

  test('rated point: at NTU 1, C_r 0.25 the series gives ε = 0.58801', () => {
    const air = 1.2 * airSpecificHeat;
    const heat = 0.58801 * air * 70;
    const radiator = radiatorFromRatedPoint(
      { ...coolant, coolantCapacityRate: 4 * air },
      duct.core,
      heat,
      70,
    );
    expect(Math.abs(radiator.conductance / air - 1)).toBeLessThan(3e-5); // five digits of ε
  });
});

describe('data that cannot be are refused', () => {
  test('a coolant cooler than any core could keep it names the difference it would need', () => {
    expect(() => radiatorFromKnownPoint(duct, duct.core, coolant, climb, 335)).toThrow(
      /^temperature above the air, for this heat and airflow, must be above \d+(\.\d+)? K, got 35$/,
    );
  });
  test('a core of more than 20 NTU, also where both capacity rates are the same and it gains least', () => {
    const air = 1.2 * airSpecificHeat;
    const equalRates = { ...coolant, coolantCapacityRate: air };
    const rated = (ntu: number) =>
      radiatorFromRatedPoint(equalRates, duct.core, crossFlowEffectiveness(ntu, 1) * air * 70, 70);
    expect(rated(19.5).conductance / air).toBeCloseTo(19.5, 6);
    expect(() => rated(20.5)).toThrow(/^temperature above the air, for this heat and airflow, must be above/);
  });
  test('a head as cold as the air', () => {
    expect(() => finsFromKnownPoint(duct, duct.core, headFinLaw, climb, 300)).toThrow(RangeError);
  });
  test('no airflow at the point', () => {
    const still = { ...climb, trueAirspeed: 0, thrust: 0 };
    const none = 'airflow at the known point must be above 0 kg/s, got 0';
    expect(() => radiatorFromKnownPoint(duct, duct.core, coolant, still, 380)).toThrow(none);
    expect(() => finsFromKnownPoint(duct, duct.core, headFinLaw, still, 480)).toThrow(none);
    expect(() => coreFromKnownPoint(duct, still)).toThrow(
      'pressure available at the known point must be above 0 Pa, got 0',
    );
  });
});
