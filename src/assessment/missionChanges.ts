import { ballastWeight } from '../engineering/ballast.ts';
import { add } from '../engineering/massItem.ts';
import type { Mission as MissionTable } from '../tables/mission.ts';
import type { Assessment, Comparison } from './assess.ts';
import { attempt } from './attempt.ts';
import { ballastArm } from './ballastArm.ts';
import { homeField } from './field.ts';
import { answerMission, type MissionAnswer } from './mission.ts';
import type { MissionCase } from './missionCase.ts';
import { destinationField } from './missionLegs.ts';
import type { LegBalance } from './missionLoading.ts';

const halvings = 10; // of a range: to a thousandth of it
const coldest = 40; // K below the day asked for; colder is another season
/** Before a change of which it is not known whether it would do. */
export const unsettledChange = 'not known: ';

const mostBallastSteps = 30; // each takes out all that is missing but what a sloping limit gives back

/** The least part of a change that goes, when the whole of it does and less of it does not; 0 to 1. */
function leastPart(goes: (part: number) => boolean): number | undefined {
  if (!goes(1)) return undefined;
  let [low, high] = [0, 1];
  for (let halving = 0; halving < halvings; halving++) {
    const middle = (low + high) / 2;
    if (goes(middle)) high = middle;
    else low = middle;
  }
  return high;
}

/** Other rows of the mission table, everything else the same. */
const withMission = (asked: MissionCase, changes: Partial<MissionTable>): MissionCase => ({
  ...asked,
  mission: { ...asked.mission, ...changes },
});

/** A refused mission, and the case that refuses it. */
export interface Refused {
  readonly comparison: Comparison;
  readonly assessment: Assessment;
  readonly asked: MissionCase;
  readonly distance: number;
  readonly answer: MissionAnswer;
}

/** Whether it goes, asked so. */
export const goes = (asked: MissionCase, distance: number) =>
  answerMission(asked, distance).verdict === 'yes';

export function hotClimb({ asked, distance, answer }: Refused): string[] {
  const { engine, context } = asked;
  const { coolingClimbSpeed } = engine;
  const isHot = answer.conditions.some(({ name, state }) => name === 'cooling' && state === 'missed');
  if (coolingClimbSpeed === undefined || !isHot || !goes({ ...asked, climb: 'cooling climb' }, distance)) {
    return [];
  }
  return [
    `climb at ${context.display.text('speed', coolingClimbSpeed)} true, the speed stated for a hot climb`,
  ];
}

export function coolerHour({ asked, distance }: Refused): string[] {
  const home = homeField(asked.mission).air.temperature;
  const there = destinationField(asked.mission).air.temperature;
  const cooler = (part: number) =>
    withMission(asked, {
      temperature: home - part * coldest,
      destinationTemperature: there - part * coldest,
    });
  const part = leastPart((share) => goes(cooler(share), distance));
  if (part === undefined) return [];
  const { display } = asked.context;
  const [atHome, atDestination] = [home, there].map((temperature) =>
    display.text('oat', temperature - part * coldest, 'floor'),
  );
  return [`a cooler hour: at most ${atHome} at home and ${atDestination} there`];
}

/** Lower, where it does not get up there, needs oxygen there or flies too fast there. */
export function lowerCruise({ asked, distance, answer }: Refused): string[] {
  const asksHeight = answer.conditions.some(
    ({ name, state }) => state === 'missed' && ['cruise', 'oxygen', 'VNE'].includes(name),
  );
  const { cruiseAltitude, elevation, destinationElevation = elevation } = asked.mission;
  const range = cruiseAltitude - Math.max(elevation, destinationElevation);
  if (!asksHeight || range <= 0) return [];
  const lower = (part: number) => cruiseAltitude - part * range;
  const part = leastPart((share) => goes(withMission(asked, { cruiseAltitude: lower(share) }), distance));
  if (part === undefined) return [];
  return [`cruise no higher than ${asked.context.display.text('height', lower(part), 'floor')}`];
}

export function lessToCarry({ asked, distance }: Refused): string[] {
  const { bags, persons } = asked.mission;
  const { display } = asked.context;
  const part = leastPart(
    (share) => bags > 0 && goes(withMission(asked, { bags: bags * (1 - share) }), distance),
  );
  const fewer = Array.from({ length: persons - 1 }, (_, left) => persons - 1 - left).find((number) =>
    goes(withMission(asked, { persons: number }), distance),
  );
  const people = fewer === 1 ? 'the pilot alone' : `${fewer} people`;
  return [
    ...(part === undefined ? [] : [`at most ${display.text('payload', bags * (1 - part), 'floor')} of bags`]),
    ...(fewer === undefined ? [] : [`${people}, the bags as asked`]),
  ];
}

/** Less fuel is a shorter way: what is asked already flies with the least. */
export function shorterWay({ asked, distance }: Refused): string[] {
  const { display } = asked.context;
  const bought = asked.mission.refuel ? undefined : withMission(asked, { refuel: true });
  const shortened = (part: number) => distance * (1 - 0.9 * part);
  const part = leastPart((share) => goes(asked, shortened(share)));
  const fuel = part && answerMission(asked, shortened(part)).legs?.[0].fuel;
  return [
    ...(bought && goes(bought, distance) ? ['refuel at the destination'] : []),
    ...(part === undefined || fuel === undefined
      ? []
      : [
          `at most ${display.text('distance', shortened(part), 'floor')} each way, with ${display.text('fuel', fuel / asked.engine.fuelDensity)} aboard`,
        ]),
  ];
}

export function ballast({ asked, distance, answer }: Refused): string[] {
  const { airframe } = asked.context.catalogue;
  const { display } = asked.context;
  const worse = ({ loading }: MissionAnswer): LegBalance | undefined =>
    [loading?.out, loading?.back]
      .filter((balance) => balance !== undefined)
      .sort((one, other) => one.critical.margin - other.critical.margin)[0];
  const first = worse(answer);
  if (first === undefined || first.critical.margin >= 0) return [];
  const aftwards = first.critical.side === 'forward' ? 1 : -1;
  const arm = ballastArm(airframe, first.critical.limit, aftwards);
  if (arm === undefined) return [];
  let weight = 0;
  for (let step = 0; step < mostBallastSteps; step++) {
    const found = answerMission(
      { ...asked, empty: add(asked.empty, { weight, moment: weight * arm }) },
      distance,
    );
    if (found.verdict === 'yes') {
      return [`${display.text('weight', weight, 'ceil')} of ballast at ${display.text('arm', arm)}`];
    }
    const now = worse(found);
    if (now === undefined || now.critical.margin >= 0 || now.critical.side !== first.critical.side) return [];
    // As much again as the worst state lacks, and a little more: it must end inside
    const target = now.critical.cg - aftwards * (now.critical.margin - 1e-5);
    const { value: more } = attempt(() => ballastWeight(now.critical.weight, now.critical.cg, target, arm));
    if (more === undefined) return []; // the limit has moved to the other side of it
    weight += more;
  }
  return [
    `${unsettledChange}ballast at ${display.text('arm', arm)}: more than ${display.text('weight', weight, 'floor')}, how much does not settle`,
  ];
}
