import type { Catalogue } from '../tables/catalogue.ts';
import { nameKey } from '../tables/cell.ts';
import type { Component } from '../tables/components.ts';
import type { CoolingStreamRow } from '../tables/cooling.ts';
import type { FuelPoint } from '../tables/fuelPoints.ts';
import type { Package } from '../tables/packages.ts';
import type { PowerPoint } from '../tables/powerPoints.ts';
import { type Display, displayIn, unitChoices } from './display.ts';

/** Rows by the package they belong to, however its name is typed. */
export interface ByPackage<R> {
  readonly of: (packageName: string) => readonly R[];
}

/** What all packages of one catalogue share, sorted once so that a package costs the same among ten or a thousand. */
export interface Context {
  readonly catalogue: Catalogue;
  readonly display: Display;
  readonly baseline: Package;
  /** the package aboard when the airframe was weighed */
  readonly weighedWith: Package | undefined;
  readonly components: ByPackage<Component>;
  readonly fuelPoints: ByPackage<FuelPoint>;
  readonly powerPoints: ByPackage<PowerPoint>;
  readonly cooling: ByPackage<CoolingStreamRow>;
  /** every system of the components table, with the packages that have it */
  readonly systems: ReadonlyMap<string, { readonly name: string; readonly packages: ReadonlySet<string> }>;
}

function byPackage<R extends { readonly package: string }>(rows: readonly R[]): ByPackage<R> {
  const groups = new Map<string, R[]>();
  for (const row of rows) {
    const key = nameKey(row.package);
    const group = groups.get(key);
    if (group) group.push(row);
    else groups.set(key, [row]);
  }
  return { of: (packageName) => groups.get(nameKey(packageName)) ?? [] };
}

function systemsOf(components: readonly Component[]): Context['systems'] {
  const systems = new Map<string, { name: string; packages: Set<string> }>();
  for (const { system, package: packageName } of components) {
    const key = nameKey(system);
    const entry = systems.get(key) ?? { name: system, packages: new Set<string>() };
    entry.packages.add(nameKey(packageName));
    systems.set(key, entry);
  }
  return systems;
}

/** The package of that name. @throws RangeError naming the packages there are */
export function packageNamed(catalogue: Catalogue, name: string): Package {
  const found = catalogue.packages.find((each) => nameKey(each.name) === nameKey(name));
  if (found === undefined) {
    const known = catalogue.packages.map((each) => each.name).join(', ');
    throw new RangeError(`package must be one of ${known}, got "${name}"`);
  }
  return found;
}

export function contextOf(catalogue: Catalogue): Context {
  const { airframe, packages } = catalogue;
  const named = (name: string | undefined) =>
    name === undefined ? undefined : packageNamed(catalogue, name);
  return {
    catalogue,
    display: displayIn(unitChoices(airframe), catalogue.currency),
    baseline: named(airframe.baseline) ?? (packages[0] as Package),
    weighedWith: named(airframe.weighedWith),
    components: byPackage(catalogue.components),
    fuelPoints: byPackage(catalogue.fuelPoints),
    powerPoints: byPackage(catalogue.powerPoints),
    cooling: byPackage(catalogue.cooling),
    systems: systemsOf(catalogue.components),
  };
}
