/** Aircraft that several flight tests fly. */
import { densityRatio, standardTemperature } from '../../src/engineering/air.ts';
import type { AircraftInFlight } from '../../src/engineering/aircraftInFlight.ts';
import { propellerEfficiency } from '../../src/engineering/propellerEfficiency.ts';
import { foot, horsepower, pound } from './tradeUnits.ts';

/**
 * CP-1, the propeller airplane of Anderson, Introduction to Flight, chapter 6: 2,950 lb, 174 ft², span 35.8 ft,
 * 230 hp, η 0.8, C_D0 0.025, e 0.8, power proportional to density (all read in a Scilab companion of the book).
 * Anderson has no actuator disc: one of 1 km across gives its thrust η P/V to a millionth.
 */
export const textbookAirplane: AircraftInFlight = {
  wingArea: 174 * foot ** 2,
  dragPolar: { zeroLiftDragCoefficient: 0.025, aspectRatio: 35.8 ** 2 / 174, spanEfficiency: 0.8 },
  maximumLiftCoefficient: 2, // the book's curves go on below the stall; this one keeps out of their way
  propellerDiameter: 1000,
  propellerEfficiency: () => 0.8,
  shaftSpeedFraction: () => 1,
  fullThrottlePower: (_, pressureAltitude) => 230 * horsepower * densityRatio(pressureAltitude),
  maximumContinuousPower: 230 * horsepower,
  takeoffPowerTime: Number.POSITIVE_INFINITY,
  fuelFlow: (shaftPower) => shaftPower * 7.6e-8,
};
export const textbookMass = 2950 * pound;

const efficiency = (trueAirspeed: number) =>
  propellerEfficiency({ static: 0.42, climb: 0.76, cruise: 0.82 }, 38, 70)(trueAirspeed);

/** An invented four-seater with takeoff power for five minutes. */
export const fourSeater: AircraftInFlight = {
  wingArea: 14,
  dragPolar: { zeroLiftDragCoefficient: 0.027, aspectRatio: 7.2, spanEfficiency: 0.65 },
  maximumLiftCoefficient: 1.45,
  propellerDiameter: 1.9,
  propellerEfficiency: (trueAirspeed) => efficiency(trueAirspeed).value,
  shaftSpeedFraction: () => 1,
  fullThrottlePower: (rating, pressureAltitude, temperature) =>
    (rating === 'takeoff' ? 135e3 : 120e3) *
    densityRatio(pressureAltitude) *
    Math.sqrt(standardTemperature(pressureAltitude) / temperature),
  maximumContinuousPower: 120e3,
  takeoffPowerTime: 300,
  fuelFlow: (shaftPower, mixture) => shaftPower * (mixture === 'rich' ? 8.4e-8 : 7.2e-8),
};
export const fourSeaterMass = 1100;
