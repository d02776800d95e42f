/**
 * Loadings of the stall cards, worked by hand in kg and m on the plain aircraft: 500 at 2.2 and an engine of 150 at 2.633 give
 * 650 and 1,495; pilot 80 at 2.3; baggage to 100 at 3.2; 150 L of fuel, 108, at 2.2. An hour on 110 kW takes 33.264.
 */
import { describe, expect, test } from 'vitest';
import { assess, basisOf } from '../../src/assessment/assess.ts';
import { packageNamed } from '../../src/assessment/context.ts';
import { stallCards } from '../../src/assessment/stallCards.ts';
import { soloStations, testLoading } from '../../src/assessment/testLoading.ts';
import type { TableGrids } from '../../src/tables/catalogue.ts';
import type { Cell } from '../../src/tables/cell.ts';
import type { Station } from '../../src/tables/stations.ts';
import { catalogueOf, plainAircraft, withAttribute, withCells } from './flightFixture.ts';

const onLimit = 5e-5; // m inside the limit: half of a tenth of a millimetre
const hour = 110 * 0.3024; // kg
const full = 108;

const wren: TableGrids = {
  ...withCells(plainAircraft, 'components', ['Elm', 'engine'], { arm: 395 / 150 }),
  stations: [
    ['station', 'arm', 'minimum', 'maximum', 'usual', 'persons'],
    ['', 'm', 'kg', 'kg', 'kg', ''],
    ['baggage', 3.2, 0, 100, '', 0],
    ['pilot', 2.3, 50, 110, 80, 1],
    ['passenger', 2.3, 0, 110, '', 1],
  ],
};
const airframe = (attribute: string, value: Cell, unit: string, grids = wren) =>
  withAttribute(grids, 'airframe', attribute, value, unit);
const limits = (forward: number, aft: number, grids = wren): TableGrids => ({
  ...grids,
  envelope: [
    ['weight', 'forward limit', 'aft limit'],
    ['kg', 'm', 'm'],
    [500, forward, aft],
    [1000, forward, aft],
  ],
});

function cards(grids: TableGrids) {
  const basis = basisOf(catalogueOf(grids));
  const assessment = assess(basis, packageNamed(basis.context.catalogue, 'Elm'));
  const [forward, aft] = stallCards(basis.context, assessment);
  if (forward === undefined || aft === undefined) throw new Error('no cards');
  return { forward, aft, loading: (side: 'forward' | 'aft') => testLoading(basis.context, assessment, side) };
}

describe('aft', () => {
  test('baggage until empty tanks are on the limit: (1,679 + 3.2 x)/(730 + x) = 2.38', () => {
    const { aft, loading } = cards(limits(2, 2.38));
    const found = loading('aft');
    const [baggage = 0, pilot, passenger, fuel] = found?.loads ?? [];
    const limit = 2.38 - onLimit;
    expect(baggage).toBeCloseTo((limit * 730 - 1679) / (3.2 - limit), 4);
    expect([pilot, passenger]).toEqual([expect.closeTo(80, 9), 0]);
    expect(fuel).toBeCloseTo(hour, 6);
    expect(found?.ballast).toBeUndefined();
    expect(found?.leastMargin).toBeCloseTo(onLimit, 7);
    expect(found?.weight).toBeCloseTo(730 + baggage + hour, 6);
    expect(found?.margin).toBeCloseTo(2.38 - (1679 + 3.2 * baggage + 2.2 * hour) / (730 + baggage + hour), 9);
    expect(aft.setUp).toMatch(/; on the limit when the tanks are empty$/);
    expect(aft.setUp).toContain('baggage 157 lb, pilot 176 lb, passenger 0 lb, wing tanks 12.2 US gal');
  });

  test('all the baggage does not reach 2.6, and there is no place for ballast', () => {
    const { aft, loading } = cards(limits(2, 2.6));
    const found = loading('aft');
    expect(found?.loads[0]).toBeCloseTo(100, 9);
    expect(found?.ballast).toBeUndefined();
    expect(found?.leastMargin).toBeCloseTo(2.6 - 1999 / 830, 6);
    expect(aft.setUp).toMatch(/; the limit is not reached within the weights: 7\.5 in inside$/); // 0.1916 m
  });

  test('ballast at 4 m beside all of it: (1,999 + 4 b)/(830 + b) = 2.6', () => {
    const found = cards(airframe('ballast arm', 4, 'm', limits(2, 2.6))).loading('aft');
    const limit = 2.6 - onLimit;
    expect(found?.ballast?.arm).toBeCloseTo(4, 12);
    expect(found?.ballast?.weight).toBeCloseTo((limit * 830 - 1999) / (4 - limit), 4);
  });

  test('beyond the limit with the least loads: 1,679/730 is 2.3 against 2.25', () => {
    const { aft, loading } = cards(limits(2, 2.25));
    expect(loading('aft')?.loads).toEqual([0, expect.closeTo(80, 9), 0, expect.closeTo(hour, 6)]);
    expect(loading('aft')?.leastMargin).toBeCloseTo(2.25 - 2.3, 6);
    expect(aft.setUp).toMatch(/; EVEN THE LEAST LOADING GOES 2\.0 in BEYOND THE AFT LIMIT: do not fly it$/);
  });

  test('the least loads just inside, by 0.06 mm, are flown as they are; by 0.2 mm they are not yet on the limit', () => {
    expect(cards(limits(2, 2.30003)).loading('aft')?.loads[0]).toBe(0);
    expect(cards(limits(2, 2.3002)).loading('aft')?.loads[0]).toBeGreaterThan(0.01);
  });
});

describe('forward', () => {
  test('full tanks and ballast at the firewall: (1,916.6 + 1.2 b)/(838 + b) = 2.25, at takeoff', () => {
    const { forward, loading } = cards(limits(2.25, 2.6));
    const found = loading('forward');
    const limit = 2.25 + onLimit;
    expect(found?.loads).toEqual([0, expect.closeTo(80, 9), 0, expect.closeTo(full, 9)]);
    expect(found?.ballast?.arm).toBeCloseTo(1.2, 12);
    expect(found?.ballast?.weight).toBeCloseTo((1916.6 - limit * 838) / (limit - 1.2), 4);
    expect(forward.setUp).toMatch(/, ballast 65 lb at 47\.2 in; on the limit at takeoff$/);
  });

  test('all that the maximum weight leaves, 162 kg, where that does not reach 2.0', () => {
    const { forward, loading } = cards(limits(2, 2.6));
    const found = loading('forward');
    expect(found?.ballast?.weight).toBeCloseTo(162, 6);
    expect(found?.weight).toBeCloseTo(1000, 6);
    expect(found?.leastMargin).toBeCloseTo((1916.6 + 1.2 * 162 - 2.2 * full) / 892 - 2, 6); // empty tanks
    expect(forward.setUp).toContain('the limit is not reached within the weights: 3.9 in inside'); // 0.1002 m
  });

  test('no ballast where the weight has none to spare: 830 kg are 730 and 100 of fuel', () => {
    const found = cards(airframe('maximum takeoff weight', 830, 'kg', limits(2, 2.6))).loading('forward');
    expect(found?.ballast).toBeUndefined();
    expect(found?.weight).toBeCloseTo(830, 6);
    expect(found?.loads[3]).toBeCloseTo(100, 6);
  });
});

describe('the least fuel', () => {
  const fuelOf = (grids: TableGrids) => cards(limits(2, 2.38, grids)).loading('aft')?.loads[3];

  test('without fuel points half of what the tanks hold', () => {
    expect(fuelOf({ ...wren, 'fuel points': [] })).toBeCloseTo(full / 2, 6);
  });

  test('not more than they hold: 20 L are 14.4 kg, an hour would take 33', () => {
    expect(fuelOf(withCells(wren, 'tanks', ['wing tanks'], { usable: 20 }))).toBeCloseTo(14.4, 6);
  });
});

test('too heavy with the pilot alone: no loading, and a card that says so', () => {
  const { forward, aft, loading } = cards(airframe('maximum takeoff weight', 720, 'kg'));
  expect(loading('aft')).toBeUndefined();
  for (const card of [forward, aft])
    expect(card).toMatchObject({ setUp: 'the least loads are beyond a maximum weight', figures: [] });
  expect(forward.caution).toContain('enough elevator');
});

test('each side has its own name, caution and limit', () => {
  const { forward, aft } = cards(limits(2.25, 2.38));
  expect([forward.name, aft.name]).toEqual(['stall, forward CG', 'stall, aft CG']);
  expect(aft.caution).toContain('come to it in steps');
  expect(forward.caution).toContain('enough elevator');
  const [takeoffWeight, cg, margin, ...stalls] = forward.figures;
  expect(takeoffWeight?.limit).toBeCloseTo(1000, 9);
  expect(takeoffWeight?.predicted).toBeCloseTo(838 + (1916.6 - 2.25005 * 838) / 1.05005, 3);
  expect(cg).toMatchObject({ label: 'CG at takeoff, forward limit', shown: 'arm', least: true });
  expect(cg?.predicted).toBeCloseTo(2.25 + onLimit, 6);
  expect(cg?.limit).toBeCloseTo(2.25, 9);
  expect(margin).toMatchObject({ shown: 'arm', limit: 0, least: true });
  expect(margin?.predicted).toBeCloseTo(onLimit, 7);
  expect(stalls.map(({ label }) => label)).toEqual([
    'stall, clean, calibrated',
    'stall, takeoff, calibrated',
    'stall, landing, calibrated',
  ]);
  expect(aft.figures[1]).toMatchObject({ label: 'CG at takeoff, aft limit' });
  expect(aft.figures[1]?.least).toBeUndefined();
});

describe('the pilot alone', () => {
  const station = (values: Partial<Station>): Station =>
    ({ name: 'x', arm: 2, minimum: 0, maximum: 110, usual: undefined, persons: 1, ...values }) as Station;
  const held = (...stations: Station[]) =>
    soloStations(stations).map(({ minimum, maximum }) => [minimum, maximum]);

  test('sits in the first seat; the others may stay empty', () => {
    const stations = [
      station({ persons: 0, minimum: 5 }),
      station({ usual: 80 }),
      station({ usual: 90, minimum: 40 }),
    ];
    expect(held(...stations)).toEqual([
      [0, 110],
      [80, 80],
      [0, 110],
    ]);
  });

  test('weighs 170 lb where nothing is said (14 CFR 23.25), no more and no less than the seat may hold', () => {
    expect(held(station({}))[0]?.[0]).toBeCloseTo(170 * 0.45359237, 9);
    expect(held(station({ usual: 120 }))).toEqual([[110, 110]]);
    expect(held(station({ usual: 40, minimum: 55 }))).toEqual([[55, 55]]);
  });

  test('in the first place where no seats are told', () => {
    expect(held(station({ persons: 0, usual: 80 }), station({ persons: 0 }))).toEqual([
      [80, 80],
      [0, 110],
    ]);
  });
});
