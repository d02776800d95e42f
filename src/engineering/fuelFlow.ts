/**
 * Fuel flow against power setting, from brake specific fuel consumption (BSFC) at a few settings of one mixture.
 *
 * A setting is a fraction of maximum continuous power.
 */
import { requireAbove, requireAtLeast } from './check.ts';
import { monotoneCubic, piecewiseLinear } from './curve.ts';

export interface FuelPoint {
  /** Power over maximum continuous power [-] */
  readonly powerFraction: number;
  /** Fuel mass per shaft energy [kg/J] */
  readonly bsfc: number;
}

export interface BsfcEstimate {
  /** [kg/J] */
  readonly bsfc: number;
  /** True when the setting lies outside the points: BSFC is then that of the nearest. */
  readonly extrapolated: boolean;
  /** What it rests on: a curve through three points or more, a Willans line through two, or one point held. */
  readonly basis: 'curve' | 'willansLine' | 'singlePoint';
}

/** Lower heating value by fuel [J/kg]; a batch may differ by 1 %. */
export const lowerHeatingValue = {
  avgas: 43.5e6, // ASTM D910, least allowed (secondary)
  mogas: 43.4e6, // conventional gasoline, Hydrogen Analysis Resource Center table
  jetA: 42.8e6, // ASTM D1655, least allowed (from memory)
  diesel: 42.6e6, // US low-sulphur diesel, Hydrogen Analysis Resource Center table
} as const;

const plausibleEfficiency = { low: 0.15, high: 0.45 } as const; // piston engines; common practice, no source

/**
 * BSFC against power setting: a monotone cubic through three points or more; through two the Willans line, fuel flow
 * affine in power, ṁ = a + b P; one point holds everywhere.
 * @param points of one mixture, at least one, in any order
 * @returns BSFC at a power fraction of at least 0, held at the end points and flagged outside them
 * @throws RangeError when there is no point, a value is not above 0 or two points share a setting
 * @source Fritsch and Carlson (1980); the Willans line is textbook practice (Heywood, section 13.3, from memory)
 */
export function bsfcCurve(points: readonly FuelPoint[]): (powerFraction: number) => BsfcEstimate {
  for (const { powerFraction, bsfc } of points) {
    requireAbove('powerFraction', powerFraction, 0, '');
    requireAbove('bsfc', bsfc, 0, 'kg/J');
  }
  if (points.length === 2) return willansLine(points);
  const curve = monotoneCubic(points.map(({ powerFraction, bsfc }) => ({ x: powerFraction, y: bsfc })));
  const basis = points.length === 1 ? 'singlePoint' : 'curve';
  return (powerFraction) => {
    requireAtLeast('powerFraction', powerFraction, 0, '');
    const { value, extrapolated } = curve(powerFraction);
    return { bsfc: value, extrapolated, basis };
  };
}

function willansLine(points: readonly FuelPoint[]): (powerFraction: number) => BsfcEstimate {
  const fuelFlow = piecewiseLinear(
    points.map(({ powerFraction, bsfc }) => ({ x: powerFraction, y: powerFraction * bsfc })),
  );
  const settings = points.map(({ powerFraction }) => powerFraction);
  const lowest = Math.min(...settings);
  const highest = Math.max(...settings);
  return (powerFraction) => {
    requireAtLeast('powerFraction', powerFraction, 0, '');
    const nearest = Math.min(Math.max(powerFraction, lowest), highest);
    return {
      bsfc: fuelFlow(nearest).value / nearest,
      extrapolated: fuelFlow(powerFraction).extrapolated,
      basis: 'willansLine',
    };
  };
}

/**
 * BSFC where a fuel flow is known instead: c = ṁ/P.
 * @param massFlow ṁ, above 0 [kg/s]
 * @param power P, above 0 [W]
 * @returns c [kg/J]
 * @throws RangeError when an argument is not above 0
 * @source definition
 */
export function bsfcFromMassFlow(massFlow: number, power: number): number {
  requireAbove('massFlow', massFlow, 0, 'kg/s');
  requireAbove('power', power, 0, 'W');
  return massFlow / power;
}

/**
 * Fuel mass flow: ṁ = P c.
 * @param power P, at the propeller shaft, at least 0 [W]
 * @param bsfc c, above 0 [kg/J]
 * @returns ṁ [kg/s]
 * @throws RangeError when an argument is outside its range
 * @source definition
 */
export function fuelMassFlow(power: number, bsfc: number): number {
  requireAtLeast('power', power, 0, 'W');
  requireAbove('bsfc', bsfc, 0, 'kg/J');
  return power * bsfc;
}

/**
 * Brake thermal efficiency: η = 1 / (c H).
 * @param bsfc c, above 0 [kg/J]
 * @param heatingValue H, lower, above 0 [J/kg]
 * @returns η, and whether it is plausible: outside 15 to 45 % the data are wrong
 * @throws RangeError when an argument is not above 0
 * @source definition; the band is common practice
 */
export function thermalEfficiency(
  bsfc: number,
  heatingValue: number,
): { readonly efficiency: number; readonly plausible: boolean } {
  requireAbove('bsfc', bsfc, 0, 'kg/J');
  requireAbove('heatingValue', heatingValue, 0, 'J/kg');
  const efficiency = 1 / (bsfc * heatingValue);
  return {
    efficiency,
    plausible: efficiency >= plausibleEfficiency.low && efficiency <= plausibleEfficiency.high,
  };
}
