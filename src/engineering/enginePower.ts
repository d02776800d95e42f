/**
 * Full-throttle power of a piston engine at altitude and off-standard temperature.
 *
 * One law serves every rating of an engine: takeoff power and maximum continuous power differ in the rating given to
 * `powerAvailable`, not in the law.
 */
import { densityRatio, standardTemperature } from './air.ts';
import { requireAbove, requireAtLeast, requireBetween, requireFinite } from './check.ts';
import { type Curve, type Point, piecewiseLinear } from './curve.ts';

/** Power over rating in standard air, by pressure altitude [m]. */
export type AltitudeLaw = Curve;

export interface EnginePowerLaw {
  readonly altitudeLaw: AltitudeLaw;
  /** x in (T_std/T)^x, 0.5 is usual [-] */
  readonly temperatureExponent: number;
  /** True when the engine's own controller keeps it from exceeding its rating in dense or cold air. */
  readonly controlled: boolean;
}

export interface PowerAvailable {
  /** [W] */
  readonly power: number;
  /** True when the altitude lies outside the maker's table. */
  readonly extrapolated: boolean;
  /** True when the controller holds the engine at its rating. */
  readonly limited: boolean;
}

const mechanicalLoss = 1 / 7.55; // friction and pumping, over the full power at sea level; Gagg and Farrar

/**
 * Power over sea-level power of a naturally aspirated engine: s − (1 − s)/7.55, never below 0.
 * @source Gagg and Farrar, SAE Transactions 29 (1934), as cited by Gudmundsson, General Aviation Aircraft Design, eq. 7-16
 */
const gaggFarrar = (densityFraction: number) =>
  Math.max(0, densityFraction - (1 - densityFraction) * mechanicalLoss);

/**
 * Altitude law of a naturally aspirated engine: GF(σ_std). The formula was fitted to the standard atmosphere; the
 * temperature has its own factor, so the density of a hot day never enters it.
 * @param pressureAltitude −5,000 to 20,000 [m]
 * @returns power over rating; above 1 below sea level
 * @throws RangeError when pressureAltitude is outside its range
 * @source Gagg and Farrar, SAE Transactions 29 (1934)
 */
export const naturallyAspirated: AltitudeLaw = (pressureAltitude) => ({
  value: gaggFarrar(densityRatio(pressureAltitude)),
  extrapolated: false,
});

/**
 * Altitude law of a turbocharged engine: rated power to the critical altitude h_c, GF(σ_std/σ_std(h_c)) above.
 * @param criticalAltitude h_c, a pressure altitude, 0 to 20,000 [m]
 * @returns the law
 * @throws RangeError when criticalAltitude is outside its range
 * @source common practice above the critical altitude: the engine breathes as a naturally aspirated one would from there
 */
export function turbocharged(criticalAltitude: number): AltitudeLaw {
  requireBetween('criticalAltitude', criticalAltitude, 0, 20_000, 'm');
  const criticalDensityRatio = densityRatio(criticalAltitude);
  return (pressureAltitude) => ({
    value: Math.min(1, gaggFarrar(densityRatio(pressureAltitude) / criticalDensityRatio)),
    extrapolated: false,
  });
}

/**
 * Altitude law from the maker's table of full-throttle power in standard air: straight lines between its points.
 * @param points pressure altitude [m] as x, power [W] as y, at least one
 * @param rating the power rating the table was made for, above 0 [W]
 * @returns the law, held at the table's ends and flagged beyond them
 * @throws RangeError when there is no point, an altitude comes twice, a power is below 0 or rating is not above 0
 * @source the maker's table
 */
export function makersTable(points: readonly Point[], rating: number): AltitudeLaw {
  requireAbove('rating', rating, 0, 'W');
  for (const point of points) requireAtLeast('power', point.y, 0, 'W');
  return piecewiseLinear(points.map(({ x, y }) => ({ x, y: y / rating })));
}

/**
 * Power at full throttle: P = P_rated f(h) (T_std/T)^x, not above P_rated when controlled.
 * @param law of the engine
 * @param rating P_rated, takeoff power or maximum continuous power, at least 0 [W]
 * @param pressureAltitude h, −5,000 to 20,000 [m]
 * @param temperature T of the air, standard when not given [K]
 * @returns power, and whether it is extrapolated or held by the controller
 * @throws RangeError when an argument is outside its range
 * @source altitude as its law; √(T_std/T) at full throttle: FAA AC 23-8, appendix 1 (from memory)
 */
export function powerAvailable(
  law: EnginePowerLaw,
  rating: number,
  pressureAltitude: number,
  temperature = standardTemperature(pressureAltitude),
): PowerAvailable {
  requireAtLeast('rating', rating, 0, 'W');
  requireAbove('temperature', temperature, 0, 'K');
  requireFinite('temperatureExponent', law.temperatureExponent);
  const altitudeFactor = law.altitudeLaw(pressureAltitude);
  const temperatureFactor = (standardTemperature(pressureAltitude) / temperature) ** law.temperatureExponent;
  const power = rating * altitudeFactor.value * temperatureFactor;
  const limited = law.controlled && power > rating;
  return { power: limited ? rating : power, extrapolated: altitudeFactor.extrapolated, limited };
}
