/** Metamorphic: how results follow when many inputs are changed by one law. */
import { describe, expect, test } from 'vitest';
import type { LoadingPolygon } from '../../src/engineering/loadingPolygon.ts';
import { comparisonOf, everyFigure, sampleGrids, withNumbers } from './samples.ts';
import { type Spot, spotsOf } from './spots.ts';
import type { Grids } from './workbooks.ts';

const names = ['godwit', 'sanderling', 'minimal'] as const;
const figures = (grids: Grids) =>
  new Map(
    comparisonOf(grids).assessments.flatMap((each) =>
      [...everyFigure(each)].map(([path, value]) => [`${each.package.name}${path}`, value] as const),
    ),
  );

/** Every number against what the law says of it; undefined where it says nothing. */
function expectLaw(
  before: ReadonlyMap<string, number>,
  after: ReadonlyMap<string, number>,
  law: (path: string, value: number) => number | undefined,
  tolerance = 1e-9,
): void {
  expect([...after.keys()].sort()).toEqual([...before.keys()].sort());
  const wrong: string[] = [];
  for (const [path, value] of before) {
    const expected = law(path, value);
    const found = after.get(path) as number;
    if (expected !== undefined && Math.abs(found - expected) > tolerance * Math.max(1, Math.abs(expected)))
      wrong.push(`${path}: ${value} became ${found}, not ${expected}`);
  }
  expect(wrong.slice(0, 20)).toEqual([]);
}

describe.each(names)('%s', (name) => {
  const grids = sampleGrids(name);
  const before = figures(grids);

  test.each([0.01, 3])('all prices times %d: every amount of money as much, nothing else', (factor) => {
    const after = figures(
      withNumbers(grids, ({ field, cell }) =>
        field.unit?.startsWith('currency') ? Number(cell) * factor : undefined,
      ),
    );
    const isMoney =
      /\.price\.(kit|powerplant|options|builder|total|tax)$|\.cost\.((readyToFly|hour|hourFlown|lifetime)\.value|labour|fuelPrice|perHour\.\w+|scope\.\d+\.price)$/;
    const amounts = [...before.keys()].filter((path) => isMoney.test(path));
    if (name !== 'minimal')
      expect(amounts.filter((path) => before.get(path) !== 0).length).toBeGreaterThan(30);
    expectLaw(before, after, (path, value) => (isMoney.test(path) ? value * factor : value));
  });

  test.each([-1.3, 2.7])('the datum elsewhere by %d m: arms move with it, nothing else', (shift) => {
    const spots = spotsOf({ grids });
    const unitOf = (spot: Spot) =>
      spots.find(
        (each) =>
          each.role === 'unit' &&
          each.table === spot.table &&
          each.field === spot.field &&
          (spot.shape === 'rows' ? each.column === spot.column : each.row === spot.row),
      )?.cell;
    const metres: Readonly<Record<string, number>> = { in: 0.0254, mm: 0.001, m: 1 };
    const fromFirewall = ({ table, row }: Spot) => {
      const at = grids[table]?.[0]?.indexOf('arm from') ?? -1;
      return at >= 0 && grids[table]?.[row]?.[at] === 'firewall';
    };
    const isArm =
      /^(arm|(forward|aft) limit|firewall arm|empty CG|MAC leading edge|ballast arm|main wheel arm|nose or tail wheel arm)$/;
    let moved = 0;
    const after = figures(
      withNumbers(grids, (spot) => {
        if (!isArm.test(spot.field.label) || fromFirewall(spot)) return undefined;
        moved++;
        return Number(spot.cell) + shift / (metres[String(unitOf(spot))] as number);
      }),
    );
    expect(moved).toBeGreaterThan(10);
    expectLaw(before, after, (path, value) => {
      if (path.endsWith('.momentHalfWidth')) return undefined; // about the datum
      if (path.endsWith('.moment') && before.has(path.replace(/moment$/, 'weight')))
        return value + shift * (before.get(path.replace(/moment$/, 'weight')) as number);
      const isPlace =
        /\.(arm|cg)$|\.envelope\.points\.\d+\.(forward|aft)$|\.(margins\.(forward|aft|worst)|worst|critical)\.limit$/;
      return isPlace.test(path) ? value + shift : value;
    });
  });

  test('stations in another order: the same region of loadings, the same margins', () => {
    const [head = [], units = [], ...rows] = grids.stations ?? [];
    const other = { ...grids, stations: [head, units, ...rows.reverse()] };
    const [first, second] = [comparisonOf(grids), comparisonOf(other)];
    first.assessments.forEach(({ balance }, index) => {
      const turned = second.assessments[index]?.balance;
      const [one, two] = [balance.polygon, turned?.polygon] as [LoadingPolygon, LoadingPolygon];
      for (let step = 0; step < 360; step++) expect(support(two, step)).toBeCloseTo(support(one, step), 8);
      for (const side of ['forward', 'aft'] as const)
        expect(turned?.margins?.[side].margin).toBeCloseTo(balance.margins?.[side].margin as number, 12);
    });
  });
});

/** How far a region of weight and moment reaches in a direction of so many degrees. */
function support({ forward, aft }: LoadingPolygon, degrees: number): number {
  const [x, y] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
  return Math.max(...[...forward, ...aft].map(({ weight, moment }) => x * weight + y * moment));
}

test('a component in two halves: nothing nominal changes, and what is independent scatters less', () => {
  const grids = sampleGrids('godwit');
  const [head = []] = grids.components ?? [];
  const weightAt = head.indexOf('weight');
  const priceAt = head.indexOf('price');
  const split: Grids = {
    ...grids,
    components: (grids.components ?? []).flatMap((row) => {
      if (row[0] !== 'Hazel' || row[1] !== 'engine, dry') return [row];
      const half = row.with(weightAt, Number(row[weightAt]) / 2).with(priceAt, Number(row[priceAt]) / 2);
      return [half.with(1, 'engine, one half'), half.with(1, 'engine, other half')];
    }),
  };
  const of = (all: Grids) => comparisonOf(all).assessments.find((each) => each.package.name === 'Hazel');
  const [one, two] = [of(grids), of(split)];
  if (!one || !two) throw new Error('no Hazel');
  for (const mass of ['nominal', 'expected'] as const) {
    expect(two.empty.mass[mass].weight).toBeCloseTo(one.empty.mass[mass].weight, 9);
    expect(two.empty.mass[mass].moment).toBeCloseTo(one.empty.mass[mass].moment, 9);
  }
  // By hand: the independent part of the square is (1 − ρ) Σ (w u)², ρ 0.2, u 0.04, w 182.6 lb: two halves have half of it
  const less = (1 - 0.2) * (182.6 * 0.45359237 * 0.04) ** 2 * 0.5;
  expect(one.empty.mass.weightHalfWidth ** 2 - two.empty.mass.weightHalfWidth ** 2).toBeCloseTo(less, 8);
  expect(two.price.total).toBeCloseTo(one.price.total, 6);
  expect(two.payload.fullFuel.nominal).toBeCloseTo(one.payload.fullFuel.nominal, 9);
  expect(two.balance.margins?.worst.margin).toBeCloseTo(one.balance.margins?.worst.margin as number, 12);
});

test.each(['godwit', 'sanderling'] as const)(
  '%s flown twice as much: standing costs halve an hour',
  (name) => {
    const grids = sampleGrids(name);
    const doubled = withNumbers(grids, ({ table, field, cell }) =>
      table === 'rates' && field.label === 'hours a year' ? 2 * Number(cell) : undefined,
    );
    const { rates } = comparisonOf(grids).context.catalogue;
    const before = figures(grids);
    expectLaw(before, figures(doubled), (path, value) => {
      const packageName = path.split('.')[0] as string;
      const standing = ['insurance', 'hangar'].reduce(
        (sum, each) => sum + (before.get(`${packageName}.cost.perHour.${each}`) ?? 0),
        0,
      );
      if (/\.perHour\.(insurance|hangar)$/.test(path)) return value / 2;
      if (path.endsWith('.cost.hour.value')) return value - standing / 2;
      if (!path.endsWith('.cost.lifetime.value')) return value;
      // as many hours again, which cost what flying costs
      const hours = (rates.hoursPerYear / 3600) * rates.years;
      return value + hours * (before.get(`${packageName}.cost.hourFlown.value`) as number);
    });
  },
);
