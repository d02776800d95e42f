/** What a stream of cooling air costs: the momentum it leaves behind, and leaks. */
import { requireAtLeast, requireBetween } from './check.ts';
import { slipstreamPressure } from './coolingAir.ts';
import type { CoolingFlow } from './coolingFlow.ts';
import type { CoolingCondition, CoolingDuct } from './coolingStream.ts';
import { dynamicPressure } from './dragPolar.ts';

export interface CoolingDrag {
  readonly momentum: number; // N
  readonly leakage: number; // N
}

/**
 * Cooling drag: m (V_s − V_e cos θ) + (C_D S)_leak q.
 *
 * V_e = √(2 (Δp_exit + C_p,e q)/ρ_e): the air's speed once it is back at outside pressure, so that the suction at the exit is
 * not counted as thrust. V_s = √(V² + 2 κT/(Aρ)): the air comes in with the slipstream's share, whose momentum the thrust
 * already has; with V alone it would be counted twice, and a climb would seem to cool for nothing. Hot air leaving fast may
 * make the momentum part negative.
 * @param duct
 * @param condition
 * @param flow from `coolingFlow` at the same condition
 * @returns both parts [N]
 * @throws RangeError when a value is outside its range
 * @source momentum theorem between far ahead and far behind (internal drag); leakage is the package's own figure
 */
export function coolingDrag(duct: CoolingDuct, condition: CoolingCondition, flow: CoolingFlow): CoolingDrag {
  requireAtLeast('leakageDragArea', duct.leakageDragArea, 0, 'm²');
  requireBetween('exitAngle', duct.exitAngle, 0, Math.PI / 2, 'rad');
  const pressure = dynamicPressure(condition.trueAirspeed, flow.density);
  const slipstream = slipstreamPressure(duct.slipstreamShare, condition.thrust, condition.discArea);
  const entering = Math.sqrt((2 * (pressure + slipstream)) / flow.density);
  const expelling = Math.max(0, flow.exitPressureDrop + duct.exitPressureCoefficient * pressure);
  const leaving = Math.sqrt((2 * expelling) / flow.exitDensity);
  return {
    momentum: flow.airflow * (entering - leaving * Math.cos(duct.exitAngle)),
    leakage: duct.leakageDragArea * pressure,
  };
}
