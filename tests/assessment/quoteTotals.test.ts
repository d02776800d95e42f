import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Inputs } from '../../src/tables/inputs.ts';
import { smallInputs, withCell } from './quoteFixture.ts';
import { rowsOf } from './quoteTexts.ts';

test('whatever the prices, the lines add up to the totals shown', () => {
  const price = fc.double({ min: 0, max: 99_999, noNaN: true });
  fc.assert(
    fc.property(
      fc.tuple(price, price, price),
      fc.double({ min: 0, max: 1, noNaN: true }),
      fc.double({ min: 1.01, max: 25, noNaN: true }),
      fc.tuple(fc.integer({ min: 2, max: 50 }), fc.integer({ min: 2, max: 50 })),
      ([kit, engine, radio], discountShare, tax, [first, second]) => {
        const cells: [keyof Inputs, string, string, number][] = [
          ['airframe', 'kit price', 'value', kit],
          ['equipment', 'radio', 'price', radio],
          ['rates', 'sales tax', 'value', tax],
          ['quote', 'discount', 'value', discountShare * radio * 0.99],
          ['quote', 'payment 1', 'value', first],
          ['quote', 'payment 2', 'value', second],
        ];
        let inputs = smallInputs;
        for (const [table, row, column, value] of cells) inputs = withCell(inputs, table, row, column, value);
        for (const row of ['payment 1', 'payment 2']) inputs = withCell(inputs, 'quote', row, 'unit', '%');
        const components = (inputs.components ?? []).map((line) =>
          line[1] === 'engine' && line[0] === 'Elm'
            ? line.map((cell, at) => (at === 9 ? engine : cell))
            : line,
        );
        const priced = { ...inputs, components };
        // from the printed text, as a customer with a pencil would
        const coins = (text: string | undefined) =>
          Math.round(Number((text ?? '').replace(/,/g, '').replace('−', '-')) * 100);
        const lines = rowsOf('Price', priced).map((cells) => [cells[0], coins(cells[2])] as const);
        const of = (label: string) => lines.find(([name]) => name === label)?.[1] ?? 0;
        const items = lines.slice(0, 3).reduce((sum, [, amount]) => sum + amount, 0);
        expect(items + of('Discount')).toBe(of('Without tax'));
        expect(of('Without tax') + of('Tax')).toBe(of('Total'));
        const payments = rowsOf('Payment', priced).map((cells) => coins(cells[2]));
        expect(payments.slice(0, -1).reduce((sum, amount) => sum + amount, 0)).toBe(of('Total'));
        expect(payments.at(-1)).toBe(of('Total'));
      },
    ),
    { numRuns: 60 },
  );
});
