/**
 * COOLING_CHECK: which figure stands in which column. Expected: the climbs that the package's cooling holds, which have tests of
 * their own, brought into the units by hand; what is not known by hand.
 */
import { describe, expect, test } from 'vitest';
import { highestOat, type StreamInClimb, worstOf } from '../../src/assessment/cooling.ts';
import { coolingBlock } from '../../src/assessment/coolingBlock.ts';
import { requiredExitArea } from '../../src/engineering/coolingLimit.ts';
import type { TableGrids } from '../../src/tables/catalogue.ts';
import type { Cell } from '../../src/tables/cell.ts';
import { sample } from '../sample.ts';
import { smallWorkbook } from '../tables/smallWorkbook.ts';
import { cooledPackages, withAttribute, withCells } from './flightFixture.ts';

const small: TableGrids = smallWorkbook();
const cached = new Map<string, ReturnType<typeof cooledPackages>>();
function packagesOf(name: 'godwit' | 'sanderling') {
  const known = cached.get(name) ?? cooledPackages(sample(name));
  cached.set(name, known);
  return known;
}

function blockOf(packages: ReturnType<typeof cooledPackages>, ...names: string[]): Cell[][] {
  return coolingBlock(packages.context, names.map(packages.of));
}
const chartRows = 12;
const chart = (block: Cell[][]) => block.slice(2, 2 + chartRows);
/** Below the chart, its two heads and the title, labels and units of the lines. */
const lines = (block: Cell[][]) => block.slice(2 + chartRows + 3);
const column = (block: Cell[][], label: string) => (block[2 + chartRows + 1] as Cell[]).indexOf(label);

const fahrenheit = (kelvin: number) => (kelvin - 273.15) * 1.8 + 32;
const celsius = (kelvin: number) => kelvin - 273.15;
const btuPerMinute = (watts: number) => watts / (1055.05585262 / 60);
const poundsPerMinute = (kilograms: number) => (kilograms * 60) / 0.45359237;
const squareInches = (area: number) => area / 0.0254 ** 2;
const near = (cell: Cell | undefined, value: number | undefined, step: number) =>
  expect(Math.abs((cell as number) - (value ?? Number.NaN))).toBeLessThanOrEqual(step / 2 + 1e-9);

describe('the chart', () => {
  test('what it is, a column a package, a row each 5 °C from −10 to 45', () => {
    const block = blockOf(packagesOf('godwit'), 'Larch', 'Hazel');
    expect(block[0]).toEqual([
      "Least margin of a package's streams where all are known, recommended speed, MCP, by OAT at the mission's field (3,000 ft), °F",
    ]);
    expect(block[1]).toEqual(['OAT at the field, °C', 'Larch', 'Hazel']);
    expect(chart(block).map(([oat]) => oat)).toEqual([-10, -5, 0, 5, 10, 15, 20, 25, 30, 35, 40, 45]);
  });

  // Steady, with the heat a share of the shaft power, a stream's excess over the outside air hardly changes with the day
  test('each of the packages in its own column; a warmer day leaves less', () => {
    const both = chart(blockOf(packagesOf('godwit'), 'Larch', 'Hazel'));
    ['Larch', 'Hazel'].forEach((name, index) => {
      const alone = chart(blockOf(packagesOf('godwit'), name)).map((row) => row[1]);
      expect(both.map((row) => row[index + 1])).toEqual(alone);
      const [coldest, warmest] = [alone[0] as number, alone.at(-1) as number];
      expect(coldest - warmest).toBeGreaterThan(70); // 55 °C are 99 °F
      expect(coldest - warmest).toBeLessThan(130);
    });
  });

  test('on the day that is just warm enough for the worst stream nothing is left: Ash, by interpolation', () => {
    const packages = cooledPackages(small);
    const { flight, cooling, package: engine } = packages.of('Ash');
    const [fins] = cooling!.streams;
    const worst = worstOf(fins!.hotDay, 'continuous', 'best rate', 0) as StreamInClimb;
    const most = celsius(highestOat(engine, flight!, fins!.stream, worst).temperature);
    const rows = chart(blockOf(packages, 'Ash'));
    const [x1, y1] = rows.at(-2) as number[];
    const [x2, y2] = rows.at(-1) as number[];
    expect(x1! + ((x2! - x1!) * y1!) / (y1! - y2!)).toBeCloseTo(most, 0);
  });

  test('the least of all streams: one that is made to run hot takes the others down', () => {
    const hot = cooledPackages(withCells(sample('godwit'), 'cooling', ['Rowan', 'oil'], { limit: 180 }));
    const before = chart(blockOf(packagesOf('godwit'), 'Rowan'));
    chart(blockOf(hot, 'Rowan')).forEach((row, index) => {
      expect(row[1]).toBeLessThan(before[index]?.[1] as number);
    });
  });

  test('blank without flight, without streams, and where one stream is not known', () => {
    const blank = (grids: TableGrids, name: string) =>
      expect(chart(blockOf(cooledPackages(grids), name)).map((row) => row[1])).toEqual(
        Array.from({ length: chartRows }, () => null),
      );
    blank({ ...small, 'known points': [] }, 'Ash');
    blank(small, 'Birch');
    blank(withCells(sample('godwit'), 'cooling', ['Larch', 'oil'], { 'known temperature': '' }), 'Larch');
  });
});

describe('the lines', () => {
  test('title, labels, units', () => {
    const block = blockOf(packagesOf('godwit'), 'Larch');
    expect(block.slice(2 + chartRows, 2 + chartRows + 3)).toEqual([
      [
        'Steady climb on the hot day, 38 °C at sea level, at maximum takeoff weight; the worst height between sea level and ceiling',
      ],
      [
        ...[
          'Package',
          'Stream',
          'Power',
          'At',
          'Airspeed, true',
          'Worst height',
          'OAT there',
          'Heat',
          'Airflow',
        ],
        ...['Temperature', 'Limit', 'Margin', 'Highest OAT at the field', 'Exit needed', 'Exit built'],
        ...['Inlet, least', 'Inlet built', 'Verdict'],
      ],
      [
        ...['', '', '', '', 'kt', 'ft', '°C', 'Btu/min', 'lb/min', '°F', '°F', '°F', '°C'],
        ...['in²', 'in²', 'in²', 'in²', ''],
      ],
    ]);
  });

  test('every stream at both ratings and speeds, package after package', () => {
    const rows = lines(blockOf(packagesOf('godwit'), 'Larch', 'Rowan'));
    const cases = [
      ['MCP', 'best rate speed'],
      ['MCP', 'cooling climb speed'],
      ['takeoff, 5 min', 'best rate speed'],
      ['takeoff, 5 min', 'cooling climb speed'],
    ];
    const larch = ['coolant', 'oil', 'charge air'].flatMap((stream) =>
      cases.map((each) => ['Larch', stream, ...each]),
    );
    expect(rows.map((row) => row.slice(0, 4)).slice(0, larch.length)).toEqual(larch);
    expect(rows.slice(larch.length).every(([name]) => name === 'Rowan')).toBe(true);
  });

  test.each([
    ['coolant', 'continuous', 'best rate'],
    ['oil', 'continuous', 'cooling climb'],
    ['charge air', 'takeoff', 'cooling climb'],
  ] as const)('Larch, %s, %s, %s: the worst climb in every column', (stream, rating, speed) => {
    const packages = packagesOf('godwit');
    const { cooling, flight, package: engine } = packages.of('Larch');
    const data = cooling!.streams.find((each) => each.data.row.stream === stream)!;
    const worst = worstOf(data.hotDay, rating, speed) as StreamInClimb;
    const block = blockOf(packages, 'Larch');
    const power = rating === 'continuous' ? 'MCP' : 'takeoff, 5 min';
    const row = lines(block).find(
      (each) => each[1] === stream && each[2] === power && each[3] === `${speed} speed`,
    )!;
    const { climb, result } = worst;
    const of = (label: string) => row[column(block, label)];
    near(of('Airspeed, true'), climb.trueAirspeed / (1852 / 3600), 1);
    near(of('Worst height'), climb.air.pressureAltitude / 0.3048, 100);
    near(of('OAT there'), celsius(climb.air.temperature), 1);
    near(of('Heat'), btuPerMinute(result.flow.heat), 10);
    near(of('Airflow'), poundsPerMinute(result.flow.airflow), 1);
    near(of('Temperature'), fahrenheit(result.temperature!), 1);
    near(of('Limit'), fahrenheit(data.stream.limit), 1);
    near(of('Margin'), result.margin! * 1.8, 1);
    near(of('Exit needed'), squareInches(requiredExitArea(data.stream, climb.condition)!), 1);
    near(of('Exit built'), squareInches(data.stream.exitArea), 1);
    // Air as dense as before the matrix, no faster than it flies
    near(
      of('Inlet, least'),
      squareInches(result.flow.airflow / (result.flow.density * climb.trueAirspeed)),
      1,
    );
    near(of('Inlet built'), squareInches(data.data.row.inletArea!), 1);
    const fromField = worstOf(
      data.hotDay,
      rating,
      speed,
      flight!.field.air.pressureAltitude,
    ) as StreamInClimb;
    if (rating === 'takeoff') expect(of('Highest OAT at the field')).toBeNull();
    else
      near(
        of('Highest OAT at the field'),
        celsius(highestOat(engine, flight!, data.stream, fromField).temperature),
        1,
      );
    const holds = rating === 'takeoff' ? 'TOO HOT if held until steady' : 'TOO HOT';
    expect(of('Verdict')).toBe(result.margin! >= 0 ? 'holds' : holds);
  });

  test('takeoff power without a time is not given one', () => {
    const godwit = withAttribute(sample('godwit'), 'packages', 'takeoff power limit', '', 'min', 'Larch');
    const powers = lines(blockOf(cooledPackages(godwit), 'Larch')).map((row) => row[2]);
    expect(new Set(powers)).toEqual(new Set(['MCP', 'takeoff']));
  });

  test('takeoff power may be over before it is too hot, which the verdict leaves open', () => {
    const verdicts = (limit: number) =>
      lines(
        blockOf(
          cooledPackages(withCells(sample('godwit'), 'cooling', ['Larch', 'coolant'], { limit })),
          'Larch',
        ),
      )
        .filter(([, stream]) => stream === 'coolant')
        .map((row) => [row[2], row.at(-1)]);
    const [mcp, , takeoff] = verdicts(200);
    expect([mcp, takeoff]).toEqual([
      ['MCP', 'TOO HOT'],
      ['takeoff, 5 min', 'TOO HOT if held until steady'],
    ]);
    expect(verdicts(400).map(([, verdict]) => verdict)).toEqual(['holds', 'holds', 'holds', 'holds']);
  });

  test('a stream whose heat is known no higher than below the field: no margin of the package in the chart', () => {
    // Larch's critical altitude lies above both; the field at 3,000 ft
    const low = withCells(sample('godwit'), 'cooling', ['Larch', 'charge air'], { 'known altitude': 2000 });
    const block = blockOf(cooledPackages(low), 'Larch');
    expect(chart(block).map(([, cell]) => cell)).toEqual(Array.from({ length: chartRows }, () => null));
    const air = lines(block).filter(([, stream]) => stream === 'charge air');
    expect(air.length).toBeGreaterThan(0);
    for (const row of air) {
      expect(row[5]).toBeLessThanOrEqual(2000);
      expect(row[12]).toBeNull();
    }
  });

  test('in metric units: kW, kg/s, °C, cm²', () => {
    const packages = packagesOf('sanderling');
    const block = blockOf(packages, 'Sorrel');
    expect(block[2 + chartRows + 2]?.slice(4)).toEqual([
      ...['km/h', 'm', '°C', 'kW', 'kg/s', '°C', '°C', '°C', '°C', 'cm²', 'cm²', 'cm²', 'cm²', ''],
    ]);
  });

  test('a limit met to the degree holds; where the outside air is hotter than the limit no exit is enough', () => {
    const ash = (limit: number) =>
      lines(blockOf(cooledPackages(withCells(small, 'cooling', ['Ash'], { limit })), 'Ash'));
    const [cool] = ash(435);
    const temperature = cool?.[9] as number;
    expect(ash(temperature + 1)[0]?.at(-1)).toBe('holds');
    expect(ash(temperature - 1)[0]?.at(-1)).toBe('TOO HOT');
    const [hopeless] = ash(95); // 100 °F outside
    expect(hopeless?.slice(10, 11)).toEqual([95]);
    expect(hopeless?.[13]).toBe('none is enough');
    expect(hopeless?.at(-1)).toBe('TOO HOT');
  });
});

describe('what is not known', () => {
  // 100.4 °F outside: the air may leave half way to 435 °F, 167.3 °F warmer. 0.24 Btu/lb·°F
  const ashWithout = (cells: Record<string, Cell>) =>
    blockOf(cooledPackages(withCells(small, 'cooling', ['Ash'], cells)), 'Ash');

  test('a stream: its heat, the air that takes it away, the inlet for that; no temperature', () => {
    const block = ashWithout({ 'known temperature': '', 'inlet area': '' });
    const rows = lines(block);
    expect(rows).toHaveLength(1);
    const row = rows[0] as Cell[];
    const of = (label: string) => row[column(block, label)] as number;
    expect(row.slice(0, 4)).toEqual(['Ash', 'fins', 'MCP', 'best rate speed']);
    expect(row.slice(5, 7)).toEqual([0, 38]); // 100 °F
    expect(of('Limit')).toBe(435);
    expect(of('Exit built')).toBe(50);
    for (const label of ['Temperature', 'Margin', 'Highest OAT at the field', 'Exit needed', 'Inlet built'])
      expect(of(label)).toBeNull();
    expect(row.at(-1)).toBe('not known');
    // Heat shown to 10, airflow to 1: 0.24 as rounded, 0.2 %
    expect(Math.abs(of('Airflow') - of('Heat') / (0.24 * 167.3))).toBeLessThan(1);
    // Air of 311 K at sea level, 101,325/(287.053 × 310.9) = 1.135 kg/m³
    const area = (of('Airflow') * 0.45359237) / 60 / (1.135 * of('Airspeed, true') * (1852 / 3600));
    expect(Math.abs(of('Inlet, least') - area / 0.0254 ** 2)).toBeLessThan(1);
  });

  test('45 % of what is left of 120 hp at 100 °F, with a fixed pitch not more than that', () => {
    const block = ashWithout({ 'known temperature': '' });
    const heat = lines(block)[0]?.[7] as number;
    // 120 hp × 45 % are 2,290 Btu/min
    expect(heat).toBeLessThan(2290);
    expect(heat).toBeGreaterThan(0.8 * 2290);
  });

  test('heat of the fuel, without fuel points: not known, nor what takes it away', () => {
    const noFuel = {
      ...small,
      'fuel points': (small['fuel points'] ?? []).filter(([name]) => name !== 'Ash'),
    };
    const header = [...(small.cooling?.[0] ?? []), 'heat of'];
    const cooling = (small.cooling ?? []).map(
      (row, index) => [header, [...row, '']][index] ?? [...row, 'fuel energy'],
    );
    const grids = withCells({ ...noFuel, cooling }, 'cooling', ['Ash'], { 'known temperature': '' });
    const row = lines(blockOf(cooledPackages(grids), 'Ash'))[0] as Cell[];
    expect(row.slice(7, 10)).toEqual([null, null, null]);
    expect(row.at(-1)).toBe('not known');
  });

  test('without a limit no air can be asked for', () => {
    const block = ashWithout({ 'known temperature': '', limit: '' });
    const row = lines(block)[0] as Cell[];
    expect(row.slice(8)).toEqual([null, null, null, null, null, null, 50, null, null, 'not known']);
  });

  test('a limit no higher than the hot day: no air is enough', () => {
    const block = ashWithout({ 'known temperature': '', limit: 100 });
    const row = lines(block)[0] as Cell[];
    expect(row.slice(7, 11)).toEqual([expect.any(Number), null, null, 100]);
    expect(row[column(block, 'Inlet, least')]).toBeNull();
  });

  test('a package without flight or streams: a line that says where to look', () => {
    const hint = 'not known: see the findings';
    expect(lines(blockOf(cooledPackages(small), 'Birch'))).toEqual([['Birch', hint]]);
    expect(lines(blockOf(cooledPackages({ ...small, 'known points': [] }), 'Ash'))).toEqual([['Ash', hint]]);
  });
});
