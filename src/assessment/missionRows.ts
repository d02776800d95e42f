import type { Assessment, Comparison } from './assess.ts';
import type { ComparisonRow } from './comparisonRows.ts';
import type { Shown } from './display.ts';
import { burntFuel, flownTime, type Mission, missionPrice } from './mission.ts';

/** `Mission: 4 × 180 lb, 60 lb of bags, 350 nmi` */
export function missionTitle({ context: { catalogue, display } }: Comparison): string {
  const { persons, personWeight, bags, distance = 0 } = catalogue.mission;
  const people = `${persons} × ${display.text('payload', personWeight)}`;
  return `Mission: ${people}, ${display.text('payload', bags)} of bags, ${display.text('distance', distance)}`;
}

const row = (
  label: string,
  shown: Shown | undefined,
  value: (mission: Mission, assessment: Assessment) => number | string | undefined,
): ComparisonRow => ({
  label,
  shown,
  differs: false,
  value: (assessment) => assessment.mission && value(assessment.mission, assessment),
});

/** The answer in a word or two: doubtful where only the stated weights let it go; `open` counts what was not looked at. */
export function verdictText({ verdict, open, asStatedOnly }: Mission): string {
  if (verdict === 'no') return asStatedOnly ? 'doubtful' : 'NO';
  if (verdict === 'not known') return 'not known';
  return open.length === 0 ? 'yes' : `yes, ${open.length} open`;
}

const times = row('  flying, out and back', 'hours', ({ legs }) => legs && flownTime(legs));
const price = row('  price of the flights', 'money', (mission, { cost }) => missionPrice(cost, mission));
const fuel = row(
  '  fuel burnt, out and back',
  'fuel',
  ({ legs, asked }) => legs && burntFuel(legs) / asked.engine.fuelDensity,
);

/** What the comparison shows of the mission. */
export const missionRows = ({ context }: Comparison): readonly ComparisonRow[] =>
  context.catalogue.mission.distance === undefined
    ? []
    : [
        row('can it', undefined, verdictText),
        row('  stopped by', undefined, ({ verdict, scarcest }) => (verdict === 'yes' ? '–' : scarcest.name)),
        times,
        fuel,
        price,
      ];

/** Figures of the flights, for the mission's own block. */
export const missionFigures: readonly ComparisonRow[] = [
  row('empty weight counted on', 'weight', ({ asked }) => asked.empty.weight),
  ...(['out', 'back'] as const).flatMap((leg, index) => [
    row(`flying, ${leg}`, 'hours', ({ legs }) => legs?.[index]?.flown.time),
    row(`fuel aboard, ${leg}`, 'fuel', ({ legs, asked }) => {
      const found = legs?.[index];
      return found && found.fuel / asked.engine.fuelDensity;
    }),
    row(`left on landing, ${leg}`, 'fuel', ({ legs, asked }) => {
      const found = legs?.[index];
      return found && found.fuelLeft / asked.engine.fuelDensity;
    }),
    row(`cruise, ${leg}, true`, 'speed', ({ legs }) => legs?.[index]?.flown.cruiseSpeed),
  ]),
  fuel,
  price,
];
