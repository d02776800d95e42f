/** What two general unit programs call the units of src/units.ts, kind by kind. */
import type { QuantityKind } from '../../src/units.ts';

export interface UnitNames {
  /** The SI unit of the kind, as both call it; GNU Units differs in a few */
  readonly si: string;
  readonly gnuSi?: string;
  /** Our unit → theirs; `unitmath` undefined where it knows no such unit or means another */
  readonly units: Readonly<Record<string, { readonly unitmath: string | undefined; readonly gnu: string }>>;
}

const both = (name: string) => ({ unitmath: name, gnu: name });
const names = (unitmath: string | undefined, gnu: string) => ({ unitmath, gnu });

const lengths = { in: names('inch', 'in'), mm: both('mm'), cm: both('cm'), m: both('m'), ft: both('ft') };

/** Temperatures are apart: they have an offset. */
export const unitNames: Readonly<Record<Exclude<QuantityKind, 'temperature'>, UnitNames>> = {
  mass: { si: 'kg', units: { lb: names('lbm', 'lb'), kg: both('kg') } },
  length: { si: 'm', units: lengths },
  height: { si: 'm', units: { ft: lengths.ft, m: lengths.m } },
  distance: {
    si: 'm',
    units: { nmi: names(undefined, 'nmi'), km: both('km'), mi: both('mile'), m: both('m') },
  },
  area: { si: 'm^2', units: { 'ft²': both('ft^2'), 'm²': both('m^2') } },
  openingArea: {
    si: 'm^2',
    units: { 'in²': names('inch^2', 'in^2'), 'cm²': both('cm^2'), 'm²': both('m^2') },
  },
  volume: { si: 'm^3', units: { 'US gal': both('gallon'), L: both('L') } },
  density: {
    si: 'kg/m^3',
    units: { 'lb/US gal': names('lbm/gallon', 'lb/gallon'), 'kg/L': both('kg/L'), 'kg/m³': both('kg/m^3') },
  },
  moment: {
    si: 'kg m',
    units: {
      lb·in: names('lbm inch', 'lb in'),
      kg·mm: both('kg mm'),
      kg·m: both('kg m'),
      kg·cm: both('kg cm'),
    },
  },
  power: {
    si: 'W',
    units: { hp: both('hp'), kW: both('kW'), PS: names(undefined, 'metrichorsepower') },
  },
  speed: {
    si: 'm/s',
    units: {
      kt: names(undefined, 'knot'),
      mph: names('mile/hour', 'mph'),
      'km/h': both('km/hour'),
      'm/s': both('m/s'),
    },
  },
  climb: { si: 'm/s', units: { 'ft/min': both('ft/minute'), 'm/s': both('m/s') } },
  rotation: { si: 'cycle/s', gnuSi: 'rev/s', units: { rpm: names('cycle/minute', 'rpm') } },
  bsfc: {
    si: 'kg/J',
    units: {
      'lb/hp·h': names('lbm/hp hour', 'lb/(hp hour)'),
      'g/kWh': names('g/kW hour', 'g/(kW hour)'),
    },
  },
  fuelFlow: { si: 'm^3/s', units: { 'US gal/h': both('gallon/hour'), 'L/h': both('L/hour') } },
  massFlow: {
    si: 'kg/s',
    units: {
      'lb/min': names('lbm/minute', 'lb/min'),
      'kg/s': both('kg/s'),
      'lb/h': names('lbm/hour', 'lb/hour'),
      'kg/h': both('kg/hour'),
    },
  },
  temperatureDifference: {
    si: 'K',
    units: { '°C': names(undefined, 'degC'), K: both('K'), '°F': names('degR', 'degF') },
  },
  pressure: {
    si: 'Pa',
    units: {
      inH2O: names(undefined, 'inH2O'), // unitmath's is water of 4 °C, 249.082 Pa; ours is the conventional one
      Pa: both('Pa'),
      hPa: both('hPa'),
      inHg: names(undefined, 'inHg'),
      psi: both('psi'),
    },
  },
  heatFlow: {
    si: 'W',
    units: { 'Btu/min': names('BTU/minute', 'btu/min'), kW: both('kW'), W: both('W') },
  },
  force: { si: 'N', units: { lbf: both('lbf'), N: both('N') } },
  torque: { si: 'N m', units: { lbf·ft: both('lbf ft'), N·m: both('N m') } },
  inertia: {
    si: 'kg m^2',
    units: { 'kg·m²': both('kg m^2'), 'lb·ft²': names('lbm ft^2', 'lb ft^2') },
  },
  time: { si: 's', units: { h: both('hour'), min: both('minute'), s: both('s') } },
  days: { si: 'day', units: { weeks: both('week'), days: both('day') } },
  energyPerMass: {
    si: 'J/kg',
    units: { 'Btu/lb': names('BTU/lbm', 'btu/lb'), 'MJ/kg': both('MJ/kg') },
  },
  current: { si: 'A', units: { A: both('A') } },
  charge: { si: 'A s', units: { Ah: names('A hour', 'Ah') } },
  voltage: { si: 'V', units: { V: both('V') } },
  fraction: {
    si: '',
    gnuSi: '1',
    units: { '%': names(undefined, 'percent'), fraction: names(undefined, '1') },
  },
  number: { si: '', gnuSi: '1', units: { '': names(undefined, '1') } },
};

export const namedUnits = (Object.keys(unitNames) as (keyof typeof unitNames)[]).flatMap((kind) =>
  Object.entries(unitNames[kind].units).map(([unit, { unitmath, gnu }]) => ({
    kind,
    unit,
    unitmath,
    gnu,
    si: unitNames[kind].si,
    gnuSi: unitNames[kind].gnuSi ?? unitNames[kind].si,
  })),
);
