/** What a row of the cooling table must give, what is taken in its place, and which climb of a stream counts. */
import { describe, expect, test } from 'vitest';
import { coolingOf, type StreamInClimb, worstOf } from '../../src/assessment/cooling.ts';
import type { TableGrids } from '../../src/tables/catalogue.ts';
import type { Cell } from '../../src/tables/cell.ts';
import { horsepower, toSi } from '../../src/units.ts';
import { sample } from '../sample.ts';
import { comparisonOf, cooledPackages, withCells } from './flightFixture.ts';

const godwit = sample('godwit');

const withStream = (name: string, stream: string, cells: Readonly<Record<string, Cell>>) =>
  withCells(godwit, 'cooling', [name, stream], cells);

const streamOf = (grids: TableGrids, name: string, kind: string) => {
  const found = cooledPackages(grids)
    .of(name)
    .cooling?.streams.find(({ data }) => data.row.stream === kind);
  if (found === undefined) throw new Error(`no ${kind}`);
  return found;
};

const said = (grids: TableGrids, name: string, subject: string) =>
  comparisonOf(grids)
    .findings.filter((each) => each.package === name && each.subject === subject)
    .map(({ gravity, text }) => `${gravity}: ${text}`);

const point = 'one known point (power, airspeed, altitude, OAT, temperature)';

describe('a stream that is not known', () => {
  test.each(['known power', 'known true airspeed', 'known altitude', 'known OAT', 'known temperature'])(
    'a known point without its %s is none',
    (column) => {
      expect(said(withStream('Alder', 'coolant', { [column]: '' }), 'Alder', 'cooling, coolant')).toEqual([
        `check: not known: the table does not give ${point}, or pressure drop, airflow and NTU`,
      ]);
    },
  );

  test.each(['core pressure drop', 'core airflow', 'core NTU'])(
    'design values without %s are none',
    (column) => {
      expect(said(withStream('Larch', 'coolant', { [column]: '' }), 'Larch', 'cooling, coolant')).toEqual([
        `check: not known: the table does not give ${point}, or pressure drop, airflow and NTU`,
      ]);
    },
  );

  test('fins have no design values of their own', () => {
    const grids = withStream('Rowan', 'fins', { 'known power': '', 'core NTU': 1 });
    expect(said(grids, 'Rowan', 'cooling, fins')).toEqual([
      `check: not known: the table does not give ${point}`,
    ]);
  });

  test('all that is missing at once', () => {
    const grids = withStream('Alder', 'coolant', { limit: '', 'exit area': '', 'known power': '' });
    expect(said(grids, 'Alder', 'cooling, coolant')).toEqual([
      `check: not known: the table does not give its limit and its exit area and ${point}, or pressure drop, airflow and NTU`,
    ]);
  });

  test('no flight: speed and thrust are missing, and no stream is judged', () => {
    const grids = { ...godwit, 'known points': [] };
    expect(said(grids, 'Larch', 'cooling')).toEqual([
      'check: not known: speed and thrust in the climb need the known flown point',
    ]);
  });

  test('nothing is said of streams that are known', () => {
    const { context, of } = cooledPackages(godwit);
    const { package: engine, flight } = of('Rowan');
    expect(coolingOf(context, engine, flight).findings).toEqual([]);
  });
});

describe('what is taken in place of a cell', () => {
  const capacityRate = (grids: TableGrids) => {
    const { exchanger } = streamOf(grids, 'Larch', 'coolant').stream;
    return exchanger.kind === 'radiator' ? exchanger.coolantCapacityRate : Number.NaN;
  };

  test('a flow inside that cools by 8 °C at the heat of maximum continuous power', () => {
    const grids = withStream('Larch', 'coolant', { 'coolant flow': '' });
    expect(capacityRate(grids)).toBeCloseTo((0.55 * 160 * horsepower) / 8, 6);
  });

  test('fuel energy is some 3.3 times the power at the shaft', () => {
    const grids = withStream('Larch', 'coolant', {
      'coolant flow': '',
      'heat of': 'fuel energy',
      'heat fraction': 18,
    });
    expect(capacityRate(grids)).toBeCloseTo((0.18 * 3.3 * 160 * horsepower) / 8, 6);
  });

  test('one design value alone is not used: the core is that of the known point', () => {
    const plain = streamOf(godwit, 'Alder', 'coolant').stream;
    for (const cells of [{ 'core pressure drop': 2 }, { 'core airflow': 100 }]) {
      const { stream, data } = streamOf(withStream('Alder', 'coolant', cells), 'Alder', 'coolant');
      expect(stream.core).toEqual(plain.core);
      expect(data.assumed).toContain('half of the pressure available lost in the core');
    }
  });
});

describe('the heat of a stream', () => {
  test('of fuel energy: the rich fuel flow at its power times the lower heating value', () => {
    const grids = withStream('Larch', 'coolant', { 'heat of': 'fuel energy', 'heat fraction': 18 });
    const { aircraft } = cooledPackages(grids).of('Larch').flight!;
    const { climb, result } = streamOf(grids, 'Larch', 'coolant').hotDay[0]!;
    const flow = aircraft.fuelFlow(climb.condition.shaftPower, 'rich');
    expect(result.flow.heat).toBeCloseTo(0.18 * flow * 43.2e6, 6); // MJ/kg of the packages table
  });

  test('of shaft power needs no fuel points', () => {
    const dry = { ...godwit, 'fuel points': godwit['fuel points']!.filter(([name]) => name !== 'Larch') };
    expect(streamOf(dry, 'Larch', 'coolant').hotDay.length).toBeGreaterThan(0);
  });
});

test('charge air is judged up to the height its heat is known at, and there, on either day', () => {
  const { hotDay, mission } = streamOf(godwit, 'Larch', 'charge air');
  for (const climbs of [hotDay, mission]) {
    const heights = climbs.map(({ climb }) => climb.air.pressureAltitude);
    expect(Math.max(...heights)).toBeCloseTo(toSi('height', 6000, 'ft'), 9);
  }
});

describe('the climb that leaves the least', () => {
  const climbs = () => streamOf(godwit, 'Larch', 'coolant').hotDay;
  const margins = (list: readonly StreamInClimb[]) => list.map(({ result }) => result.margin!);

  test('from a height on, that height among them', () => {
    const all = climbs();
    const best = all.filter(({ climb }) => climb.rating === 'continuous' && climb.speed === 'best rate');
    const [first, second, ...higher] = best;
    // It is hottest at sea level, and cooler at every height above up to the critical altitude
    expect(worstOf(all, 'continuous', 'best rate')).toBe(first);
    const from = second!.climb.air.pressureAltitude;
    const least = Math.min(...margins([second!, ...higher]));
    expect(worstOf(all, 'continuous', 'best rate', from)!.result.margin).toBe(least);
    expect(worstOf([first!, second!], 'continuous', 'best rate', from)).toBe(second);
    expect(worstOf([first!], 'continuous', 'best rate', from)).toBeUndefined();
  });

  test('one without airflow leaves nothing at all', () => {
    const [first, second] = climbs().filter(
      ({ climb }) => climb.rating === 'continuous' && climb.speed === 'best rate',
    );
    const still = { ...second!, result: { ...second!.result, margin: undefined } };
    expect(worstOf([first!, still], 'continuous', 'best rate')).toBe(still);
    expect(worstOf([still, first!], 'continuous', 'best rate')).toBe(still);
  });
});
