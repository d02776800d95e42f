/**
 * Cooling of a package's streams over height, speed and rating.
 *
 * The figures of the engineering below are tested in tests/engineering; here: that the tables' values arrive in them, that
 * the climbs are those a hot day asks for, and that what is not known is not shown as known. The planted faults are those
 * of the outline of the invented aircraft (read).
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { coolingDragArea } from '../../src/assessment/aircraft.ts';
import {
  governing,
  highestOat,
  onAnotherDay,
  type StreamCooling,
  type StreamInClimb,
  worstOf,
} from '../../src/assessment/cooling.ts';
import { conditionIn } from '../../src/assessment/coolingClimbs.ts';
import { coolingConditionOf } from '../../src/assessment/coolingCondition.ts';
import { airSpecificHeat, hotDayTemperature } from '../../src/engineering/air.ts';
import { airAt } from '../../src/engineering/aircraftInFlight.ts';
import { bestRateOfClimb } from '../../src/engineering/climb.ts';
import { requiredExitArea } from '../../src/engineering/coolingLimit.ts';
import { coolingResult } from '../../src/engineering/coolingResult.ts';
import { levelFlight } from '../../src/engineering/levelFlight.ts';
import type { TableGrids } from '../../src/tables/catalogue.ts';
import { horsepower, toSi } from '../../src/units.ts';
import { between } from '../engineering/between.ts';
import { sample } from '../sample.ts';
import { comparisonOf, cooledPackages, withAttribute, withCells } from './flightFixture.ts';

const godwit = sample('godwit');
const sanderling = sample('sanderling');
const foot = 0.3048;

function coolingOf(grids: TableGrids, name: string) {
  const { cooling, flight, package: engine } = cooledPackages(grids).of(name);
  if (cooling === undefined || flight === undefined) throw new Error(`${name} is not cooled`);
  const streamOf = (kind: string): StreamCooling => {
    const found = cooling.streams.find(({ data }) => data.row.stream === kind);
    if (found === undefined) throw new Error(`no ${kind}`);
    return found;
  };
  return { cooling, flight, engine, streamOf };
}

const marginAt = (
  stream: StreamCooling,
  ...where: ['continuous' | 'takeoff', 'best rate' | 'cooling climb']
) => worstOf(stream.hotDay, ...where)!.result.margin!;

const findingsAbout = (grids: TableGrids, engine: string, subject: string) =>
  comparisonOf(grids).findings.filter((each) => each.package === engine && each.subject === subject);

describe('calibration', () => {
  type Quantity = readonly [number, string];
  type Case = readonly [TableGrids, string, string, Quantity, Quantity, Quantity, number, Quantity];
  // Known points as the samples' rows have them: power, airspeed, height, OAT in °C, temperature
  const cases: readonly Case[] = [
    [godwit, 'Rowan', 'fins', [165, 'hp'], [92, 'kt'], [3000, 'ft'], 17, [368, '°F']],
    [godwit, 'Rowan', 'oil', [165, 'hp'], [92, 'kt'], [3000, 'ft'], 17, [188, '°F']],
    [godwit, 'Larch', 'charge air', [160, 'hp'], [110, 'kt'], [6000, 'ft'], 15, [120, '°F']],
    [godwit, 'Hazel', 'fins', [110, 'hp'], [84, 'kt'], [3000, 'ft'], 17, [355, '°F']],
    [godwit, 'Alder', 'coolant', [165, 'hp'], [100, 'kt'], [4000, 'ft'], 18, [170, '°F']],
    [sanderling, 'Sorrel', 'coolant', [66, 'kW'], [132, 'km/h'], [600, 'm'], 19, [92, '°C']],
    [sanderling, 'Clover', 'oil', [92, 'kW'], [150, 'km/h'], [1500, 'm'], 12, [92, '°C']],
  ];

  test.each(cases)('a known point gives its own temperature back', (grids, name, kind, ...known) => {
    const [power, speed, height, oat, hot] = known;
    const { flight, engine, streamOf } = coolingOf(grids, name);
    const altitude = toSi('height', height[0], height[1]);
    const air = airAt(altitude, oat + 273.15 - (288.15 - 0.0065 * altitude));
    const trueAirspeed = toSi('speed', speed[0], speed[1]);
    const shaftPower = toSi('power', power[0], power[1]);
    const condition = coolingConditionOf(flight.aircraft, engine.heatingValue, air, trueAirspeed, shaftPower);
    const { temperature } = coolingResult(streamOf(kind).stream, condition);
    // Exact but with a fixed pitch, whose engine speed at that airspeed moves a little with the cooling drag found later
    expect(temperature).toBeCloseTo(toSi('temperature', hot[0], hot[1]), 2);
  });

  test('Larch’s radiator from its design sheet: UA = NTU × the lesser of m c_p', () => {
    const { exchanger, core, limit, inletRecovery } = coolingOf(godwit, 'Larch').streamOf('coolant').stream;
    const airflow = (160 * 0.45359237) / 60; // kg/s
    expect(core.referenceAirflow).toBeCloseTo(airflow, 9);
    expect(core.referencePressureDrop).toBeCloseTo(2.2 * 249.08891, 6);
    expect(limit).toBeCloseTo((248 + 459.67) / 1.8, 9);
    expect(inletRecovery).toBe(0.75);
    if (exchanger.kind !== 'radiator') throw new Error('no radiator');
    expect(exchanger.coolantCapacityRate).toBeCloseTo(((227 * 0.45359237) / 60) * 3500, 6); // 6,006 W/K
    expect(exchanger.conductance).toBeCloseTo(1.25 * airflow * airSpecificHeat, 6);
  });
});

describe('one climb by hand: Larch’s coolant at 100 kt, MCP, sea level, hot day', () => {
  const climbed = () =>
    coolingOf(godwit, 'Larch')
      .streamOf('coolant')
      .hotDay.find(
        ({ climb }) =>
          climb.air.pressureAltitude === 0 &&
          climb.speed === 'cooling climb' &&
          climb.rating === 'continuous',
      )!;
  const hot = (100 + 459.67) / 1.8; // K

  test('heat: 0.55 × 160 hp × √(288.15/310.93) = 63.2 kW', () => {
    const found = climbed();
    const { flow } = found.result;
    expect(found.climb.air.temperature).toBeCloseTo(hot, 9);
    expect(flow.heat).toBeCloseTo(0.55 * 160 * horsepower * Math.sqrt(288.15 / hot), 0);
  });

  test('pressures: 0.75 (q + slipstream) + 0.1 q is spent in core and exit', () => {
    const found = climbed();
    const { flow } = found.result;
    const density = 101_325 / (287.05287 * hot);
    const speed = (100 * 1852) / 3600;
    const pressure = (density * speed ** 2) / 2;
    const { thrust, discArea } = found.climb.condition;
    const available = 0.75 * (pressure + (0.35 * thrust) / discArea) + 0.1 * pressure;
    const core = ((2.2 * 249.08891 * 1.225) / density) * (flow.airflow / ((160 * 0.45359237) / 60)) ** 1.8;
    const exitTemperature = hot + flow.heat / (airSpecificHeat * flow.airflow);
    const exit = flow.airflow ** 2 / (2 * density * (hot / exitTemperature) * (0.9 * 52 * 0.0254 ** 2) ** 2);
    expect((core + exit) / available).toBeCloseTo(1, 4);
  });

  test('temperature: by the usual correlation of NTU^0.22, which errs by up to 1 %', () => {
    const { flow, temperature } = climbed().result;
    const air = flow.airflow * airSpecificHeat;
    const coolant = ((227 * 0.45359237) / 60) * 3500;
    const ratio = air / coolant;
    const relative = flow.airflow / ((160 * 0.45359237) / 60);
    const designConductance = (1.25 * (160 * 0.45359237) * airSpecificHeat) / 60;
    const conductance = designConductance / (0.8 / relative ** 0.8 + 0.2);
    const ntu = conductance / air;
    const effectiveness = 1 - Math.exp((ntu ** 0.22 / ratio) * (Math.exp(-ratio * ntu ** 0.78) - 1));
    const byHand = hot + flow.heat / (effectiveness * air);
    expect(Math.abs(temperature! - byHand)).toBeLessThan(0.01 * (byHand - hot));
  });
});

describe('planted faults', () => {
  test('Larch overheats at best-rate speed on the hot day, and holds at 100 kt', () => {
    const coolant = coolingOf(godwit, 'Larch').streamOf('coolant');
    expect(marginAt(coolant, 'continuous', 'best rate')).toBeLessThan(-1);
    expect(marginAt(coolant, 'continuous', 'cooling climb')).toBeGreaterThan(1);
    const [finding, ...others] = findingsAbout(godwit, 'Larch', 'cooling, coolant');
    expect(others).toEqual([]);
    expect(finding).toMatchObject({ gravity: 'check', shown: 'engineTemperature' });
    expect(finding!.value!).toBeGreaterThan(finding!.limit!);
    expect(finding!.limit).toBeCloseTo((248 + 459.67) / 1.8, 9);
    expect(finding!.text).toMatch(
      /°F over on the hot day at MCP, best rate speed .* it holds up to .* at the field/,
    );
  });

  test('everything else holds at both speeds and ratings', () => {
    for (const [grids, names] of [
      [godwit, ['Rowan', 'Hazel', 'Alder']],
      [sanderling, ['Sorrel', 'Thistle', 'Clover']],
    ] as const)
      for (const name of names)
        for (const { hotDay } of coolingOf(grids, name).cooling.streams)
          for (const { result } of hotDay) expect(result.margin).toBeGreaterThan(0);
  });

  test('too hot at the recommended speed is a stop', () => {
    const small = withCells(godwit, 'cooling', ['Larch', 'coolant'], { 'exit area': 40 });
    expect(findingsAbout(small, 'Larch', 'cooling, coolant')[0]).toMatchObject({ gravity: 'stop' });
  });

  test('too hot on takeoff power only is said to be judged as steady', () => {
    const wider = withCells(godwit, 'cooling', ['Larch', 'coolant'], { 'exit area': 58 });
    const [finding] = findingsAbout(wider, 'Larch', 'cooling, coolant');
    expect(finding?.gravity).toBe('note');
    expect(finding?.text).toContain('were it held long enough to be steady');
  });
});

describe('the climbs', () => {
  const larch = () => coolingOf(godwit, 'Larch');

  test('hot day from sea level on, 100 °F less 3.6 °F per 1,000 ft', () => {
    const { streamOf, flight, engine } = larch();
    const { hotDay } = streamOf('coolant');
    const heights = hotDay.map(({ climb }) => climb.air.pressureAltitude);
    expect(Math.min(...heights)).toBe(0);
    expect(Math.max(...heights)).toBeLessThanOrEqual(flight.ceiling.pressureAltitude);
    for (const { climb } of hotDay)
      expect(climb.air.temperature).toBeCloseTo(hotDayTemperature(climb.air.pressureAltitude), 9);
    expect(heights).toContain(engine.criticalAltitude);
    expect(heights).toContain(flight.field.air.pressureAltitude);
  });

  test('takeoff power only as high as five minutes of it reach', () => {
    const { streamOf, flight } = larch();
    const top = Math.max(
      ...streamOf('coolant')
        .hotDay.filter(({ climb }) => climb.rating === 'takeoff')
        .map(({ climb }) => climb.air.pressureAltitude),
    );
    const reach = flight.field.air.pressureAltitude + 300 * flight.atField.bestRate.takeoff.rateOfClimb;
    expect(top).toBeCloseTo(reach, 6); // where takeoff power ends is looked at too
  });

  test('takeoff power without a limit, at a field from which it does not climb: judged up to there at most', () => {
    const changes = [
      ['packages', 'takeoff power limit', '', 'min', 'Alder'],
      ['airframe', 'maximum takeoff weight', 3600, 'lb', 'value'],
      ['mission', 'field elevation', 12_000, 'ft', 'value'],
      ['mission', 'field temperature', 38, '°C', 'value'],
    ] as const;
    const weak = changes.reduce<TableGrids>(
      (grids, [table, name, value, unit, column]) => withAttribute(grids, table, name, value, unit, column),
      godwit,
    );
    const { flight, streamOf } = coolingOf(weak, 'Alder');
    expect(flight.atField.bestRate.takeoff.rateOfClimb).toBeLessThan(0);
    const heights = streamOf('coolant')
      .hotDay.filter(({ climb }) => climb.rating === 'takeoff')
      .map(({ climb }) => climb.air.pressureAltitude);
    expect(Math.min(...heights)).toBe(0);
    expect(Math.max(...heights)).toBeLessThanOrEqual(12_000 * foot);
  });

  test('the stated speed is flown until the best-rate speed is faster', () => {
    const { hotDay } = larch().streamOf('coolant');
    for (const { climb } of hotDay.filter(({ climb: { speed } }) => speed === 'cooling climb'))
      expect(climb.trueAirspeed).toBeGreaterThanOrEqual(toSi('speed', 100, 'kt') - 1e-9);
  });

  test('the mission’s day: 25 °C above standard from 3,000 to 8,000 ft', () => {
    const { streamOf, flight } = larch();
    const { mission } = streamOf('coolant');
    const heights = [...new Set(mission.map(({ climb }) => Math.round(climb.air.pressureAltitude / foot)))];
    // Takeoff power lasts 5 min, to 6,487 ft at the field's rate; Larch's charge air is known at 6,000 ft
    const { bestRate } = flight.atField;
    const reach = Math.round((flight.field.air.pressureAltitude + 300 * bestRate.takeoff.rateOfClimb) / foot);
    expect(heights).toEqual([3000, 5500, 6000, reach, 8000]);
    for (const { climb } of mission)
      expect(climb.air.temperature - (288.15 - 0.0065 * climb.air.pressureAltitude)).toBeCloseTo(25, 2);
  });

  test('an engine without a limit on its takeoff power has one rating', () => {
    const { hotDay: own } = coolingOf(godwit, 'Rowan').streamOf('oil');
    expect(own.every(({ climb }) => climb.rating === 'continuous')).toBe(true);
  });

  test('charge air is not judged above the height at which its heat is known', () => {
    const { streamOf } = larch();
    const top = (climbs: readonly StreamInClimb[]) =>
      Math.max(...climbs.map(({ climb }) => climb.air.pressureAltitude));
    const [charge, coolant] = [streamOf('charge air'), streamOf('coolant')];
    expect(top(charge.hotDay)).toBeCloseTo(6000 * foot, 6);
    expect(top(charge.mission)).toBeLessThanOrEqual(6000 * foot);
    expect(top(coolant.mission)).toBeCloseTo(8000 * foot, 6); // the cruise altitude asked for
    expect(findingsAbout(godwit, 'Larch', 'cooling, charge air')[0]).toMatchObject({ gravity: 'check' });
    const high = withCells(godwit, 'cooling', ['Larch', 'charge air'], {
      'known altitude': 16_000,
      'known OAT': -10,
    });
    expect(findingsAbout(high, 'Larch', 'cooling, charge air')).toEqual([]);
  });
});

describe('what is needed', () => {
  test.each(['Rowan', 'Larch', 'Hazel', 'Alder'])(
    '%s: at the highest OAT and with the exit needed nothing is left',
    (name) => {
      const { cooling, flight, engine } = coolingOf(godwit, name);
      for (const each of cooling.streams) {
        const worst = governing(cooling, flight, each)!;
        const highest = highestOat(engine, flight, each.stream, worst);
        if (highest.found === 'yes') {
          const { margin } = onAnotherDay(engine, flight, each.stream, worst, highest.temperature);
          expect(margin).toBeCloseTo(0, 2);
        }
        const exitArea = requiredExitArea(each.stream, worst.climb.condition)!;
        expect(coolingResult({ ...each.stream, exitArea }, worst.climb.condition).margin).toBeCloseTo(0, 2);
      }
    },
  );
});

describe('what moves the temperature moves it the right way', () => {
  const margin = (cells: Record<string, number>, stream = 'coolant') => {
    const { streamOf } = coolingOf(withCells(godwit, 'cooling', ['Larch', stream], cells), 'Larch');
    return marginAt(streamOf(stream), 'continuous', 'cooling climb');
  };
  const some = { numRuns: 8 };

  test('more exit, more recovery, more coolant, a larger core: cooler', () => {
    fc.assert(
      fc.property(
        between(40, 70),
        between(0.6, 0.9),
        between(150, 300),
        between(0.9, 1.8),
        (exit, recovery, flow, ntu) => {
          const cells = {
            'exit area': exit,
            'inlet recovery': recovery,
            'coolant flow': flow,
            'core NTU': ntu,
          };
          const here = margin(cells);
          expect(margin({ ...cells, 'exit area': exit * 1.1 })).toBeGreaterThan(here);
          expect(margin({ ...cells, 'inlet recovery': recovery * 1.05 })).toBeGreaterThan(here);
          expect(margin({ ...cells, 'coolant flow': flow * 1.1 })).toBeGreaterThan(here);
          expect(margin({ ...cells, 'core NTU': ntu * 1.1 })).toBeGreaterThan(here);
          expect(margin({ ...cells, 'heat fraction': 60 })).toBeLessThan(here);
        },
      ),
      some,
    );
  });

  test('a hotter field and a slower climb: hotter', () => {
    const mission = (temperature: number, speed: number) => {
      const hotter = withAttribute(godwit, 'mission', 'field temperature', temperature, '°C');
      const { streamOf } = coolingOf(
        withAttribute(hotter, 'packages', 'cooling-climb speed', speed, 'kt', 'Larch'),
        'Larch',
      );
      return worstOf(streamOf('coolant').mission, 'continuous', 'cooling climb')!.result.margin!;
    };
    fc.assert(
      fc.property(between(15, 40), between(100, 115), (temperature, speed) => {
        const here = mission(temperature, speed);
        expect(mission(temperature + 3, speed)).toBeLessThan(here);
        expect(mission(temperature, speed + 3)).toBeGreaterThan(here);
      }),
      some,
    );
  });

  test('the unit of an input changes nothing', () => {
    const celsius = (fahrenheit: number) => (fahrenheit - 32) / 1.8;
    const [header, units, ...rows] = godwit.cooling!;
    const other: Record<string, [string, (value: number) => number]> = {
      limit: ['°C', celsius],
      'known temperature': ['K', (value) => celsius(value) + 273.15],
      'exit area': ['cm²', (value) => value * 6.4516],
      'core pressure drop': ['Pa', (value) => value * 249.08891],
      'known power': ['kW', (value) => value * 0.74569987158227],
      'known altitude': ['m', (value) => value * foot],
      'coolant flow': ['kg/s', (value) => (value * 0.45359237) / 60],
    };
    const converted = [
      header!,
      units!.map((unit, at) => other[String(header![at])]?.[0] ?? unit),
      ...rows.map((row) =>
        row.map((cell, at) =>
          typeof cell === 'number' ? (other[String(header![at])]?.[1](cell) ?? cell) : cell,
        ),
      ),
    ];
    const margins = (grids: TableGrids) =>
      ['Rowan', 'Larch', 'Alder'].flatMap((name) =>
        coolingOf(grids, name).cooling.streams.flatMap(({ hotDay }) =>
          hotDay.map(({ result }) => result.margin!),
        ),
      );
    const there = margins({ ...godwit, cooling: converted });
    margins(godwit).forEach((value, index) => {
      expect(Math.abs(there[index]! - value)).toBeLessThan(1e-6);
    });
  });
});

describe('cooling drag and speed agree', () => {
  test.each(['Rowan', 'Larch', 'Hazel', 'Alder'])('%s', (name) => {
    const { flight, engine } = coolingOf(godwit, name);
    const air = airAt(8000 * foot);
    const level = levelFlight(flight.aircraft, 139 / 185, air, 2400 * 0.45359237);
    if (!level.possible) throw new Error('does not fly');
    const area = coolingDragArea(
      flight.streams,
      flight.aircraft,
      engine,
      air,
      level.trueAirspeed,
      level.shaftPower,
    );
    expect(Math.abs(area - flight.coolingDragArea)).toBeLessThan(2e-7); // m²
    // Between nothing and a tenth of the whole drag, as textbooks have it for engines that are not badly cooled
    const whole = flight.aircraft.dragPolar.zeroLiftDragCoefficient * flight.aircraft.wingArea;
    expect(area / whole).toBeGreaterThan(0.02);
    expect(area / whole).toBeLessThan(0.2);
  });
});

describe('what is not known', () => {
  const emptied = (...names: string[]) => Object.fromEntries(names.map((name) => [name, '']));

  test.each([
    ['limit', 'its limit'],
    ['exit area', 'its exit area'],
    [
      'core NTU',
      'one known point (power, airspeed, altitude, OAT, temperature), or pressure drop, airflow and NTU',
    ],
  ])('no %s', (column, words) => {
    const grids = withCells(godwit, 'cooling', ['Larch', 'coolant'], emptied(column));
    const { cooling, flight } = coolingOf(grids, 'Larch');
    expect(cooling.streams.map(({ data }) => data.row.stream)).toEqual(['oil', 'charge air']);
    expect(flight.streams).toHaveLength(3);
    expect(findingsAbout(grids, 'Larch', 'cooling, coolant')).toMatchObject([
      { gravity: 'check', text: `not known: the table does not give ${words}` },
    ]);
  });

  test('a reading no radiator could give is refused by the name of its stream', () => {
    const grids = withCells(godwit, 'cooling', ['Alder', 'coolant'], { 'known temperature': 75 });
    const [finding] = findingsAbout(grids, 'Alder', 'cooling, coolant');
    expect(finding).toMatchObject({ gravity: 'check' });
    expect(finding?.text).toMatch(/^not known: the values do not go together: temperature above the air/);
  });

  test('a share of fuel energy needs fuel points', () => {
    const grids = withCells(godwit, 'cooling', ['Larch', 'coolant'], {
      'heat of': 'fuel energy',
      'heat fraction': 18,
    });
    expect(coolingOf(grids, 'Larch').streamOf('coolant').hotDay.length).toBeGreaterThan(0);
    const without = { ...grids, 'fuel points': grids['fuel points']!.filter(([name]) => name !== 'Larch') };
    expect(findingsAbout(without, 'Larch', 'cooling, coolant')[0]?.text).toContain(
      'fuel points of Larch must be given',
    );
  });

  test('defaults are said as assumptions', () => {
    const grids = withCells(
      godwit,
      'cooling',
      ['Rowan', 'oil'],
      emptied('heat fraction', 'inlet recovery', 'coolant flow'),
    );
    const [finding] = findingsAbout(grids, 'Rowan', 'cooling');
    expect(finding).toMatchObject({ gravity: 'note' });
    expect(finding?.text).toBe(
      'assumed for oil: heat fraction 10 % of shaft power, inlet recovery 0.8, half of the pressure available lost in the core, a flow inside that cools by 20 °C',
    );
  });

  test('no cooling rows at all: a finding, and the flight stands without cooling drag', () => {
    const grids = { ...godwit, cooling: godwit.cooling!.filter(([name]) => name !== 'Hazel') };
    const { flight, cooling } = cooledPackages(grids).of('Hazel');
    expect(cooling).toBeUndefined();
    expect(flight?.coolingDragArea).toBe(0);
    expect(findingsAbout(grids, 'Hazel', 'cooling')[0]?.text).toBe('not known: no cooling streams are given');
  });

  test('no cooling-climb speed: judged at best-rate speed, and said', () => {
    const grids = withAttribute(godwit, 'packages', 'cooling-climb speed', '', 'kt', 'Larch');
    const { cooling } = coolingOf(grids, 'Larch');
    expect(cooling.recommended).toBe('best rate');
    expect(findingsAbout(grids, 'Larch', 'cooling, coolant')[0]).toMatchObject({ gravity: 'stop' });
    expect(findingsAbout(grids, 'Larch', 'cooling-climb speed')[0]).toMatchObject({ gravity: 'note' });
  });

  test('an inlet smaller than its air at flying speed is a check', () => {
    const grids = withCells(godwit, 'cooling', ['Alder', 'coolant'], { 'inlet area': 40 });
    expect(findingsAbout(grids, 'Alder', 'cooling, coolant, inlet')[0]).toMatchObject({
      gravity: 'check',
      shown: 'opening',
    });
    expect(findingsAbout(godwit, 'Alder', 'cooling, coolant, inlet')).toEqual([]);
  });
});

describe('where the best-rate speed becomes the stated one a climb is often hottest', () => {
  test('Larch on the mission’s day to 13,000 ft: no height between the ones looked at is hotter', () => {
    const high = withAttribute(godwit, 'mission', 'cruise altitude', 13_000, 'ft');
    const { flight, engine, streamOf } = coolingOf(high, 'Larch');
    const { stream, mission } = streamOf('coolant');
    const looked = worstOf(mission, 'continuous', 'cooling climb')!;
    const air = (feet: number) => airAt(feet * foot, flight.field.temperatureDeviation);
    const margins = Array.from({ length: 101 }, (_, step) => {
      const there = air(3000 + 100 * step);
      const best = bestRateOfClimb(flight.aircraft, 'continuous', there, flight.mass).trueAirspeed;
      const speed = Math.max(best, toSi('speed', 100, 'kt'));
      return coolingResult(stream, conditionIn(engine, flight, 'continuous', there, speed)).margin!;
    });
    expect(looked.result.margin).toBeLessThan(Math.min(...margins) + 0.001);
    // 0.8 K less than at the top, where 103 kt are the best rate's
    expect(margins.at(-1)! - looked.result.margin!).toBeGreaterThan(0.5);
    expect(looked.climb.trueAirspeed).toBeCloseTo(toSi('speed', 100, 'kt'), 3);
  });
});
