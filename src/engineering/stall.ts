/** Stall speed. */
import { standardGravity } from '../units.ts';
import { requireAbove, requireAtLeast } from './check.ts';

/**
 * Stall speed, true: V_S = √(2 n m g / (ρ S C_Lmax)).
 * @param mass m, above 0 [kg]
 * @param wingArea S, above 0 [m²]
 * @param maximumLiftCoefficient C_Lmax, above 0 [-]
 * @param density ρ, above 0 [kg/m³]
 * @param loadFactor n, at least 0, 1 in level flight [-]
 * @returns V_S [m/s]
 * @throws RangeError when an argument is outside its range
 * @source definition of the lift coefficient
 */
export function stallSpeed(
  mass: number,
  wingArea: number,
  maximumLiftCoefficient: number,
  density: number,
  loadFactor = 1,
): number {
  requireAbove('mass', mass, 0, 'kg');
  requireAbove('wingArea', wingArea, 0, 'm²');
  requireAbove('maximumLiftCoefficient', maximumLiftCoefficient, 0, '');
  requireAbove('density', density, 0, 'kg/m³');
  requireAtLeast('loadFactor', loadFactor, 0, '');
  return Math.sqrt((2 * loadFactor * mass * standardGravity) / (density * wingArea * maximumLiftCoefficient));
}
