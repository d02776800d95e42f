import { choice, flag, money, names, quantity, term, text } from './field.ts';
import type { RecordOf, Table } from './table.ts';

const fields = {
  name: text('item', { required: true, key: true, help: 'what it is' }),
  weight: quantity('mass', 'weight', { required: true, help: 'negative where something is taken out' }),
  arm: quantity('length', 'arm', { required: true, help: 'aft of the datum' }),
  basis: term('basis', {
    fallback: { value: 'estimated', source: 'the most careful basis' },
    help: 'how well the weight is known: a basis of the allowances table',
  }),
  price: money('price', { help: 'without tax; empty is a finding, 0 is free' }),
  current: quantity('current', 'current', {
    atLeast: 0,
    fallback: { value: 0, source: '' },
    help: 'continuous electrical load',
  }),
  essential: flag('essential', {
    fallback: { value: false, source: '' },
    help: 'stays on when the load is shed',
  }),
  dragArea: quantity('area', 'drag area', {
    fallback: { value: 0, source: '' },
    help: 'drag over dynamic pressure; negative where it saves drag',
  }),
  fits: names('fits', { help: 'packages it can be had with; all where empty' }),
  needs: names('needs', { help: 'other items it cannot do without' }),
  excludes: names('excludes', { help: 'other items it cannot stand beside' }),
  standard: flag('standard', {
    fallback: { value: false, source: '' },
    help: 'part of the kit and of its price',
  }),
  fitted: flag('fitted', { fallback: { value: false, source: '' }, help: 'ticked by the buyer' }),
  suppliedBy: choice('supplied by', ['kit', 'builder'], {
    fallback: { value: 'kit', source: '' },
    help: 'who supplies it',
  }),
};

export const equipmentTable: Table<typeof fields> = {
  name: 'equipment',
  shape: 'rows',
  help: 'options of the airframe',
  required: false,
  unique: true,
  fields,
};

export type Equipment = RecordOf<typeof equipmentTable>;
