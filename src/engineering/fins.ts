/**
 * Air-cooled cylinders by the NACA correlation: y = (T_h − T_a)/(T_g − T_h) = K P^a / (σΔp)^b.
 *
 * T_h head (or barrel) temperature, T_a cooling air, T_g effective gas temperature, P power, σΔp pressure drop through the
 * fins times density ratio. K is the engine's own: solve it from one point.
 * @source Pinkel, NACA Report 612 (1938), and Pinkel and Ellerbrock, Report 683 (1940), both from memory. NACA TN 1092
 *   (1946, summary read) confirms the method in flight: constants found at 5,000 ft predicted 20,000 ft usually within
 *   10 °F, slightly closer with the density behind the engine (σ here is that ahead of it)
 */
import { toSi } from '../units.ts';
import { requireAbove, requireAtLeast } from './check.ts';

/** What is common to the same part of all engines; temperatures in kelvin. */
export interface FinLaw {
  /** a */
  readonly powerExponent: number;
  /** b */
  readonly pressureExponent: number;
  /** T_g when the outside air is at `gasReferenceTemperature` [K] */
  readonly gasTemperature: number;
  /** [K] */
  readonly gasReferenceTemperature: number;
  /** Rise of T_g for a rise of the outside air, which is the air the engine breathes [-] */
  readonly gasTemperatureSlope: number;
}

const fahrenheit = (degrees: number) => toSi('temperature', degrees, '°F');

/**
 * Exponents from flight tests read in the summary of NACA TN 584 (Schey and Pinkel, 1936): T_h − T_a as the 0.38 power of
 * brake power, and falling as the 0.39 (head) and 0.35 (barrel) power of mass flow. Near a head of 400 °F, a barrel of
 * 300 °F and air of 70 °F a difference follows y by (T_g − T_h)/(T_g − T_a) = 0.69 and 0.57; mass flow follows the
 * pressure drop by 1/1.8. Hence a = 0.38/0.69 and b = 0.39/(1.8 · 0.69), and so for the barrel. Reports of the 1940s are
 * remembered with a 0.6 to 0.65 and b 0.30 to 0.36: away from the calibrated point by 10 % in power that is 2 °F, by 20 %
 * in pressure drop 3 °F.
 *
 * T_g 1,150 and 600 °F at 80 °F: from memory. Its slope is chosen so that a usual head follows the outside air one for one
 * and a barrel by 0.7, as 14 CFR 23.1043(c), (d) has it; with a fixed T_g a head would follow by 0.7 only, which promises
 * too much on a hot day.
 */
export const headFinLaw: FinLaw = {
  powerExponent: 0.55,
  pressureExponent: 0.31,
  gasTemperature: fahrenheit(1150),
  gasReferenceTemperature: fahrenheit(80),
  gasTemperatureSlope: 1,
};

/** See `headFinLaw`. */
export const barrelFinLaw: FinLaw = {
  powerExponent: 0.67,
  pressureExponent: 0.34,
  gasTemperature: fahrenheit(600),
  gasReferenceTemperature: fahrenheit(80),
  gasTemperatureSlope: 0.3,
};

/**
 * Effective gas temperature: T_g = T_g,ref + s (T_a − T_ref).
 * @param law
 * @param outsideAirTemperature T_a, above 0 [K]
 * @returns T_g [K]
 * @throws RangeError when outsideAirTemperature is not above 0
 * @source the form is NACA's (from memory); for the slope see `headFinLaw`. A turbocharger's own heating is not in it
 */
export function effectiveGasTemperature(law: FinLaw, outsideAirTemperature: number): number {
  requireAbove('outsideAirTemperature', outsideAirTemperature, 0, 'K');
  return law.gasTemperature + law.gasTemperatureSlope * (outsideAirTemperature - law.gasReferenceTemperature);
}

/**
 * Head or barrel temperature: T_h = (T_a + y T_g)/(1 + y), y = K P^a / (σΔp)^b.
 * @param law
 * @param coefficient K, from `finCoefficient`, above 0 [W^−a Pa^b]
 * @param power P, shaft power, at least 0 [W]
 * @param densityPressureDrop σΔp through the fins, above 0 [Pa]
 * @param outsideAirTemperature T_a, above 0 [K]
 * @returns T_h, between T_a and T_g [K]
 * @throws RangeError when an argument is outside its range
 * @source see the head of this file
 */
export function finTemperature(
  law: FinLaw,
  coefficient: number,
  power: number,
  densityPressureDrop: number,
  outsideAirTemperature: number,
): number {
  requireAbove('coefficient', coefficient, 0, '');
  const ratio = coefficient * loading(law, power, densityPressureDrop);
  const gas = effectiveGasTemperature(law, outsideAirTemperature);
  return (outsideAirTemperature + ratio * gas) / (1 + ratio);
}

/**
 * K from one measured temperature: K = y (σΔp)^b / P^a, y = (T_h − T_a)/(T_g − T_h).
 * @param law
 * @param temperature T_h, above T_a and below T_g [K]
 * @param power P, shaft power, above 0 [W]
 * @param densityPressureDrop σΔp through the fins, above 0 [Pa]
 * @param outsideAirTemperature T_a, above 0 [K]
 * @returns K [W^−a Pa^b]
 * @throws RangeError when an argument is outside its range
 * @source see the head of this file
 */
export function finCoefficient(
  law: FinLaw,
  temperature: number,
  power: number,
  densityPressureDrop: number,
  outsideAirTemperature: number,
): number {
  const gas = effectiveGasTemperature(law, outsideAirTemperature);
  requireAbove('power', power, 0, 'W');
  requireAbove('temperature', temperature, outsideAirTemperature, 'K');
  if (temperature >= gas)
    throw new RangeError(`temperature must be below that of the gas, ${gas} K, got ${temperature}`);
  const ratio = (temperature - outsideAirTemperature) / (gas - temperature);
  return ratio / loading(law, power, densityPressureDrop);
}

function loading(law: FinLaw, power: number, densityPressureDrop: number): number {
  requireAtLeast('power', power, 0, 'W');
  requireAbove('densityPressureDrop', densityPressureDrop, 0, 'Pa');
  return power ** law.powerExponent / densityPressureDrop ** law.pressureExponent;
}
