/** Heat, airflow, pressure and openings of cooling air. */
import { heatedDensity, slipstreamPressure } from '../../../src/engineering/coolingAir.ts';
import { fromFunction, type Topic } from '../publishedValue.ts';

const ventilation = 'ventilation practice, air of 0.075 lb/ft³: 4,005 ft/min for 1 inH2O';
const standardAirOfVentilation = 0.075 / 0.0764742; // over sea-level density

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
      what: 'density of air of 1.2 kg/m³ and 300 K warmed by 60 K, kg/m³',
      source: 'perfect gas at constant pressure',
      status: 'derived',
      expected: 1,
      tolerance: 1e-12,
      compute: () => heatedDensity(1.2, 300, 60),
    },
  ],
};
