/**
 * The mass flow of cooling air: where the pressure available meets what core and exit take.
 *
 * η (q + κ T/A) − C_p,e q = Δp_ref (m/m_ref)^n / σ + m² / (2 ρ_e (C_d A_e)²),   ρ_e = ρ T_a / (T_a + Q/(m c_p))
 *
 * The right side is 0 at m = 0 and rises with m, so there is one root when the left is above 0, and no flow otherwise.
 * The density of the core's term is that of the outside air: heating in the core makes its drop a little greater than
 * that of the cold core. Ram heating, 1 K at 85 kt, is left out.
 * @source common practice of cooling calculations (Bernoulli, continuity, perfect gas)
 */
import { airDensity, airSpecificHeat, seaLevelDensity, standardPressure } from './air.ts';
import { requireAbove, requireBetween } from './check.ts';
import { coolingHeat, coolingPressureAvailable, heatedDensity, slipstreamPressure } from './coolingAir.ts';
import type { CoolingCondition, CoolingCore, CoolingDuct, HeatFraction } from './coolingStream.ts';
import { findRoot } from './solve.ts';

/** Less than this is no flow: warm air rising does more, and the balance knows nothing of it [Pa]. */
const leastPressure = 1e-3;

export interface CoolingFlow {
  /** m; 0 when the pressure available is no more than 0.001 Pa [kg/s] */
  readonly airflow: number;
  /** Q [W] */
  readonly heat: number;
  /** Left side; may be below 0 [Pa] */
  readonly pressureAvailable: number;
  readonly corePressureDrop: number; // Pa
  readonly exitPressureDrop: number; // Pa
  /** ρ of the outside air [kg/m³] */
  readonly density: number;
  /** ρ_e; that of the outside air when there is no flow [kg/m³] */
  readonly exitDensity: number;
}

/**
 * Cooling air through a duct and its core.
 * @param duct
 * @param core
 * @param condition
 * @returns the flow and the pressures that make it
 * @throws RangeError when a value is outside its range, or fuelPower is missing for a fraction of it
 */
export function coolingFlow(duct: CoolingDuct, core: CoolingCore, condition: CoolingCondition): CoolingFlow {
  requireAbove('referenceAirflow', core.referenceAirflow, 0, 'kg/s');
  requireAbove('referencePressureDrop', core.referencePressureDrop, 0, 'Pa');
  requireAbove('exitArea', duct.exitArea, 0, 'm²');
  requireBetween('pressureExponent', core.pressureExponent, 1, 2, '');
  requireAbove('exitDischargeCoefficient', duct.exitDischargeCoefficient, 0, '');
  requireBetween('exitDischargeCoefficient', duct.exitDischargeCoefficient, 0, 1, '');
  const heat = streamHeat(duct.heat, condition);
  const density = outsideDensity(condition);
  const available = streamPressureAvailable(duct, condition);
  if (available <= leastPressure)
    return {
      airflow: 0,
      heat,
      pressureAvailable: available,
      corePressureDrop: 0,
      exitPressureDrop: 0,
      density,
      exitDensity: density,
    };
  const coreDrop = (airflow: number) => corePressureDrop(core, airflow, density);
  const exitDrop = (airflow: number) => exitPressureDrop(duct, condition, heat, airflow);
  // Either resistance alone lets more through than both; a little past it, for rounding.
  const most =
    1.000001 * Math.min(wideOpenAirflow(core, available, density), exitAirflow(duct, condition, available));
  const airflow = findRoot((m) => coreDrop(m) + exitDrop(m) - available, 0, most, most * 1e-13);
  return {
    airflow,
    heat,
    pressureAvailable: available,
    corePressureDrop: coreDrop(airflow),
    exitPressureDrop: exitDrop(airflow),
    density,
    exitDensity: exitDensity(condition, heat, airflow),
  };
}

/** Heat of the stream [W]. @throws RangeError when its power is missing or negative */
export function streamHeat(heat: HeatFraction, condition: CoolingCondition): number {
  const power = heat.of === 'shaftPower' ? condition.shaftPower : condition.fuelPower;
  if (power === undefined)
    throw new RangeError('fuelPower must be given for heat as a fraction of fuel energy, got none');
  return coolingHeat(power, heat.fraction);
}

/** ρ of the outside air [kg/m³]. */
export function outsideDensity(condition: CoolingCondition): number {
  return airDensity(standardPressure(condition.pressureAltitude), condition.outsideAirTemperature);
}

/** Left side of the balance [Pa]. */
export function streamPressureAvailable(duct: CoolingDuct, condition: CoolingCondition): number {
  return coolingPressureAvailable(
    condition.trueAirspeed,
    outsideDensity(condition),
    slipstreamPressure(duct.slipstreamShare, condition.thrust, condition.discArea),
    duct.inletRecovery,
    duct.exitPressureCoefficient,
  );
}

/** Δp_ref (m/m_ref)^n: pressure drop times density ratio [Pa]. */
export function coreDensityPressureDrop(core: CoolingCore, airflow: number): number {
  return core.referencePressureDrop * (airflow / core.referenceAirflow) ** core.pressureExponent;
}

/** Pressure drop in the core [Pa]. */
export function corePressureDrop(core: CoolingCore, airflow: number, density: number): number {
  return (coreDensityPressureDrop(core, airflow) * seaLevelDensity) / density;
}

/** Mass flow if the exit were wide open: the core takes the whole pressure [kg/s]. */
export function wideOpenAirflow(core: CoolingCore, pressure: number, density: number): number {
  const densityPressure = (pressure * density) / seaLevelDensity;
  return (
    core.referenceAirflow * (densityPressure / core.referencePressureDrop) ** (1 / core.pressureExponent)
  );
}

/** ρ_e behind the core [kg/m³]; airflow above 0. */
export function exitDensity(condition: CoolingCondition, heat: number, airflow: number): number {
  const rise = heat / (airSpecificHeat * airflow);
  return heatedDensity(outsideDensity(condition), condition.outsideAirTemperature, rise);
}

/** m²/(2 ρ_e (C_d A_e)²), written so that it is 0 at m = 0: m (m + Q/(c_p T_a)) / (2 ρ (C_d A_e)²) [Pa]. */
function exitPressureDrop(
  duct: CoolingDuct,
  condition: CoolingCondition,
  heat: number,
  airflow: number,
): number {
  const opening = duct.exitDischargeCoefficient * duct.exitArea;
  const heating = heat / (airSpecificHeat * condition.outsideAirTemperature);
  return (airflow * (airflow + heating)) / (2 * outsideDensity(condition) * opening ** 2);
}

/**
 * Mass flow that a given part of the pressure drives through the exit: the exit's drop solved for m.
 * @param duct
 * @param condition
 * @param pressure over the exit, above 0 [Pa]
 * @returns m [kg/s]
 */
export function exitAirflow(duct: CoolingDuct, condition: CoolingCondition, pressure: number): number {
  const opening = duct.exitDischargeCoefficient * duct.exitArea;
  const heating = streamHeat(duct.heat, condition) / (airSpecificHeat * condition.outsideAirTemperature);
  const square = 2 * outsideDensity(condition) * opening ** 2 * pressure;
  return (2 * square) / (heating + Math.sqrt(heating ** 2 + 4 * square));
}
