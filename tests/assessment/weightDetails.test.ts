/** What else the weight build-up rests on: the small aircraft of tests/tables/smallWorkbook.ts, by hand in lb and in. */
import { describe, expect, test } from 'vitest';
import { type Assessment, compare } from '../../src/assessment/assess.ts';
import { contextOf, packageNamed } from '../../src/assessment/context.ts';
import type { TableGrids } from '../../src/tables/catalogue.ts';
import type { Cell } from '../../src/tables/cell.ts';
import { catalogueOf } from '../tables/smallBuild.ts';
import { smallWorkbook } from '../tables/smallWorkbook.ts';
import { withAttribute, withCells, withRows } from './flightFixture.ts';
import { packageOf } from './sampleCatalogue.ts';

const pound = 0.45359237; // kg, exact
const inch = 0.0254; // m, exact

const small: TableGrids = smallWorkbook();
const airframe = (attribute: string, value: Cell, unit = '', grids = small) =>
  withAttribute(grids, 'airframe', attribute, value, unit);
const assessed = (name: string, grids = small): Assessment => packageOf(compare(catalogueOf(grids)), name);
const pounds = (kilograms: number | undefined) => (kilograms ?? Number.NaN) / pound;

describe('a weighing that says how well it is known', () => {
  const known = (cg: Cell) =>
    airframe('empty CG known to', cg, 'in', airframe('empty weight known to', 5, 'lb'));

  test('takes the place of what its basis scatters', () => {
    // Ash: the weighing alone. Birch: 5² in place of (0.6 % of 900)² in 141.913 (see weight.test.ts)
    expect(pounds(assessed('Ash', known('')).empty.mass.weightHalfWidth)).toBeCloseTo(5, 9);
    expect(pounds(assessed('Birch', known('')).empty.mass.weightHalfWidth)).toBeCloseTo(
      Math.sqrt(141.913 - 5.4 ** 2 + 25),
      4,
    );
  });

  test('its CG alone: the weight scatters as its basis does', () => {
    const { empty } = assessed('Ash', airframe('empty CG known to', 0.4, 'in'));
    expect(empty.expectedCg.halfWidth / inch).toBeCloseTo(0.4, 9);
    expect(pounds(empty.mass.weightHalfWidth)).toBeCloseTo(5.4, 9);
  });

  test('its CG as far as is said, exactly where nothing is', () => {
    expect(assessed('Ash', known(0.4)).empty.expectedCg.halfWidth / inch).toBeCloseTo(0.4, 9);
    expect(assessed('Ash', known('')).empty.expectedCg.halfWidth).toBeCloseTo(0, 12);
  });
});

describe('which tanks are aboard', () => {
  /** Weight of the fuel and of the empty aircraft with a second tank of 10 US gal, 14 lb. */
  const aboard = (standard: Cell, fitted: Cell) => {
    const grids: TableGrids = {
      ...withRows(small, 'tanks', ['tip tank', 92, 10, 0, 1, '', standard, fitted, 14]),
      loadings: small.loadings!.map((row, index) => [...row, ['tip tank', 'US gal'][index] ?? 0]),
    };
    const { empty, payload } = assessed('Ash', grids);
    return [pounds(payload.fuelWeight), pounds(empty.mass.nominal.weight)].map((value) => Math.round(value));
  };

  test.each<[string, Cell, Cell, number, number]>([
    ['says nothing of itself: part of the kit, in the weighing', '', '', 240, 900],
    ['standard', true, '', 240, 900],
    ['standard, whatever is ticked', true, false, 240, 900],
    ['an option that is fitted', '', true, 240, 914],
    ['an option that is not', '', false, 180, 900],
    ['said to be no part of the kit, and nothing else', false, '', 180, 900],
    ['no part of the kit, fitted', false, true, 240, 914],
  ])('%s', (_, standard, fitted, fuel, weight) => {
    expect(aboard(standard, fitted)).toEqual([fuel, weight]);
  });
});

test('weighed without powerplant, unusable fuel aboard: that of an optional tank comes with the tank', () => {
  // 900, 262 of Ash, 14 of the tank and half a gallon of 6 lb in it
  const grids: TableGrids = {
    ...withRows(airframe('weighed with package', ''), 'tanks', [
      'tip tank',
      92,
      10,
      0.5,
      1,
      '',
      '',
      true,
      14,
    ]),
    loadings: [],
  };
  expect(pounds(assessed('Ash', grids).empty.mass.nominal.weight)).toBeCloseTo(900 + 262 + 14 + 3, 9);
});

describe('options and packages', () => {
  const fits = (item: string, cell: Cell, grids = small) =>
    withCells(grids, 'equipment', [item], { fits: cell });

  test('one that fits either of two packages is aboard with both', () => {
    for (const name of ['Ash', 'Birch'])
      expect(
        assessed(name, fits('radio', 'Birch, Ash')).configuration.equipment.map((item) => item.name),
      ).toEqual(['radio', 'lights']);
  });

  test('only what was chosen is said to be left out', () => {
    const leftOut = (grids: TableGrids) =>
      assessed('Ash', grids).configuration.findings.map(({ subject }) => subject);
    expect(leftOut(fits('fairings', 'Birch'))).toEqual([]);
    expect(leftOut(fits('lights', 'Birch'))).toEqual(['lights']);
    const tank = (fitted: boolean): TableGrids => ({
      ...withRows(small, 'tanks', ['tip tank', 92, 10, 0, 1, 'Birch', false, fitted, 14]),
      loadings: [],
    });
    expect(leftOut(tank(false))).toEqual([]);
    expect(leftOut(tank(true))).toEqual(['tip tank']);
  });

  test('what is needed and aboard, what is excluded and is not: nothing to say', () => {
    const ticked = withCells(small, 'equipment', ['autopilot'], { fitted: true }); // needs the radio
    const faired = withCells(ticked, 'equipment', ['fairings'], { fitted: true }); // excludes large tyres
    expect(assessed('Birch', faired).configuration.findings).toEqual([]);
  });
});

describe('components', () => {
  /** Elm: the attributes of Ash, and what is given of components. */
  const withElm = (...components: Cell[][]): TableGrids =>
    withRows(
      { ...small, packages: small.packages!.map((row, index) => [...row, index === 0 ? 'Elm' : row[2]]) },
      'components',
      ...components,
    );
  const engine: Cell[] = ['Elm', 'engine', 'engine', 200, 35, '', 'weighed', '', 'kit', '', 9000, 3];
  const findings = (grids: TableGrids) =>
    assessed('Elm', grids).powerplant.findings.map(({ gravity, subject, text }) => [gravity, subject, text]);

  test('none: the weight is not known, and nothing is said of systems', () => {
    expect(findings(withElm())).toEqual([
      ['stop', 'components', 'has no components: its weight is not known'],
    ]);
    expect(pounds(assessed('Elm', withElm()).powerplant.installed.weight)).toBe(0);
  });

  test('systems that others have: how many', () => {
    const forgotten = (packages: string) =>
      `no component of this system, which ${packages}; add it, or say "not required"`;
    expect(findings(withElm(engine))).toEqual([
      ['check', 'oil', forgotten('another package has')],
      ['check', 'propeller', forgotten('2 packages have')],
      ['check', 'coolant', forgotten('another package has')],
    ]);
  });

  test('a weight of zero has no place: its details, if any, weigh nothing either', () => {
    const grids = withElm(
      engine,
      ['Elm', 'kit', 'oil', 0, '', '', 'weighed', '', 'kit', '', 0, 1],
      ['Elm', 'hose', 'oil', 0, '', '', 'weighed', '', 'kit', 'kit', 0, 1],
    );
    const { installed } = assessed('Elm', grids).powerplant;
    expect(pounds(installed.weight)).toBeCloseTo(200, 9);
    expect(pounds(installed.moment) / inch).toBeCloseTo(7000, 7);
  });

  test('the sum of details that does not fit names where the lump’s weight comes from', () => {
    const sources = (source: Cell) => {
      const grids = withCells(small, 'components', ['Birch', 'gearbox'], { weight: 70 });
      const components = grids.components!.map((row, index) => [
        ...row,
        index === 0 ? 'source' : row[1] === 'kit as delivered' ? source : '',
      ]);
      return assessed('Birch', { ...grids, components })
        .powerplant.findings.filter(({ subject }) => subject === 'kit as delivered')
        .map((finding) => finding.source);
    };
    expect(sources('packing list')).toEqual(['packing list']);
    expect(sources('')).toEqual(['components table']);
  });
});

describe('the airframe that is left', () => {
  test('nothing: said with the package it is computed for', () => {
    // 900 − 1,342 of Ash − 6 of fuel + 313 of Birch + 6.7
    const heavy = withCells(small, 'components', ['Ash', 'engine'], { weight: 1300 });
    expect(() => assessed('Birch', heavy).empty).toThrow(
      /^the empty weight of the airframe must be more than what leaves .* got none left for Birch/,
    );
    // 900 − 580 − 6 + 313 + 6.7 = 633.7
    const lighter = withCells(small, 'components', ['Ash', 'engine'], { weight: 538 });
    expect(pounds(assessed('Birch', lighter).empty.mass.nominal.weight)).toBeCloseTo(633.7, 9);
  });
});

describe('names', () => {
  test('the baseline is the one named, the first where none is', () => {
    expect(contextOf(catalogueOf(airframe('baseline package', 'birch'))).baseline.name).toBe('Birch');
    expect(contextOf(catalogueOf(airframe('baseline package', ''))).baseline.name).toBe('Ash');
  });

  test('a package by its name in any case; one that is not there is refused with those that are', () => {
    const catalogue = catalogueOf();
    expect(packageNamed(catalogue, ' BIRCH').name).toBe('Birch');
    expect(() => packageNamed(catalogue, 'Elm')).toThrow('package must be one of Ash, Birch, got "Elm"');
  });

  test('a package without rows in a table has none of another’s', () => {
    const { fuelPoints, powerPoints } = contextOf(catalogueOf());
    expect(powerPoints.of('Ash')).toEqual([]);
    expect(fuelPoints.of('ash ')).toHaveLength(2);
    expect(fuelPoints.of('Elm')).toEqual([]);
  });
});
