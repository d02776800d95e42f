/**
 * Drag polar of the whole aircraft: C_D = C_D0 + C_L² / (π e A).
 *
 * Where C_D0 and e come from: `knownFlight.ts`. Cooling and equipment are drag areas D/q, taken out of the polar of one
 * package and put into that of another.
 */
import { standardGravity } from '../units.ts';
import { requireAbove, requireAtLeast, requireFinite } from './check.ts';

export interface DragPolar {
  /** C_D0 [-] */
  readonly zeroLiftDragCoefficient: number;
  /** A = b²/S [-] */
  readonly aspectRatio: number;
  /** e, Oswald's [-] */
  readonly spanEfficiency: number;
}

/**
 * e when nothing else is known [-]. Chosen with the propeller's default efficiencies, which see for how; textbooks give
 * 0.6 to 0.8 for light aircraft with fixed gear, trim drag included.
 */
export const defaultSpanEfficiency = 0.64;

/**
 * Dynamic pressure: q = ρ V² / 2.
 * @param trueAirspeed V [m/s]
 * @param density ρ [kg/m³]
 * @returns q [Pa]
 * @source definition
 */
export const dynamicPressure = (trueAirspeed: number, density: number) => (density * trueAirspeed ** 2) / 2;

/**
 * Aspect ratio: A = b² / S.
 * @param span b, above 0 [m]
 * @param wingArea S, above 0 [m²]
 * @returns A [-]
 * @throws RangeError when an argument is not above 0
 * @source definition
 */
export function aspectRatio(span: number, wingArea: number): number {
  requireAbove('span', span, 0, 'm');
  requireAbove('wingArea', wingArea, 0, 'm²');
  return span ** 2 / wingArea;
}

/**
 * Lift coefficient with the lift equal to the weight: C_L = m g / (q S).
 * @param mass m, at least 0 [kg]
 * @param wingArea S, above 0 [m²]
 * @param trueAirspeed V, above 0 [m/s]
 * @param density ρ, above 0 [kg/m³]
 * @returns C_L [-]
 * @throws RangeError when an argument is outside its range
 * @source definition
 */
export function liftCoefficient(
  mass: number,
  wingArea: number,
  trueAirspeed: number,
  density: number,
): number {
  requireAtLeast('mass', mass, 0, 'kg');
  requireAbove('wingArea', wingArea, 0, 'm²');
  requireAbove('trueAirspeed', trueAirspeed, 0, 'm/s');
  requireAbove('density', density, 0, 'kg/m³');
  return (mass * standardGravity) / (dynamicPressure(trueAirspeed, density) * wingArea);
}

/** K = 1 / (π e A) of C_D = C_D0 + K C_L². */
export const inducedDragFactor = (aspectRatio: number, spanEfficiency: number) =>
  1 / (Math.PI * spanEfficiency * aspectRatio);

/**
 * Drag coefficient: C_D = C_D0 + C_L² / (π e A).
 * @param polar C_D0, A and e
 * @param liftCoefficient C_L [-]
 * @returns C_D [-]
 * @source parabolic polar, Prandtl and Oswald
 */
export const dragCoefficient = (polar: DragPolar, liftCoefficient: number) =>
  polar.zeroLiftDragCoefficient +
  inducedDragFactor(polar.aspectRatio, polar.spanEfficiency) * liftCoefficient ** 2;

/**
 * Drag with the lift equal to the weight: D = q S C_D.
 * @param polar C_D0, A and e
 * @param wingArea S, above 0 [m²]
 * @param mass m, at least 0 [kg]
 * @param trueAirspeed V, above 0 [m/s]
 * @param density ρ, above 0 [kg/m³]
 * @returns D [N]
 * @throws RangeError when an argument is outside its range
 * @source parabolic polar; the climb angle's effect on lift is left out, 1 % at 8°
 */
export function drag(
  polar: DragPolar,
  wingArea: number,
  mass: number,
  trueAirspeed: number,
  density: number,
): number {
  const coefficient = dragCoefficient(polar, liftCoefficient(mass, wingArea, trueAirspeed, density));
  return dynamicPressure(trueAirspeed, density) * wingArea * coefficient;
}

/**
 * Speed of least drag: V = √(2 m g / (ρ S C_L)), C_L = √(π e A C_D0).
 * @param polar C_D0, A and e
 * @param wingArea S, above 0 [m²]
 * @param mass m, above 0 [kg]
 * @param density ρ, above 0 [kg/m³]
 * @returns V, true [m/s]
 * @throws RangeError when wingArea, mass or density is not above 0
 * @source parabolic polar, dD/dV = 0
 */
export function minimumDragSpeed(polar: DragPolar, wingArea: number, mass: number, density: number): number {
  requireAbove('wingArea', wingArea, 0, 'm²');
  requireAbove('mass', mass, 0, 'kg');
  requireAbove('density', density, 0, 'kg/m³');
  const bestLiftCoefficient = Math.sqrt(
    polar.zeroLiftDragCoefficient / inducedDragFactor(polar.aspectRatio, polar.spanEfficiency),
  );
  return Math.sqrt((2 * mass * standardGravity) / (density * wingArea * bestLiftCoefficient));
}

/**
 * Polar with a drag area added: ΔC_D0 = (D/q) / S. Below 0 takes one out.
 * @param polar the polar without it
 * @param dragArea D/q, of cooling, equipment or whatever else is put on [m²]
 * @param wingArea S, above 0 [m²]
 * @returns the polar with it
 * @throws RangeError when nothing is left of C_D0
 * @source definition of the drag area
 */
export function withDragArea(polar: DragPolar, dragArea: number, wingArea: number): DragPolar {
  requireFinite('dragArea', dragArea);
  requireAbove('wingArea', wingArea, 0, 'm²');
  const zeroLiftDragCoefficient = polar.zeroLiftDragCoefficient + dragArea / wingArea;
  requireAbove('zero-lift drag coefficient with the drag area', zeroLiftDragCoefficient, 0, '');
  return { ...polar, zeroLiftDragCoefficient };
}
