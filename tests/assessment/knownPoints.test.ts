/**
 * Which of the known points are used, for what, and what is said of them.
 */
import { describe, expect, test } from 'vitest';
import { attempt } from '../../src/assessment/attempt.ts';
import { contextOf } from '../../src/assessment/context.ts';
import { airOf } from '../../src/assessment/knownAir.ts';
import { flownAirframe } from '../../src/assessment/knownFlights.ts';
import { airAt } from '../../src/engineering/aircraftInFlight.ts';
import { levelFlight } from '../../src/engineering/levelFlight.ts';
import type { TableGrids } from '../../src/tables/catalogue.ts';
import type { Cell } from '../../src/tables/cell.ts';
import { fromSi, toSi } from '../../src/units.ts';
import { sample } from '../sample.ts';
import {
  catalogueOf,
  comparisonOf,
  cooledPackages,
  flightOf,
  plainAircraft,
  withCells,
  withRows,
} from './flightFixture.ts';

const godwit = sample('godwit');
const sanderling = sample('sanderling');

/** A row of the plain aircraft's table at 1,000 kg at sea level. */
const point = (condition: string, kilowatts: number, airspeed: Cell, rate: Cell = '', roll: Cell = '') => [
  'Elm',
  condition,
  kilowatts,
  1000,
  0,
  '',
  airspeed,
  rate,
  roll,
];

const findingsOf = (grids: TableGrids, subject: string) =>
  comparisonOf(grids).findings.filter((finding) => finding.subject === subject);

describe('known points', () => {
  test('the known level flight comes back as it was flown', () => {
    const { aircraft } = flightOf(godwit, 'Rowan');
    const level = levelFlight(
      aircraft,
      139 / 185,
      airAt(toSi('height', 8000, 'ft')),
      toSi('mass', 2400, 'lb'),
    );
    // The options of the sample are those of the flight; the bisection ends within 0.001 m/s
    expect(level.possible && fromSi('speed', level.trueAirspeed, 'kt')).toBeCloseTo(146, 2);
  });

  test('so it does with a fixed pitch, and in km/h', () => {
    const { aircraft } = flightOf(sanderling, 'Sorrel');
    const level = levelFlight(aircraft, 51.75 / 69, airAt(1500), 570);
    expect(level.possible && fromSi('speed', level.trueAirspeed, 'km/h')).toBeCloseTo(200, 2);
  });

  test('none: a finding, and no flight figure at all', () => {
    const grids = { ...godwit, 'known points': [] };
    const { assessments } = comparisonOf(grids);
    for (const { flight, cooling } of assessments) {
      expect(flight).toBeUndefined();
      expect(cooling).toBeUndefined();
    }
    const [finding] = findingsOf(grids, 'known flown points');
    expect(finding).toMatchObject({ gravity: 'check', package: '' });
    expect(finding?.text).toBe('no known flown point in level flight: speeds, climb and range are not known');
  });

  test('one that claims more than its power can give is refused', () => {
    const grids = withCells(plainAircraft, 'known points', ['Elm'], { power: 12 });
    expect(cooledPackages(grids).of('Elm').flight).toBeUndefined();
    expect(findingsOf(grids, 'known flown points')[0]?.text).toContain('zero-lift drag coefficient');
  });

  test('one that is possible but not likely is doubted: 95 m/s on 100 kW', () => {
    const grids = withCells(plainAircraft, 'known points', ['Elm'], { 'true airspeed': 95 });
    expect(findingsOf(grids, 'known flown points')[0]).toMatchObject({ gravity: 'check' });
    expect(findingsOf(grids, 'known flown points')[0]?.text).toContain('CD0 0.0');
    expect(findingsOf(plainAircraft, 'known flown points')).toEqual([]);
  });

  // 85 kW = T (40 + w), T = 1,855 N; q S = 14,700 N: C_D 0.1262, of which 0.6671² / (π 0.7 6.667) is induced
  test('so is one that is too slow: 40 m/s on 100 kW leave C_D0 0.0958', () => {
    const grids = withCells(plainAircraft, 'known points', ['Elm'], { 'true airspeed': 40 });
    expect(findingsOf(grids, 'known flown points')).toMatchObject([
      { gravity: 'check', text: expect.stringMatching(/^CD0 0\.0958 follows from it/) },
    ]);
  });

  test('a measured roll scales every ground roll', () => {
    const roll = (grids: TableGrids) => {
      const { takeoff } = flightOf(grids, 'Elm');
      if (!takeoff.possible) throw new Error('cannot');
      return takeoff;
    };
    const plain = roll(plainAircraft);
    const rolledTimes = (factor: number) =>
      withRows(plainAircraft, 'known points', [
        'Elm',
        'takeoff roll',
        110,
        1000,
        0,
        15,
        '',
        '',
        factor * plain.groundRoll,
      ]);
    const grids = rolledTimes(1.2);
    const measured = roll(grids);
    expect(measured.groundRoll / plain.groundRoll).toBeCloseTo(1.2, 9);
    expect(measured.distanceTo50Feet - plain.distanceTo50Feet).toBeCloseTo(0.2 * plain.groundRoll, 6);
    expect(findingsOf(grids, 'takeoff roll')).toEqual([]);
    expect(findingsOf(rolledTimes(2), 'takeoff roll')[0]).toMatchObject({ gravity: 'check' });
  });

  test('what was not measured is no figure: a row without its value is counted out', () => {
    const grids = withRows(plainAircraft, 'known points', ['Elm', 'climb', 110, 1000, 0, '', '', 3, '']);
    expect(flightOf(grids, 'Elm').aircraft.dragPolar.spanEfficiency).toBe(0.7);
    expect(findingsOf(grids, 'known flown points')[0]?.text).toContain('1 without airspeed');
  });
});

describe('which rows are used, and for what', () => {
  const known = (grids: TableGrids, ...rows: Cell[][]) =>
    flownAirframe(contextOf(catalogueOf(withRows(grids, 'known points', ...rows))), new Set());
  const alone = () => known(plainAircraft);
  const roll = point('takeoff roll', 110, '', '', 225.5);

  test('a level flight and a roll as predicted leave nothing to say', () => {
    const { findings, groundRollFactor, flown } = known(plainAircraft, roll);
    expect(findings).toEqual([]);
    expect(groundRollFactor).toBeCloseTo(1, 3); // the roll worked elsewhere, see flight.test.ts
    expect(flown?.level).toMatchObject({ mass: 1000, powerFraction: 100 / 110 });
    expect(flown?.level.air.pressureAltitude).toBe(0);
  });

  test('power above the rated one counts as all of it', () => {
    const grids = withCells(plainAircraft, 'known points', ['Elm'], { power: 115 });
    expect(known(grids).flown?.level.powerFraction).toBe(1);
  });

  test('a rate of climb beside a level flight is not read', () => {
    const grids = withCells(plainAircraft, 'known points', ['Elm'], { 'rate of climb': 3 });
    expect(known(grids).flown?.dragPolar).toEqual(alone().flown?.dragPolar);
  });

  test('a level flight without airspeed and a climb without a rate are counted out', () => {
    const found = known(plainAircraft, point('level flight', 80, ''), point('climb', 110, 39), roll);
    expect(found.findings.map(({ text }) => text)).toEqual(['2 without airspeed or rate of climb: not used']);
    expect(found.flown?.dragPolar).toEqual(alone().flown?.dragPolar);
  });

  test('options aboard in the measured flight are no part of the bare airframe: 0.3 ft² of 150', () => {
    const bare = (dragArea: number) => {
      const grids = withCells(godwit, 'equipment', ['rear seats with belts'], { 'drag area': dragArea });
      const context = contextOf(catalogueOf(grids));
      const { flown } = flownAirframe(context, new Set(['rear seats with belts']));
      return flown?.dragPolar.zeroLiftDragCoefficient as number;
    };
    expect(bare(0) - bare(0.3)).toBeCloseTo(0.3 / 150, 5);
  });

  test('no roll measured: a note; a roll beside another condition is none', () => {
    const note = {
      ...{ gravity: 'note', package: '', subject: 'takeoff roll' },
      text: expect.stringMatching(/^none measured/),
    };
    expect(alone()).toMatchObject({ groundRollFactor: 1, findings: [note] });
    const beside = withCells(plainAircraft, 'known points', ['Elm'], { 'ground roll': 300 });
    expect(known(beside)).toMatchObject({ groundRollFactor: 1, findings: [note] });
  });

  test('the first roll that has a length is taken', () => {
    const rows = [point('takeoff roll', 110, ''), point('takeoff roll', 110, '', '', 1.2 * 225.5)];
    expect(known(plainAircraft, ...rows, roll).groundRollFactor).toBeCloseTo(1.2, 3);
  });

  test('half of the predicted roll is doubted', () => {
    const { groundRollFactor, findings } = known(plainAircraft, point('takeoff roll', 110, '', '', 112.75));
    expect(groundRollFactor).toBeCloseTo(0.5, 3);
    expect(findings).toMatchObject([
      { gravity: 'check', text: expect.stringMatching(/^the measured roll is 0\.50 of the predicted one/) },
    ]);
  });

  test('a roll on a power that does not take it off is not used', () => {
    const { groundRollFactor, findings } = known(plainAircraft, point('takeoff roll', 20, '', '', 225.5));
    expect(groundRollFactor).toBe(1);
    expect(findings).toMatchObject([
      { gravity: 'check', text: expect.stringMatching(/^the measured roll is not used: conditions must be/) },
    ]);
  });
});

describe('the air of a measurement', () => {
  test('27 °C at 1,000 m: 89,874.6 Pa of the standard atmosphere over R T', () => {
    const air = airOf({ altitude: 1000, temperature: 300.15 });
    expect(air.temperature).toBeCloseTo(300.15, 9);
    expect(air.density).toBeCloseTo(89_874.6 / (287.05287 * 300.15), 5); // US Standard Atmosphere 1976
  });

  test('standard where no temperature is given, at sea level where no height is', () => {
    expect(airOf({ altitude: 1000 }).temperature).toBeCloseTo(281.65, 9);
    expect(airOf({})).toMatchObject({ pressureAltitude: 0, temperature: 288.15 });
  });
});

test('only what refuses its data becomes words; any other error is thrown on', () => {
  const failing = (error: Error) => () => {
    throw error;
  };
  expect(attempt(failing(new RangeError('too much')))).toEqual({ value: undefined, refusal: 'too much' });
  expect(() => attempt(failing(new TypeError('a fault of the program')))).toThrow('a fault of the program');
});
