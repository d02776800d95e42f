/** A line of the comparison with its differences, and the lines of the cost. */
import { describe, expect, test } from 'vitest';
import { type Assessment, type Comparison, compare } from '../../src/assessment/assess.ts';
import { comparisonLines } from '../../src/assessment/comparisonLines.ts';
import type { ComparisonRow } from '../../src/assessment/comparisonRows.ts';
import { costDetail, costRows } from '../../src/assessment/costRows.ts';
import { catalogueOf } from '../tables/smallBuild.ts';
import { smallWorkbook } from '../tables/smallWorkbook.ts';
import { linesIn } from './comparisonGroup.ts';
import { withAttribute } from './flightFixture.ts';

describe('a line and its differences', () => {
  type Values = readonly (number | string | undefined)[];
  const rowOf = (values: Values, differs = true): ComparisonRow => ({
    label: 'figure',
    shown: 'ratio',
    differs,
    value: (assessment, { assessments }) => values[assessments.indexOf(assessment)],
  });
  /** The lines of both packages, or of one of them: 0 is Ash, the baseline. */
  const lines = (row: ComparisonRow, ...shown: number[]) => {
    const comparison = compare(catalogueOf());
    const { assessments } = comparison;
    const some = shown.map((index) => assessments[index] as Assessment);
    return comparisonLines([row], comparison, some.length > 0 ? some : assessments);
  };

  test('differences of the rounded figures: 0.3 − 0.1 is 0.2', () => {
    expect(lines(rowOf([0.1004, 0.3]))).toEqual([
      ['figure', '', 0.1, 0.3],
      ['  against Ash', '', null, 0.2],
    ]);
    expect(lines(rowOf([1, 2], false))).toEqual([['figure', '', 1, 2]]);
  });

  test('of words, of nothing and from nothing no difference', () => {
    expect(lines(rowOf([1, 'none']))[1]).toEqual(['  against Ash', '', null, null]);
    expect(lines(rowOf([1, undefined]))).toEqual([
      ['figure', '', 1, 'not known'],
      ['  against Ash', '', null, null],
    ]);
    expect(lines(rowOf([undefined, 2]))[1]).toEqual(['  against Ash', '', null, null]);
  });

  test('of another package alone, from the baseline that is not shown; the baseline alone has none', () => {
    expect(lines(rowOf([1, 4]), 1)).toEqual([
      ['figure', '', 4],
      ['  against Ash', '', 3],
    ]);
    expect(lines(rowOf([1, 4]), 0)).toEqual([
      ['figure', '', 1],
      ['  against another package', '', 'none'],
    ]);
  });

  test('a line without a kind has no unit and shows what there is', () => {
    expect(lines({ label: 'words', shown: undefined, differs: false, value: () => 'yes' })).toEqual([
      ['words', '', 'yes', 'yes'],
    ]);
    expect(lines({ label: 'number', shown: undefined, differs: false, value: () => 0.12345 })).toEqual([
      ['number', '', 0.12345, 0.12345],
    ]);
  });
});

describe('cost in the comparison', () => {
  const known = (value: number) => ({ value, complete: true });
  const least = (value: number) => ({ value, complete: false });
  const costOf = (label: string, own: object, baseline: object = {}) => {
    const row = costRows.find((each) => each.label.startsWith(label));
    const { context } = compare(catalogueOf());
    const comparison = { context, baseline: { cost: baseline } } as unknown as Comparison;
    return row?.value({ cost: own } as Assessment, comparison);
  };

  test('an amount, the least it can be, or nothing known of it', () => {
    expect(costOf('ready to fly', { readyToFly: known(1234) })).toBe(1234);
    expect(costOf('ready to fly', { readyToFly: least(1234.4) })).toBe('≥ 1,234');
    expect(costOf('ready to fly', { readyToFly: least(0) })).toBeUndefined();
    expect(costOf('ready to fly', { readyToFly: known(0) })).toBe(0);
    expect(costOf('an hour of flight', { hour: known(150) })).toBe(150);
    expect(costOf('bought and flown', { lifetime: known(9) })).toBe(9);
  });

  test('cheaper after so many hours, up to so many, at once, never, or not known', () => {
    const cost = (bought: number, hourly: number) => ({
      readyToFly: known(bought),
      hourFlown: known(hourly),
    });
    const than = (bought: number, hourly: number) =>
      costOf('cheaper than baseline', cost(bought, hourly), cost(1000, 10));
    expect(than(1200, 8)).toBe(100 * 3600); // 200 more, 2 an hour less
    expect(than(800, 12)).toBe('up to 100');
    expect(than(900, 9)).toBe('at once');
    expect(than(1100, 11)).toBe('never');
    expect(
      costOf('cheaper than baseline', { ...cost(1, 1), readyToFly: least(1) }, cost(2, 2)),
    ).toBeUndefined();
    const same = cost(1, 1);
    expect(costOf('cheaper than baseline', same, same)).toBe('baseline');
  });

  test('its title: hours a year, years; causes of an hour from the cost', () => {
    const rates = withAttribute(
      withAttribute(smallWorkbook(), 'rates', 'hours a year', 80, 'h'),
      'rates',
      'years',
      12,
    );
    expect(linesIn('Cost: 80 h a year, 12 years', rates).of('  fuel in cruise')?.[0]).toBe('USD/h');
    expect(costOf('  fuel in cruise', { perHour: { fuel: 7, engine: 9 } })).toBe(7);
    expect(costOf('  engine overhaul', { perHour: { fuel: 7, engine: 9 } })).toBe(9);
  });

  test('in detail every cause, and what it is to buy', () => {
    const [ash] = compare(catalogueOf()).assessments as [Assessment];
    const value = (label: string) =>
      costDetail.find((each) => each.label === label)?.value(ash, compare(catalogueOf()));
    expect(value('  kit, package and options')).toBeCloseTo(70_900, 6);
    expect(value('  tax')).toBeCloseTo(4963, 6);
    expect(value('  still to buy, without tax')).toBe(60);
    expect(value('  labour')).toBe(ash.cost.labour);
    expect(costDetail.filter(({ label }) => / overhaul$/.test(label))).toHaveLength(4);
  });
});
