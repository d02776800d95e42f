/** Radiators, intercoolers, compressors, fins. */
import { intercoolerHeat } from '../../../src/engineering/chargeAir.ts';
import { conductanceRatio } from '../../../src/engineering/exchangerTemperature.ts';
import {
  barrelFinLaw,
  type FinLaw,
  finCoefficient,
  finTemperature,
  headFinLaw,
} from '../../../src/engineering/fins.ts';
import { crossFlowNtu } from '../../../src/engineering/radiator.ts';
import { fromFunction, type PublishedValue, type Topic } from '../publishedValue.ts';
import { seaLevelFlight } from '../seaLevelFlight.ts';

const effectiveness = (ntu: number, capacityRatio: number) =>
  fromFunction('RADIATOR_EFFECTIVENESS', [ntu, capacityRatio]);

/** NTU, C_r, ε of the exact series. */
export const crossFlowSeries = [
  [0.5, 0.25, 0.37509],
  [1, 0.25, 0.58801],
  [1, 0.5, 0.54749],
  [1, 0.75, 0.51031],
  [1, 1, 0.47622],
  [2, 0.5, 0.73241],
  [2, 1, 0.61425],
  [3, 0.5, 0.81971],
] as const;

const som = 'Som, Introduction to Heat Transfer, example 10.7 (companion read)';
const solver = 'Nellis and Klein, as in the examples of an equation solver';
const kelvin = (fahrenheit: number) => (fahrenheit + 459.67) / 1.8;

/** d ln(T − T_a) / d ln P, and / d ln m with Δp as the 1.8 power of m, at a temperature in air of 70 °F. */
function slope(law: FinLaw, fahrenheit: number, of: 'power' | 'flow'): number {
  const air = kelvin(70);
  const coefficient = finCoefficient(law, kelvin(fahrenheit), 1e5, 1000, air);
  const rise = (change: number) =>
    of === 'power'
      ? finTemperature(law, coefficient, 1e5 * change, 1000, air) - air
      : finTemperature(law, coefficient, 1e5, 1000 * change ** 1.8, air) - air;
  return Math.log(rise(1.001) / rise(0.999)) / Math.log(1.001 / 0.999);
}
const naca = 'NACA TN 584 (1936), summary';
const fins = (what: string, expected: number, compute: () => number): PublishedValue => ({
  what,
  source: naca,
  status: 'read',
  expected,
  tolerance: 0.01,
  note: 'at usual temperatures, which the summary does not give',
  compute,
});

export const heatExchangers: Topic = {
  topic: 'heat exchangers, charge air, fins',
  values: [
    ...crossFlowSeries.map(
      ([ntu, capacityRatio, expected]): PublishedValue => ({
        what: `effectiveness at NTU ${ntu}, C_r ${capacityRatio}`,
        source: 'Mason 1955, series tabulated by Kays and London, cross-flow, both unmixed',
        status: 'derived',
        expected,
        tolerance: 1e-5,
        compute: () => effectiveness(ntu, capacityRatio),
      }),
    ),
    {
      what: 'effectiveness at NTU 1, C_r 1',
      source: 'Kays and London, Compact Heat Exchangers, table',
      status: 'from memory',
      expected: 0.476,
      tolerance: 0.0005,
      compute: () => effectiveness(1, 1),
    },
    {
      what: 'effectiveness at NTU 5, C_r 0.7',
      source: 'example of a public heat-transfer library, integral with a Bessel function (Triboix 2009)',
      status: 'read',
      expected: 0.8444821799748551,
      tolerance: 1e-12,
      compute: () => effectiveness(5, 0.7),
    },
    {
      what: 'NTU of effectiveness 0.8444821799748551, C_r 0.7',
      source: 'example of a public heat-transfer library',
      status: 'read',
      expected: 5,
      tolerance: 1e-9,
      compute: () => crossFlowNtu(0.8444821799748551, 0.7),
    },
    {
      what: 'effectiveness at NTU 5, C_r 0 (one side boiling)',
      source: 'tests of a public heat-transfer library',
      status: 'read',
      expected: 0.9932620530009145,
      tolerance: 1e-12,
      compute: () => effectiveness(5, 0),
    },
    {
      what: 'effectiveness of UA 75 between 50 and 30 W/K',
      source: solver,
      status: 'read',
      expected: 0.7632,
      tolerance: 0.009,
      note: 'by the correlation with NTU^0.22, which errs by so much',
      compute: () => effectiveness(75 / 30, 30 / 50),
    },
    {
      what: 'NTU of effectiveness 0.61, C_r 0.6',
      source: solver,
      status: 'read',
      expected: 1.341,
      tolerance: 0.03,
      note: 'by the correlation',
      compute: () => crossFlowNtu(0.61, 0.6),
    },
    {
      what: 'effectiveness of UA 55 kW/K between 29.26 and 10.1 kW/K',
      source: som,
      status: 'read',
      expected: 0.95282,
      tolerance: 0.009,
      note: 'by the correlation; the exact series gives 0.94859',
      compute: () => effectiveness(55 / 10.1, 10.1 / 29.26),
    },
    {
      what: 'heat exchanged there from 125 to 20 °C, MW',
      source: som,
      status: 'read',
      expected: 1,
      tolerance: 0.015,
      note: 'the book rounds to 1 MW',
      compute: () => (effectiveness(55 / 10.1, 10.1 / 29.26) * 10.1 * 105) / 1000,
    },
    {
      what: 'effectiveness needed to cool gas from 300 to 100 °C and heat 1 kg/s of water from 35 to 125 °C: NTU',
      source: 'Incropera and DeWitt, finned cross-flow exchanger, example 11.3, read off the chart',
      status: 'from memory',
      expected: 2.1,
      tolerance: 0.1,
      compute: () => crossFlowNtu(200 / 265, 90 / 200),
    },
    {
      what: 'air of 288 K behind a compressor of 4:1 and 85 %, rise in K',
      source: 'Saravanamuttoo and others, Gas Turbine Theory, chapter 2 example',
      status: 'from memory',
      expected: 164.7,
      tolerance: 0.05,
      compute: () => fromFunction('CHARGE_TEMPERATURE', [14.85, 4, 0.85]) - 14.85,
    },
    {
      what: 'air of 286.8 K behind an ideal compressor of 8:1, K',
      source: 'Çengel and Cimbala, Fluid Mechanics, example 12-1 (inputs read)',
      status: 'from memory',
      expected: 519.5,
      tolerance: 0.1,
      compute: () => fromFunction('CHARGE_TEMPERATURE', [13.65, 8, 1]) + 273.15,
    },
    {
      what: 'work of that compressor, kJ/kg, here as heat of an intercooler over the same temperatures',
      source: 'Çengel and Cimbala, Fluid Mechanics, example 12-1 (inputs read)',
      status: 'from memory',
      expected: 233.9,
      tolerance: 0.3,
      compute: () => intercoolerHeat(1, 519.5, 286.8) / 1000,
    },
    {
      what: 'air of 300 K behind a compressor of 1.6:1 and 70 %, K',
      source: 'isentropic efficiency, by hand: 300 (1 + 0.14372/0.7)',
      status: 'derived',
      expected: 361.6,
      tolerance: 0.05,
      compute: () => fromFunction('CHARGE_TEMPERATURE', [26.85, 1.6, 0.7]) + 273.15,
    },
    {
      what: 'the same behind an intercooler of 70 % in air of 300 K, K',
      source: 'definition of the effectiveness: 361.6 − 0.7 × 61.6',
      status: 'derived',
      expected: 318.48,
      tolerance: 0.02,
      compute: () => fromFunction('CHARGE_TEMPERATURE', [26.85, 1.6, 0.7, 0.7]) + 273.15,
    },
    fins('power exponent of a head at 400 °F', 0.38, () => slope(headFinLaw, 400, 'power')),
    fins('mass flow exponent of a head at 400 °F', -0.39, () => slope(headFinLaw, 400, 'flow')),
    fins('power exponent of a barrel at 300 °F', 0.38, () => slope(barrelFinLaw, 300, 'power')),
    fins('mass flow exponent of a barrel at 300 °F', -0.35, () => slope(barrelFinLaw, 300, 'flow')),
    {
      what: 'how a barrel of 300 °F follows the air from 60 to 100 °F',
      source: '14 CFR 25.1043(d), twin of 23.1043(d)',
      status: 'read',
      expected: 0.7,
      tolerance: 0.02,
      note: 'the slope of the gas temperature was chosen for it',
      compute: () => {
        const coefficient = finCoefficient(barrelFinLaw, kelvin(300), 1e5, 1000, kelvin(60));
        const at = (air: number) => finTemperature(barrelFinLaw, coefficient, 1e5, 1000, kelvin(air));
        return (at(100) - at(60)) / (40 / 1.8);
      },
    },
    {
      what: 'conductance at twice the coolant flow, all resistance on its side',
      source: 'Dittus and Boelter: 0.8 power of the flow in tubes',
      status: 'from memory',
      expected: 2 ** 0.8,
      tolerance: 1e-9,
      compute: () =>
        conductanceRatio(
          { kind: 'radiator', airSideShare: 0, coolantCapacityRate: 1, temperatureAt: 'radiatorInlet' },
          { referenceAirflow: 1, referencePressureDrop: 1, pressureExponent: 1.8 },
          { ...seaLevelFlight, engineSpeedRatio: 2 },
          1,
        ),
    },
    {
      what: 'air temperature for which the gas temperature of heads holds, °F',
      source: 'NACA Report 683',
      status: 'from memory',
      expected: 80,
      tolerance: 1e-6,
      compute: () => headFinLaw.gasReferenceTemperature * 1.8 - 459.67,
    },
    {
      what: 'air temperature for which the gas temperature of barrels holds, °F',
      source: 'NACA Report 683',
      status: 'from memory',
      expected: 80,
      tolerance: 1e-6,
      compute: () => barrelFinLaw.gasReferenceTemperature * 1.8 - 459.67,
    },
    {
      what: 'effective gas temperature of heads in air of 80 °F, °F',
      source: 'NACA Report 683',
      status: 'from memory',
      expected: 1150,
      tolerance: 1e-6,
      compute: () => headFinLaw.gasTemperature * 1.8 - 459.67,
    },
    {
      what: 'effective gas temperature of barrels in air of 80 °F, °F',
      source: 'NACA Report 683',
      status: 'from memory',
      expected: 600,
      tolerance: 1e-6,
      compute: () => barrelFinLaw.gasTemperature * 1.8 - 459.67,
    },
  ],
};
