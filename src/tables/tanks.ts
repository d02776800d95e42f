import { count, flag, money, names, quantity, text } from './field.ts';
import type { RecordOf, Table } from './table.ts';

const fields = {
  name: text('tank', { required: true, key: true, help: 'name of the tank' }),
  arm: quantity('length', 'arm', { required: true, help: 'aft of the datum' }),
  usable: quantity('volume', 'usable', { required: true, above: 0, help: 'usable fuel' }),
  unusable: quantity('volume', 'unusable', {
    atLeast: 0,
    fallback: { value: 0, source: 'none stated' },
    help: 'unusable fuel; part of the basic empty weight',
  }),
  burnOrder: count('burn order', {
    atLeast: 1,
    fallback: { value: 1, source: '' },
    help: '1 is burnt first; tanks of the same number together',
  }),
  fits: names('fits', { help: 'packages it can be had with, separated by commas; all where empty' }),
  standard: flag('standard', { help: 'part of the kit; a tank marked neither standard nor fitted is' }),
  fitted: flag('fitted', { help: 'chosen' }),
  weight: quantity('mass', 'tank weight', {
    atLeast: 0,
    fallback: { value: 0, source: '' },
    help: 'of an optional tank, empty, at its arm',
  }),
  price: money('price', {
    atLeast: 0,
    help: 'of an optional tank, without tax; empty is a finding, 0 is free',
  }),
};

export const tanksTable: Table<typeof fields> = {
  name: 'tanks',
  shape: 'rows',
  help: 'fuel tanks',
  required: true,
  unique: true,
  fields,
};

export type Tank = RecordOf<typeof tanksTable>;
