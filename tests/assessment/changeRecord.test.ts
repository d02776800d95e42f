import { describe, expect, test } from 'vitest';
import { changeRecord } from '../../src/assessment/changeRecord.ts';
import { contextOf } from '../../src/assessment/context.ts';
import type { WeighedAircraft } from '../../src/assessment/weighingCheck.ts';
import type { Grid } from '../../src/tables/cell.ts';
import { buildOf, catalogueOf } from '../tables/smallBuild.ts';
import { smallWorkbook } from '../tables/smallWorkbook.ts';

const pound = 0.45359237;
const inch = 0.0254;

const grids = smallWorkbook();
grids.airframe.push(['MAC length', 50, 'in', '']);
const context = contextOf(catalogueOf(grids));

const weighedAs = (weight: number, moment: number): WeighedAircraft => ({
  weight: weight * pound,
  moment: moment * pound * inch,
  cg: (moment / weight) * inch,
  date: '2026-03-08',
  weightHalfWidth: pound,
  cgHalfWidth: 0,
  counted: [],
  spread: undefined,
});

type Entry = readonly [date: string, item: string, weight: number | null, arm: number];
const changes = (...entries: readonly Entry[]): Grid => [
  ['date', 'item', 'weight', 'arm'],
  ['', '', 'lb', 'in'],
  ...entries,
];
const recordOf = (weighed: WeighedAircraft, ...entries: readonly Entry[]) =>
  changeRecord(context, weighed, buildOf({ changes: changes(...entries) }));

describe('FAA knowledge-test items', () => {
  test('2,886 lb, 101,673.78 lb·in: seats out, cabinet, seat and radio in: 1.62 in aft (secondary: question banks)', () => {
    const { now, entries } = recordOf(
      weighedAs(2886, 101_673.78),
      ['2026-04-01', 'two passenger seats', -30, 71],
      ['2026-04-01', 'cabinet', 97, 71],
      ['2026-04-01', 'seat with belt', 20, 71],
      ['2026-04-01', 'radio', 30, 94],
    );
    expect(now.weight / pound).toBeCloseTo(3003, 8);
    expect(now.moment / pound / inch).toBeCloseTo(110_670.78, 5);
    const shift = (entries[entries.length - 1]?.shiftSinceWeighing ?? 0) / inch;
    expect(Math.abs(shift - 1.62)).toBeLessThanOrEqual(0.005);
  });

  test('2,100 lb at 32.5: 72,863.5 lb·in on 2,151 lb (secondary: a question bank, worked there)', () => {
    const { now } = recordOf(
      weighedAs(2100, 68_250),
      ['2026-04-01', 'two passenger seats', -36, 73],
      ['2026-04-02', 'structure', 17, 77],
      ['2026-04-03', 'seat with belt', 35, 74.5],
      ['2026-04-04', 'radio', 35, 95],
    );
    expect(now.weight / pound).toBeCloseTo(2151, 8);
    expect(now.moment / pound / inch).toBeCloseTo(72_863.5, 5);
  });
});

describe('negligible, AC 43.13-1B Chg 1, 10-2c (read): 1 lb, and 0.05 % of a MAC of 50 in, 0.025 in', () => {
  const weighed = weighedAs(900, 72_000); // at 80 in

  test('half a pound at 100 moves the CG by 0.011 in: negligible; at 130 by 0.028 in: not', () => {
    const { entries } = recordOf(
      weighed,
      ['2026-04-01', 'pouch', 0.5, 100],
      ['2026-04-02', 'beacon', 0.5, 130],
    );
    expect(entries.map(({ negligible }) => negligible)).toEqual([true, false]);
    expect((entries[0]?.shift ?? 0) / inch).toBeCloseTo((0.5 * 20) / 900.5, 6);
  });

  test('many negligible ones are not negligible together', () => {
    const { entries } = recordOf(
      weighed,
      ['2026-04-01', 'pouch', 0.6, 81],
      ['2026-04-02', 'net', 0.6, 81],
      ['2026-04-03', 'hook', 0.6, 81],
    );
    expect(entries.map(({ negligible }) => negligible)).toEqual([true, true, true]);
    expect(entries.map(({ negligibleTogether }) => negligibleTogether)).toEqual([true, false, false]);
  });

  test('without a MAC only the weight is judged', () => {
    const plain = contextOf(catalogueOf());
    const build = buildOf({ changes: changes(['2026-04-01', 'beacon', 0.5, 200]) });
    expect(changeRecord(plain, weighed, build).entries[0]?.negligible).toBe(true);
    const battery = buildOf({ changes: changes(['2026-04-01', 'battery', 6, 80]) });
    expect(changeRecord(plain, weighed, battery).entries[0]?.negligible).toBe(false);
  });
});

describe('weighing again', () => {
  const weighed = weighedAs(900, 72_000);

  test('not for 6 lb of 1,550 lb that hardly move the CG', () => {
    expect(recordOf(weighed, ['2026-04-01', 'battery', 6, 80]).weighAgain).toBeUndefined();
  });

  test('8 lb in and out are more than 0.5 % of the maximum landing weight of 1,550 lb', () => {
    const { weighAgain } = recordOf(
      weighed,
      ['2026-04-01', 'battery out', -4, 80],
      ['2026-04-01', 'battery in', 4, 80],
    );
    expect(weighAgain).toContain('8.0 lb went in and out');
    expect(weighAgain).toContain('7.8 lb'); // 7.75
  });

  test('0.5 % of a MAC of 50 in is 0.25 in: 2 lb at 200 move the CG by 0.27', () => {
    expect(recordOf(weighed, ['2026-04-01', 'tail light', 2, 200]).weighAgain).toContain('CG has moved');
  });

  test('1.5 lb at 200 move it by 0.20 in: not yet', () => {
    const { weighAgain, entries } = recordOf(weighed, ['2026-04-01', 'tail light', 1.5, 200]);
    expect((entries[0]?.shift ?? 0) / inch).toBeCloseTo((1.5 * 120) / 901.5, 6);
    expect(weighAgain).toBeUndefined();
  });

  test('nothing changed, nothing to weigh', () => {
    expect(recordOf(weighed)).toMatchObject({ entries: [], weighAgain: undefined });
  });

  test('an entry whose weight nobody knows', () => {
    const { entries, weighAgain, now } = recordOf(
      weighed,
      ['2026-04-01', 'paint', null, 95],
      ['2026-04-02', 'hook', 0.5, 80],
    );
    expect(weighAgain).toBe('the weight of "paint" is not known');
    expect(entries.map(({ negligible }) => negligible)).toEqual([undefined, true]);
    expect(entries[1]?.negligibleTogether).toBeUndefined();
    expect(now.weight / pound).toBeCloseTo(900.5, 9);
  });
});

describe('the order of days', () => {
  const weighed = weighedAs(900, 72_000);

  test('of one day in the order of their rows, before and after those of other days', () => {
    const { entries } = recordOf(
      weighed,
      ['2026-05-02', 'last', 1, 80],
      ['2026-05-01', 'a', 1, 80],
      ['2026-05-01', 'b', 1, 80],
      ['2026-04-01', 'first', 1, 80],
      ['2026-05-01', 'c', 1, 80],
    );
    expect(entries.map(({ change }) => change.item)).toEqual(['first', 'a', 'b', 'c', 'last']);
  });

  test('entries count by date, however they stand; those before the weighing are in it', () => {
    const { entries, weighedIn } = recordOf(
      weighed,
      ['2026-05-01', 'second', 1, 80],
      ['2026-03-07', 'earlier', 5, 80],
      ['2026-03-08', 'first, on the day', 2, 80],
    );
    expect(entries.map(({ change }) => change.item)).toEqual(['first, on the day', 'second']);
    expect(entries.map(({ running }) => Math.round(running.weight / pound))).toEqual([902, 903]);
    expect(weighedIn.map(({ item }) => item)).toEqual(['earlier']);
  });
});
