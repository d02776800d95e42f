import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { extremeLoading, type Loading, loadedWith } from '../../src/engineering/loading.ts';
import { extremeOf, type LoadingLimits, loadingPolygon } from '../../src/engineering/loadingPolygon.ts';
import { between } from './between.ts';
import { extremeCgByLinearProgramme } from './loadingLp.ts';
import { randomAircraft, withoutOtherLimits } from './randomAircraft.ts';
import { station } from './station.ts';

const body = { weight: 100, moment: 1000 };
const corners = (boundary: readonly Loading[]) => boundary.map(({ weight, moment }) => [weight, moment]);

const momentAt = (boundary: readonly Loading[], weight: number) => {
  const index = Math.max(
    1,
    boundary.findIndex((loading) => loading.weight >= weight),
  );
  const [from, to] = [boundary[index - 1]!, boundary[index] ?? boundary[index - 1]!];
  const fraction = to.weight > from.weight ? (weight - from.weight) / (to.weight - from.weight) : 0;
  return from.moment + fraction * (to.moment - from.moment);
};

describe('by hand', () => {
  test('a seat and a tank: a parallelogram', () => {
    const polygon = loadingPolygon({
      empty: body,
      stations: [station('seat', 20, 50)],
      tanks: [station('tank', 5, 40)],
      maximumWeight: 500,
    });
    expect(corners(polygon.forward)).toEqual([
      [100, 1000],
      [140, 1200],
      [190, 2200],
    ]);
    expect(corners(polygon.aft)).toEqual([
      [100, 1000],
      [150, 2000],
      [190, 2200],
    ]);
    expect(polygon.aft.map(({ loads }) => loads)).toEqual([
      [0, 0],
      [50, 0],
      [50, 40],
    ]);
  });

  test('clipped at the maximum weight', () => {
    const polygon = loadingPolygon({
      empty: body,
      stations: [station('seat', 20, 50)],
      tanks: [station('tank', 5, 40)],
      maximumWeight: 170,
    });
    expect(corners(polygon.forward)).toEqual([
      [100, 1000],
      [140, 1200],
      [170, 1800],
    ]);
    expect(corners(polygon.aft)).toEqual([
      [100, 1000],
      [150, 2000],
      [170, 2100],
    ]);
    expect(polygon.forward[2]!.loads).toEqual([30, 40]);
  });

  test('a zero-fuel limit: weight beyond it is fuel', () => {
    const polygon = loadingPolygon({
      empty: body,
      stations: [station('seat', 20, 50)],
      tanks: [station('tank', 5, 40)],
      maximumWeight: 500,
      maximumZeroFuelWeight: 130,
    });
    // 30 in the seat at most: 170 in all, never 190
    expect(corners(polygon.aft)).toEqual([
      [100, 1000],
      [130, 1600],
      [170, 1800],
    ]);
    expect(extremeOf(polygon, 'aft').loads).toEqual([30, 0]);
  });

  test('a limit that two bays share', () => {
    const bays = [station('bay', 30, 20), station('tail', 60, 20)];
    const limits: LoadingLimits = { empty: body, stations: bays, tanks: [], maximumWeight: 500 };
    const shared = loadingPolygon({
      ...limits,
      groups: [{ name: 'baggage', stations: ['bay', 'tail'], maximum: 25 }],
    });
    // 5 in the bay and 20 in the tail, or 20 and 5
    expect(corners(shared.aft).at(-1)).toEqual([125, 1000 + 150 + 1200]);
    expect(corners(shared.forward).at(-1)).toEqual([125, 1000 + 600 + 300]);
    expect(shared.aft.at(-1)!.loads).toEqual([5, 20]);
  });

  test('shared limits of bays and of tanks, under a zero-fuel limit', () => {
    const polygon = loadingPolygon({
      empty: body,
      stations: [station('bay', 30, 20), station('tail', 60, 20), station('seat', 20, 50)],
      tanks: [station('main', 5, 40), station('auxiliary', 8, 40)],
      maximumWeight: 500,
      maximumZeroFuelWeight: 140,
      groups: [
        { name: 'baggage', stations: ['bay', 'tail'], maximum: 25 },
        { name: 'fuel', stations: ['main', 'auxiliary'], maximum: 50 },
      ],
    });
    // tail 20, bay 5, seat 15 to 140; then auxiliary 40 and main 10
    expect(corners(polygon.aft)).toEqual([
      [100, 1000],
      [120, 2200],
      [125, 2350],
      [140, 2650],
      [180, 2970],
      [190, 3020],
    ]);
    // main 40 and auxiliary 10; then the seat, 40 of it
    expect(corners(polygon.forward)).toEqual([
      [100, 1000],
      [140, 1200],
      [150, 1280],
      [190, 2080],
    ]);
    expect(polygon.forward.at(-1)!.loads).toEqual([0, 0, 40, 40, 10]);
  });

  test('nothing to load: the empty aircraft alone', () => {
    const polygon = loadingPolygon({ empty: body, stations: [], tanks: [], maximumWeight: 100 });
    expect(corners(polygon.forward)).toEqual([[100, 1000]]);
    expect(corners(polygon.aft)).toEqual([[100, 1000]]);
  });
});

describe('properties, with and without zero-fuel and shared limits', () => {
  const shares = fc.array(between(0, 1), { minLength: 9, maxLength: 9 });

  test('any loading within the limits is inside', () => {
    let inside = 0;
    fc.assert(
      fc.property(randomAircraft, fc.array(shares, { minLength: 20, maxLength: 20 }), (limits, draws) => {
        const polygon = loadingPolygon(limits);
        for (const draw of draws) {
          const loads = polygon.stations.map(
            ({ minimum, maximum }, index) => minimum + draw[index]! * (maximum - minimum),
          );
          const loaded = loadedWith(limits.empty, polygon.stations, loads);
          const payload = limits.stations.reduce((sum, _, index) => sum + loads[index]!, 0);
          const overGroup = (limits.groups ?? []).some(
            (group) =>
              polygon.stations.reduce(
                (sum, { name }, index) => sum + (group.stations.includes(name) ? loads[index]! : 0),
                0,
              ) > group.maximum,
          );
          const zeroFuelLimit = limits.maximumZeroFuelWeight ?? Number.POSITIVE_INFINITY;
          if (loaded.weight > limits.maximumWeight || overGroup) continue;
          if (limits.empty.weight + payload > zeroFuelLimit) continue;
          inside++;
          expect(loaded.moment).toBeGreaterThan(momentAt(polygon.forward, loaded.weight) - 1e-6);
          expect(loaded.moment).toBeLessThan(momentAt(polygon.aft, loaded.weight) + 1e-6);
        }
      }),
      { numRuns: 200 },
    );
    expect(inside).toBeGreaterThan(200); // not all drawn loadings were thrown away
  });

  test('every corner is a loading within the limits, and weighs what it says', () => {
    fc.assert(
      fc.property(randomAircraft, (limits) => {
        const polygon = loadingPolygon(limits);
        for (const corner of [...polygon.forward, ...polygon.aft]) {
          const again = loadedWith(limits.empty, polygon.stations, corner.loads);
          expect(again.weight).toBeCloseTo(corner.weight, 7);
          expect(again.moment).toBeCloseTo(corner.moment, 5);
          polygon.stations.forEach(({ minimum, maximum }, index) => {
            expect(corner.loads[index]).toBeGreaterThan(minimum - 1e-9);
            expect(corner.loads[index]).toBeLessThan(maximum + 1e-9);
          });
          const payload = limits.stations.reduce((sum, _, index) => sum + corner.loads[index]!, 0);
          expect(corner.weight).toBeLessThan(limits.maximumWeight + 1e-6);
          if (limits.maximumZeroFuelWeight !== undefined)
            expect(limits.empty.weight + payload).toBeLessThan(limits.maximumZeroFuelWeight + 1e-6);
          for (const group of limits.groups ?? [])
            expect(corner.loads[0]! + corner.loads[1]!).toBeLessThan(group.maximum + 1e-6);
        }
      }),
      { numRuns: 200 },
    );
  });

  test('a linear-programming solver finds the same extreme CGs under all limits together', () => {
    fc.assert(
      fc.property(randomAircraft, fc.constantFrom('forward', 'aft'), (limits, side) => {
        const { cg } = extremeOf(loadingPolygon(limits), side);
        expect(Math.abs(cg - extremeCgByLinearProgramme(limits, side))).toBeLessThan(1e-6);
      }),
      { numRuns: 500 },
    );
  });

  test('without other limits its extremes are those of filling in order of arm', () => {
    fc.assert(
      fc.property(randomAircraft, fc.constantFrom('forward', 'aft'), (aircraft, side) => {
        const limits = withoutOtherLimits(aircraft);
        const all = [...limits.stations, ...limits.tanks];
        expect(extremeOf(loadingPolygon(limits), side).cg).toBeCloseTo(
          extremeLoading(limits.empty, all, limits.maximumWeight, side).cg,
          8,
        );
      }),
    );
  });
});

describe('refusals', () => {
  const seats = [station('left', 20, 100, 60), station('right', 20, 100)];
  const tanks = [station('tank', 5, 40)];
  const refused = (more: Partial<LoadingLimits>) => () =>
    loadingPolygon({ empty: body, stations: seats, tanks, maximumWeight: 500, ...more });

  test('limits below the minimum loads', () => {
    expect(refused({ maximumWeight: 159 })).toThrow(/maximumWeight must be at least 160/);
    expect(refused({ maximumZeroFuelWeight: 150 })).toThrow(/maximumZeroFuelWeight must be at least 160/);
    expect(refused({ groups: [{ name: 'front', stations: ['left', 'right'], maximum: 50 }] })).toThrow(
      /maximum of group front must be at least 60/,
    );
  });

  test('groups that cannot be', () => {
    const group = (...names: string[]) => ({ name: 'g', stations: names, maximum: 200 });
    expect(refused({ groups: [group('middle')] })).toThrow(/got middle/);
    expect(refused({ groups: [group()] })).toThrow(/got none/);
    expect(refused({ groups: [group('left'), group('left', 'right')] })).toThrow(/one group at most/);
    expect(refused({ groups: [group('left', 'tank')] })).toThrow(/mix/);
  });

  test('two stations of one name, an empty weight of 0, an impossible station', () => {
    expect(refused({ stations: [seats[0]!, seats[0]!] })).toThrow(/names must differ/);
    expect(refused({ empty: { weight: 0, moment: 0 } })).toThrow(/empty weight/);
    expect(refused({ stations: [station('bay', 20, -1)] })).toThrow(/maximum of bay/);
  });
});
