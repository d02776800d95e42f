/** Level flight: the speed a power gives, and the power a speed takes. */
import {
  type Air,
  type AircraftInFlight,
  airAt,
  airspeedRange,
  climbGradient,
  type PowerSetting,
  shaftPower,
} from './aircraftInFlight.ts';
import { drag, minimumDragSpeed } from './dragPolar.ts';
import { inducedVelocity } from './propeller.ts';
import { findRoot, maximise } from './solve.ts';

export type LevelFlight =
  | {
      readonly possible: true;
      /** V [m/s] */
      readonly trueAirspeed: number;
      /** P used [W] */
      readonly shaftPower: number;
      /** The setting asks for more power than the air gives: this is what full throttle does. */
      readonly fullThrottle: boolean;
    }
  | { readonly possible: false };

const speedTolerance = 1e-3; // m/s
const searchTolerance = 0.05; // m/s, for a maximum that only has to be on the right side

/**
 * Speed in level flight: the faster of the two speeds at which T(V) = D(V).
 * @param aircraft the airframe with its package
 * @param setting rating, or fraction of maximum continuous power
 * @param air in which it flies
 * @param mass m, above 0 [kg]
 * @returns the speed and the power, or that this power does not keep it in the air
 * @throws RangeError when mass is not above 0 or the setting is outside its range
 * @source equilibrium; bracketed between a speed with thrust to spare and one no power reaches
 */
export function levelFlight(
  aircraft: AircraftInFlight,
  setting: PowerSetting,
  air: Air,
  mass: number,
): LevelFlight {
  const gradient = climbGradient(aircraft, setting, air, mass);
  const { stall, highest } = airspeedRange(aircraft, setting, air, mass);
  const slow = slowBracket(aircraft, air, mass, gradient, stall, highest);
  if (slow === undefined) return { possible: false };
  const trueAirspeed = findRoot(gradient, slow, highest, speedTolerance);
  const power = shaftPower(aircraft, setting, air)(trueAirspeed);
  return {
    possible: true,
    trueAirspeed,
    shaftPower: power,
    fullThrottle: typeof setting !== 'number' || power < setting * aircraft.maximumContinuousPower,
  };
}

/** A speed with thrust to spare: that of least drag will nearly always do; if not, wherever excess power is greatest. */
function slowBracket(
  aircraft: AircraftInFlight,
  air: Air,
  mass: number,
  gradient: (trueAirspeed: number) => number,
  stall: number,
  highest: number,
): number | undefined {
  const leastDrag = minimumDragSpeed(aircraft.dragPolar, aircraft.wingArea, mass, air.density);
  if (leastDrag > stall && gradient(leastDrag) > 0) return leastDrag;
  const best = maximise((speed) => speed * gradient(speed), stall, highest, searchTolerance);
  return best.value < 0 ? undefined : best.x;
}

/**
 * Shaft power for level flight at a speed: T = D, P = T (V + w) / k.
 * @param aircraft the airframe with its package
 * @param air in which it flies
 * @param mass m, at least 0 [kg]
 * @param trueAirspeed V, above 0 [m/s]
 * @returns P, whether the engine has it or not [W]
 * @throws RangeError when an argument is outside its range
 * @source momentum theory of the actuator disc; parabolic polar
 */
export function powerRequired(
  aircraft: AircraftInFlight,
  air: Air,
  mass: number,
  trueAirspeed: number,
): number {
  const thrust = drag(aircraft.dragPolar, aircraft.wingArea, mass, trueAirspeed, air.density);
  const speedAtDisc =
    trueAirspeed + inducedVelocity(thrust, trueAirspeed, aircraft.propellerDiameter, air.density);
  return (thrust * speedAtDisc) / aircraft.propellerEfficiency(trueAirspeed);
}

/**
 * Full-throttle level speed at sea level were the engine to reach its rated speed there: where a fixed pitch is taken
 * to let the engine turn at rated speed.
 * @param aircraft with its package
 * @param mass m, above 0 [kg]
 * @returns V, true [m/s]
 * @throws RangeError when mass is not above 0 or the power does not keep it in the air
 * @source common practice, no source
 */
export function fullThrottleLevelSpeed(aircraft: AircraftInFlight, mass: number): number {
  const level = levelFlight({ ...aircraft, shaftSpeedFraction: () => 1 }, 'continuous', airAt(0), mass);
  if (!level.possible)
    throw new RangeError(
      `maximumContinuousPower must be enough for level flight at sea level, got ${aircraft.maximumContinuousPower} W`,
    );
  return level.trueAirspeed;
}
