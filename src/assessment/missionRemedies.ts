import { ballastWeight } from '../engineering/ballast.ts';
import { add } from '../engineering/massItem.ts';
import type { Catalogue } from '../tables/catalogue.ts';
import { nameKey } from '../tables/cell.ts';
import type { Mission as MissionTable } from '../tables/mission.ts';
import { type Assessment, assess, type Comparison } from './assess.ts';
import { fitsTo, isStandardTank } from './configuration.ts';
import { homeField } from './field.ts';
import { answerMission, type MissionAnswer } from './mission.ts';
import type { MissionCase } from './missionCase.ts';
import { destinationField } from './missionLegs.ts';
import type { LegBalance } from './missionLoading.ts';

const halvings = 10; // of a range: to a thousandth of it
const coldest = 40; // K below the day asked for; colder is another season
const mostBallastSteps = 8;

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

interface Refused {
  readonly comparison: Comparison;
  readonly assessment: Assessment;
  readonly asked: MissionCase;
  readonly distance: number;
  readonly answer: MissionAnswer;
}

const goes = (asked: MissionCase, distance: number) => answerMission(asked, distance).verdict === 'yes';

function hotClimb({ asked, distance, answer }: Refused): string[] {
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

/** Options and tanks ticked or not; the package is assessed anew with each change. */
function choices({ comparison, assessment, asked, distance, answer }: Refused): string[] {
  const { context } = comparison;
  const { catalogue } = context;
  const { package: engine, configuration } = assessment;
  const goesWith = (changes: Partial<Catalogue>) => {
    const changed = { ...comparison, context: { ...context, catalogue: { ...catalogue, ...changes } } };
    const found = assess(changed, engine).mission;
    return found !== undefined && goes({ ...found.asked, climb: asked.climb }, distance);
  };
  const tick = <R extends { readonly name: string }>(
    rows: readonly R[],
    names: readonly string[],
    fitted: boolean,
  ) => rows.map((row) => (names.includes(row.name) ? { ...row, fitted } : row));
  const without = (names: readonly string[]) => ({ equipment: tick(catalogue.equipment, names, false) });
  const ticked = configuration.equipment.filter(({ standard }) => !standard).map(({ name }) => name);
  const single = ticked.filter((name) => goesWith(without([name])));
  const all = single.length === 0 && ticked.length > 1 && goesWith(without(ticked)) ? [ticked] : [];
  const missed = new Set(answer.conditions.filter(({ state }) => state === 'missed').map(({ name }) => name));
  const tanks = catalogue.tanks.filter(
    (tank) =>
      missed.has('fuel') &&
      !isStandardTank(tank) &&
      !configuration.tanks.includes(tank) &&
      fitsTo(tank.fits, engine) &&
      goesWith({ tanks: tick(catalogue.tanks, [tank.name], true) }),
  );
  const oxygen = catalogue.equipment.filter(
    ({ name, fits }) =>
      missed.has('oxygen') &&
      nameKey(name).includes('oxygen') &&
      fitsTo(fits, engine) &&
      goesWith({ equipment: tick(catalogue.equipment, [name], true) }),
  );
  return [
    ...[...single.map((name) => [name]), ...all].map((names) => `leave out ${names.join(', ')}`),
    ...[...tanks, ...oxygen].map(({ name }) => `fit ${name}`),
  ];
}

function coolerHour({ asked, distance }: Refused): string[] {
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
function lowerCruise({ asked, distance, answer }: Refused): string[] {
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

function lessToCarry({ asked, distance }: Refused): string[] {
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
function shorterWay({ asked, distance }: Refused): string[] {
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

function ballast({ asked, distance, answer }: Refused): string[] {
  const { airframe } = asked.context.catalogue;
  const { display } = asked.context;
  const worse = ({ loading }: MissionAnswer): LegBalance | undefined =>
    [loading?.out, loading?.back]
      .filter((balance) => balance !== undefined)
      .sort((one, other) => one.margin - other.margin)[0];
  const first = worse(answer);
  if (first === undefined || first.margin >= 0) return [];
  const aftwards = first.critical.side === 'forward' ? 1 : -1;
  const arm = [airframe.ballastArm, airframe.firewallArm].find(
    (place): place is number => place !== undefined && aftwards * (place - first.critical.limit) > 0,
  );
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
    if (now === undefined || now.margin >= 0 || now.critical.side !== first.critical.side) return [];
    // As much again as the worst state lacks, and a little more: it must end inside
    const target = now.critical.cg - aftwards * (now.margin - 1e-5);
    weight += ballastWeight(now.critical.weight, now.critical.cg, target, arm);
  }
  return [];
}

/**
 * Every single change, tried, that lets a refused mission go, the least troublesome first. Where there is none and it runs
 * hot, each is tried once more on top of the climb at the speed stated for it.
 */
export function missionRemedies(comparison: Comparison, assessment: Assessment): string[] {
  const { mission: answer } = assessment;
  const { distance } = comparison.context.catalogue.mission;
  if (answer?.verdict !== 'no' || distance === undefined) return [];
  const refused = { comparison, assessment, asked: answer.asked, distance, answer };
  const missed = (name: string) =>
    answer.conditions.some((each) => each.name === name && each.state === 'missed');
  // What the airframe does not allow no other day or load allows
  if (missed('limits')) return choices(refused);
  const others = [coolerHour, lowerCruise, choices, shorterWay, ballast, lessToCarry];
  const found = [hotClimb, ...others].flatMap((tried) => tried(refused));
  const { coolingClimbSpeed } = assessment.package;
  if (found.length > 0 || !missed('cooling') || coolingClimbSpeed === undefined) return found;
  const asked: MissionCase = { ...answer.asked, climb: 'cooling climb' };
  const slower = { ...refused, asked, answer: answerMission(asked, distance) };
  const speed = comparison.context.display.text('speed', coolingClimbSpeed);
  return others.flatMap((tried) => tried(slower)).map((text) => `climb at ${speed} true, and ${text}`);
}
