/** Sizes of the units of src/units.ts. */
import { type QuantityKind, standardGravity, toSi } from '../../../src/units.ts';
import type { PublishedValue, Topic } from '../publishedValue.ts';

const nist = 'NIST SP 811 (2008), appendix B.8';

/** A factor printed to seven digits: half of the last one. */
function printed(what: string, expected: number, compute: () => number, note?: string): PublishedValue {
  const lastDigit = 10 ** (Math.floor(Math.log10(expected)) - 6);
  return {
    what,
    source: nist,
    status: 'secondary',
    expected,
    tolerance: 0.5001 * lastDigit,
    ...(note === undefined ? {} : { note }),
    compute,
  };
}
const one = (kind: QuantityKind, unit: string, what: string, expected: number, note?: string) =>
  printed(`${what} (${kind}, ${unit})`, expected, () => toSi(kind, 1, unit), note);

function exact(what: string, source: string, expected: number, compute: () => number): PublishedValue {
  return { what, source, status: 'from memory', expected, tolerance: { relative: 1e-13 }, compute };
}

const yardAndPound = 'International Yard and Pound Agreement 1959';
const si = 'SI Brochure, 9th edition';
const fahrenheitScale = 'NIST SP 811 (2008), appendix B.8: (t/°F + 459.67)/1.8';

export const units: Topic = {
  topic: 'units',
  values: [
    one('mass', 'lb', 'pound in kg', 4.535924e-1),
    one('length', 'in', 'inch in m', 2.54e-2),
    one('length', 'ft', 'foot in m', 3.048e-1),
    one('height', 'ft', 'foot in m', 3.048e-1),
    one('distance', 'mi', 'mile in m', 1.609344e3),
    one('distance', 'nmi', 'nautical mile in m', 1.852e3),
    one('area', 'ft²', 'square foot in m²', 9.290304e-2),
    one('openingArea', 'in²', 'square inch in m²', 6.4516e-4),
    one('volume', 'US gal', 'US gallon in m³', 3.785412e-3),
    one('density', 'lb/US gal', 'pound per gallon in kg/m³', 1.198264e2),
    one('power', 'hp', 'horsepower of 550 ft·lbf/s in W', 7.456999e2),
    one('power', 'PS', 'metric horsepower in W', 7.354988e2),
    one('speed', 'kt', 'knot in m/s', 5.144444e-1),
    one('speed', 'mph', 'mile per hour in m/s', 4.4704e-1),
    one('speed', 'km/h', 'kilometre per hour in m/s', 2.777778e-1),
    one('climb', 'ft/min', 'foot per minute in m/s', 5.08e-3),
    one('bsfc', 'lb/hp·h', 'pound per horsepower hour in kg/J', 1.689659e-7),
    printed('gallon per minute in m³/s (fuelFlow, US gal/h)', 6.30902e-5, () =>
      toSi('fuelFlow', 60, 'US gal/h'),
    ),
    one('massFlow', 'lb/min', 'pound per minute in kg/s', 7.559873e-3),
    one('massFlow', 'lb/h', 'pound per hour in kg/s', 1.259979e-4),
    printed('°F as a difference in K (temperatureDifference, °F)', 5.555556e-1, () =>
      toSi('temperatureDifference', 1, '°F'),
    ),
    one('pressure', 'inH2O', 'inch of water, conventional, in Pa', 2.490889e2, 'at 60 °F it is 248.84'),
    one('pressure', 'inHg', 'inch of mercury, conventional, in Pa', 3.386389e3, 'at 60 °F it is 3,376.85'),
    one('pressure', 'psi', 'pound-force per square inch in Pa', 6.894757e3),
    printed('Btu(IT) per hour in W (heatFlow, Btu/min)', 2.930711e-1, () =>
      toSi('heatFlow', 1 / 60, 'Btu/min'),
    ),
    one('force', 'lbf', 'pound-force in N', 4.448222),
    one('torque', 'lbf·ft', 'pound-force foot in N·m', 1.355818),
    one('inertia', 'lb·ft²', 'pound foot squared in kg·m²', 4.214011e-2),
    one('energyPerMass', 'Btu/lb', 'Btu(IT) per pound in J/kg', 2.326e3),
    one('charge', 'Ah', 'ampere hour in C', 3.6e3),
    one('time', 'h', 'hour in s', 3.6e3),
    exact('pound in kg', yardAndPound, 0.45359237, () => toSi('mass', 1, 'lb')),
    exact('inch in m', yardAndPound, 0.0254, () => toSi('length', 1, 'in')),
    exact(
      'US gallon of 231 in³ in litres',
      'NIST Handbook 44, appendix C',
      3.785411784,
      () => toSi('volume', 1, 'US gal') / 0.001,
    ),
    exact('standard gravity in m/s²', '3rd CGPM (1901)', 9.80665, () => standardGravity),
    exact('ice point in K', si, 273.15, () => toSi('temperature', 0, '°C')),
    exact('boiling point of water of the Fahrenheit scale, 212 °F, in K', fahrenheitScale, 373.15, () =>
      toSi('temperature', 212, '°F'),
    ),
    exact('−40 is the same in °F and °C, in K', fahrenheitScale, 233.15, () =>
      toSi('temperature', -40, '°F'),
    ),
    {
      what: '1 lb/hp·h in g/kWh',
      source: 'encyclopedia, brake-specific fuel consumption',
      status: 'read',
      expected: 608.277,
      tolerance: 0.0005,
      compute: () => toSi('bsfc', 1, 'lb/hp·h') / toSi('bsfc', 1, 'g/kWh'),
    },
    {
      what: '1 kW·h in hp·h',
      source: 'FAO, appendix A, conversion tables',
      status: 'read',
      expected: 1.341,
      tolerance: 0.0005,
      compute: () => toSi('power', 1, 'kW') / toSi('power', 1, 'hp'),
    },
  ],
};
