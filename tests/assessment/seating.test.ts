import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { seatingPlan } from '../../src/assessment/seating.ts';
import type { Station } from '../../src/tables/stations.ts';

const station = (
  arm: number,
  maximum: number,
  persons: number,
  more: Partial<Pick<Station, 'minimum' | 'group' | 'groupMaximum'>> = {},
): Station => ({
  row: 3,
  defaulted: [],
  name: `at ${arm}`,
  arm,
  maximum,
  persons,
  minimum: 0,
  usual: undefined,
  group: undefined,
  groupMaximum: undefined,
  ...more,
});

const pilot = station(2, 110, 1, { minimum: 60 });
const beside = station(2, 110, 1);
const rear = station(3, 180, 2);
const shelf = station(4, 40, 0);
const nose = station(1, 25, 0);

describe('by hand', () => {
  test('in front first, the pilot’s seat never empty, every other way after it', () => {
    const { seatings, seats } = seatingPlan([pilot, beside, rear, shelf], {
      persons: 2,
      personWeight: 80,
      bags: 30,
    });
    expect(seats).toBe(4);
    expect(seatings.map(({ loads }) => loads)).toEqual([
      [80, 80, 0, 30],
      [80, 0, 80, 30],
    ]);
    expect(seatings.map(({ bagRoom }) => bagRoom)).toEqual([10, 10]);
  });

  test('bags from the front and from the back', () => {
    const { seatings } = seatingPlan([pilot, shelf, nose], { persons: 1, personWeight: 80, bags: 35 });
    expect(seatings.map(({ loads }) => loads)).toEqual([
      [80, 10, 25],
      [80, 35, 0],
    ]);
  });

  test('bags that find no room are counted as such', () => {
    const { seatings } = seatingPlan([pilot, shelf], { persons: 1, personWeight: 80, bags: 55 });
    expect(seatings).toEqual([{ loads: [80, 40], bagRoom: -15 }]);
  });

  test('two of 100 on a bench for 180 are one too many', () => {
    const { seatings, seats } = seatingPlan([pilot, beside, rear], {
      persons: 4,
      personWeight: 100,
      bags: 0,
    });
    expect(seats).toBe(3);
    expect(seatings).toEqual([]);
  });

  test('a limit shared by seats and shelf leaves the rest for bags', () => {
    const shared = { group: 'aft', groupMaximum: 190 };
    const plan = seatingPlan([pilot, station(3, 180, 2, shared), station(4, 40, 0, shared)], {
      persons: 3,
      personWeight: 80,
      bags: 40,
    });
    expect(plan.seatings).toEqual([{ loads: [80, 160, 30], bagRoom: -10 }]);
  });

  test('a pilot lighter than the seat wants is not seated', () => {
    expect(seatingPlan([pilot], { persons: 1, personWeight: 50, bags: 0 }).seatings).toEqual([]);
  });

  test('as many as just fit, and a pilot who just weighs enough', () => {
    const bench = station(3, 240, 3);
    const { seatings } = seatingPlan([pilot, bench], { persons: 4, personWeight: 80, bags: 0 });
    expect(seatings.map(({ loads }) => loads)).toEqual([[80, 240]]);
    expect(
      seatingPlan([pilot], { persons: 1, personWeight: 60, bags: 0 }).seatings.map(({ loads }) => loads),
    ).toEqual([[60]]);
  });

  test('a place without seats is no seat, whatever it holds at least', () => {
    const ballast = station(4, 40, 0, { minimum: 10 });
    expect(seatingPlan([pilot, ballast], { persons: 1, personWeight: 80, bags: 20 }).seatings).toEqual([
      { loads: [80, 20], bagRoom: 20 },
    ]);
  });

  test('without bags there is one way to stow them', () => {
    const { seatings } = seatingPlan([pilot, shelf, nose], { persons: 1, personWeight: 80, bags: 0 });
    expect(seatings).toEqual([{ loads: [80, 0, 0], bagRoom: 65 }]);
  });
});

test('everybody and every bag that has room is aboard, no station beyond what it holds', () => {
  const anyStation = fc
    .tuple(
      fc.double({ min: 0.5, max: 5, noNaN: true }),
      fc.double({ min: 0, max: 300, noNaN: true }),
      fc.integer({ min: 0, max: 3 }),
    )
    .map(([arm, maximum, persons]) => station(arm, maximum, persons));
  fc.assert(
    fc.property(
      fc.array(anyStation, { minLength: 1, maxLength: 5 }),
      fc.integer({ min: 1, max: 6 }),
      fc.double({ min: 40, max: 130, noNaN: true }),
      fc.double({ min: 0, max: 200, noNaN: true }),
      (stations, persons, personWeight, bags) => {
        const { seatings, seats } = seatingPlan(stations, { persons, personWeight, bags });
        expect(seatings.length > 0).toBe(seats >= persons);
        for (const { loads, bagRoom } of seatings) {
          const aboard = loads.reduce((sum, load) => sum + load, 0);
          expect(aboard).toBeCloseTo(persons * personWeight + bags + Math.min(0, bagRoom), 6);
          loads.forEach((load, index) => {
            expect(load).toBeLessThanOrEqual((stations[index] as Station).maximum * (1 + 1e-9) + 1e-9);
          });
        }
      },
    ),
  );
});
