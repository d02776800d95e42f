/**
 * Loads on engine mount and firewall, for screening one package against another. More than before is a reason for a
 * stress check by someone qualified, less is no proof of strength.
 */
import { standardGravity } from '../units.ts';
import { requireAbove, requireAtLeast, requireFinite } from './check.ts';

export type Strokes = 2 | 4;

/** A power and the propeller shaft speed that goes with it. */
export interface ShaftRating {
  /** [W] */
  readonly power: number;
  /** Of the propeller, not the engine [rev/s] */
  readonly shaftSpeed: number;
}

export interface TorqueCase {
  readonly rating: 'takeoff' | 'maximumContinuous';
  /** [N·m] */
  readonly limitTorque: number;
  /** Share of the limit loads of flight condition A acting with it [-] */
  readonly limitLoadFraction: number;
}

/** Rates of turn combined with 2.5 g and maximum continuous thrust [rad/s]. @source 14 CFR 23.371(a)(2) before amendment 64 */
export const gyroscopicRates = { yaw: 2.5, pitch: 1 } as const;

const leastSideLoadFactor = 1.33; // 14 CFR 23.363(a)(1) before amendment 64

/**
 * Mean torque: Q = P / (2 π n).
 * @param rating power and shaft speed; at the propeller shaft a gearbox has raised the torque
 * @returns Q [N·m]
 * @throws RangeError when power is below 0 or shaftSpeed not above 0
 * @source definition
 */
export function meanTorque({ power, shaftSpeed }: ShaftRating): number {
  requireAtLeast('power', power, 0, 'W');
  requireAbove('shaftSpeed', shaftSpeed, 0, 'rev/s');
  return power / (2 * Math.PI * shaftSpeed);
}

/**
 * Limit over mean torque of a piston engine: fewer cylinders, rougher torque.
 * @param cylinders whole number, at least 1
 * @param strokes of the cycle
 * @returns factor [-]
 * @throws RangeError when cylinders is not a whole number of at least 1
 * @source 14 CFR 23.361(c) before amendment 64, four-stroke with two cylinders or more; CS-VLA 361(b) for one cylinder
 * and for two-stroke engines
 */
export function torqueFactor(cylinders: number, strokes: Strokes): number {
  requireAtLeast('cylinders', cylinders, 1, '');
  if (!Number.isInteger(cylinders))
    throw new RangeError(`cylinders must be a whole number, got ${cylinders}`);
  const byCylinders = strokes === 4 ? [8, 4, 3, 2, 1.33] : [6, 3, 2];
  return byCylinders[Math.min(cylinders, byCylinders.length) - 1]!;
}

/**
 * The two torque cases: takeoff torque with 75 % of the limit loads of flight condition A, torque at maximum continuous
 * power with all of them; limit torque = factor × mean torque.
 * @param takeoff power and propeller speed at takeoff
 * @param maximumContinuous power and propeller speed at MCP
 * @param factor limit over mean torque, at least 1 [-]
 * @returns both cases
 * @throws RangeError when a power is below 0, a shaft speed not above 0 or factor below 1
 * @source 14 CFR 23.361(a), (c) before amendment 64. CS-VLA 361(b) applies the factor at MCP only; here to both
 */
export function torqueCases(
  takeoff: ShaftRating,
  maximumContinuous: ShaftRating,
  factor: number,
): readonly [TorqueCase, TorqueCase] {
  requireAtLeast('factor', factor, 1, '');
  return [
    { rating: 'takeoff', limitTorque: factor * meanTorque(takeoff), limitLoadFraction: 0.75 },
    {
      rating: 'maximumContinuous',
      limitTorque: factor * meanTorque(maximumContinuous),
      limitLoadFraction: 1,
    },
  ];
}

/**
 * Side load factor on the mount, acting alone: the greater of 1.33 and n/3.
 * @param limitLoadFactor n, of flight condition A, above 0 [-]
 * @returns lateral limit load factor [-]
 * @throws RangeError when limitLoadFactor is not above 0
 * @source 14 CFR 23.363 before amendment 64; CS-VLA 363 has 1.33 alone
 */
export function sideLoadFactor(limitLoadFactor: number): number {
  requireAbove('limitLoadFactor', limitLoadFactor, 0, '');
  return Math.max(leastSideLoadFactor, limitLoadFactor / 3);
}

/**
 * Gyroscopic couple of a propeller: I Ω ω, twice that for two blades, whose couple pulsates between 0 and its double.
 * A rate of yaw gives a pitching couple and the other way round.
 * @param polarInertia I, of the propeller, at least 0 [kg·m²]
 * @param angularSpeed Ω, of the propeller, at least 0 [rad/s]
 * @param turnRate ω, of the aircraft, at least 0; see `gyroscopicRates` [rad/s]
 * @param blades whole number, at least 2
 * @returns couple [N·m]
 * @throws RangeError when an argument is outside its range
 * @source rigid-body dynamics; two blades: AMC 23.371(a) (secondary)
 */
export function gyroscopicCouple(
  polarInertia: number,
  angularSpeed: number,
  turnRate: number,
  blades: number,
): number {
  requireAtLeast('polarInertia', polarInertia, 0, 'kg·m²');
  requireAtLeast('angularSpeed', angularSpeed, 0, 'rad/s');
  requireAtLeast('turnRate', turnRate, 0, 'rad/s');
  requireAtLeast('blades', blades, 2, '');
  return (blades === 2 ? 2 : 1) * polarInertia * angularSpeed * turnRate;
}

/**
 * Moment about the firewall of what lies ahead of it: n g Σ m (x_firewall − x).
 * @param components mass [kg], below 0 for what is removed, and arm [m, positive aft]
 * @param firewallArm x_firewall, from the same datum [m]
 * @param loadFactor n, at least 0 [-]
 * @returns moment, positive bending the mount down [N·m]
 * @throws RangeError when a number is not finite or loadFactor is below 0
 * @source statics
 */
export function firewallMoment(
  components: readonly { readonly mass: number; readonly arm: number }[],
  firewallArm: number,
  loadFactor: number,
): number {
  requireFinite('firewallArm', firewallArm);
  requireAtLeast('loadFactor', loadFactor, 0, '');
  let massMoment = 0;
  for (const { mass, arm } of components) {
    requireFinite('mass', mass);
    requireFinite('arm', arm);
    massMoment += mass * Math.max(0, firewallArm - arm);
  }
  return loadFactor * standardGravity * massMoment;
}
