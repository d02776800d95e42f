/** What is left for people, bags and fuel. A negative result is a shortfall of that much. */
import { requireAbove, requireAtLeast } from './check.ts';

/**
 * Useful load: maximum weight − basic empty weight.
 * @param maximumWeight above 0
 * @param emptyWeight basic empty, above 0
 * @throws RangeError when an argument is not above 0
 * @source definition; AC 43.13-1B 10-2d
 */
export function usefulLoad(maximumWeight: number, emptyWeight: number): number {
  requireAbove('maximumWeight', maximumWeight, 0, '');
  requireAbove('emptyWeight', emptyWeight, 0, '');
  return maximumWeight - emptyWeight;
}

/**
 * Payload with a given weight of fuel: maximum weight − empty weight − fuel, and no more than a zero-fuel limit leaves.
 * With full tanks it is the payload with full fuel. What the seats and bays hold is another limit.
 * @param maximumWeight above 0
 * @param emptyWeight basic empty, above 0
 * @param fuelWeight usable fuel aboard, at least 0
 * @param maximumZeroFuelWeight above 0; the maximum weight where there is no such limit
 * @throws RangeError when an argument is outside its range
 * @source definition; AC 43.13-1B 10-2o
 */
export function payloadWithFuel(
  maximumWeight: number,
  emptyWeight: number,
  fuelWeight: number,
  maximumZeroFuelWeight = maximumWeight,
): number {
  requireAtLeast('fuelWeight', fuelWeight, 0, '');
  return Math.min(
    usefulLoad(maximumWeight, emptyWeight) - fuelWeight,
    usefulLoad(maximumZeroFuelWeight, emptyWeight),
  );
}

/**
 * Fuel that can be carried with people and bags aboard: what the maximum weight leaves, and no more than the tanks hold.
 * @param maximumWeight above 0
 * @param emptyWeight basic empty, above 0
 * @param cabinLoad people and bags, at least 0
 * @param usableFuelWeight tanks full, at least 0
 * @returns negative: over the maximum weight by that much with no usable fuel
 * @throws RangeError when an argument is outside its range
 * @source definition
 */
export function fuelWithCabinLoad(
  maximumWeight: number,
  emptyWeight: number,
  cabinLoad: number,
  usableFuelWeight: number,
): number {
  requireAtLeast('cabinLoad', cabinLoad, 0, '');
  requireAtLeast('usableFuelWeight', usableFuelWeight, 0, '');
  return Math.min(usableFuelWeight, usefulLoad(maximumWeight, emptyWeight) - cabinLoad);
}
