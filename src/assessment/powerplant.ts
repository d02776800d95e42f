import type { MassItemWithBasis } from '../engineering/expectedWeight.ts';
import { centreOfGravity, type MassItem, type MassTotal, total } from '../engineering/massItem.ts';
import { nameKey } from '../tables/cell.ts';
import type { Component } from '../tables/components.ts';
import type { Package } from '../tables/packages.ts';
import type { Context } from './context.ts';
import type { Finding } from './finding.ts';

/** A weight of the build-up by the name it has in its table. */
export interface NamedMass extends MassItemWithBasis {
  readonly name: string;
}

/** The weight build-up of one package. */
export interface Powerplant {
  /** one item for each weight that counts: lumps, not their details */
  readonly items: readonly NamedMass[];
  /** oil and coolant among them */
  readonly fluids: readonly NamedMass[];
  readonly installed: MassTotal;
  readonly dry: MassTotal;
  readonly findings: readonly Finding[];
}

const lumpTolerance = 0.02; // a lump and its details may differ by this share; common practice, no source

/** Arm from the datum, positive aft, whichever the supplier measured from. */
export function armOf(
  { arm, armFrom }: Pick<Component, 'arm' | 'armFrom'>,
  firewallArm: number,
): number | undefined {
  if (arm === undefined) return undefined;
  return armFrom === 'firewall' ? firewallArm - arm : arm;
}

/** Details by the name of the lump that holds them. */
function detailsByLump(components: readonly Component[]): Map<string, Component[]> {
  const details = new Map<string, Component[]>();
  for (const component of components) {
    if (component.includedIn === undefined) continue;
    const key = nameKey(component.includedIn);
    details.set(key, [...(details.get(key) ?? []), component]);
  }
  return details;
}

function massOf(component: Component, firewallArm: number, details: readonly Component[]): NamedMass {
  const { name, weight, basis } = component;
  const ownArm = armOf(component, firewallArm);
  const parts = details.map(
    (detail): MassItem => ({ weight: detail.weight, arm: armOf(detail, firewallArm) ?? 0 }),
  );
  // A weight of zero has no place: its arm does not matter
  const arm = ownArm ?? (parts.length > 0 && weight !== 0 ? centreOfGravity(total(parts)) : firewallArm);
  return { name, weight, arm, basis };
}

function lumpFindings(
  engine: Package,
  components: readonly Component[],
  details: ReadonlyMap<string, readonly Component[]>,
): Finding[] {
  return components.flatMap((lump): Finding[] => {
    const parts = details.get(nameKey(lump.name));
    if (parts === undefined) return [];
    const sum = parts.reduce((weight, part) => weight + part.weight, 0);
    if (Math.abs(sum - lump.weight) <= lumpTolerance * Math.abs(lump.weight)) return [];
    return [
      {
        gravity: 'check',
        package: engine.name,
        subject: lump.name,
        shown: 'weight',
        value: sum,
        limit: lump.weight,
        source: lump.source ?? 'components table',
        text: 'the details do not add up to the lump; the lump counts',
      },
    ];
  });
}

/** Systems that other packages have and this one does not name: something forgotten, not something saved. */
export function missingSystems(context: Context, engine: Package): { name: string; elsewhere: number }[] {
  const key = nameKey(engine.name);
  return [...context.systems.values()]
    .filter(({ packages }) => !packages.has(key))
    .map(({ name, packages }) => ({ name, elsewhere: packages.size }));
}

function forgottenSystems(context: Context, engine: Package): Finding[] {
  return missingSystems(context, engine).map(({ name, elsewhere }) => ({
    gravity: 'check',
    package: engine.name,
    subject: name,
    source: 'components table',
    text: `no component of this system, which ${elsewhere === 1 ? 'another package has' : `${elsewhere} packages have`}; add it, or say "not required"`,
  }));
}

export function powerplantOf(context: Context, engine: Package): Powerplant {
  const { firewallArm } = context.catalogue.airframe;
  const components = context.components.of(engine.name);
  const details = detailsByLump(components);
  const counted = components.filter(({ includedIn }) => includedIn === undefined);
  const mass = (component: Component) =>
    massOf(component, firewallArm, details.get(nameKey(component.name)) ?? []);
  const items = counted.map(mass);
  // A fluid in a lump of fluids is drained with it
  const fluidLumps = new Set(components.filter(({ fluid }) => fluid).map(({ name }) => nameKey(name)));
  const fluids = components
    .filter(({ fluid, includedIn }) => fluid && !fluidLumps.has(nameKey(includedIn ?? '')))
    .map(mass);
  const noComponents: Finding[] =
    components.length > 0
      ? []
      : [
          {
            gravity: 'stop',
            package: engine.name,
            subject: 'components',
            source: 'components table',
            text: 'has no components: its weight is not known',
          },
        ];
  return {
    items,
    fluids,
    installed: total(items),
    dry: total([...items, ...fluids.map((fluid) => ({ ...fluid, weight: -fluid.weight }))]),
    findings: [
      ...noComponents,
      ...lumpFindings(engine, components, details),
      ...(components.length > 0 ? forgottenSystems(context, engine) : []),
    ],
  };
}
