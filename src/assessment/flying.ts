import type { Catalogue } from '../tables/catalogue.ts';
import type { Assessment } from './assess.ts';
import { configure } from './configuration.ts';
import { type Context, contextOf, packageNamed } from './context.ts';
import { coolingOf } from './cooling.ts';
import { bareAirframe } from './emptyAircraft.ts';
import { engineOf } from './engine.ts';
import { flightOf } from './flight.ts';
import { flownAirframe } from './knownFlights.ts';

/** The part of an assessment that flight is shown from. */
export type Flying = Pick<Assessment, 'package' | 'engine' | 'flight'>;

/** And its cooling. */
export type Cooled = Flying & Pick<Assessment, 'cooling'>;

/**
 * The flight of all packages, or of the one named, without the rest of their assessment: a block of it alone is quicker so.
 * @throws RangeError naming the packages there are
 */
export function flyingPackages(
  catalogue: Catalogue,
  packageName: string | undefined,
): { readonly context: Context; readonly flying: readonly Flying[] } {
  const context = contextOf(catalogue);
  const flown = flownAirframe(context, bareAirframe(context).equipment);
  const packages = packageName === undefined ? catalogue.packages : [packageNamed(catalogue, packageName)];
  const flying = packages.map((engine): Flying => {
    const curves = engineOf(context, engine);
    const { flight } = flightOf(context, flown, engine, curves, configure(catalogue, engine));
    return { package: engine, engine: curves, flight };
  });
  return { context, flying };
}

export const withCooling = (context: Context, flying: readonly Flying[]): Cooled[] =>
  flying.map((each) => ({ ...each, cooling: coolingOf(context, each.package, each.flight).cooling }));
