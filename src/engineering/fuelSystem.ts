/** What the fuel system must deliver, and the least fuel a loading is checked with. */
import { requireAtLeast } from './check.ts';

export type FuelFeed = 'pump' | 'gravity';

/** @source 14 CFR 23.955(b) gravity and (c) pump, before amendment 64; AC 90-89 uses the same (from memory) */
const demonstrationFactor: Readonly<Record<FuelFeed, number>> = { pump: 1.25, gravity: 1.5 };

/**
 * Fuel flow to demonstrate on the ground in the critical attitude: 1.25 times takeoff fuel flow with a pump, 1.5 times
 * by gravity.
 * @param takeoffFuelFlow at least 0 [any flow]
 * @param feed what moves the fuel
 * @returns fuel flow to demonstrate [as takeoffFuelFlow]
 * @throws RangeError when takeoffFuelFlow is below 0
 * @source 14 CFR 23.955(b), (c) before amendment 64
 */
export function fuelFlowToDemonstrate(takeoffFuelFlow: number, feed: FuelFeed): number {
  requireAtLeast('takeoffFuelFlow', takeoffFuelFlow, 0, '');
  return demonstrationFactor[feed] * takeoffFuelFlow;
}

/**
 * Least fuel to check a loading with: half an hour at maximum continuous power, F = P c t.
 * @param maximumContinuousPower P, at least 0 [W]
 * @param bsfc c, fuel mass per shaft energy, at least 0 [kg/J]
 * @param time t, at least 0 [s]; CS-VLA 25(a)(2) wants one hour aboard with two occupants
 * @returns F [kg]
 * @throws RangeError when an argument is below 0
 * @source 14 CFR 23.25(b) before amendment 64
 */
export function minimumFuel(maximumContinuousPower: number, bsfc: number, time = 1800): number {
  requireAtLeast('maximumContinuousPower', maximumContinuousPower, 0, 'W');
  requireAtLeast('bsfc', bsfc, 0, 'kg/J');
  requireAtLeast('time', time, 0, 's');
  return maximumContinuousPower * bsfc * time;
}
