/** The sheet of a weighing against prediction and quote, in figures and sentences: weighedWren.ts, in lb and in. */
import { describe, expect, test } from 'vitest';
import { withAttribute, withCells } from './flightFixture.ts';
import { expected, kitArm, pound, small, weighed } from './weighedWren.ts';

describe('on the sheet', () => {
  test('stated, expected, weighed, their half-widths and differences', () => {
    const { row, about, sum } = weighed(20, 60);
    // weighed 0.6 %: 5.4, 1.32, 0.18, 0.264, 0.036, 0.04; calculated, ρ 0.2: 0.48, 10.4; estimated 0.72
    const half = Math.sqrt(31.006 + 0.2 * 10.88 ** 2 + 0.8 * (0.48 ** 2 + 10.4 ** 2) + 0.72 ** 2);
    expect(row('basic empty weight')).toEqual([
      'basic empty weight',
      951.7,
      957.3,
      expect.closeTo(half, 1),
      977.3,
      1.7,
      25.6,
      20,
      'OUTSIDE',
      'lb',
    ]);
    const cg = (expected.moment + 1200) / sum;
    const [, stated, before, , after, measured, lessStated, lessExpected, , unit] = row('CG') ?? [];
    expect(stated).toBeCloseTo(72_861.6 / 951.7, 2);
    expect(before).toBeCloseTo(expected.moment / expected.weight, 2);
    expect(after).toBeCloseTo(cg, 2);
    expect(measured).toBeCloseTo(about(cg) / sum, 2);
    expect(lessStated).toBeCloseTo(cg - 72_861.6 / 951.7, 2);
    expect(lessExpected).toBeCloseTo(cg - expected.moment / expected.weight, 2);
    expect(unit).toBe('in');
    expect(row('moment')).toEqual([
      'moment',
      72_862,
      Math.round(expected.moment),
      null,
      Math.round(expected.moment + 1200),
      null,
      Math.round(expected.moment + 1200 - 72_861.6),
      1200,
      null,
      'lb·in',
    ]);
  });

  test('above them what they are', () => {
    const shown = weighed(20, 60).shown();
    expect(shown[0]?.[0]).toMatch(/^Against the prediction/);
    const [head, ...rows] = shown.slice(1, 5);
    expect(head).toHaveLength(10);
    expect(rows.map((cells) => cells.length)).toEqual([10, 10, 10]);
    expect([head?.[1], head?.[2], head?.[4], head?.[9]]).toEqual(['Stated', 'Expected', 'Weighed', 'Unit']);
  });

  test('the place and how well it is known', () => {
    const { row, about } = weighed(20, 60);
    const text = `± ${(about(60) / 20).toFixed(1)} in: there is something of the aircraft there`;
    expect(row('the unexplained weight')).toEqual(['the unexplained weight would have to sit at', 60, text]);
    const beyond = weighed(20, 149).row('the unexplained weight');
    expect(String(beyond?.[2])).toContain('not by more than the scales may be off');
  });

  test('inside the band where both are, nothing has to be found; the weight inside alone is not enough', () => {
    const heading = ({ shown }: ReturnType<typeof weighed>) =>
      String(shown().find(([cell]) => String(cell).startsWith('What alone'))?.[0]);
    const inside = weighed(2, 60);
    expect(inside.row('CG')?.[8]).toBe('inside the band');
    expect(heading(inside)).toMatch(/nothing has to be found\.$/);
    const moved = weighed(2, 2000); // 4,000 lb·in: 4 in
    expect(moved.row('basic empty weight')?.[8]).toBe('inside the band');
    expect(moved.row('CG')?.[8]).toBe('OUTSIDE');
    expect(heading(moved)).not.toContain('nothing has to be found');
  });

  test('eight causes, and of each where, stated, needed, off by, in half-widths', () => {
    const { shown } = weighed(6, kitArm);
    const rows = shown();
    const head = rows.findIndex((cells) => cells[1] === 'At');
    expect(rows[head]).toHaveLength(8);
    expect(rows[head + 1]).toEqual(['', 'in', 'lb', 'lb', 'lb']);
    expect(rows.slice(head + 2).find(([name]) => name === 'kit as delivered')).toEqual([
      'kit as delivered',
      32.8,
      260,
      271.2,
      6,
      0.6,
      0,
      0.6,
    ]);
    expect(rows[head + 9]).toHaveLength(8);
    expect(rows[head + 10]).toEqual(['What the weighing changes']);
  });
});

describe('the likeliest in a sentence', () => {
  const sentence = (of: ReturnType<typeof weighed>) => String(of.row('likeliest')?.[0]);

  test('a weight: what it would weigh', () => {
    const words = sentence(weighed(6, kitArm));
    expect(words).toBe(
      'likeliest: kit as delivered, 271.2 lb instead of the 260.0 lb stated: 0.6 of its own half-widths, weight and moment then fit within 0 of the scales’',
    );
  });

  test('a scale: too much or too little', () => {
    const scale = (error: number) => {
      const { found, rowsOf } = weighed(error, 95);
      const causes = found.causes.filter(({ name }) => name === 'reading, left main');
      return rowsOf({ ...found, causes }).find(([cell]) => String(cell).startsWith('likeliest'))?.[0];
    };
    expect(scale(2.5)).toMatch(
      /^likeliest: reading, left main, 2\.5 lb too much: 2\.5 of its own half-widths/,
    );
    expect(scale(-2.5)).toMatch(/^likeliest: reading, left main, 2\.5 lb too little: 2\.5 of its own/);
  });

  test('weights on a basis without scatter cannot be off', () => {
    const exact = ['estimated', 'calculated', 'weighed'].reduce(
      (grids, basis) => withCells(grids, 'allowances', [basis], { scatter: 0 }),
      withAttribute(small, 'airframe', 'empty weight known to', 0.1, 'lb'),
    );
    const names = weighed(2.5, 95, exact).found.causes.map(({ name }) => name);
    expect(names.sort()).toEqual([
      'airframe, empty weight',
      'reading, left main',
      'reading, nosewheel',
      'reading, right main',
    ]);
  });

  test('all of a basis, where they err together: more or less', () => {
    const together = withCells(small, 'allowances', ['calculated'], { correlation: 100 });
    const arm = (10.4 * kitArm + 0.48 * 42) / 10.88;
    const all = (error: number) => sentence(weighed(error, arm, together));
    expect(all(5)).toMatch(/^likeliest: every calculated weight, 5\.0 lb more together: 0\.5 of/);
    expect(all(-5)).toMatch(/^likeliest: every calculated weight, 5\.0 lb less together: 0\.5 of/);
  });

  test('three half-widths and more are no explanation: 45 lb at the kit are 4.3 of them', () => {
    expect(sentence(weighed(30, kitArm))).toMatch(/^likeliest: kit as delivered, 295\.2 lb/); // 2.9
    const far = weighed(45, kitArm);
    expect(far.row('likeliest')).toBeUndefined();
    expect(far.row('no single weight or reading explains it')).toHaveLength(1);
  });
});

describe('against the quote', () => {
  const quoted = { expectedWeight: 970 * pound, countedOnWeight: 980 * pound };

  test('promise by promise: a weight may be less, a payload more', () => {
    const { shown } = weighed(20, 60); // 977.26; full tanks leave 1,600 − 977.26 − 201 = 421.74
    const rows = shown({ ...quoted, expectedPayload: 425 * pound, countedOnPayload: 420 * pound });
    const start = rows.findIndex(([cell]) => cell === 'Against the quote');
    expect(rows.slice(start + 1, start + 6)).toEqual([
      ['', 'Quoted', 'As weighed', 'Difference', '', 'Unit'],
      ['empty weight expected', 970, 977.3, 7.3, 'NOT KEPT', 'lb'],
      ['empty weight to be counted on', 980, 977.3, -2.7, 'kept', 'lb'],
      ['payload expected, full tanks', 425, 422, -3, 'NOT KEPT', 'lb'],
      ['payload to be counted on, full tanks', 420, 422, 2, 'kept', 'lb'],
    ]);
  });

  test('exactly what was promised is kept; only what was promised is shown; with its number where it has one', () => {
    const { shown, aircraft } = weighed(20, 60);
    const rows = shown({ quote: 'Q-7', expectedWeight: aircraft.weight });
    const start = rows.findIndex(([cell]) => cell === 'Against quote Q-7');
    expect(rows[start + 2]).toEqual(['empty weight expected', 977.3, 977.3, 0, 'kept', 'lb']);
    expect(String(rows[start + 3]?.[0])).toMatch(/^What alone would explain/);
    const none = shown();
    expect(none.some(([cell]) => String(cell).startsWith('Against quote'))).toBe(false);
    expect(none.every((cells) => Array.isArray(cells))).toBe(true);
    expect(none.findIndex(([cell]) => String(cell).startsWith('What alone'))).toBe(6); // straight after the place
  });
});
