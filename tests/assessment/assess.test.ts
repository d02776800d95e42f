/** How the results of a comparison hang together: the Wren of tests/tables/smallWorkbook.ts. */
import { describe, expect, test } from 'vitest';
import { type Assessment, assess, basisOf, compare } from '../../src/assessment/assess.ts';
import { defaultFindings } from '../../src/assessment/defaults.ts';
import type { TableGrids } from '../../src/tables/catalogue.ts';
import { catalogueOf } from '../tables/smallBuild.ts';
import { smallWorkbook } from '../tables/smallWorkbook.ts';
import { withAttribute, withCells } from './flightFixture.ts';

const small: TableGrids = smallWorkbook();
const comparisonOf = (grids = small) => compare(catalogueOf(grids));

test('packages in the order of their table, the baseline the one that is named; the same catalogue once', () => {
  const catalogue = catalogueOf(withAttribute(small, 'airframe', 'baseline package', 'birch'));
  const comparison = compare(catalogue);
  expect(comparison.assessments.map((each) => each.package.name)).toEqual(['Ash', 'Birch']);
  expect(comparison.baseline).toBe(comparison.assessments[1]);
  expect(compare(catalogue)).toBe(comparison);
  expect(compare(catalogueOf())).not.toBe(comparison);
});

test('what every package rests on: the moment of the baseline ahead of the firewall, 4,600 lb·in', () => {
  // 220 × 15, 12 × 8 and 30 × 40 ahead of 50 in
  const { baselineMoment, context } = comparisonOf();
  expect(baselineMoment / 0.45359237 / 0.0254).toBeCloseTo(220 * 15 + 12 * 8 + 30 * 40, 6);
  expect(basisOf(context.catalogue).baselineMoment).toBe(baselineMoment);
});

test('the bare airframe is what is left without Ash: 900 less 262 and 6 of fuel; parts that hang on the flight are there', () => {
  const { bareAirframe, baseline } = comparisonOf();
  expect(bareAirframe.mass.nominal.weight / 0.45359237).toBeCloseTo(632, 6);
  expect(baseline.cooling?.streams.map(({ data }) => data.row.stream)).toEqual(['fins']);
  expect(baseline.mission?.verdict).toBeDefined();
  const unflown = comparisonOf({ ...small, 'known points': [] }).baseline;
  expect(unflown.cooling).toBeUndefined();
  for (const each of unflown.findings) expect(each).toMatchObject({ gravity: expect.any(String) });
});

test('reading weights computes no flight and no cooling', () => {
  const basis = basisOf(catalogueOf());
  const assessment = assess(basis, basis.context.baseline);
  const isComputed = (key: keyof Assessment) =>
    Object.getOwnPropertyDescriptor(assessment, key)?.get === undefined;
  expect(assessment.empty.mass.nominal.weight / 0.45359237).toBeCloseTo(900, 9);
  expect((['empty', 'powerplant', 'flight', 'cooling', 'cost', 'findings'] as const).map(isComputed)).toEqual(
    [true, true, false, false, false, false],
  );
});

describe('findings', () => {
  const key = ({ package: name, subject, text }: { package: string; subject: string; text: string }) =>
    `${name}: ${subject}: ${text}`;

  test('of every part of every package, of the measured flights, of values that nobody gave', () => {
    const { assessments, findings, flown, context } = comparisonOf();
    const told = new Set(findings.map(key));
    const all = [
      ...assessments.flatMap((each) => each.findings),
      ...flown.findings,
      ...defaultFindings(context),
    ];
    expect(all.length).toBeGreaterThan(10);
    for (const each of all) expect(told).toContain(key(each));
    expect(told.size).toBe(new Set(all.map(key)).size);
  });

  test('what all packages say alike is said once; of the same subject each other word is', () => {
    const longer = withCells(small, 'envelope', [1600], { weight: 1590 }); // ends below the maximum weight
    const { findings, assessments } = comparisonOf(longer);
    const about = (subject: string, of: readonly { subject: string }[]) =>
      of.filter((each) => each.subject === subject);
    expect(assessments.map((each) => about('envelope', each.findings))).toEqual([
      [expect.anything()],
      [expect.anything()],
    ]);
    expect(about('envelope', findings)).toHaveLength(1);
    const speeds = (of: typeof findings) => about('known flown points', of);
    expect(speeds(comparisonOf({ ...small, 'known points': [] }).findings)).toHaveLength(1);
  });

  test('faults of balance, payload, powerplant, cooling, fuel and price show', () => {
    const subjects = (grids: TableGrids, name = 'Ash') => {
      const found = comparisonOf(grids).assessments.find((each) => each.package.name === name);
      return found?.findings.map(({ subject }) => subject) ?? [];
    };
    expect(subjects(small, 'Birch')).toContain('CG forward limit');
    expect(subjects(withAttribute(small, 'airframe', 'empty weight', 1450, 'lb'))).toContain(
      'payload, full fuel',
    );
    expect(
      subjects(withCells(small, 'components', ['Birch', 'kit as delivered'], { weight: 300 }), 'Birch'),
    ).toContain('kit as delivered');
    expect(subjects(small, 'Birch')).toContain('cooling');
    expect(subjects({ ...small, 'fuel points': [] })).toContain('fuel consumption');
    expect(subjects(withCells(small, 'equipment', ['radio'], { price: '' })).join()).toMatch(/price/);
  });
});
