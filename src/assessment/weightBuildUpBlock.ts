import { type Cell, nameKey } from '../tables/cell.ts';
import type { Component } from '../tables/components.ts';
import type { Comparison } from './assess.ts';

/** Groups that a stack shows by name; what weighs less is in "other". */
const groupCount = 6;

/** A weight that counts, and the system it belongs to. */
interface Share {
  readonly system: string;
  readonly weight: number;
  /** Taken out of the airframe. */
  readonly isRemoved: boolean;
}

/** Every lump by its details' systems; what the details leave of it stays in its own. Together the installed weight. */
function sharesOf(components: readonly Component[]): Share[] {
  return components
    .filter(({ includedIn }) => includedIn === undefined)
    .flatMap((component): Share[] => {
      const details = components.filter(
        ({ includedIn }) => includedIn !== undefined && nameKey(includedIn) === nameKey(component.name),
      );
      const rest = component.weight - details.reduce((sum, { weight }) => sum + weight, 0);
      const isRemoved = component.weight < 0;
      return [...details, { ...component, weight: rest }].map(({ system, weight }) => ({
        system,
        weight,
        isRemoved,
      }));
    });
}

const sum = (shares: readonly Share[]) => shares.reduce((total, { weight }) => total + weight, 0);

/** The heaviest systems of any package, by name. */
function groupsOf(all: readonly (readonly Share[])[]): string[] {
  const heaviest = new Map<string, { name: string; weight: number }>();
  for (const shares of all) {
    for (const key of new Set(shares.map(({ system }) => nameKey(system)))) {
      const own = shares.filter(({ system }) => nameKey(system) === key);
      const added = sum(own.filter(({ isRemoved }) => !isRemoved));
      const { name, weight } = heaviest.get(key) ?? { name: (own[0] as Share).system, weight: 0 };
      heaviest.set(key, { name, weight: Math.max(weight, added) });
    }
  }
  const ranked = [...heaviest.values()].sort((a, b) => b.weight - a.weight);
  return ranked.slice(0, groupCount).map(({ name }) => name);
}

/** WEIGHT_BUILD_UP, for a chart: a row a package, a column a system; what is removed from the airframe by itself. */
export function weightBuildUpBlock({ context, assessments }: Comparison): Cell[][] {
  const { components, display } = context;
  const shares = assessments.map(({ package: { name } }) => sharesOf(components.of(name)));
  const groups = groupsOf(shares);
  return [
    [`Weight, ${display.unit('weight')}`, ...groups, 'other', 'removed'],
    ...assessments.map(({ package: { name } }, index): Cell[] => {
      const own = shares[index] ?? [];
      const added = own.filter(({ isRemoved }) => !isRemoved);
      const ofGroup = (group: string) => added.filter(({ system }) => nameKey(system) === nameKey(group));
      const others = added.filter(
        ({ system }) => !groups.some((group) => nameKey(group) === nameKey(system)),
      );
      const removed = own.filter(({ isRemoved }) => isRemoved);
      return [
        name,
        ...[...groups.map(ofGroup), others, removed].map((each) => display.cell('weight', sum(each))),
      ];
    }),
  ];
}
