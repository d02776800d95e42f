import { describe, expect, test } from 'vitest';
import { basisOf, compare } from '../../src/assessment/assess.ts';
import { packageNamed } from '../../src/assessment/context.ts';
import { type Reconciliation, reconcile } from '../../src/assessment/reconciliation.ts';
import { weighingBlock } from '../../src/assessment/weighingBlock.ts';
import { weighingCheck } from '../../src/assessment/weighingCheck.ts';
import { weighedEquipmentFindings } from '../../src/assessment/weighingEquipment.ts';
import { type Build, readBuild } from '../../src/tables/build.ts';
import type { Catalogue } from '../../src/tables/catalogue.ts';
import type { Cell, Grid } from '../../src/tables/cell.ts';
import { sample } from '../sample.ts';
import { asBuilt, asBuiltBuildGrids, asBuiltGrids } from './asBuilt.ts';
import { catalogueOf, withAttribute, withCells } from './flightFixture.ts';

const pound = 0.45359237;
const inch = 0.0254;

const { catalogue, build } = asBuilt();

function reconciled(of: Catalogue, with_: Build): Reconciliation {
  const basis = basisOf(of);
  const engine = packageNamed(of, 'Rowan');
  const { aircraft } = weighingCheck(basis.context, engine, with_);
  if (aircraft === undefined) throw new Error('no weighing counts');
  return reconcile(basis, engine, aircraft);
}

/** One weighing of an aircraft that weighs so much at such an arm, in lb and in, drained and complete. */
function weighedAt(weight: number, cg: number, mainArm = 112, shownMainArm = mainArm): Build {
  const nose = (weight * (mainArm - cg)) / (mainArm - 38);
  const rows: Grid = [
    ['weighing', 'date', 'point', 'reading', 'arm', 'scale accuracy', 'arm accuracy', 'level'],
    ['', '', '', 'lb', 'in', 'lb', 'in', ''],
    ['1', '2026-05-01', 'nosewheel', nose, 38, 1, 0.1, true],
    ['1', '2026-05-01', 'left main', (weight - nose) / 2, shownMainArm, 1, 0.1, true],
    ['1', '2026-05-01', 'right main', (weight - nose) / 2, shownMainArm, 1, 0.1, true],
  ];
  const reading = readBuild({ weighings: rows }, catalogue);
  if (reading.build === undefined) throw new Error('faults');
  return reading.build;
}

/** What the tables expect the aircraft to come out at, in lb and lb·in, with something added. */
function expectedWith(weight: number, arm: number): { weight: number; cg: number } {
  const { expected } = compare(catalogue).baseline.empty.mass;
  const total = expected.weight / pound + weight;
  return { weight: total, cg: (expected.moment / pound / inch + weight * arm) / total };
}

describe('the sample: its engine is 20 lb heavier than the data sheet says', () => {
  const found = () => reconciled(catalogue, build);

  test('the likeliest cause is the engine, at the weight it was planted with', () => {
    const [first, second] = found().causes;
    expect(first?.name).toBe('engine, dry');
    expect((first?.stated ?? 0) / pound).toBeCloseTo(223.6, 9);
    expect(Math.abs((first?.needed ?? 0) / pound - 243.6)).toBeLessThan(2); // other items are off by 1 lb or so too
    expect(second?.distance).toBeGreaterThan(1.3 * (first?.distance ?? 0));
  });

  test('the printed sheet names it', () => {
    const lines = weighingBlock(catalogue, build, packageNamed(catalogue, 'Rowan')).map((row) =>
      String(row[0]),
    );
    const sentence = lines.find((line) => line.startsWith('likeliest:'));
    expect(sentence).toMatch(/^likeliest: engine, dry, 24[2-5]\.\d lb instead of the 223\.6 lb stated/);
  });

  test('weight and CG are outside the band, and the unexplained weight sits ahead of the firewall', () => {
    const { difference, place } = found();
    expect(difference.weightInside).toBe(false);
    expect(difference.cgInside).toBe(false);
    expect((difference.arm ?? 0) / inch).toBeLessThan(60);
    expect(place).toBe('aboard');
  });

  test('payload falls by what it is heavier than stated', () => {
    const { before, after, fromStated } = found();
    const lost = before.payload.fullFuel.nominal - after.payload.fullFuel.nominal;
    expect(lost).toBeCloseTo(fromStated.weight, 6);
    expect(fromStated.weight / pound).toBeCloseTo(1425.4 - 1402, 0);
  });
});

describe('planted and found', () => {
  test('an aircraft that comes out as expected: inside, and nothing to find', () => {
    const { weight, cg } = expectedWith(0, 0);
    const { difference } = reconciled(catalogue, weighedAt(weight, cg));
    expect(difference.weightInside).toBe(true);
    expect(difference.cgInside).toBe(true);
    expect(difference.arm).toBeUndefined();
    const lines = weighingBlock(catalogue, weighedAt(weight, cg), packageNamed(catalogue, 'Rowan'));
    expect(lines.some(([cell]) => String(cell).includes('nothing has to be found'))).toBe(true);
  });

  test.each([
    ['engine, dry', 17, 38.1],
    ['airframe, empty weight', 11, 126.4],
    ['cowling, two halves', 0.3, 33.5],
  ])('%s, %d lb heavier', (name, extra, arm) => {
    const { weight, cg } = expectedWith(extra, arm);
    const { causes } = reconciled(catalogue, weighedAt(weight, cg));
    const own = causes.find((cause) => cause.name === name);
    expect((own?.error ?? 0) / pound).toBeCloseTo(extra, 6);
    expect(own?.misfit).toBeCloseTo(0, 5);
    if (extra > 5) expect(causes[0]?.name).toBe(name);
  });

  test('brochures that are light in every line: the engine alone would have to be far off, all of them little', () => {
    const { weight, cg } = expectedWith(8, 44.2);
    const { causes } = reconciled(catalogue, weighedAt(weight, cg));
    expect(causes.slice(0, 3).map(({ name }) => name)).toContain('every calculated weight');
  });

  test('an arm of the mains noted 3 in too far aft: nothing of the aircraft is there', () => {
    const { weight, cg } = expectedWith(5, 112);
    const found = reconciled(catalogue, weighedAt(weight, cg, 112, 115));
    expect(found.place).toBe('outside');
    const lines = weighingBlock(catalogue, weighedAt(weight, cg, 112, 115), packageNamed(catalogue, 'Rowan'));
    const row = lines.find(([cell]) => String(cell).startsWith('the unexplained weight'));
    expect(String(row?.[2])).toContain('a reading, a tare or an arm is wrong');
  });

  test('a scale that reads 25 lb too much is among the causes, at its own arm', () => {
    const { weight, cg } = expectedWith(25, 112);
    const { causes } = reconciled(catalogue, weighedAt(weight, cg));
    const scale = causes.find(({ name }) => name === 'reading, left main');
    expect((scale?.error ?? 0) / pound).toBeCloseTo(25, 6);
    expect(scale?.halfWidths).toBeCloseTo(25, 6);
  });
});

describe('adopting a weighing', () => {
  test('the package then comes out at what was weighed, and its band is that of the scales', () => {
    const { after, adopted, difference } = reconciled(catalogue, build);
    // By hand: 1,494.0 − 60.2 − 8.5 = 1,425.30 lb, 140,726.4 lb·in; 1,413.5 + 12.04 = 1,425.54 lb, 140,756.6 lb·in
    const expected = { weight: 1425.42, cg: 140_741.5 / 1425.42 };
    expect(after.empty.mass.nominal.weight / pound).toBeCloseTo(expected.weight, 2);
    expect(after.empty.cg / inch).toBeCloseTo(expected.cg, 3);
    // Three scales, ±1 lb each. Weighing 1, about its CG at 98.73 in: scales 60.6, 13.3, 13.3; arms 25.7, 62.1, 61.7; / 1,425.3
    expect(after.empty.mass.weightHalfWidth / pound).toBeCloseTo(Math.sqrt(3), 9);
    const moments = [60.63, 13.27, 13.27, 25.65, 62.05, 61.7];
    expect(after.empty.expectedCg.halfWidth / inch).toBeCloseTo(Math.hypot(...moments) / 1425.3, 4);
    expect(after.empty.mass.expected.weight).toBeCloseTo(after.empty.mass.nominal.weight, 9);
    expect(adopted).toMatchObject({ weighedWith: 'Rowan', weighedFluids: true, emptyBasis: 'weighed' });
    expect(difference.weight).not.toBe(0);
  });

  test('with another package the scales’ half-width adds to that of what is taken off and put on', () => {
    const of = (knownTo: Cell) => {
      const grids = withAttribute(sample('godwit'), 'airframe', 'empty weight known to', knownTo, 'lb');
      const { assessments } = compare(catalogueOf(grids));
      return Object.fromEntries(
        assessments.map((each) => [each.package.name, each.empty.mass.weightHalfWidth / pound]),
      );
    };
    const [before, after] = [of(''), of(2)];
    expect(after.Rowan).toBeCloseTo(2, 9);
    const ofBasis = 0.005 * 1379; // the sample's empty weight is weighed, ±0.5 %; weighed errors are independent
    for (const name of ['Larch', 'Hazel', 'Alder'])
      expect(after[name]).toBeCloseTo(Math.sqrt((before[name] as number) ** 2 - ofBasis ** 2 + 4), 1);
  });

  test('the empty CG’s own accuracy counts without the weight’s; the weight’s without it is said to leave the CG exact', () => {
    const told = (rows: Readonly<Record<string, Cell>>) => {
      const grids = Object.entries(rows).reduce(
        (sum, [attribute, value]) =>
          withAttribute(sum, 'airframe', attribute, value, attribute.includes('CG') ? 'in' : 'lb'),
        sample('godwit'),
      );
      const { assessments, findings } = compare(catalogueOf(grids));
      const { empty } = assessments[0] as (typeof assessments)[number];
      const said = findings.filter(({ subject }) => subject === 'empty CG known to');
      return { ...empty.mass, cg: empty.expectedCg.halfWidth / inch, said };
    };
    const neither = told({});
    const arm = told({ 'empty CG known to': 0.5 });
    expect(arm.weightHalfWidth).toBe(neither.weightHalfWidth);
    // ±0.5 in of 1,379 lb beside what the bases give, over the expected weight
    const own = (0.5 * 1379 * pound) / neither.expected.weight;
    expect(arm.cg).toBeCloseTo(Math.hypot(neither.cg, own), 9);
    expect(told({ 'empty weight known to': 2 }).said).toMatchObject([
      {
        gravity: 'check',
        package: '',
        source: 'airframe table',
        text: expect.stringMatching(/^not given, .* exact/),
      },
    ]);
    for (const silent of [neither, arm, told({ 'empty weight known to': 2, 'empty CG known to': 0.5 })])
      expect(silent.said).toEqual([]);
  });

  test('a tank that the kit does not have is not counted twice', () => {
    const fitted: Catalogue = {
      ...catalogue,
      tanks: catalogue.tanks.map((tank) =>
        tank.name === 'long-range tanks' ? { ...tank, fitted: true, unusable: 0.002 } : tank,
      ),
    };
    const { weight, cg } = { weight: 1440, cg: 99 };
    const { after } = reconciled(fitted, weighedAt(weight, cg));
    expect(after.empty.mass.nominal.weight / pound).toBeCloseTo(1440, 6);
    expect(after.empty.cg / inch).toBeCloseTo(99, 6);
  });

  test('speeds and climb do not change with it, but for the weight', () => {
    const { before, after } = reconciled(catalogue, build);
    expect(after.flight?.seaLevel.bestRate.takeoff.rateOfClimb).toBeCloseTo(
      before.flight?.seaLevel.bestRate.takeoff.rateOfClimb ?? 0,
      9,
    );
  });
});

describe('a component put on the scales', () => {
  const engineAs = (basis: string): number => {
    const grids = withCells(asBuiltGrids(), 'components', ['Rowan', 'engine, dry'], { basis });
    return compare(catalogueOf(grids)).baseline.empty.mass.weightHalfWidth / pound;
  };

  test('half-widths by hand: ±10.9 with the data sheet’s engine, ±5.7 with a weighed one', () => {
    // calculated, 4 %: 8.94, 0.58, 0.60, 0.84; estimated, 8 %: 0.51, 0.85, 1.92; weighed, 0.5 %: 4.67 and small ones
    const band = (calculated: number[], estimated: number[], weighed: number[]) => {
      const sum = (values: number[]) => values.reduce((total, value) => total + value, 0);
      const squares = (values: number[]) => sum(values.map((value) => value ** 2));
      return Math.sqrt(
        0.2 * sum(calculated) ** 2 +
          0.8 * squares(calculated) +
          0.5 * sum(estimated) ** 2 +
          0.5 * squares(estimated) +
          squares(weighed),
      );
    };
    const estimated = [0.512, 0.848, 1.92];
    expect(engineAs('calculated')).toBeCloseTo(band([8.944, 0.584, 0.6, 0.84], estimated, [4.67]), 1);
    expect(engineAs('weighed')).toBeCloseTo(band([0.584, 0.6, 0.84], estimated, [4.67, 1.118]), 1);
  });
});

test('marked weighed, the weight stands in place of what the estimate was expected to become', () => {
  const expectedOf = (cells: Record<string, Cell>) =>
    compare(
      catalogueOf(withCells(asBuiltGrids(), 'components', ['Rowan', 'cooling baffles and seals'], cells)),
    ).baseline.empty.mass;
  const estimated = expectedOf({});
  const weighed = expectedOf({ basis: 'weighed', weight: 7.1 });
  // 6.4 lb estimated grow by 4 % to 6.656; on the scale it is 7.1 and stays 7.1
  expect((weighed.expected.weight - estimated.expected.weight) / pound).toBeCloseTo(7.1 - 6.656, 6);
  expect((weighed.nominal.weight - estimated.nominal.weight) / pound).toBeCloseTo(0.7, 6);
  expect(weighed.weightHalfWidth).toBeLessThan(estimated.weightHalfWidth);
});

describe('the scales and the equipment table', () => {
  const findingsOf = (cells: Record<string, Cell>, item: string, items: Grid) => {
    const of = catalogueOf(withCells(asBuiltGrids(), 'equipment', [item], cells));
    const reading = readBuild({ ...asBuiltBuildGrids(), 'weighing items': items }, of);
    if (reading.build === undefined) throw new Error('faults');
    return weighedEquipmentFindings(basisOf(of).context, packageNamed(of, 'Rowan'), reading.build);
  };
  const items = (item: string, state: string): Grid => [
    ['weighing', 'item', 'state', 'weight', 'arm'],
    ['', '', '', 'lb', 'in'],
    ['1', item, state, 14.5, 96],
  ];

  test('fairings that are ticked and were not in the measured flight would give another drag', () => {
    const own = asBuiltBuildGrids()['weighing items'];
    const [finding] = findingsOf({ fitted: true }, 'wheel fairings', own);
    expect(finding?.subject).toBe('known points');
    expect(finding?.text).toContain('differs by −0.35 ft² of drag area');
    expect(findingsOf({}, 'wheel fairings', own)).toEqual([]);
  });

  test.each([
    ['part, not aboard', false, 'it is not ticked as fitted'],
    ['aboard, not part', true, 'it is ticked as fitted'],
  ])('%s, ticked %s: one of them is wrong', (state, fitted, words) => {
    const told = findingsOf({ fitted }, 'tow bar and covers', items('Tow bar and covers', state));
    expect(told.map(({ text }) => text)).toEqual([expect.stringContaining(words)]);
    expect(findingsOf({ fitted: !fitted }, 'tow bar and covers', items('tow bar and covers', state))).toEqual(
      [],
    );
  });

  test('the printed sheet says so', () => {
    const of = catalogueOf(withCells(asBuiltGrids(), 'equipment', ['wheel fairings'], { fitted: true }));
    const lines = weighingBlock(of, build, packageNamed(of, 'Rowan'));
    expect(lines.some((line) => line.some((cell) => String(cell).includes('count as flown with what')))).toBe(
      true,
    );
  });
});

test('against the quote: promised, weighed, kept or not', () => {
  const lines = weighingBlock(catalogue, build, packageNamed(catalogue, 'Rowan'));
  const row = (label: string, from: number): Cell[] | undefined =>
    lines.slice(from).find(([cell]) => cell === label);
  const start = lines.findIndex(([cell]) => cell === 'Against quote Q-0007 A');
  expect(start).toBeGreaterThan(0);
  expect(row('empty weight to be counted on', start)?.slice(1)).toEqual([
    1407.4,
    1425.4,
    18,
    'NOT KEPT',
    'lb',
  ]);
  const light = readBuild(
    {
      ...asBuiltBuildGrids(),
      'as quoted': [
        ['attribute', 'value', 'unit'],
        ['empty weight to be counted on', 1430, 'lb'],
      ],
    },
    catalogue,
  ).build;
  const kept = weighingBlock(catalogue, light as Build, packageNamed(catalogue, 'Rowan'));
  expect(kept.find(([cell]) => cell === 'empty weight to be counted on')?.[4]).toBe('kept');
});
