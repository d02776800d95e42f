/**
 * The conditions of a mission, each by hand from the sample's tables and, where flight decides, from the legs' own figures
 * (see mission.test.ts) or the engineering.
 *
 * Rowan weighs 1,379 lb by scales, 0.5 % more to be counted on; four of 180 lb and 60 lb of bags make 780 lb.
 */
import { describe, expect, test } from 'vitest';
import type { Condition } from '../../src/assessment/condition.ts';
import type { MissionAnswer } from '../../src/assessment/mission.ts';
import { airAt } from '../../src/engineering/aircraftInFlight.ts';
import { calibratedFromTrue } from '../../src/engineering/airspeed.ts';
import type { Airframe } from '../../src/tables/airframe.ts';
import type { Catalogue } from '../../src/tables/catalogue.ts';
import type { Mission as MissionTable } from '../../src/tables/mission.ts';
import { assessed, godwit, show, si, withMission, withPackage } from './sampleCatalogue.ts';

const answerOf = (name: string, catalogue: Catalogue): MissionAnswer => {
  const { mission } = assessed(name, catalogue);
  if (mission === undefined) throw new Error('no mission');
  return mission;
};
const conditionIn = ({ conditions }: MissionAnswer, name: string, leg?: 'out' | 'back'): Condition => {
  const found = conditions.find((each) => each.name === name && each.leg === leg);
  if (found === undefined) throw new Error(name);
  return found;
};
const rowan = (condition: string, changes: Partial<MissionTable> = {}, catalogue = godwit) =>
  conditionIn(answerOf('Rowan', withMission(changes, catalogue)), condition);
const withAirframe = (changes: Partial<Airframe>): Catalogue => ({
  ...godwit,
  airframe: { ...godwit.airframe, ...changes },
});

test('a mission that can be flown is asked sixteen things, in this order', () => {
  const asked = answerOf('Rowan', godwit).conditions.map(({ name, leg }) => [name, leg]);
  expect(asked).toEqual([
    ...['limits', 'seats', 'bags', 'oxygen', 'cruise', 'fuel', 'weight'].map((name) => [name, undefined]),
    ['CG', 'out'],
    ['CG', 'back'],
    ...['takeoff', 'climb', 'cooling'].map((name) => [name, 'out']),
    ...['takeoff', 'climb', 'cooling'].map((name) => [name, 'back']),
    ['VNE', undefined],
  ]);
});

describe('seats', () => {
  test('one too few for five', () => {
    expect(rowan('seats', { persons: 5 })).toMatchObject({
      ...{ state: 'missed', margin: -1, shown: 'count', text: '4 of 180 lb can sit' },
      share: -1 / 5,
    });
  });

  test('enough, however many are left', () => {
    expect(rowan('seats', { persons: 1 })).toMatchObject({ state: 'met', margin: 3, share: 1 });
  });

  test('a seat that must be held and nobody for it is one missing', () => {
    const minimum = si('mass', 130, 'lb');
    const stations = godwit.stations.map((station) =>
      station.name === 'front passenger' ? { ...station, minimum } : station,
    );
    const alone = rowan('seats', { persons: 1 }, { ...godwit, stations });
    expect(alone).toMatchObject({ state: 'missed', margin: -1, share: -1 });
  });

  test('one station that seats people is enough to know', () => {
    const stations = godwit.stations.map((station) =>
      station.name === 'pilot' ? station : { ...station, persons: 0 },
    );
    expect(rowan('seats', { persons: 1 }, { ...godwit, stations })).toMatchObject({ state: 'met' });
  });
});

describe('bags', () => {
  test('100 lb of room: 1 lb too much is a share of what is to be carried', () => {
    const bags = rowan('bags', { bags: si('mass', 101, 'lb') });
    expect(bags).toMatchObject({ state: 'missed', shown: 'payload', text: '1 lb find no room' });
    expect(show('mass', bags.margin, 'lb')).toBeCloseTo(-1, 9);
    expect(bags.share).toBeCloseTo(-1 / 101, 9);
  });

  test('room left, and none left', () => {
    expect(rowan('bags', {})).toMatchObject({ state: 'met', share: 1, text: 'room for 40 lb more' });
    expect(rowan('bags', { bags: si('mass', 100, 'lb') })).toMatchObject({ state: 'met', share: 1 });
  });

  test('the most room of any seating: nobody in the rear leaves it as large', () => {
    expect(show('mass', rowan('bags', { persons: 2 }).margin, 'lb')).toBeCloseTo(40, 9);
  });

  test('not known where the people do not fit', () => {
    expect(rowan('bags', { persons: 5 })).toMatchObject({
      ...{ state: 'not known', text: 'the people do not fit' },
    });
  });
});

describe('oxygen', () => {
  const at = (feet: number) => ({ cruiseAltitude: si('height', feet, 'ft') });

  test('not asked at 12,500 ft, needed a foot higher', () => {
    expect(rowan('oxygen', at(12_500))).toMatchObject({ state: 'not asked' });
    expect(rowan('oxygen', at(12_501))).toMatchObject({ state: 'missed', text: 'needed at 12,500 ft' });
  });

  test('fitted to the package', () => {
    const fitted = withPackage('Rowan', { oxygen: true });
    expect(rowan('oxygen', at(13_000), fitted)).toMatchObject({ state: 'met', text: 'needed at 13,000 ft' });
  });
});

describe('the airframe’s own limits', () => {
  test('the first in words, the others by number', () => {
    const alternator = withPackage('Rowan', { alternatorCruise: 10 });
    expect(rowan('limits', {}, alternator).text).toMatch(/^alternator, cruise: /);
    expect(rowan('limits', {}, alternator).text).not.toMatch(/more in the findings/);
    const both = withPackage(
      'Rowan',
      { alternatorCruise: 10 },
      withAirframe({ maximumFirewallForwardWeight: si('mass', 100, 'lb') }),
    );
    const { text, state } = rowan('limits', {}, both);
    expect(state).toBe('missed');
    expect(text).toMatch(/^weight ahead of firewall: /);
    expect(text).toMatch(/; and 1 more in the findings$/);
  });
});

test('fuel: the heavier leg against what the tanks hold, as shares of the greater', () => {
  const near = answerOf('Rowan', godwit);
  const most = Math.max(...near.legs!.map(({ fuel }) => show('mass', fuel, 'lb'))) / 6;
  const { margin, share, text } = conditionIn(near, 'fuel');
  expect(show('volume', margin, 'US gal')).toBeCloseTo(42 - most, 6);
  expect(share).toBeCloseTo((42 - most) / 42, 9);
  expect(text).toBe(`${most.toFixed(1)} US gal with the reserve, the tanks hold 42.0 US gal`);
  // The way out is the heavier with the headwind, and the way back with it behind the lighter
  const windy = answerOf('Rowan', withMission({ headwind: si('speed', 20, 'kt') }));
  const [out, back] = windy.legs!.map(({ fuel }) => show('mass', fuel, 'lb') / 6) as [number, number];
  expect(out).toBeGreaterThan(back + 1);
  expect(show('volume', conditionIn(windy, 'fuel').margin, 'US gal')).toBeCloseTo(42 - out, 6);
});

describe('weight: the limit that leaves least', () => {
  const zeroFuel = 1379 * 1.005 + 780;
  const taxi = (185 * 0.5) / 12; // lb, five minutes at takeoff flow
  const fuelOf = (answer: MissionAnswer) =>
    Math.max(...answer.legs!.map((leg) => show('mass', leg.fuel, 'lb')));

  /** Margin of the answer, and of the name's limit worked here, lb. */
  function weighed(changes: Partial<Airframe>) {
    const answer = answerOf('Rowan', withAirframe(changes));
    const { margin, share, text } = conditionIn(answer, 'weight');
    return { margin: show('mass', margin, 'lb'), share, text, fuel: fuelOf(answer), answer };
  }

  test('at start-up where no ramp weight is given: taxi fuel counts', () => {
    const { margin, share, text, fuel } = weighed({});
    expect(margin).toBeCloseTo(2520 - zeroFuel - fuel, 6);
    expect(share).toBeCloseTo(margin / 2520, 9);
    expect(text).toBe(
      `start-up weight ${(2520 - margin).toFixed(1).replace('2', '2,')} lb, at most 2,520.0 lb`,
    );
  });

  test('at takeoff with 20 lb more on the ramp, and on the ramp with 5', () => {
    const ramp = (more: number) => weighed({ maximumRampWeight: si('mass', 2520 + more, 'lb') });
    expect(ramp(20).margin).toBeCloseTo(2520 - zeroFuel - ramp(20).fuel + taxi, 6);
    expect(ramp(20).text).toMatch(/^takeoff weight /);
    expect(ramp(5).margin).toBeCloseTo(2525 - zeroFuel - ramp(5).fuel, 6);
    expect(ramp(5).text).toMatch(/^start-up weight .*, at most 2,525\.0 lb$/);
  });

  test('on landing: the reserve of the heavier leg is still aboard', () => {
    const { margin, text, answer } = weighed({ maximumLandingWeight: si('mass', 2200, 'lb') });
    const left = Math.max(...answer.legs!.map((leg) => show('mass', leg.fuelLeft, 'lb')));
    expect(left).toBeGreaterThan(10);
    expect(margin).toBeCloseTo(2200 - zeroFuel - left, 6);
    expect(text).toMatch(/^landing weight .*, at most 2,200\.0 lb$/);
  });

  test('without fuel', () => {
    const { margin, share, text } = weighed({ maximumZeroFuelWeight: si('mass', 2100, 'lb') });
    expect(margin).toBeCloseTo(2100 - zeroFuel, 6);
    expect(share).toBeCloseTo((2100 - zeroFuel) / zeroFuel, 9);
    expect(text).toMatch(/^zero-fuel weight 2,165\.9 lb, at most 2,100\.0 lb$/);
  });
});

describe('CG', () => {
  test('its margin is shown beside the limit, as a share of the width of the limits there', () => {
    const { margin, share, text } = conditionIn(answerOf('Larch', godwit), 'CG', 'out');
    const [, , weight] =
      /^([\d.]+) in at ([\d,.]+) lb, aft limit 110\.0 in, empty CG known to ±\d\.\d in$/.exec(text) ?? [
        '',
        '',
        '',
      ];
    // The forward limit runs from 97 in at 2,000 lb to 103 in at 2,520 lb
    const forward = 97 + ((Number(weight?.replace(',', '')) - 2000) * 6) / 520;
    expect(share).toBeCloseTo(show('length', margin, 'in') / (110 - forward), 4);
  });

  test('how well the empty CG is known is said where it is not known exactly', () => {
    expect(conditionIn(answerOf('Rowan', godwit), 'CG', 'out').text).not.toMatch(/known to/);
  });

  test('heavier than the CG limits go: not known', () => {
    const heavy = withMission({ persons: 4, personWeight: si('mass', 200, 'lb') }, godwit);
    const envelope = godwit.envelope.filter(({ weight }) => weight < si('mass', 2100, 'lb'));
    const answer = answerOf('Rowan', { ...heavy, envelope });
    expect(conditionIn(answer, 'CG', 'out')).toMatchObject({
      ...{ state: 'not known', text: 'no seating, or heavier than the CG limits go' },
    });
  });
});

describe('VNE', () => {
  const cruise = (answer: MissionAnswer) => answer.legs![0].flown.cruiseSpeed;

  test('true: 185 kt less the cruise', () => {
    const answer = answerOf('Rowan', godwit);
    const { margin, share, text } = conditionIn(answer, 'VNE');
    expect(margin).toBeCloseTo(si('speed', 185, 'kt') - cruise(answer), 9);
    expect(share).toBeCloseTo((margin as number) / si('speed', 185, 'kt'), 9);
    expect(text).toBe(`cruise at ${Math.round(show('speed', cruise(answer), 'kt'))} kt true`);
  });

  test('calibrated: in air 25 °C warmer than standard at 8,000 ft, as at the field', () => {
    const answer = answerOf('Rowan', withAirframe({ neverExceedKind: 'calibrated airspeed' }));
    const air = airAt(2438.4, 34.06 - (15 - 0.0065 * 914.4));
    const calibrated = calibratedFromTrue(cruise(answer), 2438.4, air.temperature);
    expect(conditionIn(answer, 'VNE').margin).toBeCloseTo(si('speed', 185, 'kt') - calibrated, 6);
  });

  test('one that is not given is open', () => {
    const answer = answerOf('Rowan', withAirframe({ neverExceedSpeed: undefined }));
    expect(conditionIn(answer, 'VNE')).toMatchObject({ state: 'open', text: 'VNE is not given' });
  });
});

describe('what does not get there', () => {
  test('a cruise altitude it does not climb to: missed; all that rests on it is not known', () => {
    const answer = answerOf('Rowan', withMission({ cruiseAltitude: si('height', 24_000, 'ft') }));
    expect(conditionIn(answer, 'cruise')).toMatchObject({
      ...{ state: 'missed', share: -1, text: 'back: it does not climb to the cruise altitude' },
    });
    const others = answer.conditions.slice(5);
    expect(others).toHaveLength(11);
    for (const { state, text } of others) {
      expect(state).toBe('not known');
      expect(text).toBe('it does not get there');
    }
    expect(answer.legs).toBeUndefined();
    expect(answer.loading).toBeUndefined();
  });

  test('no known point: nothing of the flight is known', () => {
    const { conditions } = answerOf('Rowan', { ...godwit, knownPoints: [] });
    expect(conditions).toHaveLength(16);
    for (const { state, text } of conditions.slice(4)) {
      expect(state).toBe('not known');
      expect(text).toBe('speed or fuel consumption is not known');
    }
  });
});
