import { day } from './day.ts';
import { quantity, text } from './field.ts';
import type { RecordOf, Table } from './table.ts';

const fields = {
  date: day('date', {
    required: true,
    help: 'when it was done; on the day of a weighing it counts as done after it',
  }),
  item: text('item', { required: true, key: true, help: 'what went in or out; what moves is two rows' }),
  weight: quantity('mass', 'weight', {
    help: 'positive in, negative out; empty where nobody knows: paint, a repair',
  }),
  arm: quantity('length', 'arm', { required: true, help: 'of that item, aft of the datum' }),
  reason: text('reason', { help: 'and who did it' }),
};

export const changesTable: Table<typeof fields> = {
  name: 'changes',
  shape: 'rows',
  help: 'what went in and out of the aircraft since it was weighed',
  required: false,
  unique: false,
  fields,
};

export type Change = RecordOf<typeof changesTable>;
