/**
 * A temperature measured on one day, told for another: the correction of the cooling tests.
 *
 * It knows nothing of the installation, so it is good for the same power, airspeed and altitude only.
 */
import { requireAbove } from './check.ts';

/** How far a temperature follows the outside air [-]. @source 14 CFR 23.1043(c), (d) before amendment 64 (read; barrels in its twin 25.1043(d)) */
export const ambientFactor = { standard: 1, cylinderBarrel: 0.7 } as const;

/**
 * Temperature on the hot day: T' = T + f (T_hot − T_a).
 * @param measured T, above 0 [K]
 * @param outsideAirTemperature T_a when it was measured, above 0 [K]
 * @param hotDayTemperature T_hot at the same pressure altitude, above 0 [K]
 * @param factor f, above 0: 1 for fluids and parts, 0.7 for cylinder barrels [-]
 * @returns T' [K]
 * @throws RangeError when an argument is not above 0
 * @source 14 CFR 23.1043(c), (d) before amendment 64
 */
export function hotDayCorrected(
  measured: number,
  outsideAirTemperature: number,
  hotDayTemperature: number,
  factor: number = ambientFactor.standard,
): number {
  requireAbove('measured', measured, 0, 'K');
  requireAbove('outsideAirTemperature', outsideAirTemperature, 0, 'K');
  requireAbove('hotDayTemperature', hotDayTemperature, 0, 'K');
  requireAbove('factor', factor, 0, '');
  return measured + factor * (hotDayTemperature - outsideAirTemperature);
}

/**
 * Outside air temperature at which a measured temperature would reach its limit: T_a + (T_limit − T)/f.
 * @param measured T, above 0 [K]
 * @param outsideAirTemperature T_a when it was measured, above 0 [K]
 * @param limit T_limit, above 0 [K]
 * @param factor f, above 0: 1 for fluids and parts, 0.7 for cylinder barrels [-]
 * @returns the highest outside air temperature, at that power, airspeed and pressure altitude [K]
 * @throws RangeError when an argument is not above 0
 * @source 14 CFR 23.1043(c), (d) before amendment 64, solved for the ambient temperature
 */
export function ambientAtLimit(
  measured: number,
  outsideAirTemperature: number,
  limit: number,
  factor: number = ambientFactor.standard,
): number {
  requireAbove('measured', measured, 0, 'K');
  requireAbove('outsideAirTemperature', outsideAirTemperature, 0, 'K');
  requireAbove('limit', limit, 0, 'K');
  requireAbove('factor', factor, 0, '');
  return outsideAirTemperature + (limit - measured) / factor;
}
