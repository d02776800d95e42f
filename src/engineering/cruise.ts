/** Cruise with the fuel burning off: how far a quantity takes the aircraft, and what a distance takes. */
import type { Air, AircraftInFlight, Mixture, PowerSetting } from './aircraftInFlight.ts';
import { requireAtLeast } from './check.ts';
import { levelFlight } from './levelFlight.ts';
import { simpson } from './simpson.ts';

export interface CruiseConditions {
  /** Usually a fraction of maximum continuous power. */
  readonly setting: PowerSetting;
  readonly mixture: Mixture;
  readonly air: Air;
  /** Below 0 from behind [m/s] */
  readonly headwind: number;
}

export interface CruiseState {
  /** V [m/s] */
  readonly trueAirspeed: number;
  /** Over the ground [m/s] */
  readonly groundSpeed: number;
  readonly shaftPower: number; // W
  /** ṁ [kg/s] */
  readonly fuelFlow: number;
  /** The setting asks for more power than the air gives: this is what full throttle does. */
  readonly fullThrottle: boolean;
}

export interface CruiseLeg {
  readonly distance: number; // m, over the ground
  readonly fuel: number; // kg
  readonly time: number; // s
}

const steps = 2; // of the integrations, of fourth order: speed changes by a few per cent over a whole tank
const mostFuel = 0.5; // of the starting mass; no aircraft this is for carries as much

/**
 * Cruise at one mass.
 * @param aircraft the airframe with its package
 * @param conditions setting, mixture, air, wind
 * @param mass m, above 0 [kg]
 * @returns speeds, power and fuel flow; nothing when it can't hold the height or makes no way against the wind
 * @throws RangeError when mass is not above 0 or the setting is outside its range
 * @source equilibrium in level flight
 */
export function cruiseState(
  aircraft: AircraftInFlight,
  conditions: CruiseConditions,
  mass: number,
): CruiseState | undefined {
  const level = levelFlight(aircraft, conditions.setting, conditions.air, mass);
  if (!level.possible) return undefined;
  const { trueAirspeed, shaftPower, fullThrottle } = level;
  const groundSpeed = trueAirspeed - conditions.headwind;
  if (groundSpeed <= 0) return undefined;
  const fuelFlow = aircraft.fuelFlow(shaftPower, conditions.mixture);
  return { trueAirspeed, groundSpeed, shaftPower, fuelFlow, fullThrottle };
}

/**
 * Fuel for a distance: dm/dx = −ṁ/(V − V_w), by the classical Runge–Kutta method over distance.
 * @param aircraft the airframe with its package
 * @param conditions setting, mixture, air, wind
 * @param startMass m at the start [kg]
 * @param distance x over the ground, at least 0 [m]
 * @returns fuel and time; nothing when it can't cruise so, or would burn half its mass
 * @throws RangeError when distance is below 0
 * @source equations of motion, quasi-steady
 */
export function cruiseOverDistance(
  aircraft: AircraftInFlight,
  conditions: CruiseConditions,
  startMass: number,
  distance: number,
): CruiseLeg | undefined {
  requireAtLeast('distance', distance, 0, 'm');
  const step = distance / steps;
  let fuel = 0;
  let time = 0;
  for (let i = 0; i < steps; i++) {
    const first = cruiseState(aircraft, conditions, startMass - fuel);
    if (first === undefined) return undefined;
    const perMetre = (state: CruiseState) => state.fuelFlow / state.groundSpeed;
    if (fuel + perMetre(first) * step > mostFuel * startMass) return undefined;
    const after = (slope: number, part: number) =>
      cruiseState(aircraft, conditions, startMass - fuel - slope * part * step) ?? first; // lighter flies too
    const second = after(perMetre(first), 0.5);
    const third = after(perMetre(second), 0.5);
    const fourth = after(perMetre(third), 1);
    const mean = (value: (state: CruiseState) => number) =>
      (value(first) + 2 * value(second) + 2 * value(third) + value(fourth)) / 6;
    fuel += step * mean(perMetre);
    time += step * mean((state) => 1 / state.groundSpeed);
  }
  return { distance, fuel, time };
}

/**
 * Distance on a quantity of fuel: x = ∫ (V − V_w)/ṁ dm, t = ∫ dm/ṁ, by Simpson's rule over mass.
 * @param aircraft the airframe with its package
 * @param conditions setting, mixture, air, wind
 * @param startMass m at the start [kg]
 * @param fuel to burn, at least 0 [kg]
 * @returns distance and time; nothing when it can't cruise so
 * @throws RangeError when fuel is below 0
 * @source equations of motion, quasi-steady; Breguet's integral without its constant lift coefficient
 */
export function cruiseOnFuel(
  aircraft: AircraftInFlight,
  conditions: CruiseConditions,
  startMass: number,
  fuel: number,
): CruiseLeg | undefined {
  requireAtLeast('fuel', fuel, 0, 'kg');
  const step = fuel / steps;
  const states: CruiseState[] = [];
  for (let i = 0; i <= steps; i++) {
    const state = cruiseState(aircraft, conditions, startMass - i * step);
    if (state === undefined) return undefined;
    states.push(state);
  }
  const distance = simpson(
    states.map(({ groundSpeed, fuelFlow }) => groundSpeed / fuelFlow),
    step,
  );
  const time = simpson(
    states.map(({ fuelFlow }) => 1 / fuelFlow),
    step,
  );
  return { distance, fuel, time };
}
