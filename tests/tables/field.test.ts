import { describe, expect, test } from 'vitest';
import type { Cell } from '../../src/tables/cell.ts';
import {
  choice,
  count,
  flag,
  fuelPrice,
  money,
  names,
  quantity,
  ratio,
  term,
  text,
  unitFor,
} from '../../src/tables/field.ts';

const help = '';
const weight = quantity('mass', 'weight', { help, above: 0, atMost: 1000, in: 'lb' });

describe('quantity', () => {
  test('is kept in SI', () => {
    expect(weight.read(100, 'lb')).toEqual({ value: 45.359237 });
    expect(weight.read('100', 'kg')).toEqual({ value: 100 });
  });

  test('says its limits in the unit of the cell', () => {
    expect(weight.read(0, 'lb')).toEqual({ expected: 'a number above 0 lb' });
    expect(weight.read(-2, 'kg')).toEqual({ expected: 'a number above 0 kg' });
    expect(weight.read(1000.5, 'lb')).toEqual({ expected: 'a number of at most 1000 lb' });
    // 1,000 lb is 453.59237 kg
    expect(weight.read(454, 'kg')).toEqual({ expected: 'a number of at most 453.592 kg' });
  });

  test('a limit itself is allowed in any unit', () => {
    expect(weight.read(1000, 'lb')).toEqual({ value: expect.closeTo(453.59237, 9) });
    expect(weight.read(453.59237, 'kg')).toEqual({ value: 453.59237 });
    const altitude = quantity('height', 'altitude', { help, atLeast: -2000, atMost: 40_000, in: 'ft' });
    expect(altitude.read(12_192, 'm')).toEqual({ value: 12_192 }); // 40,000 ft exactly
    expect(altitude.read(-609.6, 'm')).toEqual({ value: -609.6 });
    expect(altitude.read(12_193, 'm')).toEqual({ expected: 'a number of at most 12192 m' });
    expect(altitude.read(-2001, 'ft')).toEqual({ expected: 'a number of at least -2000 ft' });
  });

  test('temperatures are limited as temperatures', () => {
    const oat = quantity('temperature', 'OAT', { help, atLeast: -60, atMost: 60, in: '°C' });
    expect(oat.read(140, '°F')).toEqual({ value: expect.closeTo(333.15, 9) }); // 60 °C
    expect(oat.read(141, '°F')).toEqual({ expected: 'a number of at most 140 °F' });
    expect(oat.read(77, '°C')).toEqual({ expected: 'a number of at most 60 °C' });
  });
});

describe('a percentage that can be two things is refused', () => {
  const setting = quantity('fraction', 'power', { help, above: 0, atMost: 125, in: '%' });
  const slope = quantity('fraction', 'slope', { help, atLeast: -10, atMost: 10, in: '%' });
  const clear = (one: string, other: string) =>
    `a clear percentage: this may be ${one} or ${other}; the unit "fraction" says which`;

  test.each([
    [setting, 0.75, '0.75 %', '75 %'],
    [setting, 1, '1 %', '100 %'],
    [setting, 1.07, '1.07 %', '107 %'],
    [slope, 0.05, '0.05 %', '5 %'],
    [slope, -0.02, '-0.02 %', '-2 %'],
    [slope, 0.1, '0.1 %', '10 %'],
  ])('%#: %s', (field, cell, one, other) => {
    expect(field.read(cell, '%')).toEqual({ expected: clear(one, other) });
  });

  test('what the limits make clear is taken', () => {
    expect(setting.read(75, '%')).toEqual({ value: 0.75 });
    expect(setting.read(1.5, '%')).toEqual({ value: 0.015 }); // 150 % is beyond the limit
    expect(slope.read(0.5, '%')).toEqual({ value: 0.005 }); // 50 % is beyond the limit
    expect(slope.read(0, '%')).toEqual({ value: 0 });
    expect(setting.read(0.75, 'fraction')).toEqual({ value: 0.75 });
    expect(setting.read(75, 'fraction')).toEqual({ expected: 'a number of at most 1.25 fraction' });
  });

  test('without limits a share is taken to be 150 % at most', () => {
    const share = quantity('fraction', 'share', { help });
    expect(share.read(1.5, '%')).toEqual({ expected: clear('1.5 %', '150 %') });
    expect(share.read(1.6, '%')).toEqual({ value: expect.closeTo(0.016, 12) });
    expect(share.read(25, '%')).toEqual({ value: expect.closeTo(0.25, 12) });
  });
});

test('a ratio has limits and no unit', () => {
  const lift = ratio('CLmax', { help, above: 0.5, atMost: 4 });
  expect(lift.unit).toBeUndefined();
  expect(lift.read(1.45, '')).toEqual({ value: 1.45 });
  expect(lift.read(0.5, '')).toEqual({ expected: 'a number above 0.5' });
  expect(lift.read(15, '')).toEqual({ expected: 'a number of at most 4' });
  expect(lift.read('1,45', '')).toEqual({ expected: 'a number with a decimal point and no comma' });
});

test('a count is whole', () => {
  const cylinders = count('cylinders', { help, atLeast: 1, atMost: 24 });
  expect(cylinders.read(4, '')).toEqual({ value: 4 });
  expect(cylinders.read(4.5, '')).toEqual({ expected: 'a whole number' });
  expect(cylinders.read(0, '')).toEqual({ expected: 'a number of at least 1' });
  expect(cylinders.read(true, '')).toEqual({ expected: 'a number, not a tick box' });
});

test('money keeps its currency beside it', () => {
  const price = money('price', { help });
  expect(price.unit).toBe('currency');
  expect(price.read(33_500, 'USD')).toEqual({ value: 33_500 });
  expect(price.read(-250, 'USD')).toEqual({ value: -250 }); // a credit
  expect(price.read('33.500,00', 'USD')).toEqual({ expected: 'a number without unit or separators' });
  expect(money('labour', { help, atLeast: 0 }).read(-1, 'USD')).toEqual({
    expected: 'a number of at least 0',
  });
});

test('a price of fuel is kept per cubic metre', () => {
  const avgas = fuelPrice('avgas', { help });
  // 1 US gal is 0.003785411784 m³
  expect(avgas.read(6.6, 'USD/US gal')).toEqual({ value: expect.closeTo(6.6 / 0.003785411784, 9) });
  expect(avgas.read(2.3, 'EUR/L')).toEqual({ value: expect.closeTo(2300, 9) });
  expect(avgas.read(-1, 'EUR/L')).toEqual({ expected: 'a number of at least 0' });
});

test('a text may be a number, and is no error, date or tick', () => {
  const name = text('name', { help });
  expect(name.read('  long  range ', '')).toEqual({ value: 'long range' });
  expect(name.read(912, '')).toEqual({ value: '912' });
  for (const cell of ['#REF!', true, new Date()] as Cell[])
    expect(name.read(cell, '')).toEqual({ expected: 'text' });
});

test('a term has no case', () => {
  const basis = term('basis', { help });
  expect(basis.read(' Weighed ', '')).toEqual({ value: 'weighed' });
  for (const cell of ['#N/A', 3, false] as Cell[])
    expect(basis.read(cell, '')).toEqual({ expected: 'a word' });
});

test('a choice is one of its words', () => {
  const gear = choice('gear', ['nosewheel', 'tailwheel'], { help });
  expect(gear.choices).toEqual(['nosewheel', 'tailwheel']);
  expect(gear.read('NOSEWHEEL ', '')).toEqual({ value: 'nosewheel' });
  for (const cell of ['skids', 1, true, '#REF!', new Date()] as Cell[])
    expect(gear.read(cell, '')).toEqual({ expected: 'nosewheel or tailwheel' });
});

test('a tick box is ticked, or yes or no is typed', () => {
  const fitted = flag('fitted', { help });
  for (const cell of [true, 'TRUE', 'true', 'Yes'] as Cell[])
    expect(fitted.read(cell, '')).toEqual({ value: true });
  for (const cell of [false, 'FALSE', 'no'] as Cell[])
    expect(fitted.read(cell, '')).toEqual({ value: false });
  for (const cell of [1, 0, 'x', '#REF!', new Date()] as Cell[])
    expect(fitted.read(cell, '')).toEqual({ expected: 'TRUE or FALSE (or yes or no)' });
});

test('names are separated by commas', () => {
  const fits = names('fits', { help });
  expect(fits.read('Larch,  Alder , ', '')).toEqual({ value: ['Larch', 'Alder'] });
  expect(fits.read(912, '')).toEqual({ value: ['912'] });
  for (const cell of ['#REF!', true, new Date()] as Cell[])
    expect(fits.read(cell, '')).toEqual({ expected: 'names separated by commas' });
});

test('the unit a new sheet starts with: the one of the limits, else the first of its kind', () => {
  expect(quantity('mass', 'weight', { help }).customaryUnit).toBe('lb');
  expect(quantity('mass', 'weight', { in: 'kg', help }).customaryUnit).toBe('kg');
});

test('a tick box is TRUE or FALSE in a drop-down', () => {
  expect(flag('fitted', { help }).choices).toEqual(['TRUE', 'FALSE']);
});

describe('unitFor', () => {
  test('a unit of the kind, in any spelling', () => {
    expect(unitFor('mass', 'lbs')).toEqual({ value: 'lb' });
    expect(unitFor('mass', 'stone')).toEqual({ expected: 'a unit: lb, kg' });
    expect(unitFor('mass', null)).toEqual({ expected: 'a unit: lb, kg' });
    expect(unitFor('length', 'kg')).toEqual({ expected: 'a unit: in, mm, cm, m, ft' });
    expect(unitFor('mass', 3)).toEqual({ expected: 'a unit: lb, kg' });
  });

  test('a currency is three letters', () => {
    expect(unitFor('currency', 'EUR')).toEqual({ value: 'EUR' });
    expect(unitFor('currency', 'usd')).toEqual({ value: 'USD' });
    for (const cell of ['$', 'Euro', '', 'US$'])
      expect(unitFor('currency', cell)).toEqual({
        expected: 'a currency code of three letters, such as USD',
      });
  });

  test('a price of fuel names both', () => {
    expect(unitFor('currency per volume', 'USD/gal')).toEqual({ value: 'USD/US gal' });
    expect(unitFor('currency per volume', 'eur / litre')).toEqual({ value: 'EUR/L' });
    for (const cell of ['USD', 'gal', 'USD/lb', 'USD per gal'])
      expect(unitFor('currency per volume', cell)).toEqual({
        expected: 'a currency and a volume, such as USD/US gal or EUR/L',
      });
  });
});
