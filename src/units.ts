/**
 * Units: the only place where numbers change unit.
 *
 * Inside the engineering code every quantity is SI. A table or an argument names its unit; `toSi` and `fromSi` convert
 * at the edge. A temperature and a temperature difference are two kinds: 10 °C is 283.15 K, a rise of 10 °C is 10 K.
 * @source exact factors: NIST SP 811 (2008), appendix B; inHg and inH2O are the conventional values (mercury
 * 13,595.1 kg/m³, water 1,000 kg/m³ under standard gravity), other tables differ in the fourth digit
 */

const pound = 0.45359237; // kg, exact
const inch = 0.0254; // m, exact
const foot = 12 * inch;
const gallon = 231 * inch ** 3; // US gallon, exact
export const hour = 3600; // s
const nauticalMile = 1852; // m, exact
const statuteMile = 5280 * foot;
export const standardGravity = 9.80665; // m/s², exact by definition
const poundForce = pound * standardGravity;
export const horsepower = 550 * foot * poundForce; // W, 550 ft·lbf/s
const metricHorsepower = 75 * standardGravity; // W, 75 kgf·m/s
const btu = 1055.05585262; // J, International Table

/** The kinds of quantity and, for each, the units accepted in a cell with their size in SI. */
const factors = {
  mass: { lb: pound, kg: 1 },
  length: { in: inch, mm: 0.001, cm: 0.01, m: 1, ft: foot },
  height: { ft: foot, m: 1 },
  distance: { nmi: nauticalMile, km: 1000, mi: statuteMile, m: 1 },
  area: { 'ft²': foot ** 2, 'm²': 1 },
  openingArea: { 'in²': inch ** 2, 'cm²': 1e-4, 'm²': 1 },
  volume: { 'US gal': gallon, L: 0.001 },
  density: { 'lb/US gal': pound / gallon, 'kg/L': 1000, 'kg/m³': 1 },
  moment: { lb·in: pound * inch, kg·mm: 0.001, kg·m: 1, kg·cm: 0.01 },
  power: { hp: horsepower, kW: 1000, PS: metricHorsepower },
  speed: { kt: nauticalMile / hour, mph: statuteMile / hour, 'km/h': 1000 / hour, 'm/s': 1 },
  climb: { 'ft/min': foot / 60, 'm/s': 1 },
  rotation: { rpm: 1 / 60 },
  bsfc: { 'lb/hp·h': pound / (horsepower * hour), 'g/kWh': 0.001 / (1000 * hour) },
  fuelFlow: { 'US gal/h': gallon / hour, 'L/h': 0.001 / hour },
  massFlow: { 'lb/min': pound / 60, 'kg/s': 1, 'lb/h': pound / hour, 'kg/h': 1 / hour },
  temperatureDifference: { '°C': 1, K: 1, '°F': 5 / 9 },
  pressure: { inH2O: 249.08891, Pa: 1, hPa: 100, inHg: 3386.38864, psi: poundForce / inch ** 2 },
  heatFlow: { 'Btu/min': btu / 60, kW: 1000, W: 1 },
  force: { lbf: poundForce, N: 1 },
  torque: { lbf·ft: poundForce * foot, N·m: 1 },
  inertia: { 'kg·m²': 1, 'lb·ft²': pound * foot ** 2 },
  time: { h: hour, min: 60, s: 1 },
  days: { weeks: 7, days: 1 },
  energyPerMass: { 'Btu/lb': btu / pound, 'MJ/kg': 1e6 },
  current: { A: 1 },
  charge: { Ah: hour },
  voltage: { V: 1 },
  fraction: { '%': 0.01, fraction: 1 },
  number: { '': 1 },
} as const;

/** Temperatures need an offset as well as a factor: kelvin = (value + offset) × factor. */
const temperatures = {
  '°C': { offset: 273.15, factor: 1 },
  '°F': { offset: 459.67, factor: 5 / 9 },
  K: { offset: 0, factor: 1 },
} as const;

export type QuantityKind = keyof typeof factors | 'temperature';

/** What else people call a unit, as `spelling` leaves it; case, dots, hyphens, brackets and "lbs", "hr", "gal" need no entry. */
const otherNames: Readonly<Record<string, readonly string[]>> = {
  lb: ['lbm', 'pound', 'pounds'],
  kg: ['kgs', 'kilogram', 'kilograms'],
  in: ['inch', 'inches', '"'],
  ft: ['foot', 'feet'],
  nmi: ['nm', 'nauticalmile', 'nauticalmiles'],
  mi: ['mile', 'miles', 'statutemiles'],
  'ft²': ['sqft'],
  'm²': ['sqm'],
  'in²': ['sqin'],
  'cm²': ['sqcm'],
  lb·in: ['inlb'],
  hp: ['horsepower'],
  PS: ['cv', 'ch', 'metrichp'],
  kt: ['kts', 'kn', 'knot', 'knots'],
  'km/h': ['kmh', 'kph'],
  'ft/min': ['fpm'],
  rpm: ['rev/min', '1/min'],
  'lb/hp·h': ['lb/hp/h'],
  'g/kWh': ['g/kw/h'],
  'US gal/h': ['gph'],
  'L/h': ['lph'],
  '°C': ['c', 'degc', 'celsius'],
  '°F': ['f', 'degf', 'fahrenheit'],
  hPa: ['mbar', 'mb'],
  psi: ['lb/in2', 'lbf/in2'],
  lbf·ft: ['lbft', 'ftlb', 'ftlbf'],
  h: ['hour', 'hours'],
  min: ['mins', 'minute', 'minutes'],
  s: ['sec', 'second', 'seconds'],
  weeks: ['week', 'wk'],
  days: ['day', 'd'],
  A: ['amp', 'amps', 'ampere'],
  V: ['volt', 'volts'],
  '%': ['percent', 'pct'],
};

/** A unit as typed, reduced to what tells units of one kind apart. */
function spelling(text: string): string {
  return text
    .toLowerCase()
    .replace(/[²₂]/g, '2')
    .replace(/³/g, '3')
    .replace(/[º˚]/g, '°') // the ordinal sign and the ring, typed for the degree sign
    .replace(/[\s·⋅*^().-]/g, '')
    .replace(/lbs/g, 'lb')
    .replace(/bhp/g, 'hp')
    .replace(/hrs?$/, 'h')
    .replace(/lit(er|re)s?/, 'l')
    .replace(/gallons?/, 'gal')
    .replace(/(^|\/)(usg|gal)(?=$|\/)/, '$1usgal');
}

interface Scale {
  readonly offset: number;
  readonly factor: number;
}

function owned<T>(record: Readonly<Record<string, T>>, key: string): T | undefined {
  return Object.prototype.hasOwnProperty.call(record, key) ? record[key] : undefined;
}

function scaleOf(kind: QuantityKind, unit: string): Scale {
  if (kind === 'temperature') {
    const scale = owned<Scale>(temperatures, unit);
    if (scale) return scale;
  } else {
    const factor = owned<number>(factors[kind], unit);
    if (factor !== undefined) return { offset: 0, factor };
  }
  throw new RangeError(
    `unit of ${kind} must be ${unitsOf(kind).join(', ')}, got ${unit === '' ? 'none' : unit}`,
  );
}

/** The units accepted for one kind of quantity, the customary one first. */
export function unitsOf(kind: QuantityKind): string[] {
  return Object.keys(kind === 'temperature' ? temperatures : factors[kind]);
}

/** The unit a typed text means for one kind of quantity, whatever its case or spelling; undefined when it means none. */
export function unitNamed(kind: QuantityKind, text: string): string | undefined {
  const typed = spelling(text);
  return unitsOf(kind).find(
    (unit) => spelling(unit) === typed || (owned(otherNames, unit) ?? []).includes(typed),
  );
}

/**
 * A number in the given unit, in SI: (value + offset) × factor.
 * @throws RangeError when the unit is not one of the kind's
 */
export function toSi(kind: QuantityKind, value: number, unit: string): number {
  const { offset, factor } = scaleOf(kind, unit);
  return (value + offset) * factor;
}

/**
 * An SI number in the given unit.
 * @throws RangeError when the unit is not one of the kind's
 */
export function fromSi(kind: QuantityKind, value: number, unit: string): number {
  const { offset, factor } = scaleOf(kind, unit);
  return value / factor - offset;
}
