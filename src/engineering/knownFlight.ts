/**
 * What a measured flight of the airframe tells of its drag.
 *
 * C_D0 is not guessed: it follows from one known level flight, in which drag is the propeller's thrust. More of them at
 * other speeds, or measured climbs, give e too.
 */
import { standardGravity } from '../units.ts';
import { requireAbove, requireFinite } from './check.ts';
import {
  type DragPolar,
  defaultSpanEfficiency,
  dynamicPressure,
  inducedDragFactor,
  liftCoefficient,
} from './dragPolar.ts';
import { propellerThrust } from './propeller.ts';

/** A stabilised flight at a known power. */
export interface KnownFlight {
  readonly shaftPower: number; // W
  readonly trueAirspeed: number; // m/s
  readonly density: number; // kg/m³
  readonly mass: number; // kg
  readonly propellerDiameter: number; // m
  /** 0 in level flight [m/s] */
  readonly rateOfClimb: number;
  /** D/q of the cooling and equipment of that flight, not part of the bare airframe [m²] */
  readonly dragArea: number;
}

/** A steady flight in which the drag is known. */
export interface DragPoint {
  /** D [N] */
  readonly drag: number;
  /** m [kg] */
  readonly mass: number;
  /** V [m/s] */
  readonly trueAirspeed: number;
  /** ρ [kg/m³] */
  readonly density: number;
}

/**
 * Drag of the bare airframe in a known flight: D = T(P, V, k) − m g R / V − q (D/q).
 * @param flight power, speed, air, mass, propeller, climb, drag area
 * @param efficiency k at that speed, 0 to 1 [-]
 * @returns the drag, with the speed, air and mass it belongs to
 * @throws RangeError when a value is outside its range
 * @source equilibrium along the flight path; momentum theory of the actuator disc
 */
export function dragOfKnownFlight(flight: KnownFlight, efficiency: number): DragPoint {
  const { shaftPower, trueAirspeed, density, mass, propellerDiameter, rateOfClimb, dragArea } = flight;
  requireAbove('trueAirspeed', trueAirspeed, 0, 'm/s');
  requireFinite('rateOfClimb', rateOfClimb);
  requireFinite('dragArea', dragArea);
  const thrust = propellerThrust(shaftPower, trueAirspeed, propellerDiameter, density, efficiency);
  const climbing = (mass * standardGravity * rateOfClimb) / trueAirspeed;
  const drag = thrust - climbing - dynamicPressure(trueAirspeed, density) * dragArea;
  return { drag, mass, trueAirspeed, density };
}

interface Coefficients {
  readonly lift: number;
  readonly drag: number;
}

function coefficients(point: DragPoint, wingArea: number): Coefficients {
  const lift = liftCoefficient(point.mass, wingArea, point.trueAirspeed, point.density);
  return { lift, drag: point.drag / (dynamicPressure(point.trueAirspeed, point.density) * wingArea) };
}

/**
 * Polar through one known point: C_D0 = D/(q S) − C_L² / (π e A).
 * @param point a steady flight whose drag is known
 * @param wingArea S, above 0 [m²]
 * @param aspectRatio A, above 0 [-]
 * @param spanEfficiency e, above 0 [-]
 * @returns the polar
 * @throws RangeError when an argument is outside its range, or nothing is left for C_D0: the point claims more speed
 * than its power can give
 * @source parabolic polar solved for C_D0
 */
export function polarThroughPoint(
  point: DragPoint,
  wingArea: number,
  aspectRatio: number,
  spanEfficiency = defaultSpanEfficiency,
): DragPolar {
  requireAbove('aspectRatio', aspectRatio, 0, '');
  requireAbove('spanEfficiency', spanEfficiency, 0, '');
  const { lift, drag } = coefficients(point, wingArea);
  const zeroLiftDragCoefficient = drag - inducedDragFactor(aspectRatio, spanEfficiency) * lift ** 2;
  requireAbove('zero-lift drag coefficient from the known point', zeroLiftDragCoefficient, 0, '');
  return { zeroLiftDragCoefficient, aspectRatio, spanEfficiency };
}

/**
 * Polar through known points: C_D = C_D0 + K C_L², K = 1/(π e A), by least squares of (ΔC_D/C_D)², for power and speed
 * err by shares; through two points exactly.
 *
 * A small error of a point is a large one of e when the lift coefficients are close: take some fast, some slow.
 * @param points steady flights whose drag is known, at least two
 * @param wingArea S, above 0 [m²]
 * @param aspectRatio A, above 0 [-]
 * @returns the polar; an e outside 0.5 to 0.9 says that the points do not belong together
 * @throws RangeError when an argument is outside its range, or no polar with C_D0 and e above 0 fits the points
 * @source parabolic polar; weighted linear regression, any textbook of statistics
 */
export function polarThroughPoints(
  points: readonly DragPoint[],
  wingArea: number,
  aspectRatio: number,
): DragPolar {
  requireAbove('aspectRatio', aspectRatio, 0, '');
  const known = points.map((point) => {
    const { lift, drag } = coefficients(point, wingArea);
    return { x: lift ** 2, y: drag, weight: 1 / drag ** 2 };
  });
  const sum = (of: (point: (typeof known)[number]) => number) =>
    known.reduce((total, point) => total + of(point), 0);
  const weight = sum((point) => point.weight);
  const meanX = sum((point) => point.weight * point.x) / weight;
  const meanY = sum((point) => point.weight * point.y) / weight;
  const spread = sum((point) => point.weight * (point.x - meanX) ** 2);
  if (!(spread > 0))
    throw new RangeError(`the points must differ in lift coefficient, got ${Math.sqrt(meanX)} for all`);
  const factor = sum((point) => point.weight * (point.x - meanX) * (point.y - meanY)) / spread;
  requireAbove('induced drag factor from the points', factor, 0, '');
  const zeroLiftDragCoefficient = meanY - factor * meanX;
  requireAbove('zero-lift drag coefficient from the points', zeroLiftDragCoefficient, 0, '');
  return { zeroLiftDragCoefficient, aspectRatio, spanEfficiency: 1 / (Math.PI * factor * aspectRatio) };
}
