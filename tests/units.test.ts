/** Conversions that follow from their definitions, spellings, refusals. Published factors stand in tests/outside. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fromSi, type QuantityKind, standardGravity, toSi, unitNamed, unitsOf } from '../src/units.ts';
import { unitNames } from './outside/unitNames.ts';

const kinds = [...Object.keys(unitNames), 'temperature'] as QuantityKind[];
const everyUnit = kinds.flatMap((kind) => unitsOf(kind).map((unit) => ({ kind, unit })));

describe('factors', () => {
  /** Read: GNU Units 2.22 as run for this project; the units that the library in tests/outside does not know. */
  test.each<[QuantityKind, string, number, number]>([
    ['distance', 'nmi', 1852, 12], // by definition, not of that run
    ['speed', 'kt', 1852 / 3600, 12],
    ['pressure', 'inHg', 3386.38864034, 9], // kept to the nine digits of the conventional value
    ['pressure', 'inH2O', 249.08891, 12],
  ])('%s: 1 %s is %d in SI, to %d digits', (kind, unit, expected, digits) => {
    expect(toSi(kind, 1, unit).toPrecision(digits)).toBe(expected.toPrecision(digits));
  });

  test('the Btu is that of the International Table: 1055.05585262 J (GNU Units)', () => {
    expect(toSi('heatFlow', 60, 'Btu/min')).toBeCloseTo(1055.05585262, 8);
  });

  test('metric and counting factors follow from their names', () => {
    expect(toSi('length', 25.4, 'mm')).toBeCloseTo(0.0254, 15);
    expect(toSi('length', 2.54, 'cm')).toBeCloseTo(0.0254, 15);
    expect(toSi('distance', 1.5, 'km')).toBe(1500);
    expect(toSi('openingArea', 1, 'cm²')).toBe(0.0001);
    expect(toSi('volume', 100, 'L')).toBeCloseTo(0.1, 15);
    expect(toSi('density', 0.72, 'kg/L')).toBe(720);
    expect(toSi('moment', 2500, 'kg·mm')).toBeCloseTo(2.5, 15);
    expect(toSi('moment', 250, 'kg·cm')).toBeCloseTo(2.5, 15);
    expect(toSi('moment', 1, 'lb·in')).toBeCloseTo(0.45359237 * 0.0254, 15);
    expect(toSi('power', 75, 'kW')).toBe(75_000);
    expect(toSi('power', 1, 'PS')).toBeCloseTo(735.49875, 9); // 75 kgf·m/s × 9.80665 m/s²
    expect(toSi('rotation', 2700, 'rpm')).toBe(45); // revolutions per second
    expect(toSi('climb', 60, 'ft/min')).toBeCloseTo(0.3048, 15);
    expect(toSi('fuelFlow', 3600, 'L/h')).toBeCloseTo(0.001, 15);
    expect(toSi('bsfc', 3600, 'g/kWh')).toBeCloseTo(1e-6, 18); // 3.6 kg for 3.6 MJ
    expect(toSi('time', 1.5, 'h')).toBe(5400);
    expect(toSi('time', 30, 'min')).toBe(1800);
    expect(toSi('days', 2, 'weeks')).toBe(14); // days, not seconds
    expect(toSi('energyPerMass', 43.5, 'MJ/kg')).toBe(43.5e6);
    expect(toSi('fraction', 75, '%')).toBe(0.75);
    expect(standardGravity).toBe(9.80665); // m/s², exact by definition
  });
});

describe('temperatures and temperature differences', () => {
  /** Fixed points by definition: 0 °C is 273.15 K, 32 °F is 0 °C, 212 °F is 100 °C, −40 is the same in both. */
  test.each([
    [0, '°C', 273.15],
    [32, '°F', 273.15],
    [212, '°F', 373.15],
    [-40, '°C', 233.15],
    [-40, '°F', 233.15],
    [300, 'K', 300],
  ])('%d %s is %d K', (value, unit, kelvin) => {
    expect(toSi('temperature', value, unit)).toBeCloseTo(kelvin, 10);
    expect(fromSi('temperature', kelvin, unit)).toBeCloseTo(value, 10);
  });

  test('a rise of 18 °F is one of 10 K, and 10 °C is no rise of 283 K', () => {
    expect(toSi('temperatureDifference', 18, '°F')).toBeCloseTo(10, 12);
    expect(toSi('temperatureDifference', 10, '°C')).toBe(10);
    expect(toSi('temperature', 10, '°C')).toBeCloseTo(283.15, 10);
    expect(fromSi('temperatureDifference', 10, '°F')).toBeCloseTo(18, 12);
  });
});

describe('spellings', () => {
  test.each<[QuantityKind, string, string]>([
    ['mass', 'LBS', 'lb'],
    ['mass', ' lb. ', 'lb'],
    ['mass', 'Pounds', 'lb'],
    ['mass', 'KG', 'kg'],
    ['length', 'in.', 'in'],
    ['length', 'inches', 'in'],
    ['length', 'MM', 'mm'],
    ['height', 'feet', 'ft'],
    ['distance', 'NM', 'nmi'],
    ['distance', 'nautical miles', 'nmi'],
    ['area', 'sq ft', 'ft²'],
    ['area', 'ft^2', 'ft²'],
    ['area', 'm2', 'm²'],
    ['openingArea', 'sq. in.', 'in²'],
    ['volume', 'gal', 'US gal'],
    ['volume', 'US gallons', 'US gal'],
    ['volume', 'USG', 'US gal'],
    ['volume', 'Litres', 'L'],
    ['volume', 'liter', 'L'],
    ['volume', 'l', 'L'],
    ['density', 'lb/gal', 'lb/US gal'],
    ['density', 'lbs/US gallon', 'lb/US gal'],
    ['density', 'kg/l', 'kg/L'],
    ['density', 'kg/m3', 'kg/m³'],
    ['density', 'kg/m^3', 'kg/m³'],
    ['moment', 'in-lb', 'lb·in'],
    ['moment', 'lb-in', 'lb·in'],
    ['moment', 'lb in', 'lb·in'],
    ['moment', 'kg m', 'kg·m'],
    ['moment', 'kg*mm', 'kg·mm'],
    ['power', 'BHP', 'hp'],
    ['power', 'kw', 'kW'],
    ['power', 'ps', 'PS'],
    ['power', 'CV', 'PS'],
    ['speed', 'knots', 'kt'],
    ['speed', 'KTS', 'kt'],
    ['speed', 'kph', 'km/h'],
    ['speed', 'km/hr', 'km/h'],
    ['climb', 'fpm', 'ft/min'],
    ['rotation', 'RPM', 'rpm'],
    ['bsfc', 'lb/hp/h', 'lb/hp·h'],
    ['bsfc', 'lb/hp-hr', 'lb/hp·h'],
    ['bsfc', 'lbs/(bhp·h)', 'lb/hp·h'],
    ['bsfc', 'g/kW·h', 'g/kWh'],
    ['bsfc', 'g/(kW h)', 'g/kWh'],
    ['fuelFlow', 'GPH', 'US gal/h'],
    ['fuelFlow', 'gal/hr', 'US gal/h'],
    ['fuelFlow', 'USG/h', 'US gal/h'],
    ['fuelFlow', 'l/h', 'L/h'],
    ['massFlow', 'lbs/min', 'lb/min'],
    ['temperature', 'C', '°C'],
    ['temperature', 'deg F', '°F'],
    ['temperature', 'ºC', '°C'], // the ordinal sign
    ['temperature', '˚F', '°F'], // the ring
    ['temperatureDifference', 'f', '°F'],
    ['pressure', 'in H₂O', 'inH2O'],
    ['pressure', 'in. Hg', 'inHg'],
    ['pressure', 'mbar', 'hPa'],
    ['pressure', 'PSI', 'psi'],
    ['heatFlow', 'BTU/min', 'Btu/min'],
    ['torque', 'ft-lb', 'lbf·ft'],
    ['torque', 'lb·ft', 'lbf·ft'],
    ['torque', 'Nm', 'N·m'],
    ['inertia', 'kg m²', 'kg·m²'],
    ['inertia', 'lb-ft2', 'lb·ft²'],
    ['time', 'hrs', 'h'],
    ['time', 'Minutes', 'min'],
    ['days', 'week', 'weeks'],
    ['charge', 'A·h', 'Ah'],
    ['current', 'amps', 'A'],
    ['fraction', 'percent', '%'],
    ['mass', 'lb\u00a0', 'lb'], // no-break space
    ['volume', 'US\u202fgal', 'US gal'], // narrow no-break space
  ])('%s: "%s" is %s', (kind, typed, unit) => {
    expect(unitNamed(kind, typed)).toBe(unit);
  });

  test('every unit is known by its own name, in capitals too', () => {
    for (const { kind, unit } of everyUnit) expect(unitNamed(kind, unit)).toBe(unit);
    for (const { kind, unit } of everyUnit) expect(unitNamed(kind, unit.toUpperCase())).toBe(unit);
  });

  test.each<[QuantityKind, string]>([
    ['mass', 'st'],
    ['mass', 'in'],
    ['mass', ''],
    ['mass', '-'],
    ['length', 'kg'],
    ['volume', 'imp gal'],
    ['volume', 'UK gal'],
    ['bsfc', 'lb/h'],
    ['temperature', 'R'],
    ['power', 'PSI'],
    ['speed', 'KIAS'], // more than a unit: which airspeed it is
    ['fuelFlow', 'lb/h'],
    ['mass', 'toString'],
    ['mass', '__proto__'],
    ['length', 'constructor'],
  ])('%s: "%s" names no unit', (kind, typed) => {
    expect(unitNamed(kind, typed)).toBeUndefined();
  });
});

describe('refusal', () => {
  test.each([toSi, fromSi])('an unknown unit is refused with the units there are', (convert) => {
    expect(() => convert('mass', 1, 'stone')).toThrow(
      new RangeError('unit of mass must be lb, kg, got stone'),
    );
    expect(() => convert('temperature', 1, '')).toThrow(
      new RangeError('unit of temperature must be °C, °F, K, got none'),
    );
    expect(() => convert('speed', 1, 'toString')).toThrow(RangeError);
  });
});

test('there and back again is the same number, whatever the unit', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...everyUnit),
      fc.double({ min: -1e6, max: 1e6, noNaN: true }),
      ({ kind, unit }, value) => {
        const back = fromSi(kind, toSi(kind, value, unit), unit);
        // an offset of some hundred degrees costs digits of a small number
        expect(Math.abs(back - value)).toBeLessThanOrEqual(1e-15 * Math.max(Math.abs(value), 1000));
      },
    ),
  );
});

test('the greater amount stays the greater in every unit', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...everyUnit),
      fc.double({ min: -1e5, max: 1e5, noNaN: true }),
      fc.double({ min: 1e-3, max: 1e5, noNaN: true }),
      ({ kind, unit }, value, more) => {
        expect(toSi(kind, value + more, unit)).toBeGreaterThan(toSi(kind, value, unit));
      },
    ),
  );
});
