import type { Component } from '../tables/components.ts';
import type { Package } from '../tables/packages.ts';
import type { Configuration } from './configuration.ts';
import type { Context } from './context.ts';
import type { Finding } from './finding.ts';

/** What it costs to buy, without running costs. */
export interface Price {
  readonly kit: number | undefined;
  /** components the package supplies */
  readonly powerplant: number;
  /** options ticked beyond the standard ones */
  readonly options: number;
  /** what the builder must still buy, of components and options */
  readonly builder: number;
  /** kit, powerplant and options, without tax */
  readonly total: number;
  readonly tax: number;
  /** false where a price is missing: the amounts are then the least they can be */
  readonly complete: boolean;
  /** the longest of package and components */
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

/** Rows that must have a price; fluids may have one. */
const priced = (component: Component) => bought(component) && !component.fluid;

function priceFindings(
  context: Context,
  engine: Package,
  components: readonly Component[],
  configuration: Configuration,
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
  const unpricedOptions = configuration.equipment.filter(
    ({ standard, price }) => !standard && price === undefined,
  );
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
  if (unpricedOptions.length > 0) {
    const names = unpricedOptions.map(({ name }) => name).join(', ');
    findings.push(finding('price', `no price for ${names}: the total is too low`, 'equipment table'));
  }
  return findings;
}

export function priceOf(context: Context, engine: Package, configuration: Configuration): Price {
  const { airframe, rates } = context.catalogue;
  const components = context.components.of(engine.name);
  const own = components.filter(bought);
  const options = configuration.equipment.filter(({ standard }) => !standard);
  const bySupplier = (supplier: string) =>
    sum(own.filter(({ suppliedBy }) => suppliedBy === supplier).map(({ price }) => price));
  const powerplant = bySupplier('kit');
  const optionPrice = sum(options.filter(({ suppliedBy }) => suppliedBy === 'kit').map(({ price }) => price));
  const total = (airframe.kitPrice ?? 0) + powerplant + optionPrice;
  const deliveries = [
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
    findings: priceFindings(context, engine, components, configuration),
  };
}
