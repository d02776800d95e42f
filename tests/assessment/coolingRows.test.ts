/**
 * What the comparison shows of the cooling.
 *
 * Expected: the least of the margins of the climbs that the line's name asks for; an exit and a temperature are tried, by
 * entering them in the tables.
 */
import { describe, expect, test } from 'vitest';
import type { Comparison } from '../../src/assessment/assess.ts';
import type { StreamInClimb } from '../../src/assessment/cooling.ts';
import { coolingRows, oatText } from '../../src/assessment/coolingRows.ts';
import { displayIn } from '../../src/assessment/display.ts';
import type { TableGrids } from '../../src/tables/catalogue.ts';
import { sample } from '../sample.ts';
import { comparisonOf, withAttribute, withCells } from './flightFixture.ts';

const godwit = sample('godwit');
const comparison = () => comparisonOf(godwit);

/** What stands under a package in a line, the `nth` of its name. */
function cell(of: Comparison, name: string, label: string, nth = 0) {
  const row = coolingRows(of).filter((each) => each.label === label)[nth];
  const assessment = of.assessments.find((each) => each.package.name === name);
  if (row === undefined || assessment === undefined) throw new Error(`no ${label} of ${name}`);
  return row.value(assessment, of);
}

/** The least margin of a package's streams in their climbs at maximum continuous power at a speed. */
function leastMargin(
  name: string,
  speed: 'best rate' | 'cooling climb',
  climbsOf: 'hotDay' | 'mission',
  streams: readonly string[],
) {
  const { cooling } = comparison().assessments.find((each) => each.package.name === name)!;
  const climbs = cooling!.streams
    .filter(({ data }) => streams.includes(data.row.stream))
    .flatMap((stream): readonly StreamInClimb[] => stream[climbsOf])
    .filter(({ climb }) => climb.rating === 'continuous' && climb.speed === speed);
  expect(climbs.length).toBeGreaterThan(3 * streams.length);
  return Math.min(...climbs.map(({ result }) => result.margin!));
}

const larchStreams = ['coolant', 'oil', 'charge air'];

test('two lines a kind of stream that any package has, then three for all of a package’s streams', () => {
  const rows = coolingRows(comparison());
  const exit = ['  exit needed / built', 'opening'];
  expect(rows.map(({ label, shown }) => [label, shown])).toEqual([
    ['fins, margin in climb', 'temperatureMargin'],
    exit,
    ['coolant, margin in climb', 'temperatureMargin'],
    exit,
    ['oil, margin in climb', 'temperatureMargin'],
    exit,
    ['charge air, margin in climb', 'temperatureMargin'],
    exit,
    ['least margin, best-rate speed', 'temperatureMargin'],
    ['least margin, mission’s day', 'temperatureMargin'],
    ['highest OAT at the field', 'oat'],
  ]);
  expect(rows.filter(({ differs }) => differs)).toEqual([]);
  const cooling = godwit.cooling!.filter(([name], index) => index < 2 || name === 'Alder');
  expect(coolingRows(comparisonOf({ ...godwit, cooling }))[0]?.label).toBe('coolant, margin in climb');
});

test('margins: of one stream at the speed stated for a hot climb, of all at best rate, of all on the mission’s day', () => {
  for (const stream of larchStreams)
    expect(cell(comparison(), 'Larch', `${stream}, margin in climb`)).toBe(
      leastMargin('Larch', 'cooling climb', 'hotDay', [stream]),
    );
  expect(cell(comparison(), 'Larch', 'least margin, best-rate speed')).toBe(
    leastMargin('Larch', 'best rate', 'hotDay', larchStreams),
  );
  expect(cell(comparison(), 'Larch', 'least margin, mission’s day')).toBe(
    leastMargin('Larch', 'cooling climb', 'mission', larchStreams),
  );
});

test('a dash where a package has no such stream', () => {
  expect(cell(comparison(), 'Larch', 'fins, margin in climb')).toBe('–');
  expect(cell(comparison(), 'Larch', '  exit needed / built', 0)).toBe('–');
  expect(cell(comparison(), 'Rowan', 'coolant, margin in climb')).toBe('–');
});

describe('the exit that is needed', () => {
  const built = (area: number) =>
    comparisonOf(withCells(godwit, 'cooling', ['Larch', 'coolant'], { 'exit area': area }));

  test('holds the limit in the worst climb to a square inch, beside what is built', () => {
    const words = String(cell(comparison(), 'Larch', '  exit needed / built', 1));
    expect(words).toMatch(/^\d+ \/ 52$/);
    const needed = Number.parseInt(words, 10);
    expect(cell(built(needed - 1), 'Larch', 'coolant, margin in climb')).toBeLessThan(0);
    expect(cell(built(needed + 1), 'Larch', 'coolant, margin in climb')).toBeGreaterThan(0);
  });

  test('none where no exit is enough', () => {
    const blocked = withCells(godwit, 'cooling', ['Larch', 'coolant'], { 'inlet recovery': 0.01 });
    expect(cell(comparisonOf(blocked), 'Larch', '  exit needed / built', 1)).toBe('none / 52');
  });
});

describe('the highest OAT at the field', () => {
  test('leaves nothing on a mission that begins at the field in such air and climbs to the worst height', () => {
    const celsius = (cell(comparison(), 'Larch', 'highest OAT at the field') as number) - 273.15;
    const high = withAttribute(godwit, 'mission', 'cruise altitude', 16_000, 'ft'); // Larch's critical altitude
    const margin = (temperature: number) =>
      cell(
        comparisonOf(withAttribute(high, 'mission', 'field temperature', temperature, '°C')),
        'Larch',
        'least margin, mission’s day',
      ) as number;
    // The speed is that of the hot day's climb, a little other than this day's
    expect(Math.abs(margin(celsius))).toBeLessThan(0.2);
  });

  test('is that of the stream that stands the least, and needs all of them known', () => {
    const tight = withCells(godwit, 'cooling', ['Rowan', 'oil'], { limit: 230 });
    const [of, before] = [comparisonOf(tight), comparison()];
    const cooler = (each: Comparison) => cell(each, 'Rowan', 'highest OAT at the field') as number;
    // The limit is 15 °F lower and the heat no other: 8.3 K, but for the air that is denser then
    expect(cooler(before) - cooler(of)).toBeGreaterThan(7);
    expect(cooler(before) - cooler(of)).toBeLessThan(10);
    const unknown = comparisonOf(withCells(godwit, 'cooling', ['Rowan', 'fins'], { limit: '' }));
    expect(cell(unknown, 'Rowan', 'highest OAT at the field')).toBeUndefined();
  });

  test('in words where the search found no end', () => {
    const { context } = comparison();
    const display = displayIn(context.display.units, '');
    expect(oatText(display, { found: 'yes', temperature: 300 })).toBe(300);
    expect(oatText(display, { found: 'exceededAtColdest', temperature: 220 })).toBe('none');
    expect(oatText(display, { found: 'holdsUpToHottest', temperature: 323.15 })).toBe('> 50');
    const small = withCells(godwit, 'cooling', ['Larch', 'coolant'], { 'exit area': 5 });
    expect(cell(comparisonOf(small), 'Larch', 'highest OAT at the field')).toBe('none');
  });
});

describe('what is not known', () => {
  test('one stream: no least margin, while the other streams have theirs', () => {
    const of = comparisonOf(withCells(godwit, 'cooling', ['Larch', 'oil'], { limit: '' }));
    expect(cell(of, 'Larch', 'oil, margin in climb')).toBeUndefined();
    expect(cell(of, 'Larch', '  exit needed / built', 2)).toBeUndefined();
    expect(cell(of, 'Larch', 'least margin, best-rate speed')).toBeUndefined();
    expect(cell(of, 'Larch', 'least margin, mission’s day')).toBeUndefined();
    // The drag of the oil's air is not counted: a little faster, a little cooler
    const gained =
      (cell(of, 'Larch', 'coolant, margin in climb') as number) -
      (cell(comparison(), 'Larch', 'coolant, margin in climb') as number);
    expect(gained).toBeGreaterThan(0);
    expect(gained).toBeLessThan(0.5);
  });

  test('a package without cooling rows, and one that does not fly: blanks', () => {
    const grids: TableGrids = withAttribute(
      { ...godwit, cooling: godwit.cooling!.filter(([name]) => name !== 'Rowan') },
      'packages',
      'static rpm',
      95,
      '%',
      'Hazel',
    );
    const of = comparisonOf(withAttribute(grids, 'packages', 'climb rpm', 80, '%', 'Hazel'));
    for (const label of [
      'least margin, best-rate speed',
      'least margin, mission’s day',
      'highest OAT at the field',
    ]) {
      expect(cell(of, 'Rowan', label)).toBeUndefined();
      expect(cell(of, 'Hazel', label)).toBeUndefined();
    }
    expect(cell(of, 'Hazel', 'oil, margin in climb')).toBeUndefined();
  });

  test('no streams at all: no lines', () => {
    expect(coolingRows(comparisonOf(sample('minimal')))).toEqual([]);
    expect(coolingRows(comparisonOf({ ...godwit, 'known points': [] }))).toEqual([]);
  });
});
