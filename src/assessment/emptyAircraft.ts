import {
  type ExpectedCg,
  type ExpectedMass,
  expectedCg,
  expectedMass,
} from '../engineering/expectedWeight.ts';
import { centreOfGravity } from '../engineering/massItem.ts';
import { nameKey } from '../tables/cell.ts';
import type { Equipment } from '../tables/equipment.ts';
import type { Package } from '../tables/packages.ts';
import type { Tank } from '../tables/tanks.ts';
import { type Configuration, isStandardTank } from './configuration.ts';
import type { Context } from './context.ts';
import { type NamedMass, type Powerplant, powerplantOf } from './powerplant.ts';

/** Basic empty weight and CG: unusable fuel, oil, coolant and the chosen options aboard. */
export interface EmptyAircraft {
  readonly items: readonly NamedMass[];
  readonly mass: ExpectedMass;
  readonly cg: number;
  readonly expectedCg: ExpectedCg;
}

const taken = (item: NamedMass): NamedMass => ({ ...item, weight: -item.weight });
const equipmentItem = ({ name, weight, arm, basis }: Equipment): NamedMass => ({ name, weight, arm, basis });

/** What the airframe brings to any package: as weighed, less the powerplant it was weighed with. */
export interface BareAirframe {
  readonly items: readonly NamedMass[];
  readonly mass: ExpectedMass;
  /** names of the equipment that is part of it */
  readonly equipment: ReadonlySet<string>;
}

function unusableFuel(tanks: readonly Tank[], density: number, basis: string): NamedMass[] {
  return tanks
    .filter(({ unusable }) => unusable > 0)
    .map(({ name, unusable, arm }) => ({
      name: `unusable fuel, ${name}`,
      weight: unusable * density,
      arm,
      basis,
    }));
}

/** The powerplant as it was aboard at the weighing: with fluids or without. */
function asWeighed(powerplant: Powerplant, withFluids: boolean): NamedMass[] {
  return withFluids ? [...powerplant.items] : [...powerplant.items, ...powerplant.fluids.map(taken)];
}

/** The airframe without powerplant, which nobody has on a scale: derived, with what is known of its uncertainty. */
export function bareAirframe(context: Context): BareAirframe {
  const { airframe, allowances, tanks } = context.catalogue;
  const { weighedWith } = context;
  const { emptyWeightKnownTo, emptyArmKnownTo } = airframe;
  const weighed = {
    name: 'airframe, empty weight',
    weight: airframe.emptyWeight,
    arm: airframe.emptyArm,
    basis: airframe.emptyBasis,
    known:
      emptyWeightKnownTo === undefined && emptyArmKnownTo === undefined
        ? undefined
        : { weight: emptyWeightKnownTo, arm: emptyArmKnownTo ?? 0 },
  };
  const powerplant =
    weighedWith === undefined ? [] : asWeighed(powerplantOf(context, weighedWith), airframe.weighedFluids);
  const fuel =
    weighedWith !== undefined && airframe.weighedUnusableFuel
      ? unusableFuel(tanks.filter(isStandardTank), weighedWith.fuelDensity, airframe.emptyBasis)
      : [];
  const items = [weighed, ...powerplant.map(taken), ...fuel.map(taken)];
  const equipment = (airframe.weighedItems ?? '').split(',').map(nameKey);
  return {
    items,
    mass: expectedMass(items, allowances),
    equipment: new Set(equipment.filter((name) => name !== '')),
  };
}

/** Options aboard that were not weighed, and options weighed that are not aboard. */
function equipmentChanges(context: Context, bare: BareAirframe, configuration: Configuration): NamedMass[] {
  const aboard = new Set(configuration.equipment.map(({ name }) => nameKey(name)));
  const added = configuration.equipment.filter(({ name }) => !bare.equipment.has(nameKey(name)));
  const removed = context.catalogue.equipment.filter(
    ({ name }) => bare.equipment.has(nameKey(name)) && !aboard.has(nameKey(name)),
  );
  return [...added.map(equipmentItem), ...removed.map(equipmentItem).map(taken)];
}

/** Rows that are subtracted and added again cancel: with the package it was weighed with, the weighing itself stands. */
function withoutCancelling(items: readonly NamedMass[]): NamedMass[] {
  const key = ({ arm, basis }: NamedMass, weight: number) => `${weight}|${arm}|${basis}`;
  const open = new Map<string, number[]>();
  const kept: (NamedMass | undefined)[] = [];
  for (const item of items) {
    const opposite = open.get(key(item, -item.weight));
    const at = opposite?.pop();
    if (at !== undefined) {
      kept[at] = undefined;
      continue;
    }
    const own = key(item, item.weight);
    open.set(own, [...(open.get(own) ?? []), kept.length]);
    kept.push(item);
  }
  return kept.filter((item): item is NamedMass => item !== undefined);
}

export function emptyAircraft(
  context: Context,
  bare: BareAirframe,
  engine: Package,
  powerplant: Powerplant,
  configuration: Configuration,
): EmptyAircraft {
  const { airframe, allowances } = context.catalogue;
  const optionalTanks = configuration.tanks
    .filter((tank) => !isStandardTank(tank) && tank.weight > 0)
    .map(({ name, weight, arm }) => ({ name, weight, arm, basis: airframe.emptyBasis }));
  // An airframe weighed without powerplant has its unusable fuel aboard already, or it is added here
  const fuelAboard = context.weighedWith === undefined && airframe.weighedUnusableFuel;
  const fuelTanks = fuelAboard
    ? configuration.tanks.filter((tank) => !isStandardTank(tank))
    : configuration.tanks;
  const items = withoutCancelling([
    ...bare.items,
    ...powerplant.items,
    ...unusableFuel(fuelTanks, engine.fuelDensity, airframe.emptyBasis),
    ...optionalTanks,
    ...equipmentChanges(context, bare, configuration),
  ]);
  const mass = expectedMass(items, allowances);
  if (Math.min(mass.nominal.weight, mass.expected.weight) <= 0)
    throw new RangeError(
      `the empty weight of the airframe must be more than what leaves with the package it was weighed with, got none left for ${engine.name}: see the weights of the airframe, components and equipment tables`,
    );
  return { items, mass, cg: centreOfGravity(mass.nominal), expectedCg: expectedCg(items, allowances) };
}
