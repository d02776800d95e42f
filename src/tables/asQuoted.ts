import { quantity, text } from './field.ts';
import type { RecordOf, Table } from './table.ts';

const fields = {
  quote: text('quote', { help: 'number of the quote' }),
  expectedWeight: quantity('mass', 'empty weight expected', { above: 0, help: 'from the quote' }),
  countedOnWeight: quantity('mass', 'empty weight to be counted on', { above: 0, help: 'from the quote' }),
  expectedPayload: quantity('mass', 'payload expected, full tanks', { help: 'from the quote' }),
  countedOnPayload: quantity('mass', 'payload to be counted on, full tanks', { help: 'from the quote' }),
};

export const asQuotedTable: Table<typeof fields> = {
  name: 'as quoted',
  shape: 'attributes',
  help: 'the weights that the quote promised, to hold the weighing against',
  required: false,
  unique: true,
  fields,
};

export type AsQuoted = RecordOf<typeof asQuotedTable>;
