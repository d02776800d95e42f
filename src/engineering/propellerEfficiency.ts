/**
 * The efficiency k that the actuator disc needs: profile losses, and what the airframe behind the propeller takes.
 *
 * One k serves neither standing still, where blades work stalled, nor cruise: k is piecewise linear in true airspeed,
 * static → best climb → known cruise, constant beyond. A fixed pitch also holds the engine below its rated speed when
 * slow; that loss is on the power side (`shaftSpeedFraction` of the aircraft in flight), not in k.
 */
import { standardGravity } from '../units.ts';
import { seaLevelDensity } from './air.ts';
import { requireAbove, requireBetween } from './check.ts';
import { type Curve, piecewiseLinear } from './curve.ts';
import { type DragPolar, drag, minimumDragSpeed, withDragArea } from './dragPolar.ts';
import type { KnownFlight } from './knownFlight.ts';
import { inducedVelocity } from './propeller.ts';

export interface EfficiencyPoints {
  /** k standing still [-] */
  readonly static: number;
  /** k at the best-climb speed [-] */
  readonly climb: number;
  /** k at the known cruise speed and beyond [-] */
  readonly cruise: number;
}

/**
 * k when nothing is known of the propeller [-], fixed pitch and constant speed alike.
 *
 * Chosen together with e = 0.64, the climb anchor 0.95, the fixed pitch's 0.93 in the climb and 1.15 V_S at 50 ft: least
 * squares (soft L1, scale 5 %) over the published climb, best-climb speed, ceiling, ground roll and distance over 50 ft
 * of fourteen certificated aircraft of 110 to 235 hp, each given its wing, propeller, power, stall speeds and one cruise
 * point; two digits kept. Four other aircraft were left out of the choice. Figures and errors of all: tests/validation.
 * A measured static thrust sets the static value only, a measured climb the climb value or e.
 */
export const defaultEfficiency: EfficiencyPoints = { static: 0.42, climb: 0.76, cruise: 0.81 };

/** Engine speed over its rated speed at full throttle with a fixed or ground-adjustable pitch, by airspeed [-]. */
export const defaultFixedPitchSpeedFraction = {
  /** Handbook static limits of such aircraft lie between 0.84 and 0.93 of rated speed (from memory). */
  static: 0.87,
  /** Chosen with `defaultEfficiency`. */
  climb: 0.93,
  levelFlight: 1,
} as const;

/**
 * Where the climb value of k is put when the best-climb speed is not known, over the speed of least drag at sea level
 * and maximum weight [-]. Chosen with `defaultEfficiency`.
 */
const climbAnchorFactor = 0.95;

/**
 * k against true airspeed.
 * @param points k standing still, in the climb and in cruise, each above 0 to 1 [-]
 * @param climbAirspeed where k has its climb value, above 0 [m/s]
 * @param cruiseAirspeed where k has its cruise value, above climbAirspeed [m/s]
 * @returns k of true airspeed [m/s]; its value is held, and flagged, beyond the cruise airspeed
 * @throws RangeError when an argument is outside its range
 * @source common practice: no published source for piecewise k; the disc itself is momentum theory
 */
export function propellerEfficiency(
  points: EfficiencyPoints,
  climbAirspeed: number,
  cruiseAirspeed: number,
): Curve {
  for (const name of ['static', 'climb', 'cruise'] as const) {
    requireAbove(`${name} propeller efficiency`, points[name], 0, '');
    requireBetween(`${name} propeller efficiency`, points[name], 0, 1, '');
  }
  requireAbove('climbAirspeed', climbAirspeed, 0, 'm/s');
  requireAbove('cruiseAirspeed', cruiseAirspeed, climbAirspeed, 'm/s');
  return piecewiseLinear([
    { x: 0, y: points.static },
    { x: climbAirspeed, y: points.climb },
    { x: cruiseAirspeed, y: points.cruise },
  ]);
}

/**
 * Where k has its climb value when the best-climb speed is not known: 0.95 of the speed of least drag at sea level.
 * @param polar of the airframe
 * @param wingArea S [m²]
 * @param maximumMass m [kg]
 * @returns V, true [m/s]
 * @throws RangeError when wingArea or maximumMass is not above 0
 * @source chosen with the default efficiencies
 */
export const climbAnchorSpeed = (polar: DragPolar, wingArea: number, maximumMass: number) =>
  climbAnchorFactor * minimumDragSpeed(polar, wingArea, maximumMass, seaLevelDensity);

/**
 * Efficiency k of a propeller whose thrust is known: k = T (V + w) / P. At V = 0 from a pull on the ground.
 * @param thrust T, at least 0 [N]
 * @param shaftPower P, above 0 [W]
 * @param trueAirspeed V, at least 0 [m/s]
 * @param propellerDiameter D, above 0 [m]
 * @param density ρ, above 0 [kg/m³]
 * @returns k; above 1 says that thrust and power do not belong together [-]
 * @throws RangeError when an argument is outside its range
 * @source momentum theory of the actuator disc
 */
export function efficiencyFromThrust(
  thrust: number,
  shaftPower: number,
  trueAirspeed: number,
  propellerDiameter: number,
  density: number,
): number {
  requireAbove('shaftPower', shaftPower, 0, 'W');
  const induced = inducedVelocity(thrust, trueAirspeed, propellerDiameter, density);
  return (thrust * (trueAirspeed + induced)) / shaftPower;
}

/**
 * Efficiency k in a measured climb when the polar is trusted: T = D + m g R / V.
 * @param polar of the bare airframe
 * @param wingArea S, above 0 [m²]
 * @param flight power, speed, air, mass, propeller, climb, drag area
 * @returns k; above 1 says that climb and power do not belong together [-]
 * @throws RangeError when an argument is outside its range
 * @source equilibrium along the flight path
 */
export function efficiencyFromClimb(polar: DragPolar, wingArea: number, flight: KnownFlight): number {
  const { shaftPower, trueAirspeed, density, mass, propellerDiameter, rateOfClimb, dragArea } = flight;
  const flown = withDragArea(polar, dragArea, wingArea);
  const climbing = (mass * standardGravity * rateOfClimb) / trueAirspeed;
  const thrust = drag(flown, wingArea, mass, trueAirspeed, density) + climbing;
  return efficiencyFromThrust(thrust, shaftPower, trueAirspeed, propellerDiameter, density);
}
