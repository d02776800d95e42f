import { quantity, text } from './field.ts';
import type { RecordOf, Table } from './table.ts';

const fields = {
  weight: quantity('mass', 'weight', { required: true, key: true, above: 0, help: 'weight of this point' }),
  forward: quantity('length', 'forward limit', { required: true, help: 'most forward CG at this weight' }),
  aft: quantity('length', 'aft limit', { required: true, help: 'most aft CG at this weight' }),
  basis: text('basis', { help: 'whose limit it is: designer, builder, test' }),
};

export const envelopeTable: Table<typeof fields> = {
  name: 'envelope',
  shape: 'rows',
  help: 'CG limits: straight lines between the points',
  required: true,
  unique: true,
  fields,
};

export type EnvelopePoint = RecordOf<typeof envelopeTable>;
