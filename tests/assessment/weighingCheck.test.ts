import { describe, expect, test } from 'vitest';
import { contextOf, packageNamed } from '../../src/assessment/context.ts';
import { weighingCheck } from '../../src/assessment/weighingCheck.ts';
import { centreOfGravity } from '../../src/engineering/massItem.ts';
import type { BuildGrids } from '../../src/tables/build.ts';
import type { Cell } from '../../src/tables/cell.ts';
import { buildOf, catalogueOf, smallBuild } from '../tables/smallBuild.ts';
import { put, smallWorkbook } from '../tables/smallWorkbook.ts';

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
  const twice = () => check(smallBuild());

  test('each corrected to basic empty', () => {
    const [a, b] = twice().weighings;
    expect(inPounds(a?.basicEmpty ?? { weight: 0, moment: 0 }).weight).toBeCloseTo(900, 9);
    expect(inPounds(a?.basicEmpty ?? { weight: 0, moment: 0 }).moment).toBeCloseTo(71_625, 6);
    expect(inPounds(b?.basicEmpty ?? { weight: 0, moment: 0 }).weight).toBeCloseTo(917, 9);
    expect(inPounds(b?.basicEmpty ?? { weight: 0, moment: 0 }).moment).toBeCloseTo(72_225 + 528 + 48, 6);
  });

  test('their mean, their spread, and half of it where that is more than the scales', () => {
    const { aircraft, findings } = twice();
    expect((aircraft?.weight ?? 0) / pound).toBeCloseTo(908.5, 9);
    expect((aircraft?.cg ?? 0) / inch).toBeCloseTo((71_625 + 72_801) / (2 * 908.5), 9);
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
    const { aircraft, findings } = check(grids);
    expect(aircraft?.spread?.weight).toBeCloseTo(0, 9);
    expect((aircraft?.weightHalfWidth ?? 0) / pound).toBeCloseTo(Math.sqrt(3), 9);
    expect(findings).toEqual([]);
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
    const [finding, ...others] = findings.filter(({ subject }) => subject === 'weighing B');
    expect(others).toEqual([]);
    expect(finding).toMatchObject({ source: 'AC 43.13-1B 10-15c' });
    expect(finding?.text).toContain('not level');
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
    const { weighings, aircraft } = check(grids);
    const [a, b] = weighings;
    expect(aircraft?.counted).toHaveLength(2);
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
    const finding = findings.find(({ subject }) => subject === 'weighing A');
    expect(finding?.text).toContain('beacon');
    expect(finding?.source).toBe('changes table');
  });
});

/** A on 1 March and B on 8 March, each 905 lb net, without items: nose and mains of B as given. */
function pair(nose: number, left: number, right: number, accuracy = 1): ReturnType<typeof smallBuild> {
  const grids = smallBuild();
  grids['weighing items'].splice(2);
  [nose, left, right].forEach((reading, index) => {
    put(grids.weighings, 6 + index, 'reading', reading);
    put(grids.weighings, 6 + index, 'scale accuracy', accuracy);
  });
  return grids;
}

describe('how well two weighings agree', () => {
  const repeatability = (grids: BuildGrids) =>
    check(grids).findings.filter(({ subject }) => subject === 'repeatability');

  test('√2 times what the scales may be off, √3 lb for three of 1 lb: 2.45 lb', () => {
    expect(repeatability(pair(250, 325, 332))).toEqual([]);
    const [finding] = repeatability(pair(250, 325, 333));
    expect(finding).toMatchObject({ gravity: 'check', shown: 'weight' });
    expect((finding?.value ?? 0) / pound).toBeCloseTo(3, 9);
    expect((finding?.limit ?? 0) / pound).toBeCloseTo(Math.sqrt(6), 9);
  });

  test('of two scales the poorer one sets the measure: 3 √3 lb, √2 times that 7.35', () => {
    expect(repeatability(pair(250, 325, 337, 3))).toEqual([]);
    expect((check(pair(250, 325, 337, 3)).aircraft?.weightHalfWidth ?? 0) / pound).toBeCloseTo(
      3 * Math.sqrt(3),
      9,
    );
    expect(repeatability(pair(250, 325, 338, 3))).toHaveLength(1);
  });

  test('the same weight at another CG is not the same aircraft', () => {
    // 10,000 + 62,225 and 9,400 + 63,650 lb·in over 905 lb: 0.912 in apart, scales and arms off by 0.077 in
    const { aircraft } = check(pair(235, 335, 335));
    const apart = (73_050 - 72_225) / 905;
    expect((aircraft?.spread?.cg ?? 0) / inch).toBeCloseTo(apart, 9);
    expect((aircraft?.cgHalfWidth ?? 0) / inch).toBeCloseTo(apart / 2, 9);
    expect((aircraft?.weightHalfWidth ?? 0) / pound).toBeCloseTo(Math.sqrt(3), 9);
    const [finding] = repeatability(pair(235, 335, 335));
    expect(finding?.text).toContain('0.9 in in CG');
    // 2 lb from the nosewheel to a main wheel: 0.122 in; 1 lb: 0.061 in, and √2 × 0.077 in is 0.108
    expect(repeatability(pair(248, 327, 330))).toHaveLength(1);
    expect(repeatability(pair(249, 326, 330))).toEqual([]);
  });

  test('CG half-width of one: scales at their levers, and arms: √ Σ ((x − x̄) u/W)² + (w u_x/W)²', () => {
    const cg = 72_225 / 905;
    const squares = [
      [250, 40],
      [325, 95],
      [330, 95],
    ].map(([weight = 0, arm = 0]) => ((arm - cg) / 905) ** 2 + ((weight * 0.1) / 905) ** 2);
    const half = Math.sqrt(squares.reduce((sum, each) => sum + each, 0));
    expect((check(pair(250, 325, 330)).aircraft?.cgHalfWidth ?? 0) / inch).toBeCloseTo(half, 9);
  });
});

describe('days', () => {
  const redated = (ofA: string, ofB: string) => {
    const grids = pair(250, 325, 330);
    for (const row of [3, 4, 5]) put(grids.weighings, row, 'date', ofA);
    for (const row of [6, 7, 8]) put(grids.weighings, row, 'date', ofB);
    put(grids.changes, 3, 'date', '2026-03-05'); // beacon, 0.5 lb at 150
    return grids;
  };
  const namesOf = (grids: BuildGrids) => check(grids).weighings.map(({ name }) => name);

  test('in the order of their days, not of their rows; rows of one day stay as they are', () => {
    expect(namesOf(redated('2026-03-01', '2026-03-08'))).toEqual(['A', 'B']);
    expect(namesOf(redated('2026-03-08', '2026-03-01'))).toEqual(['B', 'A']);
    expect(namesOf(redated('2026-03-01', '2026-03-01'))).toEqual(['A', 'B']);
  });

  test('the last day is the latest, wherever it stands', () => {
    const { aircraft, weighings } = check(redated('2026-03-08', '2026-03-01'));
    expect(aircraft?.date).toBe('2026-03-08');
    expect(weighings.map(({ broughtForward }) => broughtForward.weight / pound)).toEqual([
      expect.closeTo(905.5, 9),
      expect.closeTo(905, 9),
    ]);
  });

  test('a weighing that does not count sets no day: what changed before it is not in the aircraft', () => {
    const grids = redated('2026-03-01', '2026-03-08');
    for (const row of [6, 7, 8]) put(grids.weighings, row, 'level', false);
    const { aircraft } = check(grids);
    expect(aircraft?.date).toBe('2026-03-01');
    expect((aircraft?.weight ?? 0) / pound).toBeCloseTo(905, 9);
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

  test('a wheel whose arm is not given is nobody’s measure; the other one is', () => {
    const airframe = smallWorkbook().airframe.filter(([name]) => name !== 'nose or tail wheel arm');
    const lone = contextOf(catalogueOf({ ...smallWorkbook(), airframe }));
    const grids = smallBuild();
    put(grids.weighings, 3, 'arm', 41);
    put(grids.weighings, 4, 'arm', 96);
    const { findings } = weighingCheck(lone, packageNamed(lone.catalogue, 'Ash'), buildOf(grids));
    expect(findings.map(({ subject }) => subject).filter((subject) => subject.includes(','))).toEqual([
      'weighing A, left main',
    ]);
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
