/** Heat, airflow, pressure and openings of cooling air. */

import { airSpecificHeat } from '../../../src/engineering/air.ts';
import { heatedDensity, slipstreamPressure } from '../../../src/engineering/coolingAir.ts';
import { coolingDrag } from '../../../src/engineering/coolingDrag.ts';
import { coolingFlow, exitAirflow } from '../../../src/engineering/coolingFlow.ts';
import { type CoolingDuct, defaultCorePressureExponent } from '../../../src/engineering/coolingStream.ts';
import { fromFunction, type Topic } from '../publishedValue.ts';
import { seaLevelFlight } from '../seaLevelFlight.ts';

const ventilation = 'ventilation practice, air of 0.075 lb/ft³: 4,005 ft/min for 1 inH2O';
const standardAirOfVentilation = 0.075 / 0.0764742; // over sea-level density

const duct: CoolingDuct = {
  heat: { fraction: 1, of: 'shaftPower' },
  inletRecovery: 1,
  slipstreamShare: 0,
  exitPressureCoefficient: 0,
  exitArea: 0.02,
  exitDischargeCoefficient: 0.9,
  exitAngle: 0,
  leakageDragArea: 0,
};
const openCore = { referenceAirflow: 1, referencePressureDrop: 1e-9, pressureExponent: 1.8 };
const heated = { ...seaLevelFlight, shaftPower: 0.3 * airSpecificHeat * 288.15 };

export const coolingAir: Topic = {
  topic: 'cooling air',
  values: [
    {
      what: 'heat of 1 hp, Btu/min',
      source: 'engineering handbooks',
      status: 'from memory',
      expected: 42.4072,
      tolerance: 0.00005,
      compute: () => fromFunction('COOLING_HEAT', [1, 1]),
    },
    {
      what: 'heat of 1 hp, Btu/h',
      source: 'engineering handbooks',
      status: 'from memory',
      expected: 2544.43,
      tolerance: 0.005,
      compute: () => 60 * fromFunction('COOLING_HEAT', [1, 1]),
    },
    {
      what: 'air for 240 Btu/min at a rise of 100 °F, lb/min',
      source: 'engineering handbooks: specific heat of air 0.240 Btu/(lb·°F)',
      status: 'from memory',
      expected: 10,
      tolerance: 0.02,
      compute: () => fromFunction('COOLING_AIRFLOW', [240, 100]),
    },
    {
      what: 'dynamic pressure at 100 mph and sea level, lb/ft²',
      source: 'aeronautical handbooks',
      status: 'from memory',
      expected: 25.58,
      tolerance: 0.02,
      compute: () => {
        const inchesOfWater = fromFunction('COOLING_PRESSURE_AVAILABLE', [100 / 1.1507794, 1, 1]);
        return inchesOfWater * 5.2023; // lb/ft² in an inch of water
      },
    },
    {
      what: 'speed whose dynamic pressure is 1 inH2O, ft/min: pressure there, inH2O',
      source: ventilation,
      status: 'from memory',
      expected: 1,
      tolerance: 0.002,
      note: 'its inch of water is that of a warm room, 0.1 % less; 4,005 is rounded',
      compute: () =>
        fromFunction('COOLING_PRESSURE_AVAILABLE', [(4005 * 60) / 6076.1155, standardAirOfVentilation, 1]),
    },
    {
      what: 'exit for 60 lb/min with 1 inH2O across it, discharge coefficient 0.9, in²',
      source: `${ventilation}: 800/(0.9 × 4,005) ft²`,
      status: 'derived',
      expected: (800 / (0.9 * 4005)) * 144,
      tolerance: { relative: 1e-3 },
      compute: () => fromFunction('COOLING_EXIT_AREA', [60, 1, standardAirOfVentilation]),
    },
    {
      what: 'inlet for 60 lb/min at 100 kt and sea level, speed ratio 0.35, in²',
      source: 'continuity, standard air 0.0764742 lb/ft³, 100 kt = 168.781 ft/s',
      status: 'derived',
      expected: 144 / (0.0764742 * 168.781 * 0.35),
      tolerance: { relative: 1e-5 },
      compute: () => fromFunction('COOLING_INLET_AREA', [60, 100, 1]),
    },
    {
      what: 'pressure rise of a disc of 2.5447 m² at 1,000 N, Pa',
      source: 'Rankine and Froude: T/A',
      status: 'derived',
      expected: 392.97,
      tolerance: 0.01,
      compute: () => slipstreamPressure(1, 1000, 2.5447),
    },
    {
      what: 'air through a duct that is all exit, 200 cm², discharge coefficient 0.9, at 50 m/s, kg/s',
      source: 'Bernoulli: C_d A ρ V = 0.9 × 0.02 × 1.225 × 50',
      status: 'derived',
      expected: 1.1025,
      tolerance: 1e-6,
      compute: () => coolingFlow(duct, openCore, seaLevelFlight).airflow,
    },
    {
      what: 'air through that exit, heated by 0.3 kg/s × c_p T, at 1,637.7 Pa, kg/s',
      source: 'Bernoulli: m (m + 0.3) = 2 ρ (C_d A)² Δp = 1.3',
      status: 'derived',
      expected: 1,
      tolerance: 1e-6,
      compute: () => exitAirflow(duct, heated, 1.3 / (2 * 1.225 * 0.018 ** 2)),
    },
    {
      what: 'air through that duct, heated by as much, at 50 m/s, kg/s',
      source: 'Bernoulli: m² + 0.3 m − 1.1025² = 0',
      status: 'derived',
      expected: -0.15 + Math.sqrt(0.0225 + 1.1025 ** 2),
      tolerance: 1e-6,
      compute: () => coolingFlow(duct, openCore, heated).airflow,
    },
    {
      what: 'air through a core that takes as much pressure as that exit, kg/s',
      source: 'Bernoulli, pressure drop as the square of the flow: 1.1025/√2',
      status: 'derived',
      expected: 1.1025 / Math.SQRT2,
      tolerance: 1e-6,
      compute: () => {
        const equal = {
          referenceAirflow: 1.1025,
          referencePressureDrop: (1.225 * 50 ** 2) / 2,
          pressureExponent: 2,
        };
        return coolingFlow(duct, equal, seaLevelFlight).airflow;
      },
    },
    {
      what: 'drag of 1 kg/s that leaves with a quarter of the dynamic pressure of 50 m/s, N',
      source: 'momentum theorem: m (V − V/2)',
      status: 'derived',
      expected: 25,
      tolerance: 1e-3,
      compute: () =>
        coolingDrag(duct, seaLevelFlight, {
          airflow: 1,
          heat: 0,
          pressureAvailable: 0,
          corePressureDrop: 0,
          exitPressureDrop: (1.225 * 50 ** 2) / 8,
          density: 1.225,
          exitDensity: 1.225,
        }).momentum,
    },
    {
      what: 'pressure drop in turbulent passages as what power of the flow',
      source: 'heat-transfer textbooks: friction factor as Re^−0.2, smooth tubes',
      status: 'from memory',
      expected: 1.8,
      tolerance: 1e-9,
      compute: () => defaultCorePressureExponent,
    },
    {
      what: 'density of air of 1.2 kg/m³ and 300 K warmed by 60 K, kg/m³',
      source: 'perfect gas at constant pressure',
      status: 'derived',
      expected: 1,
      tolerance: 1e-12,
      compute: () => heatedDensity(1.2, 300, 60),
    },
  ],
};
