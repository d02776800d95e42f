/** The tables of a quote: balance, findings, assumptions, speed, range, mission and cost. */
import { describe, expect, test } from 'vitest';
import type { Cell, Grid } from '../../src/tables/cell.ts';
import type { Inputs } from '../../src/tables/inputs.ts';
import { asBuiltGrids } from './asBuilt.ts';
import { smallInputs, withCell } from './quoteFixture.ts';
import { inRow, quoted, rowOf, rowsOf, term } from './quoteTexts.ts';

describe('centre of gravity and loadings', () => {
  test('empty CG and its margins: 903.36/432.2 is 2.090 m', () => {
    const rows = rowsOf('Centre of gravity');
    expect(rows[0]).toEqual(['Empty CG, aft of datum', '2,090', 'mm']);
    expect(rows[2]).toEqual(['Empty CG, part of MAC', 'not known', '%']);
    // Every load is aft of it: seats and tanks full, 1,521.76 kg·m on 704.2 kg is 2.161 m where the limit is 2.126 m
    expect(rows[3]).toEqual([
      'Least margin to the forward limit, of every loading allowed (where the limit is narrower, at 704.2 kg)',
      '35',
      'mm',
    ]);
    expect(rows).toHaveLength(5);
  });

  test('no loading within the weights: margins not known; nothing is named: said', () => {
    const heavy = withCell(smallInputs, 'airframe', 'maximum takeoff weight', 'value', 420);
    expect(rowsOf('Centre of gravity', heavy)[3]).toEqual([
      'Least margin to the forward limit, of every loading allowed',
      'not known',
      'mm',
    ]);
    const { loadings: _none, ...unnamed } = smallInputs;
    expect(rowsOf('Loadings', unnamed as Inputs)[0]?.[0]).toBe('no loadings are named');
  });

  test('of each named loading the weights and CGs: 679.8 kg at 2.176 m, 622.2 at 2.174', () => {
    const [two] = rowsOf('Loadings');
    expect(two?.slice(3)).toEqual(['679.8', '2,176', '622.2', '2,174', '']);
    const chord: Inputs = {
      ...smallInputs,
      airframe: [...(smallInputs.airframe as Grid), ['MAC leading edge', 1.89, 'm'], ['MAC length', 1, 'm']],
    };
    expect(rowOf('Centre of gravity', 'Empty CG, part', chord)?.[1]).toBe('20');
  });

  test('the picture: of which package among how many, its units, ways with and without a worst state between', () => {
    const { picture } = quoted();
    expect(picture).toMatchObject({
      packageName: 'Elm',
      index: 0,
      count: 2,
      baseline: 0,
      armUnit: 'mm',
      weightUnit: 'kg',
    });
    // 903.36 + 170 × 2.3 + 20 × 2.9 = 1,352.36 on 622.2; 57.6 of fuel at 2.2 more: 1,479.08 on 679.8
    const [two] = picture.loadings;
    expect(two?.path[0]).toEqual([2175.8, 679.8]);
    expect(two?.path.at(-1)).toEqual([2173.5, 622.2]);
    expect(two?.path.length).toBe(2); // its worst is one of the ends
    expect(picture.limits).toContainEqual([2140, 750]);
    // a limit that bends at 650 kg, where it is nearest: 2.1747 − 2.16; 15.8 mm at takeoff, 28.8 mm with empty tanks
    const bent: Inputs = {
      ...smallInputs,
      envelope: [
        ['weight', 'forward limit', 'aft limit'],
        ['kg', 'm', 'm'],
        [450, 2.05, 2.34],
        [650, 2.16, 2.34],
        [750, 2.16, 2.34],
      ],
    };
    const between = (1352.36 + (650 - 622.2) * 2.2) / 650;
    expect(quoted(bent).picture.loadings[0]?.path).toEqual([
      [2175.8, 679.8],
      [expect.closeTo(1000 * between, 1), 650],
      [2173.5, 622.2],
    ]);
    const ash = quoted(term('package', 'Ash')).picture;
    expect(ash).toMatchObject({ packageName: 'Ash', index: 1, baseline: 0 });
  });
});

describe('findings and assumptions', () => {
  test('stops and checks of this package and of all, no notes; none where there are none', () => {
    const findings = rowsOf('Findings');
    expect(findings.length).toBeGreaterThan(1);
    expect(findings.every(([gravity]) => gravity === '■ Stop' || gravity === '▲ Check')).toBe(true);
    const marks = findings.map(([gravity]) => gravity);
    expect(marks).toEqual(
      [...marks].sort((one = '', other = '') => '■▲'.indexOf(one[0]!) - '■▲'.indexOf(other[0]!)),
    );
    expect(findings.map(([, subject]) => subject)).toContain('three in two seats');
  });

  test('a default as the number it is, with its unit; yes and no; nothing where all is given', () => {
    const rows = rowsOf('Assumptions');
    expect(rows.every((cells) => cells.length === 4)).toBe(true);
    expect(rowOf('Assumptions', 'quote')).toEqual([
      'quote',
      'valid for',
      '30 days',
      'common practice, no source',
    ]);
    const exponent = rows.find(([, what]) => what === 'power temperature exponent');
    expect(exponent?.[2]).toBe('0.5');
    const heating = rows.find(([, what]) => what === 'lower heating value');
    expect(heating?.[2]).toBe('43.5 MJ/kg');
  });

  test('of the package that the airframe was weighed with the components too; allowances that are customary', () => {
    const bare = inRow('components', ['Ash', 'mount'], { basis: null });
    const weighed: Inputs = {
      ...bare,
      airframe: [...(bare.airframe as Grid), ['weighed with package', 'Ash']],
    };
    const heavy = withCell(weighed, 'airframe', 'empty weight', 'value', 400);
    const named = rowsOf('Assumptions', heavy).map((cells) => cells.slice(0, 2).join(' | '));
    expect(named).toContain('components | basis of Ash’s mount');
    expect(named).toContain('allowances | growth and scatter of weights');
    const elm = rowsOf('Assumptions', bare).map((cells) => cells[1]);
    expect(elm.join()).not.toContain('Ash');
    const allowances: Inputs = {
      ...smallInputs,
      allowances: [
        ['basis', 'growth', 'scatter', 'correlation'],
        ['', '%', '%', '%'],
        ['weighed', 0, 0.6, 0],
        ['calculated', 2, 4, 20],
        ['estimated', 4, 8, 50],
      ],
    };
    expect(rowOf('Assumptions', 'allowances', allowances)).toBeUndefined();
  });

  test('what another package leaves open is none of this one’s business', () => {
    const points: Inputs = {
      ...smallInputs,
      cooling: [
        [
          'package',
          'stream',
          'heat fraction',
          'limit',
          'exit area',
          'known power',
          'known true airspeed',
          'known altitude',
          'known OAT',
          'known temperature',
        ],
        ['', '', '%', '°C', 'cm²', 'kW', 'km/h', 'm', '°C', '°C'],
        ['Elm', 'fins', 45, 220, 300, 60, 150, 500, 15, 180],
        ['Ash', 'fins', 45, 220, 300, 50, 150, 500, 15, 180],
      ],
    };
    const rows = (inputs: Inputs) => rowsOf('Assumptions', inputs).filter(([table]) => table === 'cooling');
    const [elm, ash] = [rows(points), rows(term('package', 'Ash', undefined, points))];
    expect(elm.length).toBeGreaterThan(0);
    expect(elm.every(([, what]) => what?.endsWith(' of row 3'))).toBe(true);
    expect(ash.every(([, what]) => what?.endsWith(' of row 4'))).toBe(true);
    const findings = (inputs: Inputs) => rowsOf('Findings', inputs).map((cells) => cells.join(' '));
    const light = inRow('components', ['Ash', 'engine'], { weight: 300 });
    expect(findings(light)).toEqual(findings(smallInputs));
    expect(findings(term('package', 'Ash', undefined, light))).not.toEqual(findings(term('package', 'Ash')));
  });

  test('weighed with the quoted package itself, its components are named once', () => {
    const bare = inRow('components', ['Elm', 'mount'], { basis: null });
    const weighed: Inputs = {
      ...bare,
      airframe: [...(bare.airframe as Grid), ['weighed with package', 'Elm']],
    };
    const heavy = withCell(weighed, 'airframe', 'empty weight', 'value', 430);
    expect(rowOf('Assumptions', 'components', heavy)?.[1]).toBe('basis of mount');
    expect(
      rowsOf('Assumptions', heavy)
        .map((cells) => cells[1])
        .join(),
    ).not.toContain('’s mount');
  });

  test('cautions stand last', () => {
    expect(quoted().sections.at(-1)?.title).toBe('Cautions');
    expect(rowsOf('Cautions')).toHaveLength(3);
  });
});

describe('speed, range, mission and cost of the builder’s Godwit', () => {
  const godwit = (rows: Cell[][] = []): Inputs =>
    ({
      ...asBuiltGrids(),
      quote: [['attribute', 'value', 'unit'], ['package', 'Rowan', ''], ...rows],
    }) as Inputs;
  const rows = (inputs = godwit()) => rowsOf('Speed, range', inputs);

  test('cruise where the mission flies, with its setting; fuel; range with the payload aboard', () => {
    const [cruise, fuel, range] = rows();
    expect(cruise?.[0]).toBe('cruise, 8,000 ft, 75 % of MCP');
    expect(Math.abs(Number(cruise?.[1]) - 145)).toBeLessThanOrEqual(2); // known: 146 kt on 139 hp at 2,400 lb
    expect(fuel?.slice(1)).toEqual(['9.9', 'US gal/h']); // 138.75 hp at 0.43 lb/hp·h, 6 lb/US gal: 9.94
    expect(range?.[0]).toMatch(/^range there, full tanks and 8\d\d lb, reserve kept$/);
    // 42 US gal less half an hour, at 9.94 gal/h and 145 kt, some of it climbing
    expect(Number(range?.[1])).toBeGreaterThan(400);
    expect(Number(range?.[1])).toBeLessThan(540);
    expect(range?.[2]).toBe('nmi');
  });

  test('full throttle that gives less is said', () => {
    const high = withCell(godwit(), 'mission', 'cruise altitude', 'value', 14_000);
    expect(rows(high)[0]?.[0]).toBe('cruise, 14,000 ft, 75 % of MCP, full throttle gives less');
  });

  test('the mission in it, where one is asked; indents as dots', () => {
    const labels = rows().map(([label]) => label);
    expect(labels.some((label) => label?.startsWith('Mission'))).toBe(true);
    expect(labels).toContain('… at MCP');
    const { mission: _none, ...idle } = godwit();
    expect(rows(idle as Inputs).some(([label]) => label?.startsWith('Mission'))).toBe(false);
  });

  test('figures with their units, words without', () => {
    const of = (label: string, inputs = godwit()) => rows(inputs).find(([name]) => name?.startsWith(label));
    expect(of('climb, sea level')?.[1]).toMatch(/^[\d,]+$/);
    expect(of('climb, sea level')?.[2]).toBe('ft/min');
    const unknown = { ...godwit(), 'known points': [] } as Inputs;
    expect(of('climb, sea level', unknown)).toEqual(['climb, sea level', 'not known', '']);
    const weak = withCell(godwit(), 'airframe', 'maximum takeoff weight', 'value', 2520);
    expect(of('stall, landing', weak)?.slice(1)).toEqual([expect.stringMatching(/^\d+$/), 'kt']);
  });

  test('costs, and at least so much where a part is not known', () => {
    const of = (label: string, inputs = godwit()) => rows(inputs).find(([name]) => name === label);
    expect(of('an hour of flight')?.[1]).toMatch(/^\d+$/);
    const unpriced = withCell(godwit(), 'packages', 'engine overhaul price', 'Rowan', null);
    expect(of('an hour of flight', unpriced)?.[1]).toMatch(/^at least \d+$/);
    expect(of('ready to fly, tax and labour in')?.[2]).toBe('USD');
    // nothing at all is known of an hour
    const { rates: _rates, 'fuel points': _points, ...bare } = godwit();
    const packages = (bare.packages as Grid).filter(([name]) => !/overhaul|service/.test(String(name)));
    expect(of('an hour of flight', { ...bare, packages } as Inputs)?.[1]).toBe('not known');
  });
});
