import type { Cell } from '../tables/cell.ts';
import type { Assessment, Comparison } from './assess.ts';
import { comparisonLines } from './comparisonLines.ts';
import { type Condition, conditionName } from './condition.ts';
import type { Display } from './display.ts';
import { missionRemedies } from './missionRemedies.ts';
import { missionFigures, missionTitle, verdictText } from './missionRows.ts';
import { cgShiftOf } from './optionCosts.ts';

/** What is left of a condition, or in a word how it stands. */
function conditionCell(condition: Condition | undefined, display: Display): Cell {
  if (condition === undefined) return 'not known';
  const { state, shown, margin } = condition;
  if (shown !== undefined) return display.cell(shown, margin);
  return { met: 'yes', missed: 'NO', 'not known': 'not known', open: 'no data', 'not asked': '–' }[state];
}

/** Every condition, its margin under each package; the first package that has a number for it names the unit. */
function conditionLines(assessments: readonly Assessment[], display: Display): Cell[][] {
  const columns = assessments.map(({ mission }) => mission?.conditions ?? []);
  return (columns[0] ?? []).map((condition, index) => {
    const own = columns.map((conditions) => conditions[index]);
    const shown = own.find((each) => each?.shown !== undefined)?.shown;
    return [
      conditionName(condition),
      shown ? display.unit(shown) : '',
      ...own.map((each) => conditionCell(each, display)),
    ];
  });
}

function inWords(assessments: readonly Assessment[]): Cell[][] {
  return assessments.flatMap(({ package: { name }, mission }) =>
    (mission?.conditions ?? [])
      .filter(({ state }) => state === 'missed' || state === 'not known' || state === 'open')
      .map((condition): Cell[] => [name, conditionName(condition), condition.text]),
  );
}

function seats({ context }: Comparison, { mission, package: { name } }: Assessment): Cell[] {
  const { loads } = mission?.loading?.seating ?? {};
  const taken = context.catalogue.stations
    .map((station, index) => ({ name: station.name, load: loads?.[index] ?? 0 }))
    .filter(({ load }) => load > 0)
    .map((station) => `${station.name} ${context.display.text('payload', station.load)}`);
  return [name, taken.length > 0 ? taken.join(', ') : 'not known'];
}

function optionLines({ context }: Comparison, assessments: readonly Assessment[]): Cell[][] {
  const { display, catalogue } = context;
  return catalogue.equipment.map((option): Cell[] => [
    option.name,
    option.standard ? 'standard' : option.fitted ? 'fitted' : '',
    display.cell('weight', -option.weight),
    display.cell('money', option.price) ?? 'not known',
    ...assessments.map((assessment) => display.cell('arm', cgShiftOf(option, assessment))),
    [
      ...(option.needs.length > 0 ? [`needs ${option.needs.join(', ')}`] : []),
      ...(option.excludes.length > 0 ? [`not with ${option.excludes.join(', ')}`] : []),
    ].join('; '),
  ]);
}

/** MISSION_CHECK: yes or no for every package, the margin on every condition, what would let it go, what options cost. */
export function missionBlock(comparison: Comparison, assessments: readonly Assessment[]): Cell[][] {
  const { context } = comparison;
  const { display, catalogue } = context;
  if (catalogue.mission.distance === undefined) {
    return [['No mission: the mission table gives no distance.']];
  }
  const names = assessments.map((each) => each.package.name);
  const words = inWords(assessments);
  const remedies = assessments.flatMap((assessment): Cell[][] => {
    const found = missionRemedies(comparison, assessment);
    if (assessment.mission?.verdict !== 'no') return [];
    const { name } = assessment.package;
    return found.length > 0 ? found.map((text) => [name, text]) : [[name, 'no single change that was tried']];
  });
  const line = (label: string, of: (assessment: Assessment) => Cell): Cell[] => [
    label,
    '',
    ...assessments.map(of),
  ];
  return [
    [missionTitle(comparison), 'unit', ...names],
    line('can it', ({ mission }) => (mission ? verdictText(mission) : 'not known')),
    line('stopped first by', ({ mission }) =>
      mission && mission.verdict !== 'yes' ? conditionName(mission.scarcest) : '–',
    ),
    line('scarcest otherwise', ({ mission }) =>
      mission?.verdict === 'yes' ? conditionName(mission.scarcest) : '–',
    ),
    ['What is left of each condition; negative is missing'],
    ...conditionLines(assessments, display),
    ['The flights, with the least fuel that leaves the reserve'],
    ...comparisonLines(missionFigures, comparison, assessments),
    ['In words'],
    ...words,
    [
      'all',
      'not looked at',
      'landing distance, obstacles beyond 50 ft, weather on the way, an engine that stops',
    ],
    ['What would let it go, each tried by itself'],
    ...(remedies.length > 0 ? remedies : [['nothing is refused']]),
    ['Seated'],
    ...assessments.map((assessment) => seats(comparison, assessment)),
    ['What each option does'],
    ['Option', 'State', 'Payload', 'Price', ...names.map((name) => `${name}, empty CG`), 'Conditions'],
    ['', '', display.unit('weight'), display.unit('money'), ...names.map(() => display.unit('arm'))],
    ...optionLines(comparison, assessments),
  ];
}
