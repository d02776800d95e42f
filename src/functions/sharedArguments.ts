import { defaulted, given, optional } from './argument.ts';
import {
  altitude,
  horsepowers,
  knots,
  outsideAir,
  poundPerGallon,
  poundPerHorsepowerHour,
} from './measures.ts';

/** Arguments that functions of several families take. */
export const pressureAltitude = given('pressure_altitude_ft', { help: 'pressure altitude, ft', ...altitude });
export const temperatureOrStandard = optional('oat_c', 'standard temperature', {
  help: 'outside air temperature, °C',
  ...outsideAir,
});
export const trueAirspeed = given('true_airspeed_kt', {
  help: 'true airspeed, kt',
  atLeast: 0,
  measure: knots,
});
export const shaftPower = given('power_hp', { help: 'shaft power, hp', atLeast: 0, measure: horsepowers });
export const bsfc = given('bsfc_lb_per_hp_h', {
  help: 'brake specific fuel consumption, lb/hp·h',
  above: 0,
  measure: poundPerHorsepowerHour,
});
export const fuelDensity = defaulted('fuel_lb_per_gal', 6, {
  help: 'fuel density, lb/US gal',
  above: 0,
  measure: poundPerGallon,
});
export const emptyWeight = given('empty_weight', { help: 'basic empty weight', above: 0 });
export const maximumWeight = given('maximum_weight', { help: 'maximum weight', above: 0 });
