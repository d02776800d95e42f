/** What must hold for any weights, arms and loadings, asked of the custom functions with cells, as a sheet asks. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { between } from '../engineering/between.ts';
import { fromFunction } from './publishedValue.ts';

const component = fc.tuple(between(0.5, 400), between(-60, 240));
const components = fc.array(component, { minLength: 1, maxLength: 15 });
const shuffled = <T>(list: readonly T[]) => fc.shuffledSubarray([...list], { minLength: list.length });

describe('weights and moments', () => {
  test('the order of the rows does not matter', () => {
    fc.assert(
      fc.property(
        components.chain((rows) => fc.tuple(fc.constant(rows), shuffled(rows))),
        ([rows, other]) => {
          for (const result of [0, 1, 2]) {
            const one = fromFunction('INSTALLED_WEIGHT', [rows], result);
            expect(fromFunction('INSTALLED_WEIGHT', [other], result)).toBeCloseTo(one, 6);
          }
        },
      ),
    );
  });

  test('the CG lies between the foremost and the rearmost arm', () => {
    fc.assert(
      fc.property(components, (rows) => {
        const arms = rows.map((row) => row[1]);
        const cg = fromFunction('INSTALLED_WEIGHT', [rows], 1);
        expect(cg).toBeGreaterThanOrEqual(Math.min(...arms) - 1e-9);
        expect(cg).toBeLessThanOrEqual(Math.max(...arms) + 1e-9);
      }),
    );
  });

  test('a weight moved aft never moves the CG forward', () => {
    fc.assert(
      fc.property(components, fc.nat(), between(0, 100), (rows, choice, distance) => {
        const moved = rows.map(([weight, arm], index): [number, number] =>
          index === choice % rows.length ? [weight, arm + distance] : [weight, arm],
        );
        const before = fromFunction('INSTALLED_WEIGHT', [rows], 1);
        expect(fromFunction('INSTALLED_WEIGHT', [moved], 1)).toBeGreaterThanOrEqual(before - 1e-9);
      }),
    );
  });

  test('another datum moves every CG by as much, other units of weight not at all', () => {
    fc.assert(
      fc.property(components, between(-100, 100), between(0.1, 10), (rows, datum, size) => {
        const cg = fromFunction('INSTALLED_WEIGHT', [rows], 1);
        const other = rows.map(([weight, arm]) => [weight * size, arm - datum]);
        expect(fromFunction('INSTALLED_WEIGHT', [other], 1)).toBeCloseTo(cg - datum, 6);
      }),
    );
  });

  test('a package against itself differs by zero, in whatever order; against another by the opposite of the other', () => {
    fc.assert(
      fc.property(
        components.chain((rows) => fc.tuple(fc.constant(rows), shuffled(rows))),
        components,
        ([rows, same], other) => {
          for (const result of [0, 1]) {
            expect(fromFunction('WEIGHT_DELTA', [rows, same], result)).toBe(0);
            const there = fromFunction('WEIGHT_DELTA', [rows, other], result);
            expect(fromFunction('WEIGHT_DELTA', [other, rows], result)).toBeCloseTo(-there, 6);
          }
        },
      ),
    );
  });

  test('a weight put in and taken out again leaves the CG where it was', () => {
    fc.assert(
      fc.property(
        between(500, 4000),
        between(60, 120),
        between(1, 300),
        between(-60, 240),
        (weight, cg, w, arm) => {
          const after = fromFunction('CG_AFTER_CHANGE', [weight, cg, w, arm]);
          expect(after).toBeGreaterThanOrEqual(Math.min(cg, arm) - 1e-9);
          expect(after).toBeLessThanOrEqual(Math.max(cg, arm) + 1e-9);
          expect(fromFunction('CG_AFTER_CHANGE', [weight + w, after, -w, arm])).toBeCloseTo(cg, 6);
        },
      ),
    );
  });

  test('ballast brings the CG to its target', () => {
    fc.assert(
      fc.property(
        between(500, 4000),
        between(60, 90),
        between(91, 110),
        between(120, 250),
        (weight, cg, target, arm) => {
          const ballast = fromFunction('BALLAST_WEIGHT', [weight, cg, target, arm]);
          expect(fromFunction('CG_AFTER_CHANGE', [weight, cg, ballast, arm])).toBeCloseTo(target, 6);
        },
      ),
    );
  });

  test('scales: all together weigh the sum, and the CG lies between them', () => {
    fc.assert(
      fc.property(between(50, 500), between(200, 900), between(200, 900), (nose, left, right) => {
        const at = (result: number) =>
          fromFunction(
            'WEIGHED_EMPTY_WEIGHT',
            [[[nose, left, right]], [[0, 2, 2]], [[38, 112, 112]]],
            result,
          );
        expect(at(0)).toBeCloseTo(nose + left + right - 4, 9);
        expect(at(1)).toBeGreaterThan(38);
        expect(at(1)).toBeLessThan(112);
        // and back onto the wheels
        expect(fromFunction('WHEEL_LOAD', [at(0), at(1), 38, 112])).toBeCloseTo(nose, 6);
      }),
    );
  });

  test('what lies behind the firewall puts no moment on it; the load factor multiplies it; the datum does not matter', () => {
    fc.assert(
      fc.property(components, between(1, 6), between(-50, 50), (rows, factor, datum) => {
        const moment = fromFunction('FIREWALL_MOMENT', [rows, 60]);
        const ahead = rows.filter((row) => row[1] < 60);
        if (ahead.length > 0) expect(fromFunction('FIREWALL_MOMENT', [ahead, 60])).toBeCloseTo(moment, 6);
        else expect(moment).toBe(0);
        expect(fromFunction('FIREWALL_MOMENT', [rows, 60, factor])).toBeCloseTo(factor * moment, 6);
        const moved = rows.map(([weight, arm]) => [weight, arm - datum]);
        expect(fromFunction('FIREWALL_MOMENT', [moved, 60 - datum])).toBeCloseTo(moment, 5);
      }),
    );
  });
});

describe('how well a weight is known', () => {
  const basis = fc.constantFrom('estimated', 'calculated', 'weighed');
  const rows = fc.array(fc.tuple(between(0.5, 400), basis), { minLength: 1, maxLength: 12 });
  const allowances = [
    ['estimated', 0.04, 0.08, 0.5],
    ['calculated', 0.02, 0.04, 0.2],
    ['weighed', 0, 0.005, 0],
  ];
  const expected = (
    items: readonly (readonly [number, string])[],
    result: number,
    table: unknown = allowances,
  ) => fromFunction('EXPECTED_WEIGHT', [items, table as (string | number)[][]], result);

  test('order does not matter', () => {
    fc.assert(
      fc.property(
        rows.chain((items) => fc.tuple(fc.constant(items), shuffled(items))),
        ([items, other]) => {
          for (const result of [0, 1, 2])
            expect(expected(other, result)).toBeCloseTo(expected(items, result), 8);
        },
      ),
    );
  });

  test('a weight less well known never narrows the band, nor does one more weight', () => {
    fc.assert(
      fc.property(rows, fc.nat(), between(0.5, 400), (items, choice, extra) => {
        const width = expected(items, 2);
        const index = choice % items.length;
        const worse = items.with(index, [items[index]![0], 'estimated']);
        if (items[index]![1] === 'weighed') {
          // An estimate beside other estimates adds its correlated part too: the band cannot shrink
          expect(expected(worse, 2)).toBeGreaterThanOrEqual(width - 1e-9);
        }
        for (const on of ['estimated', 'calculated', 'weighed'])
          expect(expected([...items, [extra, on]], 2)).toBeGreaterThanOrEqual(width - 1e-9);
      }),
    );
  });

  test('errors that go together are never better than errors that do not', () => {
    fc.assert(
      fc.property(rows, between(0, 1), between(0, 1), (items, one, other) => {
        const width = (correlation: number) =>
          expected(
            items,
            2,
            allowances.map(([name, growth, scatter]) => [name, growth, scatter, correlation]),
          );
        expect(width(Math.max(one, other))).toBeGreaterThanOrEqual(width(Math.min(one, other)) - 1e-9);
      }),
    );
  });

  test('without growth and scatter, expected is nominal and known exactly', () => {
    fc.assert(
      fc.property(rows, (items) => {
        const table = allowances.map(([name]) => [name, 0, 0, 1]);
        expect(expected(items, 1, table)).toBeCloseTo(expected(items, 0), 9);
        expect(expected(items, 2, table)).toBe(0);
      }),
    );
  });
});

describe('loadings', () => {
  const station = fc.tuple(between(40, 220), fc.constant(0), between(10, 400));
  const stations = fc.array(station, { minLength: 1, maxLength: 6 });
  const limits = (forward: number, aft: number) => [
    [1000, forward, aft],
    [6000, forward + 3, aft],
  ];
  const extreme = (list: readonly unknown[], maximum: number, side: string, result = 1) =>
    fromFunction('CG_EXTREME', [1400, 98, list as number[][], maximum, side], result);
  const worst = (list: readonly unknown[], maximum: number, envelope: number[][]) =>
    fromFunction('CG_WORST_MARGIN', [1400, 98, list as number[][], maximum, envelope]);

  test('the empty CG lies between the extremes, and more room moves neither inwards', () => {
    fc.assert(
      fc.property(stations, station, between(1500, 4000), between(0, 500), (list, another, maximum, more) => {
        const [forward, aft] = [extreme(list, maximum, 'forward'), extreme(list, maximum, 'aft')];
        expect(forward).toBeLessThanOrEqual(98 + 1e-9);
        expect(aft).toBeGreaterThanOrEqual(98 - 1e-9);
        expect(extreme([...list, another], maximum, 'forward')).toBeLessThanOrEqual(forward + 1e-9);
        expect(extreme([...list, another], maximum, 'aft')).toBeGreaterThanOrEqual(aft - 1e-9);
        expect(extreme(list, maximum + more, 'forward')).toBeLessThanOrEqual(forward + 1e-9);
        expect(extreme(list, maximum + more, 'aft')).toBeGreaterThanOrEqual(aft - 1e-9);
      }),
    );
  });

  test('order of the stations does not matter', () => {
    fc.assert(
      fc.property(
        stations.chain((list) => fc.tuple(fc.constant(list), shuffled(list))),
        between(1500, 4000),
        ([list, other], maximum) => {
          for (const side of ['forward', 'aft'])
            expect(extreme(other, maximum, side)).toBeCloseTo(extreme(list, maximum, side), 8);
          const envelope = limits(90, 115);
          expect(worst(other, maximum, envelope)).toBeCloseTo(worst(list, maximum, envelope), 8);
        },
      ),
    );
  });

  test('the worst margin is no better than that of the extremes; more room never improves it, wider limits never spoil it', () => {
    fc.assert(
      fc.property(stations, station, between(1500, 4000), between(0, 10), (list, another, maximum, wider) => {
        const envelope = limits(90, 115);
        const margin = worst(list, maximum, envelope);
        for (const side of ['forward', 'aft']) {
          const cells = [extreme(list, maximum, side, 0), extreme(list, maximum, side), envelope];
          expect(margin).toBeLessThanOrEqual(fromFunction('CG_MARGIN', cells) + 1e-9);
        }
        expect(worst([...list, another], maximum, envelope)).toBeLessThanOrEqual(margin + 1e-9);
        expect(worst(list, maximum, limits(90 - wider, 115 + wider))).toBeGreaterThanOrEqual(margin - 1e-9);
      }),
    );
  });
});
