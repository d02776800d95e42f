import type { Catalogue } from '../tables/catalogue.ts';
import { nameKey } from '../tables/cell.ts';
import { type Assessment, assess, type Comparison } from './assess.ts';
import { fitsTo, isStandardTank } from './configuration.ts';
import { answerMission } from './mission.ts';
import type { MissionCase } from './missionCase.ts';
import {
  ballast,
  coolerHour,
  goes,
  hotClimb,
  lessToCarry,
  lowerCruise,
  type Refused,
  shorterWay,
  unsettledChange,
} from './missionChanges.ts';

/** Options and tanks ticked or not; the package is assessed anew with each change. */
function choices({ comparison, assessment, asked, distance, answer }: Refused): string[] {
  const { context, bareAirframe, flown, baselineMoment } = comparison;
  const { catalogue } = context;
  const { package: engine, configuration } = assessment;
  const goesWith = (changes: Partial<Catalogue>) => {
    const other = { ...context, catalogue: { ...catalogue, ...changes } };
    const found = assess({ context: other, bareAirframe, flown, baselineMoment }, engine).mission;
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
  const known = found.filter((text) => !text.startsWith(unsettledChange));
  if (known.length > 0 || !missed('cooling') || coolingClimbSpeed === undefined) return found;
  const asked: MissionCase = { ...answer.asked, climb: 'cooling climb' };
  const slower = { ...refused, asked, answer: answerMission(asked, distance) };
  const speed = comparison.context.display.text('speed', coolingClimbSpeed);
  const slowed = others
    .flatMap((tried) => tried(slower))
    .map((text) => `climb at ${speed} true, and ${text}`);
  return [...found, ...slowed];
}
