import { describe, expect, test } from 'vitest';
import { contextOf, packageNamed } from '../../src/assessment/context.ts';
import { weighingCheck } from '../../src/assessment/weighingCheck.ts';
import { centreOfGravity } from '../../src/engineering/massItem.ts';
import type { BuildGrids } from '../../src/tables/build.ts';
import type { Cell } from '../../src/tables/cell.ts';
import { buildOf, catalogueOf, smallBuild } from '../tables/smallBuild.ts';
import { put } from '../tables/smallWorkbook.ts';

const pound = 0.45359237;
const inch = 0.0254;

const context = contextOf(catalogueOf());
const check = (grids: BuildGrids) =>
  weighingCheck(context, packageNamed(context.catalogue, 'Ash'), buildOf(grids));
const inPounds = ({ weight, moment }: { weight: number; moment: number }) => ({
  weight: weight / pound,
  moment: moment / pound / inch,
});

describe('a handbook example through the tables', () => {
  // FAA-H-8083-30, figure 4-20 (read as reproduced, answer too)
  const handbook: BuildGrids = {
    weighings: [
      ['weighing', 'date', 'point', 'reading', 'tare', 'arm', 'level'],
      ['', '', '', 'lb', 'lb', 'in', ''],
      ['1', '2026-01-10', 'left main', 650, 5, 70, true],
      ['1', '2026-01-10', 'right main', 640, 5, 70, true],
      ['1', '2026-01-10', 'nose', 225, 2.5, -30, true],
    ],
    'weighing items': [
      ['weighing', 'item', 'state', 'weight', 'volume', 'density', 'arm'],
      ['', '', '', 'lb', 'US gal', 'lb/US gal', 'in'],
      ['1', 'fuel, full', 'aboard, not part', null, 30, 5.9, 95],
      ['1', 'unusable fuel', 'part, not aboard', 6, null, null, 98],
    ],
  };

  test('1,331.5 lb, 66,698 lb·in, +50.1 in', () => {
    const { aircraft, weighings } = check(handbook);
    const found = inPounds(aircraft ?? { weight: 0, moment: 0 });
    expect(found.weight).toBeCloseTo(1331.5, 6);
    expect(found.moment).toBeCloseTo(66_698, 4);
    expect(Math.abs((aircraft?.cg ?? 0) / inch - 50.1)).toBeLessThanOrEqual(0.05);
    expect(inPounds(weighings[0]?.asWeighed ?? { weight: 0, moment: 0 }).weight).toBeCloseTo(1502.5, 6);
  });

  test('weighed once: asked to weigh again', () => {
    expect(check(handbook).aircraft?.spread).toBeUndefined();
    expect(check(handbook).findings.some(({ subject }) => subject === 'repeatability')).toBe(true);
  });
});

describe('two weighings, by hand', () => {
  // A: 250 at 40, 325 and 330 at 95: 905, less 5 of tools at 120: 900, 72,225 − 600
  // B: 250 at 40, 655 at 95: 905, 72,225; plus 1 gal of the package's fuel at 6 lb/gal, 88, and 6 lb of oil at 8
  const { aircraft, weighings, findings } = check(smallBuild());

  test('each corrected to basic empty', () => {
    const [a, b] = weighings;
    expect(inPounds(a?.basicEmpty ?? { weight: 0, moment: 0 }).weight).toBeCloseTo(900, 9);
    expect(inPounds(a?.basicEmpty ?? { weight: 0, moment: 0 }).moment).toBeCloseTo(71_625, 6);
    expect(inPounds(b?.basicEmpty ?? { weight: 0, moment: 0 }).weight).toBeCloseTo(917, 9);
    expect(inPounds(b?.basicEmpty ?? { weight: 0, moment: 0 }).moment).toBeCloseTo(72_225 + 528 + 48, 6);
  });

  test('their mean, their spread, and half of it where that is more than the scales', () => {
    expect((aircraft?.weight ?? 0) / pound).toBeCloseTo(908.5, 9);
    expect((aircraft?.spread?.weight ?? 0) / pound).toBeCloseTo(17, 9);
    expect((aircraft?.weightHalfWidth ?? 0) / pound).toBeCloseTo(8.5, 9);
    expect(findings.find(({ subject }) => subject === 'repeatability')).toMatchObject({ gravity: 'check' });
  });

  test('equal weighings are known as well as one: the scales err the same way both times', () => {
    const grids = smallBuild();
    grids['weighing items'].splice(2);
    put(grids.weighings, 6, 'reading', 250);
    put(grids.weighings, 7, 'reading', 325);
    put(grids.weighings, 8, 'reading', 330);
    const twice = check(grids);
    expect(twice.aircraft?.spread?.weight).toBeCloseTo(0, 9);
    expect((twice.aircraft?.weightHalfWidth ?? 0) / pound).toBeCloseTo(Math.sqrt(3), 9);
    expect(twice.findings.some(({ subject }) => subject === 'repeatability')).toBe(false);
  });
});

describe('what does not count', () => {
  const unlevel = (level: Cell) => {
    const grids = smallBuild();
    for (const row of [6, 7, 8]) put(grids.weighings, row, 'level', level);
    return check(grids);
  };

  test('a weighing that was not level is left out, and said', () => {
    const { aircraft, findings } = unlevel(false);
    expect((aircraft?.weight ?? 0) / pound).toBeCloseTo(900, 9);
    expect(aircraft?.date).toBe('2026-03-01');
    expect(findings.find(({ subject }) => subject === 'weighing B')?.text).toContain('not level');
  });

  test('where nobody says, it counts and is doubted', () => {
    const { aircraft, findings } = unlevel(null);
    expect(aircraft?.counted).toHaveLength(2);
    expect(findings.find(({ subject }) => subject === 'weighing B')?.text).toContain('taken as level');
  });

  test('none at all', () => {
    expect(check({}).aircraft).toBeUndefined();
    expect(check({}).weighings).toEqual([]);
  });

  test('an earlier weighing is brought to the day of the last by the changes between', () => {
    const grids = smallBuild();
    put(grids.changes, 3, 'date', '2026-03-01'); // on the day of weighing A: after it
    put(grids.changes, 4, 'date', '2026-03-08'); // on the day of weighing B, the last: after it
    const [a, b] = check(grids).weighings;
    expect((a?.broughtForward.weight ?? 0) / pound).toBeCloseTo(900.5, 9);
    expect(centreOfGravity(a?.broughtForward ?? { weight: 1, moment: 0 }) / inch).toBeCloseTo(
      (71_625 + 75) / 900.5,
      9,
    );
    expect((b?.broughtForward.weight ?? 0) / pound).toBeCloseTo(917, 9);
  });

  test('a change of unknown weight between them: the earlier one no longer counts', () => {
    const grids = smallBuild();
    put(grids.changes, 3, 'date', '2026-03-05');
    put(grids.changes, 3, 'weight', null);
    const { aircraft, findings } = check(grids);
    expect(aircraft?.counted.map(({ name }) => name)).toEqual(['B']);
    expect(findings.find(({ subject }) => subject === 'weighing A')?.text).toContain('beacon');
  });
});

describe('doubts', () => {
  test('an arm that is nearly, but not, that of the wheel', () => {
    const grids = smallBuild();
    put(grids.weighings, 3, 'arm', 41);
    expect(check(grids).findings.filter(({ subject }) => subject === 'weighing A, nosewheel')).toHaveLength(
      1,
    );
    put(grids.weighings, 3, 'arm', 40.4);
    expect(check(grids).findings.filter(({ subject }) => subject === 'weighing A, nosewheel')).toHaveLength(
      0,
    );
    put(grids.weighings, 3, 'arm', 60); // a jack pad
    expect(check(grids).findings.filter(({ subject }) => subject === 'weighing A, nosewheel')).toHaveLength(
      0,
    );
  });

  test('a customary accuracy is said', () => {
    const grids = smallBuild();
    put(grids.weighings, 3, 'scale accuracy', null);
    expect(check(grids).findings.find(({ subject }) => subject === 'scale accuracy')).toMatchObject({
      gravity: 'note',
      source: '±1 lb: common practice, no source',
    });
    expect(check(smallBuild()).findings.some(({ subject }) => subject === 'scale accuracy')).toBe(false);
  });
});
