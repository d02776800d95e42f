import type { QuoteTerms } from '../tables/quote.ts';
import type { Assessment, Comparison } from './assess.ts';
import { type Coins, coinsOf } from './money.ts';
import type { QuoteScope, ScopeLine } from './quoteScope.ts';
import { money, percent, type QuoteSection, row, section, totalRow } from './quoteSection.ts';

/** One line of the price, in whole coins. */
export interface PriceLine {
  readonly name: string;
  readonly coins: number;
}

export interface Payment {
  readonly due: string;
  /** of the total with tax; undefined for what is left */
  readonly share: number | undefined;
  readonly coins: number;
}

/** The price of a quote in whole coins of its currency: every sum is that of the lines shown. */
export interface QuotePrice {
  readonly coins: Coins;
  readonly lines: readonly PriceLine[];
  /** of the lines */
  readonly price: number;
  readonly discount: number;
  readonly withoutTax: number;
  /** undefined where the rates name no tax: none is added then */
  readonly taxRate: number | undefined;
  readonly tax: number;
  readonly total: number;
  readonly payments: readonly Payment[];
  /** supplied without a price: the total is the least it can be */
  readonly unpriced: readonly string[];
}

const sum = (amounts: readonly number[]) => amounts.reduce((total, amount) => total + amount, 0);

function priceLines(supplied: readonly ScopeLine[], packageName: string): PriceLine[] {
  const priced = supplied.filter(
    (line): line is ScopeLine & { price: number } => typeof line.price === 'number',
  );
  const ofPackage = priced.filter(({ part }) => part === 'engine package');
  const single = (part: ScopeLine['part']) =>
    priced.filter((line) => line.part === part).map(({ name, price }) => ({ name, coins: price }));
  const items = ofPackage.length === 1 ? '1 item' : `${ofPackage.length} items`;
  return [
    ...single('airframe kit'),
    ...(ofPackage.length > 0
      ? [
          {
            name: `${packageName} engine package, ${items} as listed below`,
            coins: sum(ofPackage.map(({ price }) => price)),
          },
        ]
      : []),
    ...single('option'),
  ];
}

/** Steps of the payment: a rounded share each, and the rest with the last, so that they add up to the total. */
function paymentsOf(terms: QuoteTerms, deposit: number | undefined, total: number, coins: Coins): Payment[] {
  const given = [
    { share: terms.firstPayment, due: terms.firstDue ?? 'with the order' },
    { share: terms.secondPayment, due: terms.secondDue ?? 'second payment' },
    { share: terms.thirdPayment, due: terms.thirdDue ?? 'third payment' },
  ];
  const steps = given.every(({ share }) => share === undefined)
    ? [{ share: deposit, due: 'with the order' }]
    : given;
  const due = steps.filter((step): step is { share: number; due: string } => (step.share ?? 0) > 0);
  const payments = due.map(({ share, due: when }) => ({
    due: when,
    share,
    coins: coins.share(total, share),
  }));
  const rest = total - sum(payments.map((payment) => payment.coins));
  const isAll = sum(due.map(({ share }) => share)) > 1 - 1e-9;
  const last = payments[payments.length - 1];
  if (isAll && last !== undefined) {
    return [...payments.slice(0, -1), { ...last, coins: last.coins + rest }];
  }
  return [...payments, { due: 'on delivery', share: undefined, coins: rest }];
}

/** @throws RangeError when the discount is more than the price */
export function quotePrice(
  { context }: Comparison,
  assessment: Assessment,
  scope: QuoteScope,
  terms: QuoteTerms,
): QuotePrice {
  const { rates, currency } = context.catalogue;
  const coins = coinsOf(currency);
  const lines = priceLines(scope.supplied, assessment.package.name);
  const price = sum(lines.map((line) => line.coins));
  const discount = coins.of(terms.discount);
  if (discount > Math.max(0, price)) {
    throw new RangeError(
      `discount must be at most the price, ${coins.text(price)} ${currency}, got ${coins.text(discount)}`,
    );
  }
  const withoutTax = price - discount;
  const tax = coins.share(withoutTax, rates.tax ?? 0);
  const total = withoutTax + tax;
  return {
    coins,
    lines,
    price,
    discount,
    withoutTax,
    taxRate: rates.tax,
    tax,
    total,
    payments: paymentsOf(terms, rates.deposit, total, coins),
    unpriced: scope.supplied.filter((line) => line.price === undefined).map(({ name }) => name),
  };
}

export function priceSections(price: QuotePrice, terms: QuoteTerms, currency: string): QuoteSection[] {
  const { coins, discount, unpriced } = price;
  const total = unpriced.length > 0 ? 'Total, as far as priced' : 'Total';
  const tax = price.taxRate === undefined ? 'Tax: none given, none added' : 'Tax';
  const reason = terms.discountReason === undefined ? '' : ` for ${terms.discountReason}`;
  return [
    section(
      'Price',
      ['Item', '%', currency],
      [
        ...price.lines.map((line) => row(line.name, '', money(coins, line.coins))),
        ...(discount > 0
          ? [
              totalRow('Before discount', '', money(coins, price.price)),
              row(`Discount${reason}`, '', money(coins, -discount)),
            ]
          : []),
        totalRow('Without tax', '', money(coins, price.withoutTax)),
        row(tax, price.taxRate === undefined ? '' : percent(price.taxRate), money(coins, price.tax)),
        totalRow(total, '', money(coins, price.total)),
      ],
      [
        ...(unpriced.length > 0 ? [`Without a price, and not in the total: ${unpriced.join(', ')}.`] : []),
        ...(terms.remark === undefined ? [] : [terms.remark]),
      ],
    ),
    section(
      'Payment',
      ['Due', '%', currency],
      [
        ...price.payments.map(({ due, share, coins: amount }) =>
          row(due, share === undefined ? 'the rest' : percent(share), money(coins, amount)),
        ),
        totalRow('Together', '', money(coins, price.total)),
      ],
    ),
  ];
}
