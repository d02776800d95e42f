/** What is said of a mission's answer, and which of its conditions is named. */
import { describe, expect, test } from 'vitest';
import { compare } from '../../src/assessment/assess.ts';
import { type Mission, missionPrice } from '../../src/assessment/mission.ts';
import type { Catalogue } from '../../src/tables/catalogue.ts';
import { assessed, godwit, show, si, withMission, withPackage } from './sampleCatalogue.ts';

const said = (name: string, catalogue: Catalogue) =>
  compare(catalogue).findings.filter((each) => each.subject === 'mission' && each.package === name);
const answerOf = (name: string, catalogue: Catalogue): Mission => {
  const { mission } = assessed(name, catalogue);
  if (mission === undefined) throw new Error('no mission');
  return mission;
};
const weights = 'mission table; expected weight and what it may be off';
const withAirframe = (changes: Partial<Catalogue['airframe']>, catalogue = godwit): Catalogue => ({
  ...catalogue,
  airframe: { ...catalogue.airframe, ...changes },
});

describe('findings', () => {
  test('none for a package that goes with room to spare', () => {
    expect(said('Rowan', godwit)).toEqual([]);
  });

  test('a refusal names its scarcest condition', () => {
    const { scarcest } = answerOf('Larch', godwit);
    expect(said('Larch', godwit)).toEqual([
      {
        ...{ gravity: 'check', package: 'Larch', subject: 'mission', source: weights },
        text: `refused: cooling out: ${scarcest.text}`,
      },
    ]);
  });

  test('a refusal that stands only for what the weights may be off', () => {
    const most = show('mass', answerOf('Rowan', godwit).scarcest.margin, 'lb');
    const limited = withAirframe({ maximumTakeoffWeight: si('mass', 2520 - most - 3, 'lb') });
    const [finding, ...others] = said('Rowan', limited);
    expect(others).toEqual([]);
    expect(finding?.text).toMatch(
      /^refused: weight: start-up weight .*; it goes if it turns out no heavier than stated$/,
    );
  });

  test('not known: the first thing that is not', () => {
    expect(said('Rowan', { ...godwit, knownPoints: [] })).toMatchObject([
      { gravity: 'check', text: 'not known: cruise: speed or fuel consumption is not known' },
    ]);
  });

  test('a cruise outside the fuel points is said first, whatever the answer', () => {
    const text = 'its cruise is outside the fuel points: the nearest consumption is used';
    const low = { cruiseSetting: 0.4, persons: 1, bags: 0 };
    const held = { gravity: 'check', source: 'fuel points table', text };
    expect(said('Rowan', withMission(low))).toEqual([{ ...held, package: 'Rowan', subject: 'mission' }]);
    const refused = said('Rowan', withMission({ ...low, bags: si('mass', 101, 'lb') }));
    expect(refused).toMatchObject([held, { text: expect.stringMatching(/^refused: bags: /) }]);
    const unknown = said('Rowan', withMission(low, { ...godwit, knownPoints: [] }));
    expect(unknown).toMatchObject([held, { text: expect.stringMatching(/^not known: /) }]);
  });

  test('less than a third of the runway to spare, of the runway it is', () => {
    const back = answerOf('Rowan', godwit).conditions.find(
      ({ name, leg }) => name === 'takeoff' && leg === 'back',
    );
    const feet = Number(/^([\d,]+) ft/.exec(back?.text ?? '')?.[1]?.replace(',', ''));
    const short = withMission({ destinationRunway: si('height', feet * 1.2, 'ft') });
    const [finding, ...others] = said('Rowan', short);
    expect(others).toEqual([]);
    expect(finding).toMatchObject({
      ...{ gravity: 'check', source: 'UK CAA Safety Sense Leaflet 7: factor 1.33, from memory' },
      text: expect.stringMatching(
        /^takeoff back: [\d,]+ ft to 50 ft, [\d,]+ ft there: less than a third to spare$/,
      ),
    });
  });

  test('no fuel points: not known, and no consumption is the nearest', () => {
    const fuelPoints = godwit.fuelPoints.filter((point) => point.package !== 'Rowan');
    expect(said('Rowan', { ...godwit, fuelPoints }).map(({ text }) => text)).toEqual([
      'not known: cruise: speed or fuel consumption is not known',
    ]);
  });

  test('only a refusal can stand for what the weights may be off', () => {
    expect(answerOf('Rowan', godwit).asStatedOnly).toBe(false);
    expect(answerOf('Larch', godwit).asStatedOnly).toBe(false);
  });

  test('what could not be looked at', () => {
    const open = withAirframe({ neverExceedSpeed: undefined }, { ...godwit, cooling: [] });
    expect(said('Rowan', open).map(({ gravity, text, source }) => [gravity, text, source])).toEqual([
      ['check', 'answered without cooling out: no cooling data', weights],
      ['check', 'answered without cooling back: no cooling data', weights],
      ['check', 'answered without VNE: VNE is not given', weights],
    ]);
  });

  test('no distance: said once, of no package', () => {
    const { findings } = compare(withMission({ distance: undefined }));
    expect(findings.filter(({ subject }) => subject === 'mission')).toEqual([
      {
        ...{ gravity: 'note', package: '', subject: 'mission', source: 'mission table' },
        text: 'no distance given: no mission is asked',
      },
    ]);
  });
});

describe('the scarcest', () => {
  const shareOf = ({ conditions }: Mission, name: string) =>
    conditions.find((each) => each.name === name)?.share as number;

  test('of what is missed, the most missed', () => {
    const tight = withMission({ bags: si('mass', 101, 'lb'), runway: si('height', 1500, 'ft') });
    const answer = answerOf('Rowan', tight);
    expect(answer.verdict).toBe('no');
    expect(shareOf(answer, 'bags')).toBeCloseTo(-1 / 101, 9);
    expect(shareOf(answer, 'takeoff')).toBeLessThan(-0.1);
    expect(answer.scarcest.name).toBe('takeoff');
  });

  test('of what is met, what leaves least', () => {
    const answer = answerOf('Rowan', godwit);
    const shares = answer.conditions.filter(({ state }) => state === 'met').map(({ share }) => share);
    expect(answer.scarcest.name).toBe('weight');
    expect(answer.scarcest.share).toBe(Math.min(...shares));
  });

  test('what is missed before what is not known', () => {
    const answer = answerOf(
      'Rowan',
      withMission({ bags: si('mass', 101, 'lb') }, { ...godwit, knownPoints: [] }),
    );
    expect([answer.verdict, answer.scarcest.name]).toEqual(['no', 'bags']);
  });
});

describe('the price of the flights', () => {
  const priceOf = (catalogue: Catalogue) => {
    const { cost, mission } = assessed('Rowan', catalogue);
    return missionPrice(cost, mission as Mission);
  };

  test('not known without a price of fuel, of what an hour takes, or without a flight', () => {
    expect(priceOf(godwit)).toBeGreaterThan(100);
    expect(priceOf({ ...godwit, rates: { ...godwit.rates, avgas: undefined } })).toBeUndefined();
    expect(priceOf(withPackage('Rowan', { servicePrice: undefined }))).toBeUndefined();
    expect(priceOf({ ...godwit, knownPoints: [] })).toBeUndefined();
  });
});
