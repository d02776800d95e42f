import { choice, flag, money, quantity, term, text } from './field.ts';
import type { RecordOf, Table } from './table.ts';

const fields = {
  package: text('package', { required: true, key: true, help: 'the package it belongs to' }),
  name: text('component', { required: true, key: true, help: 'what it is' }),
  system: text('system', {
    required: true,
    help: 'engine, mount, propeller, exhaust, cooling, fuel, electrical …: compares like with like',
  }),
  weight: quantity('mass', 'weight', {
    required: true,
    help: 'installed weight; negative for what is removed from the airframe; 0 where not required',
  }),
  arm: quantity('length', 'arm', { help: 'of its CG; a lump without arm takes that of its details' }),
  armFrom: choice('arm from', ['datum', 'firewall'], {
    fallback: { value: 'datum', source: '' },
    help: 'datum: positive aft; firewall: positive forward',
  }),
  basis: term('basis', {
    fallback: { value: 'estimated', source: 'the most careful basis' },
    help: 'estimated, calculated, weighed: a basis of the allowances table',
  }),
  fluid: flag('fluid', {
    fallback: { value: false, source: '' },
    help: 'oil, coolant: left out of the dry weight',
  }),
  suppliedBy: choice('supplied by', ['kit', 'builder', 'not required'], {
    fallback: { value: 'kit', source: 'taken as part of the package' },
    help: 'who supplies it; "not required" says that nothing was forgotten',
  }),
  includedIn: text('included in', {
    help: 'the lump whose weight and price already hold this one',
  }),
  price: money('price', { help: 'without tax; empty is a finding, 0 is free' }),
  leadTime: quantity('days', 'lead time', { atLeast: 0, help: 'from order to delivery' }),
  source: text('source', { help: 'where the weight comes from, and when' }),
};

export const componentsTable: Table<typeof fields> = {
  name: 'components',
  shape: 'rows',
  help: 'the weight build-up of every package',
  required: true,
  unique: false,
  fields,
};

export type Component = RecordOf<typeof componentsTable>;
