/**
 * What is said of the cooling: which climb a stream fails in, from the gravest, and what would help.
 *
 * The changes of the sample's tables make one climb fail after the other; each test holds that those before it do not.
 */
import { describe, expect, test } from 'vitest';
import { type Cooling, heatKnownUpTo, type StreamCooling } from '../../src/assessment/cooling.ts';
import { airSpecificHeat } from '../../src/engineering/air.ts';
import type { TableGrids } from '../../src/tables/catalogue.ts';
import { fromSi, horsepower, toSi } from '../../src/units.ts';
import { sample } from '../sample.ts';
import { comparisonOf, cooledPackages, withAttribute, withCells } from './flightFixture.ts';

const godwit = sample('godwit');

const withStream = (
  name: string,
  stream: string,
  cells: Parameters<typeof withCells>[3],
  grids: TableGrids = godwit,
) => withCells(grids, 'cooling', [name, stream], cells);
const exitOf = (squareInches: number, grids?: TableGrids) =>
  withStream('Larch', 'coolant', { 'exit area': squareInches }, grids);
const fieldAt = (celsius: number, grids: TableGrids = godwit) =>
  withAttribute(grids, 'mission', 'field temperature', celsius, '°C');

const said = (grids: TableGrids, name: string, subject: string) =>
  comparisonOf(grids).findings.filter((each) => each.package === name && each.subject === subject);

const coolingOf = (grids: TableGrids, name: string): Cooling => {
  const { cooling } = cooledPackages(grids).of(name);
  if (cooling === undefined) throw new Error(`${name} is not cooled`);
  return cooling;
};
const streamOf = (grids: TableGrids, name: string, kind: string): StreamCooling => {
  const found = coolingOf(grids, name).streams.find(({ data }) => data.row.stream === kind);
  if (found === undefined) throw new Error(`no ${kind}`);
  return found;
};

type Day = 'hotDay' | 'mission';
type Rating = 'continuous' | 'takeoff';
type Speed = 'cooling climb' | 'best rate';

/** The climb of a stream that leaves the least, from a height on. */
function worst(stream: StreamCooling, day: Day, rating: Rating, speed: Speed, from = 0) {
  const climbs = stream[day].filter(
    ({ climb }) => climb.rating === rating && climb.speed === speed && climb.air.pressureAltitude >= from,
  );
  const least = Math.min(...climbs.map(({ result }) => result.margin!));
  return climbs.find(({ result }) => result.margin === least)!;
}

describe('the gravest climb a stream fails in', () => {
  const hot = 'on the hot day at MCP';
  const own = 'on the mission’s day at MCP';
  const steady = 'on the hot day, were it held long enough to be steady, at takeoff power';
  const strong = withAttribute(godwit, 'packages', 'takeoff power', 220, 'hp', 'Alder');
  type Case = readonly [
    string,
    { gravity: string; day: Day; rating: Rating; speed: Speed; words: string },
    TableGrids,
  ];
  const cases: readonly Case[] = [
    [
      'Larch',
      { gravity: 'stop', day: 'hotDay', rating: 'continuous', speed: 'cooling climb', words: hot },
      exitOf(44),
    ],
    [
      'Larch',
      { gravity: 'stop', day: 'mission', rating: 'continuous', speed: 'cooling climb', words: own },
      fieldAt(38),
    ],
    [
      'Larch',
      { gravity: 'check', day: 'hotDay', rating: 'continuous', speed: 'best rate', words: hot },
      godwit,
    ],
    [
      'Larch',
      { gravity: 'check', day: 'mission', rating: 'continuous', speed: 'best rate', words: own },
      fieldAt(37, exitOf(57)),
    ],
    [
      'Alder',
      { gravity: 'check', day: 'hotDay', rating: 'takeoff', speed: 'cooling climb', words: steady },
      strong,
    ],
    [
      'Larch',
      { gravity: 'note', day: 'hotDay', rating: 'takeoff', speed: 'best rate', words: steady },
      exitOf(57),
    ],
  ];

  test.each(cases)('%s: $gravity, $day, $rating power, $speed', (name, failing, grids) => {
    const stream = streamOf(grids, name, 'coolant');
    const [finding, ...others] = said(grids, name, 'cooling, coolant');
    expect(others).toEqual([]);
    const at = cases.findIndex(([, each]) => each === failing);
    for (const [, { day, rating, speed }] of cases.slice(0, at))
      expect(worst(stream, day, rating, speed).result.margin).toBeGreaterThan(0);
    const { climb, result } = worst(stream, failing.day, failing.rating, failing.speed);
    expect(result.margin).toBeLessThan(0);
    expect(finding).toMatchObject({ gravity: failing.gravity, shown: 'engineTemperature' });
    expect(finding?.value).toBe(result.temperature);
    expect(finding?.limit).toBe(stream.stream.limit);
    const over = Math.round(-result.margin! * 1.8);
    const knots = Math.round(fromSi('speed', climb.trueAirspeed, 'kt'));
    expect(finding?.text).toMatch(
      new RegExp(`^${over} °F over ${failing.words}, ${failing.speed} speed ${knots} kt, [\\d,]+ ft; `),
    );
  });

  test('whose limit it is: the row’s source, or the table where it gives none', () => {
    expect(said(godwit, 'Larch', 'cooling, coolant')[0]?.source).toBe("radiator maker's design sheet");
    const unsourced = withStream('Larch', 'coolant', { source: '' });
    expect(said(unsourced, 'Larch', 'cooling, coolant')[0]?.source).toBe('cooling table');
  });

  test('nothing where every climb holds', () => {
    expect(said(exitOf(70), 'Larch', 'cooling, coolant')).toEqual([]);
    expect(said(godwit, 'Rowan', 'cooling, oil')).toEqual([]);
  });
});

describe('what would help', () => {
  const remedy = (grids: TableGrids) =>
    said(grids, 'Larch', 'cooling, coolant')[0]?.text.split('; ').slice(1);

  test('an exit as large as it says holds the climb that failed', () => {
    const [speed, exit] = remedy(godwit) ?? [];
    expect(speed).toMatch(/^at 100 kt it holds up to \d\d °C at the field$/);
    expect(exit).toMatch(/^needs \d\d in² of exit there, has 52 in²$/);
    const needed = Number(/\d+/.exec(exit ?? '')?.[0]);
    const margin = (area: number) =>
      worst(streamOf(exitOf(area), 'Larch', 'coolant'), 'hotDay', 'continuous', 'best rate').result.margin;
    expect(margin(needed + 1)).toBeGreaterThan(0);
    expect(margin(needed - 1)).toBeLessThan(0);
  });

  test('an exit alone where no air is cold enough', () => {
    expect(remedy(exitOf(5))).toEqual([expect.stringMatching(/^needs \d\d in² of exit there, has 5 in²$/)]);
  });

  test('no exit is enough where the inlet takes no pressure', () => {
    expect(remedy(withStream('Larch', 'coolant', { 'inlet recovery': 0.01 }))).toEqual([
      'no exit area is enough',
    ]);
  });
});

describe('ground idle on a hot day', () => {
  /**
   * 10 % of 160 hp at 3,000 ft, 89.2 °F: static thrust (2 ρ A (k P)²)^⅓ with k 0.42, of whose pressure on the disc 0.35
   * reaches an inlet of recovery 0.75; 227 lb/min of coolant and the engine's speed fall with the cube root of the power.
   * The pressure at 3,000 ft: US Standard Atmosphere 1976.
   */
  test('Larch’s coolant by hand, by the usual correlation of NTU^0.22, which errs by up to 1 %', () => {
    const air = (100 - 3.6 * 3 + 459.67) / 1.8;
    const density = 90_812 / (287.05287 * air);
    const disc = (Math.PI / 4) * (75 * 0.0254) ** 2;
    const power = 0.1 * 160 * horsepower;
    const thrust = Math.cbrt(2 * density * disc * (0.42 * power) ** 2);
    const available = (0.75 * 0.35 * thrust) / disc;
    const heat = 0.55 * power;
    const design = (160 * 0.45359237) / 60;
    const lost = (flow: number) => {
      const core = ((2.2 * 249.08891 * 1.225) / density) * (flow / design) ** 1.8;
      const behind = density / (1 + heat / (airSpecificHeat * flow * air));
      return core + flow ** 2 / (2 * behind * (0.9 * 52 * 0.0254 ** 2) ** 2);
    };
    let [low, high] = [1e-6, design];
    while (high - low > 1e-9) {
      const middle = (low + high) / 2;
      if (lost(middle) > available) high = middle;
      else low = middle;
    }
    const speed = Math.cbrt(0.1);
    const airRate = low * airSpecificHeat;
    const coolantRate = ((227 * 0.45359237) / 60) * 3500 * speed;
    const conductance =
      (1.25 * design * airSpecificHeat) / (0.8 / (low / design) ** 0.8 + 0.2 / speed ** 0.8);
    const ntu = conductance / airRate;
    const ratio = airRate / coolantRate;
    expect(ratio).toBeLessThan(1);
    const effectiveness = 1 - Math.exp((ntu ** 0.22 / ratio) * (Math.exp(-ratio * ntu ** 0.78) - 1));
    const rise = heat / (effectiveness * airRate);
    const { idleTemperature } = streamOf(godwit, 'Larch', 'coolant');
    expect(Math.abs(idleTemperature! - air - rise)).toBeLessThan(0.01 * rise);
  });

  test('beyond the limit: a note beside the climb’s finding', () => {
    const [climb, idle, ...others] = said(exitOf(5), 'Larch', 'cooling, coolant');
    expect(others).toEqual([]);
    expect(climb?.gravity).toBe('stop');
    const { idleTemperature, stream } = streamOf(exitOf(5), 'Larch', 'coolant');
    expect(idleTemperature).toBeGreaterThan(stream.limit);
    expect(idle).toMatchObject({
      ...{ gravity: 'note', shown: 'engineTemperature', value: idleTemperature, limit: stream.limit },
      source: expect.stringMatching(/^idle taken as 10 % of MCP: /),
      text: 'on a hot day at ground idle it would go beyond its limit in the end: an indication only',
    });
  });
});

test('an inlet that takes its air in faster than the aircraft flies: m/(ρ V) of the worst climb from the field on', () => {
  const grids = withStream('Alder', 'coolant', { 'inlet area': 40 });
  const alder = streamOf(grids, 'Alder', 'coolant');
  const field = toSi('height', 3000, 'ft'); // of the mission: no lower climb counts
  const { climb, result } = worst(alder, 'hotDay', 'continuous', 'cooling climb', field);
  const { airflow, density } = result.flow;
  const least = airflow / (density * climb.trueAirspeed);
  expect(climb.trueAirspeed).toBeCloseTo(toSi('speed', 105, 'kt'), 6);
  const [finding, ...others] = said(grids, 'Alder', 'cooling, coolant, inlet');
  expect(others).toEqual([]);
  expect(finding).toMatchObject({
    ...{ gravity: 'check', shown: 'opening', source: "maker's rated point" },
    value: toSi('openingArea', 40, 'in²'),
    text: 'too small for its air at 105 kt: the pressure reckoned with is not to be had',
  });
  expect(finding?.limit).toBeCloseTo(least, 9);
  const inches = fromSi('openingArea', least, 'in²');
  const wider = withStream('Alder', 'coolant', { 'inlet area': inches + 0.01 });
  expect(said(wider, 'Alder', 'cooling, coolant, inlet')).toEqual([]);
  const unsaid = withStream('Alder', 'coolant', { 'inlet area': '' });
  expect(said(unsaid, 'Alder', 'cooling, coolant, inlet')).toEqual([]);
  const unsourced = withStream('Alder', 'coolant', { 'inlet area': 40, source: '' });
  expect(said(unsourced, 'Alder', 'cooling, coolant, inlet')[0]?.source).toBe('cooling table');
});

describe('what is assumed, and how far it is judged', () => {
  test('the assumptions of all streams in one note, none where there are none', () => {
    expect(said(godwit, 'Larch', 'cooling')).toMatchObject([
      {
        ...{ gravity: 'note', source: 'packages and cooling tables' },
        text: 'assumed for oil: half of the pressure available lost in the core; charge air: half of the pressure available lost in the core',
      },
    ]);
    const design = { 'core pressure drop': 2, 'core airflow': 60 };
    const known = withStream('Larch', 'oil', design, withStream('Larch', 'charge air', design));
    expect(said(known, 'Larch', 'cooling')).toEqual([]);
  });

  test('no note on a cooling-climb speed that is given', () => {
    expect(said(godwit, 'Larch', 'cooling-climb speed')).toEqual([]);
    const unsaid = withAttribute(godwit, 'packages', 'cooling-climb speed', '', 'kt', 'Larch');
    expect(said(unsaid, 'Larch', 'cooling-climb speed')).toMatchObject([
      { gravity: 'note', text: 'not given: cooling is judged at best-rate speed' },
    ]);
  });

  test('charge air up to the height of its known point, where the compressor works higher', () => {
    const { package: larch, cooling } = cooledPackages(godwit).of('Larch');
    const data = (kind: string) => cooling!.streams.find((each) => each.data.row.stream === kind)!.data;
    const charge = data('charge air');
    expect(heatKnownUpTo(charge, larch)).toBe(toSi('height', 6000, 'ft'));
    expect(heatKnownUpTo(data('oil'), larch)).toBe(Number.POSITIVE_INFINITY);
    const { criticalAltitude } = larch;
    const at = (knownAltitude: number | undefined) => ({ ...charge, row: { ...charge.row, knownAltitude } });
    expect(heatKnownUpTo(at(criticalAltitude), larch)).toBe(Number.POSITIVE_INFINITY);
    expect(heatKnownUpTo(at(undefined), larch)).toBe(0);
    expect(heatKnownUpTo(charge, { ...larch, criticalAltitude: undefined })).toBe(Number.POSITIVE_INFINITY);
    expect(said(godwit, 'Larch', 'cooling, charge air')).toMatchObject([
      {
        gravity: 'check',
        text: expect.stringMatching(/^not judged above 6,000 ft, where its heat is known/),
      },
    ]);
  });
});
