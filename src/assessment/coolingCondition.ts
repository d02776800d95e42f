import type { Air, AircraftInFlight } from '../engineering/aircraftInFlight.ts';
import type { CoolingCondition } from '../engineering/coolingStream.ts';
import { discArea, propellerThrust } from '../engineering/propeller.ts';

/** What engine and air do at a power and a speed: steady, rich mixture, the propeller's thrust behind it. */
export function coolingConditionOf(
  aircraft: AircraftInFlight,
  heatingValue: number,
  air: Air,
  trueAirspeed: number,
  shaftPower: number,
  engineSpeedRatio = aircraft.shaftSpeedFraction(trueAirspeed),
): CoolingCondition {
  const { propellerDiameter } = aircraft;
  const efficiency = aircraft.propellerEfficiency(trueAirspeed);
  return {
    shaftPower,
    // Asked for only by a stream whose heat is a share of it: an engine without fuel points may still be cooled.
    get fuelPower() {
      return aircraft.fuelFlow(shaftPower, 'rich') * heatingValue;
    },
    engineSpeedRatio,
    trueAirspeed,
    pressureAltitude: air.pressureAltitude,
    outsideAirTemperature: air.temperature,
    thrust: propellerThrust(shaftPower, trueAirspeed, propellerDiameter, air.density, efficiency),
    discArea: discArea(propellerDiameter),
  };
}
