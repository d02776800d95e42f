/**
 * Air: US Standard Atmosphere 1976 (ICAO Doc 7488 agrees to a part in a million) by pressure altitude, and off-standard air.
 *
 * Pressure altitude is geopotential. Off-standard air has the standard pressure of its pressure altitude and its own
 * temperature. Troposphere and the isothermal layer above it: −5 km to 20 km.
 */
import { fromSi, standardGravity, toSi } from '../units.ts';
import { requireAbove, requireBetween } from './check.ts';

// Defining constants of the US Standard Atmosphere 1976, tables 2 to 4
export const seaLevelTemperature = 288.15; // K
export const seaLevelPressure = 101_325; // Pa
export const heatCapacityRatio = 1.4;
const universalGasConstant = 8314.32; // J/(kmol·K); later CODATA values differ, the standard keeps its own
const molarMassAir = 28.9644; // kg/kmol; ICAO Doc 7488 has 28.96442, one part in a million
const lapseRate = 0.0065; // K/m, to the tropopause
const tropopause = 11_000; // m
const sutherlandCoefficient = 1.458e-6; // kg/(m·s·√K)
const sutherlandTemperature = 110.4; // K

export const gasConstantAir = universalGasConstant / molarMassAir; // J/(kg·K)
export const airSpecificHeat = (heatCapacityRatio / (heatCapacityRatio - 1)) * gasConstantAir; // J/(kg·K), cp
export const seaLevelDensity = seaLevelPressure / (gasConstantAir * seaLevelTemperature); // kg/m³

const lowestAltitude = -5_000; // m, where the published tables begin
const highestAltitude = 20_000; // m, top of the isothermal layer
const pressureExponent = standardGravity / (gasConstantAir * lapseRate);
const tropopauseTemperature = seaLevelTemperature - lapseRate * tropopause;
const tropopausePressure =
  seaLevelPressure * (tropopauseTemperature / seaLevelTemperature) ** pressureExponent;
const isothermalScaleHeight = (gasConstantAir * tropopauseTemperature) / standardGravity; // m

const molarMassWater = 18.01528; // kg/kmol
const waterToAir = molarMassWater / molarMassAir;

/**
 * Temperature of standard air: T = T₀ − L h to the tropopause, constant above.
 * @param pressureAltitude h, −5,000 to 20,000 [m]
 * @returns T [K]
 * @throws RangeError when pressureAltitude is outside its range
 * @source US Standard Atmosphere 1976, equation 23
 */
export function standardTemperature(pressureAltitude: number): number {
  requireBetween('pressureAltitude', pressureAltitude, lowestAltitude, highestAltitude, 'm');
  return seaLevelTemperature - lapseRate * Math.min(pressureAltitude, tropopause);
}

/**
 * Pressure of standard air: p = p₀ (T/T₀)^(g/RL) to the tropopause, p = p_t e^(−(h − h_t)/H) above.
 * @param pressureAltitude h, −5,000 to 20,000 [m]
 * @returns p [Pa]
 * @throws RangeError when pressureAltitude is outside its range
 * @source US Standard Atmosphere 1976, equations 33a and 33b
 */
export function standardPressure(pressureAltitude: number): number {
  const temperature = standardTemperature(pressureAltitude);
  return pressureAltitude <= tropopause
    ? seaLevelPressure * (temperature / seaLevelTemperature) ** pressureExponent
    : tropopausePressure * Math.exp((tropopause - pressureAltitude) / isothermalScaleHeight);
}

/**
 * Altitude at which standard air has a pressure; the inverse of `standardPressure`.
 * @param pressure p [Pa]
 * @returns h [m]
 * @throws RangeError when the altitude is outside −5,000 to 20,000 m
 * @source US Standard Atmosphere 1976, equations 33a and 33b solved for h
 */
export function pressureAltitude(pressure: number): number {
  requireBetween(
    'pressure',
    pressure,
    standardPressure(highestAltitude),
    standardPressure(lowestAltitude),
    'Pa',
  );
  return pressure >= tropopausePressure
    ? (seaLevelTemperature / lapseRate) * (1 - (pressure / seaLevelPressure) ** (1 / pressureExponent))
    : tropopause - isothermalScaleHeight * Math.log(pressure / tropopausePressure);
}

/**
 * Density of dry air: ρ = p / (R T).
 * @param pressure p, above 0 [Pa]
 * @param temperature T, above 0 [K]
 * @returns ρ [kg/m³]
 * @throws RangeError when an argument is not above 0
 * @source equation of state, perfect gas
 */
export function airDensity(pressure: number, temperature: number): number {
  requireAbove('pressure', pressure, 0, 'Pa');
  requireAbove('temperature', temperature, 0, 'K');
  return pressure / (gasConstantAir * temperature);
}

/**
 * Density ratio: σ = ρ/ρ₀.
 * @param pressureAltitude −5,000 to 20,000 [m]
 * @param temperature of the air, standard when not given [K]
 * @returns σ [-]
 * @throws RangeError when pressureAltitude is outside its range or temperature is not above 0
 * @source equation of state, perfect gas
 */
export function densityRatio(
  pressureAltitude: number,
  temperature = standardTemperature(pressureAltitude),
): number {
  return airDensity(standardPressure(pressureAltitude), temperature) / seaLevelDensity;
}

/**
 * Density altitude: where standard air has the density of this air.
 * @param pressureAltitude −5,000 to 20,000 [m]
 * @param temperature of the air [K]
 * @param dewPoint between 200 K and the temperature, at most 323.15 K; air is dry when not given [K]
 * @returns geopotential altitude [m]
 * @throws RangeError when an argument is outside its range, or the result outside −5,000 to 20,000 m
 * @source density of the US Standard Atmosphere 1976 solved for h; moist air by virtual temperature
 */
export function densityAltitude(pressureAltitude: number, temperature: number, dewPoint?: number): number {
  const pressure = standardPressure(pressureAltitude);
  const effectiveTemperature =
    dewPoint === undefined ? temperature : virtualTemperature(pressure, temperature, dewPoint);
  const density = airDensity(pressure, effectiveTemperature);
  const tropopauseDensity = airDensity(tropopausePressure, tropopauseTemperature);
  const altitude =
    density >= tropopauseDensity
      ? (seaLevelTemperature / lapseRate) * (1 - (density / seaLevelDensity) ** (1 / (pressureExponent - 1)))
      : tropopause - isothermalScaleHeight * Math.log(density / tropopauseDensity);
  requireBetween('density altitude', altitude, lowestAltitude, highestAltitude, 'm');
  return altitude;
}

/** Temperature at which dry air is as light as this moist air: T_v = T / (1 − (1 − ε) e/p); definition. */
function virtualTemperature(pressure: number, temperature: number, dewPoint: number): number {
  // The vapour formula is fitted from 233 to 323 K; below, moisture is under 0.02 % of the pressure at sea level.
  requireBetween('dewPoint', dewPoint, 200, Math.min(temperature, 323.15), 'K');
  const vapourPressure = saturationVapourPressure(dewPoint);
  if (vapourPressure >= pressure)
    throw new RangeError(`dewPoint must be below the boiling point at ${pressure} Pa, got ${dewPoint}`);
  return temperature / (1 - ((1 - waterToAir) * vapourPressure) / pressure);
}

/**
 * Vapour pressure over water: e = 610.94 Pa · exp(17.625 t / (243.04 + t)), t in °C; within 0.4 % from −40 to 50 °C.
 * @source Alduchov and Eskridge, J. Appl. Meteorology 35 (1996), equation 21; coefficients read in public code
 */
function saturationVapourPressure(temperature: number): number {
  const celsius = fromSi('temperature', temperature, '°C');
  return 610.94 * Math.exp((17.625 * celsius) / (243.04 + celsius));
}

/**
 * Speed of sound: a = √(γ R T).
 * @param temperature T, above 0 [K]
 * @returns a [m/s]
 * @throws RangeError when temperature is not above 0
 * @source US Standard Atmosphere 1976, equation 50
 */
export function soundSpeed(temperature: number): number {
  requireAbove('temperature', temperature, 0, 'K');
  return Math.sqrt(heatCapacityRatio * gasConstantAir * temperature);
}

/**
 * Dynamic viscosity: μ = β T^(3/2) / (T + S).
 * @param temperature T, above 0 [K]
 * @returns μ [Pa·s]
 * @throws RangeError when temperature is not above 0
 * @source Sutherland's formula, US Standard Atmosphere 1976, equation 51
 */
export function viscosity(temperature: number): number {
  requireAbove('temperature', temperature, 0, 'K');
  return (sutherlandCoefficient * temperature ** 1.5) / (temperature + sutherlandTemperature);
}

/**
 * Hot day of the cooling tests: 100 °F at sea level less 3.6 °F per 1,000 ft, not below −69.7 °F.
 * @param pressureAltitude −5,000 to 20,000 [m]
 * @returns T [K]
 * @throws RangeError when pressureAltitude is outside its range
 * @source 14 CFR 23.1043 before amendment 64; silent below sea level, where its line is continued (the hotter side)
 */
export function hotDayTemperature(pressureAltitude: number): number {
  requireBetween('pressureAltitude', pressureAltitude, lowestAltitude, highestAltitude, 'm');
  const fahrenheit = Math.max(100 - (3.6 * fromSi('height', pressureAltitude, 'ft')) / 1000, -69.7);
  return toSi('temperature', fahrenheit, '°F');
}
