import type { Component } from '../tables/components.ts';
import type { Package } from '../tables/packages.ts';
import { type Configuration, isStandardTank } from './configuration.ts';
import type { Context } from './context.ts';
import type { Finding } from './finding.ts';

/** What it costs to buy, without running costs. */
export interface Price {
  readonly kit: number | undefined;
  /** components the package supplies */
  readonly powerplant: number;
  /** options and tanks ticked beyond the standard ones */
  readonly options: number;
  /** what the builder must still buy, of components and options */
  readonly builder: number;
  /** kit, powerplant and options, without tax */
  readonly total: number;
  readonly tax: number;
  /** false where a price is missing: the amounts are then the least they can be */
  readonly complete: boolean;
  /** the longest of kit, package and components */
  readonly leadTime: number | undefined;
  readonly longestItem: string | undefined;
  readonly buildTime: number | undefined;
  readonly findings: readonly Finding[];
}

const sum = (prices: readonly (number | undefined)[]) =>
  prices.reduce<number>((total, price) => total + (price ?? 0), 0);

/** Rows that somebody has to buy: not what a lump holds, not what is taken out. */
export const bought = ({ includedIn, weight, suppliedBy }: Component) =>
  includedIn === undefined && weight >= 0 && suppliedBy !== 'not required';

/** Something chosen beyond the kit: an item of equipment or a tank. */
export interface BoughtOption {
  readonly name: string;
  readonly weight: number;
  readonly price: number | undefined;
  readonly suppliedBy: 'kit' | 'builder';
  readonly table: 'equipment' | 'tanks';
}

export const boughtOptions = ({ equipment, tanks }: Configuration): BoughtOption[] => [
  ...equipment
    .filter(({ standard }) => !standard)
    .map((item): BoughtOption => ({ ...item, table: 'equipment' })),
  ...tanks
    .filter((tank) => !isStandardTank(tank))
    .map((tank): BoughtOption => ({ ...tank, suppliedBy: 'kit', table: 'tanks' })),
];

/** Rows that must have a price; fluids may have one. */
const priced = (component: Component) => bought(component) && !component.fluid;

function priceFindings(
  context: Context,
  engine: Package,
  components: readonly Component[],
  options: readonly BoughtOption[],
): Finding[] {
  const finding = (subject: string, text: string, source: string): Finding => ({
    gravity: 'check',
    package: engine.name,
    subject,
    source,
    text,
  });
  const undated = components.filter(
    (each) => priced(each) && each.suppliedBy === 'kit' && each.weight > 0 && each.leadTime === undefined,
  );
  const unpricedComponents = components.filter((each) => priced(each) && each.price === undefined);
  const findings: Finding[] = [];
  if (context.catalogue.airframe.kitPrice === undefined) {
    findings.push({
      ...finding('kit price', 'not given: the total is without the airframe', 'airframe table'),
      package: '',
    });
  }
  if (undated.length > 0) {
    const names = undated.map(({ name }) => name).join(', ');
    const text = `no lead time for ${names}: delivery may take longer than shown`;
    findings.push({ ...finding('lead time', text, 'components table'), gravity: 'note' });
  }
  if (unpricedComponents.length > 0) {
    const names = unpricedComponents.map(({ name }) => name).join(', ');
    findings.push(finding('price', `no price for ${names}: the total is too low`, 'components table'));
  }
  for (const table of ['equipment', 'tanks'] as const) {
    const unpriced = options.filter((option) => option.table === table && option.price === undefined);
    if (unpriced.length === 0) continue;
    const names = unpriced.map(({ name }) => name).join(', ');
    findings.push(finding('price', `no price for ${names}: the total is too low`, `${table} table`));
  }
  return findings;
}

export function priceOf(context: Context, engine: Package, configuration: Configuration): Price {
  const { airframe, rates } = context.catalogue;
  const components = context.components.of(engine.name);
  const own = components.filter(bought);
  const options = boughtOptions(configuration);
  const bySupplier = (supplier: string) =>
    sum(own.filter(({ suppliedBy }) => suppliedBy === supplier).map(({ price }) => price));
  const powerplant = bySupplier('kit');
  const optionPrice = sum(options.filter(({ suppliedBy }) => suppliedBy === 'kit').map(({ price }) => price));
  const total = (airframe.kitPrice ?? 0) + powerplant + optionPrice;
  const deliveries = [
    { name: `${airframe.name} kit`, leadTime: airframe.kitLeadTime },
    { name: engine.name, leadTime: engine.leadTime },
    ...components.map(({ name, leadTime }) => ({ name, leadTime })),
  ].filter((delivery): delivery is { name: string; leadTime: number } => delivery.leadTime !== undefined);
  const longest = deliveries.reduce<{ name: string; leadTime: number } | undefined>(
    (last, delivery) => (last === undefined || delivery.leadTime > last.leadTime ? delivery : last),
    undefined,
  );
  const buildTimes = [airframe.buildHours, engine.buildHours];
  return {
    kit: airframe.kitPrice,
    powerplant,
    options: optionPrice,
    builder:
      bySupplier('builder') +
      sum(options.filter(({ suppliedBy }) => suppliedBy === 'builder').map(({ price }) => price)),
    total,
    tax: total * (rates.tax ?? 0),
    complete:
      airframe.kitPrice !== undefined &&
      [...components.filter(priced), ...options].every(({ price }) => price !== undefined),
    leadTime: longest?.leadTime,
    longestItem: longest?.name,
    buildTime: buildTimes.every((hours) => hours === undefined) ? undefined : sum(buildTimes),
    findings: priceFindings(context, engine, components, options),
  };
}
