/** Prices and running costs of the small aircraft of tests/tables/smallWorkbook.ts, by hand in USD. */
import { describe, expect, test } from 'vitest';
import { type Assessment, compare } from '../../src/assessment/assess.ts';
import { coinsOf } from '../../src/assessment/money.ts';
import { cgShiftOf } from '../../src/assessment/optionCosts.ts';
import type { TableGrids, TableName } from '../../src/tables/catalogue.ts';
import type { Cell } from '../../src/tables/cell.ts';
import { catalogueOf } from '../tables/smallBuild.ts';
import { smallWorkbook } from '../tables/smallWorkbook.ts';
import { withAttribute, withCells, withRows } from './flightFixture.ts';
import { packageOf } from './sampleCatalogue.ts';

type Attributes = Readonly<Record<string, readonly [Cell, string?]>>;

const small: TableGrids = smallWorkbook();
const withAll = (table: TableName, attributes: Attributes, grids = small, column?: string) =>
  Object.entries(attributes).reduce<TableGrids>(
    (changed, [attribute, [value, unit = '']]) =>
      withAttribute(changed, table, attribute, value, unit, column),
    grids,
  );
const ash = (attributes: Attributes, grids = small) => withAll('packages', attributes, grids, 'Ash');
const birch = (attributes: Attributes, grids = small) => withAll('packages', attributes, grids, 'Birch');
const assessed = (name: string, grids = small): Assessment => packageOf(compare(catalogueOf(grids)), name);

describe('to buy', () => {
  test('kit, what the package supplies, options; what the builder buys stands apart', () => {
    // Ash 25,000 + 3,000; oil 60. Radio 2,000 and lights 900. Birch: its lump of 38,000 and 9,000; coolant 30
    const { price } = assessed('Ash');
    expect(price).toMatchObject({
      kit: 40_000,
      powerplant: 28_000,
      options: 2900,
      builder: 60,
      total: 70_900,
      complete: true,
    });
    expect(price.tax).toBeCloseTo(0.07 * 70_900, 9);
    expect(assessed('Birch').price).toMatchObject({ powerplant: 47_000, builder: 30, total: 89_900 });
    expect(assessed('Birch').price.findings).toEqual([]);
  });

  test('nothing is paid for what is taken out, or said to be not required', () => {
    const grids = withRows(
      small,
      'components',
      ['Ash', 'old battery', 'battery', -15, 45, '', 'weighed', '', 'kit', '', 100, 1],
      ['Ash', 'radiator', 'coolant', 0, '', '', 'weighed', '', 'not required', '', 100, 1],
    );
    expect(assessed('Ash', grids).price).toMatchObject({ powerplant: 28_000, builder: 60, complete: true });
  });

  test('what weighs nothing and costs something is paid for', () => {
    const papers = ['Ash', 'papers', 'papers', 0, '', '', 'weighed', '', 'kit', '', 50, 1];
    expect(assessed('Ash', withRows(small, 'components', papers)).price.powerplant).toBe(28_050);
  });

  test('a standard item is in the kit’s price; one that the builder buys is in his', () => {
    expect(assessed('Ash', withCells(small, 'equipment', ['radio'], { standard: true })).price.options).toBe(
      900,
    );
    const equipment = small.equipment!.map((row, index) => [
      ...row,
      index === 0 ? 'supplied by' : row[0] === 'lights' ? 'builder' : '',
    ]);
    const { price, cost } = assessed('Ash', { ...small, equipment });
    expect(price).toMatchObject({ options: 2000, builder: 960, total: 70_000 });
    expect(cost.scope.map(({ name, system, price: each }) => [name, system, each])).toEqual([
      ['oil', 'oil', 60],
      ['lights', 'option', 900],
      ['coolant: nothing listed, other packages have it', 'coolant', undefined],
    ]);
  });

  test('the longest delivery, and whose it is', () => {
    const lead = (grids = small) => {
      const { leadTime = Number.NaN, longestItem } = assessed('Ash', grids).price;
      return [Math.round(leadTime / 7), longestItem];
    };
    expect(lead()).toEqual([12, 'engine']);
    expect(lead(withCells(small, 'components', ['Ash', 'propeller'], { 'lead time': 16 }))).toEqual([
      16,
      'propeller',
    ]);
    const none = small.components!.map((row, index) =>
      row.map((cell, at) => (at === 11 && index > 1 ? '' : cell)),
    );
    expect(lead({ ...small, components: none })).toEqual([Number.NaN, undefined]);
    expect(lead(ash({ 'lead time': [14, 'weeks'] }))).toEqual([14, 'Ash']);
    expect(lead(ash({ 'lead time': [12, 'weeks'] }))).toEqual([12, 'Ash']); // as long: the whole package
    expect(lead(withAll('airframe', { 'kit lead time': [20, 'weeks'] }))).toEqual([20, 'Wren kit']);
  });

  const told = (grids: TableGrids, name = 'Ash') =>
    assessed(name, grids).price.findings.map(
      ({ gravity, package: of, subject, source, text }) => `${gravity} ${of} ${subject}, ${source}: ${text}`,
    );

  test('a price that is missing is in no total, and said', () => {
    const noPropeller = withCells(small, 'components', ['Ash', 'propeller'], { price: '' });
    expect(assessed('Ash', noPropeller).price).toMatchObject({ powerplant: 25_000, complete: false });
    expect(told(noPropeller)).toEqual([
      'check Ash price, components table: no price for propeller: the total is too low',
    ]);
    const noLights = withCells(small, 'equipment', ['lights'], { price: '' });
    expect(assessed('Ash', noLights).price).toMatchObject({ options: 2000, complete: false });
    expect(told(noLights)).toEqual([
      'check Ash price, equipment table: no price for lights: the total is too low',
    ]);
    const noKit = withAll('airframe', { 'kit price': ['', 'USD'] });
    expect(assessed('Ash', noKit).price).toMatchObject({ kit: undefined, total: 30_900, complete: false });
    expect(told(noKit)).toEqual([
      'check  kit price, airframe table: not given: the total is without the airframe',
    ]);
  });

  test('a fluid needs no price, nor does what comes without one in a lump', () => {
    const grids = withCells(small, 'components', ['Ash', 'oil'], { price: '' });
    expect(assessed('Ash', grids).price).toMatchObject({ builder: 0, complete: true, findings: [] });
  });

  test('a lead time that is missing: of what the package supplies, weighs something and is no fluid', () => {
    const undated = (name: string, item: string, cells: Record<string, Cell> = {}) =>
      told(withCells(small, 'components', [name, item], { 'lead time': '', ...cells }), name);
    const note = (name: string, item: string) =>
      `note ${name} lead time, components table: no lead time for ${item}: delivery may take longer than shown`;
    expect(undated('Ash', 'engine')).toEqual([note('Ash', 'engine')]);
    expect(undated('Birch', 'kit as delivered')).toEqual([note('Birch', 'kit as delivered')]);
    expect(undated('Ash', 'oil', { 'supplied by': 'kit' })).toEqual([]);
    expect(undated('Ash', 'propeller', { 'supplied by': 'builder' })).toEqual([]);
    expect(undated('Ash', 'propeller', { weight: 0 })).toEqual([]);
  });
});

describe('ready to fly', () => {
  const built = (attributes: Attributes, hours?: number) =>
    withAll(
      'airframe',
      attributes,
      hours === undefined ? small : ash({ 'powerplant build hours': [hours, 'h'] }),
    );

  test('with tax, what the builder buys, and 90 an hour', () => {
    const taxed = 1.07 * 70_960;
    const { cost } = assessed('Ash', built({ 'airframe build hours': [100, 'h'] }, 50));
    expect(cost.labour).toBeCloseTo(13_500, 9);
    expect(cost.readyToFly.value).toBeCloseTo(taxed + 13_500, 6);
    expect(cost.readyToFly.complete).toBe(true);
  });

  test('hours of one only, of none, no tax: the least it can be', () => {
    const [one, none] = [
      assessed('Ash', built({ 'airframe build hours': [100, 'h'] })).cost,
      assessed('Ash').cost,
    ];
    expect(one.labour).toBeCloseTo(9000, 9);
    expect(one.readyToFly.complete).toBe(false);
    expect(none.labour).toBeUndefined();
    expect(none.readyToFly).toEqual({ value: expect.closeTo(1.07 * 70_960, 6), complete: false });
    const untaxed = withAll(
      'rates',
      { 'sales tax': ['', '%'] },
      built({ 'airframe build hours': [100, 'h'] }, 50),
    );
    expect(assessed('Ash', untaxed).cost.readyToFly).toEqual({
      value: expect.closeTo(70_960 + 13_500, 6),
      complete: false,
    });
    const unpaid = withAll(
      'rates',
      { 'labour an hour': ['', 'USD'] },
      built({ 'airframe build hours': [100, 'h'] }, 50),
    );
    expect(assessed('Ash', unpaid).cost.labour).toBeUndefined();
  });
});

describe('an hour', () => {
  const rates = (attributes: Attributes = {}, grids = small) =>
    withAll(
      'rates',
      {
        'insurance a year': [1200, 'USD'],
        'hangar a year': [600, 'USD'],
        'unscheduled upkeep an hour': [8, 'USD'],
        'hours a year': [120, 'h'],
        years: [5],
        ...attributes,
      },
      grids,
    );
  const overhauled = (attributes: Attributes = {}) =>
    ash({
      'service price per hour': [6, 'USD'],
      'engine overhaul interval': [2000, 'h'],
      'engine overhaul price': [20_000, 'USD'],
      ...attributes,
    });

  test('Ash: 7.5 gal at 6.50, service 6, overhaul 10, upkeep 8; insurance 10 and hangar 5', () => {
    const { perHour, hour, hourFlown, lifetime, readyToFly, fuelPrice } = assessed(
      'Ash',
      rates({}, overhauled()),
    ).cost;
    expect(perHour.fuel).toBeCloseTo(48.75, 6);
    expect(perHour.engine).toBeCloseTo(10, 9);
    expect(perHour.insurance).toBeCloseTo(10, 9);
    expect(perHour.hangar).toBeCloseTo(5, 9);
    expect([perHour.gearbox, perHour.turbocharger, perHour.propeller, perHour.oxygen]).toEqual([0, 0, 0, 0]);
    expect(hourFlown).toEqual({ value: expect.closeTo(72.75, 6), complete: true });
    expect(hour).toEqual({ value: expect.closeTo(87.75, 6), complete: true });
    // 600 hours in five years
    expect(lifetime.value).toBeCloseTo(readyToFly.value + 600 * 87.75, 4);
    expect(lifetime.complete).toBe(false); // no build hours
    const built = withAttribute(
      ash({ 'powerplant build hours': [50, 'h'] }, overhauled()),
      'airframe',
      'airframe build hours',
      100,
      'h',
    );
    expect(assessed('Ash', rates({}, built)).cost.lifetime.complete).toBe(true);
    expect(assessed('Ash', built).cost.lifetime.complete).toBe(false); // no insurance
    expect((fuelPrice ?? 0) * 0.003785411784).toBeCloseTo(6.5, 9); // 1 US gal in m³, exact
  });

  test('full throttle where the mission asks for more than there is: 120 hp × 0.7577 at 8,000 ft', () => {
    // σ 0.7860 less 0.2140/7.55; BSFC 0.5 + 0.01 × 0.0077/0.25, a little less along a curve
    const all = withAll('mission', { 'cruise power': [100, '%'] });
    expect((assessed('Ash', all).cost.perHour.fuel ?? 0) / 6.5).toBeCloseTo((120 * 0.7577 * 0.5003) / 6, 2);
  });

  test('an interval or a price alone says nothing of an overhaul', () => {
    for (const [missing, unit] of [
      ['engine overhaul interval', 'h'],
      ['engine overhaul price', 'USD'],
    ] as const)
      expect(assessed('Ash', overhauled({ [missing]: ['', unit] })).cost.perHour.engine).toBeUndefined();
    const alone = (attributes: Attributes) => assessed('Ash', ash(attributes)).cost.perHour;
    expect(alone({ 'propeller overhaul interval': [1500, 'h'] }).propeller).toBeUndefined();
    expect(alone({ 'propeller overhaul price': [3000, 'USD'] }).propeller).toBeUndefined();
    expect(
      alone({ 'propeller overhaul interval': [1500, 'h'], 'propeller overhaul price': [3000, 'USD'] })
        .propeller,
    ).toBeCloseTo(2, 9);
  });

  test.each([
    ['Avgas 100LL', 'avgas', 6.5],
    ['mogas E5', 'mogas', 5],
    ['Jet A-1', 'jet', 4],
  ])('%s costs what the rates say of %s', (fuel, _, price) => {
    const grids = withAll(
      'rates',
      { mogas: [5, 'USD/US gal'], 'Jet A': [4, 'USD/US gal'] },
      ash({ fuel: [fuel] }),
    );
    expect((assessed('Ash', grids).cost.fuelPrice ?? 0) * 0.003785411784).toBeCloseTo(price, 9);
  });

  const told = (name: string, grids: TableGrids) =>
    assessed(name, grids).cost.findings.map(
      ({ gravity, package: of, subject, text }) => `${gravity} ${of} ${subject}: ${text}`,
    );

  test('what is missing, of the package and of all', () => {
    expect(told('Ash', small)).toEqual([
      'check Ash cost of an hour: the cost of an hour is without service, engine overhaul: a price, an interval or a fuel point is missing',
      'check  cost: without unscheduled upkeep, insurance, hangar: no price given',
    ]);
    expect(told('Ash', rates({}, overhauled()))).toEqual([]);
    const poor = rates({ 'labour an hour': ['', 'USD'], 'sales tax': ['', '%'] }, overhauled());
    expect(told('Ash', poor)).toEqual(['check  cost: without labour, sales tax: no price given']);
  });

  test('fuel at home: sold, not sold, not said', () => {
    const sold = (cell: Cell) => told('Ash', rates({ 'avgas sold at home': [cell] }, overhauled()));
    expect(sold(true)).toEqual([]);
    expect(sold(false)).toEqual([
      'check Ash fuel at home: avgas is not sold at the home field: it must be brought, or fetched elsewhere',
    ]);
    expect(sold('')).toEqual(['note Ash fuel at home: not stated whether avgas is sold at the home field']);
  });

  test('parts that are overhauled apart: gearbox, turbocharger, propeller of constant speed', () => {
    const apart = (attributes: Attributes) =>
      told('Birch', birch(attributes)).filter((text) => text.startsWith('note Birch overhaul'));
    const none = (parts: string) => [`note Birch overhaul: no overhaul of ${parts} given: none is counted`];
    expect(apart({})).toEqual(none('gearbox, propeller'));
    expect(apart({ 'critical altitude': [9000, 'ft'] })).toEqual(none('gearbox, turbocharger, propeller'));
    expect(apart({ 'gear ratio': [1], propeller: ['fixed pitch'] })).toEqual([]);
    expect(
      apart({
        'gearbox overhaul interval': [1000, 'h'],
        'gearbox overhaul price': [3900, 'USD'],
        propeller: ['fixed pitch'],
      }),
    ).toEqual([]);
  });

  test('oxygen above 12,500 ft: part of the package, an option named so, or missing', () => {
    const high = (grids: TableGrids) => withAll('mission', { 'cruise altitude': [13_000, 'ft'] }, grids);
    const missing = (grids: TableGrids) =>
      assessed('Birch', grids).cost.findings.filter(({ subject }) => subject === 'oxygen');
    const bottle = (fitted: boolean) =>
      withRows(small, 'equipment', ['Oxygen bottle', 9, 120, 'weighed', 700, 0, '', '', '', false, fitted]);
    const [finding] = missing(high(small));
    expect(finding).toMatchObject({ gravity: 'check', package: 'Birch', shown: 'height' });
    expect((finding?.value ?? 0) / 0.3048).toBeCloseTo(13_000, 6);
    expect((finding?.limit ?? 0) / 0.3048).toBeCloseTo(12_500, 6);
    expect(missing(high(bottle(false)))).toHaveLength(1);
    for (const grids of [
      small,
      high(bottle(true)),
      high(birch({ 'oxygen fitted': [true] })),
      withAll('mission', { 'cruise altitude': [12_500, 'ft'] }),
    ])
      expect(missing(grids)).toEqual([]);
  });
});

test('a coin less than nothing, rounded, is nothing', () => {
  expect(coinsOf('USD').of(-0.001)).toBe(0); // and not −0, which is written with its sign
});

test('how far an option moves the empty CG, of the aircraft without it', () => {
  const shift = (name: string, item: string) => {
    const found = catalogueOf().equipment.find((each) => each.name === item)!;
    const moved = cgShiftOf(found, assessed(name));
    return moved === undefined ? undefined : moved / 0.0254;
  };
  // Fairings, not aboard: (72,000 + 12 × 88)/912. Lights, aboard: (72,000 − 4 × 90)/896
  expect(shift('Ash', 'fairings')).toBeCloseTo(73_056 / 912 - 80, 9);
  expect(shift('Ash', 'lights')).toBeCloseTo(80 - 71_640 / 896, 9);
  expect(shift('Ash', 'autopilot')).toBeUndefined(); // for Birch only
});
