import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { airSpecificHeat, gasConstantAir, seaLevelDensity } from '../../src/engineering/air.ts';
import { coolingFlow, corePressureDrop, wideOpenAirflow } from '../../src/engineering/coolingFlow.ts';
import type { CoolingCondition, CoolingDuct } from '../../src/engineering/coolingStream.ts';
import { climb, conditions, duct } from './coolingSamples.ts';

const seaLevel: CoolingCondition = {
  ...climb,
  trueAirspeed: 50,
  pressureAltitude: 0,
  outsideAirTemperature: 288.15,
};
const square = { referenceAirflow: 1, referencePressureDrop: 600, pressureExponent: 2 };
const plain: CoolingDuct = {
  ...duct,
  inletRecovery: 1,
  slipstreamShare: 0,
  exitPressureCoefficient: 0,
  exitArea: 0.05,
  exitDischargeCoefficient: 0.8,
};

describe('worked by hand: q = 1,531.25 Pa, core 600 m² Pa, exit (0.8 × 0.05 m²)', () => {
  test('without heat both drops are squares', () => {
    const flow = coolingFlow(plain, square, { ...seaLevel, shaftPower: 0 });
    // exit m²/(2 × 1.225 × 0.0016) = 255.102 m²; m = √(1,531.25/855.102) = 1.338180
    expect(flow.airflow).toBeCloseTo(1.33818, 5);
    expect(flow.corePressureDrop).toBeCloseTo(1074.43, 1);
    expect(flow.exitPressureDrop).toBeCloseTo(456.82, 1);
    expect(flow.exitDensity).toBeCloseTo(1.225, 4);
  });

  test('50 kW make it a quadratic', () => {
    const flow = coolingFlow(plain, square, { ...seaLevel, shaftPower: 100_000 });
    // Q/(c_p T) = 50,000/(1,004.69 × 288.15) = 0.172712; 855.102 m² + 255.102 × 0.172712 m = 1,531.25
    const linear = 255.102 * 0.172712;
    const root = (-linear + Math.sqrt(linear ** 2 + 4 * 855.102 * 1531.25)) / (2 * 855.102);
    expect(flow.airflow).toBeCloseTo(root, 5);
    expect(flow.heat).toBe(50_000);
  });

  test('at half the density the core takes twice the pressure for the same flow', () => {
    // air of 576.3 K, twice 288.15
    const flow = coolingFlow(plain, square, { ...seaLevel, outsideAirTemperature: 576.3, shaftPower: 0 });
    expect(flow.density / seaLevelDensity).toBeCloseTo(0.5, 9);
    expect(flow.corePressureDrop / flow.airflow ** 2).toBeCloseTo(1200, 6);
  });

  test('heat as a fraction of fuel energy', () => {
    const byFuel = { ...plain, heat: { fraction: 0.13, of: 'fuelEnergy' as const } };
    expect(coolingFlow(byFuel, square, seaLevel).heat).toBeCloseTo(0.13 * 380_000, 6);
    const { fuelPower: _, ...withoutFuel } = seaLevel;
    expect(() => coolingFlow(byFuel, square, withoutFuel)).toThrow('fuelPower must be given');
  });
});

test('the balance holds everywhere, written out afresh', () => {
  fc.assert(
    fc.property(conditions, fc.double({ min: 1e-4, max: 10, noNaN: true }), (c, exitArea) => {
      const flow = coolingFlow({ ...duct, exitArea }, duct.core, c);
      const m = flow.airflow;
      const q = (flow.density * c.trueAirspeed ** 2) / 2;
      const left = 0.8 * (q + (0.35 * c.thrust) / c.discArea) + 0.1 * q;
      const core = (550 * (m / 1.2) ** 1.8) / (flow.density / seaLevelDensity);
      const heated = c.outsideAirTemperature + (0.5 * c.shaftPower) / (m * airSpecificHeat);
      const pressure = flow.density * gasConstantAir * c.outsideAirTemperature;
      const exit = m ** 2 / ((2 * pressure * (0.9 * exitArea) ** 2) / (gasConstantAir * heated));
      expect(Math.abs((core + exit) / left - 1)).toBeLessThan(1e-9);
    }),
  );
});

test('with the exit wide open the core takes the whole pressure', () => {
  // Four times the 600 Pa of 1 kg/s is 2 kg/s by the square law; twice the 600 Pa at half the density is 1 kg/s
  expect(wideOpenAirflow(square, 2400, seaLevelDensity)).toBeCloseTo(2, 12);
  expect(wideOpenAirflow(square, 1200, seaLevelDensity / 2)).toBeCloseTo(1, 12);
  fc.assert(
    fc.property(
      fc.double({ min: 1, max: 5000, noNaN: true }),
      fc.double({ min: 0.3, max: 1.4, noNaN: true }),
      (pressure, density) => {
        const airflow = wideOpenAirflow(duct.core, pressure, density);
        expect(corePressureDrop(duct.core, airflow, density) / pressure).toBeCloseTo(1, 9);
      },
    ),
  );
});

test('more exit, more speed, more thrust: more air; more heat: less', () => {
  fc.assert(
    fc.property(conditions, (c) => {
      const airflow = (exitArea: number, condition: CoolingCondition) =>
        coolingFlow({ ...duct, exitArea }, duct.core, condition).airflow;
      const usual = airflow(0.04, c);
      expect(airflow(0.041, c)).toBeGreaterThan(usual);
      expect(airflow(0.04, { ...c, trueAirspeed: c.trueAirspeed + 1 })).toBeGreaterThan(usual);
      expect(airflow(0.04, { ...c, thrust: c.thrust * 1.02 })).toBeGreaterThan(usual);
      expect(airflow(0.04, { ...c, shaftPower: c.shaftPower * 1.02 })).toBeLessThan(usual);
    }),
  );
});

test('airspeed going to 0 leaves the slipstream, without a step', () => {
  const standing = coolingFlow(duct, duct.core, { ...climb, trueAirspeed: 0 });
  expect(standing.pressureAvailable).toBeCloseTo((0.8 * 0.35 * 1700) / 2.8, 9);
  for (const trueAirspeed of [1e-2, 1e-5, 1e-9, 5e-324]) {
    const flow = coolingFlow(duct, duct.core, { ...climb, trueAirspeed });
    expect(Math.abs(flow.airflow / standing.airflow - 1)).toBeLessThan(trueAirspeed ** 2 + 1e-12);
  }
});

test('nothing drives it: no flow, and finite numbers', () => {
  for (const trueAirspeed of [0, 5e-324, 1e-3]) {
    const flow = coolingFlow({ ...duct, slipstreamShare: 0 }, duct.core, { ...climb, trueAirspeed });
    expect(flow.airflow).toBe(0);
    expect(Object.values(flow).every((v) => typeof v === 'boolean' || Number.isFinite(v))).toBe(true);
  }
  const blown = coolingFlow({ ...duct, exitPressureCoefficient: 1, slipstreamShare: 0 }, duct.core, climb);
  expect(blown.pressureAvailable).toBeLessThan(0);
  expect(blown.airflow).toBe(0);
});
