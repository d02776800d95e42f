import { count, quantity, term, text } from './field.ts';
import type { RecordOf, Table } from './table.ts';

const fields = {
  name: text('station', { required: true, key: true, help: 'seat or baggage place' }),
  arm: quantity('length', 'arm', { required: true, help: 'aft of the datum' }),
  minimum: quantity('mass', 'minimum', {
    atLeast: 0,
    fallback: { value: 0, source: '' },
    help: 'the least it holds in flight: the lightest pilot',
  }),
  maximum: quantity('mass', 'maximum', { required: true, atLeast: 0, help: 'the most it may hold' }),
  usual: quantity('mass', 'usual', { atLeast: 0, help: 'what it usually holds' }),
  persons: count('persons', {
    atLeast: 0,
    fallback: { value: 0, source: '' },
    help: 'how many people it seats; 0 for baggage',
  }),
  group: term('limit group', { help: 'stations of the same group share one limit' }),
  groupMaximum: quantity('mass', 'group maximum', { above: 0, help: 'the most the group may hold together' }),
};

export const stationsTable: Table<typeof fields> = {
  name: 'stations',
  shape: 'rows',
  help: 'seats and baggage',
  required: true,
  unique: true,
  fields,
};

export type Station = RecordOf<typeof stationsTable>;
