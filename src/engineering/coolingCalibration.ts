/**
 * The constants nobody has, from what somebody has: one stabilised climb, the maker's rated point, or design values.
 *
 * One point fixes one constant: the conductance of a radiator or K of the fins. Where the core's pressure drop is not known
 * either, it is taken as a share of the pressure available at that point: measured, or assumed and to be shown as assumed.
 */
import { airSpecificHeat, seaLevelDensity } from './air.ts';
import { requireAbove, requireBetween } from './check.ts';
import {
  coolingFlow,
  coreDensityPressureDrop,
  exitAirflow,
  outsideDensity,
  streamHeat,
  streamPressureAvailable,
} from './coolingFlow.ts';
import {
  type CoolingCondition,
  type CoolingCore,
  type CoolingDuct,
  defaultCorePressureExponent,
  type Fins,
  type Radiator,
} from './coolingStream.ts';
import { type CapacityRates, capacityRates, conductanceRatio } from './exchangerTemperature.ts';
import { type FinLaw, finCoefficient } from './fins.ts';
import { crossFlowEffectiveness, crossFlowNtu } from './radiator.ts';

/** A radiator whose conductance is still to be found. */
export type RadiatorData = Omit<Radiator, 'conductance'>;

/** Real cores have 0.5 to 5; what would need more than this is wrong data. */
const mostNtu = 20;

/** Core's part of the pressure available, exit taking the rest, when nothing better is known [-]. Common practice, no source. */
export const defaultCorePressureShare = 0.5;

/**
 * Core from a known point: its drop is a share of the pressure available, the exit takes the rest, which gives the flow.
 * @param duct with its exit area
 * @param condition the known point
 * @param corePressureShare above 0, below 1: measured drop over pressure available, or assumed [-]
 * @param pressureExponent n, 1 to 2 [-]
 * @returns the core, its reference airflow that of the point
 * @throws RangeError when nothing drives the air at the point, or a value is outside its range
 * @source the balance of `coolingFlow.ts` solved for the core
 */
export function coreFromKnownPoint(
  duct: CoolingDuct,
  condition: CoolingCondition,
  corePressureShare = defaultCorePressureShare,
  pressureExponent = defaultCorePressureExponent,
): CoolingCore {
  requireAbove('corePressureShare', corePressureShare, 0, '');
  requireBetween('corePressureShare', corePressureShare, 0, 0.999, '');
  requireBetween('pressureExponent', pressureExponent, 1, 2, '');
  const available = streamPressureAvailable(duct, condition);
  requireAbove('pressure available at the known point', available, 0, 'Pa');
  const densityRatio = outsideDensity(condition) / seaLevelDensity;
  return {
    referenceAirflow: exitAirflow(duct, condition, (1 - corePressureShare) * available),
    referencePressureDrop: densityRatio * corePressureShare * available,
    pressureExponent,
  };
}

/**
 * Radiator from design values: UA = NTU C_min at the core's reference airflow and full coolant flow.
 * @param radiator
 * @param core
 * @param ntu NTU there, above 0 [-]
 * @returns the radiator with its conductance
 * @throws RangeError when a value is outside its range
 * @source definition of NTU
 */
export function radiatorFromNtu(radiator: RadiatorData, core: CoolingCore, ntu: number): Radiator {
  requireAbove('ntu', ntu, 0, '');
  requireAbove('referenceAirflow', core.referenceAirflow, 0, 'kg/s');
  requireAbove('coolantCapacityRate', radiator.coolantCapacityRate, 0, 'W/K');
  const least = Math.min(core.referenceAirflow * airSpecificHeat, radiator.coolantCapacityRate);
  return { ...radiator, conductance: ntu * least };
}

/**
 * Radiator from the maker's rated point, at the core's reference airflow and full coolant flow.
 * @param radiator
 * @param core
 * @param heat Q, above 0 [W]
 * @param inletTemperatureDifference coolant entering less air entering, above 0 [K]
 * @returns the radiator with its conductance
 * @throws RangeError when no exchanger does so much at these flows, or a value is outside its range
 * @source ε = Q/(C_min ΔT), inverse of the exact cross-flow series
 */
export function radiatorFromRatedPoint(
  radiator: RadiatorData,
  core: CoolingCore,
  heat: number,
  inletTemperatureDifference: number,
): Radiator {
  requireAbove('referenceAirflow', core.referenceAirflow, 0, 'kg/s');
  requireAbove('coolantCapacityRate', radiator.coolantCapacityRate, 0, 'W/K');
  const rates = {
    air: core.referenceAirflow * airSpecificHeat,
    coolant: radiator.coolantCapacityRate,
  };
  return { ...radiator, conductance: conductanceFor(heat, inletTemperatureDifference, rates) };
}

/**
 * Radiator from one stabilised point in flight.
 * @param duct
 * @param core
 * @param radiator
 * @param condition of the point
 * @param temperature measured, stabilised, where `temperatureAt` says [K]
 * @returns the radiator with its conductance
 * @throws RangeError when no exchanger would run so cool on the air this duct gives it: then airflow, heat or reading is wrong
 * @source the balance of `coolingFlow.ts`, inverse of the exact cross-flow series
 */
export function radiatorFromKnownPoint(
  duct: CoolingDuct,
  core: CoolingCore,
  radiator: RadiatorData,
  condition: CoolingCondition,
  temperature: number,
): Radiator {
  const { airflow } = coolingFlow(duct, core, condition);
  requireAbove('airflow at the known point', airflow, 0, 'kg/s');
  const heat = streamHeat(duct.heat, condition);
  const rates = capacityRates(radiator, condition, airflow);
  const inlet = radiator.temperatureAt === 'radiatorInlet' ? temperature : temperature + heat / rates.coolant;
  const conductance = conductanceFor(heat, inlet - condition.outsideAirTemperature, rates);
  return { ...radiator, conductance: conductance / conductanceRatio(radiator, core, condition, airflow) };
}

/** Conductance that exchanges heat at a difference of inlet temperatures; refused when NTU would have to be above 20. */
function conductanceFor(heat: number, temperatureDifference: number, rates: CapacityRates): number {
  requireAbove('heat', heat, 0, 'W');
  const least = Math.min(rates.air, rates.coolant);
  const capacityRatio = least / Math.max(rates.air, rates.coolant);
  const smallest = heat / (least * crossFlowEffectiveness(mostNtu, capacityRatio));
  requireAbove('temperature above the air, for this heat and airflow,', temperatureDifference, smallest, 'K');
  return crossFlowNtu(heat / (least * temperatureDifference), capacityRatio) * least;
}

/**
 * Fins from one stabilised point in flight.
 * @param duct
 * @param core the passages between the fins
 * @param law
 * @param condition of the point
 * @param temperature of head or barrel, measured, stabilised [K]
 * @returns the fins with their coefficient
 * @throws RangeError when nothing drives the air at the point, or the temperature is not between air and gas
 * @source the balance of `coolingFlow.ts`; see `fins.ts`
 */
export function finsFromKnownPoint(
  duct: CoolingDuct,
  core: CoolingCore,
  law: FinLaw,
  condition: CoolingCondition,
  temperature: number,
): Fins {
  const { airflow } = coolingFlow(duct, core, condition);
  requireAbove('airflow at the known point', airflow, 0, 'kg/s');
  const pressureDrop = coreDensityPressureDrop(core, airflow);
  const air = condition.outsideAirTemperature;
  return {
    kind: 'fins',
    law,
    coefficient: finCoefficient(law, temperature, condition.shaftPower, pressureDrop, air),
  };
}
