/** FLIGHT_TEST_CARDS of the small aircraft of tests/tables/smallWorkbook.ts: the lines of a card and of a result, by hand. */
import { describe, expect, test } from 'vitest';
import { cautions } from '../../src/assessment/cautions.ts';
import { packageNamed } from '../../src/assessment/context.ts';
import { testCardsBlock } from '../../src/assessment/testCardsBlock.ts';
import type { TableGrids } from '../../src/tables/catalogue.ts';
import type { Cell } from '../../src/tables/cell.ts';
import { buildOf, catalogueOf, smallBuild } from '../tables/smallBuild.ts';
import { smallWorkbook } from '../tables/smallWorkbook.ts';
import { withAttribute } from './flightFixture.ts';

const small: TableGrids = smallWorkbook();
const unknownFlight = { ...small, 'known points': [] };

function blockOf(grids = small, results: readonly Cell[][] = [], name = 'Ash'): Cell[][] {
  const catalogue = catalogueOf(grids);
  const build = buildOf(results.length > 0 ? { 'test results': results } : {}, catalogue);
  return testCardsBlock(catalogue, build, packageNamed(catalogue, name));
}
const titled = (line: readonly Cell[]) =>
  line.length === 1 && /^(Card \d+: |Measured, )/.test(String(line[0]));
/** The lines of a card below its title. */
function cardOf(name: string, block = blockOf()): Cell[][] {
  const start = block.findIndex((line) => titled(line) && String(line[0]).endsWith(`: ${name}`));
  if (start < 0) throw new Error(`no card ${name}`);
  const end = block.findIndex((line, index) => index > start && titled(line));
  return block.slice(start + 1, end < 0 ? undefined : end);
}
const lineOf = (card: string, label: string, block = blockOf()) =>
  cardOf(card, block).find(([cell]) => cell === label);

describe('above the cards', () => {
  test('the aircraft, phase one, bands, empty weight, cautions', () => {
    const block = blockOf();
    const first = block.findIndex(titled);
    expect(block[0]).toEqual(['Flight-test cards: Wren with Ash']);
    expect(block[1]?.[0]).toMatch(/^Phase one: at least 25 h/);
    expect(block[2]?.[0]).toMatch(/^Bands: /);
    expect(block[3]).toEqual(['Loadings begin with an empty weight of 900.0 lb at 80.0 in, as weighed.']);
    expect(block.slice(4, first)).toEqual(cautions.map((caution) => [caution]));
  });

  test('another package than the one weighed is a prediction: 951.7 lb at 76.6 in', () => {
    expect(blockOf(small, [], 'Birch')[3]?.[0]).toBe(
      'Loadings begin with an empty weight of 951.7 lb at 76.6 in, PREDICTED: weigh the aircraft and take the weighing in before flying any of these.',
    );
  });

  test('numbered through: on the ground, in the air, stalls', () => {
    const titles = blockOf()
      .filter(titled)
      .map(([title]) => title);
    expect(titles).toEqual(
      [
        ...['fuel flow on the ground', 'static rpm', 'cooling on the ground', 'battery', 'unusable fuel'],
        ...[
          'first flights',
          'airspeed calibration',
          'level flight',
          'climb',
          'takeoff roll',
          'cooling climb',
        ],
        ...['fuel flow', 'stall, forward CG', 'stall, aft CG'],
      ].map((name, index) => `Card ${index + 1}: ${name}`),
    );
  });
});

describe('a card', () => {
  test('set up, head, figures, what to record, how to reduce it, caution', () => {
    expect(cardOf('static rpm').map(([label]) => label)).toEqual([
      ...['Set up', '', 'engine rpm', 'Record', 'Reduce', 'Caution'],
    ]);
    expect(cardOf('static rpm')[1]).toEqual([
      ...['', 'Predicted', 'from', 'to', '', 'Limit', 'Unit', 'Measured', ''],
    ]);
  });

  // 85 % of 2,700 is 2,295; 3 % each way 2,226 and 2,364
  test('2,300 rpm, 2,230 to 2,360, at most 2,700; room for what is measured', () => {
    expect(lineOf('static rpm', 'engine rpm')).toEqual([
      ...['engine rpm', 2300, 2230, 2360, 'at most', 2700, 'rpm', null, null],
    ]);
  });

  test('a least, where the prediction is not known: blank, for the limit stands there', () => {
    expect(lineOf('battery', 'until the voltage is too low for what must stay on')).toEqual([
      ...['until the voltage is too low for what must stay on', null, null, null, 'at least', 30, 'min'],
      ...[null, null],
    ]);
  });

  test('no prediction and no limit: not known', () => {
    expect(lineOf('fuel flow', '100 % rich', blockOf({ ...small, 'fuel points': [] }))).toEqual([
      ...['100 % rich', 'not known', null, null, null, null, 'US gal/h', null, null],
    ]);
  });

  // 1 gal in the tanks table, 10 % each way; words beside it
  test('words at the end of the line', () => {
    expect(lineOf('unusable fuel', 'main tank')).toEqual([
      ...['main tank', 1, 0.9, 1.1, 'at most', 1, 'US gal', null],
      'more than that is no usable fuel: correct tanks and empty weight',
    ]);
  });

  test('a prediction without a band: the takeoff weight, 900 + 180 + 180 of fuel', () => {
    expect(lineOf('first flights', 'takeoff weight')).toEqual([
      ...['takeoff weight', 1260, null, null, 'at most', 1600, 'lb', null, null],
    ]);
  });

  test('the columns of the results table first, then what else to record', () => {
    expect(lineOf('static rpm', 'Record')?.[1]).toMatch(/^rpm, tachometer /);
    expect(lineOf('climb', 'Record')?.[1]).toMatch(
      /^power, weight, pressure altitude, OAT, true airspeed, rate of climb, time /,
    );
    expect(lineOf('airspeed calibration', 'Record')?.[1]).toMatch(/^indicated airspeed, /);
    expect(lineOf('stall, aft CG', 'Record')?.[1]).toMatch(/^weight, flaps, calibrated airspeed, CG, /);
  });

  test('nothing to predict: no head', () => {
    const heavy = withAttribute(small, 'airframe', 'maximum zero-fuel weight', 1005, 'lb');
    expect(cardOf('stall, aft CG', blockOf(heavy)).map(([label]) => label)).toEqual([
      ...['Set up', 'Record', 'Reduce', 'Caution'],
    ]);
  });
});

describe('results', () => {
  const grid = smallBuild()['test results'];
  const results = (grids = small) => {
    const block = blockOf(grids, grid);
    return block.slice(block.findIndex(([cell]) => String(cell).startsWith('Measured, ')));
  };

  test('none: the last card ends the block', () => {
    expect(blockOf().at(-1)?.[0]).toBe('Caution');
    expect(blockOf().some(([cell]) => String(cell).startsWith('Measured, '))).toBe(false);
  });

  test('title and head, then a line a result', () => {
    const lines = results();
    expect(lines.slice(0, 2)).toEqual([
      ['Measured, each beside the prediction for its own conditions'],
      ['Date', 'Test', '', 'Measured', 'Predicted', 'Unit', '', 'Reduced', 'to'],
    ]);
    expect(lines.slice(2, 5).map((line) => line.slice(0, 2))).toEqual([
      ['2026-06-01', 'level flight'],
      ['2026-06-02', 'climb'],
      ['2026-06-02', 'fuel flow on the ground'],
    ]);
    expect(lines[5]?.[0]).toMatch(/^What the measurements change/);
  });

  // The known point is 115 kt in these conditions, 3 % of it 3.5
  test('level flight at 113 kt, 115 predicted from the known point: inside; reduced, and to what', () => {
    const level = results()[2];
    expect(level?.slice(2, 7)).toEqual(['true airspeed at 90 hp', 113, 115, 'kt', 'inside the band']);
    expect(level?.[7]).toEqual(expect.any(Number));
    expect(level?.[8]).toMatch(/^cruise altitude, standard, maximum weight/);
  });

  // Its own 650 ft/min of pressure altitude in air of 12 °C where 9.06 °C is standard: 650 × 285.15/282.21 = 657, 660 shown
  test('a climb outside the band', () => {
    const climb = results()[3];
    expect(climb?.[3]).toBe(660);
    expect(climb?.slice(5, 7)).toEqual(['ft/min', 'OUTSIDE']);
    expect(climb?.[4] as number).toBeGreaterThan(660 / 0.86);
  });

  test('fuel delivered: 16 gal/h, nothing to reduce', () => {
    const delivered = results()[4];
    expect(delivered?.slice(2, 4)).toEqual(['delivered', 16]);
    // 125 % of 10.2
    expect(Math.abs((delivered?.[4] as number) - 12.75)).toBeLessThan(0.051);
    expect(delivered?.slice(5)).toEqual(['US gal/h', 'inside the band', null, '']);
  });

  test('without a known flight: measured, not predicted', () => {
    const level = results(unknownFlight)[2];
    expect(level?.slice(3, 5)).toEqual([113, null]);
    expect(level?.[6]).toBe('not predicted');
  });
});
