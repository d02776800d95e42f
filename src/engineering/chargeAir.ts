/**
 * Charge air of a turbocharged or supercharged engine: what compressing it does to its temperature, what the intercooler
 * takes back, and the heat that this adds to the cooling air.
 */
import { airSpecificHeat, heatCapacityRatio } from './air.ts';
import { requireAbove, requireAtLeast, requireBetween } from './check.ts';

/**
 * Temperature behind the compressor: T₂ = T₁ [1 + (r^((γ − 1)/γ) − 1)/η], γ = 1.4.
 * @param inletTemperature T₁, above 0 [K]
 * @param pressureRatio r, at least 1 [-]
 * @param efficiency η, isentropic, above 0 to 1; typically 0.6 to 0.75 [-]
 * @returns T₂ [K]
 * @throws RangeError when an argument is outside its range
 * @source isentropic efficiency, perfect gas
 */
export function compressorOutletTemperature(
  inletTemperature: number,
  pressureRatio: number,
  efficiency: number,
): number {
  requireAbove('inletTemperature', inletTemperature, 0, 'K');
  requireAtLeast('pressureRatio', pressureRatio, 1, '');
  requireAbove('efficiency', efficiency, 0, '');
  requireBetween('efficiency', efficiency, 0, 1, '');
  const isentropicRise = pressureRatio ** ((heatCapacityRatio - 1) / heatCapacityRatio) - 1;
  return inletTemperature * (1 + isentropicRise / efficiency);
}

/**
 * Temperature behind the intercooler: T₃ = T₂ − ε (T₂ − T_c).
 * @param chargeTemperature T₂, above 0 [K]
 * @param coolingTemperature T_c, of the air or coolant that cools it, above 0 [K]
 * @param effectiveness ε, 0 to 1, referred to the charge air [-]
 * @returns T₃ [K]
 * @throws RangeError when an argument is outside its range
 * @source definition of the effectiveness when the charge air is the lesser flow
 */
export function intercooledTemperature(
  chargeTemperature: number,
  coolingTemperature: number,
  effectiveness: number,
): number {
  requireAbove('chargeTemperature', chargeTemperature, 0, 'K');
  requireAbove('coolingTemperature', coolingTemperature, 0, 'K');
  requireBetween('effectiveness', effectiveness, 0, 1, '');
  return chargeTemperature - effectiveness * (chargeTemperature - coolingTemperature);
}

/**
 * Heat the intercooler hands to the cooling air: Q = m c_p (T₂ − T₃).
 * @param chargeAirflow m, at least 0 [kg/s]
 * @param chargeTemperature T₂, before the intercooler, above 0 [K]
 * @param intercooledTemperature T₃, behind it, above 0 [K]
 * @returns Q, below 0 when the intercooler heats the charge [W]
 * @throws RangeError when an argument is outside its range
 * @source first law, steady flow
 */
export function intercoolerHeat(
  chargeAirflow: number,
  chargeTemperature: number,
  intercooledTemperature: number,
): number {
  requireAtLeast('chargeAirflow', chargeAirflow, 0, 'kg/s');
  requireAbove('chargeTemperature', chargeTemperature, 0, 'K');
  requireAbove('intercooledTemperature', intercooledTemperature, 0, 'K');
  return chargeAirflow * airSpecificHeat * (chargeTemperature - intercooledTemperature);
}
