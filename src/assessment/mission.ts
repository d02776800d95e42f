import { fromSi } from '../units.ts';
import { type Condition, conditionName } from './condition.ts';
import type { Cost } from './cost.ts';
import type { Finding } from './finding.ts';
import { cabinConditions } from './missionCabin.ts';
import { type Assessed, asStated, type MissionCase } from './missionCase.ts';
import { flightConditions } from './missionConditions.ts';
import { type Leg, missionLegs } from './missionLegs.ts';
import { bestSeating, type MissionLoading } from './missionLoading.ts';
import { seatingPlan } from './seating.ts';

/** Whether one package flies the mission. */
export interface MissionAnswer {
  readonly verdict: 'yes' | 'no' | 'not known';
  readonly conditions: readonly Condition[];
  /** what could not be looked at */
  readonly open: readonly Condition[];
  /** the scarcest of what is missing; where nothing is, what is not known, then what leaves least */
  readonly scarcest: Condition;
  readonly loading: MissionLoading | undefined;
  /** undefined where it does not get there */
  readonly legs: readonly [Leg, Leg] | undefined;
}

/** A package's answer, and the case it answers. */
export interface Mission extends MissionAnswer {
  readonly asked: MissionCase;
  /** true where it goes only if it turns out no heavier than its makers state */
  readonly asStatedOnly: boolean;
}

/** Flight time of both legs [s] and the fuel they burn [kg], the reserve left. */
export const flownTime = (legs: readonly Leg[]) => legs.reduce((sum, { flown }) => sum + flown.time, 0);
export const burntFuel = (legs: readonly Leg[]) =>
  legs.reduce((sum, { flown }) => sum + flown.totalFuel - flown.reserveFuel, 0);

/** Fuel bought and hours flown; undefined where a price is missing. */
export function missionPrice(cost: Cost, { asked, legs }: Mission): number | undefined {
  if (legs === undefined || cost.fuelPrice === undefined || !cost.hourFlown.complete) return undefined;
  const hours = fromSi('time', flownTime(legs), 'h');
  const fuel = (burntFuel(legs) / asked.engine.fuelDensity) * cost.fuelPrice;
  return fuel + (cost.hourFlown.value - (cost.perHour.fuel ?? 0)) * hours;
}

const worst = (conditions: readonly Condition[]) =>
  [...conditions].sort((one, other) => one.share - other.share)[0];

/** Seats the people, plans the fuel, and asks every condition. */
export function answerMission(asked: MissionCase, distance: number): MissionAnswer {
  const { mission, context, aircraft, taxiFuel, empty } = asked;
  const { persons, personWeight, bags } = mission;
  const mass = empty.weight + persons * personWeight + bags;
  const plan = seatingPlan(context.catalogue.stations, { persons, personWeight, bags });
  const legs = aircraft && missionLegs(mission, distance, aircraft, taxiFuel, mass);
  const loading = legs?.possible ? bestSeating(asked, plan.seatings, legs.out, legs.back) : undefined;
  const conditions = [...cabinConditions(asked, plan), ...flightConditions(asked, mass, legs, loading)];
  const inState = (state: Condition['state']) => conditions.filter((each) => each.state === state);
  const missed = worst(inState('missed'));
  const [unknown] = inState('not known');
  return {
    verdict: missed ? 'no' : unknown ? 'not known' : 'yes',
    conditions,
    open: inState('open'),
    scarcest: missed ?? unknown ?? (worst(inState('met')) as Condition),
    loading,
    legs: legs?.possible ? [legs.out, legs.back] : undefined,
  };
}

const takeoffReserve = 1.33; // on the distance to 50 ft: UK CAA Safety Sense Leaflet 7, from memory

function missionFindings(mission: Mission): Finding[] {
  const { verdict, scarcest, conditions, open, asked, asStatedOnly } = mission;
  const finding = (gravity: Finding['gravity'], text: string, source: string): Finding => ({
    gravity,
    package: asked.engine.name,
    subject: 'mission',
    source,
    text,
  });
  const where = conditionName(scarcest);
  const source = 'mission table; expected weight and what it may be off';
  const held = asked.fuelHeld
    ? [
        finding(
          'check',
          'its cruise is outside the fuel points: the nearest consumption is used',
          'fuel points table',
        ),
      ]
    : [];
  if (verdict === 'not known')
    return [...held, finding('check', `not known: ${where}: ${scarcest.text}`, source)];
  if (verdict === 'no') {
    const unless = asStatedOnly ? '; it goes if it turns out no heavier than stated' : '';
    return [...held, finding('check', `refused: ${where}: ${scarcest.text}${unless}`, source)];
  }
  const short = conditions
    .filter(({ name, share }) => name === 'takeoff' && (1 - share) * takeoffReserve > 1)
    .map(({ leg, text }) =>
      finding(
        'check',
        `takeoff ${leg}: ${text}: less than a third to spare`,
        'UK CAA Safety Sense Leaflet 7: factor 1.33, from memory',
      ),
    );
  const unseen = open.map((each) =>
    finding('check', `answered without ${conditionName(each)}: ${each.text}`, source),
  );
  return [...held, ...short, ...unseen];
}

/** Conditions that a lighter aircraft does not meet any better. */
const weightless = new Set(['limits', 'seats', 'bags', 'oxygen']);

/** The mission asked of one package; undefined where no distance is given. */
export function missionOf(
  asked: MissionCase,
  assessed: Assessed,
): { readonly mission: Mission | undefined; readonly findings: readonly Finding[] } {
  const { distance } = asked.mission;
  if (distance === undefined) {
    const text = 'no distance given: no mission is asked';
    const finding: Finding = {
      gravity: 'note',
      package: '',
      subject: 'mission',
      source: 'mission table',
      text,
    };
    return { mission: undefined, findings: [finding] };
  }
  const answer = answerMission(asked, distance);
  const whateverItWeighs = answer.conditions.some(
    ({ name, state }) => state === 'missed' && weightless.has(name),
  );
  const asStatedOnly =
    answer.verdict === 'no' &&
    !whateverItWeighs &&
    answerMission(asStated(asked, assessed), distance).verdict === 'yes';
  const mission = { ...answer, asked, asStatedOnly };
  return { mission, findings: missionFindings(mission) };
}
