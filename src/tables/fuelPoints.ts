import { choice, quantity, text } from './field.ts';
import type { RecordOf, Table } from './table.ts';

const fields = {
  package: text('package', { required: true, key: true, help: 'the package it was measured on' }),
  mixture: choice('mixture', ['rich', 'lean'], {
    required: true,
    key: true,
    help: 'rich: takeoff and climb; lean: cruise as recommended (the only setting of an engine without mixture)',
  }),
  setting: quantity('fraction', 'power', {
    required: true,
    key: true,
    above: 0,
    atMost: 125,
    in: '%',
    help: '% of maximum continuous power',
  }),
  bsfc: quantity('bsfc', 'BSFC', {
    above: 0.2,
    atMost: 1.2,
    in: 'lb/hp·h',
    help: 'brake specific fuel consumption',
  }),
  fuelFlow: quantity('fuelFlow', 'fuel flow', { above: 0, help: 'instead of BSFC' }),
};

export const fuelPointsTable: Table<typeof fields> = {
  name: 'fuel points',
  shape: 'rows',
  help: 'fuel consumption at power settings: BSFC or fuel flow',
  required: false,
  unique: true,
  fields,
};

export type FuelPoint = RecordOf<typeof fuelPointsTable>;
