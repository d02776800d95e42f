/** How results are shown: units as chosen, rounded to a step, digits and signs in words. By hand. */
import { describe, expect, test } from 'vitest';
import { type Display, displayIn, numberText, roundedTo, unitChoices } from '../../src/assessment/display.ts';
import type { Airframe } from '../../src/tables/airframe.ts';

const customary = displayIn(
  { weight: 'lb', length: 'in', fuel: 'US gal', power: 'hp', speed: 'kt', height: 'ft' },
  'USD',
);
const metric = displayIn(
  { weight: 'kg', length: 'mm', fuel: 'L', power: 'kW', speed: 'km/h', height: 'm' },
  'EUR',
);

describe('rounding', () => {
  test.each([
    [1234.56, 0.1, 1234.6],
    [0.30000000000000004, 0.1, 0.3],
    [1234, 50, 1250],
    [1224, 50, 1200],
    [-0.04, 0.1, 0],
    [1.2345, 0.001, 1.235],
  ])('%d to %d', (value, step, expected) => {
    expect(roundedTo(value, step)).toBe(expected);
    expect(Object.is(roundedTo(value, step), -0)).toBe(false);
  });

  test('down and up where only that stays true', () => {
    expect(roundedTo(1.29, 0.1, 'floor')).toBe(1.2);
    expect(roundedTo(1.21, 0.1, 'ceil')).toBe(1.3);
  });

  test('in words: thousands apart, a true minus, as many decimals as the step has', () => {
    expect(numberText(1234567.891, 0.01)).toBe('1,234,567.89');
    expect(numberText(-1234.5, 0.1)).toBe('−1,234.5');
    expect(numberText(999, 1)).toBe('999');
    expect(numberText(1250, 50)).toBe('1,250');
    expect(numberText(0, 0.1)).toBe('0.0');
    expect(numberText(1234.5678, 0.0001)).toBe('1,234.5678'); // no comma behind the point
  });
});

/** A kind, an SI value, and how it is shown in customary and in metric units. */
const shown = [
  ['weight', 100, [220.5, 'lb'], [100, 'kg']],
  ['payload', 100, [220, 'lb'], [100, 'kg']],
  ['arm', 2.0004, [78.8, 'in'], [2000, 'mm']],
  ['moment', 100, [8680, 'lb·in'], [100, 'kg·m']],
  ['fuel', 0.1004, [26.5, 'US gal'], [100, 'L']],
  ['fuelFlow', 1e-5, [9.5, 'US gal/h'], [36, 'L/h']],
  ['bsfc', 7.5e-8, [0.444, 'lb/hp·h'], [270, 'g/kWh']],
  ['power', 1e5, [134, 'hp'], [100, 'kW']],
  ['speed', 50, [97, 'kt'], [180, 'km/h']],
  ['distance', 1e6, [540, 'nmi'], [1000, 'km']],
  ['height', 2500, [8200, 'ft'], [2500, 'm']],
  ['runway', 251, [820, 'ft'], [250, 'm']],
  ['climb', 5, [980, 'ft/min'], [5, 'm/s']],
  ['engineTemperature', 373.15, [212, '°F'], [100, '°C']],
  ['temperatureMargin', 10, [18, '°F'], [10, '°C']],
  ['oat', 288.15, [15, '°C'], [15, '°C']],
  ['hours', 5400, [1.5, 'h'], [1.5, 'h']],
  ['wholeHours', 5400, [2, 'h'], [2, 'h']],
  ['minutes', 90, [2, 'min'], [2, 'min']],
  ['percent', 0.256, [26, '%'], [26, '%']],
  ['torque', 100, [74, 'lbf·ft'], [100, 'N·m']],
  ['force', 1000, [225, 'lbf'], [1000, 'N']],
  ['opening', 0.01, [16, 'in²'], [100, 'cm²']],
  ['dragArea', 0.1004, [1.08, 'ft²'], [0.1, 'm²']],
  ['pressure', 1004, [4, 'inH2O'], [1000, 'Pa']],
  ['heatFlow', 50_040, [2850, 'Btu/min'], [50, 'kW']],
  ['massFlow', 0.5, [66, 'lb/min'], [0.5, 'kg/s']],
  ['current', 12.4, [12, 'A'], [12, 'A']],
  ['rpm', 45.05, [2700, 'rpm'], [2700, 'rpm']],
  ['ratio', 0.756, [0.76, ''], [0.76, '']],
  ['count', 3, [3, ''], [3, '']],
  ['money', 1234.4, [1234, 'USD'], [1234, 'EUR']],
  ['moneyPerHour', 99.6, [100, 'USD/h'], [100, 'EUR/h']],
] as const;

describe('each kind in its unit and to its step', () => {
  const both = (display: Display, kind: (typeof shown)[number][0], value: number) => [
    display.cell(kind, value),
    display.unit(kind),
  ];

  test.each(shown)('%s', (kind, value, inCustomary, inMetric) => {
    expect(both(customary, kind, value)).toEqual(inCustomary);
    expect(both(metric, kind, value)).toEqual(inMetric);
  });

  test('in metres arms have millimetres, statute miles go with mph', () => {
    const other = displayIn(
      { weight: 'kg', length: 'm', fuel: 'L', power: 'PS', speed: 'mph', height: 'ft' },
      'EUR',
    );
    expect(other.text('arm', 2.0004)).toBe('2.000 m');
    expect(other.text('distance', 1609.344)).toBe('1 mi');
    expect(other.text('power', 73_549.875)).toBe('100 PS');
    const centimetres = displayIn({ ...other.units, length: 'cm' }, 'EUR');
    expect(centimetres.text('arm', 2.0004)).toBe('200.0 cm');
  });
});

test('nothing is an empty cell; a point is ten times as fine; words have the unit behind', () => {
  expect(customary.cell('weight', undefined)).toBeNull();
  expect(customary.point('weight', 100)).toBe(220.46);
  expect(customary.number('weight', -100)).toBe('−220.5');
  expect(customary.text('weight', 100)).toBe('220.5 lb');
  expect(customary.text('weight', 100, 'floor')).toBe('220.4 lb');
  expect(customary.text('weight', 100.001, 'ceil')).toBe('220.5 lb');
  expect(customary.text('count', 3)).toBe('3');
  expect(customary.text('money', 1234)).toBe('1,234 USD');
});

test('the units that an airframe table asks for', () => {
  const airframe = {
    weightUnit: 'kg',
    lengthUnit: 'cm',
    fuelUnit: 'L',
    powerUnit: 'PS',
    speedUnit: 'mph',
    heightUnit: 'm',
  } as Airframe;
  expect(unitChoices(airframe)).toEqual({
    weight: 'kg',
    length: 'cm',
    fuel: 'L',
    power: 'PS',
    speed: 'mph',
    height: 'm',
  });
});
