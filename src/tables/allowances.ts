import { quantity, term } from './field.ts';
import type { RecordOf, Table } from './table.ts';

const fields = {
  basis: term('basis', { required: true, key: true, help: 'how a weight is known' }),
  growth: quantity('fraction', 'growth', {
    required: true,
    atLeast: 0,
    atMost: 50,
    in: '%',
    help: 'by how much such weights grow until the aircraft is weighed',
  }),
  scatter: quantity('fraction', 'scatter', {
    required: true,
    atLeast: 0,
    atMost: 50,
    in: '%',
    help: 'how far one such weight can be off either way',
  }),
  correlation: quantity('fraction', 'correlation', {
    required: true,
    atLeast: 0,
    atMost: 100,
    in: '%',
    help: 'how far such errors go together: 0 independent, 100 % all the same way',
  }),
};

export const allowancesTable: Table<typeof fields> = {
  name: 'allowances',
  shape: 'rows',
  help: 'how well a weight is known, by its basis',
  required: false,
  unique: true,
  fields,
};

export type Allowance = RecordOf<typeof allowancesTable>;

/** What is used where a workbook has no allowances of its own: common practice, no source. */
export const customaryAllowances: readonly Omit<Allowance, 'row' | 'defaulted'>[] = [
  { basis: 'estimated', growth: 0.04, scatter: 0.08, correlation: 0.5 },
  { basis: 'calculated', growth: 0.02, scatter: 0.04, correlation: 0.2 },
  { basis: 'weighed', growth: 0, scatter: 0.005, correlation: 0 },
];
