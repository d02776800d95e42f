import { nameKey } from '../tables/cell.ts';
import type { QuoteTerms } from '../tables/quote.ts';
import type { Assessment, Comparison } from './assess.ts';
import { cautions } from './cautions.ts';
import { byGravity, gravityLabels } from './finding.ts';
import { assumptionsSection } from './quoteAssumptions.ts';
import { deliverySection } from './quoteDelivery.ts';
import { performanceSection } from './quotePerformance.ts';
import { type LoadingPicture, loadingPicture } from './quotePicture.ts';
import { priceSections, quotePrice } from './quotePrice.ts';
import { quoteScope, scopeSections } from './quoteScope.ts';
import { money, type QuoteCell, type QuoteSection, row, section, shownNumber } from './quoteSection.ts';
import { balanceSections, weightSection } from './quoteWeights.ts';
import { softwareVersion } from './version.ts';

/** One of the figures that decide a sale; kept with an issued quote to say later what has become of it. */
export interface KeyFigure {
  readonly label: string;
  readonly value: QuoteCell;
  readonly unit: string;
}

/** A quote: plain data throughout, so that it can be kept as text and printed years later. */
export interface Quote {
  readonly airframe: string;
  readonly packageName: string;
  readonly dealer: readonly string[];
  readonly customer: readonly string[];
  readonly preparedBy: string;
  readonly validDays: number;
  readonly currency: string;
  readonly keyFigures: readonly KeyFigure[];
  readonly sections: readonly QuoteSection[];
  readonly picture: LoadingPicture;
  readonly softwareVersion: string;
}

const given = (lines: readonly (string | undefined)[]) =>
  lines.filter((line): line is string => line !== undefined);

function configurationSection(comparison: Comparison, assessment: Assessment): QuoteSection {
  const { catalogue } = comparison.context;
  const { package: engine, configuration } = assessment;
  const list = (names: readonly string[]) => (names.length > 0 ? names.join(', ') : 'none');
  const options = configuration.equipment.filter(({ standard }) => !standard).map(({ name }) => name);
  const description = engine.description === undefined ? '' : `: ${engine.description}`;
  return section(
    'Configuration',
    ['', ''],
    [
      row('Airframe', catalogue.airframe.name),
      row('Engine package', `${engine.name}${description}`),
      row('Tanks', list(configuration.tanks.map(({ name }) => name))),
      row('Options', list(options)),
    ],
  );
}

/** What stops this package or is doubtful of it. Notes are left to the workbook. */
function findingsSection({ findings }: Comparison, { package: engine }: Assessment): QuoteSection {
  const own = byGravity(findings).filter(
    (finding) =>
      finding.gravity !== 'note' &&
      (finding.package === '' || nameKey(finding.package) === nameKey(engine.name)),
  );
  return section(
    'Findings',
    ['', 'Subject', 'In words'],
    own.length > 0
      ? own.map(({ gravity, subject, text }) => row(gravityLabels[gravity], subject, text))
      : [row('none', '', '')],
  );
}

/**
 * The quote for the package that its terms name.
 * @throws RangeError when the discount is more than the price
 */
export function quoteOf(comparison: Comparison, terms: QuoteTerms): Quote {
  const { context } = comparison;
  const { display, catalogue } = context;
  const assessment = comparison.assessments.find(
    (each) => nameKey(each.package.name) === nameKey(terms.package),
  ) as Assessment; // readQuoteTerms has checked the name
  const scope = quoteScope(comparison, assessment);
  const price = quotePrice(comparison, assessment, scope, terms);
  const { payload, empty } = assessment;
  const figure = (label: string, shown: 'payload' | 'weight', value: number): KeyFigure => ({
    label,
    value: shownNumber(display, shown, value),
    unit: display.unit(shown),
  });
  return {
    airframe: catalogue.airframe.name,
    packageName: assessment.package.name,
    dealer: given([terms.dealer, terms.dealerStreet, terms.dealerTown, terms.dealerContact]),
    customer: given([terms.customer, terms.customerStreet, terms.customerTown, terms.customerContact]),
    preparedBy: terms.preparedBy ?? '',
    validDays: Math.round(terms.validity),
    currency: catalogue.currency,
    keyFigures: [
      {
        label: price.unpriced.length > 0 ? 'Total with tax, as far as priced' : 'Total with tax',
        value: money(price.coins, price.total),
        unit: catalogue.currency,
      },
      figure('Payload to be counted on, full tanks', 'payload', payload.fullFuel.countedOn),
      figure('Payload expected, full tanks', 'payload', payload.fullFuel.expected),
      figure('Empty weight expected', 'weight', empty.mass.expected.weight),
    ],
    sections: [
      configurationSection(comparison, assessment),
      ...priceSections(price, terms, catalogue.currency),
      weightSection(comparison, assessment),
      ...balanceSections(comparison, assessment),
      performanceSection(comparison, assessment),
      deliverySection(comparison, assessment, terms),
      ...scopeSections(comparison, scope),
      findingsSection(comparison, assessment),
      assumptionsSection(comparison, assessment, terms),
      section(
        'Cautions',
        [''],
        cautions.map((caution) => row(caution)),
      ),
    ],
    picture: loadingPicture(comparison, assessment),
    softwareVersion,
  };
}
