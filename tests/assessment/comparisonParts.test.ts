/** Small parts that results are compared and shown with: by hand, on the Wren of tests/tables/smallWorkbook.ts and the Turnstone. */
import { describe, expect, test } from 'vitest';
import { compare } from '../../src/assessment/assess.ts';
import { ballastArm } from '../../src/assessment/ballastArm.ts';
import { builtPackage } from '../../src/assessment/builtPackage.ts';
import { cgOnMac } from '../../src/assessment/cgOnMac.ts';
import { chartRows } from '../../src/assessment/chartRows.ts';
import { contextOf } from '../../src/assessment/context.ts';
import { lazily } from '../../src/assessment/lazily.ts';
import { scopeOf } from '../../src/assessment/scope.ts';
import { tableUnits } from '../../src/assessment/tableUnits.ts';
import type { Airframe } from '../../src/tables/airframe.ts';
import type { TableGrids } from '../../src/tables/catalogue.ts';
import type { Field } from '../../src/tables/field.ts';
import { catalogueOf } from '../tables/smallBuild.ts';
import { smallWorkbook } from '../tables/smallWorkbook.ts';
import { withAttribute, withCells } from './flightFixture.ts';

const small: TableGrids = smallWorkbook();
describe('computed when first read, and once', () => {
  test('each from the others, and again the same', () => {
    const calls: string[] = [];
    const whole = lazily<{ readonly one: number; readonly two: number; readonly list: object }>({
      one: () => {
        calls.push('one');
        return 1;
      },
      two: ({ one }) => {
        calls.push('two');
        return one + 1;
      },
      list: () => ({}),
    });
    expect(calls).toEqual([]);
    expect(whole.two).toBe(2);
    expect(calls).toEqual(['one', 'two']);
    expect([whole.two, whole.one]).toEqual([2, 1]);
    expect(calls).toEqual(['one', 'two']);
    expect(whole.list).toBe(whole.list);
  });

  test('every property is there to be listed and copied, read or not', () => {
    const whole = lazily<{ readonly one: number; readonly two: number }>({ one: () => 1, two: () => 2 });
    expect(Object.keys(whole)).toEqual(['one', 'two']);
    expect({ ...whole }).toEqual({ one: 1, two: 2 });
    expect(Object.keys(whole)).toEqual(['one', 'two']);
  });
});

describe('where ballast would sit', () => {
  const at = (ballast: number | undefined, firewall: number, limit: number, aftwards: 1 | -1) =>
    ballastArm({ ballastArm: ballast, firewallArm: firewall } as Airframe, limit, aftwards);

  test('in its own place where that is on the right side, else on the firewall, else nowhere', () => {
    expect(at(4, 1.2, 2.3, 1)).toBe(4);
    expect(at(4, 1.2, 2.3, -1)).toBe(1.2);
    expect(at(0.5, 1.2, 2.3, -1)).toBe(0.5);
    expect(at(undefined, 1.2, 2.3, -1)).toBe(1.2);
    expect(at(undefined, 1.2, 2.3, 1)).toBeUndefined();
    expect(at(2.3, 2.3, 2.3, 1)).toBeUndefined(); // on the limit it draws nothing
  });
});

test('a CG on the MAC: 97 in on one from 92, 56 long, is 8.9 %; not without its place and length', () => {
  const of = (macLeadingEdge?: number, macLength?: number) =>
    cgOnMac({ macLeadingEdge, macLength } as Airframe, 97);
  expect(of(92, 56)).toBeCloseTo(5 / 56, 12);
  expect(of(92, undefined)).toBeUndefined();
  expect(of(undefined, 56)).toBeUndefined();
});

test('curves of a chart: x, and each y in a column of its own', () => {
  expect(
    chartRows([
      [
        [1, 10],
        [2, 20],
      ],
      [[3, 30]],
    ]),
  ).toEqual([
    [1, 10, null],
    [2, 20, null],
    [3, null, 30],
  ]);
  expect(chartRows([])).toEqual([]);
});

describe('the package that is built', () => {
  const built = (grids: TableGrids) => builtPackage(catalogueOf(grids)).name;
  const named = (baseline: string, weighedWith: string) =>
    withAttribute(
      withAttribute(small, 'airframe', 'baseline package', baseline),
      'airframe',
      'weighed with package',
      weighedWith,
    );

  test('the baseline, else that of the weighing, else the first', () => {
    expect(built(named('Birch', 'Ash'))).toBe('Birch');
    expect(built(named('', 'Birch'))).toBe('Birch');
    expect(built(named('', ''))).toBe('Ash');
  });
});

describe('units for rows that go back into tables', () => {
  const unit = (values: Partial<Field<unknown>>, grids = small) =>
    tableUnits(contextOf(catalogueOf(grids)).display)({
      label: '',
      customaryUnit: 'own',
      ...values,
    } as Field<unknown>);
  const metric = ['weights in', 'arms in', 'fuel in', 'speeds in', 'power in', 'heights in'].reduce(
    (grids, what, index) =>
      withAttribute(grids, 'airframe', `show ${what}`, ['kg', 'mm', 'L', 'km/h', 'kW', 'm'][index] as string),
    small,
  );

  test('those the workbook shows, else the customary ones', () => {
    const kinds = [
      'mass',
      'length',
      'volume',
      'fuelFlow',
      'power',
      'speed',
      'height',
      'climb',
      'bsfc',
    ] as const;
    expect(kinds.map((each) => unit({ unit: each }))).toEqual([
      'lb',
      'in',
      'US gal',
      'US gal/h',
      'hp',
      'kt',
      'ft',
      'ft/min',
      'lb/hp·h',
    ]);
    expect(kinds.map((each) => unit({ unit: each }, metric))).toEqual([
      'kg',
      'mm',
      'L',
      'L/h',
      'kW',
      'km/h',
      'm',
      'm/s',
      'g/kWh',
    ]);
    expect(unit({ unit: 'time' })).toBe('own');
    expect(unit({})).toBe('own');
  });

  test('temperatures of the engine as shown, those of the outside air as customary', () => {
    expect(unit({ unit: 'temperature', label: 'known temperature' })).toBe('°F');
    expect(unit({ unit: 'temperature', label: 'known temperature' }, metric)).toBe('°C');
    expect(unit({ unit: 'temperature', label: 'known OAT' })).toBe('own');
  });
});

describe('what the builder still buys', () => {
  const scope = (grids: TableGrids, name = 'Ash') => {
    const comparison = compare(catalogueOf(grids));
    const { package: engine, configuration } = comparison.assessments.find(
      (each) => each.package.name === name,
    )!;
    return scopeOf(comparison.context, engine, configuration).map(({ name: item, system, price }) => [
      item,
      system,
      price,
    ]);
  };
  const sold = ['item', 'supplied by'];

  test('components of the builder’s, not those of the kit; systems that other packages have', () => {
    expect(scope(small)).toEqual([
      ['oil', 'oil', 60],
      ['coolant: nothing listed, other packages have it', 'coolant', undefined],
    ]);
    expect(scope(small, 'Birch').map(([item]) => item)).toEqual([
      'coolant',
      'oil: nothing listed, other packages have it',
    ]);
  });

  test('options aboard that the builder buys; neither standard ones nor those of the kit', () => {
    const equipment = (small.equipment ?? []).map((line, index) => [
      ...line,
      index === 0 ? sold[1]! : index > 1 ? 'builder' : '',
    ]);
    const items = scope(withCells({ ...small, equipment }, 'equipment', ['lights'], { standard: true }));
    expect(items).toContainEqual(['radio', 'option', 2000]);
    expect(items.map(([item]) => item)).not.toContain('lights');
    expect(items.map(([item]) => item)).not.toContain('fairings'); // not fitted
  });
});
