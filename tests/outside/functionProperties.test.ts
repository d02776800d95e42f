/** What must hold for any numbers, asked of the custom functions with cells, as a sheet asks. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formulas } from '../../src/functions/library.ts';
import { between } from '../engineering/between.ts';
import { type MonotoneFunction, monotoneFunctions } from './monotone.ts';
import { fromFunction } from './publishedValue.ts';

describe('which way a result goes', () => {
  const claims = monotoneFunctions.flatMap((each) =>
    Object.entries(each.claims).map(([argument, direction]) => {
      const described = formulas.find(({ name }) => name === each.name)!;
      const label = described.results[each.result ?? 0]!.label;
      const argumentName = described.arguments[Number(argument)]!.name;
      return { each, argument: Number(argument), direction, label, argumentName };
    }),
  );

  const cellsOf = ({ arguments: all }: MonotoneFunction) =>
    fc.tuple(...all.map((one) => (typeof one === 'object' ? one : fc.constant(one))));

  test.each(claims)('$each.name: $label $direction with $argumentName', ({ each, argument, direction }) => {
    fc.assert(
      fc.property(cellsOf(each), cellsOf(each), (cells, others) => {
        const [low, high] = [cells[argument] as number, others[argument] as number].sort((a, b) => a - b);
        fc.pre(high! - low! > 1e-3 * Math.abs(high!));
        const at = (value: number) => fromFunction(each.name, cells.with(argument, value), each.result);
        const change = at(high!) - at(low!);
        const rounding = 1e-9 * Math.abs(at(low!));
        if (direction === 'rises') expect(change).toBeGreaterThan(0);
        if (direction === 'falls') expect(change).toBeLessThan(0);
        if (direction === 'never falls') expect(change).toBeGreaterThanOrEqual(-rounding);
        if (direction === 'never rises') expect(change).toBeLessThanOrEqual(rounding);
      }),
    );
  });
});

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

describe('fuel', () => {
  test('fuel flow rises with power where the data are those of a Willans line with a convex bend', () => {
    const setting = between(0.4, 1);
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.integer({ min: 40, max: 100 }), { minLength: 2, maxLength: 6 }),
        between(0.02, 0.1),
        between(0.25, 0.45),
        between(0, 0.2),
        setting,
        setting,
        (settings, idle, slope, bend, one, other) => {
          const bsfc = (percent: number) => idle / (percent / 100) + slope + bend * (percent / 100);
          const points = settings.map((percent) => [percent, bsfc(percent)]);
          const [low, high] = [Math.min(...settings), Math.max(...settings)];
          const [less, more] = [one, other]
            .sort((a, b) => a - b)
            .map((part) => low + ((part - 0.4) / 0.6) * (high - low));
          fc.pre(more! - less! > 0.01);
          const flow = (percent: number) =>
            fromFunction('FUEL_FLOW_AT_SETTING', [Math.min(percent, high), 180, points]);
          expect(flow(more!)).toBeGreaterThan(flow(less!));
        },
      ),
    );
  });

  test('no setting burns less than the best point for each horsepower, nor more than the worst', () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.tuple(fc.integer({ min: 40, max: 100 }), between(0.35, 0.6)), {
          minLength: 3,
          maxLength: 6,
          selector: ([percent]) => percent,
        }),
        between(0, 1),
        (points, part) => {
          const settings = points.map(([percent]) => percent);
          const percent = Math.min(...settings) + part * (Math.max(...settings) - Math.min(...settings));
          const flow = fromFunction('FUEL_FLOW_AT_SETTING', [percent, 100, points, 6]);
          const bsfc = (flow * 6) / percent;
          const given = points.map((point) => point[1]);
          expect(bsfc).toBeGreaterThanOrEqual(Math.min(...given) - 1e-9);
          expect(bsfc).toBeLessThanOrEqual(Math.max(...given) + 1e-9);
        },
      ),
    );
  });
});

describe('limits of nature', () => {
  test('thrust times speed is no more than the power, and a disc never gives more than standing still', () => {
    fc.assert(
      fc.property(between(40, 400), between(1, 220), between(50, 90), (horsepower, knots, inches) => {
        const thrust = fromFunction('PROPELLER_THRUST', [horsepower, knots, inches, 1, 1]);
        const thrustPower = (thrust * knots * (6076.1155 / 3600)) / 550;
        expect(thrustPower).toBeLessThan(horsepower);
        expect(thrust).toBeLessThan(fromFunction('PROPELLER_THRUST', [horsepower, 0, inches, 1, 1]));
      }),
    );
  });

  test('a radiator is never better than counter-flow, an intercooler never colder than its air', () => {
    fc.assert(
      fc.property(between(0.1, 8), between(0.01, 0.99), between(1.2, 4), (ntu, ratio, pressureRatio) => {
        const decay = Math.exp(-ntu * (1 - ratio));
        expect(fromFunction('RADIATOR_EFFECTIVENESS', [ntu, ratio])).toBeLessThan(
          (1 - decay) / (1 - ratio * decay),
        );
        const charge = fromFunction('CHARGE_TEMPERATURE', [30, pressureRatio, 0.7, ratio, 15]);
        expect(charge).toBeGreaterThan(15);
      }),
    );
  });

  test('dry air: density altitude of standard air is its pressure altitude', () => {
    fc.assert(
      fc.property(between(-1000, 20_000), (feet) => {
        const celsius = fromFunction('ISA_TEMPERATURE', [feet]);
        expect(fromFunction('DENSITY_ALTITUDE', [feet, celsius])).toBeCloseTo(feet, 4);
      }),
    );
  });
});

test('a column of cells gives what its cells give one by one', () => {
  fc.assert(
    fc.property(fc.array(between(0, 18_000), { minLength: 2, maxLength: 6 }), (feet) => {
      const column = feet.map((value) => [value]);
      const together = formulas.find(({ name }) => name === 'AIR_DENSITY_RATIO')!.call([column]);
      expect(together).toEqual(feet.map((value) => [fromFunction('AIR_DENSITY_RATIO', [value])]));
    }),
  );
});
