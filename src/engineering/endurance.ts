/** How long and how far fuel lasts. */
import { standardGravity, toSi } from '../units.ts';
import { requireAbove, requireAtLeast, requireBetween } from './check.ts';

/** Fuel to remain at the first intended landing, at normal cruise [s]. @source 14 CFR 91.151(a), flight under VFR */
export const visualReserveTime = {
  day: toSi('time', 30, 'min'),
  night: toSi('time', 45, 'min'),
} as const;

/**
 * Endurance to the reserve: t = F/ṁ − t_r.
 * @param usableFuel F, at least 0 [kg]
 * @param fuelMassFlow ṁ, above 0 [kg/s]
 * @param reserveTime t_r, at the same fuel flow, at least 0 [s]
 * @returns t, below 0 by what the fuel falls short of the reserve [s]
 * @throws RangeError when an argument is outside its range
 * @source definition
 */
export function endurance(usableFuel: number, fuelMassFlow: number, reserveTime: number): number {
  requireAtLeast('usableFuel', usableFuel, 0, 'kg');
  requireAbove('fuelMassFlow', fuelMassFlow, 0, 'kg/s');
  requireAtLeast('reserveTime', reserveTime, 0, 's');
  return usableFuel / fuelMassFlow - reserveTime;
}

/**
 * Range with a propeller at constant lift–drag ratio and efficiency: R = (η / (c g)) (L/D) ln(m₀/m₁).
 * @param propellerEfficiency η, 0 to 1 [-]
 * @param liftDragRatio L/D, above 0 [-]
 * @param bsfc c, fuel mass per shaft energy, above 0 [kg/J]
 * @param startMass m₀, at least endMass [kg]
 * @param endMass m₁, above 0 [kg]
 * @returns R, in still air [m]
 * @throws RangeError when an argument is outside its range
 * @source Breguet; Anderson, Introduction to Flight, section 6.12
 */
export function breguetRange(
  propellerEfficiency: number,
  liftDragRatio: number,
  bsfc: number,
  startMass: number,
  endMass: number,
): number {
  requireBetween('propellerEfficiency', propellerEfficiency, 0, 1, '');
  requireAbove('liftDragRatio', liftDragRatio, 0, '');
  requireAbove('bsfc', bsfc, 0, 'kg/J');
  requireAbove('endMass', endMass, 0, 'kg');
  requireAtLeast('startMass', startMass, endMass, 'kg');
  return (propellerEfficiency / (bsfc * standardGravity)) * liftDragRatio * Math.log(startMass / endMass);
}

/**
 * Endurance with a propeller at constant lift coefficient and efficiency:
 * t = (η / (c g)) (C_L^1.5/C_D) √(2 ρ S) (1/√W₁ − 1/√W₀), W = m g.
 * @param propellerEfficiency η, 0 to 1 [-]
 * @param enduranceRatio C_L^1.5/C_D, above 0 [-]
 * @param bsfc c, fuel mass per shaft energy, above 0 [kg/J]
 * @param density ρ, above 0 [kg/m³]
 * @param wingArea S, above 0 [m²]
 * @param startMass m₀, at least endMass [kg]
 * @param endMass m₁, above 0 [kg]
 * @returns t [s]
 * @throws RangeError when an argument is outside its range
 * @source Breguet; Anderson, Introduction to Flight, section 6.12
 */
export function breguetEndurance(
  propellerEfficiency: number,
  enduranceRatio: number,
  bsfc: number,
  density: number,
  wingArea: number,
  startMass: number,
  endMass: number,
): number {
  requireBetween('propellerEfficiency', propellerEfficiency, 0, 1, '');
  requireAbove('enduranceRatio', enduranceRatio, 0, '');
  requireAbove('bsfc', bsfc, 0, 'kg/J');
  requireAbove('density', density, 0, 'kg/m³');
  requireAbove('wingArea', wingArea, 0, 'm²');
  requireAbove('endMass', endMass, 0, 'kg');
  requireAtLeast('startMass', startMass, endMass, 'kg');
  const startWeight = startMass * standardGravity;
  const endWeight = endMass * standardGravity;
  return (
    (propellerEfficiency / (bsfc * standardGravity)) *
    enduranceRatio *
    Math.sqrt(2 * density * wingArea) *
    (1 / Math.sqrt(endWeight) - 1 / Math.sqrt(startWeight))
  );
}
