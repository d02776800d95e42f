/** What it takes to hold the limit of a stream: airflow, exit and inlet area, and how hot the day may be. */
import { requireAbove } from './check.ts';
import { coolingExitArea, coolingInletArea, defaultInletVelocityRatio } from './coolingAir.ts';
import {
  corePressureDrop,
  exitDensity,
  outsideDensity,
  streamHeat,
  streamPressureAvailable,
  wideOpenAirflow,
} from './coolingFlow.ts';
import { coolingResult } from './coolingResult.ts';
import type { CoolingCondition, CoolingStream } from './coolingStream.ts';
import { exchangerTemperature } from './exchangerTemperature.ts';
import { findRoot } from './solve.ts';

/**
 * Least airflow that holds the limit: more air never makes it hotter.
 * @param stream
 * @param condition
 * @returns m, or undefined when it cannot be held even with the exit wide open [kg/s]
 * @throws RangeError when a value is outside its range
 * @source `coolingFlow.ts`, `exchangerTemperature.ts`
 */
export function requiredAirflow(stream: CoolingStream, condition: CoolingCondition): number | undefined {
  requireAbove('limit', stream.limit, 0, 'K');
  const available = streamPressureAvailable(stream, condition);
  if (available <= 0) return undefined;
  const widest = wideOpenAirflow(stream.core, available, outsideDensity(condition));
  const margin = (airflow: number) => stream.limit - exchangerTemperature(stream, condition, airflow);
  if (margin(widest) < 0) return undefined;
  const least = widest * 1e-6;
  return margin(least) >= 0 ? least : findRoot(margin, least, widest, widest * 1e-13);
}

/**
 * Least exit area that holds the limit.
 * @param stream its own exit area is not used
 * @param condition
 * @returns A_e, or undefined when it cannot be held even with the exit wide open [m²]
 * @throws RangeError when a value is outside its range
 * @source the balance of `coolingFlow.ts` solved for the exit
 */
export function requiredExitArea(stream: CoolingStream, condition: CoolingCondition): number | undefined {
  const airflow = requiredAirflow(stream, condition);
  if (airflow === undefined) return undefined;
  const available = streamPressureAvailable(stream, condition);
  const left = available - corePressureDrop(stream.core, airflow, outsideDensity(condition));
  if (left <= 0) return undefined;
  const density = exitDensity(condition, streamHeat(stream.heat, condition), airflow);
  return coolingExitArea(airflow, left, density, stream.exitDischargeCoefficient);
}

/**
 * Inlet area for the airflow that holds the limit.
 * @param stream
 * @param condition airspeed above 0
 * @param velocityRatio speed in the inlet over airspeed, above 0 [-]
 * @returns A, or undefined when the limit cannot be held even with the exit wide open [m²]
 * @throws RangeError when a value is outside its range
 * @source `coolingInletArea`
 */
export function requiredInletArea(
  stream: CoolingStream,
  condition: CoolingCondition,
  velocityRatio = defaultInletVelocityRatio,
): number | undefined {
  const airflow = requiredAirflow(stream, condition);
  return airflow === undefined
    ? undefined
    : coolingInletArea(airflow, condition.trueAirspeed, outsideDensity(condition), velocityRatio);
}

/** Search for the highest outside air temperature, wider than anybody flies in [K]. */
const coldest = 203.15; // −70 °C
const hottest = 333.15; // 60 °C
const temperatureTolerance = 1e-3; // K

export interface HighestOutsideAirTemperature {
  /** [K] */
  readonly temperature: number;
  /** `yes`, or the end of the search at which the limit still holds (up to 60 °C) or does not hold yet (−70 °C) */
  readonly found: 'yes' | 'holdsUpToHottest' | 'exceededAtColdest';
}

/**
 * Highest outside air temperature in which the limit holds.
 * @param stream
 * @param conditionAt the condition flown at an outside air temperature [K]; power, speed and thrust may change with it
 * @returns the temperature, or the end of the search and why
 * @throws RangeError when a value is outside its range
 * @source root search: hotter air never cools better
 */
export function highestOutsideAirTemperature(
  stream: CoolingStream,
  conditionAt: (outsideAirTemperature: number) => CoolingCondition,
): HighestOutsideAirTemperature {
  // Without airflow there is no margin at all.
  const holds = (air: number) => coolingResult(stream, conditionAt(air)).margin ?? -1;
  if (holds(hottest) >= 0) return { temperature: hottest, found: 'holdsUpToHottest' };
  if (holds(coldest) < 0) return { temperature: coldest, found: 'exceededAtColdest' };
  return { temperature: findRoot(holds, coldest, hottest, temperatureTolerance), found: 'yes' };
}
