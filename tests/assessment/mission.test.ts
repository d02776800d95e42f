/** The mission question: four verdicts of the sample, and which way every change moves them. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Assessment, compare } from '../../src/assessment/assess.ts';
import type { Condition } from '../../src/assessment/condition.ts';
import {
  answerMission,
  burntFuel,
  flownTime,
  type MissionAnswer,
  missionPrice,
} from '../../src/assessment/mission.ts';
import { asStated, type MissionCase } from '../../src/assessment/missionCase.ts';
import { missionLegs } from '../../src/assessment/missionLegs.ts';
import { tripOverDistance } from '../../src/engineering/trip.ts';
import type { Mission as MissionTable } from '../../src/tables/mission.ts';
import {
  assessed,
  godwit,
  packageOf,
  sampleCatalogue,
  show,
  si,
  withMission,
  withPackage,
} from './sampleCatalogue.ts';

const answerOf = (name: string, catalogue = godwit) => {
  const { mission } = assessed(name, catalogue);
  if (mission === undefined) throw new Error('no mission');
  return mission;
};
const conditionOf = ({ conditions }: MissionAnswer, name: string, leg?: 'out' | 'back'): Condition => {
  const found = conditions.find((each) => each.name === name && each.leg === leg);
  if (found === undefined) throw new Error(name);
  return found;
};
const distance = godwit.mission.distance as number;

describe('Godwit: four of 180 lb, 60 lb of bags, 350 nmi from 3,000 ft on a hot day', () => {
  const comparison = () => compare(godwit);
  const mission = (name: string) => packageOf(comparison(), name).mission;

  test('Rowan goes', () => {
    expect(mission('Rowan')?.verdict).toBe('yes');
  });

  test('the others are refused, each for a reason of its own', () => {
    const stops = ['Larch', 'Hazel', 'Alder'].map((name) => {
      expect(mission(name)?.verdict).toBe('no');
      return mission(name)?.scarcest.name;
    });
    expect(stops).toEqual(['cooling', expect.stringMatching(/^(takeoff|CG)$/), 'limits']);
  });

  test('Hazel is out of balance as well, with nothing but the baggage behind the rear seats', () => {
    const answer = mission('Hazel');
    expect(answer && conditionOf(answer, 'CG', 'out').state).toBe('missed');
  });

  test('every refusal is a finding', () => {
    const refused = comparison().findings.filter(
      ({ subject, text }) => subject === 'mission' && /refused/.test(text),
    );
    expect(refused.map((finding) => finding.package)).toEqual(['Larch', 'Hazel', 'Alder']);
  });
});

describe('Rowan by hand', () => {
  const answer = () => answerOf('Rowan');

  // All weighed: growth 0, scatter 0.5 % of 1,379 lb: 1,385.895 lb to be counted on; 180 × 4 + 60 = 780 lb
  const empty = 1379 * 1.005;
  const zeroFuel = empty + 780;

  test('weight: the fuel of the heavier leg under 2,520 lb', () => {
    const fuel = Math.max(...(answer().legs ?? []).map((leg) => show('mass', leg.fuel, 'lb')));
    const { margin } = conditionOf(answer(), 'weight');
    expect(show('mass', margin, 'lb')).toBeCloseTo(2520 - zeroFuel - fuel, 6);
  });

  test('CG: without fuel, people in front and behind, bags in the baggage place', () => {
    const moment = empty * 97.93 + 360 * 106 + 360 * 139 + 60 * 163;
    const known = show('length', answer().asked.cgHalfWidth, 'in') * (empty / zeroFuel);
    const { margin } = conditionOf(answer(), 'CG', 'out');
    expect(show('length', margin, 'in')).toBeCloseTo(110 - moment / zeroFuel - known, 6);
  });

  test('seats all taken, 40 lb of bags to spare', () => {
    expect(conditionOf(answer(), 'seats').margin).toBe(0);
    expect(show('mass', conditionOf(answer(), 'bags').margin, 'lb')).toBeCloseTo(40, 9);
  });

  test('price: fuel burnt at 6.60 and the hours at 39.85 of service, overhaul and upkeep', () => {
    const rowan = assessed('Rowan');
    const legs = answer().legs ?? [];
    const gallons = show('volume', burntFuel(legs) / answer().asked.engine.fuelDensity, 'US gal');
    const hours = flownTime(legs) / 3600;
    expect(missionPrice(rowan.cost, answer())).toBeCloseTo(gallons * 6.6 + hours * 39.85, 6);
  });

  test('taxi fuel is five minutes at takeoff flow', () => {
    // 185 hp × 0.5 lb/hp·h / 12
    expect(show('mass', answer().asked.taxiFuel, 'lb')).toBeCloseTo((185 * 0.5) / 12, 6);
  });
});

describe('fuel of the legs', () => {
  const asking = () => {
    const { asked } = answerOf('Rowan');
    return { asked, mass: asked.empty.weight + si('mass', 780, 'lb') };
  };
  const legs = (changes: Partial<MissionTable>) => {
    const { asked, mass } = asking();
    if (asked.aircraft === undefined) throw new Error('no flight');
    const found = missionLegs(
      { ...asked.mission, ...changes },
      distance,
      asked.aircraft,
      asked.taxiFuel,
      mass,
    );
    if (!found.possible) throw new Error(found.stops);
    return found;
  };

  test('what is aboard is what the trip takes with that aboard', () => {
    const { out } = legs({});
    const { asked, mass } = asking();
    if (asked.aircraft === undefined) throw new Error('no flight');
    const trip = tripOverDistance(
      asked.aircraft,
      {
        fieldAltitude: asked.mission.elevation,
        cruiseAltitude: asked.mission.cruiseAltitude,
        temperatureDeviation: out.field.temperatureDeviation,
        setting: asked.mission.cruiseSetting,
        mixture: 'lean',
        headwind: 0,
        taxiFuel: asked.taxiFuel,
        reserveTime: 1800,
      },
      mass + out.fuel,
      distance,
    );
    expect(trip.possible && trip.totalFuel).toBeCloseTo(out.fuel, 2);
  });

  test('the wind that holds up on the way out helps on the way back, less than it cost', () => {
    const [still, windy] = [legs({}), legs({ headwind: si('speed', 20, 'kt') })];
    expect(windy.out.flown.time).toBeGreaterThan(still.out.flown.time);
    expect(windy.back.flown.time).toBeLessThan(still.back.flown.time);
    expect(flownTime([windy.out, windy.back])).toBeGreaterThan(flownTime([still.out, still.back]));
  });

  test('without fuel at the destination the way back is taken along, with one reserve', () => {
    const [bought, carried] = [legs({}), legs({ refuel: false })];
    expect(carried.out.fuelLeft).toBeCloseTo(carried.back.fuel, 9);
    expect(carried.out.flown.reserveFuel).toBe(0);
    expect(carried.out.fuel).toBeGreaterThan(
      bought.out.fuel + bought.back.fuel - 2 * bought.out.flown.reserveFuel,
    );
  });
});

describe('what is not known, not asked, not looked at', () => {
  test('no distance, no mission', () => {
    expect(assessed('Rowan', withMission({ distance: undefined })).mission).toBeUndefined();
  });

  test('no fuel points: not known, for the fuel is not', () => {
    const catalogue = {
      ...godwit,
      fuelPoints: godwit.fuelPoints.filter((point) => point.package !== 'Rowan'),
    };
    expect(answerOf('Rowan', catalogue).verdict).toBe('not known');
  });

  test('no known point: not known; an overloaded cabin is refused all the same', () => {
    const unflown = { ...godwit, knownPoints: [] };
    expect(answerOf('Rowan', unflown).verdict).toBe('not known');
    const heavy = withMission({ bags: si('mass', 400, 'lb') }, unflown);
    expect(answerOf('Rowan', heavy).verdict).toBe('no');
  });

  test('no cooling data, no VNE: answered without them, and said so', () => {
    const catalogue = {
      ...godwit,
      cooling: [],
      airframe: { ...godwit.airframe, neverExceedSpeed: undefined },
    };
    const answer = answerOf('Larch', catalogue);
    expect(answer.verdict).toBe('yes');
    expect(answer.open.map(({ name }) => name)).toEqual(['cooling', 'cooling', 'VNE']);
  });

  test('stations that say nothing of people: not known, and no seat is counted missing', () => {
    const catalogue = { ...godwit, stations: godwit.stations.map((station) => ({ ...station, persons: 0 })) };
    const answer = answerOf('Rowan', catalogue);
    expect(answer.verdict).toBe('not known');
    expect(conditionOf(answer, 'seats').state).toBe('not known');
  });

  test('cruise outside the fuel points: the nearest consumption, and a finding', () => {
    const { findings } = assessed('Rowan', withMission({ cruiseSetting: 0.4 }));
    expect(findings.some(({ text }) => /outside the fuel points: the nearest/.test(text))).toBe(true);
    expect(
      assessed('Rowan').findings.some(({ text }) => /outside the fuel points: the nearest/.test(text)),
    ).toBe(false);
  });

  test('no runway length: the takeoff is not asked, and its distance said', () => {
    const answer = answerOf('Hazel', withMission({ runway: undefined, destinationRunway: undefined }));
    const { state, text } = conditionOf(answer, 'takeoff', 'out');
    expect(state).toBe('not asked');
    expect(text).toMatch(/ft to 50 ft; no runway length given/);
  });

  test('every sample has an answer for every package, or says why not', () => {
    for (const name of ['godwit', 'sanderling', 'minimal'] as const) {
      for (const { mission } of compare(sampleCatalogue(name)).assessments) {
        if (mission === undefined) continue;
        for (const { margin, share, text } of mission.conditions) {
          expect(margin === undefined || Number.isFinite(margin)).toBe(true);
          expect(Number.isFinite(share)).toBe(true);
          expect(text).not.toBe('');
        }
      }
    }
  });
});

describe('refused for one reason at a time', () => {
  test.each<[string, Partial<MissionTable>]>([
    ['seats', { persons: 5 }],
    ['bags', { bags: si('mass', 101, 'lb') }],
    ['fuel', { distance: si('distance', 600, 'nmi') }],
    ['oxygen', { cruiseAltitude: si('height', 13_000, 'ft') }],
    ['takeoff', { runway: si('height', 1500, 'ft') }],
    ['climb', { minimumClimb: si('climb', 1000, 'ft/min') }],
    ['cruise', { cruiseAltitude: si('height', 24_000, 'ft') }],
  ])('Rowan, %s', (name, changes) => {
    const answer = answerOf('Rowan', withMission(changes));
    expect(answer.verdict).toBe('no');
    expect(answer.conditions.filter(({ state }) => state === 'missed').map((each) => each.name)).toContain(
      name,
    );
  });

  test('Rowan, weight: a lower maximum; goes only if it is no heavier than stated where only that is missing', () => {
    const limited = (weight: number) => ({
      ...godwit,
      airframe: { ...godwit.airframe, maximumTakeoffWeight: si('mass', weight, 'lb') },
    });
    const needs = (answer: MissionAnswer, most: number) =>
      most - show('mass', conditionOf(answer, 'weight').margin, 'lb');
    const counted = needs(answerOf('Rowan'), 2520);
    const refused = answerOf('Rowan', limited(counted - 3));
    expect(refused.verdict).toBe('no');
    expect(refused.scarcest.name).toBe('weight');
    expect(refused.asStatedOnly).toBe(true); // 6.895 lb are the scatter of its weighing
    expect(answerOf('Rowan', limited(counted - 30)).asStatedOnly).toBe(false);
  });
});

describe('which way it goes', () => {
  // Cooling and VNE are left out: a heavier aircraft climbs faster, which cools, and cruises slower
  const asking = (each: Assessment): MissionCase => {
    if (each.mission === undefined) throw new Error('no mission');
    const { asked } = each.mission;
    return { ...asked, streams: [], barred: [] };
  };
  const unlimited = { ...godwit, airframe: { ...godwit.airframe, neverExceedSpeed: undefined } };
  const anyCase = () => fc.constantFrom(...compare(unlimited).assessments.map(asking));
  const runs = { numRuns: 60 };
  const goes = (asked: MissionCase, changes: Partial<MissionTable>, nmi: number) =>
    answerMission({ ...asked, mission: { ...asked.mission, ...changes } }, si('distance', nmi, 'nmi'));
  const people = fc.integer({ min: 1, max: 4 });

  test('a longer way never turns a no into a yes', () => {
    fc.assert(
      fc.property(
        anyCase(),
        people,
        fc.double({ min: 50, max: 700, noNaN: true }),
        fc.double({ min: 1, max: 200, noNaN: true }),
        fc.boolean(),
        (asked, persons, nmi, further, refuel) => {
          const far = goes(asked, { persons, refuel }, nmi + further);
          if (far.verdict === 'yes') expect(goes(asked, { persons, refuel }, nmi).verdict).toBe('yes');
        },
      ),
      runs,
    );
  });

  test('a hotter day, a higher field, a shorter runway, a longer grass never turn a no into a yes', () => {
    fc.assert(
      fc.property(
        anyCase(),
        people,
        fc.double({ min: 0, max: 35, noNaN: true }),
        fc.double({ min: 0.5, max: 15, noNaN: true }),
        fc.double({ min: 100, max: 1500, noNaN: true }),
        (asked, persons, celsius, hotter, runway) => {
          const mission = {
            persons,
            runway,
            destinationRunway: runway,
            temperature: celsius + 273.15,
            destinationTemperature: celsius + 273.15,
          };
          const harder: Partial<MissionTable>[] = [
            {
              temperature: mission.temperature + hotter,
              destinationTemperature: mission.temperature + hotter,
            },
            { elevation: asked.mission.elevation + hotter * 30 },
            { runway: runway * 0.9, destinationRunway: runway * 0.9 },
            { surface: 'long grass' },
          ];
          for (const change of harder) {
            if (goes(asked, { ...mission, ...change }, 300).verdict === 'yes')
              expect(goes(asked, mission, 300).verdict).toBe('yes');
          }
        },
      ),
      runs,
    );
  });

  // Where they sit moves the CG either way: that condition may get better
  test('heavier people, and more bags, leave less of everything but the CG', () => {
    fc.assert(
      fc.property(
        anyCase(),
        people,
        fc.double({ min: 60, max: 95, noNaN: true }),
        fc.double({ min: 0.5, max: 15, noNaN: true }),
        (asked, persons, kilograms, heavier) => {
          const light = goes(asked, { persons, personWeight: kilograms }, 300);
          for (const changes of [
            { persons, personWeight: kilograms + heavier },
            { persons, personWeight: kilograms, bags: asked.mission.bags + heavier },
          ]) {
            const heavy = goes(asked, changes, 300);
            heavy.conditions.forEach((condition, index) => {
              const before = light.conditions[index] as Condition;
              if (condition.name === 'CG' || condition.state === 'not known') return;
              expect(condition.share).toBeLessThanOrEqual(before.share + 1e-6);
            });
          }
        },
      ),
      runs,
    );
  });

  test('lighter by what the weights may be off is never worse, but for the CG', () => {
    for (const each of compare(unlimited).assessments) {
      const asked = asking(each);
      const counted = answerMission(asked, distance);
      const stated = answerMission(asStated(asked, each), distance);
      stated.conditions.forEach((condition, index) => {
        if (condition.name === 'CG') return;
        expect(condition.share).toBeGreaterThanOrEqual((counted.conditions[index] as Condition).share - 1e-6);
      });
    }
  });
});

test('less than a third of the runway to spare is a check beside the yes', () => {
  const needed = /^([\d,]+) ft to 50 ft/.exec(conditionOf(answerOf('Rowan'), 'takeoff', 'out').text)?.[1];
  const feet = Number(needed?.replace(',', ''));
  const spare = (factor: number) =>
    assessed('Rowan', withMission({ runway: si('height', feet * factor, 'ft') })).findings.filter(
      ({ text }) => /less than a third to spare/.test(text),
    );
  expect(spare(1.36)).toEqual([]);
  expect(spare(1.3)).toHaveLength(1);
});

test('an alternator that does not carry the load keeps it on the ground whatever the mission', () => {
  const answer = answerOf('Rowan', withPackage('Rowan', { alternatorCruise: 10 }));
  expect(answer.scarcest.name).toBe('limits');
  expect(answer.scarcest.text).toMatch(/alternator, cruise/);
});
