import { measure } from './argument.ts';

/** The units of the formula functions: part of their contract, as the ends of the argument names say. */
export const feet = measure('height', 'ft');
export const celsius = measure('temperature', '°C');
export const fahrenheitDifference = measure('temperatureDifference', '°F');
export const horsepowers = measure('power', 'hp');
export const poundPerHorsepowerHour = measure('bsfc', 'lb/hp·h');
export const poundPerGallon = measure('density', 'lb/US gal');
export const gallons = measure('volume', 'US gal');
export const gallonsPerHour = measure('fuelFlow', 'US gal/h');
export const hours = measure('time', 'h');
export const minutes = measure('time', 'min');
export const pounds = measure('mass', 'lb');
export const inches = measure('length', 'in');
export const knots = measure('speed', 'kt');
export const nauticalMiles = measure('distance', 'nmi');
export const squareFeet = measure('area', 'ft²');
export const squareInches = measure('openingArea', 'in²');
export const rpm = measure('rotation', 'rpm');
export const poundsForce = measure('force', 'lbf');
export const poundForceFeet = measure('torque', 'lbf·ft');
export const btuPerMinute = measure('heatFlow', 'Btu/min');
export const poundsPerMinute = measure('massFlow', 'lb/min');
export const inchesOfWater = measure('pressure', 'inH2O');
export const feetPerMinute = measure('climb', 'ft/min');
export const percent = measure('fraction', '%');

/** An outside air temperature above 60 °C does not occur: the number is in °F. */
export const outsideAir = { measure: celsius, atLeast: -90, atMost: 60, hintBeyond: 'is it in °F?' } as const;

/** Pressure altitudes of the atmosphere model and of light aircraft. */
export const altitude = { measure: feet, atLeast: -2000, atMost: 60_000 } as const;

/** A cell shown as 75 % holds 0.75, which would be three quarters of one per cent. */
export const powerPercent = {
  measure: percent,
  atLeast: 5,
  atMost: 125,
  hintBelow: 'a cell shown as 75 % holds 0.75',
} as const;
