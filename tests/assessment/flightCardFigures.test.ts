/**
 * Figures of the flight cards on the plain aircraft, its engine at 1.5 m: 650 kg at 2.0385; 77.111 kg of pilot at 2.3, 108 kg
 * of fuel at 2.2. Speeds in m/s, worked by hand or taken from where the sheets show them.
 */
import { describe, expect, test } from 'vitest';
import type { TableGrids } from '../../src/tables/catalogue.ts';
import { asBuiltGrids } from './asBuilt.ts';
import { cooledPackages, withCells } from './flightFixture.ts';
import { airframe, cardOf, engine, figureOf, flightOf, mission, plain } from './plainCards.ts';

/** √(2 W/(ρ₀ S C_L)) of the plain wing */
const stall = (mass: number, lift: number) => Math.sqrt((2 * mass * 9.80665) / (1.225 * 15 * lift));

describe('first flights', () => {
  const mass = 650 + 170 * 0.45359237 + 108;
  const cg = (1325 + 170 * 0.45359237 * 2.3 + 108 * 2.2) / mass;

  test('weight, CG margin, stalls and approach', () => {
    const card = cardOf('first flights');
    expect(figureOf(card, 'takeoff weight')?.predicted).toBeCloseTo(mass, 6);
    expect(figureOf(card, 'takeoff weight')?.limit).toBeCloseTo(1000, 9);
    const margin = figureOf(card, `CG ${(cg / 0.0254).toFixed(1)} in: margin`);
    expect(margin).toMatchObject({ shown: 'arm', limit: 0, least: true });
    expect(margin?.predicted).toBeCloseTo(cg - 2, 6);
    expect(figureOf(card, 'stall, clean')?.predicted).toBeCloseTo(stall(mass, 1.5), 4);
    expect(figureOf(card, 'stall, landing')?.predicted).toBeCloseTo(stall(mass, 2), 4);
    expect(figureOf(card, 'approach, 1.3 times')?.predicted).toBeCloseTo(1.3 * stall(mass, 2), 4);
    expect(figureOf(card, 'VNO')).toMatchObject({ shown: 'speed', limit: 70 });
  });

  test('beyond the last point of the envelope no margin is known', () => {
    const short = withCells(plain, 'envelope', [1000], { weight: 830 });
    expect(figureOf(cardOf('first flights', short), 'CG ')?.predicted).toBeUndefined();
    const just = withCells(plain, 'envelope', [1000], { weight: 840 });
    expect(figureOf(cardOf('first flights', just), 'CG ')?.predicted).toBeDefined();
  });

  test('roll and climb there: lighter than at 1,000 kg, about as the square and the inverse of the weight', () => {
    const card = cardOf('first flights');
    const { takeoff, atField } = flightOf();
    const roll = takeoff.possible ? takeoff.groundRoll : 0;
    const share = mass / 1000;
    expect(Math.abs((figureOf(card, 'ground roll')?.predicted ?? 0) / roll / share ** 2 - 1)).toBeLessThan(
      0.08,
    );
    const climb = figureOf(card, 'rate of climb')?.predicted ?? 0;
    expect(climb).toBeGreaterThan(atField.bestRate.takeoff.rateOfClimb / share);
    expect(climb).toBeLessThan((1.2 * atField.bestRate.takeoff.rateOfClimb) / share);
    // at sea level and standard the calibrated speed is the true one; lighter, it is slower
    const speed = figureOf(card, '  at, calibrated')?.predicted ?? 0;
    expect(speed).toBeLessThan(atField.bestRate.takeoff.trueAirspeed);
    expect(speed).toBeGreaterThan(0.85 * atField.bestRate.takeoff.trueAirspeed);
  });

  test('no roll, climb or speed without a known flight', () => {
    const card = cardOf('first flights', { ...plain, 'known points': [] });
    for (const label of ['ground roll', 'rate of climb', '  at, calibrated'])
      expect(figureOf(card, label)?.predicted).toBeUndefined();
    expect(figureOf(card, 'approach')?.predicted).toBeCloseTo(1.3 * stall(mass, 2), 4);
  });
});

describe('airspeed calibration', () => {
  const slowest = 1.3 * stall(1000, 1.5); // 34.7
  const knots5 = (5 * 1852) / 3600;
  const runs = (grids: TableGrids) => cardOf('airspeed calibration', grids).figures;

  test('five runs from 1.3 times the stall, a fifth of the way to VNO each; the band 5 kt', () => {
    const figures = runs(plain);
    expect(figures.map(({ predicted }) => predicted)).toEqual(
      [0, 1, 2, 3, 4].map((step) => expect.closeTo(slowest + (step * (70 - slowest)) / 5, 4)),
    );
    expect(figures.map(({ label }) => label.slice(0, 6))).toEqual([
      'run 1:',
      'run 2:',
      'run 3:',
      'run 4:',
      'run 5:',
    ]);
    for (const { band, limit } of figures) {
      expect(band).toEqual({ amount: expect.closeTo(knots5, 9) });
      expect(limit).toBe(70);
    }
  });

  test('3 % where that is more: above 85.7 m/s', () => {
    const fast = airframe('VNO', 100, 'm/s', airframe('VNE', 120, 'm/s'));
    const last = slowest + (4 * (100 - slowest)) / 5;
    expect(runs(fast)[4]).toMatchObject({ band: { amount: expect.closeTo(0.03 * last, 5) } });
    expect(runs(fast)[3]).toMatchObject({ band: { amount: expect.closeTo(knots5, 9) } });
  });

  test('without a VNO, or with one below it, the slowest alone', () => {
    for (const grids of [airframe('VNO', '', 'm/s'), airframe('VNO', 34, 'm/s')]) {
      expect(runs(grids).map(({ predicted }) => predicted)).toEqual([expect.closeTo(slowest, 4)]);
    }
    expect(runs(airframe('VNO', '', 'm/s'))[0]?.limit).toBeUndefined();
  });
});

describe('level flight', () => {
  test('of each power the speed, with the power in words, and the fuel: 82.5 kW on 302.4 g/kWh at 0.72 kg/L', () => {
    const card = cardOf('level flight');
    const { levelAt } = flightOf();
    const speeds = [
      'true airspeed at 75 %, 111 hp',
      'true airspeed at 65 %, 96 hp',
      'true airspeed at 55 %, 81 hp',
    ];
    [75, 65, 55].forEach((percent, index) => {
      const level = levelAt(percent / 100, 8000 * 0.3048);
      const speed = figureOf(card, speeds[index] as string);
      expect(speed?.predicted).toBeCloseTo(level.possible ? level.trueAirspeed : 0, 9);
      expect(speed?.words).toBeUndefined();
      const flow = figureOf(card, `fuel flow at ${percent} %, lean`);
      expect((flow?.predicted ?? 0) * 3.6e6).toBeCloseTo((percent * 1.1 * 302.4) / 720, 6); // L/h
    });
  });

  test('at 12,000 ft full throttle gives less than 75 %, which is said; more than 55 %', () => {
    const card = cardOf('level flight', mission('cruise altitude', 12_000, 'ft'));
    expect(figureOf(card, 'true airspeed at 75 %')?.words).toMatch(/^full throttle/);
    expect(figureOf(card, 'true airspeed at 55 %')?.words).toBeUndefined();
  });

  test('where it does not fly level there is no speed and nothing is said of the throttle', () => {
    const card = cardOf('level flight', mission('cruise altitude', 25_000, 'ft'));
    expect(figureOf(card, 'true airspeed at 75 %')).toMatchObject({ predicted: undefined, words: undefined });
  });

  test('no consumption without fuel points', () => {
    const card = cardOf('level flight', { ...plain, 'fuel points': [] });
    expect(figureOf(card, 'fuel flow at 75 %')).toMatchObject({ shown: 'fuelFlow', predicted: undefined });
  });

  test('VNO and VNE as true airspeeds at 8,000 ft: 70 and, calibrated, 80 over 0.8866; true 80 as it is', () => {
    // US Standard Atmosphere 1976: σ 0.7860 at 8,000 ft; compressibility takes off less than 0.5 m/s
    const [vno, vne] = ['VNO there', 'VNE there'].map(
      (label) => figureOf(cardOf('level flight'), label)?.limit ?? 0,
    );
    expect(Math.abs((vno ?? 0) - 70 / Math.sqrt(0.786))).toBeLessThan(0.5);
    expect(vne).toBeCloseTo(80, 9);
    const calibrated = cardOf('level flight', airframe('VNE is', 'calibrated airspeed'));
    expect(Math.abs((figureOf(calibrated, 'VNE there')?.limit ?? 0) - 80 / Math.sqrt(0.786))).toBeLessThan(
      0.5,
    );
    expect(figureOf(cardOf('level flight', airframe('VNO', '', 'm/s')), 'VNO there')?.limit).toBeUndefined();
  });
});

describe('climb', () => {
  const hot = mission('field temperature', 30, '°C', mission('field elevation', 4500, 'ft'));
  const grids = engine('maximum continuous power', 95, 'kW', hot);

  test('at sea level and at the field, at takeoff power and at maximum continuous', () => {
    const { seaLevel, atField } = flightOf(grids);
    const card = cardOf('climb', grids);
    const predicted = (label: string) => figureOf(card, label)?.predicted;
    const field = '4,500 ft and 30 °C';
    for (const [where, words] of [
      [seaLevel, 'sea level, standard'],
      [atField, field],
    ] as const) {
      expect(predicted(`rate of climb at takeoff power, ${words}`)).toBe(where.bestRate.takeoff.rateOfClimb);
      expect(predicted(`rate of climb at MCP, ${words}`)).toBe(where.bestRate.continuous.rateOfClimb);
      expect(where.bestRate.takeoff.rateOfClimb).toBeGreaterThan(where.bestRate.continuous.rateOfClimb);
    }
    expect(card.figures).toHaveLength(7);
  });

  test('speeds calibrated: at sea level the true ones, at 4,500 ft and 30 °C those times √0.806', () => {
    const { seaLevel, atField } = flightOf(grids);
    const card = cardOf('climb', grids);
    const [low, high] = card.figures.filter(({ label }) => label.startsWith('  at best-rate'));
    expect(low?.predicted).toBeCloseTo(seaLevel.bestRate.takeoff.trueAirspeed, 6);
    // 15 °C − 8.9 °C are 279.2 K there; 0.8732 of the sea level's density at standard, 279.2/303.15 of that
    const byHand = atField.bestRate.takeoff.trueAirspeed * Math.sqrt((0.8732 * 279.2) / 303.15);
    expect(Math.abs((high?.predicted ?? 0) - byHand)).toBeLessThan(0.2);
    expect(figureOf(card, 'best-angle speed')?.predicted).toBeCloseTo(seaLevel.bestAngle.trueAirspeed, 6);
  });

  test('how long takeoff power may be used, where it is limited', () => {
    expect(cardOf('climb').caution).toBe('temperatures; look out under the nose');
    expect(cardOf('climb', engine('takeoff power limit', 5, 'min')).caution).toBe(
      'takeoff power no longer than 5 min, temperatures; look out under the nose',
    );
  });
});

test('takeoff roll: that of the sheets, whose field lies at sea level and is hard', () => {
  const { takeoff } = flightOf();
  const [roll, ...others] = cardOf('takeoff roll').figures;
  expect(others).toEqual([]);
  expect(roll).toMatchObject({ shown: 'runway', band: { share: 0.2 } });
  expect(roll?.predicted).toBeCloseTo(takeoff.possible ? takeoff.groundRoll : 0, 9);
});

test('fuel flow: 46.2 L/h at full power and three quarters of it; none without fuel points', () => {
  const litres = (grids = plain) =>
    cardOf('fuel flow', grids).figures.map(({ predicted }) => predicted && predicted * 3.6e6);
  const full = (110 * 302.4) / 720;
  expect(litres()).toEqual([1, 0.75, 0.75, 0.55].map((share) => expect.closeTo(share * full, 6)));
  expect(cardOf('fuel flow').figures.map(({ label }) => label)).toEqual([
    '100 % rich',
    '75 % rich',
    '75 % lean',
    '55 % lean',
  ]);
  expect(litres({ ...plain, 'fuel points': [] })).toEqual([undefined, undefined, undefined, undefined]);
});

describe('cooling climb', () => {
  test('of each stream the hottest on the hot day from the field up, at the speed for hot climbs', () => {
    const card = cardOf('cooling climb', asBuiltGrids(), 'Rowan');
    const { cooling } = cooledPackages(asBuiltGrids()).of('Rowan');
    const field = 3000 * 0.3048;
    const streams = cooling?.streams ?? [];
    expect(card.figures).toHaveLength(2);
    streams.forEach(({ data, hotDay }, index) => {
      const hottest = Math.max(
        ...hotDay
          .filter(
            ({ climb }) =>
              climb.rating === 'continuous' &&
              climb.speed === 'cooling climb' &&
              climb.air.pressureAltitude >= field - 1e-6,
          )
          .map(({ result }) => result.temperature ?? Number.NaN),
      );
      expect(card.figures[index]?.predicted).toBe(hottest);
      expect(card.figures[index]?.label).toMatch(new RegExp(`^${data.row.stream}, hot day, 3,000 ft, `));
    });
    const [fins, oil] = card.figures;
    expect([fins?.limit, oil?.limit]).toEqual([
      expect.closeTo(((435 - 32) * 5) / 9 + 273.15, 6),
      expect.closeTo(((245 - 32) * 5) / 9 + 273.15, 6),
    ]);
    expect(card.setUp).toMatch(/^maximum weight, MCP, cooling climb speed/);
  });

  test('without cooling streams there is a card without figures', () => {
    expect(cardOf('cooling climb')).toMatchObject({
      figures: [],
      setUp: expect.stringMatching(/^maximum weight, MCP, best rate speed/),
    });
    expect(cardOf('cooling on the ground').figures).toEqual([]);
  });
});
