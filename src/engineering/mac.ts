/** The CG as a fraction of the mean aerodynamic chord (MAC). */
import { requireAbove, requireFinite } from './check.ts';

/**
 * CG in fractions of MAC: (x − x_LE)/c.
 * @param cg x, from the datum [m]
 * @param leadingEdge x_LE, of the MAC, from the datum [m]
 * @param length c, above 0 [m]
 * @returns [-]; 0.25 is 25 % MAC
 * @throws RangeError when length is not above 0
 * @source definition; FAA-H-8083-1B
 */
export function macFraction(cg: number, leadingEdge: number, length: number): number {
  requireFinite('cg', cg);
  requireFinite('leadingEdge', leadingEdge);
  requireAbove('length', length, 0, '');
  return (cg - leadingEdge) / length;
}

/**
 * CG from its fraction of MAC: x = x_LE + fraction × c.
 * @param fraction [-]
 * @param leadingEdge x_LE, of the MAC, from the datum [m]
 * @param length c, above 0 [m]
 * @returns x, from the datum [m]
 * @throws RangeError when length is not above 0
 * @source definition; FAA-H-8083-1B
 */
export function cgAtMacFraction(fraction: number, leadingEdge: number, length: number): number {
  requireFinite('fraction', fraction);
  requireFinite('leadingEdge', leadingEdge);
  requireAbove('length', length, 0, '');
  return leadingEdge + fraction * length;
}
