/**
 * FLIGHT_TABLE: curves and figures in their places. The Turnstone of flightFixture.ts by hand; else the flight's own climbs and
 * speeds, which have tests of their own, brought into the unit by hand.
 */
import { describe, expect, test } from 'vitest';
import { flightBlock } from '../../src/assessment/flightBlock.ts';
import { airAt } from '../../src/engineering/aircraftInFlight.ts';
import { bestRateOfClimb } from '../../src/engineering/climb.ts';
import type { TableGrids } from '../../src/tables/catalogue.ts';
import type { Cell } from '../../src/tables/cell.ts';
import { smallWorkbook } from '../tables/smallWorkbook.ts';
import { cooledPackages, plainAircraft, withAttribute } from './flightFixture.ts';

const small: TableGrids = smallWorkbook();
const elm = (attribute: string, value: Cell, unit: string, grids: TableGrids) =>
  withAttribute(grids, 'packages', attribute, value, unit, 'Elm');
const metric = withAttribute(plainAircraft, 'airframe', 'show heights in', 'm');

function blockOf(grids: TableGrids, ...names: string[]): Cell[][] {
  const { context, of } = cooledPackages(grids);
  return flightBlock(context, names.map(of));
}
/** Title, head and 31 heights. */
const sectionLength = 33;
const section = (block: Cell[][], index: number) =>
  block.slice(index * sectionLength, (index + 1) * sectionLength);
const figures = (block: Cell[][]) => block.slice(3 * sectionLength);

describe('the curves', () => {
  test('titles with weight and unit, a column a package, heights in steps of 1,000 ft', () => {
    const block = blockOf(small, 'Birch', 'Ash');
    const titles = [0, 1, 2].map((index) => section(block, index)[0]);
    expect(titles).toEqual([
      ['Best rate of climb at maximum continuous power, standard air, 1,600 lb, ft/min'],
      ['Level speed at 75 % or the full throttle left, true, standard air, 1,600 lb, kt'],
      ['Level speed at full throttle, maximum continuous power, true, standard air, 1,600 lb, kt'],
    ]);
    for (const index of [0, 1, 2]) {
      const [, head, ...rows] = section(block, index);
      expect(head).toEqual(['pressure altitude, ft', 'Birch', 'Ash']);
      expect(rows.map(([height]) => height)).toEqual(Array.from({ length: 31 }, (_, step) => 1000 * step));
    }
  });

  test('steps of 300 m where heights are shown in metres; climb in m/s', () => {
    const [title, head, ...rows] = section(blockOf(metric, 'Elm'), 0);
    expect(title?.[0]).toMatch(/, 2,205 lb, m\/s$/);
    expect(head?.[0]).toBe('pressure altitude, m');
    expect(rows.map(([height]) => height)).toEqual(Array.from({ length: 31 }, (_, step) => 300 * step));
  });

  // Known: 60 m/s at sea level on 100 kW, which is 75 % of 133.3 kW: 116.6 kt
  test('75 % of 133.3 kW at sea level is the known point, 116.6 kt; full throttle is faster', () => {
    const power = 100 / 0.75;
    const strong = elm(
      'takeoff power',
      power,
      'kW',
      elm('maximum continuous power', power, 'kW', plainAircraft),
    );
    const block = blockOf(strong, 'Elm');
    expect(section(block, 1)[2]).toEqual([0, 116.6]);
    expect(section(block, 2)[2]?.[1]).toBeGreaterThan(117);
  });

  // Full throttle on 100 kW at sea level is the known point
  test('full throttle on 100 kW: the known point, 116.6 kt', () => {
    const weak = elm('maximum continuous power', 100, 'kW', plainAircraft);
    expect(section(blockOf(weak, 'Elm'), 2)[2]).toEqual([0, 116.6]);
  });

  test('climb and speeds are the flight’s own at the height of the row', () => {
    const { context, of } = cooledPackages(small);
    const { flight } = of('Birch');
    const block = flightBlock(context, [of('Ash'), of('Birch')]);
    const metres = 6000 * 0.3048;
    const climb = bestRateOfClimb(
      flight!.aircraft,
      'continuous',
      airAt(metres),
      1600 * 0.45359237,
    ).rateOfClimb;
    const speed = (setting: number | 'continuous') => {
      const level = flight!.levelAt(setting, metres);
      return level.possible ? level.trueAirspeed / (1852 / 3600) : Number.NaN;
    };
    const at = (index: number) => section(block, index)[2 + 6]?.[2] as number;
    // Shown ten times as fine as a figure: 1 ft/min, 0.1 kt
    expect(Math.abs(at(0) - climb / (0.3048 / 60))).toBeLessThanOrEqual(0.5);
    expect(Math.abs(at(1) - speed(0.75))).toBeLessThanOrEqual(0.05 + 1e-9);
    expect(Math.abs(at(2) - speed('continuous'))).toBeLessThanOrEqual(0.05 + 1e-9);
  });

  test('blank above the ceiling, where it no longer climbs or holds its height, and nowhere below', () => {
    const block = blockOf(small, 'Ash');
    for (const index of [0, 1, 2]) {
      const cells = section(block, index)
        .slice(2)
        .map(([, cell]) => cell);
      const last = cells.findLastIndex((cell) => cell !== null);
      expect(last).toBeGreaterThan(14); // the service ceiling, 100 ft/min, lies above 14,000 ft
      expect(last).toBeLessThan(30);
      expect(cells.slice(0, last + 1).every((cell) => typeof cell === 'number' && cell >= 0)).toBe(true);
    }
  });

  test('blank above the last power point, not at it', () => {
    const points: Cell[][] = [
      ['package', 'rating', 'altitude', 'power'],
      ['', '', 'm', 'kW'],
      ...['takeoff', 'continuous'].flatMap((rating) => [0, 3000].map((at) => ['Elm', rating, at, 110])),
    ];
    const block = blockOf({ ...metric, 'power points': points }, 'Elm');
    for (const index of [0, 1, 2]) {
      const known = section(block, index).filter(
        ([height, cell]) => typeof height === 'number' && cell !== null,
      );
      expect(known.at(-1)?.[0]).toBe(3000);
    }
  });

  test('blank in every row without a known flight', () => {
    const block = blockOf({ ...small, 'known points': [] }, 'Ash');
    for (const index of [0, 1, 2])
      expect(section(block, index).slice(2)).toEqual(
        Array.from({ length: 31 }, (_, step) => [1000 * step, null]),
      );
  });
});

describe('the figures', () => {
  const of = (label: string, grids: TableGrids, ...names: string[]) =>
    figures(blockOf(grids, ...names)).find(([cell]) => cell === label);

  test('title and head', () => {
    expect(figures(blockOf(small, 'Ash', 'Birch')).slice(0, 2)).toEqual([
      ['Figures at the maximum takeoff weight, 1,600 lb; takeoff power where nothing else is said'],
      ['', 'unit', 'Ash', 'Birch'],
    ]);
  });

  // √(2 × 9,806.65/(1.225 × 15 × 2)) = 23.1 m/s, 44.9 kt; CLmax 1.5: 26.7 m/s, 51.8 kt
  test('stall of 1,000 kg on 15 m²: 45 kt with a CLmax of 2, 52 kt with 1.5', () => {
    expect(of('stall, landing, calibrated', plainAircraft, 'Elm')?.slice(1)).toEqual(['kt', 45]);
    expect(of('stall, clean, calibrated', plainAircraft, 'Elm')?.slice(1)).toEqual(['kt', 52]);
  });

  test('words where there is no number: cannot, not known', () => {
    const weak = elm('maximum continuous power', 60, 'kW', elm('takeoff power', 60, 'kW', plainAircraft));
    expect(of('level, up to 75 %, 16,000 ft', weak, 'Elm')?.slice(1)).toEqual(['kt', 'cannot']);
    const unknown = { ...small, 'known points': [] };
    expect(of('service ceiling', unknown, 'Ash', 'Birch')?.slice(1)).toEqual([
      'ft',
      'not known',
      'not known',
    ]);
  });
});
