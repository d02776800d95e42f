import { densityAltitude, densityRatio, hotDayTemperature, standardTemperature } from '../engineering/air.ts';
import { given, inUnit, optional } from './argument.ts';
import { type Formula, formula } from './formula.ts';
import { celsius, feet, outsideAir } from './measures.ts';
import { mustBe } from './messages.ts';
import { pressureAltitude, temperatureOrStandard } from './sharedArguments.ts';

const atmosphere = 'US Standard Atmosphere 1976 / ICAO Doc 7488';

export const airFormulas: readonly Formula[] = [
  formula({
    name: 'AIR_DENSITY_RATIO',
    help: 'Air density over standard sea-level density.',
    source: atmosphere,
    arguments: [pressureAltitude, temperatureOrStandard],
    results: [{ label: 'density ratio' }],
    compute: densityRatio,
  }),
  formula({
    name: 'DENSITY_ALTITUDE',
    help: 'Altitude at which standard air is as dense as this air, ft.',
    source: `${atmosphere}; moist air by virtual temperature`,
    arguments: [
      pressureAltitude,
      given('oat_c', { help: 'outside air temperature, °C', ...outsideAir }),
      optional('dew_point_c', 'dry air', {
        help: 'dew point, °C, not above the temperature',
        measure: celsius,
        atLeast: -70,
        atMost: 35, // none higher has been measured
        hintBeyond: 'is it in °F?',
      }),
    ],
    results: [{ label: 'density altitude', measure: feet }],
    compute: (height, temperature, dewPoint) => {
      if (dewPoint !== undefined && dewPoint > temperature)
        throw mustBe('dew_point_c', 'at most oat_c', inUnit(dewPoint, celsius));
      return densityAltitude(height, temperature, dewPoint);
    },
  }),
  formula({
    name: 'ISA_TEMPERATURE',
    help: 'Temperature of standard air, °C.',
    source: atmosphere,
    arguments: [pressureAltitude],
    results: [{ label: 'temperature', measure: celsius }],
    compute: standardTemperature,
  }),
  formula({
    name: 'HOT_DAY_TEMPERATURE',
    help: 'Temperature of the hot day for cooling tests, °C: 100 °F at sea level less 3.6 °F per 1,000 ft.',
    source: '14 CFR 23.1043 before amendment 64',
    arguments: [pressureAltitude],
    results: [{ label: 'temperature', measure: celsius }],
    compute: hotDayTemperature,
  }),
];
