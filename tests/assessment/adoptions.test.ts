/** What a weighing, measured results and an issued quote put into the tables, and what is said before: Wren, Godwit, Turnstone. */
import { describe, expect, test } from 'vitest';
import {
  type AllGrids,
  quoteAdoption,
  readAll,
  resultsAdoption,
  weighingAdoption,
} from '../../src/assessment/adoptions.ts';
import type { IssuedQuote } from '../../src/assessment/issuedQuote.ts';
import { quoteFrom } from '../../src/assessment/quoteChanges.ts';
import { weighingFirst } from '../../src/assessment/recalibrationRows.ts';
import type { Cell, Grid } from '../../src/tables/cell.ts';
import type { Inputs } from '../../src/tables/inputs.ts';
import { type BuildCells, smallBuild } from '../tables/smallBuild.ts';
import { put, smallWorkbook } from '../tables/smallWorkbook.ts';
import { asBuiltBuildGrids, asBuiltGrids } from './asBuilt.ts';
import { withAttribute, withCells } from './flightFixture.ts';
import { smallInputs, withCell } from './quoteFixture.ts';

describe('a weighing', () => {
  // Weighed 900 and 917 lb, 71,625 and 72,801 lb·in: 908.5 at 79.49; then 0.5 lb at 150 and 6 lb at 40: 915, 72,528
  const wren = (change: (build: BuildCells) => void = () => {}): AllGrids => {
    const build = smallBuild();
    change(build);
    const grids = smallWorkbook();
    for (const label of ['fluids', 'unusable fuel'])
      grids.airframe.push([`weighed with ${label}`, null, '', '']);
    for (const label of ['weight', 'CG']) grids.airframe.push([`empty ${label} known to`, null, '', '']);
    return { ...grids, ...build };
  };

  test('with the changes since: what it rests on, what it changes, what is written', () => {
    const { what, words, edits } = weighingAdoption(wren());
    expect(what).toBe('Weighing of 2026-03-08 with 2 changes since, Ash');
    expect(words[0]).toBe('Weighed: 908.5 lb at 79.5 in, known to 8.5 lb.');
    expect(words[1]).toBe('With 2 changes since: 915.0 lb at 79.3 in.');
    expect(words).toContain('useful load, as stated: 700 → 685 lb');
    expect(words.some((line) => line.includes('a new weighing is due'))).toBe(false);
    const values = edits
      .filter(({ words: told }) => told !== undefined)
      .map(({ words: told, is }) => [told, is]);
    expect(values).toEqual([
      ['airframe, empty weight: 900 lb → 915 lb', 915],
      ['airframe, empty CG: 80 in → 79.2656 in', 79.2656], // 72,528/915
      ['airframe, weighed with fluids: empty → TRUE', true],
      ['airframe, weighed with unusable fuel: empty → TRUE', true],
      ['airframe, empty weight known to: empty → 8.5 lb', 8.5],
      [expect.anything(), expect.closeTo((71_625 / 900 - 72_801 / 917) / 2, 6)],
    ]);
    expect(edits.find(({ is }) => is === 'before 2026-05-01: 900 lb')).toBeDefined();
  });

  test('with one change, and with none: on the day of the weighing', () => {
    const one = weighingAdoption(wren((build) => build.changes.splice(3)));
    expect(one.what).toBe('Weighing of 2026-03-08 with 1 change since, Ash');
    expect(one.words[1]).toBe('With 1 change since: 909.0 lb at 79.5 in.');
    expect(one.edits.some(({ is }) => is === 'before 2026-04-01: 900 lb')).toBe(true);
    const none = weighingAdoption(wren((build) => build.changes.splice(2)));
    expect(none.what).toBe('Weighing of 2026-03-08, Ash');
    expect(none.words[1]).toMatch(/^useful load/);
    expect(none.edits.some(({ is }) => is === 'before 2026-03-08: 900 lb')).toBe(true);
  });

  test('a new weighing that is due, and equipment told twice', () => {
    const unknown = weighingAdoption(wren((build) => put(build.changes, 3, 'weight', null)));
    expect(unknown.words).toContain('▲ Check: a new weighing is due: the weight of "beacon" is not known');
    const radio = weighingAdoption(wren((build) => put(build['weighing items'], 3, 'item', 'radio')));
    expect(radio.words).toContain(
      '▲ Check: radio: weighing A takes it off as no part of the empty aircraft; it is ticked as fitted',
    );
  });

  test('none that counts', () => {
    const level = wren((build) => {
      for (const row of [3, 4, 5, 6, 7, 8]) put(build.weighings, row, 'level', false);
    });
    expect(() => weighingAdoption(level)).toThrow('There is no weighing that counts');
  });

  test('faults of the tables first, five of them and how many more; of the builder’s tables too', () => {
    const spoilt = (rows: number) => {
      const grids = wren();
      for (let row = 2; row < 2 + rows; row++)
        put(
          grids.tanks as Cell[][],
          3,
          ['arm', 'usable', 'unusable', 'burn order', 'standard', 'fitted', 'tank weight'][row - 2] as string,
          'x',
        );
      return grids;
    };
    const told = (grids: AllGrids) => {
      try {
        readAll(grids);
        return [];
      } catch (error) {
        return (error as Error).message.split('\n');
      }
    };
    expect(told(spoilt(5))).toHaveLength(6);
    expect(told(spoilt(5))[0]).toBe('Correct the tables first:');
    expect(told(spoilt(7))).toHaveLength(7);
    expect(told(spoilt(7))[6]).toBe('and 2 more');
    expect(told(wren((build) => put(build.changes, 3, 'arm', 'x')))[1]).toContain('changes, row 3');
    expect(told(wren())).toEqual([]);
  });
});

describe('measured results', () => {
  const withColumns = (grid: Grid, columns: readonly string[]): Grid =>
    grid.map((line, index) => [...line, ...columns.map((name) => (index === 0 ? name : ''))]);
  const godwit = (): AllGrids => {
    const grids = asBuiltGrids();
    const known = withColumns(grids['known points'] as Grid, ['rate of climb', 'ground roll']);
    return { ...grids, ...asBuiltBuildGrids(), 'known points': known };
  };
  const only = (grids: AllGrids, ...tests: string[]): AllGrids => ({
    ...grids,
    'test results': (grids['test results'] as Grid).filter(
      ([name], index) => index < 2 || tests.includes(String(name)),
    ),
  });
  const told = (grids: AllGrids) =>
    resultsAdoption(grids)
      .edits.map(({ words }) => words)
      .filter((words) => words !== undefined);

  test('each in the table it belongs to, whatever day came last', () => {
    const { what, edits, words } = resultsAdoption(godwit());
    expect(what).toBe('Measured results to 2026-07-05, Rowan');
    const tables = [...new Set(edits.map(({ table }) => table))];
    expect(tables).toEqual(['known points', 'fuel points', 'cooling', 'tanks', 'airframe', 'packages']);
    expect(words.some((line) => line.startsWith('CLmax landing: 1.95 → '))).toBe(true);
    expect(words).not.toContain(weighingFirst);
  });

  test('to the latest day, whichever row it is in', () => {
    // fuel flows of 27 June, and below them a battery of the 13th
    expect(resultsAdoption(only(godwit(), 'fuel flow', 'battery')).what).toBe(
      'Measured results to 2026-06-27, Rowan',
    );
  });

  test('fuel points of the package change where they stand: eight of them, by nothing but the BSFC', () => {
    const edits = resultsAdoption(only(godwit(), 'fuel flow')).edits;
    expect(edits.map(({ table, row, column }) => [table, row, column])).toEqual(
      [2, 3, 4, 5, 6, 7, 8, 9].map((row) => ['fuel points', row, 3]),
    );
  });

  test('a row that stays where it is changes in what was measured alone', () => {
    expect(told(only(godwit(), 'unusable fuel'))).toEqual(['tanks, row 3: unusable 2 US gal → 2.4 US gal']);
    const [fins, ...others] = told(only(withRows(godwit(), 'cooling climb', 'fins'), 'cooling climb'));
    expect(others).toEqual([]);
    // of two the hotter for its conditions, as long as they are two: on 165 hp at 3,000 ft, as the one before
    expect(fins).toBe(
      'cooling, row 3: known true airspeed 92 kt → 100 kt, known OAT 17 °C → 15 °C, known temperature 368 °F → 374 °F, source stabilised climb of the demonstrator → cooling climb, 2026-06-21',
    );
  });

  test('known points in place of all there were: one before, ten flights and a roll after', () => {
    const edits = resultsAdoption(only(godwit(), 'level flight', 'climb', 'takeoff roll')).edits;
    const rows = [...new Set(edits.filter(({ table }) => table === 'known points').map(({ row }) => row))];
    // units for the columns that had none, then rows 3 to 13
    expect(rows.filter((row) => row >= 2)).toEqual(Array.from({ length: 11 }, (_, index) => index + 2));
  });

  test('without fuel points of the package they go below the others’', () => {
    const bare = only(godwit(), 'fuel flow');
    const grid = (bare['fuel points'] as Grid).slice(0, 2);
    const others: Grid = [...grid];
    const edits = resultsAdoption({ ...bare, 'fuel points': others }).edits;
    expect([...new Set(edits.map(({ table, row }) => `${table} ${row}`))]).toEqual([
      'fuel points 2',
      'fuel points 3',
      'fuel points 4',
    ]);
    const titled: Grid = [['Consumption'], ['of the maker'], ...grid];
    const below = resultsAdoption({ ...bare, 'fuel points': titled }).edits;
    expect([...new Set(below.map(({ row }) => row))]).toEqual([4, 5, 6]);
    // 10.29 US gal/h of 6 lb on 139 hp
    const bsfc = edits.find(({ row, column }) => row === 2 && column === 3)?.is as number;
    expect(bsfc).toBeCloseTo((10.29 * 6) / 139, 5);
  });

  test('an unusable fuel that is in the empty weight: to be corrected there too', () => {
    const inside = (grids: AllGrids): AllGrids => ({
      ...grids,
      ...withAttribute(grids, 'airframe', 'weighed with unusable fuel', true),
    });
    const check = (grids: AllGrids) =>
      resultsAdoption(grids).words.some((line) => line.includes('has the unusable fuel in it'));
    expect(check(inside(only(godwit(), 'unusable fuel')))).toBe(true);
    expect(check(inside(only(godwit(), 'fuel flow')))).toBe(false);
    expect(check(only(godwit(), 'unusable fuel'))).toBe(false);
  });

  test('flown with other equipment than it was weighed with: the weighing first', () => {
    const { equipment } = withCells(asBuiltGrids(), 'equipment', ['wheel fairings'], { fitted: true });
    expect(resultsAdoption({ ...godwit(), equipment } as AllGrids).words).toContain(weighingFirst);
  });

  test('nothing measured', () => {
    expect(() => resultsAdoption(only(godwit()))).toThrow('Nothing was measured yet');
  });

  function withRows(grids: AllGrids, name: string, stream: string): AllGrids {
    return {
      ...grids,
      'test results': (grids['test results'] as Grid).filter(
        (line) => line[0] !== name || line.includes(stream),
      ),
    };
  }
});

describe('an issued quote', () => {
  // The weights of tests/assessment/quote.test.ts: 432.4 expected, 434.1 to be counted on; payload 246 and 244 kg
  const issued = (inputs: Inputs = smallInputs): IssuedQuote => {
    const { quote } = quoteFrom(inputs);
    if (quote === undefined) throw new Error('faults');
    return {
      number: 7,
      revision: 'B',
      date: '2026-05-31',
      validUntil: '2026-06-30',
      digest: '',
      inputs,
      quote,
    };
  };
  const asQuoted = (unit: string): Cell[][] => [
    ['attribute', 'value', 'unit'],
    ...[
      'quote',
      'empty weight expected',
      'empty weight to be counted on',
      'payload expected, full tanks',
      'payload to be counted on, full tanks',
    ].map((label) => [label, '', label === 'quote' ? '' : unit]),
  ];
  const grids = (unit = 'kg'): AllGrids => {
    const { quote: _terms, ...tables } = smallInputs;
    return { ...tables, 'as quoted': asQuoted(unit) } as AllGrids;
  };

  test('its own figures, in the unit that stands there', () => {
    const { what, words, edits } = quoteAdoption(grids(), issued());
    expect(what).toBe('What quote Q-0007 B promised');
    expect(words).toEqual(['Turnstone with Elm, issued 2026-05-31, for A Customer.']);
    expect(edits.map(({ is }) => is)).toEqual(['Q-0007 B', 432.4, 434.1, 246, 244]);
    const pounds = quoteAdoption(grids('lb'), issued()).edits.map(({ is }) => is);
    expect(pounds.slice(1)).toEqual(
      [432.4, 434.1, 246, 244].map((value) => expect.closeTo(value / 0.45359237, 2)),
    );
  });

  test('where no unit stands, in pounds', () => {
    const edits = quoteAdoption(grids(''), issued()).edits;
    expect(edits[1]?.is).toBeCloseTo(432.4 / 0.45359237, 2);
    expect(edits.filter(({ is }) => is === 'lb')).toHaveLength(4);
  });

  test('for nobody; of another package than is built', () => {
    const other = issued(
      withCell(withCell(smallInputs, 'quote', 'package', 'value', 'Ash'), 'quote', 'customer', 'value', null),
    );
    expect(quoteAdoption(grids(), other).words).toEqual([
      'Turnstone with Ash, issued 2026-05-31, for no customer.',
      '▲ Check: Elm is built, Ash was quoted',
    ]);
  });

  test('one that says nothing of weights, or nothing that can be counted on', () => {
    const blank = issued();
    const without = (keep: (columns: readonly string[]) => boolean): IssuedQuote => ({
      ...blank,
      quote: { ...blank.quote, sections: blank.quote.sections.filter(({ columns }) => keep(columns)) },
    });
    const message = 'Q-0007 B does not say what weight and payload it promised.';
    expect(() =>
      quoteAdoption(
        grids(),
        without((columns) => !columns.includes('Expected')),
      ),
    ).toThrow(message);
    const half: IssuedQuote = {
      ...blank,
      quote: {
        ...blank.quote,
        sections: blank.quote.sections.map((section) => ({
          ...section,
          rows: section.rows.filter(({ cells }) => !String(cells[0]).startsWith('Payload with full')),
        })),
      },
    };
    expect(() => quoteAdoption(grids(), half)).toThrow(message);
    const unweighed: IssuedQuote = {
      ...blank,
      quote: {
        ...blank.quote,
        sections: blank.quote.sections.map((section) => ({
          ...section,
          rows: section.rows.filter(({ cells }) => cells[0] !== 'Empty weight'),
        })),
      },
    };
    expect(() => quoteAdoption(grids(), unweighed)).toThrow(message);
  });
});
