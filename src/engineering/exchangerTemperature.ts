/**
 * The temperature with the limit (coolant, oil, cylinder head or barrel) at a given flow of cooling air, heat and engine
 * in steady state.
 */
import { airSpecificHeat } from './air.ts';
import { requireAbove, requireBetween } from './check.ts';
import { coreDensityPressureDrop, streamHeat } from './coolingFlow.ts';
import type { CoolingCondition, CoolingCore, CoolingStream, Radiator } from './coolingStream.ts';
import { finTemperature } from './fins.ts';
import { crossFlowEffectiveness, largestNtu } from './radiator.ts';

/** Coolant side: turbulent flow in tubes, h as the 0.8 power of the flow. @source Dittus and Boelter (from memory) */
const coolantFlowExponent = 0.8;

/**
 * Temperature of the stream's engine part at an airflow.
 *
 * Radiator: Q = ε C_min (T_in − T_a), so T_in = T_a + Q/(ε C_min); behind it T_in − Q/C_coolant.
 * Fins: the NACA form, see `fins.ts`.
 * @param stream
 * @param condition
 * @param airflow m, above 0 [kg/s]
 * @returns T [K]
 * @throws RangeError when a value is outside its range
 * @source Kays and London, Compact Heat Exchangers (radiator)
 */
export function exchangerTemperature(
  stream: CoolingStream,
  condition: CoolingCondition,
  airflow: number,
): number {
  requireAbove('airflow', airflow, 0, 'kg/s');
  const { core, exchanger } = stream;
  const air = condition.outsideAirTemperature;
  if (exchanger.kind === 'fins') {
    const pressureDrop = coreDensityPressureDrop(core, airflow);
    return finTemperature(exchanger.law, exchanger.coefficient, condition.shaftPower, pressureDrop, air);
  }
  requireAbove('conductance', exchanger.conductance, 0, 'W/K');
  const heat = streamHeat(stream.heat, condition);
  const rates = capacityRates(exchanger, condition, airflow);
  const conductance = exchanger.conductance * conductanceRatio(exchanger, core, condition, airflow);
  const inlet = air + heat / heatPerKelvin(conductance, rates);
  return exchanger.temperatureAt === 'radiatorInlet' ? inlet : inlet - heat / rates.coolant;
}

export interface CapacityRates {
  readonly air: number; // W/K
  readonly coolant: number; // W/K
}

/** Mass flow × specific heat of both sides; the coolant pump turns with the engine and its flow with it (pump affinity). */
export function capacityRates(
  radiator: Omit<Radiator, 'conductance'>,
  condition: CoolingCondition,
  airflow: number,
): CapacityRates {
  requireAbove('coolantCapacityRate', radiator.coolantCapacityRate, 0, 'W/K');
  return {
    air: airflow * airSpecificHeat,
    coolant: radiator.coolantCapacityRate * engineSpeedRatio(condition),
  };
}

/** ε C_min: heat exchanged per kelvin between the two inlets [W/K]. */
function heatPerKelvin(conductance: number, rates: CapacityRates): number {
  const least = Math.min(rates.air, rates.coolant);
  const ntu = Math.min(conductance / least, largestNtu);
  return crossFlowEffectiveness(ntu, least / Math.max(rates.air, rates.coolant)) * least;
}

/**
 * UA over UA at the core's reference airflow and full coolant flow:
 * 1 / [s (m/m_ref)^−(n−1) + (1 − s) (speed ratio)^−0.8].
 *
 * On the air's side the analogy of friction and heat gives h as the (n − 1) power of m when Δp goes as the n-th.
 * @source resistances in series; Reynolds' analogy (Colburn); share s common practice
 */
export function conductanceRatio(
  radiator: Omit<Radiator, 'conductance'>,
  core: CoolingCore,
  condition: CoolingCondition,
  airflow: number,
): number {
  requireBetween('airSideShare', radiator.airSideShare, 0, 1, '');
  const airSide = (airflow / core.referenceAirflow) ** (core.pressureExponent - 1);
  const coolantSide = engineSpeedRatio(condition) ** coolantFlowExponent;
  return 1 / (radiator.airSideShare / airSide + (1 - radiator.airSideShare) / coolantSide);
}

function engineSpeedRatio(condition: CoolingCondition): number {
  const ratio = condition.engineSpeedRatio ?? 1;
  requireAbove('engineSpeedRatio', ratio, 0, '');
  return ratio;
}
