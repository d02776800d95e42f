import type { Package } from '../tables/packages.ts';
import type { Configuration } from './configuration.ts';
import type { Context } from './context.ts';
import { missingSystems } from './powerplant.ts';
import { bought } from './price.ts';

/** Something that the package does not bring and that must be bought before it flies. */
export interface ScopeItem {
  readonly name: string;
  readonly system: string;
  /** undefined where it is in no table */
  readonly weight: number | undefined;
  readonly price: number | undefined;
}

/** What the builder must still buy: components and options by name, and systems that only other packages list. */
export function scopeOf(context: Context, engine: Package, { equipment }: Configuration): ScopeItem[] {
  const components = context.components
    .of(engine.name)
    .filter((component) => bought(component) && component.suppliedBy === 'builder')
    .map(({ name, system, weight, price }) => ({ name, system, weight, price }));
  const options = equipment
    .filter(({ standard, suppliedBy }) => !standard && suppliedBy === 'builder')
    .map(({ name, weight, price }) => ({ name, system: 'option', weight, price }));
  const forgotten = missingSystems(context, engine).map(({ name }) => ({
    name: `${name}: nothing listed, other packages have it`,
    system: name,
    weight: undefined,
    price: undefined,
  }));
  return [...components, ...options, ...forgotten];
}
