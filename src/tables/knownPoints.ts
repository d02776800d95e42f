import { choice, quantity, text } from './field.ts';
import type { RecordOf, Table } from './table.ts';

const fields = {
  package: text('package', { required: true, key: true, help: 'the package flown' }),
  condition: choice('condition', ['level flight', 'climb', 'takeoff roll'], {
    required: true,
    key: true,
    help: 'what was flown; takeoff roll on a hard level surface without wind',
  }),
  power: quantity('power', 'power', { required: true, above: 0, help: 'shaft power at the time' }),
  weight: quantity('mass', 'weight', { required: true, above: 0, help: 'gross weight at the time' }),
  altitude: quantity('height', 'pressure altitude', {
    required: true,
    atLeast: -2000,
    atMost: 40000,
    in: 'ft',
    help: 'altimeter set to standard pressure',
  }),
  temperature: quantity('temperature', 'OAT', {
    atLeast: -60,
    atMost: 60,
    in: '°C',
    help: 'standard temperature where empty',
  }),
  airspeed: quantity('speed', 'true airspeed', { above: 0, help: 'level flight and climb' }),
  climbRate: quantity('climb', 'rate of climb', { help: 'climb' }),
  roll: quantity('height', 'ground roll', { above: 0, help: 'takeoff roll' }),
  source: text('source', { help: 'who flew it, when' }),
};

export const knownPointsTable: Table<typeof fields> = {
  name: 'known points',
  shape: 'rows',
  help: 'measured flight of this airframe: one level speed fixes its drag',
  required: false,
  unique: false,
  fields,
};

export type KnownPoint = RecordOf<typeof knownPointsTable>;
