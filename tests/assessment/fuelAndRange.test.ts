/** FUEL_TABLE and PAYLOAD_RANGE: figures by hand, form for a chart. */
import { describe, expect, test } from 'vitest';
import { compare } from '../../src/assessment/assess.ts';
import { fuelTableBlock } from '../../src/assessment/fuelTableBlock.ts';
import { payloadRangeBlock } from '../../src/assessment/payloadRangeBlock.ts';
import type { Cell } from '../../src/tables/cell.ts';
import { assessed, godwit, sampleCatalogue, show, si, withMission } from './sampleCatalogue.ts';

describe('fuel table', () => {
  const block = () => {
    const comparison = compare(godwit);
    return fuelTableBlock(comparison, comparison.assessments);
  };
  /** The part below the heading that begins so, without the heading. */
  const part = (beginning: string, of = block()) => {
    const start = of.findIndex(([cell]) => String(cell).startsWith(beginning)) + 1;
    const end = of.findIndex((row, index) => index > start && row.length === 1);
    return of.slice(start, end < 0 ? undefined : end);
  };
  const at = (percent: number, name: string, beginning = 'Fuel flow') => {
    const [header = [], ...rows] = part(beginning);
    return rows.find((row) => row[0] === percent)?.[header.indexOf(name)];
  };

  test('Rowan at 75 % lean: 138.75 hp × 0.43 lb/hp·h / 6 lb/gal = 9.94; 42 gal, half an hour kept: 3.7 h', () => {
    expect(at(75, 'Rowan lean')).toBe(9.9);
    expect(at(75, 'Rowan lean', 'Endurance')).toBe(3.7);
  });

  test('Hazel at 75 % rich as entered: 8.2 gal/h; Alder at 100 %: 165 × 0.365 / 6.7 = 8.99', () => {
    expect(at(75, 'Hazel rich')).toBe(8.2);
    expect(at(100, 'Alder lean')).toBe(9);
  });

  test('blank outside the fuel points, and where one mixture only repeats the other', () => {
    expect(at(80, 'Rowan lean')).toBeNull();
    expect(at(55, 'Rowan rich')).toBeNull();
    expect(at(75, 'Alder rich')).toBeNull();
  });

  test('every setting from 45 to 100 in steps of 5, in consecutive rows', () => {
    const settings = block()
      .slice(2, 14)
      .map(([percent]) => percent);
    expect(settings).toEqual([45, 50, 55, 60, 65, 70, 75, 80, 85, 90, 95, 100]);
  });

  test('power left at 8,000 ft: density ratio 0.7860, less 0.2140 / 7.55, of 185 hp (Gagg and Farrar): 140; Larch all of it', () => {
    const power = part('Continuous power');
    const at8000 = (rows: readonly Cell[][]) => rows.find(([height]) => height === 8000);
    expect(power[0]?.slice(1)).toEqual(['Rowan', 'Larch', 'Hazel', 'Alder']);
    expect(at8000(power)?.slice(1, 3)).toEqual([140, 160]);
    expect(at8000(part('Share'))?.[1]).toBe(76);
  });

  test('each heading ends with its unit; a row a height, in steps of 2,000 ft or 600 m', () => {
    const titles = block().filter((line) => line.length === 1);
    expect(titles).toEqual([
      ['Fuel flow, US gal/h; blank outside the fuel points'],
      ['Endurance with full tanks and the reserve kept, h'],
      ['Continuous power at full throttle, standard day, hp'],
      ['Share of the maximum continuous power at full throttle, standard day, %'],
    ]);
    const heightsIn = (of: readonly Cell[][]) => part('Share', of as Cell[][]).map(([height]) => height);
    const steps = Array.from({ length: 13 }, (_, step) => step);
    expect(heightsIn(block())).toEqual(['pressure altitude, ft', ...steps.map((step) => 2000 * step)]);
    const metric = compare(sampleCatalogue('sanderling'));
    expect(heightsIn(fuelTableBlock(metric, metric.assessments))).toEqual([
      'pressure altitude, m',
      ...steps.map((step) => 600 * step),
    ]);
  });

  test('blank above the last power point', () => {
    // Larch's end at 25,000 ft, here at 16,000
    const low = compare({
      ...godwit,
      powerPoints: godwit.powerPoints.filter(({ altitude }) => altitude <= si('height', 16_000, 'ft') + 1),
    });
    for (const beginning of ['Continuous power', 'Share']) {
      const rows = part(beginning, fuelTableBlock(low, low.assessments)).slice(1);
      expect(rows.map((row) => row[2] === null)).toEqual(rows.map((row) => (row[0] as number) > 16_000));
    }
  });

  test('no fuel points: no figure', () => {
    const unknown = compare({ ...godwit, fuelPoints: [] });
    const blank = part('Fuel flow', fuelTableBlock(unknown, unknown.assessments)).slice(1);
    expect(blank).toHaveLength(12);
    for (const row of blank) expect(row.slice(1).every((cell) => cell === null)).toBe(true);
  });
});

describe('payload against range', () => {
  const block = () => {
    const comparison = compare(godwit);
    return payloadRangeBlock(comparison, comparison.assessments);
  };
  const packages = ['Rowan', 'Larch', 'Hazel', 'Alder'];

  test('one y a row, every package in consecutive rows, payload never rising with range', () => {
    const [header = [], ...rows] = block();
    expect(header.slice(3)).toEqual(packages);
    const points = rows.map((row) => row.slice(2));
    for (const [range, ...payloads] of points) {
      expect(typeof range).toBe('number');
      expect(payloads.filter((cell) => cell !== null)).toHaveLength(1);
    }
    packages.forEach((_, index) => {
      const own = points.filter((row) => row[index + 1] !== null);
      own.slice(1).forEach((row, at) => {
        expect(row[0] as number).toBeGreaterThanOrEqual(own[at]?.[0] as number);
        expect(row[index + 1] as number).toBeLessThanOrEqual(own[at]?.[index + 1] as number);
      });
    });
  });

  test('Rowan: seats and bays hold 1,000 lb; with full tanks 2,520 − 1.005 × 1,379 − 252 lb are left', () => {
    const { range } = assessed('Rowan');
    expect(show('mass', range?.mostPayload.payload, 'lb')).toBeCloseTo(1000, 6);
    expect(show('mass', range?.fullTanks?.payload, 'lb')).toBeCloseTo(2520 - 1.005 * 1379 - 252, 6);
    expect(show('mass', range?.pilotAlone.payload, 'lb')).toBeCloseTo(180, 6);
  });

  test('the corners are named', () => {
    const [, ...rows] = block();
    const own = rows.filter((row) => row[3] !== null).map(([point]) => point);
    expect(own.filter((name) => name !== null)).toEqual(['most payload', 'full tanks', 'pilot alone']);
  });

  test('heads; fuel aboard by volume: none, 42 gal, and as much alone; Rowan burns avgas of 6 lb/gal, Alder Jet A of 6.7', () => {
    const [header = [], ...rows] = block();
    expect(header.slice(0, 3)).toEqual(['point', 'fuel aboard, US gal', 'range, nmi (payload in lb)']);
    for (const [index, name] of packages.entries()) {
      const own = rows.filter((row) => row[3 + index] !== null);
      expect(own[0]?.slice(0, 3)).toEqual([null, 0, 0]);
      const tanks = assessed(name).payload.fuelVolume;
      const full = Math.round(show('volume', tanks, 'US gal') * 10) / 10;
      expect(
        own.filter(([point]) => point === 'full tanks' || point === 'pilot alone').map(([, fuel]) => fuel),
      ).toEqual([full, full]);
    }
  });

  test('where it does not get there, why, and no range', () => {
    const high = compare(withMission({ cruiseAltitude: si('height', 30_000, 'ft') }));
    const [, ...rows] = payloadRangeBlock(high, high.assessments.slice(0, 1));
    expect(rows.length).toBeGreaterThan(0);
    for (const row of rows.slice(1))
      expect([row[0], row[2]]).toEqual(['it does not climb to the cruise altitude', 0]);
  });

  test('more to keep in reserve is less range', () => {
    const longer = assessed('Rowan', withMission({ reserve: si('time', 60, 'min') })).range;
    expect(longer?.fullTanks?.range).toBeLessThan(assessed('Rowan').range?.fullTanks?.range ?? 0);
  });

  test('no known point, or no fuel points: none', () => {
    expect(assessed('Rowan', { ...godwit, knownPoints: [] }).range).toBeUndefined();
    expect(assessed('Rowan', { ...godwit, fuelPoints: [] }).range).toBeUndefined();
  });
});
