/** What would let a refused mission go: each remedy, entered in the tables, must turn the answer. */
import { describe, expect, test } from 'vitest';
import { compare } from '../../src/assessment/assess.ts';
import { answerMission } from '../../src/assessment/mission.ts';
import { missionRemedies } from '../../src/assessment/missionRemedies.ts';
import { cgShiftOf } from '../../src/assessment/optionCosts.ts';
import type { Catalogue } from '../../src/tables/catalogue.ts';
import type { Equipment } from '../../src/tables/equipment.ts';
import { assessed, godwit, packageOf, show, si, withMission, withPackage } from './sampleCatalogue.ts';

function remediesOf(name: string, catalogue: Catalogue): string[] {
  const comparison = compare(catalogue);
  return missionRemedies(comparison, packageOf(comparison, name));
}
const verdictOf = (name: string, catalogue: Catalogue) => assessed(name, catalogue).mission?.verdict;
const numberIn = (text: string | undefined, pattern: RegExp) => Number(pattern.exec(text ?? '')?.[1]);
const ticked = (names: readonly string[], fitted: boolean, catalogue = godwit): Catalogue => ({
  ...catalogue,
  equipment: catalogue.equipment.map((item) => (names.includes(item.name) ? { ...item, fitted } : item)),
});

test('nothing for a package that goes', () => {
  expect(remediesOf('Rowan', godwit)).toEqual([]);
});

test('Larch: climb at the stated speed, or a cooler hour that is cool enough and no cooler than it must be', () => {
  const [climb, cooler, ...others] = remediesOf('Larch', godwit);
  expect(others).toEqual([]);
  expect(climb).toBe('climb at 100 kt true, the speed stated for a hot climb');
  const home = numberIn(cooler, /at most (-?\d+) °C at home/);
  const on = (celsius: number) => {
    // The day is cooler by the same at both fields
    const change = si('temperature', celsius, '°C') - (godwit.mission.temperature as number);
    return withMission({
      temperature: (godwit.mission.temperature as number) + change,
      destinationTemperature: (godwit.mission.destinationTemperature as number) + change,
    });
  };
  expect(verdictOf('Larch', on(home))).toBe('yes');
  expect(verdictOf('Larch', on(home + 1.2))).toBe('no');
});

test('too hot at both fields: both must be cooler', () => {
  const at = (celsius: number) =>
    withMission({ temperature: celsius + 273.15, destinationTemperature: celsius + 273.15 });
  const [cooler, ...others] = remediesOf('Larch', at(45));
  expect(others).toEqual([]);
  const [home, there] = [
    numberIn(cooler, /at most (\d+) °C at home/),
    numberIn(cooler, /and (\d+) °C there/),
  ];
  expect(there).toBe(home);
  expect(verdictOf('Larch', at(home))).toBe('yes');
  expect(verdictOf('Larch', at(home + 1.2))).toBe('no');
});

test('Hazel: fewer people', () => {
  const people = numberIn(remediesOf('Hazel', godwit).at(-1), /^(\d) people/);
  expect(verdictOf('Hazel', withMission({ persons: people }))).toBe('yes');
  expect(verdictOf('Hazel', withMission({ persons: people + 1 }))).toBe('no');
});

test('Alder: what the airframe does not allow, no other day or load allows', () => {
  expect(remediesOf('Alder', godwit)).toEqual([]);
});

test('too far: the way that the fuel leaves', () => {
  const far = withMission({ distance: si('distance', 800, 'nmi') });
  const text = remediesOf('Rowan', far).find((each) => /each way/.test(each));
  const nmi = numberIn(text, /at most (\d+) nmi/);
  expect(verdictOf('Rowan', withMission({ distance: si('distance', nmi, 'nmi') }))).toBe('yes');
  expect(verdictOf('Rowan', withMission({ distance: si('distance', nmi + 3, 'nmi') }))).toBe('no');
});

test('too far for the tanks, not for the long-range ones', () => {
  const text = remediesOf('Rowan', withMission({ distance: si('distance', 650, 'nmi') }));
  expect(text).toContain('fit long-range tanks');
});

test('out and back without fuel there: buy some', () => {
  const dry = { refuel: false, distance: si('distance', 400, 'nmi') };
  expect(remediesOf('Rowan', withMission(dry))).toContain('refuel at the destination');
  expect(verdictOf('Rowan', withMission({ ...dry, refuel: true }))).toBe('yes');
});

test('too many bags: those that go', () => {
  const text = remediesOf('Rowan', withMission({ bags: si('mass', 150, 'lb') }));
  const pounds = numberIn(
    text.find((each) => /of bags/.test(each)),
    /at most (\d+) lb/,
  );
  expect(verdictOf('Rowan', withMission({ bags: si('mass', pounds, 'lb') }))).toBe('yes');
  expect(verdictOf('Rowan', withMission({ bags: si('mass', pounds + 2, 'lb') }))).toBe('no');
});

test('too high without oxygen: lower', () => {
  const high = withMission({ cruiseAltitude: si('height', 13_000, 'ft') });
  const text = remediesOf('Rowan', high).find((each) => /cruise no higher/.test(each));
  const feet = Number(text?.replace(/[^\d]/g, ''));
  expect(feet).toBeLessThanOrEqual(12_500);
  expect(feet).toBeGreaterThanOrEqual(12_300);
  expect(verdictOf('Rowan', withMission({ cruiseAltitude: si('height', feet, 'ft') }))).toBe('yes');
});

test('over the weight with an option too many: leave it out', () => {
  const limited = {
    ...godwit,
    airframe: { ...godwit.airframe, maximumTakeoffWeight: si('mass', 2370, 'lb') },
  };
  const laden = ticked(['rescue parachute'], true, limited);
  expect(verdictOf('Rowan', laden)).toBe('no');
  expect(remediesOf('Rowan', laden)).toContain('leave out rescue parachute');
});

test('over it with two options too many: leave out both, where neither alone is enough', () => {
  // 44 and 21 lb; without any option there are 2,342 lb at start-up, 0.5 % more of each to be counted on
  const limited = (weight: number) => ({
    ...ticked(['landing and strobe lights'], false),
    airframe: { ...godwit.airframe, maximumTakeoffWeight: si('mass', weight, 'lb') },
  });
  const both = ['leather seats and soundproofing', 'rescue parachute'];
  const leftOut = (weight: number) =>
    remediesOf('Rowan', ticked(both, true, limited(weight))).filter((text) => text.startsWith('leave'));
  expect(leftOut(2355)).toEqual([`leave out ${both.join(', ')}`]);
  expect(leftOut(2372)).toEqual(['leave out rescue parachute']);
  expect(leftOut(2395)).toEqual(both.map((name) => `leave out ${name}`));
  expect(verdictOf('Rowan', ticked(['leather seats and soundproofing'], true, limited(2355)))).toBe('no');
  expect(verdictOf('Rowan', limited(2355))).toBe('yes');
});

test('too heavy for anybody else: the pilot alone', () => {
  const limited = {
    ...godwit,
    airframe: { ...godwit.airframe, maximumTakeoffWeight: si('mass', 1900, 'lb') },
  };
  expect(remediesOf('Rowan', limited)).toEqual(['the pilot alone, the bags as asked']);
  const empty = { ...limited.airframe, maximumTakeoffWeight: si('mass', 1700, 'lb') };
  expect(remediesOf('Rowan', { ...limited, airframe: empty })).toEqual([]); // nobody flies it
  expect(verdictOf('Rowan', withMission({ persons: 1 }, limited))).toBe('yes');
  expect(verdictOf('Rowan', withMission({ persons: 2 }, limited))).toBe('no');
  const alone = withMission({ persons: 1, bags: 0, distance: si('distance', 800, 'nmi') });
  expect(remediesOf('Rowan', alone)).toEqual([
    'fit long-range tanks',
    expect.stringMatching(/^at most \d+ nmi each way/), // nobody and nothing to leave behind
  ]);
});

test('the fuel said beside a shorter way is what that way takes', () => {
  const text = remediesOf('Rowan', withMission({ distance: si('distance', 800, 'nmi') })).find((each) =>
    /each way/.test(each),
  );
  const [nmi, gallons] = [numberIn(text, /(\d+) nmi/), numberIn(text, /with ([\d.]+) US gal aboard/)];
  const { legs } = assessed('Rowan', withMission({ distance: si('distance', nmi, 'nmi') })).mission!;
  // A nautical mile takes less than 0.1 gal
  expect(Math.abs(gallons - show('mass', legs![0].fuel, 'lb') / 6)).toBeLessThan(0.15);
});

describe('two things missing', () => {
  const high = withMission({ cruiseAltitude: si('height', 13_000, 'ft') });

  test('Larch too hot and too high without oxygen: each change on top of the climb at the stated speed', () => {
    const { asked, conditions } = assessed('Larch', high).mission!;
    const missed = conditions.filter(({ state }) => state === 'missed').map(({ name }) => name);
    expect(missed).toEqual(['oxygen', 'cooling']);
    // At 13,000 ft the speed of best rate is the faster one, and cools; on the way there, at 10,600 ft, 100 kt do not
    const remedies = remediesOf('Larch', high);
    expect(remedies).toEqual([
      expect.stringMatching(/^climb at 100 kt true, and cruise no higher than [\d,]+ ft$/),
    ]);
    const feet = Number(/than ([\d,]+) ft/.exec(remedies[0] ?? '')?.[1]?.replace(',', ''));
    const hot = (height: number) => {
      const mission = { ...asked.mission, cruiseAltitude: si('height', height, 'ft') };
      return answerMission({ ...asked, climb: 'cooling climb', mission }, mission.distance!).verdict;
    };
    expect(hot(feet)).toBe('yes');
    expect(hot(feet + 200)).toBe('no');
  });

  test('on a day that lets it climb there at that speed, oxygen', () => {
    const cooler = withMission({ temperature: 32 + 273.15, destinationTemperature: 30 + 273.15 }, high);
    expect(remediesOf('Larch', cooler)).toContain('climb at 100 kt true, and fit oxygen for four');
    const fitted = assessed('Larch', ticked(['oxygen for four'], true, cooler)).mission!;
    expect(fitted.scarcest.name).toBe('cooling');
    const hot = { ...fitted.asked, climb: 'cooling climb' } as const;
    expect(answerMission(hot, hot.mission.distance!).verdict).toBe('yes');
  });

  test('Rowan too high: oxygen that does not fit it is not offered', () => {
    expect(remediesOf('Rowan', high)).toEqual([
      expect.stringMatching(/^cruise no higher than 12,[45]00 ft$/),
    ]);
  });
});

test('too fast at height: a cooler hour or a lower cruise', () => {
  const airframe = { ...godwit.airframe, neverExceedSpeed: si('speed', 145, 'kt') };
  const fast = { ...godwit, airframe: { ...airframe, cruiseLimitSpeed: undefined } };
  const [cooler, lower, ...others] = remediesOf('Rowan', fast);
  expect(others).toEqual([]);
  expect(cooler).toMatch(/^a cooler hour: /);
  const feet = Number(/^cruise no higher than ([\d,]+) ft$/.exec(lower ?? '')?.[1]?.replace(',', ''));
  const at = (height: number) =>
    verdictOf('Rowan', withMission({ cruiseAltitude: si('height', height, 'ft') }, fast));
  expect(at(feet)).toBe('yes');
  expect(at(feet + 200)).toBe('no');
});

test('what is too heavy is not cured by a lower cruise, nor by a climb at another speed', () => {
  const limited = {
    ...godwit,
    airframe: { ...godwit.airframe, maximumTakeoffWeight: si('mass', 2300, 'lb') },
  };
  expect(remediesOf('Rowan', limited).filter((text) => /cruise|climb/.test(text))).toEqual([]);
});

test('no speed stated for a hot climb: none is offered', () => {
  const unsaid = withPackage('Larch', { coolingClimbSpeed: undefined });
  expect(remediesOf('Larch', unsaid)).toEqual([expect.stringMatching(/^a cooler hour: /)]);
});

describe('nose-heavy: ballast', () => {
  // Alder with the limits ahead of the firewall and on the nosewheel out of the way, its pilot alone: two would sit one behind the other and balance
  const freed = withMission(
    { persons: 1, bags: 0, distance: si('distance', 200, 'nmi') },
    {
      ...godwit,
      airframe: {
        ...godwit.airframe,
        maximumFirewallMoment: undefined,
        maximumFirewallForwardWeight: undefined,
        maximumAuxiliaryWheelLoad: undefined,
      },
    },
  );

  test('at the ballast arm, enough and no more than a pound too much', () => {
    expect(assessed('Alder', freed).mission?.scarcest.name).toBe('CG');
    const text = remediesOf('Alder', freed).find((each) => /ballast/.test(each));
    const pounds = numberIn(text, /^(\d+\.\d) lb of ballast at 190\.0 in/);
    const ballasted = (weight: number): Catalogue => ({
      ...freed,
      equipment: [
        ...freed.equipment,
        {
          ...(freed.equipment[0] as Equipment),
          name: 'ballast',
          basis: 'weighed',
          weight: si('mass', weight, 'lb'),
          arm: si('length', 190, 'in'),
          standard: false,
          fitted: true,
        },
      ],
    });
    expect(verdictOf('Alder', ballasted(pounds + 0.5))).toBe('yes'); // the ballast's own scatter is 0.5 %
    expect(verdictOf('Alder', ballasted(pounds - 1))).toBe('no');
  });
});

describe('tail-heavy: ballast on the firewall', () => {
  const limited = (aft: number, takeoffWeight = 2520): Catalogue => ({
    ...godwit,
    airframe: { ...godwit.airframe, maximumTakeoffWeight: si('mass', takeoffWeight, 'lb') },
    envelope: godwit.envelope.map((corner) => ({ ...corner, aft: si('length', aft, 'in') })),
  });
  const ballastOf = (catalogue: Catalogue) =>
    remediesOf('Rowan', catalogue).find((each) => /ballast/.test(each));

  // Rowan without fuel, see mission.test.ts; w = W (x − 107)/(107 − 60)
  test('as much as draws the CG from 107.9 in to the limit of 107: W (x − 107)/47', () => {
    const empty = 1379 * 1.005;
    const weight = empty + 780;
    const cg = (empty * 97.93 + 360 * 106 + 360 * 139 + 60 * 163) / weight;
    const text = ballastOf(limited(107));
    const pounds = numberIn(text, /^(\d+\.\d) lb of ballast at 60\.0 in$/);
    const needed = (weight * (cg - 107)) / 47;
    expect(pounds - needed).toBeGreaterThanOrEqual(0);
    expect(pounds - needed).toBeLessThan(0.2);
  });

  test('none where the ballast makes it too heavy, where the balance is met, or where no place is ahead of the limit', () => {
    expect(ballastOf(limited(105))).toMatch(/^1\d\d\.\d lb of ballast/);
    expect(ballastOf(limited(105, 2400))).toBeUndefined();
    expect(ballastOf(limited(110, 2300))).toBeUndefined();
    const behind = limited(107);
    const airframe = {
      ...behind.airframe,
      firewallArm: si('length', 108, 'in'),
      maximumFirewallMoment: undefined,
      maximumFirewallForwardWeight: undefined,
    };
    expect(assessed('Rowan', { ...behind, airframe }).mission?.scarcest.name).toBe('CG');
    expect(ballastOf({ ...behind, airframe })).toBeUndefined();
  });
});

describe('what an option does to the empty CG', () => {
  const rowan = () => assessed('Rowan');
  const option = (name: string) => godwit.equipment.find((item) => item.name === name) as Equipment;

  test('one that is not aboard: 44 lb at 172 on 1,379 lb at 97.93', () => {
    const shift = show('length', cgShiftOf(option('rescue parachute'), rowan()), 'in');
    expect(shift).toBeCloseTo((44 * (172 - 97.93)) / (1379 + 44), 9);
  });

  test('one that is aboard: against the aircraft without it', () => {
    const without = (1379 * 97.93 - 24.5 * 141) / (1379 - 24.5);
    const shift = show('length', cgShiftOf(option('rear seats with belts'), rowan()), 'in');
    expect(shift).toBeCloseTo(97.93 - without, 9);
  });

  test('one that cannot be had with it: none', () => {
    expect(cgShiftOf(option('oxygen for four'), rowan())).toBeUndefined();
  });
});
