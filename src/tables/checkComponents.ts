import { nameKey } from './cell.ts';
import type { Component } from './components.ts';
import { conflict, rowNameOf } from './conflict.ts';
import type { FaultLog } from './faults.ts';

const keyOf = (packageName: string | undefined, name: string | undefined) =>
  `${nameKey(packageName ?? '')}|${nameKey(name ?? '')}`;

type Named = ReadonlyMap<string, readonly Component[]>;

function byName(components: readonly Component[]): Named {
  const named = new Map<string, Component[]>();
  for (const component of components) {
    const key = keyOf(component.package, component.name);
    named.set(key, [...(named.get(key) ?? []), component]);
  }
  return named;
}

/** Details name one lump of their package, which is in no other. */
function checkLumps(components: readonly Component[], named: Named, log: FaultLog): void {
  for (const { row, package: packageName, name, includedIn } of components) {
    if (includedIn === undefined || packageName === undefined) continue;
    const refuse = (expected: string) =>
      conflict(log, 'components', { row, rowName: rowNameOf(packageName, name) }, 'included in', expected);
    const [lump, ...others] = named.get(keyOf(packageName, includedIn)) ?? [];
    if (lump === undefined) refuse(`a component of ${packageName}`);
    else if (lump.includedIn !== undefined) refuse('a lump that is not part of another');
    else if (others.length > 0) refuse(`the name of one component; ${packageName} has several of this name`);
  }
}

/**
 * Every weight that counts has an arm, a lump without arm that of its details. A detail of a lump that has an arm needs
 * none, unless it is a fluid, which leaves the dry weight.
 */
function checkArms(components: readonly Component[], named: Named, log: FaultLog): void {
  const lumpOf = ({ package: packageName, includedIn }: Component) =>
    includedIn === undefined ? undefined : named.get(keyOf(packageName, includedIn))?.[0];
  const detailWeight = new Map<Component, number>();
  for (const component of components) {
    const lump = lumpOf(component);
    if (lump !== undefined) detailWeight.set(lump, (detailWeight.get(lump) ?? 0) + component.weight);
  }
  for (const component of components) {
    const { row, package: packageName, name, weight, arm, fluid } = component;
    if (arm !== undefined || weight === 0 || weight === undefined) continue;
    const refuse = (expected: string) =>
      conflict(log, 'components', { row, rowName: rowNameOf(packageName, name) }, 'arm', expected);
    const lump = lumpOf(component);
    const ofDetails = detailWeight.get(component);
    if (ofDetails === 0) refuse('an arm: the details included in this lump weigh nothing');
    else if (ofDetails === undefined && (fluid || lump?.arm === undefined))
      refuse('an arm, or details with arms that are included in this lump');
  }
}

/** Lumps and details, and arms. */
export function checkComponents(components: readonly Component[], log: FaultLog): void {
  const named = byName(components);
  checkLumps(components, named, log);
  const lumpsInDoubt = log.faults.some(
    ({ table, column, expected }) =>
      table === 'components' && (column === 'included in' || expected === '"included in"'),
  );
  if (!lumpsInDoubt) checkArms(components, named, log);
}
