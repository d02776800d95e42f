/** The lines of the comparison: the Wren of tests/tables/smallWorkbook.ts by hand, Ash and Birch. */
import { describe, expect, test } from 'vitest';
import { type Assessment, compare } from '../../src/assessment/assess.ts';
import type { TableGrids } from '../../src/tables/catalogue.ts';
import type { Cell } from '../../src/tables/cell.ts';
import { catalogueOf } from '../tables/smallBuild.ts';
import { smallWorkbook } from '../tables/smallWorkbook.ts';
import { linesIn } from './comparisonGroup.ts';
import { withAttribute, withCells } from './flightFixture.ts';

const small: TableGrids = smallWorkbook();
const engine = (name: string, attribute: string, value: Cell, unit = '', grids = small) =>
  withAttribute(grids, 'packages', attribute, value, unit, name);

describe('weight, balance and payload by hand', () => {
  test('powerplant and empty weight, with the difference from Ash', () => {
    const { of, below } = linesIn('Weight');
    expect(of('powerplant, dry')).toEqual(['lb', 250, 304]); // without oil, without coolant
    expect(below('powerplant, dry')).toEqual(of('powerplant, installed')); // no difference is told of it
    expect(of('powerplant, installed')).toEqual(['lb', 262, 313]);
    expect(below('powerplant, installed')).toEqual(['lb', null, 51]);
    // (220 × 35 + 12 × 42 + 30 × 10)/262 and (8,540 + 324 + 440)/313
    expect(of('  its CG, aft of datum')).toEqual(['in', 32.5, 29.7]);
    expect(of('empty weight, nominal')).toEqual(['lb', 900, 951.7]);
    expect(below('empty weight, nominal')).toEqual(['lb', null, 51.7]);
    expect(of('empty weight, expected')).toEqual(['lb', 900, 957.3]); // 2 % of 260, 4 % of 9
    expect(of('  known to ±')).toEqual(['lb', 5.4, 11.9]); // 0.6 % of 900; tests/assessment/reconciliationRows.test.ts
  });

  test('a package that weighs nothing has no CG', () => {
    const grids = {
      ...small,
      components: (small.components ?? []).filter(([name]) => name !== 'Birch'),
    };
    expect(linesIn('Weight', grids).of('  its CG, aft of datum')).toEqual(['in', 32.5, 'not known']);
  });

  test('centre of gravity, its margins, and on the MAC where there is one', () => {
    const { of, below } = linesIn('Centre of gravity');
    expect(of('empty CG, aft of datum')).toEqual(['in', 80, 76.6]); // 72,861.6/951.7
    expect(below('empty CG, aft of datum')).toEqual(['in', null, -3.4]);
    expect(of('empty CG, % MAC')).toEqual(['%', 'not known', 'not known']);
    // tests/assessment/balance.test.ts: 82.494 − 81.867; 1.74 ahead of 82
    expect(of('least forward margin')).toEqual(['in', 0.6, -1.7]);
    const aft = 90 - (72_000 + 60 * 120 + 20 * 110 + 180 * 88 + 440 * 85) / 1600; // 5.85
    expect(Math.abs((of('least aft margin')?.[1] as number) - aft)).toBeLessThan(0.051);
    // Birch's 951.7 and the lightest pilot, 110, are more than 1,060
    const light = withAttribute(small, 'airframe', 'maximum zero-fuel weight', 1060, 'lb');
    expect(linesIn('Centre of gravity', light).of('least forward margin')?.[2]).toBe('not known');
    expect(linesIn('Centre of gravity', light).of('least aft margin')?.[2]).toBe('not known');
    const chord = withAttribute(
      withAttribute(small, 'airframe', 'MAC leading edge', 70, 'in'),
      'airframe',
      'MAC length',
      50,
      'in',
    );
    expect(linesIn('Centre of gravity', chord).of('empty CG, % MAC')).toEqual(['%', 20, 13]);
  });

  test('payload: 1,600 less empty weight less 180 or 201 lb of fuel', () => {
    const { of, below } = linesIn('Payload');
    expect(of('useful load, nominal')).toEqual(['lb', 700, 648]);
    expect(of('fuel, full tanks')).toEqual(['US gal', 30, 30]);
    expect(of('payload, full fuel')).toEqual(['lb', 520, 447]);
    expect(below('payload, full fuel')).toEqual(['lb', null, -73]);
    expect(of('payload, expected')).toEqual(['lb', 520, 442]);
    expect(of('payload to be counted on')).toEqual(['lb', 515, 430]);
    expect(below('payload to be counted on')).toEqual(['lb', null, -85]);
  });

  test('no range without a known flight; with one, as the diagram has it', () => {
    const bare = linesIn('Payload', { ...small, 'known points': [] });
    for (const label of ['range with full tanks', 'range with most payload'])
      expect(bare.of(label)?.slice(1)).toEqual(['not known', 'not known']);
    expect(bare.of('  that payload')).toEqual(['lb', 'not known', 'not known']);
    const lean = {
      ...small,
      'fuel points': [
        ...(small['fuel points'] ?? []),
        ['Ash', 'lean', 60, 0.45, ''],
        ['Ash', 'lean', 75, 0.44, ''],
      ],
    };
    const { range } = compare(catalogueOf(lean)).baseline;
    const miles = (metres: number | undefined) => Math.round((metres ?? 0) / 1852);
    const known = linesIn('Payload', lean);
    expect(range?.mostPayload.range).toBeGreaterThan(0);
    expect(known.of('range with full tanks')?.[1]).toBe(miles(range?.fullTanks?.range));
    expect(known.of('range with most payload')?.[1]).toBe(miles(range?.mostPayload.range));
    expect(known.of('  that payload')?.[1]).toBe(580); // 250 in each seat, 80 behind
  });
});

describe('power and fuel by hand', () => {
  test('rated power, for how long, propeller rpm', () => {
    const { of } = linesIn('Power', engine('Birch', 'takeoff power limit', 5, 'min'));
    expect(of('takeoff power')).toEqual(['hp', 120, 115]);
    expect(of('  for')).toEqual(['', 'unlimited', '5 min']);
    expect(of('maximum continuous power')).toEqual(['hp', 120, 110]);
    expect(of('propeller rpm, takeoff')).toEqual(['rpm', 2700, 2280]); // 3,880/1.7
  });

  test('flow and endurance of each setting: 0.5 lb/hp·h of 90 hp at 6 lb/gal are 7.5 gal/h, Birch 4.5', () => {
    const { of } = linesIn('Fuel and endurance');
    expect(of('fuel flow, takeoff')?.slice(0, 2)).toEqual(['US gal/h', 10.2]); // 120 × 0.51/6
    expect(of('fuel flow, MCP rich')?.[1]).toBe(10.2);
    expect(of('fuel flow, 75 % rich')?.[1]).toBe(7.5);
    expect(of('fuel flow, 75 % lean')?.[2]).toBe(4.5);
    // 30 gal less half an hour of it as the reserve
    expect(of('endurance, 75 % rich')?.slice(0, 2)).toEqual(['h', 3.5]);
    expect(of('endurance, 75 % lean')?.[2]).toBe(6.2); // 30/4.5 − 0.5
  });
});

describe('installation', () => {
  const told = (label: string, grids = small) => linesIn('Installation', grids).of(label);

  test('figures of the installation, in the units of the workbook', () => {
    const { assessments } = compare(catalogueOf(small));
    const values = (of: (assessment: Assessment) => number | undefined) => assessments.map(of);
    const pounds = (value: number | undefined) => Math.round(((value ?? 0) / 0.45359237) * 10) / 10;
    expect(told('weight ahead of firewall')?.slice(1)).toEqual(
      values(({ installation }) => installation.firewallWeight).map(pounds),
    );
    // Ash: 220 × 15 + 12 × 8 + 30 × 40 ahead of 50 in; Birch 210 × 16 + 50 × 22 + 9 × 14 + 44 × 40
    expect(told('moment ahead of firewall')).toEqual(['lb·in', 4600, 6350]);
    const footPounds = (value: number | undefined) =>
      Math.round((value ?? 0) / (0.45359237 * 9.80665 * 0.3048));
    expect(told('limit torque, takeoff')?.slice(1)).toEqual(
      values(({ installation }) => installation.torque[0].limitTorque).map(footPounds),
    );
    expect(told('limit torque, MCP')?.slice(1)).toEqual(
      values(({ installation }) => installation.torque[1].limitTorque).map(footPounds),
    );
    // 900 × (95 − 80)/55 and 951.7 × (95 − 76.559)/55
    expect(told('nose or tail wheel, empty')).toEqual(['lb', 245.5, 319.1]);
    const wheels = withAttribute(small, 'airframe', 'main wheel arm', '', 'in');
    expect(told('nose or tail wheel, empty', wheels)).toEqual(['lb', 'not known', 'not known']);
    expect(Math.abs((told('fuel flow to demonstrate')?.[1] as number) - 1.25 * 10.2)).toBeLessThan(0.051);
    expect(told('gyroscopic couple')).toEqual(['lbf·ft', 'not known', 'not known']);
    // 70 in at 2,700 rpm: π 1.778 × 45 = 251.4 m/s, and the speed of flight, over 340.3
    const [tip] = values(({ installation }) => installation.tipMach);
    expect(tip).toBeGreaterThan(251.4 / 340.3);
    expect(told('propeller tip Mach')?.[1]).toBe(Math.round((tip ?? 0) * 100) / 100);
    expect(told('side load on mount')?.[1]).toBeGreaterThan(1);
    expect(told('propeller clearance')).toEqual(['in', 'not known', 'not known']);
  });

  test('proven or not, or not said', () => {
    const proven = engine(
      'Birch',
      'propeller proven on this engine',
      false,
      '',
      engine('Ash', 'propeller proven on this engine', true),
    );
    expect(told('propeller proven on engine')?.slice(1)).toEqual(['not stated', 'not stated']);
    expect(told('propeller proven on engine', proven)?.slice(1)).toEqual(['yes', 'no']);
  });

  test('tip-back angle: wheels 15 in behind the CG, 20 in above the ground: atan 0.75 is 37°', () => {
    expect(told('tip-back or nose-over, empty')).toEqual(['', 'not known', 'not known']);
    const high = withAttribute(small, 'airframe', 'CG height', 20, 'in');
    expect(told('tip-back or nose-over, empty', high)?.[1]).toBe('37°');
  });

  test('electrics: surplus, one of two out, the only one, and what fails alone', () => {
    const loads = (alternators: number, name = 'Ash', grids = small) =>
      (
        [
          ['alternators', alternators, ''],
          ['alternator output cruise', 60, 'A'],
          ['alternator output idle', 20, 'A'],
          ['engine electrical load', 6, 'A'],
          ['essential load', 3, 'A'],
        ] as const
      ).reduce((sum, [attribute, value, unit]) => engine(name, attribute, value, unit, sum), grids);
    // radio 2 A and lights 5 A beside the engine's 6 A
    const both = loads(2, 'Birch', loads(1));
    expect(told('alternator surplus, cruise', both)?.[1]).toBe(47);
    expect(told('alternator surplus, idle', both)?.[1]).toBe(7);
    const { assessments } = compare(catalogueOf(both));
    const [, birch] = assessments;
    const oneOut = Math.round(birch?.electrical.surplusOneOut ?? Number.NaN);
    expect(told('  one out, load shed', both)).toEqual(['A', 'only one', String(oneOut)]);
    expect(told('  one out, load shed')).toEqual(['A', 'not known', 'not known']);
    expect(told('battery alone', both)?.slice(1)).toEqual(['not known', 'not known']);
    expect(told('single failure, electrical')?.slice(1)).toEqual(['no', 'no']);
    const needs = engine('Ash', 'stops without electricity', true, '', both);
    const needed = compare(catalogueOf(needs)).baseline.electrical.singleFailures;
    expect(needed.length).toBeGreaterThan(0);
    expect(told('single failure, electrical', needs)?.[1]).toBe(needed.join(', '));
    const two = engine('Birch', 'stops without electricity', true, '', both);
    expect(compare(catalogueOf(two)).assessments[1]?.electrical.singleFailures).toEqual([]);
    expect(told('single failure, electrical', two)?.[2]).toBe('none known');
  });

  test('named loadings: pass or fail with the least margin, or with the weight', () => {
    const { lines, of } = linesIn('Named loadings');
    expect(lines.map(([label]) => label)).toEqual(['alone', 'two']);
    // tests/assessment/balance.test.ts: Birch alone 77.839 against 78.811; two 80.612 against 81.105
    expect(of('alone')).toEqual(['in', expect.stringMatching(/^pass \d/), 'FAIL −1.0']);
    expect(of('two')?.[2]).toBe('FAIL −0.5');
    const heavy = withCells(small, 'loadings', ['two'], { passenger: 240, 'main tank': 30, pilot: 250 });
    expect(linesIn('Named loadings', heavy).of('two')).toEqual(['in', 'FAIL weight', 'FAIL weight']);
    // Birch with two takes off at 1,465.7 lb: at that maximum weight, but for rounding
    const limits = [
      ['maximum takeoff weight', 1465.7],
      ...['maximum ramp weight', 'maximum landing weight', 'maximum zero-fuel weight'].map((name) => [
        name,
        '',
      ]),
    ] as [string, Cell][];
    const full = limits.reduce(
      (grids, [name, value]) => withAttribute(grids, 'airframe', name, value, 'lb'),
      small,
    );
    expect(linesIn('Named loadings', full).of('two')?.[2]).toBe('FAIL −0.5');
  });

  test('prices and findings stand there too', () => {
    const { of } = linesIn('Price and delivery');
    // engine 25,000 and propeller 3,000; kit 40,000; radio 2,000 and lights 900
    expect(of('total, without tax')?.slice(0, 2)).toEqual(['USD', 70_900]);
    expect(of('  airframe kit')?.[1]).toBe(40_000);
    expect(of('  powerplant')).toEqual(['USD', 28_000, 47_000]);
    expect(of('  options ticked')?.[1]).toBe(2900);
    expect(of('tax')?.[1]).toBe(4963); // 7 %
    expect(of('still to buy by the builder')).toEqual(['USD', 60, 30]);
    expect(of('lead time')).toEqual(['weeks', 12, 20]);
    expect(of('build time')?.[0]).toBe('h');
    const { assessments } = compare(catalogueOf(small));
    const count = (gravity: string) =>
      assessments.map(({ findings }) => findings.filter((each) => each.gravity === gravity).length);
    const findings = linesIn('Findings');
    expect(findings.of('outside a limit (stop)')?.slice(1)).toEqual(count('stop'));
    expect(findings.of('doubtful or missing (check)')?.slice(1)).toEqual(count('check'));
    expect(count('stop')).not.toEqual(count('check'));
  });
});
