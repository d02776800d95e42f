/** Takeoff: ground roll to lift-off, then the distance through the air to 50 ft. */
import { standardGravity, toSi } from '../units.ts';
import { type Air, type AircraftInFlight, thrust } from './aircraftInFlight.ts';
import { requireAbove, requireAtLeast, requireBetween, requireFinite } from './check.ts';
import { drag, dragCoefficient, dynamicPressure, withDragArea } from './dragPolar.ts';
import { simpson } from './simpson.ts';
import { stallSpeed } from './stall.ts';

/** Rolling friction of surfaces, μ [-]. @source typical values of aircraft design textbooks (from memory) */
export const rollingFriction = {
  pavement: 0.03,
  'wet pavement': 0.05,
  'firm dirt': 0.04,
  'short grass': 0.05,
  'long grass': 0.1,
  'wet grass': 0.08,
  'soft ground': 0.2,
} as const;

/** Height of the obstacle, 50 ft [m]. @source 14 CFR 23.53 before amendment 64 (from memory) */
export const obstacleHeight = toSi('height', 50, 'ft');

/** Lift-off speed over stall speed [-]. @source common practice */
const liftOffFactor = 1.1;

/**
 * Speed at 50 ft over stall speed [-]. Chosen with the propeller's default efficiencies, which see: 1.2, the usual
 * requirement, makes the handbook distances over 50 ft 12 % too long on average.
 */
const obstacleSpeedFactor = 1.15;

/** Lift coefficient while rolling with the wing near its incidence [-]. @source common practice; 0.1 to 0.5 */
const groundLiftCoefficient = 0.3;

const speedIntervals = 20; // even, of Simpson's rule

export interface TakeoffConditions {
  readonly air: Air;
  /** m [kg] */
  readonly mass: number;
  /** C_Lmax with takeoff flap [-] */
  readonly maximumLiftCoefficient: number;
  /** D/q of takeoff flap and of a gear that is up in cruise [m²] */
  readonly dragArea: number;
  /** μ [-] */
  readonly rollingFriction: number;
  /** Rise over run, uphill above 0 [-] */
  readonly slope: number;
  /** Along the runway, below 0 from behind [m/s] */
  readonly headwind: number;
  /** Measured over predicted ground roll of this airframe; 1 when none was measured [-] */
  readonly groundRollFactor: number;
}

export type Takeoff =
  | {
      readonly possible: true;
      /** s [m] */
      readonly groundRoll: number;
      /** From standing start to 50 ft [m] */
      readonly distanceTo50Feet: number;
      /** Its true airspeed [m/s] */
      readonly liftOffSpeed: number;
      readonly time: number; // s, of the ground roll
    }
  | {
      readonly possible: false;
      /** What the thrust does not suffice for. */
      readonly stops: 'ground roll' | 'climb to 50 ft';
    };

/**
 * Takeoff at takeoff power.
 *
 * Roll: m dV/dt = T − D − μ (m g − L) − m g slope, to 1.1 V_S; s = ∫ (V − V_w) dV / a, t = ∫ dV / a by Simpson's rule
 * over airspeed from the headwind V_w. Then energy: the excess thrust at the mean speed lifts the aircraft 50 ft and
 * speeds it up to 1.15 V_S: s = (h + (V₅₀² − V_LO²)/2g) / ((T − D)/m g − slope), the air moving with the wind.
 * Ground effect is left out (it shortens), and so is the time to rotate (it lengthens).
 * @param aircraft the airframe with its package
 * @param conditions air, mass, flap, surface, slope, wind
 * @returns distances, or what stops it
 * @throws RangeError when a condition is outside its range
 * @source Newton's second law; energy method for the air distance: Torenbeek, Synthesis of Subsonic Airplane Design,
 * chapter 5 (from memory)
 */
export function takeoff(aircraft: AircraftInFlight, conditions: TakeoffConditions): Takeoff {
  const { air, mass, slope, headwind, groundRollFactor } = conditions;
  requireBetween('slope', slope, -0.2, 0.2, '');
  requireFinite('headwind', headwind);
  requireAtLeast('rollingFriction', conditions.rollingFriction, 0, '');
  requireAbove('groundRollFactor', groundRollFactor, 0, '');
  const { wingArea } = aircraft;
  const polar = withDragArea(aircraft.dragPolar, conditions.dragArea, wingArea);
  const stall = stallSpeed(mass, wingArea, conditions.maximumLiftCoefficient, air.density);
  const liftOffSpeed = liftOffFactor * stall;
  const obstacleSpeed = obstacleSpeedFactor * stall;
  const available = thrust(aircraft, 'takeoff', air);
  const weightForce = mass * standardGravity;

  const rolling = (airspeed: number) => {
    const forward = Math.max(airspeed, 0); // a tailwind blows on the tail until the aircraft outruns it
    const pressureTimesArea = dynamicPressure(forward, air.density) * wingArea;
    const rollingDrag = pressureTimesArea * dragCoefficient(polar, groundLiftCoefficient);
    const onWheels = Math.max(weightForce - pressureTimesArea * groundLiftCoefficient, 0);
    const force =
      available(forward) - rollingDrag - conditions.rollingFriction * onWheels - weightForce * slope;
    return force / mass;
  };
  const roll = groundRun(rolling, headwind, liftOffSpeed);
  if (roll === undefined) return { possible: false, stops: 'ground roll' };

  const meanSpeed = Math.sqrt((liftOffSpeed ** 2 + obstacleSpeed ** 2) / 2);
  const excess = available(meanSpeed) - drag(polar, wingArea, mass, meanSpeed, air.density);
  const gradient = excess / weightForce - slope * (1 - headwind / meanSpeed);
  if (gradient <= 0) return { possible: false, stops: 'climb to 50 ft' };
  const energyHeight = obstacleHeight + (obstacleSpeed ** 2 - liftOffSpeed ** 2) / (2 * standardGravity);
  const airDistance = (energyHeight / gradient) * Math.max(1 - headwind / meanSpeed, 0);

  const groundRoll = roll.distance * groundRollFactor;
  return {
    possible: true,
    groundRoll,
    distanceTo50Feet: groundRoll + airDistance,
    liftOffSpeed,
    time: roll.time * groundRollFactor,
  };
}

/** Distance and time from standing to lift-off; nothing when it does not accelerate all the way. */
function groundRun(
  acceleration: (airspeed: number) => number,
  headwind: number,
  liftOffSpeed: number,
): { readonly distance: number; readonly time: number } | undefined {
  if (headwind >= liftOffSpeed) return { distance: 0, time: 0 };
  const step = (liftOffSpeed - headwind) / speedIntervals;
  const accelerations: number[] = [];
  for (let i = 0; i <= speedIntervals; i++) {
    const a = acceleration(headwind + i * step);
    if (a <= 0) return undefined;
    accelerations.push(a);
  }
  return {
    distance: simpson(
      accelerations.map((a, i) => (i * step) / a),
      step,
    ),
    time: simpson(
      accelerations.map((a) => 1 / a),
      step,
    ),
  };
}

/**
 * Factor that brings the predicted ground roll to a measured one: measured / predicted.
 *
 * One roll can't tell a weaker propeller from a rougher surface or a later lift-off, so it scales the distance and
 * claims no cause.
 * @param aircraft as flown
 * @param conditions of the measurement; their own factor is not used
 * @param measuredRoll s, above 0 [m]
 * @returns factor for `groundRollFactor`; outside 0.7 to 1.4 something in the conditions is wrong [-]
 * @throws RangeError when measuredRoll is not above 0, or the model says that it can't take off
 * @source definition
 */
export function groundRollFactor(
  aircraft: AircraftInFlight,
  conditions: TakeoffConditions,
  measuredRoll: number,
): number {
  requireAbove('measuredRoll', measuredRoll, 0, 'm');
  const predicted = takeoff(aircraft, { ...conditions, groundRollFactor: 1 });
  if (!predicted.possible || predicted.groundRoll === 0)
    throw new RangeError('conditions must be such that the aircraft rolls and takes off, got none');
  return measuredRoll / predicted.groundRoll;
}
