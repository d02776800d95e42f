import { nameKey } from '../tables/cell.ts';
import type { Component } from '../tables/components.ts';
import type { Assessment, Comparison } from './assess.ts';
import { type Coins, coinsOf } from './money.ts';
import { type BoughtOption, bought, boughtOptions } from './price.ts';
import {
  notKnown,
  type QuoteCell,
  type QuoteRow,
  type QuoteSection,
  row,
  section,
  shownNumber,
} from './quoteSection.ts';

/** Something named in the scope of a quote. */
export interface ScopeLine {
  readonly name: string;
  /** what it is part of: the kit, the package, an option */
  readonly part: 'airframe kit' | 'engine package' | 'option';
  /** what a lump holds */
  readonly holds: readonly string[];
  readonly weight: number | undefined;
  /** in whole coins; undefined where it has none, null where the kit's price holds it */
  readonly price: number | undefined | null;
}

/** What is supplied for the price, what is not, and what nobody needs. */
export interface QuoteScope {
  readonly supplied: readonly ScopeLine[];
  /** by the builder, at his cost */
  readonly builder: readonly ScopeLine[];
  /** taken out of the aircraft for this package or option */
  readonly removed: readonly ScopeLine[];
  readonly notRequired: readonly string[];
  /** systems that other packages list and this one does not */
  readonly notListed: readonly string[];
}

function componentLine(component: Component, components: readonly Component[], coins: Coins): ScopeLine {
  const { name, weight, price } = component;
  const details = components.filter(
    ({ includedIn }) => includedIn !== undefined && nameKey(includedIn) === nameKey(name),
  );
  return {
    name,
    part: 'engine package',
    holds: details.map((detail) => detail.name),
    weight,
    price: price === undefined ? undefined : coins.of(price),
  };
}

export function quoteScope({ context, bareAirframe }: Comparison, assessment: Assessment): QuoteScope {
  const { airframe, currency } = context.catalogue;
  const { configuration, cost } = assessment;
  const coins = coinsOf(currency);
  const components = context.components.of(assessment.package.name);
  const bySupplier = (supplier: Component['suppliedBy']) =>
    components
      .filter((component) => bought(component) && component.suppliedBy === supplier)
      .map((component) => componentLine(component, components, coins));
  const option = ({ name, weight, price }: Pick<BoughtOption, 'name' | 'weight' | 'price'>): ScopeLine => ({
    name,
    part: 'option',
    holds: [],
    weight,
    price: price === undefined ? undefined : coins.of(price),
  });
  const options = boughtOptions(configuration);
  const kit: ScopeLine = {
    name: `${airframe.name} airframe kit`,
    part: 'airframe kit',
    holds: [],
    weight: bareAirframe.mass.nominal.weight,
    price: airframe.kitPrice === undefined ? undefined : coins.of(airframe.kitPrice),
  };
  const standard = configuration.equipment
    .filter((item) => item.standard)
    .map((item): ScopeLine => ({ ...option(item), part: 'airframe kit', price: null }));
  const removed = components
    .filter(({ weight, includedIn }) => weight < 0 && includedIn === undefined)
    .map((component) => componentLine(component, components, coins));
  return {
    supplied: [
      kit,
      ...standard,
      ...bySupplier('kit'),
      ...options.filter(({ suppliedBy }) => suppliedBy === 'kit').map(option),
    ],
    builder: [
      ...bySupplier('builder'),
      ...options.filter(({ suppliedBy }) => suppliedBy === 'builder').map(option),
    ],
    removed,
    notRequired: components.filter(({ suppliedBy }) => suppliedBy === 'not required').map(({ name }) => name),
    notListed: cost.scope.filter(({ weight }) => weight === undefined).map(({ system }) => system),
  };
}

function priceCell(line: ScopeLine, coins: Coins): QuoteCell {
  if (line.price === null) return 'in the kit';
  if (line.price === undefined) return 'no price';
  return { number: coins.amount(line.price), text: coins.text(line.price) };
}

/** Scope as two tables: what comes for the price, and what does not. */
export function scopeSections({ context }: Comparison, scope: QuoteScope): QuoteSection[] {
  const { display, catalogue } = context;
  const coins = coinsOf(catalogue.currency);
  const columns = ['Item', 'Part of', `Weight, ${display.unit('weight')}`, `Price, ${catalogue.currency}`];
  const line = (each: ScopeLine, price = priceCell(each, coins)): QuoteRow =>
    row(
      each.holds.length > 0 ? `${each.name}: ${each.holds.join(', ')}` : each.name,
      each.part,
      each.weight === undefined ? notKnown : shownNumber(display, 'weight', each.weight),
      price,
    );
  const builder = [
    ...scope.builder.map((each) => line(each)),
    ...scope.notListed.map((system) =>
      row(`${system}: nothing listed, other packages have it`, 'engine package', notKnown, 'no price'),
    ),
  ];
  const without = (names: readonly string[], text: string) =>
    names.length > 0 ? [`${text}: ${names.join(', ')}.`] : [];
  return [
    section(
      'Supplied',
      columns,
      [...scope.supplied.map((each) => line(each)), ...scope.removed.map((each) => line(each, 'taken out'))],
      [
        'Weights are nominal, as the tables hold them. The kit’s is without powerplant; equipment that was aboard when it was weighed is in it.',
      ],
    ),
    section(
      'Not supplied: to be bought by the builder',
      columns,
      builder.length > 0 ? builder : [row('nothing is listed', '', '', '')],
      [
        'Prices here are for orientation and not part of this quote.',
        ...without(scope.notRequired, 'Not required with this package'),
      ],
    ),
  ];
}
