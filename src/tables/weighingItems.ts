import { choice, quantity, text } from './field.ts';
import type { RecordOf, Table } from './table.ts';

const fields = {
  weighing: text('weighing', { required: true, key: true, help: 'the weighing it belongs to' }),
  item: text('item', { required: true, key: true, help: 'what it is: tools, usable fuel, a missing seat …' }),
  state: choice('state', ['aboard, not part', 'part, not aboard'], {
    required: true,
    help: 'on the scales but no part of the empty aircraft (usable fuel, tools), or part of it and missing (unusable fuel, oil to full, a seat)',
  }),
  weight: quantity('mass', 'weight', { atLeast: 0, help: 'or its volume' }),
  volume: quantity('volume', 'volume', { atLeast: 0, help: 'of a fluid, instead of its weight' }),
  density: quantity('density', 'density', {
    atLeast: 5,
    atMost: 10,
    in: 'lb/US gal',
    help: 'of that fluid; the package’s fuel where empty; oil 7.5 lb/US gal (AC 43.13-1B)',
  }),
  arm: quantity('length', 'arm', { required: true, help: 'aft of the datum' }),
};

export const weighingItemsTable: Table<typeof fields> = {
  name: 'weighing items',
  shape: 'rows',
  help: 'what was on the scales and is no part of the empty aircraft, and what is part of it and was not there',
  required: false,
  unique: true,
  fields,
};

export type WeighingItem = RecordOf<typeof weighingItemsTable>;
