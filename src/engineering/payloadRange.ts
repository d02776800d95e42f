/**
 * Payload against range: seats and baggage first, then maximum weight against fuel, then the tanks.
 *
 * Payload is everybody and everything in the cabin, the pilot included.
 */
import type { AircraftInFlight } from './aircraftInFlight.ts';
import { requireAbove, requireAtLeast } from './check.ts';
import { fuelWithCabinLoad } from './payload.ts';
import { type TripObstacle, type TripPlan, tripOnFuel } from './trip.ts';

export interface LoadLimits {
  /** Basic empty mass [kg] */
  readonly emptyMass: number;
  /** Maximum mass, with taxi fuel aboard [kg] */
  readonly maximumMass: number;
  /** What seats and baggage bays hold [kg] */
  readonly cabinLimit: number;
  /** Tanks full [kg] */
  readonly usableFuel: number;
  /** The pilot [kg] */
  readonly leastPayload: number;
}

export interface PayloadRangePoint {
  readonly payload: number; // kg
  /** Aboard at the start [kg] */
  readonly fuel: number;
  /** With the reserve left; 0 when not possible [m] */
  readonly range: number;
  /** Why there is no range with this payload. */
  readonly stops?: TripObstacle;
}

export interface PayloadRange {
  /** The most that can be carried, with the fuel that leaves room for. */
  readonly mostPayload: PayloadRangePoint;
  /** Full tanks and the payload left over; missing when not even the pilot can be carried with them. */
  readonly fullTanks: PayloadRangePoint | undefined;
  /** The pilot alone with the fuel that fits: the greatest range. */
  readonly pilotAlone: PayloadRangePoint;
  /** From zero range with most payload through the corners, payload never rising. */
  readonly curve: readonly PayloadRangePoint[];
}

const pointsPerLeg = 5;

/**
 * Payload–range diagram.
 * @param aircraft the airframe with its package
 * @param plan of the trip that is flown with every load
 * @param limits masses, cabin and tanks
 * @returns the corner points and the curve; nothing when the pilot alone without fuel is over the maximum mass
 * @throws RangeError when an argument is outside its range
 * @source definition; each range integrated by phase
 */
export function payloadRange(
  aircraft: AircraftInFlight,
  plan: TripPlan,
  limits: LoadLimits,
): PayloadRange | undefined {
  const { emptyMass, maximumMass, cabinLimit, usableFuel, leastPayload } = limits;
  requireAbove('usableFuel', usableFuel, 0, 'kg');
  requireAtLeast('leastPayload', leastPayload, 0, 'kg');
  requireAtLeast('cabinLimit', cabinLimit, leastPayload, 'kg');
  const usefulMass = maximumMass - emptyMass;
  if (usefulMass < leastPayload) return undefined;

  const point = (payload: number): PayloadRangePoint => {
    const fuel = fuelWithCabinLoad(maximumMass, emptyMass, payload, usableFuel);
    const trip = tripOnFuel(aircraft, plan, emptyMass + payload + fuel, fuel);
    return trip.possible
      ? { payload, fuel, range: trip.distance }
      : { payload, fuel, range: 0, stops: trip.stops };
  };
  const mostPayload = Math.min(cabinLimit, usefulMass);
  const fullTanksPayload = Math.min(mostPayload, usefulMass - usableFuel);
  const corner = Math.max(fullTanksPayload, leastPayload);
  const toCorner = leg(mostPayload, corner).map(point);
  const toPilotAlone = leg(corner, leastPayload).slice(1).map(point);
  const atMostPayload = toCorner[0]!;
  const atCorner = toCorner[toCorner.length - 1]!;
  return {
    mostPayload: atMostPayload,
    fullTanks: fullTanksPayload >= leastPayload ? atCorner : undefined,
    pilotAlone: toPilotAlone[toPilotAlone.length - 1] ?? atCorner,
    curve: [{ payload: mostPayload, fuel: 0, range: 0 }, ...toCorner, ...toPilotAlone],
  };
}

/** Payloads from one to another, both included; one when they are the same. */
function leg(from: number, to: number): number[] {
  if (from === to) return [from];
  return Array.from({ length: pointsPerLeg }, (_, i) => from + ((to - from) * i) / (pointsPerLeg - 1));
}
