/** Climb: rate and angle, the speeds that are best for each, ceilings, and the climb to a height. */
import { standardGravity, toSi } from '../units.ts';
import {
  type Air,
  type AircraftInFlight,
  airAt,
  airspeedRange,
  climbGradient,
  type PowerSetting,
  type Rating,
  shaftPower,
} from './aircraftInFlight.ts';
import { requireAbove, requireAtLeast } from './check.ts';
import { findRoot, maximise } from './solve.ts';

/** Rate of climb at the service ceiling, 100 ft/min [m/s]. @source common practice; the absolute ceiling has 0 */
export const serviceCeilingRate = toSi('climb', 100, 'ft/min');

const speedTolerance = 1e-4; // m/s; the hump is flat: the rate is right to far more, or to 0.0001 % where k has a corner
const altitudeTolerance = 0.1; // m
const highestCeiling = 15_000; // m, above which no ceiling is looked for
const sliceTolerance = 1e-3; // m, 0.002 s at the least rate
const sliceHeight = 300; // m of pressure altitude, about 1,000 ft, in one step of a climb

export interface BestClimb {
  /** V [m/s] */
  readonly trueAirspeed: number;
  /** R, below 0 when it sinks [m/s] */
  readonly rateOfClimb: number;
  /** R/V [-] */
  readonly gradient: number;
  /** The best would be slower than the clean stall: this is the climb at the stall, and no speed to fly. */
  readonly limitedByStall: boolean;
}

/**
 * Rate of climb from excess power: R = (T V − D V) / (m g).
 * @param excessThrustPower T V − D V [W]
 * @param mass m, above 0 [kg]
 * @returns R [m/s]
 * @throws RangeError when mass is not above 0
 * @source equilibrium along the flight path
 */
export function rateOfClimbFromPower(excessThrustPower: number, mass: number): number {
  requireAbove('mass', mass, 0, 'kg');
  return excessThrustPower / (mass * standardGravity);
}

/**
 * Rate of climb at a speed: R = V (T − D) / (m g), speed constant along the path.
 * @param aircraft the airframe with its package
 * @param setting rating, or fraction of maximum continuous power
 * @param air in which it flies
 * @param mass m, above 0 [kg]
 * @param trueAirspeed V, above 0 [m/s]
 * @returns R, below 0 when it sinks [m/s]
 * @throws RangeError when an argument is outside its range
 * @source equilibrium along the flight path; what a climb at constant indicated airspeed spends on gaining true
 * airspeed, under 2 % at these speeds, is left out
 */
export function rateOfClimb(
  aircraft: AircraftInFlight,
  setting: PowerSetting,
  air: Air,
  mass: number,
  trueAirspeed: number,
): number {
  requireAbove('trueAirspeed', trueAirspeed, 0, 'm/s');
  return trueAirspeed * climbGradient(aircraft, setting, air, mass)(trueAirspeed);
}

/**
 * Best rate of climb: the greatest V (T − D), sought from the clean stall upwards.
 * @param aircraft the airframe with its package
 * @param setting rating, or fraction of maximum continuous power
 * @param air in which it flies
 * @param mass m, above 0 [kg]
 * @returns speed, rate and gradient
 * @throws RangeError when mass is not above 0
 * @source definition of V_Y
 */
export function bestRateOfClimb(
  aircraft: AircraftInFlight,
  setting: PowerSetting,
  air: Air,
  mass: number,
): BestClimb {
  const gradient = climbGradient(aircraft, setting, air, mass);
  const { stall, highest } = airspeedRange(aircraft, setting, air, mass);
  const best = maximise((speed) => speed * gradient(speed), stall, highest, speedTolerance);
  return {
    trueAirspeed: best.x,
    rateOfClimb: best.value,
    gradient: best.value / best.x,
    limitedByStall: best.atEnd,
  };
}

/**
 * Best angle of climb: the greatest (T − D) / (m g), sought from the clean stall upwards.
 * @param aircraft the airframe with its package
 * @param setting rating, or fraction of maximum continuous power
 * @param air in which it flies
 * @param mass m, above 0 [kg]
 * @returns speed, rate and gradient; often limited by the stall, as light aircraft's best angle lies near it
 * @throws RangeError when mass is not above 0
 * @source definition of V_X
 */
export function bestAngleOfClimb(
  aircraft: AircraftInFlight,
  setting: PowerSetting,
  air: Air,
  mass: number,
): BestClimb {
  const { stall, highest } = airspeedRange(aircraft, setting, air, mass);
  const best = maximise(climbGradient(aircraft, setting, air, mass), stall, highest, speedTolerance);
  return {
    trueAirspeed: best.x,
    rateOfClimb: best.x * best.value,
    gradient: best.value,
    limitedByStall: best.atEnd,
  };
}

export interface Ceiling {
  /** [m] */
  readonly pressureAltitude: number;
  /** `beyond`: it still climbs better at the greatest height looked at. `none`: not even at sea level. */
  readonly found: 'yes' | 'beyond' | 'none';
}

/**
 * Ceiling: the pressure altitude at which the best rate of climb has fallen to a given rate.
 * @param aircraft the airframe with its package
 * @param setting rating; maximum continuous for what it can hold
 * @param mass m, above 0 [kg]
 * @param rate 100 ft/min for the service ceiling, 0 for the absolute [m/s]
 * @param temperatureDeviation above standard, the same at all heights [K]
 * @returns pressure altitude, sought from sea level to 15,000 m
 * @throws RangeError when an argument is outside its range
 * @source definition; the rate falls with height
 */
export function ceiling(
  aircraft: AircraftInFlight,
  setting: PowerSetting,
  mass: number,
  rate = serviceCeilingRate,
  temperatureDeviation = 0,
): Ceiling {
  requireAtLeast('rate', rate, 0, 'm/s');
  const spare = (altitude: number) =>
    bestRateOfClimb(aircraft, setting, airAt(altitude, temperatureDeviation), mass).rateOfClimb - rate;
  if (spare(0) < 0) return { pressureAltitude: 0, found: 'none' };
  if (spare(highestCeiling) >= 0) return { pressureAltitude: highestCeiling, found: 'beyond' };
  return { pressureAltitude: findRoot(spare, 0, highestCeiling, altitudeTolerance), found: 'yes' };
}

export interface ClimbToHeight {
  /** False: at `pressureAltitude` it climbs no better than 100 ft/min any more, and only burning off fuel would help. */
  readonly reached: boolean;
  readonly pressureAltitude: number; // m
  readonly time: number; // s
  readonly fuel: number; // kg
  /** Through the air, horizontal [m] */
  readonly distance: number;
}

type ClimbState = Omit<ClimbToHeight, 'reached'>;

/**
 * Climb at the best-rate speed of every height, with takeoff power within its time limit, then maximum continuous.
 *
 * Slices of 300 m, each flown as its middle is (midpoint rule): Δt = Δh (T/T_std) / R, Δm = ṁ Δt, Δx = V cos γ Δt.
 * A slice is cut where the limit of takeoff power runs out, or where the climb has fallen to 100 ft/min, which ends it:
 * the times are right to 0.1 %. Heights are pressure altitudes: in warm air the layers are thicker by T/T_std.
 * @param aircraft the airframe with its package
 * @param fromAltitude pressure altitude of the field [m]
 * @param toAltitude at least fromAltitude [m]
 * @param mass m at the start, above 0 [kg]
 * @param temperatureDeviation above standard, the same at all heights [K]
 * @returns time, fuel, distance; takeoff power's time counts from the start of the climb, the ground roll left out
 * @throws RangeError when an argument is outside its range
 * @source equations of motion, quasi-steady; common practice
 */
export function climbToHeight(
  aircraft: AircraftInFlight,
  fromAltitude: number,
  toAltitude: number,
  mass: number,
  temperatureDeviation = 0,
): ClimbToHeight {
  requireAtLeast('toAltitude', toAltitude, fromAltitude, 'm');
  const climbAt = (rating: Rating, altitude: number, fuel: number) => {
    const air = airAt(altitude, temperatureDeviation);
    return { air, best: bestRateOfClimb(aircraft, rating, air, mass - fuel) };
  };
  /** Rate above the least one at a state. */
  const spare = (rating: Rating, { pressureAltitude, fuel }: ClimbState) =>
    climbAt(rating, pressureAltitude, fuel).best.rateOfClimb - serviceCeilingRate;
  /** A slice further; nothing where its middle climbs less than the least. */
  const further = (state: ClimbState, rating: Rating, height: number): ClimbState | undefined => {
    // Half a slice's fuel is some ten-thousandths of the mass: the mass at its start is near enough.
    const { air, best } = climbAt(rating, state.pressureAltitude + height / 2, state.fuel);
    if (best.rateOfClimb < serviceCeilingRate) return undefined;
    const risingPressureAltitude =
      (best.rateOfClimb * (air.temperature - temperatureDeviation)) / air.temperature;
    const remaining =
      rating === 'takeoff' ? aircraft.takeoffPowerTime - state.time : Number.POSITIVE_INFINITY;
    const duration = Math.min(height / risingPressureAltitude, remaining);
    const power = shaftPower(aircraft, rating, air)(best.trueAirspeed);
    return {
      pressureAltitude:
        state.pressureAltitude + (duration === remaining ? duration * risingPressureAltitude : height),
      time: state.time + duration,
      fuel: state.fuel + aircraft.fuelFlow(power, 'rich') * duration,
      distance:
        state.distance + best.trueAirspeed * Math.sqrt(Math.max(0, 1 - best.gradient ** 2)) * duration,
    };
  };

  const start: ClimbState = { pressureAltitude: fromAltitude, time: 0, fuel: 0, distance: 0 };
  // The rate falls with height and mass: what climbs at the top as heavy as at the start climbs all the way.
  const top = { ...start, pressureAltitude: toAltitude };
  const isSure = spare('continuous', top) >= 0 && spare('takeoff', top) >= 0;
  let state = start;
  while (state.pressureAltitude < toAltitude) {
    const from = state;
    const rating = from.time < aircraft.takeoffPowerTime ? 'takeoff' : 'continuous';
    const height = Math.min(sliceHeight, toAltitude - from.pressureAltitude);
    const spareAfter = (part: number) => {
      const after = further(from, rating, part);
      return after === undefined ? -serviceCeilingRate : spare(rating, after);
    };
    const next = further(from, rating, height);
    if (next === undefined || (!isSure && spare(rating, next) < 0)) {
      if (spare(rating, from) <= 0) return { reached: false, ...from };
      const part = findRoot(spareAfter, 0, height, sliceTolerance);
      return { reached: false, ...(further(from, rating, part) ?? from) };
    }
    state = next;
  }
  return { reached: true, ...state, pressureAltitude: toAltitude };
}
