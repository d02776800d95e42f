import { toSi } from '../units.ts';
import { count, flag, fuelPrice, money, quantity } from './field.ts';
import { practice } from './practice.ts';
import type { RecordOf, Table } from './table.ts';

const fields = {
  avgas: fuelPrice('avgas', { help: 'price of fuel' }),
  avgasAtHome: flag('avgas sold at home', { help: 'at the home field' }),
  mogas: fuelPrice('mogas', { help: 'price of fuel' }),
  mogasAtHome: flag('mogas sold at home', { help: 'at the home field' }),
  jet: fuelPrice('Jet A', { help: 'price of fuel' }),
  jetAtHome: flag('Jet A sold at home', { help: 'at the home field' }),
  labour: money('labour an hour', { atLeast: 0, help: 'for building and upkeep; 0 for one’s own' }),
  tax: quantity('fraction', 'sales tax', { atLeast: 0, atMost: 50, in: '%', help: 'on the whole price' }),
  deposit: quantity('fraction', 'deposit', {
    atLeast: 0,
    atMost: 100,
    in: '%',
    help: 'of the price, with the order',
  }),
  insurance: money('insurance a year', { atLeast: 0, help: 'hull and liability' }),
  hangar: money('hangar a year', { atLeast: 0, help: 'parking, subscriptions' }),
  unscheduled: money('unscheduled upkeep an hour', { atLeast: 0, help: 'what breaks' }),
  oxygen: money('oxygen an hour', { atLeast: 0, help: 'where the cruise height needs it' }),
  hoursPerYear: quantity('time', 'hours a year', {
    above: 0,
    in: 'h',
    fallback: { value: toSi('time', 100, 'h'), source: practice },
    help: 'flown',
  }),
  years: count('years', {
    atLeast: 1,
    atMost: 40,
    fallback: { value: 10, source: practice },
    help: 'over which costs are added up',
  }),
};

export const ratesTable: Table<typeof fields> = {
  name: 'rates',
  shape: 'attributes',
  help: 'prices of fuel, labour, tax, insurance',
  required: false,
  unique: true,
  fields,
};

export type Rates = RecordOf<typeof ratesTable>;
