/** Heating values, densities, consumption. */
import { bsfcFromMassFlow, lowerHeatingValue, thermalEfficiency } from '../../../src/engineering/fuelFlow.ts';
import { fromSi, toSi } from '../../../src/units.ts';
import { fromFunction, type Topic } from '../publishedValue.ts';

const heatingTable = 'Hydrogen Analysis Resource Center, lower and higher heating values of fuels';
const advisoryCircular = 'FAA AC 43.13-1B, chapter 10';
const article = 'aviation maintenance article on engine heat';
const encyclopedia = 'encyclopedia, brake-specific fuel consumption';
const kilowattHourPerGram = 3.6e6 / 0.001; // J/kg
const bsfc = (gramsPerKilowattHour: number) => toSi('bsfc', gramsPerKilowattHour, 'g/kWh');

export const fuel: Topic = {
  topic: 'fuel',
  values: [
    {
      what: 'lower heating value of conventional gasoline, MJ/kg',
      source: heatingTable,
      status: 'read',
      expected: 43.438,
      tolerance: 0.05,
      note: 'kept to three digits: batches differ by 1 %',
      compute: () => lowerHeatingValue.mogas / 1e6,
    },
    {
      what: 'lower heating value of gasoline, 18,680 Btu/lb, in MJ/kg',
      source: heatingTable,
      status: 'read',
      expected: 43.438,
      tolerance: { relative: 4e-4 },
      note: 'the table rounds, and its Btu is not that of the International Table',
      compute: () => toSi('energyPerMass', 18_680, 'Btu/lb') / 1e6,
    },
    {
      what: 'lower heating value of US conventional diesel, 18,397 Btu/lb, in MJ/kg',
      source: heatingTable,
      status: 'read',
      expected: 42.781,
      tolerance: { relative: 4e-4 },
      compute: () => toSi('energyPerMass', 18_397, 'Btu/lb') / 1e6,
    },
    {
      what: 'lower heating value of low-sulphur diesel, MJ/kg',
      source: heatingTable,
      status: 'read',
      expected: 42.602,
      tolerance: 0.05,
      compute: () => lowerHeatingValue.diesel / 1e6,
    },
    {
      what: 'lower heating value of avgas, least allowed, Btu/lb',
      source: 'ASTM D910, as quoted',
      status: 'secondary',
      expected: 18_700,
      tolerance: 50,
      compute: () => fromSi('energyPerMass', lowerHeatingValue.avgas, 'Btu/lb'),
    },
    {
      what: 'lower heating value of Jet A, least allowed, MJ/kg',
      source: 'ASTM D1655',
      status: 'from memory',
      expected: 42.8,
      tolerance: 1e-9,
      compute: () => lowerHeatingValue.jetA / 1e6,
    },
    {
      what: 'density of conventional gasoline, 2,819 g/US gal, in kg/m³',
      source: heatingTable,
      status: 'read',
      expected: 744.7,
      tolerance: 0.05,
      compute: () => 2.819 / toSi('volume', 1, 'US gal'),
    },
    {
      what: 'density of conventional gasoline in lb/US gal',
      source: heatingTable,
      status: 'derived',
      expected: 6.215,
      tolerance: 0.0005,
      compute: () => fromSi('density', 744.7, 'lb/US gal'),
    },
    {
      what: '1 lb/hp·h, the other way: g/kWh to lb/hp·h',
      source: encyclopedia,
      status: 'read',
      expected: 0.001644,
      tolerance: 5e-7,
      compute: () => fromSi('bsfc', bsfc(1), 'lb/hp·h'),
    },
    {
      what: 'efficiency of a gasoline engine of 322 g/kWh, fuel of 0.0122225 kW·h/g',
      source: encyclopedia,
      status: 'read',
      expected: 0.254,
      tolerance: 0.0005,
      note: 'the page says 25 %',
      compute: () => thermalEfficiency(bsfc(322), 0.0122225 * kilowattHourPerGram).efficiency,
    },
    {
      what: 'efficiency of a diesel engine of 206 g/kWh, fuel of 0.0119531 kW·h/g',
      source: `${encyclopedia}: 1/(BSFC × 0.0119531)`,
      status: 'derived',
      expected: 1 / (206 * 0.0119531),
      tolerance: 1e-5,
      compute: () => thermalEfficiency(bsfc(206), 0.0119531 * kilowattHourPerGram).efficiency,
    },
    {
      what: 'efficiency of 300 hp on 156 lb/h of 18,700 Btu/lb',
      source: article,
      status: 'secondary',
      expected: 0.26,
      tolerance: 0.005,
      compute: () =>
        thermalEfficiency(
          bsfcFromMassFlow(toSi('massFlow', 156, 'lb/h'), toSi('power', 300, 'hp')),
          toSi('energyPerMass', 18_700, 'Btu/lb'),
        ).efficiency,
    },
    {
      what: 'power in 156 lb/h of 18,700 Btu/lb, hp',
      source: article,
      status: 'secondary',
      expected: 1146,
      tolerance: 1,
      compute: () =>
        fromSi('power', toSi('massFlow', 156, 'lb/h') * toSi('energyPerMass', 18_700, 'Btu/lb'), 'hp'),
    },
    {
      what: 'minimum fuel of 165 METO hp, US gal',
      source: `${advisoryCircular}, 10-2p: hp/12, which is an hour at 0.5 lb/hp·h of 6 lb/US gal`,
      status: 'read',
      expected: 13.75,
      tolerance: 1e-9,
      compute: () => fromFunction('FUEL_FLOW', [165, 0.5]),
    },
    {
      what: 'minimum fuel of 165 METO hp, lb',
      source: `${advisoryCircular}, 10-2p: hp/2, which is half an hour at 1 lb/hp·h`,
      status: 'read',
      expected: 82.5,
      tolerance: 1e-9,
      note: 'twice what an engine burns; wrong for Jet A',
      compute: () => fromFunction('MINIMUM_FUEL', [165, 1]),
    },
    {
      what: 'fuel flow at 75 % of 160 hp between 0.5 lb/hp·h at half and 0.45 at full power, US gal/h',
      source: "Willans' line, fuel flow affine in power: 0.35 lb/h for each hp of rating",
      status: 'derived',
      expected: (0.35 * 160) / 6,
      tolerance: 1e-9,
      compute: () =>
        fromFunction('FUEL_FLOW_AT_SETTING', [
          75,
          160,
          [
            [50, 0.5],
            [100, 0.45],
          ],
        ]),
    },
    {
      what: 'fuel flow at 65 % of 160 hp, 0.46, 0.43, 0.5 lb/hp·h at 55, 75, 100 %, US gal/h',
      source: 'Fritsch and Carlson 1980, by hand: slopes −0.15 and 0, BSFC 0.44125 in the middle',
      status: 'derived',
      expected: (0.65 * 160 * 0.44125) / 6,
      tolerance: 1e-9,
      compute: () =>
        fromFunction('FUEL_FLOW_AT_SETTING', [
          65,
          160,
          [
            [55, 0.46],
            [75, 0.43],
            [100, 0.5],
          ],
        ]),
    },
    {
      what: '9 qt of oil at 7.5 lb/US gal, lb',
      source: `${advisoryCircular}, 10-15 and figure 10-10`,
      status: 'read',
      expected: 17,
      tolerance: 0.5,
      compute: () =>
        fromSi('mass', toSi('volume', 9 / 4, 'US gal') * toSi('density', 7.5, 'lb/US gal'), 'lb'),
    },
    {
      what: 'avgas at 6 lb/US gal, kg/m³',
      source: 'NIST SP 811, pound per gallon 119.8264',
      status: 'derived',
      expected: 719,
      tolerance: 0.05,
      compute: () => toSi('density', 6, 'lb/US gal'),
    },
  ],
  misprints: [
    {
      what: 'power in 156 lb/h of 18,700 Btu/lb, hp',
      source: `${article}, further down`,
      status: 'secondary',
      printed: 1322,
      tolerance: 1,
      note: 'it has 1,146 above',
      compute: () =>
        fromSi('power', toSi('massFlow', 156, 'lb/h') * toSi('energyPerMass', 18_700, 'Btu/lb'), 'hp'),
    },
  ],
};
