/** What it costs to have and to fly: Godwit by hand from its tables. */
import { describe, expect, test } from 'vitest';
import { breakEven } from '../../src/assessment/breakEven.ts';
import type { Cost } from '../../src/assessment/cost.ts';
import { assessed, godwit, si, withMission, withPackage } from './sampleCatalogue.ts';

describe('Rowan by hand', () => {
  const cost = () => assessed('Rowan').cost;

  test('ready to fly: kit, package and options; tax; the builder’s with tax; labour', () => {
    // 61,500 + 63,070 + 1,150 = 125,720; 7 % of it; 1.07 × (1,850 + 720 + 75); (1,450 + 120) h × 95
    expect(cost().readyToFly.value).toBeCloseTo(125_720 + 8_800.4 + 2_830.15 + 149_150, 4);
    expect(cost().readyToFly.complete).toBe(true);
  });

  test('an hour, by cause', () => {
    expect(cost().perHour.fuel).toBeCloseTo(((185 * 0.75 * 0.43) / 6) * 6.6, 6);
    expect(cost().perHour.engine).toBeCloseTo(27_500 / 2000, 9);
    expect(cost().perHour.propeller).toBeCloseTo(4200 / 2000, 9);
    expect(cost().perHour.gearbox).toBe(0);
    expect(cost().perHour.oxygen).toBe(0);
    expect(cost().perHour.insurance).toBeCloseTo(4200 / 120, 9);
    // 65.62875 + 10 + 13.75 + 2.1 + 14, then 35 + 30
    expect(cost().hourFlown.value).toBeCloseTo(105.47875, 6);
    expect(cost().hour.value).toBeCloseTo(170.47875, 6);
  });

  test('ten years of 120 hours', () => {
    expect(cost().lifetime.value).toBeCloseTo(286_500.55 + 1200 * 170.47875, 3);
  });

  test('what the builder must still buy', () => {
    expect(cost().scope.map(({ name, price }) => [name, price])).toEqual([
      ['oil, 8 US qt', 75],
      ['engine monitor with probes', 1850],
      ['control cables, hoses, fasteners', 720],
    ]);
  });
});

test('Alder: a system that only other packages list belongs to the scope, and its unpriced cowling to no total', () => {
  const { cost } = assessed('Alder');
  expect(cost.scope.at(-1)).toEqual({
    name: 'cabin heat: nothing listed, other packages have it',
    system: 'cabin heat',
    weight: undefined,
    price: undefined,
  });
  expect(cost.readyToFly.complete).toBe(false);
  expect(
    cost.findings.some(({ subject, gravity }) => subject === 'fuel at home' && gravity === 'check'),
  ).toBe(true);
});

test('an optional tank is paid for; without a price it is said to be missing from the total', () => {
  const withTanks = (price: number | undefined) =>
    assessed('Rowan', {
      ...godwit,
      tanks: godwit.tanks.map((tank) =>
        tank.name === 'long-range tanks' ? { ...tank, fitted: true, price } : tank,
      ),
    }).price;
  expect(withTanks(2850).options).toBe(1150 + 2850);
  expect(withTanks(2850).total).toBe(125_720 + 2850);
  expect(withTanks(2850).complete).toBe(true);
  const unpriced = withTanks(undefined);
  expect(unpriced.total).toBe(125_720);
  expect(unpriced.complete).toBe(false);
  expect(unpriced.findings.map(({ text, source }) => `${source}: ${text}`)).toContain(
    'tanks table: no price for long-range tanks: the total is too low',
  );
});

describe('what is not given is a finding and no 0', () => {
  const subjects = (cost: Cost) => cost.findings.map(({ subject, text }) => `${subject}: ${text}`).join('\n');

  test('fuel without a price', () => {
    const { cost } = assessed('Rowan', { ...godwit, rates: { ...godwit.rates, avgas: undefined } });
    expect(cost.perHour.fuel).toBeUndefined();
    expect(cost.hour.complete).toBe(false);
    expect(subjects(cost)).toMatch(/cost of an hour: .*without fuel in cruise/);
  });

  test('a fuel that the rates do not name', () => {
    const { cost } = assessed('Rowan', withPackage('Rowan', { fuel: 'ethanol' }));
    expect(cost.perHour.fuel).toBeUndefined();
    expect(subjects(cost)).toMatch(/fuel price: the rates know avgas, mogas and Jet A, not ethanol/);
  });

  test('build hours of the airframe', () => {
    const { cost } = assessed('Rowan', {
      ...godwit,
      airframe: { ...godwit.airframe, buildHours: undefined },
    });
    expect(cost.readyToFly.complete).toBe(false);
  });

  test('an interval without a price', () => {
    const { cost } = assessed('Larch', withPackage('Larch', { gearboxOverhaulPrice: undefined }));
    expect(cost.perHour.gearbox).toBeUndefined();
    expect(subjects(cost)).toMatch(/without gearbox overhaul/);
  });

  test('neither interval nor price: part of the engine’s, and said so', () => {
    const { cost } = assessed(
      'Larch',
      withPackage('Larch', { gearboxOverhaulPrice: undefined, gearboxOverhaulHours: undefined }),
    );
    expect(cost.perHour.gearbox).toBe(0);
    expect(subjects(cost)).toMatch(/overhaul: no overhaul of gearbox given/);
  });

  test('an engine overhaul is never 0', () => {
    const { cost } = assessed(
      'Rowan',
      withPackage('Rowan', { engineOverhaulHours: undefined, engineOverhaulPrice: undefined }),
    );
    expect(cost.perHour.engine).toBeUndefined();
  });

  test('cruise power outside the fuel points', () => {
    expect(assessed('Rowan', withMission({ cruiseSetting: 0.4 })).cost.perHour.fuel).toBeUndefined();
  });
});

describe('oxygen, 14 CFR 91.211(a)(1): above 12,500 ft for more than half an hour', () => {
  const at = (feet: number, name = 'Larch') =>
    assessed(name, withMission({ cruiseAltitude: si('height', feet, 'ft') })).cost;

  test('not at 12,500 ft, at 9 an hour above', () => {
    expect(at(12_500).perHour.oxygen).toBe(0);
    expect(at(12_600).perHour.oxygen).toBe(9);
  });

  test('none fitted is a finding', () => {
    expect(at(14_000).findings.some(({ subject }) => subject === 'oxygen')).toBe(true);
  });
});

describe('break-even', () => {
  const cost = (readyToFly: number, hourFlown: number, complete = true) =>
    ({
      readyToFly: { value: readyToFly, complete },
      hourFlown: { value: hourFlown, complete: true },
    }) as Cost;
  const baseline = cost(100_000, 100);

  test.each([
    [
      'dearer to buy, cheaper to fly: 5,000 over 20 an hour',
      cost(105_000, 80),
      { cheaper: 'after', time: 250 * 3600 },
    ],
    [
      'cheaper to buy, dearer to fly: up to 5,000 over 25',
      cost(95_000, 125),
      { cheaper: 'up to', time: 200 * 3600 },
    ],
    ['dearer in both', cost(105_000, 110), { cheaper: 'never' }],
    ['dearer to buy, the same to fly', cost(105_000, 100), { cheaper: 'never' }],
    ['cheaper in both', cost(95_000, 90), { cheaper: 'from the first hour' }],
    ['cheaper to buy, the same to fly', cost(95_000, 100), { cheaper: 'from the first hour' }],
    ['the same to buy, cheaper to fly', cost(100_000, 90), { cheaper: 'from the first hour' }],
    ['the same to buy, dearer to fly', cost(100_000, 110), { cheaper: 'never' }],
    ['a price missing', cost(95_000, 90, false), undefined],
  ])('%s', (_, own, expected) => {
    expect(breakEven(own, baseline)).toEqual(expected);
  });

  test('Larch against Rowan: 8,458.30 more to buy, 17.302 an hour less', () => {
    // Larch: 127,520 × 1.07 + 1.07 × 2,535 + 1,640 × 95 = 294,958.85;
    // 160 × 0.75 × 0.44 / 6 × 4.7 + 9 + 26,500/2,000 + 3,900/1,000 + 3,400/1,000 + 4,900/1,500 + 14 = 88.17667
    const found = breakEven(assessed('Larch').cost, assessed('Rowan').cost);
    const hours = (294_958.85 - 286_500.55) / (105.47875 - 88.1766667);
    expect(found).toEqual({ cheaper: 'after', time: expect.closeTo(hours * 3600, 0) });
  });
});
