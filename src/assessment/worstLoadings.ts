import { type WorstMargins, worstMargins } from '../engineering/worstMargin.ts';
import type { Assessment } from './assess.ts';
import type { Context } from './context.ts';
import { everyLoading } from './everyLoading.ts';
import { fuelInTanks, tankStations } from './loadStations.ts';
import { lightestOf } from './worstCause.ts';

/** The worst of every loading with a given state of the tanks. */
export interface WorstLoading {
  readonly fuel: 'any' | 'minimum' | 'none';
  readonly margins: WorstMargins;
  /** weight of the lightest of them */
  readonly lightest: number;
}

/** The worst with any fuel, with the minimum fuel of a loading check, and with zero usable. */
export function worstLoadings(
  context: Context,
  { package: engine, configuration, empty, balance, fuel }: Assessment,
): WorstLoading[] {
  const stations = tankStations(engine, configuration.tanks);
  const fixedAt = (volumes: readonly number[]) =>
    stations.map((tank, index) => {
      const load = (volumes[index] ?? 0) * engine.fuelDensity;
      return { ...tank, minimum: load, maximum: load };
    });
  const states = [
    { fuel: 'any' as const, tanks: stations },
    ...(fuel.minimumFuel === undefined
      ? []
      : [{ fuel: 'minimum' as const, tanks: fixedAt(fuelInTanks(configuration.tanks, fuel.minimumFuel)) }]),
    { fuel: 'none' as const, tanks: fixedAt([]) },
  ];
  return states.flatMap(({ fuel: state, tanks }) => {
    const polygon = everyLoading(context, balance.envelope, empty.mass.nominal, tanks);
    if (polygon === undefined) return [];
    const margins = worstMargins(polygon, balance.envelope);
    return [{ fuel: state, margins, lightest: lightestOf(polygon) }];
  });
}
