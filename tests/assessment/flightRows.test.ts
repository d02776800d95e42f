/**
 * Which figure of the flight stands under which name.
 *
 * Expected: the engineering's own functions, asked here for the air, rating and weight that the name says; a takeoff power
 * above the continuous one, a field away from sea level, and a warm day keep any two from being the same by chance.
 */
import { describe, expect, test } from 'vitest';
import { type FlightRow, flightFigures, flightRows } from '../../src/assessment/flightRows.ts';
import type { Flying } from '../../src/assessment/flying.ts';
import { type Air, airAt, type Rating } from '../../src/engineering/aircraftInFlight.ts';
import { bestAngleOfClimb, bestRateOfClimb, ceiling, climbToHeight } from '../../src/engineering/climb.ts';
import { levelFlight } from '../../src/engineering/levelFlight.ts';
import { stallSpeed } from '../../src/engineering/stall.ts';
import { takeoff } from '../../src/engineering/takeoff.ts';
import type { TableGrids } from '../../src/tables/catalogue.ts';
import type { Cell } from '../../src/tables/cell.ts';
import { sample } from '../sample.ts';
import { comparisonOf, cooledPackages, plainAircraft, withAttribute } from './flightFixture.ts';

const changed = (...changes: readonly (readonly [string, Cell, string])[]): TableGrids =>
  changes.reduce<TableGrids>(
    (grids, [attribute, value, unit]) => withAttribute(grids, 'mission', attribute, value, unit),
    plainAircraft,
  );

const elm = (grids: TableGrids, attribute: string, value: Cell, unit: string) =>
  withAttribute(grids, 'packages', attribute, value, unit, 'Elm');

const warmField = changed(['field elevation', 500, 'm'], ['field temperature', 30, '°C']);
const grids = elm(warmField, 'takeoff power', 125, 'kW');

const flying = (from: TableGrids) => {
  const { context, of } = cooledPackages(from);
  return { context, elm: of('Elm') };
};

const shownIn = (rows: readonly FlightRow[], each: Flying) =>
  rows.map((row) => [row.label, row.shown, row.value(each)] as const);

function figuresOf(from: TableGrids) {
  const { context, elm } = flying(from);
  return shownIn(flightFigures(context), elm);
}
const rowsOf = (from: TableGrids) => shownIn(flightRows(comparisonOf(from)), flying(from).elm);

const lineOf = (
  rows: readonly (readonly [string, unknown, number | string | undefined])[],
  label: string,
) => {
  const found = rows.find(([name]) => name === label);
  if (found === undefined) throw new Error(`no line ${label}`);
  return found[2];
};

function asked(from: TableGrids) {
  const { flight } = flying(from).elm;
  if (flight === undefined) throw new Error('no flight');
  const { aircraft } = flight;
  const field = airAt(500, 30 + 273.15 - (288.15 - 0.0065 * 500));
  const best = (rating: Rating, air: Air) => bestRateOfClimb(aircraft, rating, air, 1000);
  const level = (setting: number, altitude: number) => {
    const found = levelFlight(aircraft, setting, airAt(altitude), 1000);
    return found.possible ? found.trueAirspeed : 'cannot';
  };
  const run = takeoff(aircraft, {
    air: field,
    mass: 1000,
    maximumLiftCoefficient: 1.7,
    dragArea: 0.02 * 15,
    rollingFriction: 0.03,
    slope: 0,
    headwind: 0,
    groundRollFactor: 1,
  });
  if (!run.possible) throw new Error('cannot take off');
  const climb = climbToHeight(aircraft, 500, 2438.4, 1000, field.temperature - (288.15 - 0.0065 * 500));
  return { aircraft, field, seaLevel: airAt(0), best, level, run, climb };
}

/** The same numbers, to what two ways of adding up the field's temperature leave, and the same words. */
function expectSame(
  found: readonly (readonly [string, unknown, unknown])[],
  expected: readonly (readonly [string, string, unknown])[],
) {
  expect(found.map(([label, shown]) => [label, shown])).toEqual(
    expected.map(([label, shown]) => [label, shown]),
  );
  for (const [index, [label, , value]] of expected.entries()) {
    const own = found[index]?.[2];
    if (typeof value === 'number')
      expect(Math.abs((own as number) - value), label).toBeLessThan(1e-6 * value + 1e-9);
    else expect(own, label).toBe(value);
  }
}

const stall = (lift: number) => stallSpeed(1000, 15, lift, 1.225);

test('the lines of the comparison', () => {
  const { best, level, run, field, seaLevel, aircraft } = asked(grids);
  expectSame(rowsOf(grids), [
    ['level, up to 75 %, 8,000 ft', 'speed', level(0.75, 2438.4)],
    ['full throttle, 16,000 ft', 'speed', 'cannot'], // its service ceiling is at 13,400 ft
    ['climb, sea level', 'climb', best('takeoff', seaLevel).rateOfClimb],
    ['  at MCP', 'climb', best('continuous', seaLevel).rateOfClimb],
    ['climb, mission’s field', 'climb', best('takeoff', field).rateOfClimb],
    ['service ceiling', 'height', ceiling(aircraft, 'continuous', 1000).pressureAltitude],
    ['to 50 ft, mission’s field', 'runway', run.distanceTo50Feet],
    ['stall, landing, calibrated', 'speed', stall(2)],
  ]);
});

test('the lines of the flight table', () => {
  const { best, level, run, climb, field, seaLevel, aircraft } = asked(grids);
  const angle = (air: Air) => bestAngleOfClimb(aircraft, 'takeoff', air, 1000).trueAirspeed;
  expect(climb.reached).toBe(true);
  expect(level(0.75, 4876.8)).toBe('cannot');
  expectSame(figuresOf(grids), [
    ['level, up to 75 %, 8,000 ft', 'speed', level(0.75, 2438.4)],
    ['level, up to 65 %, 8,000 ft', 'speed', level(0.65, 2438.4)],
    ['level, up to 55 %, 8,000 ft', 'speed', level(0.55, 2438.4)],
    ['level, up to 75 %, 16,000 ft', 'speed', level(0.75, 4876.8)],
    ['level, up to 65 %, 16,000 ft', 'speed', level(0.65, 4876.8)],
    ['level, up to 55 %, 16,000 ft', 'speed', level(0.55, 4876.8)],
    ['climb, sea level', 'climb', best('takeoff', seaLevel).rateOfClimb],
    ['  at MCP', 'climb', best('continuous', seaLevel).rateOfClimb],
    ['  best-rate speed, true', 'speed', best('takeoff', seaLevel).trueAirspeed],
    ['  best-angle speed, true', 'speed', angle(seaLevel)],
    ['climb, mission’s field', 'climb', best('takeoff', field).rateOfClimb],
    ['  at MCP', 'climb', best('continuous', field).rateOfClimb],
    ['  best-rate speed, true', 'speed', best('takeoff', field).trueAirspeed],
    ['  best-angle speed, true', 'speed', angle(field)],
    ['service ceiling', 'height', ceiling(aircraft, 'continuous', 1000).pressureAltitude],
    ['time to 8,000 ft', 'minutes', climb.time],
    ['  fuel', 'fuel', climb.fuel / 720], // 0.72 kg/L
    ['  distance', 'distance', climb.distance],
    ['ground roll, mission’s field', 'runway', run.groundRoll],
    ['to 50 ft, mission’s field', 'runway', run.distanceTo50Feet],
    ['stall, clean, calibrated', 'speed', stall(1.5)],
    ['stall, takeoff, calibrated', 'speed', stall(1.7)],
    ['stall, landing, calibrated', 'speed', stall(2)],
    ['cooling drag area', 'dragArea', 0], // no cooling rows
  ]);
});

test('the cooling drag of a package that has some', () => {
  const { context, of } = cooledPackages(sample('godwit'));
  const alder = of('Alder');
  const area = alder.flight?.coolingDragArea as number;
  expect(area).toBeGreaterThan(0.15 * 0.3048 ** 2); // its leaks alone
  expect(lineOf(shownIn(flightFigures(context), alder), 'cooling drag area')).toBe(area);
});

test('heights in metres: 2,500 and 5,000 m', () => {
  const metric = withAttribute(grids, 'airframe', 'show heights in', 'm', '');
  const { level } = asked(metric);
  expect(lineOf(rowsOf(metric), 'level, up to 75 %, 2,500 m')).toBeCloseTo(level(0.75, 2500) as number, 9);
  const [, full] = rowsOf(metric);
  expect(full?.[0]).toBe('full throttle, 5,000 m');
});

test('which differences from the baseline are worth a line: speed low down, climb and runway', () => {
  const differing = flightRows(comparisonOf(grids)).filter(({ differs }) => differs);
  expect(differing.map(({ label }) => label)).toEqual([
    'level, up to 75 %, 8,000 ft',
    'climb, sea level',
    'climb, mission’s field',
    'to 50 ft, mission’s field',
  ]);
});

describe('words and blanks where there is no figure', () => {
  test('full throttle where it flies is full throttle, not 75 %', () => {
    const strong = elm(elm(plainAircraft, 'maximum continuous power', 200, 'kW'), 'takeoff power', 200, 'kW');
    const { aircraft } = asked(strong);
    const full = levelFlight(aircraft, 'continuous', airAt(4876.8), 1000);
    expect(lineOf(rowsOf(strong), 'full throttle, 16,000 ft')).toBeCloseTo(
      full.possible ? full.trueAirspeed : 0,
      9,
    );
  });

  test('no known point: nothing at all', () => {
    const unknown = { ...plainAircraft, 'known points': [] };
    for (const [, , value] of [...rowsOf(unknown), ...figuresOf(unknown)]) expect(value).toBeUndefined();
  });

  test('a field that is no place to take off from: cannot', () => {
    const steep = changed(['surface', 'soft', ''], ['slope', 10, '%']);
    expect(lineOf(figuresOf(steep), 'ground roll, mission’s field')).toBe('cannot');
    expect(lineOf(rowsOf(steep), 'to 50 ft, mission’s field')).toBe('cannot');
  });

  test('a cruise altitude above the ceiling is not reached, one below the field has no climb', () => {
    const high = changed(['cruise altitude', 16_000, 'ft']);
    for (const label of ['time to 16,000 ft', '  fuel', '  distance'])
      expect(lineOf(figuresOf(high), label)).toBe('not reached');
    const low = changed(['field elevation', 500, 'm'], ['cruise altitude', 500, 'm']);
    for (const label of ['time to 1,600 ft', '  fuel', '  distance'])
      expect(lineOf(figuresOf(low), label)).toBeUndefined();
  });

  test('no fuel points: time and distance of the climb, not its fuel', () => {
    const dry = { ...plainAircraft, 'fuel points': [] };
    expect(lineOf(figuresOf(dry), 'time to 8,000 ft')).toBeGreaterThan(900); // 971.5 s with the fuel burnt off
    expect(lineOf(figuresOf(dry), '  fuel')).toBeUndefined();
  });

  test('a service ceiling: none, or beyond what is known of the power', () => {
    // 52 kW keep it in the air: 3 kW more at k 0.74 lift 1,000 kg by 0.2 m/s, 100 ft/min are 0.508
    const weak = elm(elm(plainAircraft, 'maximum continuous power', 55, 'kW'), 'takeoff power', 55, 'kW');
    expect(lineOf(rowsOf(weak), 'service ceiling')).toBe('none');
    const points: TableGrids = {
      ...plainAircraft,
      'power points': [
        ['package', 'rating', 'altitude', 'power'],
        ['', '', 'ft', 'kW'],
        ['Elm', 'continuous', 0, 110],
        ['Elm', 'continuous', 10_000, 110],
      ],
    };
    expect(lineOf(rowsOf(points), 'service ceiling')).toBe('> 10,000');
  });
});
