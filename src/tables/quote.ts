import type { Catalogue } from './catalogue.ts';
import { type Grid, nameKey } from './cell.ts';
import { type Fault, FaultLog } from './faults.ts';
import { money, quantity, text } from './field.ts';
import { practice } from './practice.ts';
import { readAttributes } from './readAttributes.ts';
import type { RecordOf, Table } from './table.ts';

const share = (label: string, help: string) =>
  quantity('fraction', label, { atLeast: 0, atMost: 100, in: '%', help });

const fields = {
  package: text('package', { required: true, help: 'the package quoted' }),
  customer: text('customer', { help: 'name' }),
  customerStreet: text('customer street', { help: 'first line of the address' }),
  customerTown: text('customer town', { help: 'second line of the address' }),
  customerContact: text('customer contact', { help: 'telephone, mail' }),
  dealer: text('dealer', { help: 'name of the firm' }),
  dealerStreet: text('dealer street', { help: 'first line of the address' }),
  dealerTown: text('dealer town', { help: 'second line of the address' }),
  dealerContact: text('dealer contact', { help: 'telephone, mail' }),
  preparedBy: text('prepared by', { help: 'who answers questions' }),
  validity: quantity('days', 'valid for', {
    above: 0,
    atMost: 365,
    in: 'days',
    fallback: { value: 30, source: practice },
    help: 'from the day of issue',
  }),
  discount: money('discount', {
    fallback: { value: 0, source: '' },
    help: 'an amount taken off the price before tax',
  }),
  discountReason: text('discount for', { help: 'in a few words' }),
  firstPayment: share(
    'payment 1',
    'of the total with tax; where no payment is given, the deposit of the rates',
  ),
  firstDue: text('payment 1 due', { help: 'with the order, say' }),
  secondPayment: share('payment 2', 'of the total with tax'),
  secondDue: text('payment 2 due', { help: 'when the engine is ready to ship, say' }),
  thirdPayment: share('payment 3', 'of the total with tax; what is left is due on delivery'),
  thirdDue: text('payment 3 due', { help: 'when it is due' }),
  delivery: text('delivery', { help: 'place and terms' }),
  remark: text('remark', { help: 'printed below the price' }),
};

/** Who quotes what to whom, on which terms. Not one of the tables an airframe is computed from: only a quote needs it. */
export const quoteTable: Table<typeof fields> = {
  name: 'quote',
  shape: 'attributes',
  help: 'who quotes what to whom, on which terms',
  required: true,
  unique: true,
  fields,
};

export type QuoteTerms = RecordOf<typeof quoteTable>;

export type QuoteTermsReading =
  | { readonly terms: QuoteTerms; readonly faults: readonly [] }
  | { readonly terms: undefined; readonly faults: readonly Fault[] };

/** Reads the terms of a quote and holds them against the catalogue they are for. */
export function readQuoteTerms(grid: Grid | undefined, catalogue: Catalogue): QuoteTermsReading {
  const log = new FaultLog();
  const terms = readAttributes(quoteTable, grid, log);
  log.settleCurrency(catalogue.currency);
  if (log.faults.length === 0) checkTerms(terms, catalogue, log);
  return log.faults.length > 0 ? { terms: undefined, faults: log.faults } : { terms, faults: [] };
}

function checkTerms(terms: QuoteTerms, catalogue: Catalogue, log: FaultLog): void {
  const packages = catalogue.packages.map(({ name }) => name);
  if (!packages.some((name) => nameKey(name) === nameKey(terms.package))) {
    const expected = `a name from the packages table (${packages.join(', ')})`;
    log.fault(quoteTable.name, { rowName: fields.package.label, column: 'value' }, terms.package, expected);
  }
  if (terms.discount < 0) {
    const expected = 'an amount of at least 0';
    log.fault(quoteTable.name, { rowName: fields.discount.label, column: 'value' }, terms.discount, expected);
  }
  const shares = [terms.firstPayment, terms.secondPayment, terms.thirdPayment];
  const together = shares.reduce<number>((sum, each) => sum + (each ?? 0), 0);
  if (together > 1 + 1e-9) {
    const got = `${Number((together * 100).toPrecision(6))} %`;
    const place = { rowName: `${fields.firstPayment.label} and later`, column: 'value' };
    log.fault(quoteTable.name, place, got, 'payments of 100 % or less together');
  }
}
