import {
  densityAltitude,
  hotDayTemperature,
  seaLevelDensity,
  seaLevelTemperature,
  standardTemperature,
} from '../engineering/air.ts';
import { compressorOutletTemperature, intercooledTemperature } from '../engineering/chargeAir.ts';
import {
  coolingAirflow,
  coolingExitArea,
  coolingHeat,
  coolingInletArea,
  coolingPressureAvailable,
  heatedDensity,
} from '../engineering/coolingAir.ts';
import { hotDayCorrected } from '../engineering/hotDay.ts';
import { crossFlowEffectiveness } from '../engineering/radiator.ts';
import { defaulted, given, optional } from './argument.ts';
import { type Formula, formula } from './formula.ts';
import {
  btuPerMinute,
  celsius,
  fahrenheitDifference,
  inchesOfWater,
  knots,
  outsideAir,
  poundsPerMinute,
  squareInches,
} from './measures.ts';
import { pressureAltitude, shaftPower, trueAirspeed } from './sharedArguments.ts';

const densityRatio = given('density_ratio', {
  help: 'air density over sea-level standard',
  atLeast: 0.08, // of the top of the isothermal layer
  atMost: 1.5,
});
const airflow = given('airflow_lb_per_min', {
  help: 'cooling air, lb/min',
  above: 0,
  measure: poundsPerMinute,
});

/** Temperature of standard air of a given density ratio: no OAT is among the arguments. */
function temperatureAtDensity(ratio: number): number {
  return standardTemperature(densityAltitude(0, seaLevelTemperature / ratio));
}

export const coolingFormulas: readonly Formula[] = [
  formula({
    name: 'COOLING_HEAT',
    help: 'Heat into a cooling stream, Btu/min.',
    source:
      'definition; customary fractions of shaft power: coolant 0.55, fins 0.45, oil 0.10, charge air 0.08',
    arguments: [
      shaftPower,
      given('heat_fraction_of_power', { help: 'heat as a fraction of shaft power', above: 0, atMost: 2 }),
    ],
    results: [{ label: 'heat', measure: btuPerMinute }],
    compute: coolingHeat,
  }),
  formula({
    name: 'COOLING_AIRFLOW',
    help: 'Cooling air that takes up a heat with a temperature rise, lb/min.',
    source: 'first law, steady flow',
    arguments: [
      given('heat_btu_per_min', { help: 'heat, Btu/min', atLeast: 0, measure: btuPerMinute }),
      given('air_temperature_rise_f', {
        help: 'how much warmer the air leaves, °F',
        above: 0,
        measure: fahrenheitDifference,
      }),
    ],
    results: [{ label: 'airflow', measure: poundsPerMinute }],
    compute: coolingAirflow,
  }),
  formula({
    name: 'COOLING_PRESSURE_AVAILABLE',
    help: 'Pressure that drives the cooling air, inH2O.',
    source: 'Bernoulli; recovery and exit coefficient are common practice',
    arguments: [
      trueAirspeed,
      densityRatio,
      defaulted('recovery', 0.8, {
        help: 'share of the pressure ahead that reaches the core',
        atLeast: 0,
        atMost: 1,
      }),
      defaulted('exit_pressure_coefficient', 0, {
        help: 'pressure coefficient at the exit; negative helps',
        atLeast: -2,
        atMost: 1,
      }),
      defaulted('slipstream_in_h2o', 0, {
        help: 'pressure the propeller adds, inH2O',
        atLeast: 0,
        measure: inchesOfWater,
      }),
    ],
    results: [{ label: 'pressure', measure: inchesOfWater }],
    compute: (speed, ratio, recovery, exit, slipstream) =>
      coolingPressureAvailable(speed, ratio * seaLevelDensity, slipstream, recovery, exit),
  }),
  formula({
    name: 'COOLING_INLET_AREA',
    help: 'Inlet area for a cooling airflow, in².',
    source: 'continuity',
    arguments: [
      airflow,
      given('true_airspeed_kt', { help: 'true airspeed, kt', above: 0, measure: knots }),
      densityRatio,
      defaulted('velocity_ratio', 0.35, { help: 'speed in the inlet over airspeed', above: 0, atMost: 1.5 }),
    ],
    results: [{ label: 'inlet area', measure: squareInches }],
    compute: (air, speed, ratio, velocityRatio) =>
      coolingInletArea(air, speed, ratio * seaLevelDensity, velocityRatio),
  }),
  formula({
    name: 'COOLING_EXIT_AREA',
    help: 'Exit area for a cooling airflow, in². Heated air is taken as standard air of this density ratio, warmed.',
    source: 'Bernoulli and continuity',
    arguments: [
      airflow,
      given('exit_pressure_difference_in_h2o', {
        help: 'pressure across the exit, inH2O',
        above: 0,
        measure: inchesOfWater,
      }),
      densityRatio,
      defaulted('air_temperature_rise_f', 0, {
        help: 'how much warmer the air leaves, °F',
        atLeast: 0,
        measure: fahrenheitDifference,
      }),
      defaulted('discharge_coefficient', 0.9, { help: 'of the exit', above: 0, atMost: 1 }),
    ],
    results: [{ label: 'exit area', measure: squareInches }],
    compute: (air, pressure, ratio, rise, discharge) => {
      const density = heatedDensity(ratio * seaLevelDensity, temperatureAtDensity(ratio), rise);
      return coolingExitArea(air, pressure, density, discharge);
    },
  }),
  formula({
    name: 'HOT_DAY_CORRECTED',
    help: 'A temperature measured in flight, told for the hot day, °C.',
    source: '14 CFR 23.1043 before amendment 64',
    arguments: [
      given('measured_c', { help: 'temperature measured, °C', atLeast: -90, atMost: 500, measure: celsius }),
      given('oat_c', { help: 'outside air temperature at the time, °C', ...outsideAir }),
      pressureAltitude,
      defaulted('factor', 1, { help: '1; 0.7 for cylinder barrels', above: 0, atMost: 1.5 }),
    ],
    results: [{ label: 'temperature', measure: celsius }],
    compute: (measured, oat, height, factor) =>
      hotDayCorrected(measured, oat, hotDayTemperature(height), factor),
  }),
  formula({
    name: 'RADIATOR_EFFECTIVENESS',
    help: 'Effectiveness of a cross-flow radiator, both fluids unmixed.',
    source: 'exact series (Mason); Kays and London, Compact Heat Exchangers',
    arguments: [
      given('ntu', { help: 'number of transfer units', atLeast: 0, atMost: 500 }),
      given('capacity_ratio', { help: 'lesser over greater heat capacity flow', atLeast: 0, atMost: 1 }),
    ],
    results: [{ label: 'effectiveness' }],
    compute: crossFlowEffectiveness,
  }),
  formula({
    name: 'CHARGE_TEMPERATURE',
    help: 'Temperature of the charge air behind compressor and intercooler, °C.',
    source: 'isentropic efficiency, perfect gas; definition of the intercooler effectiveness',
    arguments: [
      given('inlet_c', {
        help: 'air into the compressor, °C',
        ...outsideAir,
        atMost: 150,
        hintBeyond: 'is it in °F?',
      }),
      given('pressure_ratio', { help: 'pressure behind over pressure before', atLeast: 1, atMost: 10 }),
      given('compressor_efficiency', { help: 'isentropic efficiency', above: 0, atMost: 1 }),
      defaulted('intercooler_effectiveness', 0, { help: '0 for none', atLeast: 0, atMost: 1 }),
      optional('ambient_c', 'inlet_c', { help: 'air that cools the intercooler, °C', ...outsideAir }),
    ],
    results: [{ label: 'temperature', measure: celsius }],
    compute: (inlet, pressureRatio, efficiency, effectiveness, ambient = inlet) =>
      intercooledTemperature(
        compressorOutletTemperature(inlet, pressureRatio, efficiency),
        ambient,
        effectiveness,
      ),
  }),
];
