import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { airSpecificHeat } from '../../src/engineering/air.ts';
import { coolingDrag } from '../../src/engineering/coolingDrag.ts';
import { coolingResult } from '../../src/engineering/coolingResult.ts';
import type { CoolingStream } from '../../src/engineering/coolingStream.ts';
import { exchangerTemperature } from '../../src/engineering/exchangerTemperature.ts';
import { effectiveGasTemperature } from '../../src/engineering/fins.ts';
import { climb, conditions, duct, finStream, radiatorStream, streams } from './coolingSamples.ts';

describe('temperature at an airflow, worked by hand', () => {
  // Air 1.2 kg/s: C = 1,205.63 W/K; coolant 4,822.5 is four times that. UA = 1,205.63, so NTU 1 at C_r 0.25: ε = 0.58801 (Kays
  // and London's series, table of the radiator test). 50 kW/(0.58801 × 1,205.63 W/K) = 70.53 K above air of 300 K.
  const stream: CoolingStream = {
    ...duct,
    exchanger: {
      kind: 'radiator',
      conductance: 1.2 * airSpecificHeat,
      airSideShare: 0.8,
      coolantCapacityRate: 4.8 * airSpecificHeat,
      temperatureAt: 'radiatorInlet',
    },
    limit: 390,
  };
  test('before the radiator', () => {
    expect(exchangerTemperature(stream, climb, 1.2)).toBeCloseTo(370.53, 2);
  });
  test('behind it, cooler by Q/C = 50,000/4,822.5', () => {
    const behind = { ...stream, exchanger: { ...stream.exchanger, temperatureAt: 'radiatorOutlet' } };
    expect(exchangerTemperature(behind as CoolingStream, climb, 1.2)).toBeCloseTo(370.53 - 10.37, 2);
  });

  test('conductance follows both flows: 0.8 of the resistance on the air side', () => {
    // With endless coolant ε = 1 − e^−NTU. At half the air, airSide = 0.5^0.8 = 0.57435:
    // UA ratio 1/(0.8/0.57435 + 0.2) = 0.62779; NTU = 0.62779/0.5 = 1.25558; ε = 0.71509; T = 300 + 50,000/(0.71509 × 602.81)
    const endless = {
      ...stream,
      exchanger: { ...stream.exchanger, coolantCapacityRate: 1e14 },
    } as CoolingStream;
    expect(exchangerTemperature(endless, climb, 0.6)).toBeCloseTo(415.99, 1);
    // At half engine speed, 0.5^0.8 on the other side: UA ratio 1/(0.8 + 0.2/0.57435) = 0.87091; ε = 0.58142 at full air
    const slow = exchangerTemperature(endless, { ...climb, engineSpeedRatio: 0.5 }, 1.2);
    expect(slow).toBeCloseTo(300 + 50_000 / (0.58142 * 1205.63), 1);
  });
});

test('at a given airflow a radiator follows the outside air one for one, as 14 CFR 23.1043(c) corrects', () => {
  fc.assert(
    fc.property(conditions, fc.double({ min: 0.01, max: 3, noNaN: true }), (c, airflow) => {
      const hotter = { ...c, outsideAirTemperature: c.outsideAirTemperature + 10 };
      const rise =
        exchangerTemperature(radiatorStream, hotter, airflow) -
        exchangerTemperature(radiatorStream, c, airflow);
      expect(rise).toBeCloseTo(10, 6);
    }),
  );
});

test('in flight the hotter air is thinner too: more than one for one', () => {
  fc.assert(
    fc.property(conditions, (c) => {
      const at = (outsideAirTemperature: number) =>
        coolingResult(radiatorStream, { ...c, outsideAirTemperature }).temperature!;
      expect(at(c.outsideAirTemperature + 10)).toBeGreaterThan(at(c.outsideAirTemperature) + 10);
    }),
  );
});

test('more power is hotter; more exit, more speed, more conductance cooler; hotter than the air, fins cooler than the gas', () => {
  fc.assert(
    fc.property(streams, conditions, (stream, c) => {
      const temperature = (s: CoolingStream, condition = c) => coolingResult(s, condition).temperature!;
      const usual = temperature(stream);
      expect(temperature(stream, { ...c, shaftPower: c.shaftPower * 1.02 })).toBeGreaterThan(usual);
      expect(temperature({ ...stream, exitArea: stream.exitArea * 1.02 })).toBeLessThan(usual);
      expect(temperature(stream, { ...c, trueAirspeed: c.trueAirspeed + 1 })).toBeLessThan(usual);
      expect(
        temperature(stream, { ...c, outsideAirTemperature: c.outsideAirTemperature + 5 }),
      ).toBeGreaterThan(usual);
      expect(usual).toBeGreaterThan(c.outsideAirTemperature);
      if (stream.exchanger.kind === 'fins')
        expect(usual).toBeLessThan(effectiveGasTemperature(stream.exchanger.law, c.outsideAirTemperature));
      if (stream.exchanger.kind === 'radiator') {
        const conductance = stream.exchanger.conductance * 1.05;
        expect(temperature({ ...stream, exchanger: { ...stream.exchanger, conductance } })).toBeLessThan(
          usual,
        );
      }
    }),
  );
});

test('airspeed going to 0 leaves the temperature of the slipstream, without a step, and says so', () => {
  for (const stream of [radiatorStream, finStream]) {
    const standing = coolingResult(stream, { ...climb, trueAirspeed: 0 });
    expect(standing.flags).toEqual(['mostlySlipstream']);
    expect(coolingResult(stream, climb).flags).toEqual([]);
    const near = coolingResult(stream, { ...climb, trueAirspeed: 1e-4 });
    expect(near.temperature! - standing.temperature!).toBeCloseTo(0, 5);
    expect(standing.margin).toBe(stream.limit - standing.temperature!);
  }
});

test('mostly slipstream is where its share of the disc loading exceeds the dynamic pressure', () => {
  // By hand: 0.35 × 1,700 N/2.8 m² = 212.5 Pa; 89,875 Pa and 300 K are 1.0437 kg/m³: q is the same at 20.18 m/s
  const flagsAt = (trueAirspeed: number) => coolingResult(radiatorStream, { ...climb, trueAirspeed }).flags;
  expect(flagsAt(20.1)).toEqual(['mostlySlipstream']);
  expect(flagsAt(20.3)).toEqual([]);
});

test('standing without slipstream: no temperature, no drag, and says so', () => {
  const result = coolingResult({ ...radiatorStream, slipstreamShare: 0 }, { ...climb, trueAirspeed: 0 });
  expect(result.flags).toEqual(['noAirflow']);
  expect(result.temperature).toBeUndefined();
  expect(result.margin).toBeUndefined();
  expect(result.drag).toEqual({ momentum: 0, leakage: 0 });
});

describe('cooling drag', () => {
  const flow = {
    airflow: 1.2,
    heat: 0,
    pressureAvailable: 900,
    corePressureDrop: 400,
    exitPressureDrop: 500,
    density: 1.0,
    exitDensity: 0.8,
  };
  test('worked by hand', () => {
    // q = 800; slipstream 0.5 × 1,125/2.5 = 225; V_s = √(2 × 1,025) = 45.277; V_e = √(2 (500 − 0.1 × 800)/0.8) = 32.404
    const condition = { ...climb, trueAirspeed: 40, thrust: 1125, discArea: 2.5 };
    const d = { ...duct, slipstreamShare: 0.5, exitAngle: Math.PI / 3 };
    const drag = coolingDrag(d, condition, flow);
    expect(drag.momentum).toBeCloseTo(1.2 * (45.277 - 0.5 * 32.404), 2);
    expect(drag.leakage).toBeCloseTo(8, 9);
  });

  test('cold air never pushes: with no heat the momentum part is above 0', () => {
    fc.assert(
      fc.property(conditions, (c) => {
        const { drag } = coolingResult(radiatorStream, { ...c, shaftPower: 0 });
        expect(drag.momentum).toBeGreaterThan(0);
      }),
    );
  });

  test('next to no air through an exit nearly shut: next to no drag', () => {
    const open = coolingResult(radiatorStream, climb);
    const shut = coolingResult({ ...radiatorStream, exitArea: 1e-4 }, climb);
    expect(Math.abs(shut.drag.momentum)).toBeLessThan(0.01 * open.drag.momentum);
  });
});
