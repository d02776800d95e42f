import { naturallyAspirated, powerAvailable, turbocharged } from '../engineering/enginePower.ts';
import { bsfcCurve, fuelMassFlow } from '../engineering/fuelFlow.ts';
import { fuelFlowToDemonstrate, minimumFuel } from '../engineering/fuelSystem.ts';
import { defaulted, given, inUnit, optional, word } from './argument.ts';
import { type Formula, formula } from './formula.ts';
import {
  feet,
  gallonsPerHour,
  horsepowers,
  minutes,
  percent,
  poundPerHorsepowerHour,
  pounds,
  powerPercent,
} from './measures.ts';
import { mustBe } from './messages.ts';
import { requireDistinct, rows } from './rowsArgument.ts';
import { bsfc, fuelDensity, pressureAltitude, shaftPower, temperatureOrStandard } from './sharedArguments.ts';

const maximumContinuousPower = given('maximum_continuous_power_hp', {
  help: 'maximum continuous power, hp',
  atLeast: 0,
  measure: horsepowers,
});

/** A fraction as a person typed it: 0.55 is 55 %, not 55.00000000000001. */
const shownPercent = (fraction: number) => Number(inUnit(fraction, percent).toPrecision(12));
const temperatureExponent = 0.5; // about 1 % per 10 °C; common practice, no source

export const engineFormulas: readonly Formula[] = [
  formula({
    name: 'ENGINE_POWER_AT_ALTITUDE',
    help: 'Full-throttle power of a piston engine at altitude, hp.',
    source:
      'Gagg and Farrar, SAE 1934, on standard air; turbocharged: rated power to the critical altitude; square root of standard over actual temperature',
    arguments: [
      given('rated_power_hp', {
        help: 'power at sea level on a standard day, hp',
        atLeast: 0,
        measure: horsepowers,
      }),
      pressureAltitude,
      temperatureOrStandard,
      optional('critical_altitude_ft', 'none', {
        help: 'up to which a turbocharger holds rated power, ft',
        measure: feet,
        atLeast: 0,
        atMost: 60_000,
      }),
    ],
    results: [{ label: 'power', measure: horsepowers }],
    compute: (rating, height, temperature, criticalAltitude) => {
      const altitudeLaw =
        criticalAltitude === undefined ? naturallyAspirated : turbocharged(criticalAltitude);
      return powerAvailable(
        { altitudeLaw, temperatureExponent, controlled: false },
        rating,
        height,
        temperature,
      ).power;
    },
  }),
  formula({
    name: 'FUEL_FLOW',
    help: 'Fuel flow at a power, US gal/h.',
    source: 'definition of the specific fuel consumption',
    arguments: [shaftPower, bsfc, fuelDensity],
    results: [{ label: 'fuel flow', measure: gallonsPerHour }],
    compute: (power, consumption, density) => fuelMassFlow(power, consumption) / density,
  }),
  formula({
    name: 'FUEL_FLOW_AT_SETTING',
    help: 'Fuel flow at a power setting from measured points, US gal/h. A setting outside the points is refused.',
    source: 'monotone cubic (Fritsch and Carlson 1980); two points: Willans line; one point: held',
    arguments: [
      given('power_percent', { help: '% of maximum continuous power', ...powerPercent }),
      maximumContinuousPower,
      rows(
        'fuel_points',
        [
          { name: '% power', ...powerPercent },
          { name: 'BSFC', above: 0, measure: poundPerHorsepowerHour },
        ],
        {
          help: 'rows of % power, BSFC in lb/hp·h, of one mixture',
          check: (points) =>
            requireDistinct(
              'fuel_points % power',
              points.map(([fraction]) => shownPercent(fraction)),
              points.map(([, , row]) => row),
            ),
        },
      ),
      fuelDensity,
    ],
    results: [{ label: 'fuel flow', measure: gallonsPerHour }],
    compute: (setting, continuousPower, points, density) => {
      const settings = points.map(([fraction]) => fraction);
      const curve = bsfcCurve(
        points.map(([powerFraction, consumption]) => ({ powerFraction, bsfc: consumption })),
      );
      const estimate = curve(setting);
      if (estimate.extrapolated && estimate.basis !== 'singlePoint') {
        const range = `${shownPercent(Math.min(...settings))} to ${shownPercent(Math.max(...settings))} %`;
        throw mustBe('power_percent', `within the fuel_points, ${range}`, shownPercent(setting));
      }
      return fuelMassFlow(setting * continuousPower, estimate.bsfc) / density;
    },
  }),
  formula({
    name: 'FUEL_FLOW_TO_DEMONSTRATE',
    help: 'Fuel flow the system must show on the ground, in the unit of takeoff_fuel_flow.',
    source: '14 CFR 23.955 before amendment 64: 125 % with a pump, 150 % by gravity',
    arguments: [
      given('takeoff_fuel_flow', { help: 'fuel flow at takeoff power', atLeast: 0 }),
      word('feed', ['pump', 'gravity'], { help: '"pump" or "gravity"' }),
    ],
    results: [{ label: 'fuel flow' }],
    compute: fuelFlowToDemonstrate,
  }),
  formula({
    name: 'MINIMUM_FUEL',
    help: 'Fuel for loading checks with little fuel: half an hour at maximum continuous power, lb.',
    source: '14 CFR 23.25 before amendment 64',
    arguments: [
      maximumContinuousPower,
      bsfc,
      defaulted('minutes', 30, { help: 'time, min', atLeast: 0, measure: minutes }),
    ],
    results: [{ label: 'fuel', measure: pounds }],
    compute: minimumFuel,
  }),
];
