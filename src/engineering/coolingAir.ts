/**
 * Cooling air of one stream: the heat it carries away, how much of it that takes, the pressure that drives it, and the
 * openings it needs. Where these meet is the matter of `coolingFlow.ts`.
 */
import { airSpecificHeat } from './air.ts';
import { requireAbove, requireAtLeast, requireBetween } from './check.ts';
import { dynamicPressure } from './dragPolar.ts';

/** Of the total pressure ahead, what arrives at the face of the core [-]. Common practice, no source. */
export const defaultInletRecovery = 0.8;
/** Of the propeller's mean pressure rise T/A, what reaches the inlets, near the hub [-]. Common practice; 0 is the safe side. */
export const defaultSlipstreamShare = 0.35;
/** Pressure coefficient where the air leaves, a plain opening under the cowling [-]. Common practice, no source. */
export const defaultExitPressureCoefficient = -0.1;
/** Of a smooth exit [-]. Common practice, no source. */
export const defaultDischargeCoefficient = 0.9;
/** Speed in the inlet over airspeed, small enough to slow the air outside where it costs nothing [-]. Common practice. */
export const defaultInletVelocityRatio = 0.35;

/** Heat of shaft power when the maker gives none: common practice, no source; to be shown as assumed. */
export const defaultHeatFraction = { coolant: 0.55, fins: 0.45, oil: 0.1, charge: 0.08 } as const;

/**
 * Heat to carry away: Q = f P.
 * @param power P, shaft power or the power in the fuel, whichever the fraction is of; at least 0 [W]
 * @param heatFraction f, above 0 to 2: as much heat as work goes into the coolant of a poor engine, never twice [-]
 * @returns Q [W]
 * @throws RangeError when an argument is outside its range
 * @source definition
 */
export function coolingHeat(power: number, heatFraction: number): number {
  requireAtLeast('power', power, 0, 'W');
  requireAbove('heatFraction', heatFraction, 0, '');
  requireBetween('heatFraction', heatFraction, 0, 2, '');
  return heatFraction * power;
}

/**
 * Cooling air for a heat: m = Q / (c_p ΔT).
 * @param heat Q, at least 0 [W]
 * @param airTemperatureRise ΔT, above 0 [K]
 * @returns m [kg/s]
 * @throws RangeError when an argument is outside its range
 * @source first law, steady flow
 */
export function coolingAirflow(heat: number, airTemperatureRise: number): number {
  requireAtLeast('heat', heat, 0, 'W');
  requireAbove('airTemperatureRise', airTemperatureRise, 0, 'K');
  return heat / (airSpecificHeat * airTemperatureRise);
}

/**
 * Slipstream's share of the pressure ahead of the inlets: κ T / A.
 * @param slipstreamShare κ, 0 to 1; 0 leaves the propeller out [-]
 * @param thrust T, at least 0 [N]
 * @param discArea A, above 0 [m²]
 * @returns [Pa]
 * @throws RangeError when an argument is outside its range
 * @source the disc raises the total pressure by T/A (Rankine, Froude); the share is common practice
 */
export function slipstreamPressure(slipstreamShare: number, thrust: number, discArea: number): number {
  requireBetween('slipstreamShare', slipstreamShare, 0, 1, '');
  requireAtLeast('thrust', thrust, 0, 'N');
  requireAbove('discArea', discArea, 0, 'm²');
  return (slipstreamShare * thrust) / discArea;
}

/**
 * Pressure that drives the cooling air: Δp = η (q + Δp_s) − C_p,e q, q = ρ V² / 2.
 * @param trueAirspeed V, at least 0 [m/s]
 * @param density ρ, above 0 [kg/m³]
 * @param slipstream Δp_s, from `slipstreamPressure` or as measured, at least 0 [Pa]
 * @param inletRecovery η, 0 to 1 [-]
 * @param exitPressureCoefficient C_p,e, −2 to 1 [-]
 * @returns Δp, below 0 when the exit is better fed than the inlet [Pa]
 * @throws RangeError when an argument is outside its range
 * @source Bernoulli
 */
export function coolingPressureAvailable(
  trueAirspeed: number,
  density: number,
  slipstream = 0,
  inletRecovery = defaultInletRecovery,
  exitPressureCoefficient = defaultExitPressureCoefficient,
): number {
  requireAtLeast('trueAirspeed', trueAirspeed, 0, 'm/s');
  requireAbove('density', density, 0, 'kg/m³');
  requireAtLeast('slipstream', slipstream, 0, 'Pa');
  requireBetween('inletRecovery', inletRecovery, 0, 1, '');
  requireBetween('exitPressureCoefficient', exitPressureCoefficient, -2, 1, '');
  const pressure = dynamicPressure(trueAirspeed, density);
  return inletRecovery * (pressure + slipstream) - exitPressureCoefficient * pressure;
}

/**
 * Density of the air after it has taken up heat at about the same pressure: ρ_e = ρ T / (T + ΔT).
 * @param density ρ, above 0 [kg/m³]
 * @param airTemperature T, above 0 [K]
 * @param airTemperatureRise ΔT, at least 0 [K]
 * @returns ρ_e [kg/m³]
 * @throws RangeError when an argument is outside its range
 * @source perfect gas; the pressure differs by a few tenths of a percent, which is left out
 */
export function heatedDensity(density: number, airTemperature: number, airTemperatureRise: number): number {
  requireAbove('density', density, 0, 'kg/m³');
  requireAbove('airTemperature', airTemperature, 0, 'K');
  requireAtLeast('airTemperatureRise', airTemperatureRise, 0, 'K');
  return (density * airTemperature) / (airTemperature + airTemperatureRise);
}

/**
 * Inlet area: A = m / (ρ V r).
 * @param airflow m, at least 0 [kg/s]
 * @param trueAirspeed V, above 0: standing still no inlet can be sized this way [m/s]
 * @param density ρ, above 0 [kg/m³]
 * @param velocityRatio r, speed in the inlet over airspeed, above 0 [-]
 * @returns A [m²]
 * @throws RangeError when an argument is outside its range
 * @source continuity
 */
export function coolingInletArea(
  airflow: number,
  trueAirspeed: number,
  density: number,
  velocityRatio = defaultInletVelocityRatio,
): number {
  requireAtLeast('airflow', airflow, 0, 'kg/s');
  requireAbove('trueAirspeed', trueAirspeed, 0, 'm/s');
  requireAbove('density', density, 0, 'kg/m³');
  requireAbove('velocityRatio', velocityRatio, 0, '');
  return airflow / (density * trueAirspeed * velocityRatio);
}

/**
 * Exit area: A = m / (C_d √(2 ρ_e Δp)).
 * @param airflow m, at least 0 [kg/s]
 * @param exitPressureDifference Δp across the exit, above 0 [Pa]
 * @param exitDensity ρ_e, of the heated air: see `heatedDensity`; above 0 [kg/m³]
 * @param dischargeCoefficient C_d, above 0 to 1 [-]
 * @returns A [m²]
 * @throws RangeError when an argument is outside its range
 * @source Bernoulli and continuity
 */
export function coolingExitArea(
  airflow: number,
  exitPressureDifference: number,
  exitDensity: number,
  dischargeCoefficient = defaultDischargeCoefficient,
): number {
  requireAtLeast('airflow', airflow, 0, 'kg/s');
  requireAbove('exitPressureDifference', exitPressureDifference, 0, 'Pa');
  requireAbove('exitDensity', exitDensity, 0, 'kg/m³');
  requireAbove('dischargeCoefficient', dischargeCoefficient, 0, '');
  requireBetween('dischargeCoefficient', dischargeCoefficient, 0, 1, '');
  return airflow / (dischargeCoefficient * Math.sqrt(2 * exitDensity * exitPressureDifference));
}
