import { describe, expect, test } from 'vitest';
import { type Assessment, assess, basisOf } from '../../src/assessment/assess.ts';
import { packageNamed } from '../../src/assessment/context.ts';
import { flightCards } from '../../src/assessment/flightCards.ts';
import { groundCards } from '../../src/assessment/groundCards.ts';
import { stallCards } from '../../src/assessment/stallCards.ts';
import { bandOf, type TestCard } from '../../src/assessment/testCard.ts';
import { testLoading } from '../../src/assessment/testLoading.ts';
import type { Catalogue, TableGrids } from '../../src/tables/catalogue.ts';
import { toSi } from '../../src/units.ts';
import { sample } from '../sample.ts';
import { asBuiltGrids } from './asBuilt.ts';
import { catalogueOf, withAttribute, withCells } from './flightFixture.ts';

const pound = 0.45359237;
const inch = 0.0254;

function assessed(grids: TableGrids, name: string) {
  const basis = basisOf(catalogueOf(grids));
  return { context: basis.context, assessment: assess(basis, packageNamed(basis.context.catalogue, name)) };
}
const cardsOf = ({ context, assessment }: ReturnType<typeof assessed>): TestCard[] => [
  ...groundCards(assessment),
  ...flightCards(context, assessment),
  ...stallCards(context, assessment),
];
const figure = (card: TestCard | undefined, label: RegExp) =>
  card?.figures.find((each) => label.test(each.label));

const godwit = () => assessed(asBuiltGrids(), 'Rowan');
const card = (name: TestCard['name']) => cardsOf(godwit()).find((each) => each.name === name);

describe('the loadings that reach the CG limits', () => {
  /** Limits between the points of the envelope, worked here. */
  function limits(points: Catalogue['envelope'], weight: number): { forward: number; aft: number } {
    const above = points.find((point) => point.weight >= weight - 1e-9) ?? points[points.length - 1]!;
    const below = points[points.indexOf(above) - 1] ?? above;
    const share = above === below ? 0 : (weight - below.weight) / (above.weight - below.weight);
    return {
      forward: below.forward + share * (above.forward - below.forward),
      aft: below.aft + share * (above.aft - below.aft),
    };
  }

  const aircraft = [
    ['godwit-as-built', 'Rowan'],
    ['godwit', 'Rowan'],
    ['godwit', 'Larch'],
    ['sanderling', 'Sorrel'],
    ['sanderling', 'Clover'],
  ] as const;

  describe.each(aircraft)('%s with %s', (folder, name) => {
    test.each(['forward', 'aft'] as const)(
      '%s: on the limit from takeoff to empty tanks, never beyond',
      (side) => {
        const { context, assessment } = assessed(sample(folder), name);
        const { stations, envelope } = context.catalogue;
        const found = testLoading(context, assessment, side);
        if (found === undefined) throw new Error('no loading');
        const { loads, ballast } = found;
        const { nominal } = assessment.empty.mass;
        const arms = [...stations, ...assessment.configuration.tanks].map(({ arm }) => arm);
        const state = (fuel: number) => {
          const aboard = loads.map((load, index) => (index < stations.length ? load : load * fuel));
          const extra = ballast ?? { weight: 0, arm: 0 };
          const weight = aboard.reduce((sum, load) => sum + load, nominal.weight + extra.weight);
          const moment = aboard.reduce(
            (sum, load, index) => sum + load * (arms[index] as number),
            nominal.moment + extra.weight * extra.arm,
          );
          const limit = limits(envelope, weight);
          const cg = moment / weight;
          return { weight, cg, margin: side === 'forward' ? cg - limit.forward : limit.aft - cg };
        };
        const takeoff = state(1);
        expect(takeoff.weight).toBeCloseTo(found.weight, 6);
        expect(takeoff.cg).toBeCloseTo(found.cg, 9);
        expect(takeoff.weight).toBeLessThanOrEqual(
          context.catalogue.airframe.maximumTakeoffWeight * (1 + 1e-9),
        );
        const margins = Array.from({ length: 101 }, (_, step) => state(1 - step / 100).margin);
        expect(Math.min(...margins)).toBeCloseTo(found.leastMargin, 5);
        if (found.leastMargin >= 0) {
          expect(Math.min(...margins)).toBeGreaterThanOrEqual(-1e-9);
          if (found.leastMargin < 1e-3) expect(Math.min(...margins)).toBeLessThan(2e-4);
        }
        stations.forEach(({ maximum, persons }, index) => {
          expect(loads[index]).toBeLessThanOrEqual(maximum * (1 + 1e-9));
          expect(loads[index]).toBeGreaterThanOrEqual(0);
          if (persons === 0) expect(loads[index]).toBeLessThanOrEqual(maximum);
        });
        const pilot = stations.findIndex(({ persons }) => persons > 0);
        expect(loads[pilot]).toBeCloseTo(stations[pilot]?.usual ?? toSi('mass', 170, 'lb'), 6);
        const fuel = loads.slice(stations.length).reduce((sum, load) => sum + load, 0);
        expect(fuel).toBeGreaterThan(0);
      },
    );
  });

  test('ballast only where the seats do not reach: Rowan’s forward limit, at the firewall', () => {
    const { context, assessment } = godwit();
    const forward = testLoading(context, assessment, 'forward');
    expect((forward?.ballast?.arm ?? 0) / inch).toBeCloseTo(60, 9);
    expect(testLoading(context, assessment, 'aft')?.ballast).toBeUndefined();
  });

  test('an aircraft that is beyond the limit with the pilot alone is said not to be flown', () => {
    const grids = withAttribute(asBuiltGrids(), 'airframe', 'empty CG', 150, 'in');
    const heavyTail = assessed(grids, 'Rowan');
    const aft = testLoading(heavyTail.context, heavyTail.assessment, 'aft');
    expect(aft?.leastMargin).toBeLessThan(0);
    const [, stall] = stallCards(heavyTail.context, heavyTail.assessment);
    expect(stall?.setUp).toContain('do not fly it');
  });

  test('a limit that cannot be reached is said', () => {
    const wide = withCells(
      withCells(asBuiltGrids(), 'envelope', [2520], { 'forward limit': 20 }),
      'envelope',
      [2000],
      { 'forward limit': 20 },
    );
    const [forward] = stallCards(...(Object.values(assessed(wide, 'Rowan')) as [never, never]));
    expect(forward?.setUp).toContain('the limit is not reached within the weights');
  });
});

describe('figures by hand', () => {
  test('fuel: 185 hp at 0.50 lb/hp·h and 6 lb/gal are 15.42 gal/h; 125 % of it to demonstrate; 24 rated', () => {
    const fuel = card('fuel flow on the ground');
    const gallons = (value: number | undefined) => (value ?? 0) / toSi('fuelFlow', 1, 'US gal/h');
    expect(gallons(figure(fuel, /^takeoff/)?.predicted)).toBeCloseTo((185 * 0.5) / 6, 6);
    expect(gallons(figure(fuel, /demonstrated/)?.limit)).toBeCloseTo((1.25 * 185 * 0.5) / 6, 6);
    expect(gallons(figure(fuel, /demonstrated/)?.predicted)).toBeCloseTo(24, 9);
    expect(fuel?.reduce).toContain('125 %');
  });

  test('static rpm: rated with a governor, a share of it with a fixed pitch (85 % of 2,800)', () => {
    const rpm = (of: Assessment) => (groundCards(of)[1]?.figures[0]?.predicted ?? 0) * 60;
    expect(rpm(godwit().assessment)).toBeCloseTo(2700, 6);
    expect(rpm(assessed(sample('godwit'), 'Hazel').assessment)).toBeCloseTo(0.85 * 2800, 6);
  });

  test('stall at maximum lift: √(2 W/(ρ₀ S C_L)) at the weight of the card', () => {
    const aft = card('stall, aft CG');
    const weight = figure(aft, /takeoff weight/)?.predicted ?? 0;
    const speed = figure(aft, /stall, landing/)?.predicted ?? 0;
    const byHand = Math.sqrt((2 * weight * 9.80665) / (1.225 * 150 * 0.3048 ** 2 * 1.95));
    expect(speed).toBeCloseTo(byHand, 3);
  });

  test('first flight: pilot of 180 lb and 42 gal on the empty weight', () => {
    const weight = (figure(card('first flights'), /takeoff weight/)?.predicted ?? 0) / pound;
    const empty = godwit().assessment.empty.mass.nominal.weight / pound;
    expect(weight).toBeCloseTo(empty + 180 + 42 * 6, 6);
  });

  test('VNO of 150 kt calibrated is 169 kt true at 8,000 ft (σ 0.786: 150/0.8866 = 169.2; compressibility −0.5)', () => {
    const kt = (figure(card('level flight'), /^VNO/)?.limit ?? 0) / toSi('speed', 1, 'kt');
    expect(Math.abs(kt - 168.9)).toBeLessThan(0.5);
  });
});

describe('every card', () => {
  const all = () => [
    ...cardsOf(godwit()),
    ...cardsOf(assessed(sample('godwit'), 'Hazel')),
    ...cardsOf(assessed(sample('sanderling'), 'Thistle')),
  ];

  test('says how it is set up, recorded, reduced, and what to beware of', () => {
    for (const { setUp, record, reduce, caution } of all())
      for (const words of [setUp, record, reduce, caution]) expect(words.length).toBeGreaterThan(10);
  });

  test('predicts inside its own band', () => {
    const banded = all()
      .flatMap(({ figures }) => figures)
      .filter(({ band, predicted }) => band && predicted !== undefined);
    expect(banded.length).toBeGreaterThan(40);
    for (const { predicted = 0, band } of banded) {
      const { low, high } = bandOf(predicted, band!);
      expect(low).toBeLessThan(predicted);
      expect(high).toBeGreaterThan(predicted);
    }
  });

  test('no speed is given for a climb that there is none of, whatever an absurd weight would take', () => {
    const heavy = withCells(sample('godwit'), 'components', ['Hazel', 'engine, dry'], { weight: 4e6 });
    const { context, assessment } = assessed(heavy, 'Hazel');
    const [first] = flightCards(context, assessment);
    expect(figure(first, /rate of climb there/)?.predicted).toBeLessThan(0);
    expect(figure(first, /^ {2}at, calibrated/)?.predicted).toBeUndefined();
  });

  test('without a known level flight no speed or climb is claimed', () => {
    const unknown = assessed({ ...asBuiltGrids(), 'known points': [] }, 'Rowan');
    const names = cardsOf(unknown).map(({ name }) => name);
    expect(names).not.toContain('climb');
    expect(names).toContain('stall, aft CG');
    expect(names).toContain('fuel flow on the ground');
  });
});
