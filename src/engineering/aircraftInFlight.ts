/**
 * One airframe with one engine package as the flight calculations see it, and its thrust and drag.
 *
 * Built once per package; everything on level flight, climb, takeoff and range takes it.
 */
import { standardGravity } from '../units.ts';
import { airDensity, standardPressure, standardTemperature } from './air.ts';
import { requireAbove, requireBetween } from './check.ts';
import { type DragPolar, drag } from './dragPolar.ts';
import { propellerThrust } from './propeller.ts';
import { stallSpeed } from './stall.ts';

export type Rating = 'takeoff' | 'continuous';

/** Full throttle within a rating, or a fraction of maximum continuous power (as much of it as the air gives). */
export type PowerSetting = Rating | number;

export type Mixture = 'rich' | 'lean';

export interface AircraftInFlight {
  /** S [m²] */
  readonly wingArea: number;
  /** Cooling drag of this package and equipment included. */
  readonly dragPolar: DragPolar;
  /** C_Lmax clean: nothing is flown slower than its stall speed [-] */
  readonly maximumLiftCoefficient: number;
  /** D [m] */
  readonly propellerDiameter: number;
  /** k of true airspeed [m/s] → [-] */
  readonly propellerEfficiency: (trueAirspeed: number) => number;
  /** Engine speed over rated at full throttle, of true airspeed [m/s]; 1 with a constant-speed propeller [-] */
  readonly shaftSpeedFraction: (trueAirspeed: number) => number;
  /** Full-throttle shaft power at rated speed [m], [K] → [W] */
  readonly fullThrottlePower: (rating: Rating, pressureAltitude: number, temperature: number) => number;
  /** Rated, at sea level [W] */
  readonly maximumContinuousPower: number;
  /** How long takeoff power may be used; infinite without a limit [s] */
  readonly takeoffPowerTime: number;
  /** Fuel flow of shaft power [W] → [kg/s] */
  readonly fuelFlow: (shaftPower: number, mixture: Mixture) => number;
}

const fastest = 1000; // m/s; no propeller drives anything as fast

export interface Air {
  readonly pressureAltitude: number; // m
  readonly temperature: number; // K
  readonly density: number; // kg/m³
}

/**
 * The air at a height.
 * @param pressureAltitude −5,000 to 20,000 [m]
 * @param temperatureDeviation above the standard temperature of that height [K]
 * @returns pressure altitude, temperature and density
 * @throws RangeError when an argument is outside its range
 * @source US Standard Atmosphere 1976; density from the pressure of the height and the actual temperature
 */
export function airAt(pressureAltitude: number, temperatureDeviation = 0): Air {
  const temperature = standardTemperature(pressureAltitude) + temperatureDeviation;
  return {
    pressureAltitude,
    temperature,
    density: airDensity(standardPressure(pressureAltitude), temperature),
  };
}

/**
 * Shaft power against true airspeed: full throttle P(h, T) × speed fraction (torque nearly constant), or the fraction
 * of maximum continuous power asked for if that is less.
 * @param aircraft the airframe with its package
 * @param setting rating, or fraction of maximum continuous power above 0 to 1
 * @param air in which it flies
 * @returns P of true airspeed [m/s] → [W]
 * @throws RangeError when the fraction is outside its range
 * @source common practice
 */
export function shaftPower(
  aircraft: AircraftInFlight,
  setting: PowerSetting,
  air: Air,
): (trueAirspeed: number) => number {
  const rating = typeof setting === 'number' ? 'continuous' : setting;
  const fullThrottle = aircraft.fullThrottlePower(rating, air.pressureAltitude, air.temperature);
  if (typeof setting !== 'number')
    return (trueAirspeed) => fullThrottle * aircraft.shaftSpeedFraction(trueAirspeed);
  requireAbove('power setting', setting, 0, '');
  requireBetween('power setting', setting, 0, 1, '');
  const asked = setting * aircraft.maximumContinuousPower;
  return (trueAirspeed) => Math.min(asked, fullThrottle * aircraft.shaftSpeedFraction(trueAirspeed));
}

/**
 * Thrust against true airspeed: the actuator disc at k(V) and P(V).
 * @param aircraft the airframe with its package
 * @param setting rating, or fraction of maximum continuous power
 * @param air in which it flies
 * @returns T of true airspeed [m/s] → [N]
 * @source momentum theory of the actuator disc
 */
export function thrust(
  aircraft: AircraftInFlight,
  setting: PowerSetting,
  air: Air,
): (trueAirspeed: number) => number {
  const power = shaftPower(aircraft, setting, air);
  return (trueAirspeed) =>
    propellerThrust(
      power(trueAirspeed),
      trueAirspeed,
      aircraft.propellerDiameter,
      air.density,
      aircraft.propellerEfficiency(trueAirspeed),
    );
}

/**
 * Excess thrust over weight, which is the sine of the steady climb angle: (T − D) / (m g).
 * @param aircraft the airframe with its package
 * @param setting rating, or fraction of maximum continuous power
 * @param air in which it flies
 * @param mass m, above 0 [kg]
 * @returns gradient of true airspeed [m/s] → [-]
 * @throws RangeError when mass is not above 0
 * @source equilibrium along the flight path
 */
export function climbGradient(
  aircraft: AircraftInFlight,
  setting: PowerSetting,
  air: Air,
  mass: number,
): (trueAirspeed: number) => number {
  requireAbove('mass', mass, 0, 'kg');
  const available = thrust(aircraft, setting, air);
  const { dragPolar, wingArea } = aircraft;
  return (trueAirspeed) =>
    (available(trueAirspeed) - drag(dragPolar, wingArea, mass, trueAirspeed, air.density)) /
    (mass * standardGravity);
}

/**
 * Least and greatest true airspeed worth looking at: the clean stall, and where drag without lift alone takes all power.
 *
 * Thrust never exceeds P/V and drag never falls below q S C_D0, so level flight is impossible above
 * V = (2 P / (ρ S C_D0))^⅓.
 * @returns [m/s]; the upper is kept above the lower when there is next to no power
 * @throws RangeError when the power would drive it faster than 1,000 m/s
 */
export function airspeedRange(
  aircraft: AircraftInFlight,
  setting: PowerSetting,
  air: Air,
  mass: number,
): { readonly stall: number; readonly highest: number } {
  const stall = stallSpeed(mass, aircraft.wingArea, aircraft.maximumLiftCoefficient, air.density);
  const parasite = air.density * aircraft.wingArea * aircraft.dragPolar.zeroLiftDragCoefficient;
  // The speed fraction never falls with airspeed: far above any flight it is at its greatest.
  const greatestPower = shaftPower(aircraft, setting, air)(fastest);
  const highest = Math.cbrt((2 * greatestPower) / parasite);
  requireBetween('greatest airspeed of this power and drag', highest, 0, fastest, 'm/s');
  return { stall, highest: Math.max(highest, 1.5 * stall) };
}
