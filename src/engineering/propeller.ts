/**
 * Propeller as an actuator disc, its tip and its clearance.
 *
 * Momentum theory (Rankine, Froude): thrust T at true airspeed V draws the air in w faster, T = 2 ρ A (V + w) w, and
 * the power given to the air is T (V + w). Profile and installation losses are one efficiency k: k P = T (V + w).
 */
import { toSi } from '../units.ts';
import { requireAbove, requireAtLeast, requireBetween } from './check.ts';

/** Least height of the tips above the ground, level, tyres and struts static [m]. @source 14 CFR 23.925(a) before amendment 64 */
export const requiredGroundClearance = {
  nosewheel: toSi('length', 7, 'in'),
  tailwheel: toSi('length', 9, 'in'),
} as const;

/**
 * Area swept by the propeller: A = π D² / 4.
 * @param diameter D, above 0 [m]
 * @returns A [m²]
 * @throws RangeError when diameter is not above 0
 * @source geometry
 */
export function discArea(diameter: number): number {
  requireAbove('diameter', diameter, 0, 'm');
  return (Math.PI * diameter ** 2) / 4;
}

/**
 * Thrust from shaft power: the root of k P = T (V + w) with T = 2 ρ A (V + w) w.
 *
 * With u = V + w this is u³ − V u² = k P / 2ρA, whose one positive root Cardano's formula gives without iteration and
 * without cancellation, smooth to V = 0.
 * @param power P, at the propeller shaft, at least 0 [W]
 * @param trueAirspeed V, at least 0 [m/s]
 * @param diameter D, above 0 [m]
 * @param density ρ, above 0 [kg/m³]
 * @param efficiency k, profile and installation, 0 to 1; one k does not serve both standing still and cruise [-]
 * @returns T [N]
 * @throws RangeError when an argument is outside its range
 * @source momentum theory of the actuator disc (Rankine, Froude); the loss factor is common practice
 */
export function propellerThrust(
  power: number,
  trueAirspeed: number,
  diameter: number,
  density: number,
  efficiency: number,
): number {
  requireAtLeast('power', power, 0, 'W');
  requireAtLeast('trueAirspeed', trueAirspeed, 0, 'm/s');
  requireAbove('density', density, 0, 'kg/m³');
  requireBetween('efficiency', efficiency, 0, 1, '');
  const usefulPower = efficiency * power;
  const loading = usefulPower / (2 * density * discArea(diameter));
  if (usefulPower === 0) return 0;
  const third = trueAirspeed / 3;
  const half = third ** 3 + loading / 2;
  const root = Math.cbrt(half + Math.sqrt(loading * (third ** 3 + loading / 4)));
  const speedAtDisc = third + root + third ** 2 / root;
  return usefulPower / speedAtDisc;
}

/**
 * Thrust standing still: T = (k P)^(2/3) (2 ρ A)^(1/3).
 * @param power P, at the propeller shaft, at least 0 [W]
 * @param diameter D, above 0 [m]
 * @param density ρ, above 0 [kg/m³]
 * @param efficiency k, 0 to 1; standing still it is far below its value in cruise [-]
 * @returns T [N]
 * @throws RangeError when an argument is outside its range
 * @source momentum theory of the actuator disc (Rankine, Froude), V = 0
 */
export function staticThrust(power: number, diameter: number, density: number, efficiency: number): number {
  requireAtLeast('power', power, 0, 'W');
  requireAbove('density', density, 0, 'kg/m³');
  requireBetween('efficiency', efficiency, 0, 1, '');
  return Math.cbrt((efficiency * power) ** 2 * 2 * density * discArea(diameter));
}

/**
 * Speed added to the air at the disc: w = −V/2 + √(V²/4 + T/(2ρA)), half of what it has far behind.
 * @param thrust T, at least 0 [N]
 * @param trueAirspeed V, at least 0 [m/s]
 * @param diameter D, above 0 [m]
 * @param density ρ, above 0 [kg/m³]
 * @returns w [m/s]
 * @throws RangeError when an argument is outside its range
 * @source momentum theory of the actuator disc (Rankine, Froude)
 */
export function inducedVelocity(
  thrust: number,
  trueAirspeed: number,
  diameter: number,
  density: number,
): number {
  requireAtLeast('thrust', thrust, 0, 'N');
  requireAtLeast('trueAirspeed', trueAirspeed, 0, 'm/s');
  requireAbove('density', density, 0, 'kg/m³');
  const loading = thrust / (2 * density * discArea(diameter));
  if (thrust === 0) return 0;
  // −a + √(a² + b) written as b / (a + √(a² + b)): the difference loses digits when the disc is lightly loaded.
  return loading / (trueAirspeed / 2 + Math.sqrt(trueAirspeed ** 2 / 4 + loading));
}

/**
 * Efficiency of a propeller without losses: η = V / (V + w).
 * @param thrust T, at least 0 [N]
 * @param trueAirspeed V, at least 0 [m/s]
 * @param diameter D, above 0 [m]
 * @param density ρ, above 0 [kg/m³]
 * @returns η, 0 standing still [-]
 * @throws RangeError when an argument is outside its range
 * @source momentum theory of the actuator disc (Rankine, Froude)
 */
export function idealEfficiency(
  thrust: number,
  trueAirspeed: number,
  diameter: number,
  density: number,
): number {
  const induced = inducedVelocity(thrust, trueAirspeed, diameter, density);
  return trueAirspeed === 0 ? 0 : trueAirspeed / (trueAirspeed + induced);
}

/**
 * Helical tip Mach number of a propeller: M = √(V² + (π n D)²) / a.
 * @param trueAirspeed V, at least 0 [m/s]
 * @param shaftSpeed n, of the propeller, not the engine, at least 0 [rev/s]
 * @param diameter D, above 0 [m]
 * @param soundSpeed a, above 0 [m/s]
 * @returns M [-]
 * @throws RangeError when an argument is outside its range
 * @source velocity triangle; no empirical terms
 */
export function helicalTipMach(
  trueAirspeed: number,
  shaftSpeed: number,
  diameter: number,
  soundSpeed: number,
): number {
  requireAtLeast('trueAirspeed', trueAirspeed, 0, 'm/s');
  requireAtLeast('shaftSpeed', shaftSpeed, 0, 'rev/s');
  requireAbove('diameter', diameter, 0, 'm');
  requireAbove('soundSpeed', soundSpeed, 0, 'm/s');
  return Math.hypot(trueAirspeed, Math.PI * shaftSpeed * diameter) / soundSpeed;
}

/**
 * Height of the tips above the ground: axis height − D/2.
 * @param axisHeight of the propeller axis above the ground, a gearbox raises it [m]
 * @param diameter D, above 0 [m]
 * @returns clearance, below 0 when the propeller would strike the ground [m]
 * @throws RangeError when diameter is not above 0 or axisHeight below 0
 * @source geometry
 */
export function groundClearance(axisHeight: number, diameter: number): number {
  requireAtLeast('axisHeight', axisHeight, 0, 'm');
  requireAbove('diameter', diameter, 0, 'm');
  return axisHeight - diameter / 2;
}
