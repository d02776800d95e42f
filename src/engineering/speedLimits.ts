/** Airspeed limits of the airframe against what an engine makes it fly. */
import type { Air } from './aircraftInFlight.ts';
import { calibratedFromTrue } from './airspeed.ts';
import { requireAbove } from './check.ts';

export interface SpeedLimits {
  /** V_NO, calibrated [m/s] */
  readonly normalOperating: number;
  /** V_NE [m/s] */
  readonly neverExceed: number;
  /** True when V_NE is a true airspeed, as flutter limits are, and not a calibrated one. */
  readonly neverExceedIsTrue: boolean;
}

/** Distance inside the limits; below 0 is beyond them. */
export interface SpeedMargins {
  /** V_C flown [m/s] */
  readonly calibratedAirspeed: number;
  /** V_NO − V_C [m/s] */
  readonly normalOperating: number;
  /** V_NE less the flown speed of V_NE's own kind [m/s] */
  readonly neverExceed: number;
}

/**
 * Margins to V_NO and V_NE in level flight. At height the true airspeed of a turbocharged engine grows while the
 * calibrated one stays: a V_NE that is a true airspeed comes nearer with every foot.
 * @param limits V_NO, V_NE, each above 0
 * @param trueAirspeed V, at least 0 [m/s]
 * @param air in which it flies
 * @returns calibrated airspeed and signed margins
 * @throws RangeError when an argument is outside its range
 * @source definitions; calibrated airspeed as isentropic impact pressure
 */
export function speedMargins(limits: SpeedLimits, trueAirspeed: number, air: Air): SpeedMargins {
  requireAbove('normalOperating', limits.normalOperating, 0, 'm/s');
  requireAbove('neverExceed', limits.neverExceed, 0, 'm/s');
  const calibratedAirspeed = calibratedFromTrue(trueAirspeed, air.pressureAltitude, air.temperature);
  return {
    calibratedAirspeed,
    normalOperating: limits.normalOperating - calibratedAirspeed,
    neverExceed: limits.neverExceed - (limits.neverExceedIsTrue ? trueAirspeed : calibratedAirspeed),
  };
}
