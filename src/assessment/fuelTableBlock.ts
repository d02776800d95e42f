import { powerAvailable } from '../engineering/enginePower.ts';
import type { Cell } from '../tables/cell.ts';
import { toSi } from '../units.ts';
import type { Assessment, Comparison } from './assess.ts';
import type { Mixture } from './engine.ts';
import { atSetting } from './fuelUse.ts';

const settings = Array.from({ length: 12 }, (_, step) => (45 + 5 * step) / 100);
const mixtures: readonly Mixture[] = ['rich', 'lean'];

/** Heights of the power table: every 2,000 ft or 500 m up to where such aircraft go. */
const heights = (unit: 'ft' | 'm') =>
  Array.from({ length: unit === 'ft' ? 13 : 15 }, (_, step) => step * (unit === 'ft' ? 2000 : 500));

/** The fuel points of one mixture stand in for the other's where it has none: they are shown once, as lean. */
const repeatsLean = ({ engine: { consumption } }: Assessment, mixture: Mixture) =>
  mixture === 'rich' && consumption.rich === consumption.lean;

/**
 * FUEL_TABLE, for charts: fuel flow and endurance by power setting, blank outside the fuel points; below it the continuous
 * power that is left at altitude on a standard day.
 */
export function fuelTableBlock(comparison: Comparison, assessments: readonly Assessment[]): Cell[][] {
  const { context } = comparison;
  const { display } = context;
  const curves = assessments.flatMap((assessment) =>
    mixtures.map((mixture) => ({
      ...assessment,
      mixture,
      name: `${assessment.package.name} ${mixture}`,
      blank: repeatsLean(assessment, mixture),
    })),
  );
  const names = curves.map(({ name }) => name);
  const { height } = display.units;
  return [
    [
      `Fuel flow, ${display.unit('fuelFlow')}; endurance with full tanks and the reserve kept, ${display.unit('hours')}; blank outside the fuel points`,
    ],
    ['power, % of MCP', ...names, ...names.map((name) => `${name}, endurance`)],
    ...settings.map((setting): Cell[] => {
      const fuel = curves.map(({ blank, package: engine, engine: consumption, payload, mixture }) =>
        blank ? undefined : atSetting(context, engine, consumption, payload, setting, mixture),
      );
      return [
        display.cell('percent', setting),
        ...fuel.map((each) => display.cell('fuelFlow', each?.flow)),
        ...fuel.map((each) => display.cell('hours', each?.endurance)),
      ];
    }),
    [`Continuous power at full throttle, standard day, ${display.unit('power')}; share of MCP, %`],
    [
      `pressure altitude, ${height}`,
      ...assessments.map(({ package: { name } }) => name),
      ...assessments.map(({ package: { name } }) => `${name}, % of MCP`),
    ],
    ...heights(height).map((shown): Cell[] => {
      const power = assessments.map(({ engine }) =>
        powerAvailable(engine.law.continuous, engine.rated.continuous, toSi('height', shown, height)),
      );
      const known = power.map(({ power: watts, extrapolated }) => (extrapolated ? undefined : watts));
      return [
        shown,
        ...known.map((watts) => display.cell('power', watts)),
        ...known.map((watts, index) =>
          display.cell(
            'percent',
            watts && watts / (assessments[index] as Assessment).engine.rated.continuous,
          ),
        ),
      ];
    }),
  ];
}
