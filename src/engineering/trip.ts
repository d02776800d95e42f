/** A trip: start and taxi, climb, cruise, reserve; the fuel a distance takes and the distance a fuel load gives. */
import { type AircraftInFlight, airAt, type Mixture, type PowerSetting } from './aircraftInFlight.ts';
import { requireAtLeast } from './check.ts';
import { climbToHeight } from './climb.ts';
import {
  type CruiseConditions,
  type CruiseLeg,
  cruiseOnFuel,
  cruiseOverDistance,
  cruiseState,
} from './cruise.ts';

export interface TripPlan {
  /** Pressure altitudes; the fields at both ends lie at the same [m] */
  readonly fieldAltitude: number;
  readonly cruiseAltitude: number;
  /** Above standard, the same at all heights [K] */
  readonly temperatureDeviation: number;
  readonly setting: PowerSetting;
  readonly mixture: Mixture;
  /** Below 0 from behind, the same at all heights [m/s] */
  readonly headwind: number;
  /** Burnt before takeoff [kg] */
  readonly taxiFuel: number;
  /** Flown at cruise fuel flow; `visualReserveTime` has the rule's [s] */
  readonly reserveTime: number;
}

/** What ends a trip before it begins. */
export type TripObstacle =
  | 'it does not climb to the cruise altitude'
  | 'it does not hold the cruise altitude at this setting, or makes no way against the wind'
  | 'the distance takes more fuel than it could carry'
  | 'the fuel does not cover taxi, climb and reserve';

export type Trip =
  | {
      readonly possible: true;
      readonly distance: number; // m, over the ground
      readonly time: number; // s, from takeoff
      readonly taxiFuel: number; // kg
      readonly climbFuel: number; // kg
      readonly cruiseFuel: number; // kg
      readonly reserveFuel: number; // kg
      readonly totalFuel: number; // kg
      /** At the start of cruise [m/s] */
      readonly cruiseSpeed: number;
      /** At the start of cruise [kg/s] */
      readonly cruiseFuelFlow: number;
      /** The whole distance is covered before the cruise altitude is reached: fuel and time are the climb's. */
      readonly endsInClimb: boolean;
    }
  | { readonly possible: false; readonly stops: TripObstacle };

/**
 * Fuel and time for a distance.
 *
 * Descent is counted as cruise (common practice: what it saves the approach uses). The reserve is flown at the mass
 * with which the trip ends.
 * @param aircraft the airframe with its package
 * @param plan altitudes, temperature, setting, wind, taxi and reserve
 * @param startMass m with taxi fuel [kg]
 * @param distance over the ground, at least 0 [m]
 * @returns the fuel by phase, or what stops it
 * @throws RangeError when an argument is outside its range
 * @source integration by phase; reserve 14 CFR 91.151
 */
export function tripOverDistance(
  aircraft: AircraftInFlight,
  plan: TripPlan,
  startMass: number,
  distance: number,
): Trip {
  requireAtLeast('distance', distance, 0, 'm');
  return fly(
    aircraft,
    plan,
    startMass,
    (cruise, massAtTop, climbDistance) =>
      cruiseOverDistance(aircraft, cruise, massAtTop, Math.max(distance - climbDistance, 0)) ??
      'the distance takes more fuel than it could carry',
  );
}

/**
 * Distance and time on the fuel aboard, landing with the reserve.
 * @param aircraft the airframe with its package
 * @param plan altitudes, temperature, setting, wind, taxi and reserve
 * @param startMass m with all fuel [kg]
 * @param usableFuel aboard, taxi fuel included, at least 0 [kg]
 * @returns the distance and the fuel by phase, or what stops it
 * @throws RangeError when an argument is outside its range
 * @source integration by phase; reserve 14 CFR 91.151
 */
export function tripOnFuel(
  aircraft: AircraftInFlight,
  plan: TripPlan,
  startMass: number,
  usableFuel: number,
): Trip {
  requireAtLeast('usableFuel', usableFuel, 0, 'kg');
  return fly(aircraft, plan, startMass, (cruise, massAtTop) => {
    const remaining = usableFuel - (startMass - massAtTop);
    const reserveAtTop = reserveFuel(aircraft, cruise, massAtTop, plan.reserveTime);
    const massAtEnd = massAtTop - Math.max(remaining - reserveAtTop, 0);
    const reserve = reserveFuel(aircraft, cruise, massAtEnd, plan.reserveTime);
    if (remaining < reserve) return 'the fuel does not cover taxi, climb and reserve';
    return cruiseOnFuel(aircraft, cruise, massAtTop, remaining - reserve) ?? cantCruise;
  });
}

const cantCruise = 'it does not hold the cruise altitude at this setting, or makes no way against the wind';

/** What cruises at the top of the climb cruises when lighter: the state is there. */
function reserveFuel(
  aircraft: AircraftInFlight,
  cruise: CruiseConditions,
  mass: number,
  reserveTime: number,
): number {
  return (cruiseState(aircraft, cruise, mass)?.fuelFlow ?? 0) * reserveTime;
}

function fly(
  aircraft: AircraftInFlight,
  plan: TripPlan,
  startMass: number,
  cruiseLeg: (cruise: CruiseConditions, massAtTop: number, climbDistance: number) => CruiseLeg | TripObstacle,
): Trip {
  requireAtLeast('taxiFuel', plan.taxiFuel, 0, 'kg');
  requireAtLeast('reserveTime', plan.reserveTime, 0, 's');
  const { setting, mixture, headwind, temperatureDeviation } = plan;
  const climb = climbToHeight(
    aircraft,
    plan.fieldAltitude,
    plan.cruiseAltitude,
    startMass - plan.taxiFuel,
    temperatureDeviation,
  );
  if (!climb.reached) return { possible: false, stops: 'it does not climb to the cruise altitude' };
  const climbDistance = climb.distance - headwind * climb.time;
  const massAtTop = startMass - plan.taxiFuel - climb.fuel;
  const cruise = { setting, mixture, headwind, air: airAt(plan.cruiseAltitude, temperatureDeviation) };
  const start = cruiseState(aircraft, cruise, massAtTop);
  if (start === undefined) return { possible: false, stops: cantCruise };
  const leg = cruiseLeg(cruise, massAtTop, climbDistance);
  if (typeof leg === 'string') return { possible: false, stops: leg };
  const reserve = reserveFuel(aircraft, cruise, massAtTop - leg.fuel, plan.reserveTime);
  return {
    possible: true,
    distance: climbDistance + leg.distance,
    time: climb.time + leg.time,
    taxiFuel: plan.taxiFuel,
    climbFuel: climb.fuel,
    cruiseFuel: leg.fuel,
    reserveFuel: reserve,
    totalFuel: plan.taxiFuel + climb.fuel + leg.fuel + reserve,
    cruiseSpeed: start.trueAirspeed,
    cruiseFuelFlow: start.fuelFlow,
    endsInClimb: leg.distance === 0 && climbDistance > 0,
  };
}
