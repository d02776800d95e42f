/**
 * Airspeeds kept apart: calibrated (what a faultless instrument shows), equivalent and true.
 *
 * An airspeed indicator measures impact pressure and is marked for standard sea level, compressibility included.
 * Subsonic. Indicated airspeed differs from calibrated by the aircraft's own position error and is not computed.
 */
import {
  heatCapacityRatio,
  seaLevelPressure,
  seaLevelTemperature,
  soundSpeed,
  standardPressure,
  standardTemperature,
} from './air.ts';
import { requireAbove, requireAtLeast } from './check.ts';

const pressureExponent = heatCapacityRatio / (heatCapacityRatio - 1);

/**
 * True airspeed from calibrated: impact pressure q from V_C at standard sea level, Mach number from q/p, V = M a.
 * @param calibratedAirspeed V_C, at least 0 [m/s]
 * @param pressureAltitude −5,000 to 20,000 [m]
 * @param temperature of the air, standard when not given [K]
 * @returns V [m/s]
 * @throws RangeError when an argument is outside its range or the airspeed is not subsonic
 * @source isentropic flow, definition of calibrated airspeed
 */
export function trueFromCalibrated(
  calibratedAirspeed: number,
  pressureAltitude: number,
  temperature = standardTemperature(pressureAltitude),
): number {
  requireAtLeast('calibratedAirspeed', calibratedAirspeed, 0, 'm/s');
  const seaLevelMach = calibratedAirspeed / soundSpeed(seaLevelTemperature);
  const pressureRatio = seaLevelPressure / standardPressure(pressureAltitude);
  const mach = machNumber(impactPressureRatio(seaLevelMach) * pressureRatio);
  requireSubsonic(mach);
  return mach * soundSpeed(temperature);
}

/**
 * Calibrated airspeed from true; the inverse of `trueFromCalibrated`.
 * @param trueAirspeed V, at least 0 [m/s]
 * @param pressureAltitude −5,000 to 20,000 [m]
 * @param temperature of the air, standard when not given [K]
 * @returns V_C [m/s]
 * @throws RangeError when an argument is outside its range or the airspeed is not subsonic
 * @source isentropic flow, definition of calibrated airspeed
 */
export function calibratedFromTrue(
  trueAirspeed: number,
  pressureAltitude: number,
  temperature = standardTemperature(pressureAltitude),
): number {
  requireAtLeast('trueAirspeed', trueAirspeed, 0, 'm/s');
  const mach = trueAirspeed / soundSpeed(temperature);
  requireSubsonic(mach);
  const pressureRatio = standardPressure(pressureAltitude) / seaLevelPressure;
  return machNumber(impactPressureRatio(mach) * pressureRatio) * soundSpeed(seaLevelTemperature);
}

/**
 * True airspeed from equivalent: V = V_E / √σ.
 * @param equivalentAirspeed V_E [m/s]
 * @param densityRatio σ, above 0 [-]
 * @returns V [m/s]
 * @throws RangeError when an argument is outside its range
 * @source definition of equivalent airspeed
 */
export function trueFromEquivalent(equivalentAirspeed: number, densityRatio: number): number {
  requireAtLeast('equivalentAirspeed', equivalentAirspeed, 0, 'm/s');
  requireAbove('densityRatio', densityRatio, 0, '');
  return equivalentAirspeed / Math.sqrt(densityRatio);
}

/**
 * Equivalent airspeed from true: V_E = V √σ.
 * @param trueAirspeed V [m/s]
 * @param densityRatio σ, above 0 [-]
 * @returns V_E [m/s]
 * @throws RangeError when an argument is outside its range
 * @source definition of equivalent airspeed
 */
export function equivalentFromTrue(trueAirspeed: number, densityRatio: number): number {
  requireAtLeast('trueAirspeed', trueAirspeed, 0, 'm/s');
  requireAbove('densityRatio', densityRatio, 0, '');
  return trueAirspeed * Math.sqrt(densityRatio);
}

/** q/p = (1 + (γ − 1)/2 M²)^(γ/(γ−1)) − 1, without losing digits when slow. */
function impactPressureRatio(mach: number): number {
  return Math.expm1(pressureExponent * Math.log1p(((heatCapacityRatio - 1) / 2) * mach ** 2));
}

/** The inverse of `impactPressureRatio`. */
function machNumber(pressureRatio: number): number {
  return Math.sqrt((2 / (heatCapacityRatio - 1)) * Math.expm1(Math.log1p(pressureRatio) / pressureExponent));
}

function requireSubsonic(mach: number): void {
  if (mach >= 1) throw new RangeError(`airspeed must be below Mach 1, got Mach ${mach}`);
}
