/** Trade units in SI, exact by definition (the horsepower of 550 ft·lbf/s to its last digit): NIST SP 811. Not from src/units.ts. */
export const inch = 0.0254; // m
export const foot = 0.3048; // m
export const knot = 1852 / 3600; // m/s
export const pound = 0.45359237; // kg
export const poundForce = 4.4482216152605; // N
export const horsepower = 745.69987158227; // W
export const poundPerHorsepowerHour = pound / (horsepower * 3600); // kg/J
