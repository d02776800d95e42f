import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  airDensity,
  airSpecificHeat,
  hotDayTemperature,
  standardPressure,
} from '../../src/engineering/air.ts';
import { radiatorFromNtu } from '../../src/engineering/coolingCalibration.ts';
import { streamPressureAvailable, wideOpenAirflow } from '../../src/engineering/coolingFlow.ts';
import {
  highestOutsideAirTemperature,
  requiredAirflow,
  requiredExitArea,
  requiredInletArea,
} from '../../src/engineering/coolingLimit.ts';
import { coolingResult } from '../../src/engineering/coolingResult.ts';
import type { CoolingCondition, CoolingStream } from '../../src/engineering/coolingStream.ts';
import { exchangerTemperature } from '../../src/engineering/exchangerTemperature.ts';
import { discArea, propellerThrust } from '../../src/engineering/propeller.ts';
import { toSi } from '../../src/units.ts';
import { climb, conditions, finStream, radiatorStream, streams } from './coolingSamples.ts';
import { pound } from './tradeUnits.ts';

const limits = fc.double({ min: 330, max: 520, noNaN: true });

test('with the exit area asked for, the temperature is the limit; else it is over it even with the exit wide open', () => {
  fc.assert(
    fc.property(streams, conditions, limits, (stream, c, limit) => {
      fc.pre(limit > c.outsideAirTemperature + 20);
      const needed = { ...stream, limit };
      const exitArea = requiredExitArea(needed, c);
      if (exitArea === undefined)
        expect(coolingResult({ ...needed, exitArea: 1e4 }, c).margin!).toBeLessThan(1e-3);
      // So little air that the search ends: it holds with a hundredth of a square millimetre
      else if (requiredAirflow(needed, c)! > 1e-4)
        expect(coolingResult({ ...needed, exitArea }, c).margin!).toBeCloseTo(0, 4);
    }),
  );
});

test('a higher limit needs less exit and allows a hotter day', () => {
  fc.assert(
    fc.property(streams, conditions, limits, (stream, c, limit) => {
      const at = (l: number) => ({
        exit: requiredExitArea({ ...stream, limit: l }, c) ?? Number.MAX_VALUE,
        air: highestOutsideAirTemperature({ ...stream, limit: l }, (outsideAirTemperature) => ({
          ...c,
          outsideAirTemperature,
        })).temperature,
      });
      const low = at(limit);
      const high = at(limit + 5);
      expect(high.exit).toBeLessThanOrEqual(low.exit);
      expect(high.air).toBeGreaterThanOrEqual(low.air);
    }),
  );
});

test('on the hottest day found the temperature is the limit', () => {
  fc.assert(
    fc.property(streams, conditions, limits, (stream, c, limit) => {
      const at = (outsideAirTemperature: number): CoolingCondition => ({ ...c, outsideAirTemperature });
      const needed = { ...stream, limit };
      const highest = highestOutsideAirTemperature(needed, at);
      const margin = coolingResult(needed, at(highest.temperature)).margin!;
      if (highest.found === 'yes') expect(margin).toBeCloseTo(0, 2);
      if (highest.found === 'holdsUpToHottest') expect(margin).toBeGreaterThanOrEqual(0);
      if (highest.found === 'exceededAtColdest') expect(margin).toBeLessThan(0);
    }),
  );
});

test('a limit that the wide-open core just holds needs an exit without end, or none will do', () => {
  fc.assert(
    fc.property(streams, conditions, (stream, c) => {
      const density = airDensity(standardPressure(c.pressureAltitude), c.outsideAirTemperature);
      const widest = wideOpenAirflow(stream.core, streamPressureAvailable(stream, c), density);
      const exitArea = requiredExitArea({ ...stream, limit: exchangerTemperature(stream, c, widest) }, c);
      expect(exitArea ?? Number.MAX_VALUE).toBeGreaterThan(100); // m²
    }),
  );
});

test('inlet: airflow over density, airspeed and 0.35', () => {
  const airflow = requiredAirflow(radiatorStream, climb)!;
  const density = airDensity(standardPressure(1000), 300);
  expect(requiredInletArea(radiatorStream, climb)!).toBeCloseTo(airflow / (density * 42 * 0.35), 12);
  // and that airflow, by the definition of ε, leaves the air no hotter than the coolant
  expect(50_000 / (airflow * airSpecificHeat)).toBeLessThan(390 - 300);
});

test('what cannot be is said', () => {
  const cold: CoolingStream = { ...radiatorStream, limit: 305 };
  expect(requiredAirflow(cold, climb)).toBeUndefined();
  expect(requiredExitArea(cold, climb)).toBeUndefined();
  expect(requiredInletArea(cold, climb)).toBeUndefined();
  const still = { ...climb, trueAirspeed: 0, thrust: 0 };
  expect(requiredExitArea(radiatorStream, still)).toBeUndefined();
  expect(
    highestOutsideAirTemperature(radiatorStream, (outsideAirTemperature) => ({
      ...still,
      outsideAirTemperature,
    })),
  ).toEqual({ temperature: 203.15, found: 'exceededAtColdest' });
  expect(
    highestOutsideAirTemperature({ ...finStream, limit: 900 }, (outsideAirTemperature) => ({
      ...climb,
      outsideAirTemperature,
    })),
  ).toEqual({ temperature: 333.15, found: 'holdsUpToHottest' });
});

describe('an exit too small: 160 hp, core 2.2 inH2O at 160 lb/min, NTU 1.25, coolant to 248 °F, exit 52 in²', () => {
  const core = {
    referenceAirflow: toSi('massFlow', 160, 'lb/min'),
    referencePressureDrop: toSi('pressure', 2.2, 'inH2O'),
    pressureExponent: 1.8,
  };
  const stream: CoolingStream = {
    ...radiatorStream,
    heat: { fraction: 0.55, of: 'shaftPower' },
    exitArea: toSi('openingArea', 52, 'in²'),
    core,
    // 6,000 W/K: 1.7 kg/s, some 26 US gal/min, of half glycol, which falls by 11 K in the radiator
    exchanger: radiatorFromNtu(
      { kind: 'radiator', airSideShare: 0.8, coolantCapacityRate: 6000, temperatureAt: 'radiatorInlet' },
      core,
      1.25,
    ),
    limit: toSi('temperature', 248, '°F'),
  };
  const climbing = (knots: number): CoolingCondition => {
    const air = hotDayTemperature(0);
    const density = airDensity(standardPressure(0), air);
    const trueAirspeed = toSi('speed', knots, 'kt');
    const diameter = toSi('length', 75, 'in');
    const shaftPower = toSi('power', 160, 'hp');
    return {
      shaftPower,
      trueAirspeed,
      pressureAltitude: 0,
      outsideAirTemperature: air,
      thrust: propellerThrust(shaftPower, trueAirspeed, diameter, density, 0.74),
      discArea: discArea(diameter),
    };
  };

  test('the flow at 80 kt by an independent calculation', () => {
    // The balance on three lines, 160 hp × 745.7 W × 0.55 = 65,622 W, air of 100 °F: 1.1356 kg/m³, 310.93 K
    const result = coolingResult(stream, climbing(80));
    const need = (lbPerMin: number) => {
      const m = (lbPerMin * pound) / 60;
      const corePart = (2.2 * 249.089 * (lbPerMin / 160) ** 1.8) / (1.1356 / 1.225);
      const exitPart = (m * m + (m * 65_622) / (1005 * 310.93)) / (2 * 1.1356 * (0.9 * 0.033548) ** 2);
      return corePart + exitPart;
    };
    expect(need(130)).toBeLessThan(result.flow.pressureAvailable);
    expect(need(140)).toBeGreaterThan(result.flow.pressureAvailable);
    expect(
      Math.abs(need(result.flow.airflow / (pound / 60)) / result.flow.pressureAvailable - 1),
    ).toBeLessThan(2e-3);
  });

  test('on the hot day it overheats at 80 kt and holds at 100 kt; a bigger exit cures it', () => {
    expect(coolingResult(stream, climbing(80)).margin!).toBeLessThan(0);
    expect(coolingResult(stream, climbing(100)).margin!).toBeGreaterThan(0);
    const exitArea = requiredExitArea(stream, climbing(80))!;
    expect(exitArea).toBeGreaterThan(stream.exitArea);
    expect(coolingResult({ ...stream, exitArea }, climbing(80)).margin!).toBeCloseTo(0, 5);
  });
});
