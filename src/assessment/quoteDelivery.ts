import type { Component } from '../tables/components.ts';
import type { QuoteTerms } from '../tables/quote.ts';
import type { Assessment, Comparison } from './assess.ts';
import { bought } from './price.ts';
import { type QuoteSection, row, section, shownNumber } from './quoteSection.ts';

const mostShown = 6; // items; the others are said to be no longer

/** Who delivers what when: the longest item first, because it decides. */
export function deliverySection(
  { context }: Comparison,
  assessment: Assessment,
  terms: QuoteTerms,
): QuoteSection {
  const { display, catalogue } = context;
  const { package: engine, price } = assessment;
  const components = context.components.of(engine.name);
  const supplier = ({ suppliedBy }: Component) => (suppliedBy === 'builder' ? 'builder' : 'seller');
  const { name: airframe, kitLeadTime } = catalogue.airframe;
  const kit = { name: `${airframe} airframe kit`, leadTime: kitLeadTime, by: 'seller' };
  const known = [
    kit,
    { name: `${engine.name} engine package`, leadTime: engine.leadTime, by: 'seller' },
    ...components
      .filter(({ suppliedBy }) => suppliedBy !== 'not required')
      .map((component) => ({ name: component.name, leadTime: component.leadTime, by: supplier(component) })),
  ]
    .filter((item): item is { name: string; leadTime: number; by: string } => item.leadTime !== undefined)
    .sort((one, other) => other.leadTime - one.leadTime);
  const unknown = [
    ...(kit.leadTime === undefined ? [kit.name] : []),
    ...components
      .filter(
        (each) => bought(each) && each.suppliedBy === 'kit' && !each.fluid && each.leadTime === undefined,
      )
      .map(({ name }) => name),
  ];
  const rest = known.length - mostShown;
  return section(
    'Delivery',
    ['Item, the longest first', 'Supplied by', `Lead time, ${display.unit('weeks')}`],
    known.length === 0
      ? [row('no lead time is known', '', '')]
      : known
          .slice(0, mostShown)
          .map(({ name, leadTime, by }) => row(name, by, shownNumber(display, 'weeks', leadTime))),
    [
      ...(rest > 0 ? [`${rest} more with a lead time no longer than these.`] : []),
      ...(unknown.length > 0 ? [`No lead time given, delivery may take longer: ${unknown.join(', ')}.`] : []),
      ...(price.buildTime === undefined
        ? []
        : [`To build, as far as stated: ${display.text('wholeHours', price.buildTime)}.`]),
      ...(terms.delivery === undefined ? [] : [`Delivery: ${terms.delivery}`]),
    ],
  );
}
