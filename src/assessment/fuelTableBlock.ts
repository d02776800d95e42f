import type { Mixture } from '../engineering/aircraftInFlight.ts';
import { powerAvailable } from '../engineering/enginePower.ts';
import type { Cell } from '../tables/cell.ts';
import { toSi } from '../units.ts';
import type { Assessment, Comparison } from './assess.ts';
import { atSetting } from './fuelUse.ts';

type FuelAtSetting = ReturnType<typeof atSetting>;

interface PowerLeft {
  readonly power: number;
  readonly share: number;
}

const settings = Array.from({ length: 12 }, (_, step) => (45 + 5 * step) / 100);
const mixtures: readonly Mixture[] = ['rich', 'lean'];

/** Heights of the power table, as many in every unit so that what stands below keeps its place: up to where such aircraft go. */
const heights = (unit: 'ft' | 'm') =>
  Array.from({ length: 13 }, (_, step) => step * (unit === 'ft' ? 2000 : 600));

/** The fuel points of one mixture stand in for the other's where it has none: they are shown once, as lean. */
const repeatsLean = ({ engine: { consumption } }: Assessment, mixture: Mixture) =>
  mixture === 'rich' && consumption.rich === consumption.lean;

/**
 * FUEL_TABLE, for charts: fuel flow, below it endurance, by power setting, blank outside the fuel points; then the continuous
 * power that is left at altitude on a standard day. Every quantity has rows of its own and a column a curve, so that none
 * moves into another's place when packages come or go.
 */
export function fuelTableBlock(comparison: Comparison, assessments: readonly Assessment[]): Cell[][] {
  const { context } = comparison;
  const { display } = context;
  const curves = assessments.flatMap((assessment) =>
    mixtures.map((mixture) => ({
      assessment,
      mixture,
      blank: repeatsLean(assessment, mixture),
    })),
  );
  const fuel = settings.map((setting) =>
    curves.map(({ blank, assessment: { package: engine, engine: consumption, payload }, mixture }) =>
      blank ? undefined : atSetting(context, engine, consumption, payload, setting, mixture),
    ),
  );
  const bySetting = (title: string, value: (fuel: FuelAtSetting | undefined) => Cell): Cell[][] => [
    [title],
    ['power, % of MCP', ...curves.map(({ assessment, mixture }) => `${assessment.package.name} ${mixture}`)],
    ...settings.map((setting, index): Cell[] => [
      display.cell('percent', setting),
      ...(fuel[index] ?? []).map(value),
    ]),
  ];
  const { height } = display.units;
  const power = heights(height).map((shown) =>
    assessments.map(({ engine }) => {
      const { law, rated } = engine;
      const found = powerAvailable(law.continuous, rated.continuous, toSi('height', shown, height));
      return found.extrapolated ? undefined : { power: found.power, share: found.power / rated.continuous };
    }),
  );
  const byHeight = (title: string, value: (power: PowerLeft | undefined) => Cell): Cell[][] => [
    [title],
    [`pressure altitude, ${height}`, ...assessments.map(({ package: { name } }) => name)],
    ...heights(height).map((shown, index): Cell[] => [shown, ...(power[index] ?? []).map(value)]),
  ];
  const standard = 'at full throttle, standard day';
  return [
    ...bySetting(`Fuel flow, ${display.unit('fuelFlow')}; blank outside the fuel points`, (each) =>
      display.cell('fuelFlow', each?.flow),
    ),
    ...bySetting(`Endurance with full tanks and the reserve kept, ${display.unit('hours')}`, (each) =>
      display.cell('hours', each?.endurance),
    ),
    ...byHeight(`Continuous power ${standard}, ${display.unit('power')}`, (each) =>
      display.cell('power', each?.power),
    ),
    ...byHeight(`Share of the maximum continuous power ${standard}, %`, (each) =>
      display.cell('percent', each?.share),
    ),
  ];
}
