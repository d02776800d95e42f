/** One stream at one condition: air, temperature, margin, drag. */
import { requireAbove } from './check.ts';
import { slipstreamPressure } from './coolingAir.ts';
import { type CoolingDrag, coolingDrag } from './coolingDrag.ts';
import { type CoolingFlow, coolingFlow } from './coolingFlow.ts';
import type { CoolingCondition, CoolingStream } from './coolingStream.ts';
import { dynamicPressure } from './dragPolar.ts';
import { exchangerTemperature } from './exchangerTemperature.ts';

/**
 * noAirflow: nothing drives the air, no temperature can be given.
 * mostlySlipstream: the propeller drives more of it than the airspeed (ground idle, run-up): an indication only.
 */
export type CoolingFlag = 'noAirflow' | 'mostlySlipstream';

export interface CoolingResult {
  readonly flow: CoolingFlow;
  /** Steady temperature of what the limit is for; undefined without airflow [K] */
  readonly temperature: number | undefined;
  /** Limit less temperature, below 0 when it is exceeded; undefined without airflow [K] */
  readonly margin: number | undefined;
  readonly drag: CoolingDrag;
  readonly flags: readonly CoolingFlag[];
}

/**
 * Cooling of a stream in steady state at a condition.
 * @param stream
 * @param condition
 * @returns what `CoolingResult` says
 * @throws RangeError when a value is outside its range
 * @source see `coolingFlow.ts`, `exchangerTemperature.ts`, `coolingDrag.ts`
 */
export function coolingResult(stream: CoolingStream, condition: CoolingCondition): CoolingResult {
  requireAbove('limit', stream.limit, 0, 'K');
  const flow = coolingFlow(stream, stream.core, condition);
  const temperature = flow.airflow > 0 ? exchangerTemperature(stream, condition, flow.airflow) : undefined;
  return {
    flow,
    temperature,
    margin: temperature === undefined ? undefined : stream.limit - temperature,
    drag: coolingDrag(stream, condition, flow),
    flags: flagsOf(stream, condition, flow),
  };
}

function flagsOf(stream: CoolingStream, condition: CoolingCondition, flow: CoolingFlow): CoolingFlag[] {
  if (flow.airflow === 0) return ['noAirflow'];
  const slipstream = slipstreamPressure(stream.slipstreamShare, condition.thrust, condition.discArea);
  return slipstream > dynamicPressure(condition.trueAirspeed, flow.density) ? ['mostlySlipstream'] : [];
}
