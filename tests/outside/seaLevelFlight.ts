/** 50 m/s in standard air at sea level, an engine that gives no heat, no slipstream. */
import type { CoolingCondition } from '../../src/engineering/coolingStream.ts';

export const seaLevelFlight: CoolingCondition = {
  shaftPower: 0,
  trueAirspeed: 50,
  pressureAltitude: 0,
  outsideAirTemperature: 288.15,
  thrust: 0,
  discArea: 1,
};
