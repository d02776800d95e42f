/** Engine speed with a propeller whose pitch does not change in flight. */
import { requireAbove, requireAtLeast } from './check.ts';

/** How fast an engine turns a fixed-pitch or ground-adjusted propeller at full throttle, over its rated speed. */
export interface FixedPitchSpeeds {
  /** Shaft speed over rated speed standing still, at best climb and at full-throttle level speed: never falling [-] */
  readonly staticFraction: number;
  readonly bestClimbFraction: number;
  readonly levelFraction: number;
  /** True airspeeds at which the last two hold, rising [m/s] */
  readonly bestClimbSpeed: number;
  readonly levelSpeed: number;
}

/**
 * Shaft speed over rated speed with a fixed-pitch propeller: straight lines static → best climb → full-throttle level
 * speed and on beyond it, capped at 1. Torque being nearly constant, power scales with it.
 * @param speeds of engine and propeller together
 * @param trueAirspeed at least 0 [m/s]
 * @returns value, and whether the cap holds it: the pilot must throttle back (`limited`)
 * @throws RangeError when a fraction or speed is not above 0 or lies below the one before it, or trueAirspeed is below 0
 * @source common practice, no source
 */
export function fixedPitchSpeedFraction(
  speeds: FixedPitchSpeeds,
  trueAirspeed: number,
): { readonly value: number; readonly limited: boolean } {
  const { staticFraction, bestClimbFraction, levelFraction, bestClimbSpeed, levelSpeed } = speeds;
  requireAbove('staticFraction', staticFraction, 0, '');
  requireAtLeast('bestClimbFraction', bestClimbFraction, staticFraction, '');
  requireAtLeast('levelFraction', levelFraction, bestClimbFraction, '');
  requireAbove('bestClimbSpeed', bestClimbSpeed, 0, 'm/s');
  requireAbove('levelSpeed', levelSpeed, bestClimbSpeed, 'm/s');
  requireAtLeast('trueAirspeed', trueAirspeed, 0, 'm/s');
  const fraction =
    trueAirspeed < bestClimbSpeed
      ? between(staticFraction, bestClimbFraction, trueAirspeed / bestClimbSpeed)
      : between(
          bestClimbFraction,
          levelFraction,
          (trueAirspeed - bestClimbSpeed) / (levelSpeed - bestClimbSpeed),
        );
  return { value: Math.min(1, fraction), limited: fraction > 1 };
}

const between = (start: number, end: number, t: number) => start * (1 - t) + end * t;
