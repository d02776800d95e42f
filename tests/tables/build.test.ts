import { describe, expect, test } from 'vitest';
import type { BuildTable } from '../../src/tables/build.ts';
import type { Cell } from '../../src/tables/cell.ts';
import { recordedIn, testResultsTable } from '../../src/tables/testResults.ts';
import { toSi } from '../../src/units.ts';
import { buildFaults, buildOf, smallBuild } from './smallBuild.ts';
import { put } from './smallWorkbook.ts';

const pound = 0.45359237;

describe('what they hold', () => {
  test('weighings in SI, with the customary accuracy where none is given', () => {
    const grids = smallBuild();
    put(grids.weighings, 3, 'scale accuracy', null);
    const [first, second] = buildOf(grids).weighings;
    expect(first).toMatchObject({ weighing: 'A', date: '2026-03-01', point: 'nosewheel', level: true });
    expect(first?.reading).toBeCloseTo(260 * pound, 9);
    expect(first?.arm).toBeCloseTo(40 * 0.0254, 9);
    expect(first?.accuracy).toBeCloseTo(pound, 9);
    expect(first?.defaulted).toEqual(['accuracy']);
    expect(second?.defaulted).toEqual([]);
  });

  test('tables left out are empty', () => {
    const build = buildOf({});
    expect(build.weighings).toEqual([]);
    expect(build.changes).toEqual([]);
    expect(build.testResults).toEqual([]);
    expect(build.asQuoted.countedOnWeight).toBeUndefined();
  });

  test('a weighing named by a number', () => {
    const grids = smallBuild();
    for (const row of [3, 4, 5]) put(grids.weighings, row, 'weighing', 1);
    put(grids['weighing items'], 3, 'weighing', 1);
    expect(buildOf(grids).weighings[0]?.weighing).toBe('1');
  });
});

describe('dates', () => {
  const dated = (cell: Cell) => {
    const grids = smallBuild();
    put(grids.changes, 3, 'date', cell);
    return grids;
  };

  test.each([
    ['a date cell', new Date(2026, 3, 1), '2026-04-01'],
    ['its text', '2026-04-01', '2026-04-01'],
    ['the last day of February in a leap year', '2028-02-29', '2028-02-29'],
  ])('%s', (_, cell, day) => {
    expect(buildOf(dated(cell)).changes[0]?.date).toBe(day);
  });

  test.each([
    '0026-03-14',
    '4/1/26',
    '1.4.2026',
    '2026-13-01',
    '2027-02-29',
    'spring',
    46_113,
    new Date(Number.NaN),
  ])('%s is refused', (cell) => {
    const [fault] = buildFaults(dated(cell));
    expect(fault).toMatch(/^changes, row 3 \(beacon\), date: got .*, expected a date such as 2026-03-14$/);
  });
});

describe('faults', () => {
  test.each<[string, BuildTable, number, string, Cell, string]>([
    [
      'two dates for one weighing',
      'weighings',
      4,
      'date',
      '2026-03-02',
      'weighings, row 4 (A, left main), date: got "2026-03-02", expected the same as in row 3',
    ],
    [
      'two attitudes',
      'weighings',
      5,
      'level',
      false,
      'weighings, row 5 (A, right main), level: got FALSE, expected the same as in row 3',
    ],
    [
      'a scale that is never wrong',
      'weighings',
      3,
      'scale accuracy',
      0,
      'weighings, row 3 (A, nosewheel), scale accuracy: got 0, expected a number of at least 0.01 lb',
    ],
    [
      'a negative tare',
      'weighings',
      3,
      'tare',
      -1,
      'weighings, row 3 (A, nosewheel), tare: got -1, expected a number of at least 0 lb',
    ],
    [
      'an item of no weighing',
      'weighing items',
      3,
      'weighing',
      'C',
      'weighing items, row 3 (C, tools), weighing: got "C", expected the name of a weighing',
    ],
    [
      'an item without weight',
      'weighing items',
      3,
      'weight',
      null,
      'weighing items, row 3 (A, tools), weight: got an empty cell, expected either weight or volume',
    ],
    [
      'weight and volume',
      'weighing items',
      4,
      'weight',
      6,
      'weighing items, row 4 (B, unusable fuel), weight: got 6, expected either weight or volume',
    ],
    [
      'a state that is none',
      'weighing items',
      3,
      'state',
      'aboard',
      'weighing items, row 3 (A, tools), state: got "aboard", expected aboard, not part or part, not aboard',
    ],
    [
      'a change without place',
      'changes',
      3,
      'arm',
      null,
      'changes, row 3 (beacon), arm: got an empty cell, expected a value',
    ],
    [
      'a test that lacks what it measured',
      'test results',
      4,
      'rate of climb',
      null,
      'test results, row 4 (climb), rate of climb: got an empty cell, expected a value, for this test',
    ],
    [
      'a test without airspeed',
      'test results',
      4,
      'calibrated airspeed',
      null,
      'test results, row 4 (climb), true airspeed: got an empty cell, expected true or calibrated airspeed',
    ],
    [
      'a test that is none',
      'test results',
      3,
      'test',
      'loop',
      'test results, row 3 (loop), test: got "loop", expected fuel flow on the ground or static rpm or cooling on the ground or battery or unusable fuel or takeoff roll or level flight or climb or fuel flow or cooling climb or stall',
    ],
  ])('%s', (_, table, row, column, cell, fault) => {
    const grids = smallBuild();
    put(grids[table], row, column, cell);
    expect(buildFaults(grids)).toEqual([fault]);
  });

  test('a weighing on one point, and the same point twice', () => {
    const grids = smallBuild();
    grids.weighings.splice(3, 2);
    expect(buildFaults(grids)).toEqual([
      'weighings, row 3 (A, nosewheel), point: got "nosewheel", expected a weighing of at least two points',
    ]);
    const twice = smallBuild();
    put(twice.weighings, 5, 'point', 'Left Main');
    expect(buildFaults(twice)).toEqual([
      'weighings, row 5, weighing, point: got "A, Left Main", expected a name that row 4 does not have already',
    ]);
  });

  test('a weighing all of whose points stand at one arm, however well that is known', () => {
    for (const accuracy of [0, 0.1]) {
      const grids = smallBuild();
      put(grids.weighings, 3, 'arm', 95);
      put(grids.weighings, 5, 'arm', 95.03);
      for (const row of [3, 4, 5]) put(grids.weighings, row, 'arm accuracy', accuracy);
      expect(buildFaults(grids)).toEqual([
        'weighings, row 3 (A, nosewheel), arm: got 95, expected points of "A" at more than one arm: all 3 stand at this one',
      ]);
      put(grids.weighings, 3, 'arm', 94);
      expect(buildFaults(grids)).toEqual([]);
    }
  });

  test('an arm that cannot be read is missed once, and no arm is held against it', () => {
    const grids = smallBuild();
    for (const row of [3, 4, 5]) put(grids.weighings, row, 'arm', 'aft');
    expect(buildFaults(grids)).toEqual(
      ['3 (A, nosewheel)', '4 (A, left main)', '5 (A, right main)'].map(
        (row) => `weighings, row ${row}, arm: got "aft", expected a number without unit or separators`,
      ),
    );
  });

  test('a missing column is missed once', () => {
    const grids = smallBuild();
    const at = (grids['test results'][0] as Cell[]).indexOf('power');
    for (const row of grids['test results']) row.splice(at, 1);
    expect(buildFaults(grids)).toEqual([
      'test results, row 1, power: got nothing, expected a value, for this test',
    ]);
  });

  test('all at once', () => {
    const grids = smallBuild();
    put(grids.weighings, 3, 'reading', 'heavy');
    put(grids.changes, 4, 'weight', '6 lb');
    put(grids['test results'], 3, 'power', -1);
    expect(buildFaults(grids)).toEqual([
      'weighings, row 3 (A, nosewheel), reading: got "heavy", expected a number without unit or separators',
      'changes, row 4 (heavier battery), weight: got "6 lb", expected a number without unit or separators',
      'test results, row 3 (level flight), power: got -1, expected a number above 0 hp',
    ]);
  });
});

test('every test names at least one measurement of the table', () => {
  for (const [name, fields] of Object.entries(recordedIn)) {
    expect(testResultsTable.fields.test.choices).toContain(name);
    expect(fields).not.toEqual([]);
    for (const field of fields) expect(testResultsTable.fields).toHaveProperty(field);
  }
  expect(Object.keys(recordedIn)).toHaveLength(testResultsTable.fields.test.choices?.length ?? 0);
});

test('a volume takes its density, or the fuel of the package, later', () => {
  const [, fuel, oil] = buildOf(smallBuild()).weighingItems;
  expect(fuel?.density).toBeUndefined();
  expect(oil?.density).toBeCloseTo(toSi('density', 7.5, 'lb/US gal'), 9);
});
