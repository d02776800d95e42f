import { nameKey } from './cell.ts';
import type { Component } from './components.ts';
import { conflict } from './conflict.ts';
import type { FaultLog } from './faults.ts';

const keyOf = (packageName: string | undefined, name: string | undefined) =>
  `${nameKey(packageName ?? '')}|${nameKey(name ?? '')}`;

function byName(components: readonly Component[]): ReadonlyMap<string, readonly Component[]> {
  const named = new Map<string, Component[]>();
  for (const component of components) {
    const key = keyOf(component.package, component.name);
    named.set(key, [...(named.get(key) ?? []), component]);
  }
  return named;
}

/**
 * Lumps: the one named exists once and is in no other, and every weight that counts has an arm, a lump without arm that of
 * its details. A detail of a lump that has an arm needs none, unless it is a fluid, which leaves the dry weight.
 */
export function checkComponents(components: readonly Component[], log: FaultLog): void {
  const named = byName(components);
  const lumpOf = ({ package: packageName, includedIn }: Component) =>
    includedIn === undefined ? undefined : named.get(keyOf(packageName, includedIn))?.[0];
  const detailWeight = new Map<Component, number>();
  for (const component of components) {
    const lump = lumpOf(component);
    if (lump !== undefined) detailWeight.set(lump, (detailWeight.get(lump) ?? 0) + component.weight);
  }
  for (const component of components) {
    const { row, package: packageName, name, includedIn, weight } = component;
    const place = { row, rowName: `${packageName}, ${name}` };
    const refuse = (column: string, expected: string) => conflict(log, 'components', place, column, expected);
    const lump = lumpOf(component);
    if (includedIn !== undefined && packageName !== undefined) {
      if (lump === undefined) refuse('included in', `a component of ${packageName}`);
      else if (lump.includedIn !== undefined) refuse('included in', 'a lump that is not part of another');
      else if ((named.get(keyOf(packageName, includedIn)) ?? []).length > 1)
        refuse('included in', `the name of one component; ${packageName} has several of this name`);
    }
    if (component.arm !== undefined || weight === 0 || weight === undefined) continue;
    const detailCounts = component.fluid || lump === undefined || lump.arm === undefined;
    if (!detailWeight.has(component)) {
      if (detailCounts) refuse('arm', 'an arm, or details with arms that are included in this lump');
    } else if (detailWeight.get(component) === 0)
      refuse('arm', 'an arm: the details included in this lump weigh nothing');
  }
}
