/** Findings as they are shown, where they can be mended, and those about values that nobody gave. */
import { describe, expect, test } from 'vitest';
import { contextOf } from '../../src/assessment/context.ts';
import { defaultFindings } from '../../src/assessment/defaults.ts';
import { byGravity, countOf, type Finding, findingsBlock } from '../../src/assessment/finding.ts';
import { findingPlace } from '../../src/assessment/findingPlace.ts';
import type { TableGrids } from '../../src/tables/catalogue.ts';
import type { Inputs } from '../../src/tables/inputs.ts';
import { catalogueOf } from '../tables/smallBuild.ts';
import { smallWorkbook, without } from '../tables/smallWorkbook.ts';
import { withAttribute, withCells } from './flightFixture.ts';
import { smallInputs } from './quoteFixture.ts';

const small: TableGrids = smallWorkbook();
const finding = (values: Partial<Finding>): Finding => ({
  gravity: 'note',
  package: '',
  subject: 'x',
  source: '',
  text: '',
  ...values,
});

describe('findings', () => {
  const three = [
    finding({ subject: 'a' }),
    finding({ gravity: 'stop', subject: 'b' }),
    finding({ gravity: 'check', subject: 'c' }),
    finding({ gravity: 'stop', subject: 'd' }),
  ];

  test('the gravest first, else in their order; how many of each', () => {
    expect(byGravity(three).map(({ subject }) => subject)).toEqual(['b', 'd', 'c', 'a']);
    expect(countOf(three, 'stop')).toBe(2);
    expect(countOf(three, 'check')).toBe(1);
    expect(countOf([], 'stop')).toBe(0);
  });

  test('as a block: value and limit in the unit of their kind; of all packages where none is named', () => {
    const { display } = contextOf(catalogueOf());
    const [head, ...rows] = findingsBlock(
      [
        finding({ text: 'said', source: 'practice' }),
        finding({
          gravity: 'stop',
          package: 'Ash',
          subject: 'weight',
          shown: 'weight',
          value: 453.59237,
          limit: 226.796185,
        }),
      ],
      display,
    );
    expect(head).toHaveLength(8);
    expect(rows).toEqual([
      ['■ Stop', 'Ash', 'weight', 1000, 500, 'lb', '', ''],
      ['· Note', 'all', 'x', null, null, '', 'said', 'practice'],
    ]);
  });
});

describe('where a finding can be mended', () => {
  const at = (values: Partial<Finding>, inputs: Inputs = smallInputs) =>
    findingPlace(inputs, finding(values));

  test('the row of its subject in the table of its source: the value, or the package’s column', () => {
    expect(at({ subject: 'wing area', source: 'airframe table' })).toEqual({
      table: 'airframe',
      row: 'wing area',
      column: 'value',
    });
    expect(at({ subject: 'lead time', source: 'packages table', package: 'Ash' })).toEqual({
      table: 'packages',
      row: 'lead time',
      column: 'Ash',
    });
  });

  test('a row of its package’s name, and one of a table of rows without a column', () => {
    expect(at({ subject: 'mount', source: 'components table', package: 'Elm' })).toEqual({
      table: 'components',
      row: 'Elm, mount',
    });
    expect(at({ subject: 'radio', source: 'equipment table' })).toEqual({ table: 'equipment', row: 'radio' });
  });

  test('the row in any other table, where that of the source has none; else the table; else nowhere', () => {
    expect(at({ subject: 'sales tax', source: 'equipment table' })).toEqual({
      table: 'rates',
      row: 'sales tax',
      column: 'value',
    });
    expect(at({ subject: 'sales tax', source: '14 CFR 23' })).toEqual({
      table: 'rates',
      row: 'sales tax',
      column: 'value',
    });
    expect(at({ subject: 'nothing', source: 'fuel points table' })).toEqual({ table: 'fuel points' });
    expect(at({ subject: 'nothing', source: 'known points, packages and cooling tables' })).toEqual({
      table: 'known points',
    });
    expect(at({ subject: 'nothing', source: 'common practice' })).toBeUndefined();
  });
});

describe('defaults are shown', () => {
  const told = (grids: TableGrids) => defaultFindings(contextOf(catalogueOf(grids)));
  const of = (grids: TableGrids, subject: string) => told(grids).filter((each) => each.subject === subject);

  test('an attribute that nobody gave: which table, whose value', () => {
    const [propellers] = of(small, 'Oswald efficiency');
    expect(propellers).toMatchObject({
      gravity: 'note',
      package: '',
      text: 'not given in the airframe table: default used',
    });
    expect(propellers?.source.length).toBeGreaterThan(3);
    expect(of(withAttribute(small, 'airframe', 'Oswald efficiency', 0.75), 'Oswald efficiency')).toEqual([]);
    expect(of(small, 'battery kind').map((each) => each.package)).toEqual(['Ash', 'Birch']);
  });

  test('a column left empty: which rows, three by name', () => {
    const basis = (...items: string[]) =>
      of(
        items.reduce((grids, item) => withCells(grids, 'equipment', [item], { basis: '' }), small),
        'equipment: basis',
      );
    expect(basis('radio')).toMatchObject([
      { gravity: 'note', package: '', text: 'not given for radio: estimated' },
    ]);
    expect(basis('radio', 'lights', 'fairings')[0]?.text).toBe(
      'not given for radio, lights, fairings: estimated',
    );
    expect(basis('radio', 'lights', 'autopilot', 'fairings', 'large tyres')[0]?.text).toBe(
      'not given for radio, lights, autopilot and 2 more: estimated',
    );
    expect(basis()).toEqual([]);
  });

  test('each is a finding, with nothing between', () => {
    for (const each of told(small))
      expect(each).toMatchObject({ gravity: expect.any(String), text: expect.any(String) });
  });

  test('no allowances table is a check', () => {
    expect(of(without('allowances'), 'allowances')).toMatchObject([{ gravity: 'check', package: '' }]);
    expect(of(small, 'allowances')).toEqual([]);
  });

  test('scales that are known with arms that are not', () => {
    const known = withAttribute(small, 'airframe', 'empty weight known to', 2, 'lb');
    expect(of(known, 'empty CG known to')).toMatchObject([{ gravity: 'check' }]);
    expect(of(withAttribute(known, 'airframe', 'empty CG known to', 0.1, 'in'), 'empty CG known to')).toEqual(
      [],
    );
    expect(of(small, 'empty CG known to')).toEqual([]);
  });

  test('what of a table was not read', () => {
    const grid = (small['power points'] ?? []).map((line, index) => [...line, index === 0 ? 'colour' : '']);
    const remarks = told({ ...small, 'power points': grid });
    expect(remarks.filter(({ source }) => source === 'power points table')).toMatchObject([
      {
        gravity: 'note',
        package: '',
        subject: 'power points',
        text: expect.stringContaining('"colour" is not one of this table'),
      },
    ]);
  });
});
