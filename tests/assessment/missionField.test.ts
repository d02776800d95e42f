/** Takeoff, climb and the climb's cooling from either field of a mission, against the engineering asked for the same. */
import { describe, expect, test } from 'vitest';
import { coolingConditionOf } from '../../src/assessment/coolingCondition.ts';
import { answerMission, type Mission } from '../../src/assessment/mission.ts';
import { type Air, airAt, shaftPower } from '../../src/engineering/aircraftInFlight.ts';
import { bestRateOfClimb, rateOfClimb } from '../../src/engineering/climb.ts';
import { coolingResult } from '../../src/engineering/coolingResult.ts';
import { type Takeoff, takeoff } from '../../src/engineering/takeoff.ts';
import type { Catalogue } from '../../src/tables/catalogue.ts';
import type { CoolingStreamRow } from '../../src/tables/cooling.ts';
import { assessed, godwit, show, si, withMission, withPackage } from './sampleCatalogue.ts';

const answerOf = (name: string, catalogue: Catalogue): Mission => {
  const { mission } = assessed(name, catalogue);
  if (mission === undefined) throw new Error('no mission');
  return mission;
};
const conditionIn = ({ conditions }: Mission, name: string, leg: 'out' | 'back') => {
  const found = conditions.find((each) => each.name === name && each.leg === leg);
  if (found === undefined) throw new Error(name);
  return found;
};

/** 34.06 °C at 3,000 ft, 32 °C at 1,200 ft, each field's difference from standard kept with height. */
const feet = (height: number) => height * 0.3048;
const fields = {
  out: { height: feet(3000), warmer: 34.06 - (15 - 0.0065 * feet(3000)) },
  back: { height: feet(1200), warmer: 32 - (15 - 0.0065 * feet(1200)) },
} as const;
const airOver = (leg: 'out' | 'back', altitude: number) => airAt(altitude, fields[leg].warmer);
const fieldAir = (leg: 'out' | 'back') => airOver(leg, fields[leg].height);

/** The aircraft, and what it weighs at takeoff on a leg: taxi fuel is gone. Weight and taxi fuel: see mission.test.ts. */
function leaving({ asked, legs }: Mission, leg: 'out' | 'back') {
  const { fuel } = legs![leg === 'out' ? 0 : 1];
  const mass = asked.empty.weight + si('mass', 780, 'lb') + fuel - asked.taxiFuel;
  return { aircraft: asked.aircraft!, mass };
}

function run(
  mission: Mission,
  leg: 'out' | 'back',
  runway: { friction?: number; slope?: number; headwind?: number } = {},
): Takeoff & { possible: true } {
  const { aircraft, mass } = leaving(mission, leg);
  const found = takeoff(aircraft, {
    air: fieldAir(leg),
    mass,
    maximumLiftCoefficient: 1.65,
    dragArea: godwit.airframe.takeoffFlapDrag * godwit.airframe.wingArea,
    rollingFriction: runway.friction ?? 0.03,
    slope: runway.slope ?? 0,
    headwind: runway.headwind ?? 0,
    groundRollFactor: 1,
  });
  if (!found.possible) throw new Error('cannot');
  return found;
}

/** Margins of the streams at best rate, or another speed, and maximum continuous power at a height over a field. */
function margins(mission: Mission, leg: 'out' | 'back', altitude: number, speed?: number) {
  const { aircraft, mass } = leaving(mission, leg);
  const { engine, streams } = mission.asked;
  const air: Air = airOver(leg, altitude);
  const flown = speed ?? bestRateOfClimb(aircraft, 'continuous', air, mass).trueAirspeed;
  const power = shaftPower(aircraft, 'continuous', air)(flown);
  const condition = coolingConditionOf(aircraft, engine.heatingValue, air, flown, power);
  return streams.map(({ stream }) => {
    const margin = coolingResult(stream!, condition).margin as number;
    return { margin, share: margin / (stream!.limit - air.temperature) };
  });
}

describe('takeoff', () => {
  test('what each runway leaves, as a share of it', () => {
    const mission = answerOf('Rowan', godwit);
    for (const [leg, length] of [
      ['out', feet(3000)],
      ['back', feet(3200)],
    ] as const) {
      const { margin, share, text, shown } = conditionIn(mission, 'takeoff', leg);
      const needed = run(mission, leg).distanceTo50Feet;
      expect(shown).toBe('runway');
      expect(margin).toBeCloseTo(length - needed, 4);
      expect(share).toBeCloseTo(1 - needed / length, 6);
      expect(text).toMatch(/^1,\d\d0 ft to 50 ft, 3,[02]00 ft there$/);
    }
  });

  test('a runway too short is missed by a share of what is needed', () => {
    const mission = answerOf('Rowan', withMission({ runway: feet(1500) }));
    const needed = run(mission, 'out').distanceTo50Feet;
    const { state, share } = conditionIn(mission, 'takeoff', 'out');
    expect(state).toBe('missed');
    expect(share).toBeCloseTo(feet(1500) / needed - 1, 6);
  });

  test('slope and wind are those of home alone; the surface is taken for both', () => {
    const changes = { slope: 0.02, fieldWind: 3, surface: 'short grass' } as const;
    const mission = answerOf('Rowan', withMission(changes));
    const out = run(mission, 'out', { friction: 0.05, slope: 0.02, headwind: 3 });
    const back = run(mission, 'back', { friction: 0.05 });
    expect(conditionIn(mission, 'takeoff', 'out').margin).toBeCloseTo(feet(3000) - out.distanceTo50Feet, 4);
    expect(conditionIn(mission, 'takeoff', 'back').margin).toBeCloseTo(feet(3200) - back.distanceTo50Feet, 4);
  });

  test('a destination without a length has that of home', () => {
    const mission = answerOf('Rowan', withMission({ destinationRunway: undefined }));
    const needed = run(mission, 'back').distanceTo50Feet;
    expect(conditionIn(mission, 'takeoff', 'back').margin).toBeCloseTo(feet(3000) - needed, 4);
  });

  test('a measured roll lengthens it', () => {
    const plain = answerOf('Rowan', godwit);
    const { mass, aircraft } = leaving(plain, 'out');
    const known = godwit.knownPoints[0]!;
    const predicted = run(plain, 'out').groundRoll;
    const measured = {
      ...({ ...known, condition: 'takeoff roll', airspeed: undefined, roll: 1.2 * predicted } as const),
      ...{ power: aircraft.fullThrottlePower('takeoff', feet(3000), fieldAir('out').temperature) },
      ...{ weight: mass, altitude: feet(3000), temperature: 273.15 + 34.06 },
    };
    const mission = answerOf('Rowan', { ...godwit, knownPoints: [known, measured] });
    const longer = (plain_: Mission) => conditionIn(plain_, 'takeoff', 'out').margin as number;
    expect(longer(plain) - longer(mission)).toBeCloseTo(0.2 * predicted, 1);
  });

  test('uphill in soft ground there is none', () => {
    const mission = answerOf('Hazel', withMission({ slope: 0.1, surface: 'soft' }));
    expect(conditionIn(mission, 'takeoff', 'out')).toMatchObject({
      ...{ state: 'missed', share: -1 },
      text: expect.stringMatching(/^the thrust does not suffice: (ground roll|climb to 50 ft)$/),
    });
  });
});

describe('climb', () => {
  const rateAt = (mission: Mission, leg: 'out' | 'back') => {
    const { aircraft, mass } = leaving(mission, leg);
    return bestRateOfClimb(aircraft, 'takeoff', fieldAir(leg), mass);
  };

  test('the best rate at takeoff power against the least, as a share of the greater', () => {
    const mission = answerOf('Rowan', godwit);
    for (const leg of ['out', 'back'] as const) {
      const { margin, share, shown } = conditionIn(mission, 'climb', leg);
      const { rateOfClimb: rate } = rateAt(mission, leg);
      const least = si('climb', 300, 'ft/min');
      expect(shown).toBe('climb');
      expect(margin).toBeCloseTo(rate - least, 5);
      expect(share).toBeCloseTo(1 - least / rate, 5);
    }
    const steep = answerOf('Rowan', withMission({ minimumClimb: si('climb', 1000, 'ft/min') }));
    const { rateOfClimb: rate } = rateAt(steep, 'out');
    expect(conditionIn(steep, 'climb', 'out').share).toBeCloseTo(rate / si('climb', 1000, 'ft/min') - 1, 5);
  });

  test('against none asked for, a rate below 100 ft/min is a share of that', () => {
    // Hazel from a field so high that it hardly climbs
    const [minimumClimb, elevation] = [0, feet(10_000)];
    const high = withMission({ minimumClimb, elevation, cruiseAltitude: elevation });
    const { margin, share } = conditionIn(answerOf('Hazel', high), 'climb', 'out');
    expect(margin).toBeGreaterThan(0);
    expect(show('climb', margin, 'ft/min')).toBeLessThan(100);
    expect(share).toBeCloseTo(show('climb', margin, 'ft/min') / 100, 6);
  });
});

describe('cooling in the climb', () => {
  test('the least share of limit over air of any stream, at the field, half way up or at the top', () => {
    const mission = answerOf('Rowan', godwit);
    for (const leg of ['out', 'back'] as const) {
      const bottom = fields[leg].height;
      const all = [bottom, (bottom + feet(8000)) / 2, feet(8000)].flatMap((height) =>
        margins(mission, leg, height),
      );
      expect(all).toHaveLength(6);
      const worst = all.reduce((one, other) => (other.share < one.share ? other : one));
      const { margin, share, shown, state, text } = conditionIn(mission, 'cooling', leg);
      expect([shown, state]).toEqual(['temperatureMargin', 'met']);
      expect(margin).toBeCloseTo(worst.margin, 4);
      expect(share).toBeCloseTo(worst.share, 6);
      // The fins' limit; hottest at the field
      const hot = Math.round(435 - worst.margin * 1.8);
      const celsius = Math.round(fieldAir(leg).temperature - 273.15);
      expect(text).toMatch(new RegExp(`^${hot} °F of 435 °F at \\d\\d kt, [13],[02]00 ft, ${celsius} °C$`));
    }
  });

  const withCooling = (name: string, change: (row: CoolingStreamRow) => CoolingStreamRow): Catalogue => ({
    ...godwit,
    cooling: godwit.cooling.map((row) => (row.package === name ? change(row) : row)),
  });

  test('one stream of two not known: open where the other holds, missed where it does not', () => {
    const open = withCooling('Rowan', (row) => (row.stream === 'oil' ? { ...row, limit: undefined } : row));
    expect(conditionIn(answerOf('Rowan', open), 'cooling', 'out')).toMatchObject({
      ...{ state: 'open', text: '1 of 2 streams not known' },
    });
    const hot = withCooling('Rowan', (row) =>
      row.stream === 'oil' ? { ...row, limit: undefined } : { ...row, limit: row.limit! - 40 },
    );
    expect(conditionIn(answerOf('Rowan', hot), 'cooling', 'out').state).toBe('missed');
  });

  test('none known: open', () => {
    const none = withCooling('Rowan', (row) => ({ ...row, limit: undefined }));
    expect(conditionIn(answerOf('Rowan', none), 'cooling', 'out')).toMatchObject({
      ...{ state: 'open', text: 'no cooling data' },
    });
  });

  test('a cruise below the destination’s field: the field alone is looked at', () => {
    const low = withMission({ destinationElevation: feet(5000), cruiseAltitude: feet(4000) });
    const mission = answerOf('Rowan', low);
    expect(conditionIn(mission, 'cooling', 'back').text).toMatch(/, 5,000 ft, 32 °C$/);
  });
});

test('at the speed stated for a hot climb: rate and cooling of that speed, 100 kt', () => {
  const mission = answerOf('Larch', godwit);
  const { asked } = mission;
  const hot = { ...answerMission({ ...asked, climb: 'cooling climb' }, asked.mission.distance!), asked };
  const { aircraft, mass } = leaving(mission, 'out');
  const speed = si('speed', 100, 'kt');
  const rate = rateOfClimb(aircraft, 'takeoff', fieldAir('out'), mass, speed);
  const { margin, text } = conditionIn({ ...hot, asStatedOnly: false }, 'climb', 'out');
  expect(margin).toBeCloseTo(rate - si('climb', 300, 'ft/min'), 5);
  expect(text).toMatch(/ at 100 kt, at least 300 ft\/min$/);
  const heights = [3000, 5500, 8000].map(feet);
  const shares = heights
    .flatMap((height) => margins(mission, 'out', height, speed))
    .map(({ share }) => share);
  expect(conditionIn({ ...hot, asStatedOnly: false }, 'cooling', 'out').share).toBeCloseTo(
    Math.min(...shares),
    5,
  );
});

test('a stated speed below that of the best rate is not flown', () => {
  const slow = withPackage('Larch', { coolingClimbSpeed: si('speed', 70, 'kt') });
  const { asked, conditions } = answerOf('Larch', slow);
  const hot = answerMission({ ...asked, climb: 'cooling climb' }, asked.mission.distance!);
  expect(hot.conditions).toEqual(conditions);
});
